package dev.ringout.intake;

import dev.ringout.harness.Harness;
import dev.ringout.sheet.TabularFile;
import dev.ringout.source.Problems;
import dev.ringout.source.UnusableInput;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;

/** A unit's list read as a user's is, for tests that are about something else. */
public final class ReadUnit {
  private ReadUnit() {}

  /** A list in which there must be no error. */
  public static Harness of(Path list) {
    Problems problems = new Problems();
    try (TabularFile file = TabularFile.open(list, "unit", problems)) {
      Harness harness = HarnessReader.read(file, "unit", problems);
      if (problems.hasErrors()) {
        throw new IllegalStateException(problems.list().toString());
      }
      return harness;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (UnusableInput e) {
      throw new IllegalStateException(e);
    }
  }
}
