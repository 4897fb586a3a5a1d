package dev.ringout.print;

import dev.ringout.pictures.BarCodePicture;
import dev.ringout.pictures.Html;
import dev.ringout.sheet.BarCode;
import dev.ringout.sheet.OutSheet;
import java.util.List;
import java.util.regex.Pattern;

/** A sheet as a table of a page: what stands on every page of it repeats with its headings. */
final class SheetTable {
  /** Letters of a cell that is not broken into lines. */
  private static final int SHORT = 9;

  /** Points tied together: {@code P4-4+P4-5}. */
  private static final Pattern TIED = Pattern.compile("[^\\s+]+-[^\\s+]+(\\+[^\\s+]+-[^\\s+]+)+");

  /** Switches and lifted ends: {@code S1=MADE; W12=LIFTED}. */
  private static final Pattern STATE = Pattern.compile("[^\\s=;]+=[^=;]+(; [^\\s=;]+=[^=;]+)*");

  private final OutSheet sheet;
  private final OutSheet.Look look;
  private final int columns;
  private final StringBuilder html;

  SheetTable(OutSheet sheet, StringBuilder html) {
    this.sheet = sheet;
    this.look = sheet.look();
    this.columns = sheet.printedColumns();
    this.html = html;
  }

  void write() {
    boolean sized = !look.widthsMm().isEmpty();
    html.append("<div class=\"scroll\" tabindex=\"0\" role=\"region\" aria-label=\"")
        .append(Html.escaped(sheet.name()))
        .append(sized ? "\"><table class=\"sized\">" : "\"><table>");
    if (sized) {
      columns();
    }
    html.append("<thead>");
    across("sheet", SheetsHtml.heading(sheet));
    if (!look.caution().isEmpty()) {
      across("caution", look.caution());
    }
    html.append("<tr>");
    for (int column = 0; column < columns; column++) {
      html.append("<th>").append(Html.escaped(sheet.headings().get(column))).append("</th>");
    }
    html.append("</tr></thead><tbody>\n");
    for (int row = 0; row < sheet.rows().size(); row++) {
      bar(row);
      row(sheet.rows().get(row));
    }
    bar(sheet.rows().size());
    html.append("</tbody></table></div>\n");
  }

  private void bar(int row) {
    if (look.bars().containsKey(row)) {
      html.append("<tr class=\"bar\"><td colspan=\"" + columns + "\">")
          .append(Html.escaped(look.bars().get(row)))
          .append("</td></tr>\n");
    }
  }

  private void across(String kind, String words) {
    html.append("<tr class=\"sheet\"><th class=\"" + kind + "\" colspan=\"" + columns + "\">")
        .append(Html.escaped(words))
        .append("</th></tr>");
  }

  /** Each column's share of the paper. */
  private void columns() {
    int all = 0;
    for (int column = 0; column < columns; column++) {
      all += look.widthsMm().getOrDefault(column, 0);
    }
    html.append("<colgroup>");
    for (int column = 0; column < columns; column++) {
      int thousandths = 1000 * look.widthsMm().getOrDefault(column, 0) / all;
      double share = thousandths / 10.0;
      html.append("<col style=\"width: " + share + "%\"/>");
    }
    html.append("</colgroup>");
  }

  private void row(List<String> row) {
    html.append("<tr>");
    int column = 0;
    while (column < columns) {
      String text = column < row.size() ? row.get(column) : "";
      boolean takesNext =
          TIED.matcher(text).matches()
              && column + 1 < columns
              && !look.toFill().contains(column + 1)
              && row.get(column + 1).isEmpty();
      cell(column, text, takesNext ? " colspan=\"2\"" : "");
      column += takesNext ? 2 : 1;
    }
    html.append("</tr>\n");
  }

  private void cell(int column, String text, String span) {
    BarCode code = look.codes().get(column);
    List<String> choices = look.choices().get(column);
    html.append("<td" + span + cellClass(column, text) + height(column) + ">")
        .append(code == null ? "" : BarCodePicture.of(text, code))
        .append(choices == null ? names(text) : Html.escaped(String.join(" ", choices)))
        .append("</td>");
  }

  private String height(int column) {
    return look.rowMm() > 0 && look.toFill().contains(column)
        ? " style=\"height: " + look.rowMm() + "mm\""
        : "";
  }

  private String cellClass(int column, String text) {
    if (look.choices().containsKey(column)) {
      return " class=\"fill ring\"";
    }
    if (look.toFill().contains(column)) {
      return look.texts().contains(column) ? " class=\"fill words\"" : " class=\"fill\"";
    }
    return text.length() <= SHORT && text.indexOf('=') < 0 ? " class=\"short\"" : "";
  }

  /**
   * Of points tied together no line ends within a name; of a switch's position ({@code S5=LOCKED})
   * one may end behind the sign, and a box to tick is not broken.
   */
  private static String names(String text) {
    String escaped = Html.escaped(text).replace("[ ]", "[&#160;]");
    if (TIED.matcher(text).matches()) {
      return "<span class=\"name\">"
          + escaped.replace("+", "+</span> <span class=\"name\">")
          + "</span>";
    }
    return STATE.matcher(text).matches() ? escaped.replace("=", "= ") : escaped;
  }
}
