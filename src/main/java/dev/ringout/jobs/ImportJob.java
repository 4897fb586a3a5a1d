package dev.ringout.jobs;

import dev.ringout.imports.list.ImportOptions;
import dev.ringout.imports.list.ImportResult;
import dev.ringout.imports.list.Words;
import dev.ringout.source.Problem;
import dev.ringout.words.ImportWords;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads a wire list as somebody else laid it out. */
public final class ImportJob {
  private ImportJob() {}

  /**
   * What is asked.
   *
   * @param list the file
   * @param words the words of headings and cells that are known
   * @param options what the user has said about the shop's lists
   */
  public record Request(Path list, Words words, ImportOptions options) {}

  /**
   * What came of it.
   *
   * @param shownName how the list is called in messages
   * @param list as it was understood, with what is suspect in it
   */
  public record Result(String shownName, ImportResult list) {

    /** Whether there is a wire or a link, and every row that may be a wire was understood. */
    public boolean isUnderstood() {
      return list.isDecided() && list.joinsAnything() && !list.hasErrors() && list.lostRows() == 0;
    }
  }

  /** Reads the list. */
  public static Answer<Result> run(Request request, Inputs inputs) {
    Optional<ImportResult> list =
        inputs.wireList(request.list(), request.words(), request.options());
    if (list.isEmpty()) {
      return Answer.refused(inputs);
    }
    List<Problem> problems = new ArrayList<>(inputs.problems().list());
    problems.addAll(ImportWords.grouped(list.get().findings()));
    return new Answer.Given<>(
        new Result(inputs.shownName(request.list()), list.get()), List.copyOf(problems));
  }
}
