package dev.ringout.imports.weigh;

import dev.ringout.cells.CellText;
import dev.ringout.imports.find.Proposals.Doubt;
import dev.ringout.imports.find.Proposals.Proposal;
import dev.ringout.imports.find.Region;
import dev.ringout.imports.list.ColumnCertainty;
import dev.ringout.imports.list.Ends;
import dev.ringout.imports.list.Evidence;
import dev.ringout.imports.list.Evidence.Kind;
import dev.ringout.imports.list.Layout;
import dev.ringout.imports.list.ListColumn;
import dev.ringout.imports.list.ListTable;
import dev.ringout.imports.list.Role;
import dev.ringout.imports.list.Words;
import dev.ringout.imports.rows.Tally.RowKind;
import dev.ringout.imports.weigh.Outcome.Share;
import dev.ringout.sheet.Cell;
import dev.ringout.sheet.Row;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/** The evidence for and against one way to read a table. */
final class EvidenceOf {
  /** A part's number or a short name in capitals: {@code 75ALS162}, {@code TEST}. */
  private static final Pattern ITEM_LIKE =
      Pattern.compile("(?=.*[A-Z])(?=.*\\d)[A-Z0-9][A-Z0-9_./-]{1,19}");

  private final Region region;
  private final Proposal proposal;
  private final ListTable table;
  private final Outcome outcome;
  private final Words words;
  private final Map<String, Integer> numbers;
  private final List<Evidence> evidence = new ArrayList<>();

  /**
   * No evidence yet.
   *
   * @param numbers how often each wire number stands at a pin, in all tables together
   */
  EvidenceOf(
      Region region,
      Proposal proposal,
      Outcome outcome,
      Words words,
      Map<String, Integer> numbers) {
    this.numbers = numbers;
    this.region = region;
    this.proposal = proposal;
    this.table = proposal.table();
    this.outcome = outcome;
    this.words = words;
  }

  List<Evidence> list() {
    if (proposal.said()) {
      add(Kind.SAID, 100);
    }
    switch (table.layout()) {
      case FROM_TO, TERMINALS -> fromTo();
      case BLOCK -> block();
      case ROW_NETS -> rowNets();
      case NET_LIST -> netList();
      case ITEM_TO_POINTS -> itemToPoints();
      case WIRE_ENDS -> wireEnds();
      case MARKS ->
          add(
              outcome.isMarked() ? Kind.SAID : Kind.NO_END_NAMED,
              outcome.isMarked() ? 100 : Weigher.LITTLE);
      case PATHS -> paths();
      case OPEN_ENDED -> add(Kind.FAR_ENDS_MISSING, Weigher.LITTLE - 1);
      case PIN_NAMES, NONE, CONNECTIONS -> {}
    }
    boolean unmarked = table.layout() == Layout.MARKS && !outcome.isMarked();
    if (table.layout().tellsWires() && !unmarked) {
      outcomeAsSuch();
    }
    return evidence;
  }

  private void add(Kind kind, int points) {
    evidence.add(new Evidence(kind, points, 0, 0, ""));
  }

  private void add(Kind kind, int points, Share share) {
    evidence.add(new Evidence(kind, points, share.count(), share.of(), ""));
  }

  private void add(Kind kind, int points, String what) {
    evidence.add(new Evidence(kind, points, 0, 0, what));
  }

  private boolean named(Role... roles) {
    for (ListColumn column : table.columns()) {
      for (Role role : roles) {
        if (column.role() == role && (column.isSaid() || column.known())) {
          return true;
        }
      }
    }
    return false;
  }

  private boolean has(Role role) {
    return table.columns().stream().anyMatch(column -> column.role() == role);
  }

  /** Whether a heading names the end by a word for this side, or the user does. */
  private boolean sided(Role item, Role pin, String side) {
    return table.columns().stream()
        .filter(column -> column.role() == item || column.role() == pin)
        .anyMatch(
            column ->
                column.isSaid()
                    || (words.mentions(side, column.heading())
                        && (side.equals("far") || !words.mentions("far", column.heading()))));
  }

  /** Whether the item, or the pins where there is no item, have a word of the trade over them. */
  private boolean worded(Role item, Role pin) {
    boolean far =
        table.columns().stream()
            .anyMatch(column -> column.role() == item && words.mentions("far", column.heading()));
    Role ends = has(item) ? item : pin;
    boolean worded =
        table.columns().stream()
            .filter(column -> column.role() == ends)
            .anyMatch(
                column ->
                    column.isSaid()
                        || words.mentions("item", column.heading())
                        || words.mentions("pin", column.heading())
                        || words.mentions("port", column.heading())
                        || words.mentions("from", column.heading())
                        || words.mentions("to", column.heading()));
    return !far && worded;
  }

  private void fromTo() {
    boolean from = sided(Role.FROM, Role.FROM_PIN, "from");
    boolean to = sided(Role.TO, Role.TO_PIN, "to");
    boolean twins = worded(Role.FROM, Role.FROM_PIN) && worded(Role.TO, Role.TO_PIN);
    if (from && to) {
      add(Kind.BOTH_ENDS_NAMED, 60);
    } else if (twins) {
      add(Kind.BOTH_ENDS_NAMED, 45);
    } else if (from || to) {
      add(Kind.ONE_END_NAMED, 20);
    } else {
      add(Kind.NO_END_NAMED, 0);
    }
    if (table.layout() == Layout.TERMINALS && !(from && to)) {
      add(Kind.NO_END_NAMED, -30);
    }
    if (table.layout() == Layout.TERMINALS) {
      add(Kind.TERMINAL_BETWEEN, named(Role.PIN) ? 10 : -10);
      itemUnnamed(-80);
      terminalBetween();
      pinsOnce();
    }
    boolean pins = has(Role.FROM_PIN) && has(Role.TO_PIN);
    for (ListColumn column : table.columns()) {
      boolean strip = column.role() == Role.FROM_STRIP || column.role() == Role.TO_STRIP;
      if (strip && !column.isSaid() && isNumeric(column)) {
        add(Kind.COLUMN_MATTERS, -60, column.heading());
      }
    }
    pinBesidePoints(Role.FROM, Role.FROM_PIN);
    pinBesidePoints(Role.TO, Role.TO_PIN);
    Share points = points();
    Share designated = designated();
    if (designated.percent() >= 95 && region.headingRow() == 0) {
      add(Kind.ENDS_LOOK_LIKE_POINTS, 55, designated);
    } else if (points.percent() >= 80 && proposal.doubt() != Doubt.NUMBER_MAY_BE_PIN) {
      add(Kind.ENDS_LOOK_LIKE_POINTS, pins || points.percent() >= 90 ? 35 : 25, points);
    }
  }

  /** Ends that have a designator and a pin: nothing else in a list looks like them. */
  private Share designated() {
    int full = 0;
    int all = 0;
    for (var wire : outcome.wires()) {
      for (var end : List.of(wire.from(), wire.to())) {
        all++;
        full += end.hasPin() && Ends.isDesignator(end.item()) ? 1 : 0;
      }
    }
    return new Share(full, all);
  }

  /** A column of pins beside full points: the pin is another end's, or an older one. */
  private void pinBesidePoints(Role item, Role pin) {
    for (ListColumn column : table.columns()) {
      boolean full = column.role() == item && !column.isSaid() && mostlyPoints(column);
      boolean wholePin = column.role() == pin && !column.isSaid() && mostlyPoints(column);
      boolean otherIsWhole = !(has(Role.FROM) && has(Role.TO));
      if ((full && has(pin)) || (wholePin && has(item) && otherIsWhole)) {
        add(Kind.COLUMN_MATTERS, -60, column.heading());
      }
    }
  }

  /** Ends that have an item and a pin. */
  private Share points() {
    int full = 0;
    int all = 0;
    for (var wire : outcome.wires()) {
      for (var end : List.of(wire.from(), wire.to())) {
        all++;
        boolean named = end.item().chars().anyMatch(Character::isLetter);
        full += end.hasPin() && named ? 1 : 0;
      }
    }
    return new Share(full, all);
  }

  private void block() {
    boolean far =
        sided(Role.FAR, Role.FAR_PIN, "far")
            || sided(Role.FAR, Role.FAR_PIN, "to")
            || sided(Role.FAR, Role.FAR_PIN, "from");
    boolean own = named(Role.PIN) || named(Role.POINTS);
    if (far && own) {
      add(Kind.BOTH_ENDS_NAMED, 55);
    } else if (far || own) {
      boolean there = sided(Role.FAR, Role.FAR_PIN, "far");
      add(Kind.ONE_END_NAMED, there ? 45 : far ? 20 : 14);
    } else {
      add(Kind.NO_END_NAMED, 0);
    }
    itemUnnamed(-40);
    Share both = outcome.foundAtBothEnds();
    if (both.percent() >= 40) {
      add(Kind.FOUND_AT_BOTH_ENDS, 40, both);
    }
    pinsOnce();
    Share points = points();
    if (region.headingRow() == 0 && designated().percent() >= 90) {
      add(Kind.ENDS_LOOK_LIKE_POINTS, 40, designated());
    } else if (points.percent() >= 80) {
      add(Kind.ENDS_LOOK_LIKE_POINTS, 15, points);
    }
  }

  /** Whether nothing but the sheet's name says whose pins these are. */
  private void itemUnnamed(int points) {
    boolean said =
        has(Role.ITEM)
            || !region.item().isEmpty()
            || table.columns().stream()
                .anyMatch(column -> column.role() == Role.PIN && !column.item().isEmpty());
    long ofSheet = outcome.ownItems().stream().filter(region.grid().name()::equals).count();
    if (!said && ofSheet > 0) {
      add(Kind.ITEM_UNNAMED, points);
    }
  }

  private void pinsOnce() {
    Share once = outcome.ownPinsOnce();
    if (once.of() < 2) {
      return;
    }
    if (once.percent() >= 90) {
      add(Kind.PINS_ONCE, 15, once);
    } else if (once.percent() < 70) {
      add(
          Kind.PINS_AGAIN,
          outcome.isOfTerminals() ? -5 : -40,
          new Share(once.of() - once.count(), once.of()));
    }
  }

  private void rowNets() {
    int named = 0;
    int unknown = 0;
    for (ListColumn column : table.columns()) {
      if (column.role() == Role.POINTS) {
        boolean item =
            column.isSaid()
                || ITEM_LIKE.matcher(column.heading()).matches()
                || Ends.isDesignator(firstWord(column.heading()))
                || Ends.isDesignator(lastWord(column.heading()))
                || (column.known()
                    && words.mentions("pin", column.heading())
                    && (column.item().length() > 1 || !region.item().isEmpty()))
                || mostlyPoints(column);
        named += item ? 1 : 0;
        unknown += item ? 0 : 1;
      }
    }
    if (named > 0) {
      add(Kind.ITEMS_IN_HEADINGS, Math.min(named, 3) * 20, new Share(named, named + unknown));
    }
    if (unknown > 0) {
      add(Kind.HEADINGS_UNKNOWN, -30 * Math.min(unknown, 2), new Share(unknown, named + unknown));
    }
    acrossRows();
    pointsOfOthers();
    Share once = outcome.pointsOnce();
    if (once.percent() >= 60) {
      add(Kind.PINS_ONCE, 10, once);
    }
    int wires = outcome.tally().of(RowKind.WIRE);
    int spares = outcome.tally().of(RowKind.SPARE);
    add(Kind.ROWS_OF_SEVERAL, wires >= spares ? 10 : -10, new Share(wires, wires + spares));
    Map<String, Integer> columnsOfItem = new LinkedHashMap<>();
    for (ListColumn column : table.columns()) {
      if (column.role() == Role.POINTS) {
        columnsOfItem.merge(column.item(), 1, Integer::sum);
      }
    }
    columnsOfItem.forEach(
        (item, count) -> {
          String key = item.toLowerCase(Locale.ROOT);
          boolean part =
              columnsOfItem.keySet().stream()
                  .map(other -> other.toLowerCase(Locale.ROOT))
                  .anyMatch(
                      other ->
                          key.length() > 2
                              && !other.equals(key)
                              && (other.startsWith(key + " ") || other.endsWith(" " + key)));
          if (count > 1 || part) {
            add(Kind.ITEM_TWICE, -30, item);
          }
        });
    if (!has(Role.SIGNAL) && named < 2) {
      add(Kind.NO_END_NAMED, -10);
    }
  }

  /** Under an item's heading the pins of other items: its own pins stand in another column. */
  private void pointsOfOthers() {
    for (ListColumn column : table.columns()) {
      boolean headed = column.role() == Role.POINTS && Ends.isDesignator(column.heading());
      if (headed && mostlyPoints(column)) {
        long own =
            table.body().stream()
                .map(row -> CellText.clean(row.cell(column.index()).text()))
                .filter(text -> text.startsWith(column.heading()))
                .count();
        if (own == 0) {
          add(Kind.COLUMN_MATTERS, -60, column.heading());
        }
      }
    }
  }

  private boolean mostlyPoints(ListColumn column) {
    int filled = 0;
    int points = 0;
    for (Row row : table.body().subList(0, Math.min(200, table.body().size()))) {
      String text = CellText.clean(row.cell(column.index()).text());
      filled += text.isEmpty() ? 0 : 1;
      points += Ends.looksLikePoint(text) ? 1 : 0;
    }
    return points >= 2 && points * 10 >= filled * 8;
  }

  private static String firstWord(String heading) {
    return heading.split("[\\s_(]+", -1)[0];
  }

  private static String lastWord(String heading) {
    String[] parts = heading.split("[\\s_]+", -1);
    return parts[parts.length - 1];
  }

  private void netList() {
    ListColumn net =
        table.columns().stream()
            .filter(column -> column.role() == Role.NET)
            .findFirst()
            .orElseThrow();
    boolean isNet = net.isSaid() || words.mentions("net", net.heading());
    add(isNet ? Kind.NETS_NAMED : Kind.SIGNALS_NAMED, isNet ? 40 : -25, net.heading());
    Share several = outcome.netsOfSeveral();
    add(Kind.NETS_OF_SEVERAL, several.percent() >= 60 ? 25 : -30, several);
    pinsOnce();
  }

  private void itemToPoints() {
    if (named(Role.ITEM)) {
      add(Kind.ITEMS_IN_HEADINGS, 30);
    }
    if (named(Role.PIN)) {
      add(Kind.ONE_END_NAMED, 20);
    }
    table.columns().stream()
        .filter(column -> column.role() == Role.POINTS)
        .filter(column -> Ends.isDesignator(column.heading()))
        .forEach(column -> add(Kind.ITEMS_IN_HEADINGS, 20));
    pinsOnce();
  }

  private void wireEnds() {
    Share twice = outcome.numbersTwice(numbers);
    itemUnnamed(-40);
    boolean named = named(Role.WIRE) && named(Role.PIN);
    add(named ? Kind.BOTH_ENDS_NAMED : Kind.NO_END_NAMED, named ? 20 : 0);
    if (twice.percent() >= 60) {
      add(Kind.NUMBERS_TWICE, 45, twice);
    } else {
      add(Kind.NUMBERS_NOT_TWICE, -40, twice);
    }
  }

  private void paths() {
    Share points = points();
    boolean fine = points.percent() >= 80;
    add(fine ? Kind.ENDS_LOOK_LIKE_POINTS : Kind.ENDS_LOOK_LIKE_NOTHING, fine ? 60 : 0, points);
  }

  /** What the wires themselves say, whatever the layout. */
  private void outcomeAsSuch() {
    boolean bothNamed =
        evidence.stream()
            .anyMatch(found -> found.kind() == Kind.BOTH_ENDS_NAMED && found.points() >= 55);
    Share formed = outcome.wellFormed(bothNamed);
    if (formed.of() > 0 && formed.percent() < 90) {
      boolean few = formed.of() - formed.count() <= 2;
      add(
          Kind.ENDS_LOOK_LIKE_NOTHING,
          few ? -5 : -Math.min(60, 100 - formed.percent()),
          new Share(formed.of() - formed.count(), formed.of()));
    }
    if (table.layout() == Layout.ROW_NETS) {
      pinColumnsUnused();
    }
    Share itemless = outcome.itemless(has(Role.BOTH_PINS));
    if (itemless.percent() > 5) {
      add(
          Kind.ITEM_UNKNOWN,
          itemless.count() <= 2 ? -5 : -Math.min(50, itemless.percent()),
          itemless);
    }
    Share quantities =
        outcome.quantities(!named(Role.FROM_PIN, Role.TO_PIN, Role.FAR_PIN, Role.PIN));
    if (quantities.percent() > 5) {
      add(Kind.QUANTITIES, -Math.min(50, 2 * quantities.percent()), quantities);
    }
    boolean parts =
        table.columns().stream().anyMatch(column -> words.is("parts", column.heading()));
    boolean ofWires =
        has(Role.GAUGE)
            || has(Role.COLOR)
            || has(Role.LENGTH)
            || has(Role.WIRE)
            || has(Role.SIGNAL)
            || has(Role.NET);
    if (parts) {
      add(Kind.PARTS_LIST, ofWires ? -5 : -25);
    }
    if (!ofWires && points().percent() < 20) {
      add(Kind.NOTHING_OF_WIRES, -20);
    }
    Share many = outcome.manyFarEnds();
    if (many.percent() > 8) {
      add(Kind.MANY_FAR_ENDS, -Math.min(50, 2 * many.percent()), many);
    }
    Share self = outcome.self();
    if (self.percent() > 5) {
      add(Kind.SELF, -40, self);
    }
    columnsThatMatter();
    partsPoints();
    measurements();
    for (ListColumn column : table.columns()) {
      if (looksUnused(column)) {
        boolean block = table.layout() == Layout.BLOCK && region.headingRow() > 0;
        add(Kind.COLUMN_UNUSED, block ? -10 : -60, column.heading());
      }
    }
    if (region.outside() > 2) {
      add(
          Kind.ROWS_OUTSIDE,
          -Math.min(60, 15 * region.outside()),
          new Share(region.outside(), region.outside() + table.body().size()));
    }
    if (proposal.doubt() == Doubt.NUMBER_MAY_BE_PIN) {
      add(Kind.NUMBER_MAY_BE_PIN, 0);
    }
    if (proposal.doubt() == Doubt.CORES_MAY_BE_PINS) {
      add(Kind.CORES_MAY_BE_PINS, 0);
    }
  }

  private void pinColumnsUnused() {
    for (ListColumn column : table.columns()) {
      boolean open = column.role() == Role.KEEP && !column.known() && !column.isSaid();
      if (open && !column.heading().isEmpty() && Ends.isDesignator(column.heading())) {
        add(Kind.COLUMN_UNUSED, -20, column.heading());
      }
    }
  }

  /** A note's column whose heading says that it parts points, joins them, or stands between. */
  /** A terminal of a strip stands between what comes and what goes, under a plain heading. */
  private void terminalBetween() {
    int from = 0;
    int to = 0;
    Optional<ListColumn> own = Optional.empty();
    for (ListColumn column : table.columns()) {
      switch (column.role()) {
        case FROM, FROM_PIN -> from = Math.max(from, column.index());
        case TO, TO_PIN -> to = to == 0 ? column.index() : Math.min(to, column.index());
        case PIN -> own = own.isEmpty() ? Optional.of(column) : own;
        default -> {}
      }
    }
    int at = own.map(ListColumn::index).orElse(0);
    boolean between = (at > from && at < to) || (at < from && at > to);
    boolean plain =
        own.filter(one -> one.item().isEmpty() || Ends.isDesignator(one.item())).isPresent();
    if (!between || !plain) {
      add(Kind.COLUMN_MATTERS, -100, own.map(ListColumn::heading).orElse(""));
    }
  }

  private void columnsThatMatter() {
    for (ListColumn column : table.columns()) {
      boolean pinOrItem =
          (table.layout() == Layout.FROM_TO
                  && (column.role() == Role.ITEM || column.role() == Role.PIN))
              || (column.role() == Role.PIN && !isFirst(column));
      boolean kept = column.role() == Role.KEEP || pinOrItem;
      // What is old, or hidden beside its like, was settled before.
      boolean settled = column.role() == Role.KEEP && column.certainty() == ColumnCertainty.CERTAIN;
      if (!kept || settled || column.isSaid() || isBlank(column)) {
        continue;
      }
      String heading = column.heading();
      boolean old = words.mentions("old", heading);
      boolean matters =
          words.mentions("joins", heading)
              || words.is("between", heading)
              || words.mentions("level", heading)
              || (words.mentions("fitted", heading) && varies(column))
              || (Ends.isDesignator(heading) && table.layout() != Layout.ROW_NETS);
      boolean end =
          words.mentions("from", heading)
              || words.mentions("to", heading)
              || words.mentions("far", heading);
      boolean other =
          words.mentions("reading", heading)
              || words.mentions("note", heading)
              || words.mentions("type", heading)
              || words.mentions("contact", heading)
              || words.mentions("wire", heading)
              || words.mentions("color", heading)
              || words.mentions("signal", heading)
              || words.mentions("gauge", heading)
              || words.mentions("length", heading);
      boolean part =
          !other
              && (words.mentions("pin", heading)
                  || ((words.mentions("item", heading) || end) && !isNumbered(column)));
      boolean strip = !region.item().isEmpty() && standsBetweenEnds(column);
      if (!old && (matters || part || strip)) {
        add(Kind.COLUMN_MATTERS, -60, heading);
      }
    }
    endsUnused();
  }

  /** An end that the headings name and that this way of reading leaves out. */
  private void endsUnused() {
    boolean uses =
        switch (table.layout()) {
          case FROM_TO, TERMINALS -> true;
          default -> false;
        };
    for (ListColumn column : uses ? List.<ListColumn>of() : table.columns()) {
      boolean end =
          switch (column.role()) {
            case FROM, FROM_PIN, TO, TO_PIN -> column.known() && !isBlank(column);
            case FAR, FAR_PIN ->
                table.layout() != Layout.BLOCK && column.known() && !isBlank(column);
            default -> false;
          };
      if (end) {
        add(Kind.COLUMN_MATTERS, -60, column.heading());
      }
    }
  }

  /** Numbers between what comes and what goes, under a title that names a strip: its terminals. */
  private boolean standsBetweenEnds(ListColumn column) {
    int from = 0;
    int to = 0;
    for (ListColumn one : table.columns()) {
      switch (one.role()) {
        case FROM, FROM_PIN -> from = Math.max(from, one.index());
        case TO, TO_PIN -> to = to == 0 ? one.index() : to;
        default -> {}
      }
    }
    return table.layout() == Layout.FROM_TO
        && column.index() > from
        && column.index() < to
        && isNumeric(column);
  }

  private boolean isFirst(ListColumn column) {
    return table.columns().stream()
        .filter(one -> one.role() == column.role())
        .findFirst()
        .filter(first -> first.index() == column.index())
        .isPresent();
  }

  private boolean varies(ListColumn column) {
    return table.body().stream()
            .map(row -> CellText.clean(row.cell(column.index()).text()))
            .distinct()
            .count()
        > 1;
  }

  private boolean isNumeric(ListColumn column) {
    return table.body().stream()
        .map(row -> CellText.clean(row.cell(column.index()).text()).replaceFirst("\\.0$", ""))
        .filter(text -> !text.isEmpty())
        .allMatch(CellText::isDigits);
  }

  private boolean isBlank(ListColumn column) {
    return table.body().stream().allMatch(row -> row.cell(column.index()).isBlank());
  }

  /** Whether the cells are the numbers of the rows, or nearly all different prose. */
  private boolean isNumbered(ListColumn column) {
    int filled = 0;
    int counted = 0;
    int prose = 0;
    for (Row row : table.body()) {
      String text = CellText.clean(row.cell(column.index()).text()).replaceFirst("\\.0$", "");
      if (!text.isEmpty()) {
        filled++;
        counted += text.equals(Integer.toString(filled)) ? 1 : 0;
        prose += text.length() > 24 || text.chars().filter(c -> c == ' ').count() > 2 ? 1 : 0;
      }
    }
    return counted * 10 >= filled * 8 || prose * 2 > filled;
  }

  private void measurements() {
    boolean ofWires = has(Role.GAUGE) || has(Role.COLOR) || has(Role.LENGTH) || has(Role.WIRE);
    for (ListColumn column : table.columns()) {
      boolean measured =
          words.is("measured", column.heading()) || words.mentions("measured", column.heading());
      if (measured && !ofWires && !column.isSaid()) {
        add(Kind.MEASUREMENTS, -25, column.heading());
      }
    }
    for (Row row : table.grid().rows()) {
      boolean above = row.number() < table.headingRow() && row.number() >= table.headingRow() - 4;
      for (var cell : above ? row.cells() : List.<Cell>of()) {
        String text = CellText.clean(cell.text());
        if (text.length() < 80 && words.mentions("changes", text)) {
          add(Kind.TITLE_OF_CHANGES, -60, text);
        }
      }
    }
  }

  /** Rows of functions (U, V, W) of one strip, or of names of signals, are no nets. */
  private void acrossRows() {
    int rows = 0;
    int oneItem = 0;
    int sameText = 0;
    for (Row row : table.body().subList(0, Math.min(200, table.body().size()))) {
      List<String> items = new ArrayList<>();
      List<String> texts = new ArrayList<>();
      for (ListColumn column : table.columns()) {
        String text = CellText.clean(row.cell(column.index()).text());
        if (column.role() == Role.POINTS && !text.isEmpty() && !words.isNothing(text)) {
          texts.add(text);
          if (Ends.looksLikePoint(text)) {
            items.add(text.split("[:./ -]", 2)[0]);
          }
        }
      }
      rows += texts.size() > 1 ? 1 : 0;
      oneItem += items.size() > new HashSet<>(items).size() ? 1 : 0;
      boolean word = texts.stream().anyMatch(text -> !CellText.isDigits(text) && text.length() > 1);
      boolean same = texts.size() > new HashSet<>(texts).size() || hasOneInAnother(texts);
      sameText += same && word ? 1 : 0;
    }
    if (oneItem * 4 > rows) {
      add(Kind.ONE_ITEM_ACROSS, -60, new Share(oneItem, rows));
    }
    if (sameText * 3 > rows) {
      add(Kind.SAME_TEXT_ACROSS, -50, new Share(sameText, rows));
    }
  }

  /** Whether a column says once more which points its rows' wires join, as a helper column does. */
  private boolean repeatsEnds(ListColumn column) {
    Map<Integer, Set<String>> ends = new LinkedHashMap<>();
    for (var wire : outcome.wires()) {
      Set<String> own = ends.computeIfAbsent(wire.place().row(), row -> new HashSet<>());
      own.add(key(wire.from().toString()));
      own.add(key(wire.to().toString()));
      wire.also().forEach(end -> own.add(key(end.toString())));
    }
    int filled = 0;
    int again = 0;
    for (Row row : table.body()) {
      String text = CellText.clean(row.cell(column.index()).text());
      if (Ends.looksLikePoint(text)) {
        filled++;
        again += ends.getOrDefault(row.number(), Set.of()).contains(key(text)) ? 1 : 0;
      }
    }
    return filled > 0 && again * 10 >= filled * 9;
  }

  private static String key(String point) {
    return point.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9+]", "");
  }

  /** A column beside an end that tells apart rows which join one and the same point. */
  private void partsPoints() {
    Map<String, Set<Integer>> rowsOfPoint = new LinkedHashMap<>();
    for (var wire : outcome.wires()) {
      for (var end : List.of(wire.from(), wire.to())) {
        if (end.hasPin() && !words.mentions("joint", end.item())) {
          rowsOfPoint
              .computeIfAbsent(end.toString(), point -> new LinkedHashSet<>())
              .add(wire.place().row());
        }
      }
    }
    Map<Integer, Row> rows = new LinkedHashMap<>();
    table.body().forEach(row -> rows.put(row.number(), row));
    for (ListColumn column : table.columns()) {
      boolean kept = column.role() == Role.KEEP && !column.isSaid();
      if (kept && isBesideAnEnd(column) && !isOfItsOwn(column)) {
        int parted = 0;
        int repeated = 0;
        for (Set<Integer> own : rowsOfPoint.values()) {
          Set<String> texts = new HashSet<>();
          own.forEach(
              number ->
                  texts.add(
                      CellText.clean(
                          rows.getOrDefault(number, new Row(number, List.of()))
                              .cell(column.index())
                              .text())));
          repeated += own.size() > 1 ? 1 : 0;
          boolean shortTexts = texts.stream().allMatch(text -> text.length() <= 8);
          parted += own.size() > 1 && texts.size() == own.size() && shortTexts ? 1 : 0;
        }
        if (repeated > 0 && parted * 2 > repeated) {
          add(Kind.COLUMN_MATTERS, -60, column.heading());
        }
      }
    }
  }

  /** Whether nearly every row has another text, as the wires' numbers are. */
  private boolean isOfItsOwn(ListColumn column) {
    List<String> texts =
        table.body().stream()
            .map(row -> CellText.clean(row.cell(column.index()).text()))
            .filter(text -> !text.isEmpty())
            .toList();
    return new HashSet<>(texts).size() * 10 >= texts.size() * 8;
  }

  private boolean isBesideAnEnd(ListColumn column) {
    return table.columns().stream()
        .filter(one -> Math.abs(one.index() - column.index()) == 1)
        .anyMatch(
            one ->
                switch (one.role()) {
                  case FROM, FROM_PIN, TO, TO_PIN, FAR, FAR_PIN, PIN -> true;
                  default -> false;
                });
  }

  /** Whether one text is another with a word before it: {@code PIN_E1} and {@code E1}. */
  private static boolean hasOneInAnother(List<String> texts) {
    return texts.stream()
        .anyMatch(
            text ->
                text.length() > 1 && texts.stream().anyMatch(other -> other.endsWith("_" + text)));
  }

  /** A column of points or items, or with a word for one over it, of which nothing is made. */
  private boolean looksUnused(ListColumn column) {
    boolean settled = column.certainty() == ColumnCertainty.CERTAIN;
    if (column.role() != Role.KEEP || settled || column.isSaid()) {
      return false;
    }
    int filled = 0;
    int like = 0;
    int names = 0;
    for (Row row : table.body().subList(0, Math.min(200, table.body().size()))) {
      String text = CellText.clean(row.cell(column.index()).text());
      filled += text.isEmpty() ? 0 : 1;
      like += Ends.looksLikePoint(text) ? 1 : 0;
      names += !text.isEmpty() && text.length() <= 16 && text.indexOf(' ') < 0 ? 1 : 0;
    }
    boolean named = like * 10 >= filled * 4 && like > 0 && !repeatsEnds(column);
    boolean often = filled * 5 >= Math.min(200, table.body().size());
    boolean worded =
        words.mentions("from", column.heading())
            || words.mentions("to", column.heading())
            || words.mentions("far", column.heading());
    return named || (often && (worded && names * 10 >= filled * 7));
  }
}
