package dev.ringout.imports.weigh;

import dev.ringout.cells.CellText;
import dev.ringout.imports.find.Proposals.Doubt;
import dev.ringout.imports.find.Proposals.Proposal;
import dev.ringout.imports.find.Region;
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
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;

/** The evidence for and against one way to read a table. */
final class EvidenceOf {
  /** A part's number: {@code 75ALS162}. */
  private static final Pattern ITEM_LIKE =
      Pattern.compile("(?=.*[A-Z])(?=.*\\d)[A-Z0-9][A-Z0-9_./-]{1,19}");

  /** Designators of connectors: ASME Y14.44, from memory. */
  private static final Pattern CONNECTOR = Pattern.compile("(?:[JPX]|CN|TB)\\d{1,3}[A-Z]?");

  private final Region region;
  private final Proposal proposal;
  private final ListTable table;
  private final Outcome outcome;
  private final Words words;
  private final TableTexts texts;
  private final Map<String, Integer> numbers;
  private final List<Evidence> evidence = new ArrayList<>();
  private final LeftOver left;

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
      TableTexts texts,
      Map<String, Integer> numbers) {
    this.texts = texts;
    this.numbers = numbers;
    this.region = region;
    this.proposal = proposal;
    this.table = proposal.table();
    this.outcome = outcome;
    this.words = words;
    this.left = new LeftOver(table, outcome, words, texts, evidence::add);
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
    return table.column(role).isPresent();
  }

  /** Whether a heading names the end by a word for this side, or the user does. */
  private boolean sided(Role item, Role pin, String side) {
    return table.columns().stream()
        .filter(column -> column.role() == item || column.role() == pin)
        .anyMatch(
            column ->
                column.isSaid()
                    || isBesideStrip(column)
                    || (side.equals("to") && isToBesideFrom(column))
                    || (words.mentions(side, column.heading())
                        && (side.equals("far") || !words.mentions("far", column.heading()))));
  }

  /** {@code an} beside {@code von}: it is no word for an end where it stands alone. */
  private boolean isToBesideFrom(ListColumn column) {
    List<String> tokens = Words.tokens(column.heading());
    return column.known() && !tokens.isEmpty() && words.isAny("to beside from", tokens.get(0));
  }

  /** {@code Left | Right}: sides of anything, and the ends of a wire only where they look so. */
  private boolean areSides() {
    return table.layout() == Layout.FROM_TO
        && isOnSide("one side", Role.FROM, Role.FROM_PIN)
        && isOnSide("other side", Role.TO, Role.TO_PIN);
  }

  private boolean isOnSide(String side, Role item, Role pin) {
    return table.columns().stream()
        .filter(column -> column.role() == item || column.role() == pin)
        .filter(column -> !column.isSaid())
        .anyMatch(column -> words.mentions(side, column.heading()));
  }

  /** Whether the heading names one side of a strip of terminals. */
  private boolean isBesideStrip(ListColumn column) {
    return table.layout() == Layout.TERMINALS
        && (words.mentions("one side", column.heading())
            || words.mentions("other side", column.heading()));
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
    boolean headed = !has(Role.FROM) && !has(Role.TO) && !(from || to);
    boolean twins = !headed && worded(Role.FROM, Role.FROM_PIN) && worded(Role.TO, Role.TO_PIN);
    if (from && to && areSides()) {
      add(Kind.BOTH_ENDS_NAMED, 25);
    } else if (from && to) {
      add(Kind.BOTH_ENDS_NAMED, 60);
    } else if (twins || (headed && isHeadedFar())) {
      add(Kind.BOTH_ENDS_NAMED, 45);
    } else if (pinsBesideItems()) {
      add(Kind.PINS_BESIDE_ITEMS, 40);
    } else if (from || to) {
      add(Kind.ONE_END_NAMED, 20);
    } else if (headed && isOfPeripheral()) {
      add(Kind.ITEMS_IN_HEADINGS, 20);
    } else {
      add(Kind.NO_END_NAMED, 0);
    }
    if (table.layout() == Layout.TERMINALS && !(from && to) && !pinsBesideItems()) {
      add(Kind.NO_END_NAMED, -30);
    }
    if (table.layout() == Layout.TERMINALS) {
      add(Kind.TERMINAL_BETWEEN, named(Role.PIN) ? 10 : -10);
      itemUnnamed(-80);
      left.terminalBetween();
      table.columns().stream()
          .filter(column -> column.role() == Role.BRIDGE && !column.isSaid())
          .filter(column -> !texts.hasDigits(column) && !texts.lettersRuns(column))
          .forEach(column -> add(Kind.BRIDGES_BY_MARKS, 0, column.heading()));
      pinsOnce();
    }
    boolean pins = has(Role.FROM_PIN) && has(Role.TO_PIN);
    for (ListColumn column : table.columns()) {
      // "Pin A" and "Pin B" name no items.
      boolean alone =
          (column.role() == Role.FROM_PIN && !has(Role.FROM))
              || (column.role() == Role.TO_PIN && !has(Role.TO));
      if (alone && !column.isSaid() && column.item().length() == 1) {
        left.addMatters(column);
      }
      boolean strip = column.role() == Role.FROM_STRIP || column.role() == Role.TO_STRIP;
      if (strip && !column.isSaid() && texts.isNumeric(column)) {
        left.addMatters(column);
      }
    }
    left.pinBesidePoints(Role.FROM, Role.FROM_PIN);
    left.pinBesidePoints(Role.TO, Role.TO_PIN);
    if (headed) {
      samePins();
    }
    Share points = points();
    Share designated = designated();
    if (designated.percent() >= 95 && region.headingRow() == 0) {
      add(Kind.ENDS_LOOK_LIKE_POINTS, 55, designated);
    } else if (points.percent() >= 80 && proposal.doubt() != Doubt.NUMBER_MAY_BE_PIN) {
      add(Kind.ENDS_LOOK_LIKE_POINTS, pins || points.percent() >= 90 ? 35 : 25, points);
    }
  }

  /**
   * Whether one of two headings of pins says that its item is what the other's goes to, or that it
   * is of leads.
   */
  private boolean isHeadedFar() {
    return table.columns().stream()
        .filter(column -> column.role().isPinOfEnd() && !column.item().isEmpty())
        .anyMatch(
            column ->
                words.mentions("far", column.heading())
                    || (words.mentions("peripheral", column.heading())
                        && words.mentions("wire", column.heading())));
  }

  /** Two columns of pins of which one says what the other says: two names of the same ones. */
  private void samePins() {
    int rows = 0;
    int same = 0;
    for (Row row : texts.firstRows()) {
      List<String> own = new ArrayList<>();
      for (ListColumn column : table.columns()) {
        String text = column.role().isPinOfEnd() ? column.textIn(row) : "";
        if (!text.isEmpty()) {
          own.add(text);
        }
      }
      rows += own.size() > 1 ? 1 : 0;
      boolean one = own.size() > new HashSet<>(own).size() || hasOneInAnother(own);
      same += own.size() > 1 && one ? 1 : 0;
    }
    if (same * 3 > rows) {
      add(Kind.SAME_TEXT_ACROSS, -50, new Share(same, rows));
    }
  }

  /**
   * Whether a word of the trade heads the pins of both ends, and beside them stand devices: names
   * that come again, or designators. Names of signals do neither.
   */
  private boolean pinsBesideItems() {
    return (has(Role.FROM) || has(Role.TO))
        && isOfDevices(Role.FROM)
        && isOfDevices(Role.TO)
        && isHeadedAsPins(Role.FROM_PIN)
        && isHeadedAsPins(Role.TO_PIN);
  }

  private boolean isHeadedAsPins(Role role) {
    return table.columns().stream()
        .filter(column -> column.role() == role)
        .anyMatch(column -> column.isSaid() || words.mentions("pin", column.heading()));
  }

  private boolean isOfDevices(Role role) {
    Role pin = role.pinOfEnd();
    boolean headed =
        table.columns().stream()
            .anyMatch(column -> column.role() == pin && column.item().length() > 1);
    if (!has(role) && headed) {
      return true;
    }
    return table.columns().stream()
        .filter(column -> column.role() == role)
        .anyMatch(column -> column.isSaid() || texts.areDevices(column, words));
  }

  /** Ends that have a designator and a pin: nothing else in a list looks like them. */
  private Share designated() {
    return outcome.endsThat(end -> end.hasPin() && Ends.isDesignator(end.item()));
  }

  /** Ends that have an item and a pin. */
  private Share points() {
    return outcome.endsThat(
        end -> end.hasPin() && end.item().chars().anyMatch(Character::isLetter));
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
    pinsOfOtherItems();
    left.pinsAcross();
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

  /**
   * {@code Lamp pin} beside {@code Board pin}, of which one is taken for another name or a note.
   */
  private void pinsOfOtherItems() {
    String own = table.column(Role.PIN).map(ListColumn::item).orElse("");
    table.columns().stream()
        .filter(column -> column.role() == Role.POINTS || column.role() == Role.KEEP)
        .filter(column -> column.known() && !column.isSaid() && !column.item().isEmpty())
        .filter(column -> !own.isEmpty() && !column.item().equalsIgnoreCase(own))
        .filter(column -> words.mentions("pin", column.heading()))
        .forEach(left::addMatters);
  }

  /** Whether only the sheet's name tells to which item these pins belong. */
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
    if (once.percent() >= 90 && outcome.losesRows()) {
      // What could not be read may be these pins once more.
      add(Kind.PINS_ONCE, 4, once);
    } else if (once.percent() >= 90) {
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
                || texts.isMostlyPoints(column);
        named += item ? 1 : 0;
        unknown += item ? 0 : 1;
      }
    }
    if (named > 0) {
      add(Kind.ITEMS_IN_HEADINGS, Math.min(named, 3) * 20, new Share(named, named + unknown));
    }
    if (unknown > 0) {
      Share pins = texts.calledAsPins(table);
      boolean called =
          unknown * 2 > named && pins.percent() >= 80 && !has(Role.SIGNAL) && !has(Role.NET);
      if (called) {
        add(Kind.PINS_UNDER_NAMES, 15, pins);
      }
      add(
          Kind.HEADINGS_UNKNOWN,
          (called ? -15 : -30) * Math.min(unknown, 2),
          new Share(unknown, named + unknown));
    }
    if (unknown == 0 && isOfPeripheral()) {
      add(Kind.ITEMS_IN_HEADINGS, 15);
    }
    Share marks = texts.marks(table);
    if (marks.percent() >= 30) {
      add(Kind.COLUMN_MATTERS, -100, "x");
    }
    itemsInColumns();
    acrossRows();
    namesDiffer();
    left.pointsOfOthers();
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
          if (count > 1) {
            add(Kind.COLUMN_MATTERS, -60, item);
          }
        });
    if (!has(Role.SIGNAL) && named < 2) {
      add(Kind.NO_END_NAMED, -10);
    }
    if (!isOfWires() && named == 2 && unknown == 0 && !isHeadedByDesignators()) {
      add(Kind.NOTHING_OF_WIRES, -20);
    }
  }

  /** {@code Component | Component pin}: whose pins they are stands in a column of its own. */
  private void itemsInColumns() {
    for (ListColumn column : table.columns()) {
      boolean named =
          column.role() == Role.KEEP
              && !column.isSaid()
              && !column.heading().isEmpty()
              && table.columns().stream()
                  .filter(other -> other.role() == Role.POINTS && !other.isSaid())
                  .anyMatch(other -> other.item().equalsIgnoreCase(column.heading()));
      if (named) {
        left.addMatters(column);
      }
    }
  }

  /**
   * {@code Display pin | Board pin}: what is wired to a board; the pins of two boards may only have
   * one use.
   */
  private boolean isOfPeripheral() {
    List<ListColumn> points =
        table.columns().stream()
            .filter(column -> column.role() == Role.POINTS || column.role().isPinOfEnd())
            .filter(column -> !column.item().isEmpty())
            .toList();
    long peripherals =
        points.stream().filter(column -> words.mentions("peripheral", column.heading())).count();
    long controllers =
        points.stream().filter(column -> words.mentions("controller", column.heading())).count();
    boolean others =
        table.columns().stream()
            .anyMatch(
                column -> column.role() == Role.KEEP && !column.known() && !texts.isBlank(column));
    return points.size() == 2
        && !others
        && (peripherals == 1 || controllers == 1)
        && points.stream().allMatch(column -> words.mentions("pin", column.heading()));
  }

  /**
   * {@code P3 | M1}, {@code P5 pin | J7 pin}: connectors, where {@code Pin Uno | Pin Nano} may be
   * two boards of a kind.
   */
  private boolean isHeadedByDesignators() {
    return table.columns().stream()
        .filter(column -> column.role() == Role.POINTS)
        .allMatch(
            column ->
                Ends.isDesignator(column.heading()) || CONNECTOR.matcher(column.item()).matches());
  }

  /** {@code ORIGIN: MSB-1}: every cell begins with a word for its end, which is no item. */
  private void labelsAsItems() {
    Share labels =
        outcome.endsThat(
            end -> end.hasPin() && (words.is("from", end.item()) || words.is("to", end.item())));
    if (labels.percent() > 20) {
      add(Kind.COLUMN_MATTERS, -60, labels.count() > 0 ? "From" : "");
    }
  }

  /** Headings down the first column: a row is no wire, a column is. */
  private void lyingOnItsSide() {
    List<String> headings = texts.headingsDown();
    if (!headings.isEmpty() && !proposal.said()) {
      add(Kind.COLUMN_MATTERS, -150, headings.get(0));
    }
  }

  private static String firstWord(String heading) {
    return heading.split("[\\s_(]+", -1)[0];
  }

  private static String lastWord(String heading) {
    String[] parts = heading.split("[\\s_]+", -1);
    return parts[parts.length - 1];
  }

  private void netList() {
    ListColumn net = table.column(Role.NET).orElseThrow();
    boolean isNet = net.isSaid() || words.mentions("net", net.heading());
    add(isNet ? Kind.NETS_NAMED : Kind.SIGNALS_NAMED, isNet ? 40 : -25, net.heading());
    Share several = outcome.netsOfSeveral();
    add(Kind.NETS_OF_SEVERAL, several.percent() >= 60 ? 25 : -30, several);
    itemUnnamed(-80);
    pinsOnce();
  }

  private void itemToPoints() {
    boolean headed =
        table.columns().stream()
            .filter(column -> column.role() == Role.ITEM)
            .anyMatch(column -> column.isSaid() || words.mentions("item", column.heading()));
    if (headed) {
      add(Kind.ITEMS_IN_HEADINGS, 30);
    }
    if (named(Role.PIN)) {
      add(Kind.ONE_END_NAMED, 20);
    }
    table.columns().stream()
        .filter(column -> column.role() == Role.POINTS)
        .filter(column -> Ends.isDesignator(column.heading()))
        .forEach(column -> add(Kind.ITEMS_IN_HEADINGS, 20));
    // "Connection point (supply)" says what stands below it, and not whose terminals these are;
    // under "Requirement" stand no terminals.
    boolean unnamed =
        table.columns().stream()
            .filter(column -> column.role() == Role.POINTS && !column.isSaid())
            .anyMatch(
                column ->
                    words.mentions("points", column.heading())
                        || words.mentions("pin", column.heading())
                        || column.heading().length() > 24
                        || (!Ends.isDesignator(column.heading()) && !texts.arePins(column)));
    if (unnamed) {
      add(Kind.HEADINGS_UNKNOWN, -30, new Share(1, 1));
    }
    // "Linked to" says what the terminals below it are to the row's own, and names no item.
    table.columns().stream()
        .filter(column -> column.role() == Role.POINTS && !column.isSaid())
        .filter(
            column ->
                words.mentions("jumped", column.heading())
                    || words.mentions("joins", column.heading()))
        .forEach(left::addMatters);
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
    if (has(Role.PATH)) {
      add(fine ? Kind.ENDS_LOOK_LIKE_POINTS : Kind.ENDS_LOOK_LIKE_NOTHING, fine ? 60 : 0, points);
      return;
    }
    boolean headed =
        table.columns().stream()
            .filter(column -> column.role() == Role.POINTS)
            .allMatch(
                column ->
                    column.isSaid()
                        || words.mentions("pin", column.heading())
                        || texts.isMostlyPoints(column));
    boolean devices =
        table.columns().stream()
            .filter(column -> column.role() == Role.ITEM)
            .allMatch(column -> texts.areDevices(column, words));
    if (headed && devices) {
      add(Kind.PINS_BESIDE_ITEMS, 40);
    }
    if (fine) {
      add(Kind.ENDS_LOOK_LIKE_POINTS, 35, points);
    }
    table.columns().stream()
        .filter(column -> column.role() == Role.WIRE && words.mentions("item", column.heading()))
        .filter(column -> !texts.isNumeric(column))
        .forEach(left::addMatters);
    // From, To and a third end: corrected, an issue, a screen; nobody knows that it is a chain,
    // unless the headings count it through.
    boolean chained = headsChain();
    long begins =
        table.columns().stream()
            .filter(column -> column.role() == Role.POINTS)
            .filter(column -> words.mentions("from", column.heading()))
            .count();
    if (begins > 1) {
      add(Kind.COLUMN_MATTERS, -60, "From");
    }
    if (chained && fine) {
      add(Kind.CHAIN_HEADED, 25);
    }
    table.columns().stream()
        .filter(column -> !chained && !proposal.said())
        .filter(column -> column.role() == Role.POINTS || column.role() == Role.ITEM)
        .filter(column -> !column.isSaid())
        .filter(
            column ->
                words.mentions("from", column.heading()) || words.mentions("to", column.heading()))
        .findFirst()
        .ifPresent(left::addMatters);
    Share whole = wholeChains();
    if (whole.percent() < 85 && !chained) {
      add(Kind.POINTS_LEFT_OUT, -40, new Share(whole.of() - whole.count(), whole.of()));
    }
  }

  /**
   * {@code From | to | to | to}, {@code 1 | 2 | 3}, {@code Via 1 | Via 2}: most headings of the
   * points are alike but for a number.
   */
  private boolean headsChain() {
    int points = 0;
    int places = 0;
    for (ListColumn column : table.columns()) {
      boolean pin = column.role() == Role.POINTS;
      String place = column.key().replaceAll("[\\d\\s.]+", "");
      boolean named =
          place.isEmpty()
              || (words.is("to", place) && isRepeated(column))
              || words.mentions("by way of", column.heading());
      points += pin ? 1 : 0;
      places += pin && named && !column.heading().isEmpty() ? 1 : 0;
    }
    return places >= 2 && places * 2 >= points;
  }

  private boolean isRepeated(ListColumn column) {
    return table.columns().stream().filter(other -> other.key().equals(column.key())).count() > 1;
  }

  /**
   * Rows that leave no point out, of those that name several. A row may end early, as a spare input
   * does, where the last column is filled in most rows.
   */
  private Share wholeChains() {
    List<ListColumn> points = table.columns(Role.POINTS);
    int rows = 0;
    int whole = 0;
    int early = 0;
    for (Row row : texts.rows()) {
      List<Boolean> there =
          points.stream().map(column -> !words.isNothing(column.textIn(row))).toList();
      long filled = there.stream().filter(is -> is).count();
      rows += filled > 1 ? 1 : 0;
      whole += filled == points.size() ? 1 : 0;
      boolean first = there.subList(0, (int) filled).stream().allMatch(is -> is);
      early += filled > 1 && filled < points.size() && first ? 1 : 0;
    }
    boolean mostly = whole * 10 >= rows * 6;
    return new Share(mostly ? whole + early : whole, rows);
  }

  /** A heading of nets beside items and their pins, of which this way makes no nets. */
  private void netsUnused() {
    boolean of = table.layout() == Layout.ITEM_TO_POINTS || table.layout() == Layout.WIRE_ENDS;
    table.columns().stream()
        .filter(column -> of && has(Role.ITEM) && column.role() == Role.SIGNAL)
        .filter(column -> words.is("net", column.heading()))
        .forEach(left::addMatters);
  }

  /** What the wires themselves say, whatever the layout. */
  private void outcomeAsSuch() {
    netsUnused();
    labelsAsItems();
    boolean bothNamed =
        evidence.stream()
            .anyMatch(found -> found.kind() == Kind.BOTH_ENDS_NAMED && found.points() >= 55);
    Share formed = outcome.wellFormed(bothNamed);
    if (formed.of() > 0 && formed.percent() < 90) {
      boolean few = formed.of() - formed.count() <= 2 || (bothNamed && formed.percent() >= 80);
      add(
          Kind.ENDS_LOOK_LIKE_NOTHING,
          few ? -5 : -Math.min(60, 100 - formed.percent()),
          new Share(formed.of() - formed.count(), formed.of()));
    }
    if (table.layout() == Layout.ROW_NETS) {
      left.pinColumnsUnused();
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
        isOfWires() || has(Role.SIGNAL) || has(Role.NET) || (bothNamed && points().percent() >= 60);
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
    left.columnsThatMatter();
    left.endsThatChange();
    left.itemsOnce();
    lyingOnItsSide();
    left.partsPoints();
    measurements();
    left.columnsUnused();
    left.conductorsAcross();
    left.columnsWithoutHeading();
    left.otherWires();
    left.secondNumbers();
    if (region.outside() > 2) {
      add(
          Kind.ROWS_OUTSIDE,
          -Math.min(60, 15 * region.outside()),
          new Share(region.outside(), region.outside() + table.body().size()));
    }
    if (proposal.doubt() == Doubt.NUMBER_MAY_BE_PIN) {
      add(Kind.NUMBER_MAY_BE_PIN, 0);
    }
    if (proposal.doubt() == Doubt.NAMES_MAY_BE_ENDS) {
      add(Kind.NAMES_MAY_BE_ENDS, 0);
    }
    if (proposal.doubt() == Doubt.CORES_MAY_BE_PINS) {
      add(Kind.CORES_MAY_BE_PINS, coresAreTerminals() ? 0 : -50);
    }
  }

  /**
   * Whether cores are called as terminals are, U, V, W or A1, and no other column may hold the
   * pins. Numbers may be those of the cores alone.
   */
  private boolean coresAreTerminals() {
    boolean lettered =
        table.columns().stream()
            .filter(column -> column.role() == Role.BOTH_PINS)
            .noneMatch(texts::isNumeric);
    boolean open =
        table.columns().stream()
            .anyMatch(
                column ->
                    column.role() == Role.KEEP
                        && !column.known()
                        && !texts.isBlank(column)
                        && texts.filled(column).stream().allMatch(text -> text.length() <= 3));
    return lettered && !open;
  }

  /** Whether a column gives a wire's number, gauge, colour, length or pair. */
  private boolean isOfWires() {
    return has(Role.GAUGE)
        || has(Role.COLOR)
        || has(Role.LENGTH)
        || has(Role.WIRE)
        || has(Role.GROUP);
  }

  private void measurements() {
    boolean ofWires = isOfWires();
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

  /** Two columns of names beside the pins that say otherwise in most rows: two lists of pins. */
  private void namesDiffer() {
    List<ListColumn> named =
        table.columns().stream()
            .filter(column -> words.mentions("signal", column.heading()))
            .toList();
    for (int i = 0; i + 1 < named.size(); i++) {
      int both = 0;
      int differ = 0;
      for (Row row : texts.firstRows()) {
        String one = named.get(i).textIn(row);
        String other = named.get(i + 1).textIn(row);
        if (!one.isEmpty() && !other.isEmpty()) {
          both++;
          differ += one.equalsIgnoreCase(other) ? 0 : 1;
        }
      }
      if (both > 2 && differ * 2 > both) {
        add(Kind.NAMES_DIFFER, -60, new Share(differ, both));
      }
    }
  }

  /** Rows of functions (U, V, W) of one strip, or of names of signals, are no nets. */
  private void acrossRows() {
    int rows = 0;
    int oneItem = 0;
    int sameText = 0;
    for (Row row : texts.firstRows()) {
      List<String> items = new ArrayList<>();
      List<String> own = new ArrayList<>();
      for (ListColumn column : table.columns()) {
        String text = column.textIn(row);
        if (column.role() == Role.POINTS && !text.isEmpty() && !words.isNothing(text)) {
          own.add(text);
          if (Ends.looksLikePoint(text)) {
            items.add(text.split("[:./ -]", 2)[0]);
          }
        }
      }
      rows += own.size() > 1 ? 1 : 0;
      oneItem += items.size() > new HashSet<>(items).size() ? 1 : 0;
      List<String> called =
          own.stream().filter(text -> !CellText.isDigits(text) && text.length() > 1).toList();
      boolean same = called.size() > new HashSet<>(called).size() || hasOneInAnother(called);
      sameText += same ? 1 : 0;
    }
    if (oneItem * 4 > rows) {
      add(Kind.ONE_ITEM_ACROSS, -60, new Share(oneItem, rows));
    }
    if (sameText * 3 > rows) {
      add(Kind.SAME_TEXT_ACROSS, -50, new Share(sameText, rows));
    }
  }

  /** Whether one text is another with a word before it: {@code PIN_E1} and {@code E1}. */
  private static boolean hasOneInAnother(List<String> texts) {
    return texts.stream()
        .anyMatch(
            text ->
                text.length() > 1 && texts.stream().anyMatch(other -> other.endsWith("_" + text)));
  }
}
