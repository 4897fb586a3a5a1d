package dev.ringout.text;

import dev.ringout.harness.Wire;
import dev.ringout.imports.list.Evidence;
import dev.ringout.imports.list.Finding;
import dev.ringout.imports.list.HeaderFact;
import dev.ringout.imports.list.Hypothesis;
import dev.ringout.imports.list.ImportResult;
import dev.ringout.imports.list.ImportResult.SheetReport;
import dev.ringout.imports.list.Layout;
import dev.ringout.imports.list.ListColumn;
import dev.ringout.imports.list.OddityKind;
import dev.ringout.imports.list.Role;
import dev.ringout.imports.list.Weighed;
import dev.ringout.source.Place;
import dev.ringout.source.Severity;
import dev.ringout.text.Page.Style;
import dev.ringout.units.Numbers;
import dev.ringout.units.Text;
import dev.ringout.words.HypothesisWords;
import dev.ringout.words.ImportWords;
import dev.ringout.words.UnderstandingWords;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** How a list was understood, on one screen. */
public final class ImportText {
  private static final int WIRES_SHOWN = 5;
  private static final int WAYS_SHOWN = 3;
  private static final int SHEETS_SHOWN_WHOLE = 3;
  private static final int COLUMNS_SHOWN = 16;

  private final Page page;
  private final List<String> given;
  private final ImportResult result;

  private ImportText(List<String> given, ImportResult result, Look look) {
    this.given = given;
    this.page = new Page(look);
    this.result = result;
  }

  /**
   * The understanding: sheets, columns, first wires, counts, and what is suspect by kind.
   *
   * @param given what was typed after {@code ringout import}
   */
  public static String write(String file, List<String> given, ImportResult result, Look look) {
    ImportText text = new ImportText(given, result, look);
    text.write(file);
    return text.page.toString();
  }

  private void write(String file) {
    page.line(page.styled(Style.STRONG, file));
    List<Weighed> open =
        result.weighed().stream()
            .filter(table -> table.standing() != Weighed.Standing.CERTAIN)
            .toList();
    open.forEach(this::ways);
    boolean nothingRead = result.wiring().wires().isEmpty() && result.wiring().links().isEmpty();
    if (!open.isEmpty() || nothingRead) {
      page.blank().paragraph("", HypothesisWords.NONE_OF_THESE);
      for (HypothesisWords.Hint hint : HypothesisWords.HINTS) {
        page.paragraph(Text.of("  %-25s", hint.where()), hint.options());
      }
    }
    int shown = 0;
    for (SheetReport sheet : result.sheets()) {
      sheet(sheet, shown++ < SHEETS_SHOWN_WHOLE);
    }
    header();
    wires();
    if (result.isDecided()) {
      counts();
    }
    findings();
  }

  /** The two best ways to read a table, side by side as sentences, and how to say which it is. */
  private void ways(Weighed table) {
    page.blank()
        .paragraph(
            "",
            Text.of(
                "%s: %s",
                page.styled(Style.STRONG, table.sheet() + " " + table.firstCell()),
                page.styled(Style.BAD, HypothesisWords.standing(table))));
    page.paragraph("  its columns: ", UnderstandingWords.headings(table.best().table().columns()));
    int number = 1;
    for (Hypothesis way : table.offered(WAYS_SHOWN)) {
      page.blank()
          .paragraph(
              "  " + number + ". ",
              page.styled(Style.STRONG, ImportWords.layout(way.table().layout()))
                  + Text.of(" (%d for it)", way.score()));
      number++;
      for (Hypothesis.Sample wire : way.first()) {
        page.paragraph("       ", HypothesisWords.sentence(wire));
      }
      if (way.first().isEmpty()) {
        page.line("       no wires");
      }
      for (Evidence found : way.evidence()) {
        page.paragraph(Text.of("     %+4d  ", found.points()), HypothesisWords.evidence(found));
      }
      // In one line, however long: a wrapped command can't be copied.
      page.line("     say so: " + HypothesisWords.command(given, way));
    }
  }

  private void sheet(SheetReport sheet, boolean whole) {
    page.blank()
        .paragraph(
            "",
            Text.of(
                "%s: %s",
                page.styled(Style.STRONG, UnderstandingWords.name(sheet)),
                UnderstandingWords.layout(sheet)));
    if (whole && sheet.layout() != Layout.NONE) {
      columns(sheet.columns());
    }
    page.paragraph("  ", UnderstandingWords.rows(sheet));
  }

  private void columns(List<ListColumn> columns) {
    List<ListColumn> understood =
        columns.stream().filter(column -> column.role() != Role.KEEP).toList();
    for (ListColumn column : understood.stream().limit(COLUMNS_SHOWN).toList()) {
      page.line(
          Text.of(
              "  %-3s %-30s %-13s %s",
              Place.columnLetters(column.index()),
              cut(column.heading(), 30),
              column.role().title(),
              column.certainty().word()));
    }
    int more = understood.size() - COLUMNS_SHOWN;
    if (more > 0) {
      page.line("      and " + Numbers.count(more, "column") + " more like these");
    }
    String kept = UnderstandingWords.keptAsNotes(columns);
    if (!kept.isEmpty()) {
      page.paragraph("      kept as notes: ", kept);
    }
  }

  private static String cut(String text, int length) {
    return text.length() <= length ? text : text.substring(0, length - 1) + "…";
  }

  private void header() {
    if (result.header().isEmpty()) {
      return;
    }
    page.heading("Header");
    for (HeaderFact fact : result.header()) {
      page.paragraph(Text.of("  %-12s", fact.name().word()), UnderstandingWords.fact(fact));
    }
  }

  private void wires() {
    List<Wire> wires = result.wiring().wires();
    if (wires.isEmpty()) {
      return;
    }
    page.heading("First wires");
    for (Wire wire : wires.subList(0, Math.min(WIRES_SHOWN, wires.size()))) {
      String unnamed = wire.from() + ">" + wire.to();
      page.line(
          cut(
              Text.of(
                  "  %-10s %-22s %-22s %s",
                  wire.name().equals(unnamed) ? "-" : cut(wire.name(), 10),
                  cut(wire.from().toString(), 22),
                  cut(wire.to().toString(), 22),
                  String.join(" ", wire.gaugeLabel(), wire.colour(), wire.signal()).strip()),
              page.width()));
    }
  }

  private void counts() {
    page.heading("In all");
    page.paragraph("  ", UnderstandingWords.counts(result));
    result.cells().forEach(cells -> page.paragraph("  ", UnderstandingWords.cells(cells)));
    String lost = UnderstandingWords.lost(result);
    if (!lost.isEmpty()) {
      page.paragraph("  ", page.styled(Style.BAD, lost));
    }
  }

  private void findings() {
    if (result.findings().isEmpty()) {
      return;
    }
    page.heading("To look at");
    Map<OddityKind, List<Finding>> byKind = new TreeMap<>();
    for (Finding finding : result.findings()) {
      byKind.computeIfAbsent(finding.kind(), kind -> new ArrayList<>()).add(finding);
    }
    for (Severity severity : Severity.values()) {
      byKind.forEach(
          (kind, all) -> {
            if (worst(all) == severity) {
              kind(kind, all);
            }
          });
    }
  }

  private static Severity worst(List<Finding> findings) {
    return findings.stream()
        .map(finding -> finding.severity())
        .min(Severity::compareTo)
        .orElse(Severity.NOTE);
  }

  private void kind(OddityKind kind, List<Finding> all) {
    Severity worst = worst(all);
    Style style =
        worst == Severity.ERROR ? Style.BAD : worst == Severity.WARNING ? Style.OWED : Style.STRONG;
    Finding first = all.stream().filter(one -> one.severity() == worst).findFirst().orElseThrow();
    String where = first.place().sheet().isEmpty() ? "" : first.place().sheet() + "!";
    page.paragraph(
        "  " + page.styled(style, Text.of("%-8s", worst.word())) + Text.of("%4d  ", all.size()),
        ImportWords.kind(kind)
            + (all.size() == 1 ? ": " : ", as at ")
            + where
            + first.place().cell());
  }
}
