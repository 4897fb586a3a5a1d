package dev.ringout.sheet;

import dev.ringout.source.FileBytes;
import dev.ringout.source.UnusableInput;
import java.io.IOException;
import java.util.stream.Collectors;

/** All that a workbook says, as text. */
public final class SheetTexts {
  private SheetTexts() {}

  /**
   * The texts of its cells, sheet after sheet.
   *
   * @throws IOException where it is no workbook, or a damaged one
   */
  public static String of(FileBytes workbook) throws IOException {
    StringBuilder texts = new StringBuilder();
    try (TabularFile file = XlsxFile.open(workbook, workbook.name())) {
      for (Sheet sheet : file.sheets()) {
        sheet.forEachRow(
            row ->
                texts
                    .append(row.cells().stream().map(Cell::text).collect(Collectors.joining("\t")))
                    .append('\n'));
      }
    } catch (UnusableInput e) {
      throw new IOException("it " + e.text(), e);
    }
    return texts.toString();
  }
}
