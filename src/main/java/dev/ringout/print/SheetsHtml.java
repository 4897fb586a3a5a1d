package dev.ringout.print;

import dev.ringout.pictures.BarCodePicture;
import dev.ringout.pictures.Html;
import dev.ringout.sheet.BarCode;
import dev.ringout.sheet.OutSheet;
import dev.ringout.sheet.PrintForm;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;

/** Sheets for paper: one page that prints well in black and white, and needs nothing else. */
public final class SheetsHtml {
  /** Of parts the pages are numbered when all are set. */
  private static final String NUMBERS =
      "@bottom-center { content: \"page \" counter(page) \" of \" counter(pages);"
          + " font: 9pt \"Liberation Sans\", Arial, sans-serif; }";

  private static final String STYLE =
      """
      @page { size: PAPER landscape; margin: 16mm 10mm 16mm 10mm;
        @top-left { content: "TITLE"; font: 9pt "Liberation Sans", Arial, sans-serif; }
        @top-right { content: "WHICH"; font: 9pt "Liberation Sans", Arial, sans-serif; }
        @bottom-left { content: "RESUME"; font: 9pt "Liberation Sans", Arial, sans-serif; }
        @bottom-center { content: "page " counter(page) " of " counter(pages); font: 9pt "Liberation Sans", Arial, sans-serif; }
        @bottom-right { content: "SIGNED"; font: 9pt "Liberation Sans", Arial, sans-serif; } }
      body { font: 10pt "Liberation Sans", Arial, sans-serif; color: #000; margin: 0; }
      @media screen { body { margin: 8mm; } }
      h1 { font-size: 15pt; margin: 0 0 2mm 0; }
      section { margin: 0 0 6mm 0; }
      section.small { page-break-inside: avoid; }
      td.short { white-space: nowrap; }
      section.next { page-break-before: always; }
      table { border-collapse: collapse; width: 100%; -fs-table-paginate: paginate; }
      thead { display: table-header-group; }
      tr { page-break-inside: avoid; }
      svg { display: block; margin: 0 0 3mm 0; page-break-inside: avoid; }
      th.sheet { border: 0; font-size: 12pt; padding: 0 0 1mm 0; }
      th { border-bottom: 0.6mm solid #000; text-align: left; padding: 1mm 1.5mm; }
      td { border-bottom: 0.2mm solid #888; padding: 1.2mm 1.5mm; }
      td.fill { border: 0.2mm solid #000; min-width: 16mm; height: 6mm; }
      td.words { width: 45%; }
      """;

  private static final int SMALL_ROWS = 8;

  /** Letters of a cell that is not broken into lines. */
  private static final int SHORT = 9;

  private SheetsHtml() {}

  /**
   * The page.
   *
   * @param form what stands around every printed page
   * @param sheets those that are for print; others are left out
   */
  public static String write(PrintForm form, List<OutSheet> sheets) {
    return page(form, printed(sheets).stream().map(Piece::whole).toList(), true);
  }

  /** What a PDF is set from. */
  public static PaperParts forPaper(PrintForm form, List<OutSheet> sheets) {
    List<List<Piece>> parts = parts(printed(sheets));
    List<Supplier<String>> pages = new ArrayList<>();
    for (List<Piece> part : parts) {
      boolean first = pages.isEmpty();
      pages.add(
          () -> {
            String page = page(form, part, first);
            return parts.size() == 1 ? page : page.replace(NUMBERS, "");
          });
    }
    return new PaperParts(pages, PaperParts.Numbers.MIDDLE);
  }

  /** A sheet, or some of its rows that go on from the part before. */
  private record Piece(OutSheet sheet, boolean goesOn) {
    static Piece whole(OutSheet sheet) {
      return new Piece(sheet, false);
    }
  }

  private static List<OutSheet> printed(List<OutSheet> sheets) {
    return sheets.stream().filter(sheet -> !sheet.look().title().isEmpty()).toList();
  }

  private static List<List<Piece>> parts(List<OutSheet> sheets) {
    List<List<Piece>> parts = new ArrayList<>();
    List<Piece> part = new ArrayList<>();
    int rows = 0;
    for (OutSheet sheet : sheets) {
      boolean goesOn = false;
      for (List<List<String>> some : PaperParts.pieces(sheet.rows())) {
        if (rows > 0 && rows + some.size() > PaperParts.MOST_ROWS) {
          parts.add(part);
          part = new ArrayList<>();
          rows = 0;
        }
        part.add(
            new Piece(new OutSheet(sheet.name(), sheet.headings(), some, sheet.look()), goesOn));
        rows += some.size();
        goesOn = true;
      }
    }
    parts.add(part);
    return parts;
  }

  private static String page(PrintForm form, List<Piece> pieces, boolean titled) {
    StringBuilder html = new StringBuilder();
    String title = form.title();
    html.append("<!DOCTYPE html>\n<html lang=\"en\"><head><meta charset=\"utf-8\"/><title>")
        .append(Html.escaped(title))
        .append("</title><style>\n")
        .append(style(form))
        .append("</style></head><body>\n");
    if (titled) {
      html.append("<h1>").append(Html.escaped(title)).append("</h1>\n");
    }
    boolean first = true;
    for (Piece piece : pieces) {
      OutSheet sheet = piece.sheet();
      String place = isSmall(sheet) ? " class=\"small\"" : first ? "" : " class=\"next\"";
      html.append("<section" + place + ">\n").append(piece.goesOn() ? "" : sheet.look().picture());
      table(sheet, html);
      html.append("</section>\n");
      first = false;
    }
    return html.append("</body></html>\n").toString();
  }

  /** What shares a page with others. */
  private static boolean isSmall(OutSheet sheet) {
    return sheet.rows().size() <= SMALL_ROWS && sheet.look().picture().isEmpty();
  }

  private static String cellClass(OutSheet sheet, int column, String text) {
    if (sheet.look().toFill().contains(column)) {
      boolean words = sheet.look().texts().contains(column);
      return words ? "<td class=\"fill words\">" : "<td class=\"fill\">";
    }
    return text.length() <= SHORT ? "<td class=\"short\">" : "<td>";
  }

  private static String style(PrintForm form) {
    return STYLE
        .replace("PAPER", form.paper() == PrintForm.PaperSize.LETTER ? "letter" : "A4")
        .replace("WHICH", Html.inCss(form.whichUnit()))
        .replace("RESUME", Html.inCss(form.resume()))
        .replace("SIGNED", Html.inCss(form.signed()))
        .replace("TITLE", Html.inCss(form.title()));
  }

  private static String heading(OutSheet sheet) {
    String about = sheet.look().about();
    return about.isEmpty() ? sheet.name() : sheet.name() + ", " + about;
  }

  private static void table(OutSheet sheet, StringBuilder html) {
    html.append("<table><thead><tr><th class=\"sheet\" colspan=\"")
        .append(sheet.headings().size())
        .append("\">")
        .append(Html.escaped(heading(sheet)))
        .append("</th></tr><tr>");
    sheet
        .headings()
        .forEach(heading -> html.append("<th>").append(Html.escaped(heading)).append("</th>"));
    html.append("</tr></thead><tbody>\n");
    for (List<String> row : sheet.rows()) {
      html.append("<tr>");
      for (int column = 0; column < sheet.headings().size(); column++) {
        String text = column < row.size() ? row.get(column) : "";
        BarCode code = sheet.look().codes().get(column);
        html.append(cellClass(sheet, column, text))
            .append(code == null ? "" : BarCodePicture.of(text, code))
            .append(Html.escaped(text))
            .append("</td>");
      }
      html.append("</tr>\n");
    }
    html.append("</tbody></table>\n");
  }
}
