package dev.ringout.support;

import dev.ringout.check.CheckResult;
import dev.ringout.harness.Harness;
import dev.ringout.intake.HarnessReader;
import dev.ringout.intake.ReadingsReader;
import dev.ringout.readings.ReadingSet;
import dev.ringout.sheet.TabularFile;
import dev.ringout.source.Problems;
import dev.ringout.source.UnusableInput;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;

/** A unit's list and test sheet read as a user's are, for tests that are about something else. */
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

  /** What a test sheet shows of a unit; neither may hold an error. */
  public static CheckResult check(Path list, Path testSheet) {
    Harness harness = of(list);
    Problems problems = new Problems();
    ReadingsReader reader = new ReadingsReader(harness, problems);
    try (TabularFile file = TabularFile.open(testSheet, "readings", problems)) {
      reader.read(file, "readings");
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (UnusableInput e) {
      throw new IllegalStateException(e);
    }
    if (problems.hasErrors()) {
      throw new IllegalStateException(problems.list().toString());
    }
    ReadingSet readings = reader.readings();
    return CheckResult.of(harness, readings, problems.list());
  }
}
