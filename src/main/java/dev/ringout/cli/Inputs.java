package dev.ringout.cli;

import dev.ringout.harness.Harness;
import dev.ringout.harness.Waiver;
import dev.ringout.intake.HarnessReader;
import dev.ringout.intake.LostCase;
import dev.ringout.intake.OneUnit;
import dev.ringout.intake.ReadingsReader;
import dev.ringout.intake.WaiversReader;
import dev.ringout.readings.ReadingSet;
import dev.ringout.sheet.TabularFile;
import dev.ringout.source.Place;
import dev.ringout.source.Problem;
import dev.ringout.source.Problems;
import dev.ringout.source.Severity;
import dev.ringout.source.UnusableInput;
import dev.ringout.source.UnusableInput.Reason;
import dev.ringout.units.Text;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Collection;
import java.util.Collections;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Reads the files that a command line names, and collects every problem of all of them. */
final class Inputs {
  private final Problems problems = new Problems();
  private final Map<String, Integer> timesNamed = new HashMap<>();
  private boolean missing;

  Inputs(List<Path> files) {
    files.forEach(file -> timesNamed.merge(fileName(file), 1, Integer::sum));
  }

  private static String fileName(Path file) {
    Path name = file.toAbsolutePath().normalize().getFileName();
    return name == null ? file.toString() : name.toString();
  }

  /** A file's name alone, or as typed where two files of one command share it. */
  String shownName(Path file) {
    return Text.visible(
        timesNamed.getOrDefault(fileName(file), 1) > 1 ? file.toString() : fileName(file));
  }

  Problems problems() {
    return problems;
  }

  /** Whether any error was found besides some that are known. */
  boolean hasErrorsBeside(Collection<Problem> known) {
    Set<Problem> beside = Collections.newSetFromMap(new IdentityHashMap<>());
    beside.addAll(known);
    return problems.list().stream()
        .anyMatch(one -> one.severity() == Severity.ERROR && !beside.contains(one));
  }

  /** The exit code for what was found wrong in the files. */
  int exitCode() {
    return missing ? ExitCode.MISSING_INPUT : ExitCode.NOT_UNDERSTOOD;
  }

  Optional<Harness> harness(Path file) {
    return open(file, (table, name) -> HarnessReader.read(table, name, problems));
  }

  /** What somebody has accepted. */
  List<Waiver> waivers(Path file) {
    return open(file, (table, name) -> WaiversReader.read(table, problems)).orElse(List.of());
  }

  ReadingSet readings(List<Path> files, Harness harness) {
    ReadingsReader reader = new ReadingsReader(harness, problems);
    files.forEach(file -> read(reader, file));
    ReadingSet readings = reader.readings();
    LostCase.report(harness, readings, problems);
    return readings;
  }

  /** Looks for problems in the readings files even where the harness can't be used. */
  void findProblems(List<Path> readingsFiles) {
    readingsOfAnything(readingsFiles);
  }

  /** Readings of a unit for which there is no harness file. */
  ReadingSet readingsOfAnything(List<Path> readingsFiles) {
    ReadingsReader reader = ReadingsReader.forProblemsOnly(problems);
    readingsFiles.forEach(file -> read(reader, file));
    return reader.readings();
  }

  private void read(ReadingsReader reader, Path file) {
    open(
        file,
        (table, name) -> {
          reader.read(table, name);
          return reader;
        });
  }

  private interface Use<T> {
    T of(TabularFile table, String shownName) throws UnusableInput;
  }

  /** What is made of a file, or nothing where it can't be used; why is among the problems. */
  private <T> Optional<T> open(Path file, Use<T> use) {
    String name = shownName(file);
    try (TabularFile table = TabularFile.open(file, name, problems)) {
      return Optional.of(use.of(table, name));
    } catch (UnusableInput e) {
      report(e);
    } catch (IOException e) {
      problems.error(Place.of(name), "can't be closed: " + e.getMessage());
    }
    return Optional.empty();
  }

  /**
   * A unit's readings; those of another unit, drawing or revision among them are refused.
   *
   * @param said what the command line says of the unit
   */
  ReadingSet ofOneUnit(Harness harness, ReadingSet readings, UnitOptions said) {
    ReadingSet vouched =
        said.serial()
            .map(serial -> OneUnit.vouchedFor(readings, serial, problems))
            .orElse(readings);
    refuseOthers(harness, vouched, said);
    return vouched;
  }

  /** Readings of another unit than these, which must be of one unit, drawing and revision too. */
  ReadingSet ofAnotherUnit(Harness harness, ReadingSet own, ReadingSet readings, UnitOptions said) {
    refuseOthers(harness, readings, said);
    OneUnit.reportSame(own, readings, problems);
    return readings;
  }

  private void refuseOthers(Harness harness, ReadingSet readings, UnitOptions said) {
    OneUnit.report(harness, readings, problems);
    if (!said.anyRevision()) {
      OneUnit.reportOtherRevision(harness, readings, problems);
    }
  }

  private void report(UnusableInput e) {
    missing |= e.reason() == Reason.MISSING;
    problems.error(e.place(), e.text());
  }
}
