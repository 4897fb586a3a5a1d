package dev.ringout.bench;

import dev.ringout.bench.ListPage.Choice;
import dev.ringout.bench.ListPage.Column;
import dev.ringout.bench.ListPage.Line;
import dev.ringout.bench.ListPage.Understood;
import dev.ringout.harness.Harness;
import dev.ringout.harness.Link;
import dev.ringout.harness.Wire;
import dev.ringout.imports.list.Finding;
import dev.ringout.imports.list.Hypothesis;
import dev.ringout.imports.list.ImportResult;
import dev.ringout.imports.list.ImportResult.SheetReport;
import dev.ringout.imports.list.Layout;
import dev.ringout.imports.list.ListColumn;
import dev.ringout.imports.list.Units;
import dev.ringout.imports.list.Weighed;
import dev.ringout.source.Place;
import dev.ringout.units.Numbers;
import dev.ringout.words.HypothesisWords;
import dev.ringout.words.ImportWords;
import dev.ringout.words.Sentences;
import dev.ringout.words.UnderstandingWords;
import dev.ringout.words.UnitTitle;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** What was understood of a list, for who holds the list against it. */
public final class UnderstoodList {
  private static final int WIRES_SHOWN = 100;
  private static final int WAYS_SHOWN = 3;
  private static final int COLUMNS_SHOWN = 400;

  private UnderstoodList() {}

  /** A harness file of ours. */
  public static Understood of(Harness harness) {
    return understood(
        true,
        List.of(
            "This is a harness file already: " + UnitTitle.of(harness) + ".",
            Numbers.count(harness.wires().size(), "wire")
                + ", "
                + Numbers.count(harness.links().size(), "link")
                + ", "
                + Numbers.count(harness.items().size(), "item")
                + "."),
        harness.wires(),
        harness.links(),
        List.of(),
        List.of());
  }

  /**
   * A list of somebody else's.
   *
   * @param given the options by which it was read
   */
  public static Understood of(ImportResult result, List<String> given) {
    List<Choice> choices = new ArrayList<>();
    for (Weighed table : result.weighed()) {
      if (table.standing() != Weighed.Standing.CERTAIN) {
        table.offered(WAYS_SHOWN).forEach(way -> choices.add(choice(table, way, given)));
      }
    }
    result.findings().forEach(finding -> choices.addAll(units(finding, given)));
    return understood(
        false,
        says(result),
        result.wiring().wires(),
        result.wiring().links(),
        columns(result),
        choices);
  }

  private static Understood understood(
      boolean ours,
      List<String> says,
      List<Wire> wires,
      List<Link> links,
      List<Column> columns,
      List<Choice> choices) {
    List<Line> lines =
        Stream.concat(
                wires.stream().map(wire -> new Line(HypothesisWords.sentence(wire), wire.place())),
                links.stream().map(link -> new Line(HypothesisWords.sentence(link), link.place())))
            .limit(WIRES_SHOWN)
            .toList();
    int more = wires.size() + links.size() - lines.size();
    return new Understood(ours, says, lines, more, columns, choices);
  }

  private static List<Column> columns(ImportResult result) {
    Stream<Column> asked =
        result.weighed().stream()
            .filter(table -> table.standing() != Weighed.Standing.CERTAIN)
            .flatMap(
                table ->
                    columns(
                        table.sheet(),
                        table.sheet() + " " + table.firstCell(),
                        table.best().table().columns()));
    Stream<Column> read =
        result.sheets().stream()
            .filter(table -> table.layout() != Layout.NONE)
            .flatMap(
                table -> columns(table.sheet(), UnderstandingWords.name(table), table.columns()));
    return Stream.concat(asked, read).limit(COLUMNS_SHOWN).toList();
  }

  private static Stream<Column> columns(String sheet, String table, List<ListColumn> columns) {
    return columns.stream()
        .map(
            column ->
                new Column(
                    table,
                    sheet + "!" + Place.columnLetters(column.index()),
                    column.heading(),
                    column.role().title(),
                    column.certainty().word()));
  }

  private static List<String> says(ImportResult result) {
    List<String> says = new ArrayList<>();
    result.weighed().stream()
        .filter(table -> table.standing() != Weighed.Standing.CERTAIN)
        .forEach(
            table -> {
              String name = name(table);
              says.add(name + HypothesisWords.standing(table) + ".");
              says.add(
                  name
                      + "its columns are "
                      + UnderstandingWords.headings(table.best().table().columns())
                      + ".");
            });
    result.sheets().forEach(table -> says.addAll(says(table)));
    result
        .header()
        .forEach(
            fact ->
                says.add(
                    Sentences.capital(fact.name().word())
                        + ": "
                        + UnderstandingWords.fact(fact)
                        + "."));
    if (result.isDecided()) {
      says.add("In all " + UnderstandingWords.counts(result) + ".");
      result.cells().forEach(cells -> says.add(UnderstandingWords.cells(cells) + "."));
      String lost = UnderstandingWords.lost(result);
      if (!lost.isEmpty()) {
        says.add(lost + ".");
      }
    }
    return says;
  }

  private static List<String> says(SheetReport table) {
    String name = UnderstandingWords.name(table) + ": ";
    List<String> says = new ArrayList<>();
    says.add(name + UnderstandingWords.layout(table) + ".");
    if (table.layout() != Layout.NONE) {
      String roles = UnderstandingWords.roles(table.columns());
      if (!roles.isEmpty()) {
        says.add(name + roles + ".");
      }
      String kept = UnderstandingWords.keptAsNotes(table.columns());
      if (!kept.isEmpty()) {
        says.add(name + "kept as notes: " + kept + ".");
      }
    }
    says.add(name + UnderstandingWords.rows(table) + ".");
    return says;
  }

  private static String name(Weighed table) {
    return table.sheet() + " " + table.firstCell() + ": ";
  }

  private static Choice choice(Weighed table, Hypothesis way, List<String> given) {
    return new Choice(
        name(table) + ImportWords.layout(way.table().layout()) + ".",
        with(given, way.options()),
        way.first().stream().map(HypothesisWords::sentence).toList(),
        way.evidence().stream().map(HypothesisWords::evidence).toList());
  }

  private static List<String> with(List<String> given, List<String> more) {
    return Stream.concat(given.stream(), more.stream()).toList();
  }

  /** In which unit numbers without one may be. */
  private static List<Choice> units(Finding finding, List<String> given) {
    List<String> lengths = finding.oddity().lengthsWithoutUnit();
    if (!lengths.isEmpty()) {
      return units("Lengths", "--length-unit", lengths, words(), given);
    }
    List<String> gauges = finding.oddity().gaugesWithoutUnit();
    if (!gauges.isEmpty()) {
      List<String> words = Stream.of(Units.OfGauge.values()).map(Units.OfGauge::word).toList();
      return units("Gauges", "--gauge-unit", gauges, words, given);
    }
    return List.of();
  }

  private static List<String> words() {
    return Stream.of(Units.OfLength.values()).map(Units.OfLength::word).toList();
  }

  private static List<Choice> units(
      String what, String option, List<String> written, List<String> words, List<String> given) {
    return words.stream()
        .map(
            unit ->
                new Choice(
                    what + " without a unit are in " + unit + ".",
                    with(given, List.of(option, unit)),
                    written.stream().map(number -> number + " is " + number + " " + unit).toList(),
                    List.of()))
        .toList();
  }
}
