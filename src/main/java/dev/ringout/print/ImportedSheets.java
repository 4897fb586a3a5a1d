package dev.ringout.print;

import dev.ringout.imports.list.ImportResult;
import dev.ringout.imports.list.ImportResult.SheetReport;
import dev.ringout.imports.list.ImportResult.SkippedRow;
import dev.ringout.sheet.OutSheet;
import dev.ringout.words.ImportWords;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** An imported list as the sheets of a harness file. */
public final class ImportedSheets {
  private ImportedSheets() {}

  /**
   * The sheets of its wiring, with what the list says of itself.
   *
   * @param file the name of the list's file
   */
  public static List<OutSheet> of(ImportResult result, String file) {
    Map<String, String> header = new LinkedHashMap<>();
    result.header().forEach(fact -> header.put(fact.name().word(), fact.value()));
    header.put("imported from", file);
    return of(result, header);
  }

  /**
   * The sheets of its wiring, and the rows that may be wires and could not be read: a harness that
   * holds any is not judged.
   *
   * @param header names and values of the header sheet
   */
  public static List<OutSheet> of(ImportResult result, Map<String, String> header) {
    List<OutSheet> sheets = new ArrayList<>(HarnessSheets.of(result.wiring(), header));
    List<List<String>> notRead = notRead(result);
    if (!notRead.isEmpty()) {
      sheets.add(new OutSheet("Not Read", List.of("Sheet", "Row", "Why", "Cells"), notRead));
    }
    return sheets;
  }

  private static List<List<String>> notRead(ImportResult result) {
    List<List<String>> rows = new ArrayList<>();
    for (SheetReport sheet : result.sheets()) {
      for (SkippedRow row : sheet.skipped()) {
        if (row.lost()) {
          rows.add(
              List.of(
                  sheet.sheet(),
                  Integer.toString(row.row()),
                  ImportWords.skipped(row.why()),
                  String.join(" | ", row.cells())));
        }
      }
    }
    return rows;
  }
}
