package dev.ringout.print;

import dev.ringout.pictures.Html;
import dev.ringout.record.RecordBlock;
import dev.ringout.record.RecordContent;
import dev.ringout.sheet.PrintForm;
import dev.ringout.units.Text;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

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
        @top-right { content: "WHICH"; font: 8pt "Liberation Sans", Arial, sans-serif; }
        @bottom-left { content: "DIGEST"; font: 7pt "Liberation Sans", Arial, sans-serif; }
        @bottom-right { content: "page " counter(page) " of " counter(pages); font: 8pt "Liberation Sans", Arial, sans-serif; } }
      @page wide { size: PAPER landscape; margin: 16mm 12mm 16mm 12mm; }
      div.wide { page: wide; }
      div.wide td, div.wide th { font-size: 7.5pt; padding: 0.6mm 0.7mm; }
      body { font: 9.5pt "Liberation Sans", Arial, sans-serif; color: #000; background: #fff; margin: 0; line-height: 1.35; }
      h1 { font-size: 15pt; margin: 0 0 2mm 0; }
      h2 { font-size: 14pt; margin: 7mm 0 2mm 0; page-break-after: avoid; }
      h3 { font-size: 12pt; margin: 5mm 0 1mm 0; page-break-after: avoid; }
      p { margin: 1.2mm 0; }
      p.verdict { font-size: 24pt; font-weight: bold; line-height: 1.15; border: 0.8mm solid #000; padding: 2.5mm 3mm; margin: 3mm 0; }
      div.together { page-break-inside: avoid; }
      p.bad { border-width: 1.6mm; }
      p.warns { border-left: 1.2mm solid #000; padding-left: 2.5mm; }
      table { border-collapse: collapse; width: 100%; margin: 1.5mm 0; -fs-table-paginate: paginate; }
      thead { display: table-header-group; }
      tr { page-break-inside: avoid; }
      th { border-bottom: 0.5mm solid #000; text-align: left; padding: 0.8mm 1.2mm; vertical-align: bottom; }
      td { border-bottom: 0.2mm solid #888; padding: 0.8mm 1.2mm; vertical-align: top; }
      td.short { white-space: nowrap; }
      th.pairs { white-space: nowrap; width: 1%; vertical-align: top; border-bottom: 0.2mm solid #888; }
      tr.fails td { background: #ddd; border-bottom: 0.5mm solid #000; }
      figure { margin: 3mm 0; page-break-inside: avoid; }
      svg { display: inline-block; margin: 0 2mm 1mm 0; }
      figcaption { font-size: 8.5pt; }
      td.sign { border: 0.3mm solid #000; height: 21mm; width: 33%; font-size: 8.5pt; }
      div.newpage { page-break-before: always; }
      nav, form { display: none; }
      """;

  private static final String SCREEN_STYLE =
      """
      @media screen {
        p.verdict { font-size: 34px; }
        p.verdict { border-color: var(--good); color: var(--good); } p.bad { border-color: var(--bad); color: var(--bad); }
        tr.fails td { background: transparent; color: var(--bad); font-weight: bold; border-bottom-color: var(--bad); }
        td.sign { border-color: var(--ink); }
        div.wide td, div.wide th { font-size: 15px; padding: 3px 5px; } div.wide table { min-width: 900px; }
        form { display: flex; flex-wrap: wrap; gap: 8px 16px; align-items: center; margin: 8px 0; }
        form input, form select { font: inherit; padding: 4px 6px; }
        div.newpage { border-top: 1px solid var(--line); margin-top: 16px; }
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
    List<PaperParts.Part> pages = new ArrayList<>();
    for (List<RecordBlock> part : parts) {
      Optional<RecordBlock.Table> table = longTable(part);
      pages.add(
          table.isPresent()
              ? PaperParts.Part.longTable(paperTable(record, table.get(), paper))
              : PaperParts.Part.html(
                  () -> {
                    String page = new RecordHtml().page(record, part, paper, false);
                    return parts.size() == 1 ? page : page.replace(NUMBERS, "");
                  }));
    }
    return new PaperParts(pages, PaperParts.Numbers.RIGHT);
  }

  private static PaperTable paperTable(
      RecordContent record, RecordBlock.Table table, PrintForm.PaperSize paper) {
    Set<Integer> failing = new HashSet<>();
    for (int row = 0; row < table.rows().size() && table.stateColumn() >= 0; row++) {
      if (RecordPieces.stands(table.rows().get(row).get(table.stateColumn()))) {
        failing.add(row);
      }
    }
    return new PaperTable(
        record.title(),
        which(record),
        "content " + record.digest(),
        paper.longMm(),
        paper.shortMm(),
        table.headings().subList(0, table.shown()),
        table.rows().stream().map(row -> row.subList(0, table.shown())).toList(),
        failing);
  }

  private static Optional<RecordBlock.Table> longTable(List<RecordBlock> part) {
    return part.size() == 1 && part.get(0).rowCount() > PaperParts.LONG_ROWS
        ? part.get(0).asTable()
        : Optional.empty();
  }

  /** The pieces in parts that can be set at once; a long table is one by itself. */
  private static List<List<RecordBlock>> parts(List<RecordBlock> blocks) {
    List<List<RecordBlock>> parts = new ArrayList<>();
    List<RecordBlock> part = new ArrayList<>();
    int rows = 0;
    for (RecordBlock block : blocks) {
      if (block.rowCount() > PaperParts.LONG_ROWS) {
        parts.add(part);
        parts.add(List.of(block));
        part = new ArrayList<>();
        rows = 0;
        continue;
      }
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
    parts.removeIf(List::isEmpty);
    return parts;
  }

  private String page(
      RecordContent record, List<RecordBlock> blocks, PrintForm.PaperSize paper, boolean screen) {
    String title = record.title();
    String digest = "content " + record.digest();
    html.append("<!DOCTYPE html>\n<html lang=\"en\"><head><meta charset=\"utf-8\"/><title>")
        .append(Html.escaped("Test record: " + title))
        .append("</title>\n")
        .append(ScreenStyle.VIEWPORT)
        .append("<meta name=\"description\" content=\"Test record of a wired unit\"/>\n<style>\n")
        .append(
            PAPER_STYLE
                .replace("PAPER", paper == PrintForm.PaperSize.LETTER ? "letter" : "A4")
                .replace("DIGEST", digest)
                .replace("WHICH", Html.inCss(which(record)))
                .replace("TITLE", Html.inCss(title)))
        .append(screen ? ScreenStyle.COMMON + SCREEN_STYLE : "")
        .append("</style></head><body>\n");
    if (screen) {
      navigation(blocks);
    }
    html.append("<main>\n");
    RecordPieces pieces = new RecordPieces(screen);
    for (List<RecordBlock> some : Together.of(blocks)) {
      html.append(some.size() > 1 ? "<div class=\"together\">\n" : "");
      some.forEach(block -> html.append(block.match(pieces)));
      html.append(some.size() > 1 ? "</div>\n" : "");
    }
    html.append("</main>\n");
    if (screen) {
      html.append("<script>\n").append(SCRIPT).append("</script>\n");
    }
    return html.append("</body></html>\n").toString();
  }

  private static String which(RecordContent record) {
    return record.serial().isEmpty()
        ? "serial number not stated"
        : "serial number " + record.serial();
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
