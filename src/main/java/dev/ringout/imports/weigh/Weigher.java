package dev.ringout.imports.weigh;

import dev.ringout.imports.find.Proposals;
import dev.ringout.imports.find.Proposals.Doubt;
import dev.ringout.imports.find.Proposals.Proposal;
import dev.ringout.imports.find.Region;
import dev.ringout.imports.list.ColumnCertainty;
import dev.ringout.imports.list.ColumnChoice;
import dev.ringout.imports.list.Draft;
import dev.ringout.imports.list.End;
import dev.ringout.imports.list.Evidence;
import dev.ringout.imports.list.Evidence.Kind;
import dev.ringout.imports.list.Grammar;
import dev.ringout.imports.list.Hypothesis;
import dev.ringout.imports.list.Hypothesis.Sample;
import dev.ringout.imports.list.ImportOptions;
import dev.ringout.imports.list.Layout;
import dev.ringout.imports.list.ListColumn;
import dev.ringout.imports.list.ListTable;
import dev.ringout.imports.list.Role;
import dev.ringout.imports.list.Said;
import dev.ringout.imports.list.Weighed;
import dev.ringout.imports.list.Words;
import dev.ringout.source.Place;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Weighs the ways to read a table by evidence. Certain is one whose evidence is enough by itself
 * and stands well apart from every other way that would make other wires; a table of which even the
 * best way has little for it holds no wires; all between is asked.
 */
public final class Weigher {
  /** With so much evidence a way of reading is taken. */
  static final int ENOUGH = 50;

  /** With less than this a table holds no wires. */
  static final int LITTLE = 20;

  /** By so much another way with other wires must be behind. */
  static final int APART = 20;

  private static final int SAMPLES = 3;

  private final Words words;
  private final ImportOptions options;
  private final Map<String, Integer> numbers = new HashMap<>();

  /**
   * Weighs by these words, and by what the user said.
   *
   * @param regions all tables of the list: a wire's two ends may stand in two of them
   */
  public Weigher(Words words, ImportOptions options, List<Region> regions) {
    this.words = words;
    this.options = options;
    for (Region region : regions) {
      Proposals.of(region, words, Optional.of(Layout.WIRE_ENDS), Optional.empty())
          .proposals()
          .stream()
          .filter(proposal -> proposal.table().layout() == Layout.WIRE_ENDS)
          .map(proposal -> Outcome.of(proposal.table(), words, options))
          .forEach(
              outcome ->
                  outcome
                      .halves()
                      .forEach(
                          (number, halves) -> numbers.merge(number, halves.size(), Integer::sum)));
    }
  }

  /**
   * Tables with the headings of one that is certain are read as it is, where they can be: the
   * sheets of a workbook are laid out alike.
   */
  public static List<Weighed> alike(List<Weighed> tables) {
    Map<List<String>, Layout> certain = new HashMap<>();
    for (Weighed table : tables) {
      if (table.decided() && table.best().table().layout().tellsWires()) {
        certain.putIfAbsent(headings(table), table.best().table().layout());
      }
    }
    List<Weighed> alike = new ArrayList<>();
    for (Weighed table : tables) {
      Layout layout = certain.get(headings(table));
      Optional<Hypothesis> same =
          table.hypotheses().stream()
              .filter(way -> way.table().layout() == layout && way.score() >= 0)
              .filter(way -> way.evidence().stream().noneMatch(Weigher::leavesOpen))
              .findFirst();
      alike.add(table.decided() || same.isEmpty() ? table : asAlike(table, same.get()));
    }
    return alike;
  }

  /**
   * Tables that list pins of an item, with something beside them, of which no wires are taken, are
   * open where another table is certain that tells wires to pins of that item.
   */
  public static List<Weighed> openWhereItemsAreWired(List<Weighed> tables) {
    Set<String> wired = new HashSet<>();
    for (Weighed table : tables) {
      if (table.decided() && table.best().table().layout().tellsWires()) {
        wired.addAll(itemsOfPins(table.best().table()));
      }
    }
    return tables.stream()
        .map(
            table ->
                !table.best().table().layout().tellsWires()
                        && !table.best().isSaid()
                        && table.mayTellWires()
                        && itemsOfPins(table.best().table()).stream().anyMatch(wired::contains)
                    ? table.open()
                    : table)
        .toList();
  }

  /** The items that headings of pins name. */
  private static Set<String> itemsOfPins(ListTable table) {
    Set<String> items = new HashSet<>();
    for (ListColumn column : table.columns()) {
      boolean pins =
          column.role() == Role.PIN || column.role() == Role.POINTS || column.role().isPinOfEnd();
      if (pins && column.known() && column.item().length() > 1) {
        items.add(column.item().toLowerCase(Locale.ROOT));
      }
    }
    return items;
  }

  /**
   * Where every table can be read in one way, a single option says it of all: those of the tables
   * one by one are as many as there are tables.
   */
  public static List<Weighed> saidOfAll(List<Weighed> tables) {
    if (tables.size() < 2) {
      return tables;
    }
    return tables.stream()
        .map(
            table ->
                new Weighed(
                    table.sheet(),
                    table.firstCell(),
                    table.hypotheses().stream()
                        .map(way -> canBeSaidOfAll(way, tables) ? saidOfAll(way) : way)
                        .toList(),
                    table.standing()))
        .toList();
  }

  private static boolean canBeSaidOfAll(Hypothesis way, List<Weighed> tables) {
    Layout layout = way.table().layout();
    return layout.tellsWires()
        && isLayoutAlone(way)
        && tables.stream()
            .allMatch(
                table ->
                    table.decided()
                        ? table.best().table().layout() == layout
                        : table.hypotheses().stream()
                            .anyMatch(
                                other ->
                                    other.table().layout() == layout
                                        && isLayoutAlone(other)
                                        && other.score() >= 0));
  }

  private static boolean isLayoutAlone(Hypothesis way) {
    return way.options().size() == 2 && way.options().get(0).equals("--layout");
  }

  private static Hypothesis saidOfAll(Hypothesis way) {
    return new Hypothesis(
        way.table(),
        way.score(),
        way.evidence(),
        way.wires(),
        way.first(),
        List.of("--layout", way.table().layout().word()));
  }

  private static boolean leavesOpen(Evidence found) {
    return found.kind() == Kind.COLUMN_MATTERS
        || found.kind() == Kind.BRIDGES_BY_MARKS
        || found.kind() == Kind.NAMES_MAY_BE_ENDS;
  }

  private static Weighed asAlike(Weighed table, Hypothesis way) {
    List<Evidence> evidence = new ArrayList<>(way.evidence());
    evidence.add(new Evidence(Evidence.Kind.SAME_HEADINGS, ENOUGH, 0, 0, ""));
    List<Hypothesis> ways = new ArrayList<>(table.hypotheses());
    ways.remove(way);
    ways.add(
        0,
        new Hypothesis(
            way.table(), way.score() + ENOUGH, evidence, way.wires(), way.first(), way.options()));
    return new Weighed(table.sheet(), table.firstCell(), ways, Weighed.Standing.CERTAIN);
  }

  private static List<String> headings(Weighed table) {
    return table.best().table().columns().stream().map(ListColumn::key).toList();
  }

  private record Tried(
      Region region, Proposal proposal, Outcome outcome, List<Evidence> evidence, int score) {
    Layout layout() {
      return proposal.table().layout();
    }

    boolean has(Kind kind) {
      return evidence.stream().anyMatch(found -> found.kind() == kind);
    }

    /** Whether it makes wires between full points, though something speaks against it. */
    boolean looksLikeWires() {
      return makesWires()
          && !isShownOnly()
          && score > -100
          && outcome.wires().size() >= 3
          && has(Kind.ENDS_LOOK_LIKE_POINTS);
    }

    /** It is a way that is never taken by itself, and never speaks against another. */
    boolean isShownOnly() {
      return proposal.doubt() == Doubt.NAMES_MAY_BE_ENDS || isOfOtherEnds();
    }

    private boolean isOfOtherEnds() {
      return proposal.doubt() == Doubt.OTHER_ENDS || isByCells();
    }

    /** Whether the heading itself says whose pins they are. */
    boolean isNamedByHeading(ListColumn column) {
      return region.columns().stream()
          .anyMatch(
              headed -> headed.index() == column.index() && headed.item().equals(column.item()));
    }

    /** Whether a heading says that a column is an end, or a part of one. */
    boolean isHeadedAsEnd(ListColumn column) {
      return region.columns().stream()
          .filter(headed -> headed.index() == column.index() && !headed.isSaid())
          .map(ListColumn::role)
          .anyMatch(
              role -> role.isEnd() || role == Role.PIN || role == Role.ITEM || role == Role.POINTS);
    }

    private boolean isByCells() {
      return proposal.doubt() == Doubt.ENDS_BY_CELLS;
    }

    boolean makesWires() {
      return layout().tellsWires()
          && (!outcome.wires().isEmpty()
              || !outcome.nets().isEmpty()
              || !outcome.halves().isEmpty()
              || (score >= ENOUGH && outcome.losesRows()));
    }
  }

  /**
   * Every way to read a table, the best first.
   *
   * @param alone whether the list has no other table and no other sheet, so that options need not
   *     name this one
   */
  public Weighed weigh(Region region, boolean alone) {
    String sheet = region.grid().name();
    String cell = region.firstCell();
    Optional<Layout> layout =
        Said.of(options.shape().layouts(), sheet, cell).or(() -> impliedBy(region.columns()));
    Optional<Grammar> grammar = Said.of(options.shape().separators(), sheet, cell);
    TableTexts texts = new TableTexts(region, words);
    List<Tried> tried = new ArrayList<>();
    Proposals.Ways ways = Proposals.of(region, words, layout, grammar);
    for (Proposal proposal : ways.proposals()) {
      Tried one = tryOut(region, proposal, texts);
      boolean same =
          tried.stream()
              .anyMatch(
                  other ->
                      other.layout() == one.layout()
                          && other.outcome().joins().equals(one.outcome().joins())
                          && other.score() >= one.score());
      boolean leavesOut = one.isShownOnly() && !one.isOfOtherEnds() && one.has(Kind.COLUMN_MATTERS);
      if (!same && !leavesOut && isAsShown(one, texts)) {
        tried.add(one);
      }
    }
    tried.sort(Comparator.comparingInt((Tried one) -> -rank(one)));
    boolean decided = !ways.misfit() && isDecided(tried);
    List<Hypothesis> hypotheses = new ArrayList<>();
    for (Tried one : tried) {
      hypotheses.add(hypothesis(one, tried, alone ? "" : sheet + "!" + cell + "!"));
    }
    return new Weighed(
        sheet, cell, hypotheses, decided ? Weighed.Standing.CERTAIN : Weighed.Standing.OPEN);
  }

  /** The layout that the user means by what the columns are. */
  private static Optional<Layout> impliedBy(List<ListColumn> columns) {
    Set<Role> said = EnumSet.noneOf(Role.class);
    int points = 0;
    for (ListColumn column : columns) {
      if (column.isSaid()) {
        said.add(column.role());
        points += column.role() == Role.POINTS ? 1 : 0;
      }
    }
    boolean from = said.contains(Role.FROM) || said.contains(Role.FROM_PIN);
    boolean to = said.contains(Role.TO) || said.contains(Role.TO_PIN);
    boolean far = said.contains(Role.FAR) || said.contains(Role.FAR_PIN);
    if (said.contains(Role.NET)) {
      return Optional.of(Layout.NET_LIST);
    }
    if (said.contains(Role.PATH)) {
      return Optional.of(Layout.PATHS);
    }
    if (points > 1) {
      return Optional.of(Layout.ROW_NETS);
    }
    if (said.contains(Role.BRIDGE) && !said.contains(Role.PIN) && !from && !to && !far) {
      return Optional.of(Layout.TERMINALS);
    }
    if (from && to) {
      return Optional.of(said.contains(Role.PIN) ? Layout.TERMINALS : Layout.FROM_TO);
    }
    return said.contains(Role.PIN) && far ? Optional.of(Layout.BLOCK) : Optional.empty();
  }

  private Tried tryOut(Region region, Proposal proposal, TableTexts texts) {
    Outcome outcome = Outcome.of(proposal.table(), words, options);
    List<Evidence> evidence =
        new EvidenceOf(region, proposal, outcome, words, texts, numbers).list();
    int score = evidence.stream().mapToInt(Evidence::points).sum();
    return new Tried(region, proposal, outcome, evidence, score);
  }

  /** Ways that make no wires stand between what is little and what is something. */
  private static int rank(Tried one) {
    if (one.isByCells()) {
      // Behind that there are no wires, and before what has much against it.
      return LITTLE - 2;
    }
    if (one.isShownOnly()) {
      // Right behind pins and their names, which come before it.
      return LITTLE;
    }
    boolean marks = one.layout() == Layout.MARKS;
    if (one.makesWires() || marks || one.proposal().said()) {
      return one.score();
    }
    if (one.layout().tellsWires()) {
      return one.score() - ENOUGH;
    }
    return one.layout() == Layout.NONE ? LITTLE - 1 : LITTLE;
  }

  private static boolean isDecided(List<Tried> tried) {
    Tried best = tried.get(0);
    if (best.proposal().said()) {
      return tried.stream()
          .skip(1)
          .noneMatch(
              one ->
                  one.proposal().said()
                      && !one.outcome().joins().equals(best.outcome().joins())
                      && one.score() + APART > best.score());
    }
    if (!best.makesWires()) {
      return tried.stream().noneMatch(Tried::looksLikeWires);
    }
    if (best.isShownOnly()
        || best.score() < ENOUGH
        || best.has(Kind.COLUMN_MATTERS)
        || best.has(Kind.PINS_UNDER_NAMES)
        || best.has(Kind.BRIDGES_BY_MARKS)) {
      return false;
    }
    return tried.stream()
        .skip(1)
        .filter(one -> one.makesWires() && !one.isShownOnly())
        .filter(one -> !one.outcome().joins().equals(best.outcome().joins()))
        .noneMatch(one -> one.score() + APART > best.score());
  }

  private static Hypothesis hypothesis(Tried one, List<Tried> all, String where) {
    List<Sample> first = new ArrayList<>();
    for (Draft wire : one.outcome().wires()) {
      if (first.size() < SAMPLES) {
        first.add(new Sample(wire.name(), wire.from(), wire.to(), false));
      }
    }
    for (var net : one.outcome().nets().entrySet()) {
      if (first.size() < SAMPLES && net.getValue().size() > 1) {
        End from = net.getValue().get(0);
        first.add(new Sample(net.getKey(), from, net.getValue().get(1), true));
      }
    }
    int wires = one.outcome().wires().size();
    int halves = one.outcome().halves().size();
    int points = halves + one.outcome().nets().values().stream().mapToInt(List::size).sum();
    return new Hypothesis(
        one.proposal().table(),
        one.score(),
        one.evidence(),
        wires + points,
        first,
        confirming(one, all, where));
  }

  /** What to say on the command line so that this way is taken. */
  private static List<String> confirming(Tried one, List<Tried> all, String where) {
    List<String> said = new ArrayList<>();
    if (one.layout() == Layout.MARKS && !one.outcome().isMarked()) {
      return List.of("--marks", String.join(",", one.outcome().marks()));
    }
    boolean several =
        all.stream()
                .filter(other -> other.layout() == one.layout())
                .filter(other -> other.isShownOnly() == one.isShownOnly())
                .count()
            > 1;
    if (one.isOfOtherEnds()) {
      return ends(one).stream()
          .flatMap(column -> Stream.of("--column", column.option(where)))
          .toList();
    }
    if (one.isShownOnly()) {
      return namesAsEnds(one, several, where);
    }
    said.add("--layout");
    said.add(where + one.layout().word());
    boolean unnamed =
        one.evidence().stream().anyMatch(found -> found.kind() == Evidence.Kind.ITEM_UNNAMED);
    if (unnamed) {
      said.add("--item");
      said.add(where + one.proposal().table().grid().name());
    }
    if (!several) {
      return said;
    }
    if (one.proposal().doubt() == Doubt.CORES_MAY_BE_PINS) {
      one.proposal().table().columns().stream()
          .filter(column -> column.role() == Role.BOTH_PINS)
          .forEach(
              column -> {
                said.add("--column");
                said.add(SaidColumn.of(column).option(where));
              });
    } else {
      said.add("--separator");
      said.add(where + one.proposal().table().columns().get(0).grammar().word());
    }
    return said;
  }

  /** What the user would say of a column. */
  private record SaidColumn(int index, ColumnChoice choice) {
    /** That it is what it is taken for. */
    static SaidColumn of(ListColumn column) {
      return new SaidColumn(column.index(), new ColumnChoice(column.role(), ""));
    }

    String option(String where) {
      return where + Place.columnLetters(index) + "=" + choice;
    }

    ListColumn asSaid(ListColumn headed) {
      if (!choice.namesItem()) {
        return headed.as(choice.role(), ColumnCertainty.SAID);
      }
      String item = choice.unit();
      return new ListColumn(
          index,
          headed.heading(),
          choice.role(),
          ListColumn.OF_ITEM,
          item,
          headed.known(),
          ColumnCertainty.SAID);
    }
  }

  /** Which two columns are the ends; the pins beside them are theirs. */
  private static List<SaidColumn> ends(Tried one) {
    List<SaidColumn> said = new ArrayList<>();
    ListTable table = one.proposal().table();
    for (ListColumn column : table.columns()) {
      boolean headed =
          (column.role() == Role.FROM_PIN && table.column(Role.FROM).isEmpty())
              || (column.role() == Role.TO_PIN && table.column(Role.TO).isEmpty());
      if (headed || column.role() == Role.FROM || column.role() == Role.TO) {
        boolean named = headed && !one.isNamedByHeading(column);
        String item = named ? column.item() : "";
        said.add(new SaidColumn(column.index(), new ColumnChoice(column.role(), item)));
      } else if (!column.role().isEnd() && one.isHeadedAsEnd(column)) {
        // Else its heading makes it an end once more.
        said.add(new SaidColumn(column.index(), new ColumnChoice(Role.KEEP, "")));
      }
    }
    return said;
  }

  /** Whether what the user would say of the columns makes the wires that are shown. */
  private boolean isAsShown(Tried one, TableTexts texts) {
    if (!one.isOfOtherEnds()) {
      return true;
    }
    Region region = one.region();
    List<SaidColumn> said = ends(one);
    List<ListColumn> columns =
        region.columns().stream()
            .map(
                column ->
                    said.stream()
                        .filter(ends -> ends.index() == column.index())
                        .findFirst()
                        .map(ends -> ends.asSaid(column))
                        .orElse(column))
            .toList();
    Region asSaid = region.with(columns);
    return Proposals.of(asSaid, words, impliedBy(columns), Optional.empty()).proposals().stream()
        .map(proposal -> tryOut(asSaid, proposal, texts))
        .max(Comparator.comparingInt(Weigher::rank))
        .filter(taken -> taken.outcome().joins().equals(one.outcome().joins()))
        .isPresent();
  }

  /** Which column holds the pins, and which what they go to. */
  private static List<String> namesAsEnds(Tried one, boolean several, String where) {
    List<String> said = new ArrayList<>();
    for (ListColumn column : one.proposal().table().columns()) {
      if (column.role() == Role.PIN || column.role() == Role.FAR || column.role() == Role.FAR_PIN) {
        said.add("--column");
        said.add(SaidColumn.of(column).option(where));
      }
    }
    if (several) {
      said.add("--separator");
      said.add(where + one.proposal().table().columns().get(0).grammar().word());
    }
    if (one.has(Kind.ITEM_UNNAMED) && said.size() <= 4) {
      said.add("--item");
      said.add(where + one.proposal().table().grid().name());
    }
    return said;
  }
}
