package dev.ringout.text;

import dev.ringout.harness.Wire;
import dev.ringout.imports.list.CellBalance;
import dev.ringout.imports.list.Evidence;
import dev.ringout.imports.list.Finding;
import dev.ringout.imports.list.HeaderFact;
import dev.ringout.imports.list.Hypothesis;
import dev.ringout.imports.list.ImportResult;
import dev.ringout.imports.list.ImportResult.RowCounts;
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
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** How a list was understood, on one screen. */
public final class ImportText {
  private static final int WIRES_SHOWN = 5;
  private static final int PLACES_SHOWN = 6;
  private static final int WAYS_SHOWN = 2;
  private static final int SHEETS_SHOWN_WHOLE = 3;
  private static final int COLUMNS_SHOWN = 16;

  private final Page page;
  private final List<String> given;
  private final ImportResult result;

  private ImportText(List<String> given, ImportResult result, boolean colour) {
    this.given = given;
    this.page = new Page(colour);
    this.result = result;
  }

  /**
   * The understanding: sheets, columns, first wires, counts, and what is suspect by kind.
   *
   * @param given what was typed after {@code ringout import}
   */
  public static String write(String file, List<String> given, ImportResult result, boolean colour) {
    ImportText text = new ImportText(given, result, colour);
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
    if (!open.isEmpty()) {
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
                page.styled(
                    Style.BAD,
                    table.decided()
                        ? "no wires are read here; if there are some, say which way"
                        : "not certain how to read it, so nothing is read")));
    page.paragraph("  its columns: ", headings(table.best().table().columns()));
    int number = 1;
    for (Hypothesis way : shown(table)) {
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

  /** The columns by their letters, as the options call them. */
  private static String headings(List<ListColumn> columns) {
    List<String> named = new ArrayList<>();
    for (ListColumn column : columns.stream().limit(COLUMNS_SHOWN).toList()) {
      String heading = column.heading().isEmpty() ? "(no heading)" : column.heading();
      named.add(Place.columnLetters(column.index()) + " " + heading);
    }
    boolean more = columns.size() > COLUMNS_SHOWN;
    return String.join(", ", named)
        + (more ? ", and " + (columns.size() - COLUMNS_SHOWN) + " more" : "");
  }

  /** The two best ways that tell wires, or one and none. */
  private static List<Hypothesis> shown(Weighed table) {
    List<Hypothesis> shown = new ArrayList<>();
    for (Hypothesis way : table.hypotheses()) {
      boolean tells = way.wires() > 0 || way.table().layout() == Layout.MARKS;
      if (shown.size() < WAYS_SHOWN && tells) {
        shown.add(way);
      }
    }
    if (!table.decided()) {
      table.hypotheses().stream()
          .filter(way -> way.table().layout() == Layout.NONE)
          .findFirst()
          .ifPresent(shown::add);
    }
    return shown;
  }

  private void sheet(SheetReport sheet, boolean whole) {
    String name = sheet.sheet() + (sheet.range().isEmpty() ? "" : " " + sheet.range());
    page.blank()
        .paragraph(
            "",
            Text.of(
                "%s: %s",
                page.styled(Style.STRONG, name),
                ImportWords.layout(sheet.layout())
                    + (sheet.headingRow() > 0
                        ? " (headings in row " + sheet.headingRow() + ")"
                        : "")));
    if (whole && sheet.layout() != Layout.NONE) {
      columns(sheet.columns());
    }
    page.paragraph("  ", rows(sheet));
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
    List<String> kept =
        columns.stream()
            .filter(column -> column.role() == Role.KEEP)
            .map(ListColumn::heading)
            .filter(heading -> !heading.isEmpty())
            .toList();
    if (!kept.isEmpty()) {
      page.paragraph("      kept as notes: ", String.join(", ", kept));
    }
  }

  private static String rows(SheetReport sheet) {
    RowCounts rows = sheet.rows();
    Map<String, Integer> counts = new LinkedHashMap<>();
    counts.put("wire", rows.wire());
    counts.put("spare", rows.spare());
    counts.put("heading", rows.heading());
    counts.put("note", rows.note());
    counts.put("blank", rows.blank());
    counts.put("skipped", rows.skipped());
    List<String> parts = new ArrayList<>();
    counts.forEach(
        (word, count) -> {
          if (count > 0) {
            parts.add(count + " " + word);
          }
        });
    return Numbers.count(rows.total(), row(sheet.layout())) + ": " + String.join(", ", parts);
  }

  /** What is counted of a list. */
  private static String row(Layout layout) {
    return layout == Layout.CONNECTIONS ? "connection" : "row";
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
      String where =
          fact.place().isNowhere()
              ? "as you say"
              : (fact.place().sheet().isEmpty() ? "" : fact.place().sheet() + "!")
                  + fact.place().cell();
      page.paragraph(Text.of("  %-12s", fact.name().word()), fact.value() + " (" + where + ")");
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
              Page.WIDTH));
    }
  }

  private void counts() {
    page.heading("In all");
    List<String> parts = new ArrayList<>();
    parts.add(Numbers.count(result.wiring().wires().size(), "wire"));
    if (!result.wiring().links().isEmpty()) {
      parts.add(Numbers.count(result.wiring().links().size(), "link"));
    }
    long spare = result.pinsWithoutWire();
    if (spare > 0) {
      parts.add(Numbers.count(spare, "pin") + " listed without a wire");
    }
    long named = result.wiring().pins().size() - spare;
    if (named > 0) {
      parts.add(Numbers.count(named, "wired pin") + " with a name beside");
    }
    if (result.found().bothEnds() > 0) {
      parts.add(
          Text.of(
              "%d found at both ends, %d at one end only, %d to a pin that the other end does not list, %d to an item without a list",
              result.found().bothEnds(),
              result.found().oneSided(),
              result.found().farPinNotListed(),
              result.found().farHasNoList()));
    }
    page.paragraph("  ", String.join("; ", parts));
    result.cells().forEach(this::cells);
    long lost = result.lostRows();
    if (lost > 0) {
      page.paragraph(
          "  ",
          page.styled(
              Style.BAD,
              Numbers.count(lost, row(result.sheets().get(0).layout()))
                  + " could not be read and may be wires"));
    }
  }

  /** What became of a sheet's cells, so that none is gone without a word. */
  private void cells(CellBalance cells) {
    Map<String, Integer> uses = new LinkedHashMap<>();
    uses.put("in wires", cells.wires());
    uses.put("in pins", cells.pins());
    uses.put("in notes", cells.notes());
    uses.put("in headings", cells.headings());
    uses.put("not read", cells.notRead());
    List<String> parts = new ArrayList<>();
    uses.forEach(
        (use, count) -> {
          if (count > 0) {
            parts.add(count + " " + use);
          }
        });
    if (cells.notUsed() > 0) {
      int more = cells.unused().size() - PLACES_SHOWN;
      parts.add(
          cells.notUsed()
              + " not used ("
              + String.join(", ", cells.unused().stream().limit(PLACES_SHOWN).toList())
              + (more > 0 ? " and " + more + " more" : "")
              + ")");
    }
    page.paragraph(
        "  ",
        Text.of(
            "%s: %s of %s",
            cells.sheet(), String.join(", ", parts), Numbers.count(cells.filled(), "filled cell")));
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
