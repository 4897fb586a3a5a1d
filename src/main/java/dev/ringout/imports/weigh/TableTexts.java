package dev.ringout.imports.weigh;

import dev.ringout.cells.CellText;
import dev.ringout.imports.find.OnItsSide;
import dev.ringout.imports.find.Region;
import dev.ringout.imports.list.Ends;
import dev.ringout.imports.list.ListColumn;
import dev.ringout.imports.list.ListTable;
import dev.ringout.imports.list.Role;
import dev.ringout.imports.list.Words;
import dev.ringout.imports.weigh.Outcome.Share;
import dev.ringout.sheet.Row;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;

/** The texts of a table's columns, cleaned once for all ways to read it. */
final class TableTexts {
  private static final int ROWS_LOOKED_AT = 200;

  private static final Pattern MARK = Pattern.compile("[xX\u2713\u2714\u25cf\u2022*]");

  private static final Pattern SHORT_PIN = Pattern.compile("[A-Za-z]{0,2}\\d{1,3}|[A-Za-z]|PE");

  private static final Pattern PIN_NAMES =
      Pattern.compile(
          "[\\p{L}\\d+~*#-][\\w+./~#*-]{0,9}(\\s*[,;&+]\\s*[\\w+./~#*-]{1,10})*|\\d[.,]\\dV");

  private final List<Row> rows;
  private final List<String> headingsDown;
  private final Map<Integer, List<String>> filled = new HashMap<>();

  TableTexts(Region region, Words words) {
    this.rows = region.body().stream().filter(row -> !isOfPage(row, region)).toList();
    this.headingsDown = OnItsSide.headings(region, words);
  }

  /** The headings once more on the next page, or a title alone in a row of many columns. */
  private static boolean isOfPage(Row row, Region region) {
    return region.isHeadingAgain(row) || isTitle(row, region);
  }

  private static boolean isTitle(Row row, Region region) {
    int filled = 0;
    int headed = 0;
    for (ListColumn column : region.columns()) {
      filled += column.textIn(row).isEmpty() ? 0 : 1;
      headed += column.heading().isEmpty() ? 0 : 1;
    }
    return filled == 1 && headed > 3;
  }

  /** The headings that stand in the first column, or none. */
  List<String> headingsDown() {
    return headingsDown;
  }

  List<Row> rows() {
    return rows;
  }

  /** So many rows tell what a column is like. */
  List<Row> firstRows() {
    return rows.subList(0, Math.min(ROWS_LOOKED_AT, rows.size()));
  }

  /** The texts of a column that are not blank. */
  List<String> filled(ListColumn column) {
    return filled.computeIfAbsent(
        column.index(),
        index -> rows.stream().map(column::textIn).filter(text -> !text.isEmpty()).toList());
  }

  boolean isBlank(ListColumn column) {
    return rows.stream().map(column::textIn).allMatch(text -> text.isEmpty() || text.equals("-"));
  }

  /** Whether its cells do not all say the same, a blank being something else. */
  boolean varies(ListColumn column) {
    return rows.stream().map(column::textIn).distinct().count() > 1;
  }

  boolean isNumeric(ListColumn column) {
    return filled(column).stream().map(CellText::wholeNumber).allMatch(CellText::isDigits);
  }

  /**
   * Whether several letters stand each on neighbouring rows, two at least, and none comes back:
   * {@code a a a b b}.
   */
  boolean lettersRuns(ListColumn column) {
    List<String> runs = new ArrayList<>();
    int length = 0;
    boolean several = true;
    String before = "";
    for (Row row : rows) {
      String text = column.textIn(row);
      if (!text.equals(before)) {
        several &= before.isEmpty() || length > 1;
        length = 0;
        if (!text.isEmpty()) {
          runs.add(text);
        }
      }
      before = text;
      length++;
    }
    several &= before.isEmpty() || length > 1;
    boolean letters = runs.stream().allMatch(text -> text.chars().allMatch(Character::isLetter));
    return several && letters && runs.size() > 1 && new HashSet<>(runs).size() == runs.size();
  }

  /** Whether most rows have a short pin: a letter, or a number with a letter or two before it. */
  boolean arePins(ListColumn column) {
    List<String> texts = filled(column);
    long pins = texts.stream().filter(text -> SHORT_PIN.matcher(text).matches()).count();
    return texts.size() * 2 >= rows.size() && pins * 10 >= texts.size() * 8L;
  }

  boolean hasDigits(ListColumn column) {
    return filled(column).stream().anyMatch(CellText::hasDigit);
  }

  /** Whether the cells are the numbers of the rows, or mostly prose. */
  boolean isNumbered(ListColumn column) {
    List<String> texts = filled(column);
    int counted = 0;
    int prose = 0;
    for (int i = 0; i < texts.size(); i++) {
      String text = CellText.wholeNumber(texts.get(i));
      counted += text.equals(Integer.toString(i + 1)) ? 1 : 0;
      prose += text.length() > 24 || text.chars().filter(c -> c == ' ').count() > 2 ? 1 : 0;
    }
    return counted * 10 >= texts.size() * 8 || prose * 2 > texts.size();
  }

  /** Whether the cells count on from one to the next, from wherever. */
  boolean countsRows(ListColumn column) {
    List<String> texts = filled(column).stream().map(CellText::wholeNumber).toList();
    for (int i = 0; i < texts.size(); i++) {
      boolean number = CellText.isDigits(texts.get(i)) && texts.get(i).length() < 9;
      if (!number
          || (i > 0 && Integer.parseInt(texts.get(i)) != Integer.parseInt(texts.get(i - 1)) + 1)) {
        return false;
      }
    }
    return texts.size() > 1;
  }

  /** Whether no text comes again. */
  boolean isDistinct(ListColumn column) {
    List<String> texts = filled(column);
    return new HashSet<>(texts).size() == texts.size();
  }

  /** Whether nearly every row has another text, as the wires' numbers are. */
  boolean isOfItsOwn(ListColumn column) {
    List<String> texts = filled(column);
    return new HashSet<>(texts).size() * 10 >= texts.size() * 8;
  }

  /** Whether the first rows are mostly full points. */
  boolean isMostlyPoints(ListColumn column) {
    int some = 0;
    int points = 0;
    for (Row row : firstRows()) {
      String text = column.textIn(row);
      some += text.isEmpty() ? 0 : 1;
      points += Ends.looksLikePoint(text) ? 1 : 0;
    }
    return points >= 2 && points * 10 >= some * 8;
  }

  /** How many cells of the points are called as pins are: one short word, or several. */
  Share calledAsPins(ListTable table) {
    return pointsOf(PIN_NAMES, table);
  }

  /** How many cells of the points are marks of a matrix. */
  Share marks(ListTable table) {
    return pointsOf(MARK, table);
  }

  private Share pointsOf(Pattern form, ListTable table) {
    int some = 0;
    int like = 0;
    for (ListColumn column : table.columns(Role.POINTS)) {
      for (String text : filled(column)) {
        some++;
        like += form.matcher(text).matches() ? 1 : 0;
      }
    }
    return new Share(like, some);
  }

  /** Whether the texts name devices: designators, or names of which most come again. */
  boolean areDevices(ListColumn column, Words words) {
    List<String> texts =
        filled(column).stream()
            .filter(text -> !words.isDitto(text) && !words.isNothing(text))
            .toList();
    long designators =
        texts.stream().filter(text -> Ends.isDesignator(text.replaceAll("[-=+]", ""))).count();
    long named = texts.stream().filter(text -> text.chars().anyMatch(Character::isLetter)).count();
    // A mark for "as above" is the same device once more.
    Set<String> distinct = new HashSet<>(texts);
    boolean namedAll =
        distinct.stream().allMatch(text -> text.length() > 2 || CellText.hasDigit(text));
    boolean again = namedAll && distinct.size() * 2 <= filled(column).size();
    return texts.size() > 1
        && named * 10 >= texts.size() * 9L
        && (again || designators * 10 >= texts.size() * 8L);
  }
}
