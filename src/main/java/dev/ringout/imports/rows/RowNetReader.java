package dev.ringout.imports.rows;

import dev.ringout.cells.PinList;
import dev.ringout.imports.list.End;
import dev.ringout.imports.list.Ends;
import dev.ringout.imports.list.Grammar;
import dev.ringout.imports.list.ImportOptions;
import dev.ringout.imports.list.ListColumn;
import dev.ringout.imports.list.ListFindings;
import dev.ringout.imports.list.ListTable;
import dev.ringout.imports.list.Role;
import dev.ringout.imports.list.RowOddity;
import dev.ringout.imports.list.SkipReason;
import dev.ringout.imports.list.SparePin;
import dev.ringout.imports.list.Understanding;
import dev.ringout.imports.list.Words;
import dev.ringout.imports.rows.Tally.RowKind;
import dev.ringout.sheet.Row;
import dev.ringout.source.Place;
import dev.ringout.source.Severity;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Rows that are one net each, through a pin of every item whose column holds one. */
final class RowNetReader extends TableReader {
  /** Where no row has a name, rows that share a point are one net. */
  private static final String UNNAMED = " ";

  private static final Pattern OTHER_LETTER = Pattern.compile("[A-WYZa-wyz]");

  private static final Pattern LETTERS_AND_DIGITS = Pattern.compile("[\\p{L}\\d]+");

  /** Several pins, a range, or one of two. */
  private static final Pattern SEVERAL =
      Pattern.compile(
          "(?u).*\\s(and|und|et|y|e|en|or|oder|ou|of|bis|to|a|\u00e0|&)\\s.*|[a-z]*\\d{1,3}\\s?-\\s?[a-z]*\\d{1,3}|[A-Z0-9+]{1,4}(\\s*[,;]\\s*[A-Z0-9+]{1,4})+");

  private static final Pattern PLAIN = Pattern.compile("[^\\s()\\[\\]=|;&]+");

  /** {@code 7 (+8)}, {@code A7(A8)}, {@code A4 [A5]}, {@code 7=8}: a pin, and one more. */
  private static final Pattern PIN_AND_MORE =
      Pattern.compile(
          "[A-Za-z]{0,2}\\d{1,3}(?:\\s*[(\\[=|]\\s*\\+?(?:also )?|\\s+)[A-Za-z]{0,2}\\d{1,3}\\s*[)\\]]?");

  private static final Pattern NUMBERS_APART =
      Pattern.compile("[A-Za-z]?\\d{1,3}(?:[\\s=|][A-Za-z]?\\d{1,3})+|\\d{1,3}(?:-\\d{1,3}){2,}");

  private static final Pattern PIN_RANGE =
      Pattern.compile("([A-Za-z]*)(\\d{1,3})\\s?-\\s?([A-Za-z]*)(\\d{1,3})");

  /** {@code VCC+BLK}. */
  private static final Pattern SUM = Pattern.compile("[A-Za-z]\\w*\\+[A-Za-z]\\w*");

  /** {@code GND/CS}: one pin of two names, or two. */
  private static final Pattern TWO_NAMES = Pattern.compile("[\\w+-]{1,8}\\s?/\\s?[\\w+-]{1,8}");

  private final ImportOptions options;
  private final Map<Integer, Boolean> full = new HashMap<>();
  private final Map<Integer, Boolean> parted = new HashMap<>();
  private final Map<Integer, Boolean> lettered = new HashMap<>();

  /** Whether a row's wires run from its first point to each other, and not from one to the next. */
  private final boolean star;

  /** Two columns of one item with another item's between, or none. */
  private final List<ListColumn> halves;

  private boolean secondColumnsSaid;

  private final Map<String, String> netOfPoint = new HashMap<>();
  private final Map<String, Integer> rowsOfName = new LinkedHashMap<>();
  private final Map<String, Integer> rowOfPoint = new HashMap<>();

  RowNetReader(
      ListTable table,
      Words words,
      Ends ends,
      ImportOptions options,
      ListFindings findings,
      Understanding into) {
    super(table, words, ends, findings, into);
    this.options = options;
    this.star = isStar(table);
    this.halves = halves(table);
  }

  /**
   * The columns of the first item whose pins stand in two columns with another item's between: the
   * second is no other name of the same pin. None in a list whose rows are one net each.
   */
  private static List<ListColumn> halves(ListTable table) {
    List<ListColumn> points =
        table.columns(Role.POINTS).stream().filter(one -> !one.item().isEmpty()).toList();
    for (int first = 0; first < points.size(); first++) {
      String item = points.get(first).item();
      for (int second = first + 2; second < points.size(); second++) {
        boolean between =
            points.subList(first, second).stream().anyMatch(one -> !one.item().equals(item));
        if (between && points.get(second).item().equals(item)) {
          return List.of(points.get(first), points.get(second));
        }
      }
    }
    return List.of();
  }

  /** Says once what becomes of a second column of an item. */
  private void saySecondColumns(Row row) {
    if (secondColumnsSaid) {
      return;
    }
    secondColumnsSaid = true;
    int heading = table.headingRow() > 0 ? table.headingRow() : row.number();
    if (!halves.isEmpty()) {
      ListColumn second = halves.get(1);
      findings.error(
          table.grid().place(heading, second.index()),
          new RowOddity.HalvesSideBySide(second.item(), letters(halves), letters(secondHalf())));
      return;
    }
    for (ListColumn column : secondColumns()) {
      findings.warning(
          table.grid().place(heading, column.index()),
          new RowOddity.SecondColumnOfItem(column.item(), Place.columnLetters(column.index())));
    }
  }

  private static List<String> letters(List<ListColumn> columns) {
    return columns.stream().map(one -> Place.columnLetters(one.index())).toList();
  }

  /** The columns of which nothing may be taken while the first half is read: names among them. */
  private List<ListColumn> secondHalf() {
    List<ListColumn> second = secondColumns();
    List<String> headings = new ArrayList<>();
    List<ListColumn> half = new ArrayList<>();
    for (ListColumn column : table.columns()) {
      boolean again = !column.heading().isEmpty() && headings.contains(column.key());
      if (second.contains(column) || (again && !column.isSaid())) {
        half.add(column);
      }
      headings.add(column.key());
    }
    return half;
  }

  /** The columns of items whose pins stand in a column before. */
  private List<ListColumn> secondColumns() {
    List<String> items = new ArrayList<>();
    List<ListColumn> second = new ArrayList<>();
    for (ListColumn column : table.columns(Role.POINTS)) {
      if (items.contains(column.item())) {
        second.add(column);
      } else if (!column.item().isEmpty()) {
        items.add(column.item());
      }
    }
    return second;
  }

  /** Pins of one connector down the rows, and across them others of which a row holds few. */
  private static boolean isStar(ListTable table) {
    List<ListColumn> points = table.columns(Role.POINTS);
    if (points.size() < 3) {
      return false;
    }
    List<Row> rows =
        table.body().stream()
            .filter(row -> points.stream().anyMatch(one -> !row.cell(one.index()).isBlank()))
            .toList();
    boolean first = filled(rows, points.get(0)) * 10 >= rows.size() * 9L;
    return first
        && points.stream().skip(1).allMatch(one -> filled(rows, one) * 10 < rows.size() * 6L);
  }

  private static long filled(List<Row> rows, ListColumn column) {
    return rows.stream().filter(row -> !row.cell(column.index()).isBlank()).count();
  }

  @Override
  void readRow(Row row) {
    saySecondColumns(row);
    if (!halves.isEmpty()) {
      lose(row, SkipReason.END_IN_DOUBT);
      return;
    }
    String signal = cells.text(row, Role.SIGNAL);
    Named named = named(row);
    if (cells.rowIsLost()) {
      lose(row);
      return;
    }
    joinByNames(row, named.points());
    joinByNet(signal, named.points());
    String net = signal.isEmpty() ? named.lastName() : signal;
    if (net.isEmpty() && !isNamed()) {
      net = UNNAMED;
    }
    boolean wired = false;
    boolean any = false;
    for (List<End> group : groups(row, named.points())) {
      List<End> open = withoutTaken(row, group, net);
      any |= !open.isEmpty();
      wired |= open.size() > 1;
      if (open.size() == 1) {
        into.add(new SparePin(open.get(0), net.equals(UNNAMED) ? "" : net));
      }
      for (int i = 0; i + 1 < open.size(); i++) {
        End from = open.get(star ? 0 : i);
        add(row, cells.text(row, Role.WIRE), from, open.get(i + 1), List.of());
      }
    }
    tally.count(wired ? RowKind.WIRE : any ? RowKind.SPARE : RowKind.NOTE);
  }

  private boolean isNamed() {
    return table.columns().stream().anyMatch(column -> column.role() == Role.SIGNAL);
  }

  /**
   * The row's points by the name that their item's own column of names gives them.
   *
   * @param lastName the name of the last such column, or empty
   */
  private record Named(Map<String, List<End>> points, String lastName) {}

  private Named named(Row row) {
    Map<String, List<End>> byName = new LinkedHashMap<>();
    String localName = "";
    List<String> items = new ArrayList<>();
    for (ListColumn column : table.columns()) {
      if (column.role() == Role.SIGNAL && !column.item().isEmpty()) {
        localName = cells.text(row, column);
      } else if (column.role() == Role.POINTS) {
        for (End end : points(row, column)) {
          if (items.contains(column.item()) && end.item().equals(column.item())) {
            // A second column of one item is another name of the same pin.
            continue;
          }
          byName.computeIfAbsent(owner(column) ? localName : "", key -> new ArrayList<>()).add(end);
        }
        items.add(column.item());
      }
    }
    return new Named(byName, localName);
  }

  /** The points that are joined: all of the row, or where it has several names those of one. */
  private List<List<End>> groups(Row row, Map<String, List<End>> byName) {
    long names = byName.keySet().stream().filter(name -> !isNothing(name)).distinct().count();
    List<List<End>> groups = new ArrayList<>();
    if (names > 1) {
      findings.warning(
          table.place(row),
          new RowOddity.RowOfSeveralNames(
              byName.keySet().stream().filter(name -> !name.isEmpty()).toList()));
      byName.forEach((name, points) -> groups.add(points));
      List<End> nameless = byName.getOrDefault("", List.of());
      groups.remove(nameless);
      nameless.forEach(end -> into.add(new SparePin(end, "which net? the row has two names")));
    } else {
      List<End> all = new ArrayList<>();
      byName.values().forEach(all::addAll);
      groups.add(all);
    }
    return groups;
  }

  /** Whether a column of names stands before the column, for the same item. */
  private boolean owner(ListColumn column) {
    String first = column.item().split(" ", 2)[0];
    return table.columns().stream()
        .anyMatch(
            one ->
                one.role() == Role.SIGNAL
                    && !one.item().isEmpty()
                    && one.item().split(" ", 2)[0].equals(first));
  }

  private List<End> points(Row row, ListColumn column) {
    String text = cells.text(row, column);
    if (isNoPin(column.item(), text)) {
      return List.of();
    }
    List<End> points = new ArrayList<>();
    for (Ends.Text one : ends.parseAll(text, column.grammar())) {
      boolean parted = column.grammar().kind() == Grammar.Kind.SEPARATED && isParted(text, column);
      if (column.item().isEmpty() && !one.item().isEmpty()) {
        points.add(new End(one.item(), one.pin(), table.place(row, column), false));
        continue;
      }
      boolean full =
          !one.pin().isEmpty()
              && text.indexOf('/') < 0
              && (areMostlyFull(column) || !isRangeOfPins(text))
              && (parted || Ends.isDesignator(one.item()) || text.contains(" - "));
      if (full) {
        points.add(new End(one.item(), one.pin(), table.place(row, column), false));
      }
    }
    if (!points.isEmpty()) {
      return points;
    }
    // Among full points a text that is none is no pin of an item that the heading names.
    boolean own = text.equalsIgnoreCase(column.heading()) || isOdd(text, column);
    boolean noPin = own || (areMostlyFull(column) && text.length() > 1);
    boolean several =
        SEVERAL.matcher(text).matches() || isRangeOfPins(text) || SUM.matcher(text).matches();
    boolean notParted = several && PinList.listed(text).size() == 1;
    if (noPin || notParted) {
      findings.add(
          Severity.ERROR,
          table.place(row, column),
          column.heading(),
          new RowOddity.EndInDoubt(text));
      cells.lose();
      return List.of();
    }
    if (column.item().indexOf(',') > 0 || column.item().indexOf('/') > 0) {
      findings.warning(table.place(row, column), new RowOddity.ItemUnclear(text, column.heading()));
      return List.of();
    }
    if (TWO_NAMES.matcher(text).matches() && !areParted(column)) {
      findings.warning(table.place(row, column), new RowOddity.TakenAsOnePin(text));
    }
    for (String pin : PinList.listed(text)) {
      PinName name = heads.of(column, pin);
      if (!name.names().isEmpty() && name.names().stream().allMatch(this::isNothing)) {
        into.add(
            new SparePin(
                new End(column.item(), name.pin(), table.place(row, column), false), text));
        continue;
      }
      into.ownPin(column.item(), name.pin(), name.names());
      points.add(new End(column.item(), name.pin(), table.place(row, column), false));
    }
    return points;
  }

  /**
   * {@code 7 8}, {@code 7-8-9}, {@code 7(8)}, {@code 5 via 100R}, {@code P2} among pins of P1: no
   * plain pin, and no other of the column is written so.
   */
  private boolean isOdd(String text, ListColumn column) {
    if (text.length() > 1 && isLikeItem(text, column.item())) {
      return true;
    }
    if (NUMBERS_APART.matcher(text).matches() || words.mentions("changes wire", text)) {
      return true;
    }
    if (text.equalsIgnoreCase("x")) {
      // A pin called X has neighbours called Y or W; alone it says that nothing is there.
      return !lettered.computeIfAbsent(column.index(), index -> countOf(OTHER_LETTER, column) > 0);
    }
    boolean more =
        PIN_AND_MORE.matcher(text).matches()
            || (!PLAIN.matcher(text).matches()
                && (words.mentions("by way of", text) || words.mentions("joins", text)));
    if (!more || PinList.listed(text).size() > 1) {
      return false;
    }
    String shape = shape(text);
    return table.body().stream().map(row -> shape(column.textIn(row))).filter(shape::equals).count()
        < 3;
  }

  private static String shape(String text) {
    return LETTERS_AND_DIGITS.matcher(text).replaceAll("x");
  }

  /** Another item of the same letters: a heading further down, or a title. */
  private static boolean isLikeItem(String text, String item) {
    String letters = Ends.lettersOf(item);
    return Ends.isDesignator(item)
        && Ends.isDesignator(text)
        && !letters.isEmpty()
        && !text.equals(item)
        && Ends.lettersOf(text).equals(letters);
  }

  /** {@code GPIO4-7}, {@code A4-A5} in a column of plain pins: from one to another. */
  private static boolean isRangeOfPins(String text) {
    Matcher range = PIN_RANGE.matcher(text);
    return range.matches()
        && (range.group(3).isEmpty() || range.group(3).equals(range.group(1)))
        && Integer.parseInt(range.group(2)) < Integer.parseInt(range.group(4));
  }

  /** Whether names with a stroke between are usual in a column. */
  private boolean areParted(ListColumn column) {
    return parted.computeIfAbsent(column.index(), index -> countOf(TWO_NAMES, column) > 2);
  }

  private long countOf(Pattern form, ListColumn column) {
    return table.body().stream().map(column::textIn).filter(form.asMatchPredicate()).count();
  }

  private boolean areMostlyFull(ListColumn column) {
    return full.computeIfAbsent(
        column.index(),
        index -> {
          int filled = 0;
          int points = 0;
          for (ListColumn alike : numberedAlike(column)) {
            for (Row row : table.body()) {
              String text = alike.textIn(row);
              filled += text.isEmpty() ? 0 : 1;
              points += Ends.looksLikePoint(text) ? 1 : 0;
            }
          }
          return points > 2 && points * 10 >= filled * 6;
        });
  }

  /** {@code Node 1}, {@code Node 2}, {@code Node 3}: columns of one kind, however few cells. */
  private List<ListColumn> numberedAlike(ListColumn column) {
    List<ListColumn> alike =
        table.columns(Role.POINTS).stream().filter(column::isNumberedLike).toList();
    return alike.isEmpty() ? List.of(column) : alike;
  }

  private static boolean isParted(String text, ListColumn column) {
    return text.indexOf(column.grammar().separator()) > 0;
  }

  private void joinByNames(Row row, Map<String, List<End>> byName) {
    for (ListColumn column : table.columns()) {
      if (!column.heading().isEmpty() && options.joinsBy(column.heading())) {
        String net = cells.text(row, column);
        if (!isNothing(net)) {
          byName.values().forEach(points -> points.forEach(end -> into.onNet(net, end)));
        }
      }
    }
  }

  /** A net that stands on several rows is one net where its heading says that it is a net. */
  private void joinByNet(String net, Map<String, List<End>> byName) {
    boolean isNet =
        cells
            .column(Role.SIGNAL)
            .filter(column -> words.is("net", column.heading()) && column.item().isEmpty())
            .isPresent();
    boolean named = !isNothing(net) && cells.column(Role.SIGNAL).isPresent();
    boolean open = isNet && named && byName.size() == 1;
    boolean points = byName.values().stream().anyMatch(ends -> !ends.isEmpty());
    if (named && points && !open && options.joinBy().isEmpty()) {
      rowsOfName.merge(net, 1, Integer::sum);
    }
    if (open) {
      byName.values().stream()
          .flatMap(List::stream)
          .findFirst()
          .ifPresent(end -> into.onNet(net, end));
    }
  }

  /** A point that another row has under another name is not joined to both. */
  private List<End> withoutTaken(Row row, List<End> points, String net) {
    List<End> open = new ArrayList<>();
    for (End end : points) {
      String key = end.toString();
      Integer other = rowOfPoint.putIfAbsent(key, row.number());
      String otherNet = netOfPoint.putIfAbsent(key, net);
      boolean same = net.equals(UNNAMED);
      if (other != null && !same && (otherNet == null || !otherNet.equals(net) || net.isEmpty())) {
        findings.warning(end.place(), new RowOddity.InAnotherNet(end.toString(), other));
      } else {
        open.add(end);
      }
    }
    return open;
  }

  @Override
  void finish() {
    List<String> twice =
        rowsOfName.entrySet().stream()
            .filter(entry -> entry.getValue() > 1)
            .map(Map.Entry::getKey)
            .toList();
    if (!twice.isEmpty()) {
      ListColumn column = cells.column(Role.SIGNAL).orElseThrow();
      findings.warning(
          table.grid().place(table.headingRow(), column.index()),
          new RowOddity.NamesOnSeveralRows(column.heading(), twice));
    }
    findings.note(table.grid().place(table.headingRow(), 0), new RowOddity.RowsAreNets(star));
  }
}
