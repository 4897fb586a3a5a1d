package dev.ringout.report;

import dev.ringout.sheet.OutSheet;
import java.util.List;

/** Sheets for paper: one page that prints well in black and white, and needs nothing else. */
public final class SheetsHtml {
  private static final String STYLE =
      """
      @page { size: A4 landscape; margin: 16mm 10mm 16mm 10mm;
        @top-left { content: "TITLE"; font: 9pt "Liberation Sans", Arial, sans-serif; }
        @top-right { content: "serial number ______________"; font: 9pt "Liberation Sans", Arial, sans-serif; }
        @bottom-center { content: "page " counter(page) " of " counter(pages); font: 9pt "Liberation Sans", Arial, sans-serif; }
        @bottom-right { content: "read by __________   inspected __________"; font: 9pt "Liberation Sans", Arial, sans-serif; } }
      body { font: 10pt "Liberation Sans", Arial, sans-serif; color: #000; margin: 0; }
      @media screen { body { margin: 8mm; } }
      h1 { font-size: 15pt; margin: 0 0 2mm 0; }
      h2 { font-size: 12pt; margin: 6mm 0 2mm 0; }
      h2.next { page-break-before: always; }
      table { border-collapse: collapse; width: 100%; -fs-table-paginate: paginate; }
      thead { display: table-header-group; }
      tr { page-break-inside: avoid; }
      th { border-bottom: 0.6mm solid #000; text-align: left; padding: 1mm 1.5mm; }
      td { border-bottom: 0.2mm solid #888; padding: 1.2mm 1.5mm; }
      td.fill { border: 0.2mm solid #000; min-width: 16mm; height: 6mm; }
      """;

  private SheetsHtml() {}

  /**
   * The page.
   *
   * @param title what stands above every printed page
   * @param sheets those that are for print; others are left out
   */
  public static String write(String title, List<OutSheet> sheets) {
    StringBuilder html = new StringBuilder();
    html.append("<!DOCTYPE html>\n<html lang=\"en\"><head><meta charset=\"utf-8\"/><title>")
        .append(Html.escaped(title))
        .append("</title><style>\n")
        .append(STYLE.replace("TITLE", Html.inCss(title)))
        .append("</style></head><body>\n<h1>")
        .append(Html.escaped(title))
        .append("</h1>\n");
    boolean first = true;
    for (OutSheet sheet : sheets) {
      if (!sheet.look().title().isEmpty()) {
        html.append(first ? "<h2>" : "<h2 class=\"next\">")
            .append(Html.escaped(sheet.name()))
            .append("</h2>\n");
        table(sheet, html);
        first = false;
      }
    }
    return html.append("</body></html>\n").toString();
  }

  private static void table(OutSheet sheet, StringBuilder html) {
    html.append("<table><thead><tr>");
    sheet
        .headings()
        .forEach(heading -> html.append("<th>").append(Html.escaped(heading)).append("</th>"));
    html.append("</tr></thead><tbody>\n");
    for (List<String> row : sheet.rows()) {
      html.append("<tr>");
      for (int column = 0; column < sheet.headings().size(); column++) {
        html.append(sheet.look().toFill().contains(column) ? "<td class=\"fill\">" : "<td>")
            .append(Html.escaped(column < row.size() ? row.get(column) : ""))
            .append("</td>");
      }
      html.append("</tr>\n");
    }
    html.append("</tbody></table>\n");
  }
}
