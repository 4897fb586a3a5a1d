package dev.ringout.intake;

import dev.ringout.cells.Blanks;
import dev.ringout.cells.LikelyMeant;
import dev.ringout.cells.Names;
import dev.ringout.sheet.Sheet;
import dev.ringout.sheet.TabularFile;
import dev.ringout.source.Place;
import dev.ringout.source.Problem;
import dev.ringout.source.Problems;
import dev.ringout.source.Severity;
import dev.ringout.source.UnusableInput;
import dev.ringout.units.Text;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The sheets of a file by the contract's names. */
final class SheetsByName {
  private static final int MOST_NAMED = 40;

  /** A title and who made it, at most. */
  private static final int ROWS_ABOVE_HEADINGS = 10;

  private final Map<String, Sheet> byKey = new HashMap<>();
  private final String otherFile;
  private final String present;
  private boolean passedOver;

  /** Looks into a sheet of another name. */
  interface Unnamed {
    /** Why a sheet can't be passed over; empty where it can. */
    String refusal(Sheet sheet) throws UnusableInput;
  }

  /** The same, where others can all be passed over. */
  SheetsByName(TabularFile file, List<String> names, String onlyTable, Problems problems)
      throws UnusableInput {
    this(file, names, onlyTable, sheet -> "", problems);
  }

  /**
   * Sorts a file's sheets.
   *
   * @param names the sheets that are read; others are named in a note
   * @param onlyTable what a single CSV file holds
   * @param unnamed looks into the others
   * @throws UnusableInput where one of the others is damaged
   */
  SheetsByName(
      TabularFile file, List<String> names, String onlyTable, Unnamed unnamed, Problems problems)
      throws UnusableInput {
    List<String> keys = names.stream().map(Names::key).toList();
    List<String> all = file.sheets().stream().map(Sheet::name).toList();
    otherFile = WhichFile.bySheets(all);
    boolean isOther =
        !otherFile.isEmpty() && all.stream().map(Names::key).noneMatch(keys::contains);
    if (file.isSingleTable()) {
      byKey.put(Names.key(onlyTable), file.sheets().get(0));
    } else {
      for (Sheet sheet : file.sheets()) {
        String key = Names.key(sheet.name());
        if (!keys.contains(key)) {
          passedOver = true;
          String refusal = unnamed.refusal(sheet);
          String nearest = LikelyMeant.nearest(sheet.name(), names);
          if (isOther && refusal.isEmpty() && nearest.isEmpty()) {
            // Of another file each sheet is another: that the file is one is said once.
            continue;
          }
          problems.add(
              new Problem(
                  sheet.place(),
                  "",
                  refusal.isEmpty() ? Severity.NOTE : Severity.ERROR,
                  "the sheet \""
                      + sheet.name()
                      + "\" "
                      + (refusal.isEmpty() ? "is not read" : refusal),
                  nearest));
        } else if (byKey.putIfAbsent(key, sheet) != null) {
          problems.error(sheet.place(), "there is more than one sheet \"" + sheet.name() + "\"");
        }
      }
    }
    present = Text.first(all, MOST_NAMED);
  }

  Optional<Sheet> find(String name) {
    return Optional.ofNullable(byKey.get(Names.key(name)));
  }

  /** Whether one of the first rows of a sheet holds the headings of all these columns. */
  static boolean isHeaded(Sheet sheet, List<Column> columns) throws UnusableInput {
    int[] rows = new int[1];
    boolean[] headed = new boolean[1];
    sheet.forEachRow(
        row ->
            headed[0] |=
                rows[0]++ < ROWS_ABOVE_HEADINGS
                    && columns.stream()
                        .allMatch(
                            column ->
                                row.cells().stream()
                                    .map(cell -> Blanks.strip(cell.text()))
                                    .anyMatch(
                                        heading ->
                                            column.matches(heading)
                                                || !column.unitIn(heading).isEmpty())));
    return headed[0];
  }

  /** Whether there is any sheet of another name. */
  boolean passedOver() {
    return passedOver;
  }

  /** Reports that a sheet which must be there is not. */
  void reportMissing(String expected, String file, Problems problems) {
    problems.error(
        Place.of(file),
        "there is no sheet "
            + expected
            + (present.isEmpty() ? "; the file holds no sheet" : "; found: " + present)
            + (byKey.isEmpty() && !otherFile.isEmpty() ? "; " + otherFile : ""));
  }
}
