package dev.ringout.imports.weigh;

import dev.ringout.cells.CellText;
import dev.ringout.imports.list.ColumnCertainty;
import dev.ringout.imports.list.End;
import dev.ringout.imports.list.Ends;
import dev.ringout.imports.list.Evidence;
import dev.ringout.imports.list.Evidence.Kind;
import dev.ringout.imports.list.Layout;
import dev.ringout.imports.list.ListColumn;
import dev.ringout.imports.list.ListTable;
import dev.ringout.imports.list.Role;
import dev.ringout.imports.list.Words;
import dev.ringout.sheet.Row;
import dev.ringout.source.Place;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/** What speaks against a way to read a table by the columns that it leaves over. */
final class LeftOver {
  /** Kinds of words in a heading that make it something else than a part of an end. */
  private static final List<String> OTHERWISE =
      List.of(
          "reading", "note", "type", "contact", "wire", "color", "signal", "gauge", "length",
          "label");

  private static final Pattern TERMINAL =
      Pattern.compile("[-+=]?(?:[A-Z]{1,3}\\d{1,3}|TB|XT)[-:./]\\w{1,4}");

  private static final Pattern POLE =
      Pattern.compile(
          "(?i)[+-]|pos|neg|plus|minus|hi|lo|high|low|(?:pos|neg)itive|hot|cold|ret|rtn|return");

  private static final Pattern SHORT_PIN = Pattern.compile("[A-Za-z]{0,2}\\d{1,3}|[A-Za-z]");

  private static final Pattern PIN_TO_PIN =
      Pattern.compile("[\\w+-]{1,6}\\s*(?:-?>|\u2192)\\s*[\\w+-]{1,6}");

  private static final Pattern MAKE_UP =
      Pattern.compile(
          "(?<![\\w.,])(?:[2-9]|[1-9]\\d)\\s?[xXG\u00d7]\\s?\\d+(?:[.,]\\d+)?(?![\\w])");

  private static final List<String> SIDES = List.of("from", "to", "far");

  private final ListTable table;
  private final String item;
  private final boolean headed;
  private final Outcome outcome;
  private final Words words;
  private final TableTexts texts;
  private final Consumer<Evidence> found;
  private final Set<String> counted = new HashSet<>();

  /**
   * Looks at what a way leaves over.
   *
   * @param found takes the evidence
   */
  LeftOver(
      ListTable table, Outcome outcome, Words words, TableTexts texts, Consumer<Evidence> found) {
    this.table = table;
    this.item = table.sheetItem();
    this.headed = table.headingRow() > 0;
    this.outcome = outcome;
    this.words = words;
    this.texts = texts;
    this.found = found;
  }

  /** A column counts once, for whatever it is looked at. */
  private void add(Kind kind, int points, String heading) {
    if (counted.add(kind + heading)) {
      found.accept(new Evidence(kind, points, 0, 0, heading));
    }
  }

  /** A column of which the wires may be others than the table's. */
  void addMatters(ListColumn column) {
    add(Kind.COLUMN_MATTERS, -60, column.heading());
  }

  private boolean has(Role role) {
    return table.column(role).isPresent();
  }

  /** A column of pins beside full points: the pin is another end's, or an older one. */
  void pinBesidePoints(Role item, Role pin) {
    for (ListColumn column : table.columns()) {
      boolean whole =
          texts.isMostlyPoints(column)
              && (!texts.areDevices(column, words)
                  || (areTerminals(column) && texts.isOfItsOwn(column)));
      boolean full = column.role() == item && !column.isSaid() && whole;
      boolean wholePin = column.role() == pin && !column.isSaid() && texts.isMostlyPoints(column);
      boolean otherIsWhole = !(has(Role.FROM) && has(Role.TO));
      boolean oneEach = wholePin && areOneEach(item);
      if ((full && has(pin)) || (wholePin && has(item) && (otherIsWhole || oneEach))) {
        addMatters(column);
      }
    }
  }

  /**
   * Designators of which none comes again, {@code LS1}, {@code K1}, beside full points: devices,
   * and the terminals to which they go.
   */
  private boolean areOneEach(Role item) {
    Optional<ListColumn> items = table.column(item).filter(column -> !column.isSaid());
    return items
        .filter(column -> texts.filled(column).size() > 2 && texts.isDistinct(column))
        .filter(column -> texts.filled(column).stream().allMatch(Ends::isDesignator))
        .isPresent();
  }

  /**
   * {@code 1 Tip, 2 Ring, 3 Sleeve}: pins that count on while each is of another item are pins of
   * one, and the items are what they are called.
   */
  void itemsOnce() {
    itemsOnce(Role.ITEM, Role.PIN);
    itemsOnce(Role.FROM, Role.FROM_PIN);
    itemsOnce(Role.TO, Role.TO_PIN);
    namesAsItems(Role.FAR, Role.FAR_PIN);
    namesAsItems(Role.FROM, Role.FROM_PIN);
    namesAsItems(Role.TO, Role.TO_PIN);
  }

  /** Beside pins other names of them, {@code GPIO18}, {@code 3.3V}: items would come again. */
  private void namesAsItems(Role item, Role pin) {
    Optional<ListColumn> items =
        table.column(item).filter(column -> !column.isSaid() && !column.known());
    Optional<ListColumn> pins = table.column(pin);
    if (items.isEmpty() || pins.isEmpty()) {
      return;
    }
    List<String> named = texts.filled(items.get());
    boolean once = named.size() > 3 && texts.isDistinct(items.get());
    boolean plain = item == Role.FAR || named.stream().noneMatch(Ends::isDesignator);
    if (once && plain && texts.isDistinct(pins.get())) {
      addMatters(items.get());
    }
  }

  /** Pins under several headings of pins: each a wire of its own, and no second name of one. */
  void pinsAcross() {
    table.columns().stream()
        .filter(column -> column.role() == Role.POINTS && !column.isSaid())
        .filter(column -> words.mentions("pin", column.heading()) && texts.isNumeric(column))
        .forEach(this::addMatters);
  }

  private void itemsOnce(Role item, Role pin) {
    Optional<ListColumn> items = table.column(item).filter(column -> !column.isSaid());
    Optional<ListColumn> pins = table.column(pin);
    if (items.isEmpty() || pins.isEmpty() || namesAnEnd(items.get().heading())) {
      return;
    }
    List<String> named = texts.filled(items.get());
    boolean once = named.size() > 2 && texts.isDistinct(items.get());
    boolean plain = named.stream().noneMatch(Ends::isDesignator);
    if (once && plain && texts.countsRows(pins.get())) {
      addMatters(items.get());
    }
  }

  /** Under an item's heading the pins of other items: its own pins stand in another column. */
  void pointsOfOthers() {
    for (ListColumn column : table.columns()) {
      boolean byItem = column.role() == Role.POINTS && Ends.isDesignator(column.heading());
      if (byItem && texts.isMostlyPoints(column)) {
        long own =
            texts.filled(column).stream().filter(text -> text.startsWith(column.heading())).count();
        if (own == 0) {
          addMatters(column);
        }
      }
    }
  }

  /** A pin column headed by a designator, in a row through pins of several. */
  void pinColumnsUnused() {
    for (ListColumn column : table.columns()) {
      boolean open = column.role() == Role.KEEP && !column.known() && !column.isSaid();
      if (open && !column.heading().isEmpty() && Ends.isDesignator(column.heading())) {
        add(Kind.COLUMN_UNUSED, -20, column.heading());
      }
    }
  }

  /** A terminal of a strip stands between what comes and what goes, under a plain heading. */
  void terminalBetween() {
    Optional<ListColumn> own = table.column(Role.PIN);
    int at = own.map(ListColumn::index).orElse(0);
    int from = lastOf(Role.FROM, Role.FROM_PIN);
    int to = firstOf(Role.TO, Role.TO_PIN);
    boolean between = (at > from && at < to) || (at < from && at > to);
    boolean plain =
        has(Role.ITEM)
            || own.filter(one -> one.item().isEmpty() || isDesignated(one.item())).isPresent();
    if (!between || !plain) {
      // A list may lead with the terminal, and tell behind it what comes and what goes.
      boolean leads = at < from && at < to && plain;
      add(Kind.COLUMN_MATTERS, leads ? -30 : -100, own.map(ListColumn::heading).orElse(""));
    }
  }

  /** A designator, its class letters behind a sign or not: {@code -X1}. */
  private static boolean isDesignated(String item) {
    return Ends.isDesignator(item.replaceFirst("^[-+=]", ""));
  }

  /** A note's column whose heading says that it parts points, joins them, or stands between. */
  void columnsThatMatter() {
    for (ListColumn column : table.columns()) {
      boolean pinOrItem =
          (table.layout() == Layout.FROM_TO
                  && (column.role() == Role.ITEM || column.role() == Role.PIN))
              || (column.role() == Role.PIN && !isFirst(column));
      boolean kept = column.role() == Role.KEEP || pinOrItem;
      // What is old, or hidden beside its like, was settled before.
      boolean settled = column.role() == Role.KEEP && column.certainty() == ColumnCertainty.CERTAIN;
      if (!kept || settled || column.isSaid() || texts.isBlank(column)) {
        continue;
      }
      if (table.layout() == Layout.NET_LIST && words.is("pin name", column.heading())) {
        // What a pin is called beside its number.
        continue;
      }
      if (words.mentions("item", column.heading())
          && (areKindsOfConnector(column) || describesItem(column))) {
        continue;
      }
      String heading = column.heading();
      boolean old = words.mentions("old", heading);
      // The numbers of rows stand at the edge; between both ends they count a strip's terminals.
      boolean strip = standsBetweenEnds(column) && (!item.isEmpty() || texts.countsRows(column));
      if (!old && (matters(column) || isPartOfEnd(column) || strip || areArrowed(column))) {
        add(Kind.COLUMN_MATTERS, -60, heading);
      }
    }
    endsUnused();
    severalConductors();
  }

  /** {@code 5>T2} in columns of notes: each such cell joins two pins. */
  private boolean areArrowed(ListColumn column) {
    List<String> filled = texts.filled(column);
    long arrowed = filled.stream().filter(text -> PIN_TO_PIN.matcher(text).matches()).count();
    return arrowed > 0 && arrowed * 2 >= filled.size();
  }

  /** A row that stands for a cable of several conductors tells no single wires. */
  private void severalConductors() {
    boolean pins = has(Role.FROM_PIN) || has(Role.TO_PIN) || has(Role.BOTH_PINS);
    for (ListColumn column : table.columns()) {
      boolean open = column.role() == Role.KEEP || column.role() == Role.WIRE;
      boolean counts =
          table.layout() == Layout.FROM_TO
              && !pins
              && open
              && !column.isSaid()
              && words.mentions("conductors", column.heading());
      boolean several =
          counts
              && !texts.filled(column).isEmpty()
              && texts.isNumeric(column)
              && texts.filled(column).stream().anyMatch(text -> !text.equals("1"))
              && !countsWires(column);
      boolean madeUp =
          table.layout() == Layout.FROM_TO
              && !pins
              && !column.isSaid()
              && areMakeUps(column)
              && outcome.endsThat(End::hasPin).percent() < 20;
      if (several || madeUp) {
        addMatters(column);
      }
    }
  }

  /** Whether each row has as many wires as the column says. */
  private boolean countsWires(ListColumn column) {
    Map<Integer, Integer> wires = new HashMap<>();
    outcome.wires().forEach(wire -> wires.merge(wire.place().row(), 1, Integer::sum));
    return texts.firstRows().stream()
        .filter(row -> !column.textIn(row).isEmpty())
        .allMatch(
            row ->
                column.textIn(row).equals(Integer.toString(wires.getOrDefault(row.number(), 0))));
  }

  /** {@code 4G1,5}, {@code 4x0,34}: what cables are made of, several conductors each. */
  private boolean areMakeUps(ListColumn column) {
    List<String> filled = texts.filled(column);
    long made = filled.stream().filter(text -> MAKE_UP.matcher(text).find()).count();
    return made > 1 && made * 10 >= filled.size() * 7L;
  }

  /** Whether it says the same of one item wherever that stands: what the item is. */
  private boolean describesItem(ListColumn column) {
    Optional<ListColumn> item = table.column(Role.ITEM);
    if (item.isEmpty() || item.get().index() == column.index()) {
      return false;
    }
    Map<String, String> said = new LinkedHashMap<>();
    int again = 0;
    int otherwise = 0;
    for (Row row : texts.rows()) {
      String name = item.get().textIn(row);
      String text = column.textIn(row);
      if (!name.isEmpty() && !text.isEmpty()) {
        String before = said.putIfAbsent(name, text);
        again += before == null ? 0 : 1;
        otherwise += before != null && !before.equals(text) ? 1 : 0;
      }
    }
    // A few rows may say the value in place of the name.
    return again > 1 && otherwise * 5 <= again;
  }

  /** {@code BNC}, {@code RJ45}: what the connectors are, and not which. */
  private boolean areKindsOfConnector(ListColumn column) {
    List<String> filled = texts.filled(column);
    long kinds = filled.stream().filter(text -> words.mentions("connector kind", text)).count();
    return kinds * 10 >= filled.size() * 8L;
  }

  /** Joins points, stands between them, parts them, or says whether a wire is there. */
  private boolean matters(ListColumn column) {
    String heading = column.heading();
    return words.mentions("joins", heading)
        || column.isBridge()
        || words.is("between", heading)
        || words.mentions("level", heading)
        || (words.mentions("joint", heading) && !isOtherwise(heading))
        || (words.mentions("fitted", heading) && texts.varies(column))
        || (Ends.isDesignator(heading) && table.layout() != Layout.ROW_NETS);
  }

  /** A word for an end, an item or a pin in the heading, and none for anything else. */
  private boolean isPartOfEnd(ListColumn column) {
    String heading = column.heading();
    boolean other = isOtherwise(heading);
    boolean named = words.mentions("item", heading) || namesAnEnd(heading);
    // Beside the points of a net a number is how many there are, beside a chain which it is.
    boolean count =
        (table.layout() == Layout.NET_LIST && texts.isNumeric(column))
            || ((table.layout() == Layout.PATHS || table.layout() == Layout.TERMINALS)
                && texts.isNumbered(column));
    return !other
        && !count
        && (words.mentions("pin", heading) || (named && !texts.isNumbered(column)));
  }

  /** A word in the heading makes it something else than a part of an end. */
  private boolean isOtherwise(String heading) {
    return OTHERWISE.stream()
        .anyMatch(kind -> words.mentions(kind, heading) || words.is(kind, heading));
  }

  private boolean namesAnEnd(String heading) {
    return SIDES.stream().anyMatch(side -> words.mentions(side, heading));
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
            case FROM, FROM_PIN, TO, TO_PIN -> column.known() && !texts.isBlank(column);
            case FAR, FAR_PIN ->
                table.layout() != Layout.BLOCK && column.known() && !texts.isBlank(column);
            case FROM_STRIP, TO_STRIP -> !texts.isBlank(column);
            default -> false;
          };
      if (end) {
        addMatters(column);
      }
    }
  }

  /** {@code Change to panel}: what shall be, beside what is. */
  void endsThatChange() {
    for (ListColumn column : table.columns()) {
      boolean end = column.role().isEnd() || column.role().isPinOfEnd();
      if (end && !column.isSaid() && words.mentions("action", column.heading())) {
        addMatters(column);
      }
    }
  }

  /** Numbers between what comes and what goes, under a title that names a strip: its terminals. */
  private boolean standsBetweenEnds(ListColumn column) {
    return table.layout() == Layout.FROM_TO
        && column.index() > lastOf(Role.FROM, Role.FROM_PIN)
        && column.index() < firstOf(Role.TO, Role.TO_PIN)
        && texts.isNumeric(column);
  }

  /** The last column of an end, or 0. */
  private int lastOf(Role item, Role pin) {
    return columnsOf(item, pin).max().orElse(0);
  }

  /** The first column of an end, or 0. */
  private int firstOf(Role item, Role pin) {
    return columnsOf(item, pin).min().orElse(0);
  }

  private IntStream columnsOf(Role item, Role pin) {
    return table.columns().stream()
        .filter(column -> column.role() == item || column.role() == pin)
        .mapToInt(ListColumn::index);
  }

  private boolean isFirst(ListColumn column) {
    return table.columns().stream()
        .filter(one -> one.role() == column.role())
        .findFirst()
        .filter(first -> first.index() == column.index())
        .isPresent();
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
    for (Row row : texts.rows()) {
      String text = column.textIn(row);
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
  void partsPoints() {
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
    texts.rows().forEach(row -> rows.put(row.number(), row));
    for (ListColumn column : table.columns()) {
      boolean place = column.role() == Role.NOTE && words.mentions("place", column.heading());
      boolean kept =
          (place || column.role() == Role.KEEP)
              && !column.isSaid()
              && !words.is("contact", column.heading());
      if (kept && isBesideAnEnd(column) && !texts.isOfItsOwn(column)) {
        int parted = 0;
        int repeated = 0;
        for (Set<Integer> own : rowsOfPoint.values()) {
          Set<String> texts = new HashSet<>();
          own.forEach(
              number ->
                  texts.add(column.textIn(rows.getOrDefault(number, new Row(number, List.of())))));
          repeated += own.size() > 1 ? 1 : 0;
          boolean shortTexts = texts.stream().allMatch(text -> text.length() <= 8);
          parted += own.size() > 1 && texts.size() == own.size() && shortTexts ? 1 : 0;
        }
        if (repeated > 0 && parted * 2 > repeated) {
          addMatters(column);
        }
      }
    }
  }

  private boolean isBesideAnEnd(ListColumn column) {
    return table.columns().stream()
        .filter(one -> Math.abs(one.index() - column.index()) == 1)
        .anyMatch(one -> one.role().isEnd() || one.role() == Role.PIN);
  }

  /** Columns of points or items of which nothing is made. */
  void columnsUnused() {
    for (ListColumn column : table.columns()) {
      if (looksUnused(column) && !texts.isBlank(column)) {
        boolean block = table.layout() == Layout.BLOCK && headed;
        add(Kind.COLUMN_UNUSED, block ? -10 : -60, column.heading());
      }
      if (holdsPoints(column)) {
        addMatters(column);
      }
    }
  }

  /** Full points in a column that this way takes for names, or does not take at all. */
  private boolean holdsPoints(ListColumn column) {
    boolean left =
        switch (column.role()) {
          case KEEP -> column.certainty() != ColumnCertainty.CERTAIN;
          case SIGNAL -> table.layout() == Layout.ROW_NETS;
          case POINTS -> table.layout() == Layout.BLOCK;
          case FAR, FAR_PIN -> table.layout() == Layout.FROM_TO;
          case FROM, TO -> table.layout() == Layout.ROW_NETS;
          default -> false;
        };
    boolean told = words.is("contact", column.heading()) || words.mentions("old", column.heading());
    if (!left || column.isSaid() || told || repeatsEnds(column)) {
      return false;
    }
    List<String> filled = texts.filled(column);
    long points = filled.stream().filter(LeftOver::isTerminal).count();
    return points > 0 && points * 10 >= filled.size() * 6L;
  }

  private boolean areTerminals(ListColumn column) {
    List<String> filled = texts.filled(column);
    return filled.stream().filter(LeftOver::isTerminal).count() * 10 >= filled.size() * 8L;
  }

  /** A connector's or a strip's designator with a pin: no part's number looks so. */
  private static boolean isTerminal(String text) {
    return TERMINAL.matcher(text).matches();
  }

  /**
   * Pins under a colour or a pole beside the pins of an end: {@code + | -}, {@code White | Black |
   * Shield}. Each is a conductor of its own.
   */
  void conductorsAcross() {
    for (ListColumn column : table.columns()) {
      boolean left =
          column.role() == Role.KEEP
              || column.role() == Role.COLOR
              || (column.role() == Role.POINTS && table.layout() == Layout.BLOCK)
              || (column.role() == Role.GROUP && words.mentions("drain", column.heading()));
      boolean headed =
          !words.color(column.heading()).isEmpty()
              || POLE.matcher(column.heading()).matches()
              || words.mentions("drain", column.heading())
              || CellText.isDigits(column.heading());
      if (left && headed && !column.isSaid() && arePins(column)) {
        addMatters(column);
      }
    }
  }

  private boolean arePins(ListColumn column) {
    List<String> filled = texts.filled(column);
    long pins =
        filled.stream()
            .filter(text -> isTerminal(text) || SHORT_PIN.matcher(text).matches())
            .count();
    return filled.size() > 1 && pins * 10 >= filled.size() * 7L;
  }

  /** Pins or items without a heading beside an end: the headings stand in two rows, or are lost. */
  void columnsWithoutHeading() {
    boolean ends = table.layout() == Layout.FROM_TO || table.layout() == Layout.TERMINALS;
    boolean reads = ends && headed && !outcome.wires().isEmpty();
    for (ListColumn column : reads ? table.columns() : List.<ListColumn>of()) {
      boolean bare =
          column.heading().isEmpty()
              && column.role() == Role.KEEP
              && !column.isSaid()
              && !texts.countsRows(column);
      List<String> filled =
          bare
              ? texts.filled(column).stream().filter(text -> !words.isNothing(text)).toList()
              : List.of();
      long pins =
          filled.stream()
              .filter(text -> SHORT_PIN.matcher(text).matches() || Ends.isDesignator(text))
              .count();
      if (filled.size() * 2 > texts.rows().size() && pins * 10 >= filled.size() * 7L) {
        add(Kind.COLUMN_MATTERS, -60, Place.columnLetters(column.index()));
      }
    }
  }

  /**
   * {@code J1 | Colour | J2 | J3 | Colour | J4}: two wires in a row; and what a wire passes, or
   * where its screen ends.
   */
  void otherWires() {
    for (ListColumn column : table.columns()) {
      boolean kept = column.role() == Role.KEEP && !column.isSaid() && !texts.isBlank(column);
      boolean twice =
          column.known()
              && table.layout() == Layout.ROW_NETS
              && table.columns().stream()
                  .anyMatch(
                      other ->
                          other.index() != column.index()
                              && other.key().equals(column.key())
                              && (other.role() == Role.COLOR || other.role() == Role.WIRE));
      boolean passed = words.is("passed", column.heading());
      boolean screen =
          words.mentions("drain", column.heading())
              && texts.filled(column).stream().anyMatch(CellText::hasDigit);
      if (kept && (twice || passed || screen)) {
        addMatters(column);
      }
    }
  }

  /** A second column of wire numbers: the row has two wires. */
  void secondNumbers() {
    Optional<ListColumn> first = table.column(Role.WIRE);
    boolean sides = table.layout() == Layout.TERMINALS || first.isEmpty();
    for (ListColumn column : sides ? List.<ListColumn>of() : table.columns()) {
      boolean more =
          column.role() == Role.KEEP
              && column.known()
              && !column.isSaid()
              && withoutNumber(column).equals(withoutNumber(first.get()))
              && !withoutNumber(column).isEmpty();
      if (more && differ(first.get(), column)) {
        addMatters(column);
      }
    }
  }

  private static String withoutNumber(ListColumn column) {
    return column.key().replaceAll("[\\d\\s.#]+", "");
  }

  private boolean differ(ListColumn one, ListColumn other) {
    int differ = 0;
    for (Row row : texts.rows()) {
      String text = one.textIn(row);
      String second = other.textIn(row);
      differ += !text.isEmpty() && !second.isEmpty() && !text.equals(second) ? 1 : 0;
    }
    return differ > 0;
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
    int poles = 0;
    for (Row row : texts.firstRows()) {
      String text = column.textIn(row);
      poles += text.equals("+") || text.equals("-") ? 1 : 0;
      filled += text.isEmpty() ? 0 : 1;
      like += Ends.looksLikePoint(text) ? 1 : 0;
      names += !text.isEmpty() && text.length() <= 16 && text.indexOf(' ') < 0 ? 1 : 0;
    }
    boolean contact = words.is("contact", column.heading());
    boolean named = like * 10 >= filled * 4 && like > 0 && !contact && !repeatsEnds(column);
    boolean often = filled * 5 >= texts.firstRows().size();
    boolean other = isOtherwise(column.heading());
    boolean worded = namesAnEnd(column.heading()) && !other;
    boolean ofPoles = poles > 1 && poles * 10 >= filled * 6;
    return named || ofPoles || (often && (worded && names * 10 >= filled * 7));
  }
}
