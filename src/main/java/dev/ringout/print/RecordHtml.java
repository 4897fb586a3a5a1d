package dev.ringout.print;

import dev.ringout.pictures.Html;
import dev.ringout.record.RecordBlock;
import dev.ringout.record.RecordContent;
import dev.ringout.sheet.PrintForm;
import dev.ringout.units.Text;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;

/**
 * A record as one page that needs nothing else: for a screen, light or dark, wide or narrow, with
 * the keyboard alone; for paper in black and white; and what the PDF is set from.
 */
public final class RecordHtml {
  /** Of parts the pages are numbered when all are set. */
  private static final String NUMBERS =
      "@bottom-right { content: \"page \" counter(page) \" of \" counter(pages);"
          + " font: 8pt \"Liberation Sans\", Arial, sans-serif; }";

  private static final String PAPER_STYLE =
      """
      @page { size: PAPER; margin: 16mm 12mm 16mm 12mm;
        @top-left { content: "TITLE"; font: 8pt "Liberation Sans", Arial, sans-serif; }
        @bottom-left { content: "DIGEST"; font: 7pt "Liberation Sans", Arial, sans-serif; }
        @bottom-right { content: "page " counter(page) " of " counter(pages); font: 8pt "Liberation Sans", Arial, sans-serif; } }
      div.wide td, div.wide th { font-size: 7pt; padding: 0.6mm 0.7mm; }
      body { font: 9.5pt "Liberation Sans", Arial, sans-serif; color: #000; background: #fff; margin: 0; line-height: 1.35; }
      h1 { font-size: 15pt; margin: 0 0 2mm 0; }
      h2 { font-size: 13pt; margin: 7mm 0 2mm 0; page-break-after: avoid; }
      h3 { font-size: 11pt; margin: 5mm 0 1mm 0; page-break-after: avoid; }
      p { margin: 1.2mm 0; }
      p.verdict { font-size: 17pt; border: 0.8mm solid #000; padding: 2mm 3mm; margin: 3mm 0; }
      p.bad { border-width: 1.6mm; }
      p.warns { border-left: 1.2mm solid #000; padding-left: 2.5mm; }
      table { border-collapse: collapse; width: 100%; margin: 1.5mm 0; -fs-table-paginate: paginate; }
      thead { display: table-header-group; }
      tr { page-break-inside: avoid; }
      th { border-bottom: 0.5mm solid #000; text-align: left; padding: 0.8mm 1.2mm; vertical-align: bottom; }
      td { border-bottom: 0.2mm solid #888; padding: 0.8mm 1.2mm; vertical-align: top; }
      td.short { white-space: nowrap; }
      td.pairs { width: 38mm; }
      tr.fails td { background: #ddd; border-bottom: 0.5mm solid #000; }
      figure { margin: 3mm 0; page-break-inside: avoid; }
      figcaption { font-size: 8.5pt; }
      td.sign { border: 0.3mm solid #000; height: 21mm; width: 33%; font-size: 8.5pt; }
      div.newpage { page-break-before: always; }
      nav, form { display: none; }
      """;

  private static final String SCREEN_STYLE =
      """
      @media screen {
        :root { color-scheme: light dark; --ink: #111; --paper: #fff; --line: #767676; --bad: #a40000; --good: #005c2e; }
        @media (prefers-color-scheme: dark) { :root { --ink: #eee; --paper: #161616; --line: #9a9a9a; --bad: #ff9c9c; --good: #8fe0b0; } }
        body { color: var(--ink); background: var(--paper); max-width: 1100px; margin: 0 auto; padding: 12px 16px; font-size: 16px; }
        nav { display: block; border-bottom: 1px solid var(--line); padding-bottom: 8px; }
        nav ul { display: flex; flex-wrap: wrap; gap: 4px 14px; margin: 0; padding: 0; list-style: none; }
        nav a { color: inherit; display: inline-block; padding: 4px 0; }
        a:focus-visible, input:focus-visible, button:focus-visible, div.scroll:focus-visible { outline: 3px solid currentColor; outline-offset: 2px; }
        p.verdict { border-color: var(--good); color: var(--good); } p.bad { border-color: var(--bad); color: var(--bad); }
        tr.fails td { background: transparent; color: var(--bad); font-weight: bold; border-bottom-color: var(--bad); }
        p.warns { border-left-color: var(--bad); }
        th { border-bottom-color: var(--ink); } td { border-bottom-color: var(--line); } td.sign { border-color: var(--ink); }
        div.scroll { overflow-x: auto; }
        div.wide td, div.wide th { font-size: 15px; padding: 3px 5px; } div.wide table { min-width: 900px; }
        figure svg { background: #fff; max-width: 100%; height: auto; }
        form { display: flex; flex-wrap: wrap; gap: 8px 16px; align-items: center; margin: 8px 0; }
        form input, form select { font: inherit; padding: 4px 6px; }
        div.newpage { border-top: 1px solid var(--line); margin-top: 16px; }
        code { overflow-wrap: anywhere; }
        p, figcaption { overflow-wrap: anywhere; }
      }
      """;

  /** Chooses rows by what is typed and by verdict; without it all rows are shown. */
  private static final String SCRIPT =
      """
      document.querySelectorAll('form').forEach(function (form) {
        var table = document.getElementById(form.getAttribute('data-for'));
        var said = form.querySelector('output');
        function choose() {
          var word = form.querySelector('input').value.trim().toLowerCase();
          var verdict = form.querySelector('select').value;
          var shown = 0;
          var rows = table.tBodies[0].rows;
          for (var i = 0; i < rows.length; i++) {
            var row = rows[i];
            var fits = row.textContent.toLowerCase().indexOf(word) >= 0
              && (verdict === '' || row.getAttribute('data-verdict') === verdict);
            row.hidden = !fits;
            shown += fits ? 1 : 0;
          }
          said.textContent = shown + ' of ' + rows.length + ' shown';
        }
        form.addEventListener('input', choose);
        form.addEventListener('change', choose);
        form.addEventListener('submit', function (event) { event.preventDefault(); });
        choose();
      });
      """;

  private final StringBuilder html = new StringBuilder();

  private RecordHtml() {}

  /** The page. */
  public static String write(RecordContent record, PrintForm.PaperSize paper) {
    return new RecordHtml().page(record, record.blocks(), paper, true);
  }

  /** What a PDF is set from: without what only a screen needs. */
  public static PaperParts forPaper(RecordContent record, PrintForm.PaperSize paper) {
    List<List<RecordBlock>> parts = parts(record.blocks());
    List<Supplier<String>> pages = new ArrayList<>();
    for (List<RecordBlock> part : parts) {
      pages.add(
          () -> {
            String page = new RecordHtml().page(record, part, paper, false);
            return parts.size() == 1 ? page : page.replace(NUMBERS, "");
          });
    }
    return new PaperParts(pages, PaperParts.Numbers.RIGHT);
  }

  private static List<List<RecordBlock>> parts(List<RecordBlock> blocks) {
    List<List<RecordBlock>> parts = new ArrayList<>();
    List<RecordBlock> part = new ArrayList<>();
    int rows = 0;
    for (RecordBlock block : blocks) {
      for (RecordBlock piece : block.inPieces(PaperParts.MOST_ROWS)) {
        if (rows > 0 && rows + piece.rowCount() > PaperParts.MOST_ROWS) {
          List<RecordBlock> next = new ArrayList<>();
          // A heading goes with what it begins.
          while (part.get(part.size() - 1).rowCount() == 0) {
            next.add(0, part.remove(part.size() - 1));
          }
          parts.add(part);
          part = next;
          rows = 0;
        }
        part.add(piece);
        rows += piece.rowCount();
      }
    }
    parts.add(part);
    return parts;
  }

  private String page(
      RecordContent record, List<RecordBlock> blocks, PrintForm.PaperSize paper, boolean screen) {
    String title = record.title();
    String digest = "content " + record.digest();
    html.append("<!DOCTYPE html>\n<html lang=\"en\"><head><meta charset=\"utf-8\"/><title>")
        .append(Html.escaped("Test record: " + title))
        .append("</title>\n<meta name=\"viewport\" content=\"width=device-width\"/>\n")
        .append("<meta name=\"description\" content=\"Test record of a wired unit\"/>\n<style>\n")
        .append(
            PAPER_STYLE
                .replace("PAPER", paper == PrintForm.PaperSize.LETTER ? "letter" : "A4")
                .replace("DIGEST", digest)
                .replace("TITLE", Html.inCss(title)))
        .append(screen ? SCREEN_STYLE : "")
        .append("</style></head><body>\n");
    if (screen) {
      navigation(blocks);
    }
    html.append("<main>\n");
    RecordPieces pieces = new RecordPieces(screen);
    blocks.forEach(block -> html.append(block.match(pieces)));
    html.append("</main>\n");
    if (screen) {
      html.append("<script>\n").append(SCRIPT).append("</script>\n");
    }
    return html.append("</body></html>\n").toString();
  }

  private void navigation(List<RecordBlock> blocks) {
    html.append("<nav aria-label=\"Parts of the record\"><ul>\n");
    for (RecordBlock block : blocks) {
      block
          .part()
          .ifPresent(
              heading ->
                  html.append(
                      Text.of(
                          "<li><a href=\"#%s\">%s</a></li>\n",
                          heading.id(), Html.escaped(heading.text()))));
    }
    html.append("</ul></nav>\n");
  }
}
