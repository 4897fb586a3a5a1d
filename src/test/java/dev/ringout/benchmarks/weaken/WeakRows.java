package dev.ringout.benchmarks.weaken;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;

/** Weakenings of the rows of readings. */
final class WeakRows {
  private WeakRows() {}

  /** A sheet of readings, and where it is. */
  record Place(Folder file, String sheet, Table table) {
    boolean insulation() {
      return sheet.equals(Folder.INSULATION);
    }

    String row(int row) {
      return sheet + " row [" + String.join("|", table.rows.get(row)) + "]";
    }
  }

  /** Some sheet that has rows. */
  static Optional<Place> anySheet(Case one, Random random) {
    return any(sheets(one), random);
  }

  static List<Place> sheets(Case one) {
    List<Place> places = new ArrayList<>();
    for (Folder file : one.files) {
      for (String sheet : List.of(Folder.CONTINUITY, Folder.INSULATION)) {
        if (!file.sheet(sheet).rows.isEmpty()) {
          places.add(new Place(file, sheet, file.sheet(sheet)));
        }
      }
    }
    return places;
  }

  static <T> Optional<T> any(List<T> list, Random random) {
    return list.isEmpty() ? Optional.empty() : Optional.of(list.get(random.nextInt(list.size())));
  }

  static Optional<String> dropRow(Case one, Random random) {
    return anySheet(one, random)
        .map(
            place -> {
              int row = random.nextInt(place.table().rows.size());
              String text = "without " + place.row(row);
              place.table().rows.remove(row);
              return text;
            });
  }

  static Optional<String> dropHalf(Case one, Random random) {
    return anySheet(one, random)
        .map(
            place -> {
              place.table().rows.removeIf(row -> random.nextBoolean());
              return "half of " + place.sheet();
            });
  }

  static Optional<String> dropColumn(Case one, Random random) {
    return anySheet(one, random)
        .filter(place -> place.table().headings.size() > 1)
        .map(
            place -> {
              int column = random.nextInt(place.table().headings.size());
              String text = place.sheet() + " without column " + place.table().headings.get(column);
              place.table().dropColumn(column);
              return text;
            });
  }

  static Optional<String> blankCell(Case one, Random random) {
    return anySheet(one, random)
        .map(
            place -> {
              int row = random.nextInt(place.table().rows.size());
              int column = random.nextInt(place.table().headings.size());
              String text = place.row(row) + " blank: " + place.table().headings.get(column);
              place.table().rows.get(row).set(column, random.nextInt(4) == 0 ? " " : "");
              return text;
            });
  }

  static Optional<String> lowerVolts(Case one, Random random) {
    List<Place> places = sheets(one).stream().filter(Place::insulation).toList();
    return any(places, random)
        .map(
            place -> {
              boolean all = random.nextInt(3) == 0;
              int only = random.nextInt(place.table().rows.size());
              if (place.table().column("Volts") < 0) {
                Table job = place.file().sheet(Folder.JOB);
                if (job.column("Name") >= 0 && !job.value("insulation volts").isEmpty()) {
                  job.put("insulation volts", "100 V");
                }
              }
              for (int row = 0; row < place.table().rows.size(); row++) {
                if (all || row == only) {
                  place.table().set(row, "Volts", random.nextBoolean() ? "100" : "50 V");
                }
              }
              return "lower volts in " + (all ? "all rows" : place.row(only));
            });
  }

  private static Probing probing(Case one, Place place, int row) {
    Table alone = place.table().copy();
    List<String> cells = alone.rows.get(row);
    alone.rows.clear();
    alone.rows.add(cells);
    Folder folder = new Folder();
    folder.sheets.put(place.sheet(), alone);
    List<Evidence.Reading> readings =
        SheetReader.read(one.subject.unit(), List.of(folder), List.of()).readings();
    return readings.isEmpty()
        ? new Probing(true, List.of(), List.of(), Unit.State.NORMAL)
        : readings.get(0).probing();
  }

  private static boolean isJoin(Case one, Probing probing) {
    Physics physics = new Physics(one.subject.unit());
    return !probing.from().isEmpty() && !probing.insulation() && physics.isJoin(probing);
  }

  private static boolean isThroughParts(Case one, Probing probing) {
    Physics physics = new Physics(one.subject.unit());
    return !probing.from().isEmpty() && !probing.insulation() && physics.isThroughParts(probing);
  }

  private static Optional<String> put(Place place, int row, String text) {
    String before = place.row(row);
    place.table().set(row, "Reading", text);
    return Optional.of(before + " reads " + text);
  }

  /** A value with its own unit, whatever stands in the column Unit. */
  static Optional<String> lowInsulation(Case one, Random random) {
    List<Place> places = sheets(one).stream().filter(Place::insulation).toList();
    double limit = one.subject.unit().demand().insulationMinOhms();
    return any(places, random)
        .flatMap(
            place ->
                put(
                    place,
                    random.nextInt(place.table().rows.size()),
                    Values.text(limit * (0.001 + 0.95 * random.nextDouble()), "MΩ") + " MΩ"));
  }

  static Optional<String> highJoin(Case one, Random random) {
    return anySheet(one, random)
        .flatMap(
            place -> {
              int row = random.nextInt(place.table().rows.size());
              String high = random.nextBoolean() ? 2 + random.nextInt(90) + ".4 Ω" : "OL";
              return isJoin(one, probing(one, place, row))
                  ? put(place, row, high)
                  : Optional.empty();
            });
  }

  static Optional<String> partReadsLow(Case one, Random random) {
    List<String> low = List.of("0.15 Ω", "3 Ω", "20 Ω", "0.02 Ω");
    for (Place place : sheets(one)) {
      List<Integer> rows = new ArrayList<>();
      for (int row = 0; row < place.table().rows.size(); row++) {
        if (isThroughParts(one, probing(one, place, row))) {
          rows.add(row);
        }
      }
      if (!rows.isEmpty()) {
        return put(place, any(rows, random).orElse(0), low.get(random.nextInt(low.size())));
      }
    }
    return Optional.empty();
  }

  static Optional<String> word(Case one, Random random) {
    return anySheet(one, random)
        .flatMap(
            place ->
                put(
                    place,
                    random.nextInt(place.table().rows.size()),
                    random.nextInt(9) == 0 ? "FAIL" : any(Values.WORDS, random).orElse("OK")));
  }

  static Optional<String> wordsAlone(Case one, Random random) {
    boolean everywhere = random.nextBoolean();
    List<Place> places = sheets(one);
    List<Place> chosen = everywhere ? places : any(places, random).stream().toList();
    String word = any(Values.WORDS, random).orElse("OK");
    for (Place place : chosen) {
      for (int row = 0; row < place.table().rows.size(); row++) {
        place.table().set(row, "Reading", word);
        place.table().set(row, "Reverse", word);
      }
    }
    return chosen.isEmpty()
        ? Optional.empty()
        : Optional.of(word + " in every row of " + (everywhere ? "all" : chosen.get(0).sheet()));
  }

  static Optional<String> valueOfAnother(Case one, Random random) {
    Optional<Place> place = anySheet(one, random);
    Optional<Folder> stranger = any(one.subject.strangers(), random);
    if (place.isEmpty() || stranger.isEmpty()) {
      return Optional.empty();
    }
    Table donor = stranger.get().sheet(place.get().sheet());
    if (donor.rows.isEmpty()) {
      return Optional.empty();
    }
    int row = random.nextInt(donor.rows.size());
    String unit = donor.cell(row, "Unit");
    unit = unit.isEmpty() ? donor.headingUnit("Reading") : unit;
    String text = donor.cell(row, "Reading");
    boolean bare = text.matches(">?[0-9.]+");
    return put(
        place.get(),
        random.nextInt(place.get().table().rows.size()),
        bare && !unit.isEmpty() ? text + " " + unit : text);
  }

  /** A row once more at the end: as it is, failing, or a failing one before a good old one. */
  static Optional<String> staleRowLast(Case one, Random random) {
    return anySheet(one, random)
        .map(
            place -> {
              Table table = place.table();
              int row = random.nextInt(table.rows.size());
              table.rows.add(new ArrayList<>(table.rows.get(row)));
              int last = table.rows.size() - 1;
              int failing = random.nextBoolean() ? last : row;
              Probing probing = probing(one, place, row);
              String bad = place.insulation() ? "1 MΩ" : isJoin(one, probing) ? "OL" : "0.1 Ω";
              if (random.nextInt(4) > 0) {
                table.set(failing, "Reading", bad);
              }
              boolean earlier = random.nextBoolean();
              if (!table.cell(last, "Time").isEmpty()) {
                table.set(last, "Time", earlier ? "2026-11-19 08:00" : "2026-11-20 19:00");
              }
              return "twice: " + place.row(row) + ", and last " + place.row(last);
            });
  }
}
