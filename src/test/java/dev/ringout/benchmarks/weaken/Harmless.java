package dev.ringout.benchmarks.weaken;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Random;

/** What may be done to a good set without taking anything from it. */
enum Harmless {
  NOTHING,
  ROWS_SHUFFLED,
  SIDES_EXCHANGED,
  UNITS_CONVERTED,
  SPLIT_OVER_TWO_FILES,
  COLUMNS_MOVED,
  BLANK_ROWS,
  REFS_IN_LOWER_CASE,
  EXTRA_COLUMNS;

  /** The files after the change. */
  List<Folder> apply(Subject subject, Folder good, Random random) {
    Folder file = good.copy();
    if (this == SPLIT_OVER_TWO_FILES) {
      return split(file, random);
    }
    for (String name : List.of(Folder.CONTINUITY, Folder.INSULATION)) {
      if (file.has(name)) {
        change(subject, file.sheet(name), name.equals(Folder.INSULATION), random);
      }
    }
    return List.of(file);
  }

  private void change(Subject subject, Table table, boolean insulation, Random random) {
    switch (this) {
      case ROWS_SHUFFLED -> Collections.shuffle(table.rows, random);
      case SIDES_EXCHANGED -> exchange(subject, table, insulation, random);
      case UNITS_CONVERTED -> convert(table, insulation, random);
      case COLUMNS_MOVED -> moveColumns(table, random);
      case BLANK_ROWS -> {
        for (int blank = 0; blank < 3; blank++) {
          String[] cells = new String[table.headings.size()];
          Arrays.fill(cells, "");
          table.rows.add(
              random.nextInt(table.rows.size() + 1), new ArrayList<>(Arrays.asList(cells)));
        }
      }
      case REFS_IN_LOWER_CASE -> lowerCase(table);
      case EXTRA_COLUMNS -> {
        table.headings.add("Bench");
        table.headings.add(0, "Checked");
        table.rows.forEach(
            row -> {
              row.add("bench 3");
              row.add(0, "yes");
            });
      }
      case NOTHING, SPLIT_OVER_TWO_FILES -> {}
    }
  }

  private static List<Folder> split(Folder file, Random random) {
    Folder other = file.copy();
    for (String name : List.of(Folder.CONTINUITY, Folder.INSULATION)) {
      Table one = file.sheet(name);
      Table two = other.sheet(name);
      List<List<String>> rows = List.copyOf(one.rows);
      one.rows.clear();
      two.rows.clear();
      for (List<String> row : rows) {
        (random.nextBoolean() ? one : two).rows.add(row);
      }
    }
    return List.of(file, other);
  }

  private static void exchange(Subject subject, Table table, boolean insulation, Random random) {
    Physics physics = new Physics(subject.unit());
    for (int row = 0; row < table.rows.size(); row++) {
      Folder alone = new Folder();
      Table one = table.copy();
      List<String> cells = one.rows.get(row);
      one.rows.clear();
      one.rows.add(cells);
      alone.sheets.put(insulation ? Folder.INSULATION : Folder.CONTINUITY, one);
      Probing probing =
          SheetReader.read(subject.unit(), List.of(alone), List.of()).readings().get(0).probing();
      if (random.nextBoolean() && !physics.isOneWay(probing)) {
        swap(table, row, "From", "To");
        swap(table, row, "From Pin", "To Pin");
      }
    }
  }

  private static void swap(Table table, int row, String one, String other) {
    String kept = table.cell(row, one);
    table.set(row, one, table.cell(row, other));
    table.set(row, other, kept);
  }

  /** Every number with a unit of its own in its cell. */
  private static void convert(Table table, boolean insulation, Random random) {
    List<String> units = insulation ? List.of("MΩ", "GΩ", "kΩ") : List.of("mΩ", "Ω", "kΩ");
    for (String column : List.of("Reading", "Reverse")) {
      for (int row = 0; row < table.rows.size(); row++) {
        String own = table.cell(row, "Unit");
        own = own.isEmpty() ? table.headingUnit(column) : own;
        own = own.isEmpty() ? (insulation ? "MΩ" : "Ω") : own;
        if (Values.read(table.cell(row, column), own).orElse(new Values.Blank())
            instanceof Values.Ohms number) {
          String unit = units.get(random.nextInt(units.size()));
          table.set(row, column, Values.text(number.ohms(), unit) + " " + unit);
        }
      }
    }
  }

  private static void moveColumns(Table table, Random random) {
    List<Integer> order = new ArrayList<>();
    for (int column = 0; column < table.headings.size(); column++) {
      order.add(column);
    }
    Collections.shuffle(order, random);
    reorder(table.headings, order);
    table.rows.forEach(row -> reorder(row, order));
  }

  private static void reorder(List<String> cells, List<Integer> order) {
    List<String> kept = List.copyOf(cells);
    for (int place = 0; place < order.size(); place++) {
      cells.set(place, kept.get(order.get(place)));
    }
  }

  private static void lowerCase(Table table) {
    for (int row = 0; row < table.rows.size(); row++) {
      for (String column : List.of("From", "To")) {
        String text = table.cell(row, column);
        int dash = text.indexOf('-');
        if (text.indexOf('+') < 0) {
          table.set(
              row,
              column,
              dash < 0
                  ? text.toLowerCase(Locale.ROOT)
                  : text.substring(0, dash).toLowerCase(Locale.ROOT) + text.substring(dash));
        }
      }
    }
  }
}
