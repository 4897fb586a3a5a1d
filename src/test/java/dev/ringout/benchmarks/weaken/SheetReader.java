package dev.ringout.benchmarks.weaken;

import dev.ringout.benchmarks.weaken.Evidence.Job;
import dev.ringout.benchmarks.weaken.Evidence.Reading;
import dev.ringout.benchmarks.weaken.Evidence.Rework;
import dev.ringout.benchmarks.weaken.Unit.State;
import dev.ringout.benchmarks.weaken.Values.Blank;
import dev.ringout.benchmarks.weaken.Values.Value;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;

/** Reads the sheets of a case: only the forms that this bench writes. */
final class SheetReader {
  private final Unit unit;
  private final List<Reading> readings = new ArrayList<>();
  private final List<Job> jobs = new ArrayList<>();
  private final List<Rework> reworks = new ArrayList<>();
  private final List<String> unread = new ArrayList<>();

  private SheetReader(Unit unit) {
    this.unit = unit;
  }

  static Evidence read(Unit unit, List<Folder> files, List<String> options) {
    return new SheetReader(unit).read(files, options);
  }

  private Evidence read(List<Folder> files, List<String> options) {
    for (int file = 0; file < files.size(); file++) {
      Folder folder = files.get(file);
      jobs.add(job(folder.sheet(Folder.JOB)));
      rows(file, folder.sheet(Folder.CONTINUITY), false);
      rows(file, folder.sheet(Folder.INSULATION), true);
      reworks(file, folder.sheet(Folder.REWORK));
    }
    for (int word = 0; word + 1 < options.size(); word += 2) {
      Set<String> names = names(options.get(word + 1));
      boolean wires = options.get(word).equals("--touched");
      add(Set.of(), Optional.empty(), wires ? Set.of() : names, wires ? names : Set.of(), true);
    }
    return new Evidence(readings, jobs, reworks, unread);
  }

  private static Job job(Table job) {
    String tester = job.value("insulation instrument") + job.value("insulation instrument number");
    String due = job.value("insulation calibration due");
    return new Job(
        job.value("serial number").strip(),
        job.value("revision").strip(),
        job.value("operator").strip(),
        job.value("inspector").strip(),
        day(job.value("date")),
        day(job.value("calibration due")),
        day(due),
        !(tester + due).isEmpty(),
        Values.ohms(job.value("continuity range")),
        Values.ohms(job.value("insulation range")),
        Values.number(job.value("insulation volts")));
  }

  private static Optional<LocalDate> day(String text) {
    try {
      return text.isEmpty() ? Optional.empty() : Optional.of(LocalDate.parse(text));
    } catch (DateTimeParseException e) {
      return Optional.empty();
    }
  }

  private static Optional<LocalDateTime> time(String text) {
    try {
      return text.isEmpty()
          ? Optional.empty()
          : Optional.of(LocalDateTime.parse(text.replace(' ', 'T')));
    } catch (DateTimeParseException e) {
      return Optional.empty();
    }
  }

  private void rows(int file, Table table, boolean insulation) {
    for (int row = 0; row < table.rows.size(); row++) {
      boolean isBlank = table.rows.get(row).stream().allMatch(String::isBlank);
      if (!isBlank && !row(file, table, row, insulation)) {
        unread.add(String.join(" ", table.rows.get(row)));
      }
    }
  }

  private boolean row(int file, Table table, int row, boolean insulation) {
    List<Integer> from = side(table, row, "From");
    List<Integer> to = side(table, row, "To");
    boolean toRest = table.cell(row, "To").equalsIgnoreCase("REST");
    boolean fromRest = table.cell(row, "From").equalsIgnoreCase("REST");
    Optional<State> state = state(unit, table.cell(row, "State"));
    Optional<Value> value = value(table, row, "Reading", insulation);
    Optional<Value> reverse = value(table, row, "Reverse", insulation);
    if ((from.isEmpty() && !fromRest)
        || (to.isEmpty() && !toRest)
        || (fromRest && toRest)
        || state.isEmpty()
        || value.isEmpty()
        || reverse.isEmpty()) {
      return false;
    }
    Probing probing =
        fromRest
            ? new Probing(insulation, to, List.of(), state.get())
            : new Probing(insulation, from, to, state.get());
    OptionalDouble volts = Values.number(table.cell(row, "Volts"));
    Optional<LocalDateTime> time = time(table.cell(row, "Time"));
    Optional<LocalDate> day = jobs.get(file).date();
    add(new Reading(file, probing, value.get(), volts, time, day));
    add(new Reading(file, probing.exchanged(), reverse.get(), volts, time, day));
    return true;
  }

  private void add(Reading reading) {
    if (!(reading.value() instanceof Blank)) {
      readings.add(reading);
    }
  }

  private static Optional<Value> value(Table table, int row, String column, boolean insulation) {
    String unit = table.cell(row, "Unit");
    unit = unit.isEmpty() ? table.headingUnit(column) : unit;
    unit = unit.isEmpty() ? (insulation ? "MΩ" : "Ω") : unit;
    return Values.read(table.cell(row, column), unit);
  }

  /** Sorted points; none where they can't be read. */
  private List<Integer> side(Table table, int row, String column) {
    String item = table.cell(row, column);
    String pin = table.cell(row, column + " Pin");
    Set<Integer> points = new TreeSet<>();
    for (String piece : (pin.isEmpty() ? item : item + "-" + pin).split("\\+", -1)) {
      int dash = piece.indexOf('-');
      String name = dash < 0 ? piece : upper(piece.substring(0, dash)) + piece.substring(dash);
      points.add(unit.points().indexOf(name));
    }
    return points.contains(-1) ? List.of() : List.copyOf(points);
  }

  private static String upper(String text) {
    return text.toUpperCase(Locale.ROOT);
  }

  /** A state as a cell tells of it; absent where it can't be read. */
  static Optional<State> state(Unit unit, String text) {
    String position = "";
    Set<Integer> lifted = new HashSet<>();
    for (String piece : text.split(";", -1)) {
      String[] words = piece.strip().split("=", -1);
      if (words.length == 1 && words[0].isEmpty()) {
        continue;
      }
      if (words.length != 2) {
        return Optional.empty();
      }
      if (words[0].equals(Unit.SWITCH) && unit.positions().contains(words[1])) {
        position = words[1].equals(unit.positions().get(0)) ? "" : words[1];
        continue;
      }
      int wire =
          unit.joints().stream()
              .map(Unit.Joint::name)
              .toList()
              .indexOf(words[0].toUpperCase(Locale.ROOT));
      if (wire < 0 || !words[1].equals("LIFTED")) {
        return Optional.empty();
      }
      lifted.add(wire);
    }
    return Optional.of(new State(position, lifted));
  }

  private void reworks(int file, Table table) {
    for (int row = 0; row < table.rows.size(); row++) {
      add(
          Set.of(file),
          time(table.cell(row, "Time")),
          names(table.cell(row, "Items")),
          names(table.cell(row, "Wires")),
          false);
    }
  }

  private static Set<String> names(String cell) {
    return new TreeSet<>(
        Arrays.stream(cell.split("[,;]", -1))
            .map(String::strip)
            .filter(s -> !s.isEmpty())
            .toList());
  }

  /** Adds a rework; the same row in another file is the same rework. */
  private void add(
      Set<Integer> files,
      Optional<LocalDateTime> time,
      Set<String> items,
      Set<String> wires,
      boolean afterAll) {
    Set<String> opened = new TreeSet<>(items);
    unit.joints().stream()
        .filter(joint -> joint.isWire() && wires.contains(joint.name()))
        .forEach(joint -> opened.addAll(unit.itemsOf(joint)));
    Set<Integer> carriers = new TreeSet<>(files);
    for (Rework other : List.copyOf(reworks)) {
      boolean same =
          other.time().equals(time)
              && other.items().equals(opened)
              && other.wires().equals(wires)
              && other.afterAll() == afterAll;
      if (same) {
        carriers.addAll(other.files());
        reworks.remove(other);
      }
    }
    reworks.add(new Rework(carriers, time, opened, wires, afterAll));
  }
}
