package dev.ringout.print;

import dev.ringout.pictures.Html;
import dev.ringout.sheet.OutSheet;
import dev.ringout.sheet.PrintForm;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Sheets as one page that needs nothing else: it prints well in black and white, and can be read on
 * any screen.
 */
public final class SheetsHtml {
  /** Of parts the pages are numbered when all are set. */
  private static final String NUMBERS =
      "@bottom-center { content: \"page \" counter(page) \" of \" counter(pages);"
          + " font: 9pt \"Liberation Sans\", Arial, sans-serif; }";

  private static final String STYLE =
      """
      @page { size: PAPER; margin: 16mm 10mm 16mm 10mm;
        @top-left { content: "TITLE"; font: 9pt "Liberation Sans", Arial, sans-serif; }
        @top-right { content: "WHICH"; font: 9pt "Liberation Sans", Arial, sans-serif; }
        @bottom-left { content: "RESUME"; font: 9pt "Liberation Sans", Arial, sans-serif; }
        @bottom-center { content: "page " counter(page) " of " counter(pages); font: 9pt "Liberation Sans", Arial, sans-serif; }
        @bottom-right { content: "SIGNED"; font: 9pt "Liberation Sans", Arial, sans-serif; } }
      body { font: 10pt "Liberation Sans", Arial, sans-serif; color: #000; background: #fff; margin: 0; }
      nav { display: none; }
      h1 { font-size: 15pt; margin: 0 0 2mm 0; }
      h2, p.warns { display: none; }
      section { margin: 0 0 6mm 0; }
      section.small { page-break-inside: avoid; }
      section.next { page-break-before: always; }
      table { border-collapse: collapse; width: 100%; -fs-table-paginate: paginate; }
      table.sized { table-layout: fixed; }
      thead { display: table-header-group; }
      tr { page-break-inside: avoid; }
      svg { display: inline-block; margin: 0 4mm 3mm 0; page-break-inside: avoid; }
      th.sheet { border: 0; font-size: 12pt; padding: 0 0 1mm 0; }
      th.caution { border: 0.6mm solid #000; font-size: 10pt; padding: 1.5mm 2mm; }
      th { border-bottom: 0.6mm solid #000; text-align: left; padding: 1mm 1.5mm; }
      td { border-bottom: 0.2mm solid #888; padding: 1.2mm 1.5mm; }
      td.short, span.name { white-space: nowrap; }
      td.fill { border: 0.2mm solid #000; min-width: 16mm; height: 6mm; }
      td.words { width: 45%; }
      table.sized td { padding-top: 0; padding-bottom: 0; }
      td.ring { font-size: 8.5pt; }
      tr.bar { page-break-after: avoid; }
      tr.bar td { background: #000; color: #fff; font-size: 11pt; padding: 1.8mm 2mm; }
      """;

  private static final String SCREEN_STYLE =
      """
      @media screen {
        h2, p.warns { display: block; } tr.sheet { display: none; }
        p.warns { border-left: 5px solid; padding-left: 10px; font-weight: bold; }
        td.fill { border-color: var(--ink); }
        tr.bar td { background: var(--ink); color: var(--paper); }
        table.sized { min-width: 820px; }
      }
      """;

  private static final int SMALL_ROWS = 8;

  private SheetsHtml() {}

  /**
   * The page.
   *
   * @param form what stands around every printed page
   * @param sheets those that are for print; others are left out
   */
  public static String write(PrintForm form, List<OutSheet> sheets) {
    return page(form, printed(sheets).stream().map(Piece::whole).toList(), true, true);
  }

  /** What a PDF is set from. */
  public static PaperParts forPaper(PrintForm form, List<OutSheet> sheets) {
    List<List<Piece>> parts = parts(printed(sheets));
    List<PaperParts.Part> pages = new ArrayList<>();
    for (List<Piece> part : parts) {
      boolean first = pages.isEmpty();
      pages.add(
          PaperParts.Part.html(
              () -> {
                String page = page(form, part, first, false);
                return parts.size() == 1 ? page : page.replace(NUMBERS, "");
              }));
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
      int start = 0;
      for (List<List<String>> some : PaperParts.pieces(sheet.rows())) {
        if (rows > 0 && rows + some.size() > PaperParts.MOST_ROWS) {
          parts.add(part);
          part = new ArrayList<>();
          rows = 0;
        }
        OutSheet.Look look = sheet.look().from(start, some.size(), sheet.rows().size());
        part.add(new Piece(new OutSheet(sheet.name(), sheet.headings(), some, look), goesOn));
        rows += some.size();
        goesOn = true;
        start += some.size();
      }
    }
    parts.add(part);
    return parts;
  }

  private static String page(PrintForm form, List<Piece> pieces, boolean titled, boolean screen) {
    StringBuilder html = new StringBuilder();
    String title = form.title();
    html.append("<!DOCTYPE html>\n<html lang=\"en\"><head><meta charset=\"utf-8\"/><title>")
        .append(Html.escaped(title))
        .append("</title>\n")
        .append(ScreenStyle.VIEWPORT)
        .append("<style>\n")
        .append(style(form))
        .append(screen ? ScreenStyle.COMMON + SCREEN_STYLE : "")
        .append("</style></head><body>\n")
        .append(screen ? navigation(pieces) : "")
        .append("<main>\n");
    if (titled) {
      html.append("<h1>").append(Html.escaped(title)).append("</h1>\n");
    }
    boolean first = true;
    for (Piece piece : pieces) {
      OutSheet sheet = piece.sheet();
      String place = isSmall(sheet) ? " class=\"small\"" : first ? "" : " class=\"next\"";
      html.append("<section" + place + id(sheet) + ">\n<h2>")
          .append(Html.escaped(heading(sheet)))
          .append("</h2>\n");
      if (!sheet.look().caution().isEmpty()) {
        html.append("<p class=\"warns\">")
            .append(Html.escaped(sheet.look().caution()))
            .append("</p>\n");
      }
      if (!piece.goesOn() && !sheet.look().picture().isEmpty()) {
        html.append("<div class=\"drawings\">").append(sheet.look().picture()).append("</div>\n");
      }
      new SheetTable(sheet, html).write();
      html.append("</section>\n");
      first = false;
    }
    return html.append("</main></body></html>\n").toString();
  }

  private static String navigation(List<Piece> pieces) {
    StringBuilder html = new StringBuilder("<nav aria-label=\"Sheets\"><ul>\n");
    for (Piece piece : pieces) {
      html.append("<li><a href=\"#" + address(piece.sheet()) + "\">")
          .append(Html.escaped(piece.sheet().name()))
          .append("</a></li>\n");
    }
    return html.append("</ul></nav>\n").toString();
  }

  private static String id(OutSheet sheet) {
    return " id=\"" + address(sheet) + "\"";
  }

  private static String address(OutSheet sheet) {
    return "sheet-" + sheet.name().toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-");
  }

  /** What shares a page with others. */
  private static boolean isSmall(OutSheet sheet) {
    return sheet.rows().size() <= SMALL_ROWS && sheet.look().picture().isEmpty();
  }

  private static String style(PrintForm form) {
    return STYLE
        .replace(
            "PAPER",
            (form.paper() == PrintForm.PaperSize.LETTER ? "letter" : "A4")
                + (form.upright() ? " portrait" : " landscape"))
        .replace("WHICH", Html.inCss(form.whichUnit()))
        .replace("RESUME", Html.inCss(form.resume()))
        .replace("SIGNED", Html.inCss(form.signed()))
        .replace("TITLE", Html.inCss(form.title()));
  }

  /** What stands above a sheet. */
  static String heading(OutSheet sheet) {
    String about = sheet.look().about();
    return about.isEmpty() ? sheet.name() : sheet.name() + ", " + about;
  }
}
