package dev.ringout.jobs;

import dev.ringout.imports.ImportResult;
import dev.ringout.imports.ListImporter;
import dev.ringout.imports.list.ImportOptions;
import dev.ringout.imports.list.Words;
import dev.ringout.intake.HarnessReader;
import dev.ringout.sheet.TabularFile;
import dev.ringout.source.Place;
import dev.ringout.source.Problem;
import dev.ringout.source.Problems;
import dev.ringout.source.UnusableInput;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** Reads a wire list as somebody else laid it out. */
public final class ImportJob {
  private ImportJob() {}

  /**
   * What is asked.
   *
   * @param list the file
   * @param shownName the file's name in every message
   * @param words the words of headings and cells that are known
   * @param options what the user has said about the shop's lists
   */
  public record Request(Path list, String shownName, Words words, ImportOptions options) {}

  /**
   * What came of it.
   *
   * @param list the list as it was understood; absent where the file can't be used
   * @param missing whether the file is not there or may not be read
   * @param problems what is wrong with the file itself; what is suspect in the list stands there
   */
  public record Result(Optional<ImportResult> list, boolean missing, List<Problem> problems) {

    /** Whether every row that may be a wire was understood. */
    public boolean isUnderstood() {
      return list.filter(one -> !one.hasErrors() && one.lostRows() == 0).isPresent();
    }
  }

  /** Reads the list. */
  public static Result of(Request request) {
    Problems problems = new Problems();
    Optional<ImportResult> list = Optional.empty();
    boolean missing = false;
    try (TabularFile file = TabularFile.open(request.list(), request.shownName(), problems)) {
      list =
          Optional.of(
              ListImporter.read(
                  file,
                  request.shownName(),
                  request.words(),
                  request.options(),
                  HarnessReader::noteHeading));
    } catch (UnusableInput e) {
      missing = e.reason() == UnusableInput.Reason.MISSING;
      problems.error(e.place(), e.text());
    } catch (IOException e) {
      problems.error(Place.of(request.shownName()), "can't be closed: " + e.getMessage());
    }
    return new Result(list, missing, problems.list());
  }
}
