package dev.ringout.benchmarks.weaken;

import java.util.List;
import java.util.Optional;
import java.util.Random;

/** Weakenings by hands in the unit: connectors opened and wires touched between readings. */
final class WeakByHand {
  private static final String BEFORE_ALL = "2026-11-19 16:00";
  private static final String AFTER_ALL = "2026-11-20 18:00";

  private WeakByHand() {}

  private static String anyWire(Case one, Random random) {
    List<String> wires =
        one.subject.unit().joints().stream()
            .filter(Unit.Joint::isWire)
            .map(Unit.Joint::name)
            .toList();
    return WeakRows.any(wires, random).orElse("W1");
  }

  private static String anyItem(Case one, Random random) {
    return WeakRows.any(one.subject.unit().items(), random).orElse("J1");
  }

  static Optional<String> touchedAfter(Case one, Random random) {
    return option(one, "--touched", anyWire(one, random));
  }

  static Optional<String> openedAfter(Case one, Random random) {
    return option(one, "--opened", anyItem(one, random));
  }

  private static Optional<String> option(Case one, String option, String value) {
    one.options.addAll(List.of(option, value));
    return Optional.of(option + " " + value);
  }

  private static String rework(Case one, Random random, Folder file, String time) {
    boolean wire = random.nextBoolean();
    String items = wire ? "" : anyItem(one, random);
    String wires = wire ? anyWire(one, random) : "";
    Table rework =
        file.sheets.getOrDefault(
            Folder.REWORK, Table.of("No", "Time", "Items", "Wires", "Readings", "Note"));
    file.sheets.put(Folder.REWORK, rework.row("1", time, items, wires, "after", "pin repaired"));
    return "rework of " + items + wires + " at " + time;
  }

  /** A second file after a rework, with all, some or none of the rows read again. */
  static Optional<String> reworkAndRetest(Case one, Random random) {
    Folder again = one.subject.good().copy();
    int keptOfFour = random.nextInt(5);
    for (String name : List.of(Folder.CONTINUITY, Folder.INSULATION)) {
      Table table = again.sheet(name);
      table.rows.removeIf(row -> random.nextInt(4) >= keptOfFour);
      for (int row = 0; row < table.rows.size(); row++) {
        table.set(row, "Time", table.cell(row, "Time").replace("2026-11-20", "2026-11-21"));
      }
    }
    if (again.sheet(Folder.INSULATION).rows.isEmpty()) {
      again.sheets.remove(Folder.INSULATION);
    }
    again.sheet(Folder.JOB).put("date", "2026-11-21");
    boolean early = random.nextInt(4) == 0;
    String time = early ? BEFORE_ALL : random.nextInt(3) == 0 ? "" : AFTER_ALL;
    String text = rework(one, random, again, time);
    boolean last = random.nextInt(4) > 0;
    one.files.add(last ? one.files.size() : 0, again);
    return Optional.of(text + ", then " + keptOfFour + "/4 read again" + (last ? "" : ", first"));
  }

  /** One of the files there says that it was made after a rework. */
  static Optional<String> reworkInOneFile(Case one, Random random) {
    Folder file = one.files.get(random.nextInt(one.files.size()));
    return Optional.of(rework(one, random, file, random.nextBoolean() ? BEFORE_ALL : ""));
  }
}
