package dev.ringout.imports.find;

import dev.ringout.cells.CellText;
import dev.ringout.imports.list.Ends;
import dev.ringout.imports.list.Grid;
import dev.ringout.imports.list.Role;
import dev.ringout.imports.list.Words;
import dev.ringout.sheet.Cell;
import dev.ringout.sheet.Row;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.regex.Pattern;

/** Which rows of a sheet are headings. */
final class HeadingRows {
  private static final int ROWS_NEEDED_TO_CONTRAST = 3;
  private static final int ROWS_ABOVE = 60;
  private static final int ROWS_ALIKE = 3;
  private static final int ROWS_OF_TITLES = 6;
  private static final int ROWS_USUAL = 9;
  private static final int ROWS_COMPARED = 40;
  private static final int PINS_ACROSS = 4;
  private static final int LONGEST_HEADING = 40;

  /** {@code J1 - 12 way}, {@code Plug X1 (12 pins)}: an item and its size, and no heading. */
  private static final Pattern SIZED =
      Pattern.compile("\\b[A-Z]{1,3}\\d{1,3}\\s*[-(,\u2013]\\s*(?:\\d{1,3}\\s*\\p{L}|\\p{L}+ing )");

  private final Grid grid;
  private final Words words;
  private final HeadingReader headings;
  private final Ends ends;

  HeadingRows(Grid grid, Words words, HeadingReader headings) {
    this.grid = grid;
    this.words = words;
    this.headings = headings;
    this.ends = new Ends(words);
  }

  /** The first headings, by their words or by what stands below; past the end where none are. */
  int first() {
    List<Row> rows = grid.rows();
    int byWords = firstByWords();
    if (byWords == rows.size()) {
      int contrasting = contrasting();
      return contrasting == rows.size() ? matrix() : contrasting;
    }
    List<Row> below = rows.subList(byWords + 1, rows.size());
    if (alikeAbove(rows.get(byWords), below).size() < ROWS_ALIKE) {
      return byWords;
    }
    // A row of data with words of the trade in it: the list begins above.
    int contrasting = contrasting();
    if (contrasting < byWords) {
      return contrasting;
    }
    boolean headless = !HeadingLess.columns(rows, grid.width(), words, headings).isEmpty();
    return headless ? rows.size() : byWords;
  }

  /** The rows above a row of headings that fill the cells which the rows below it fill. */
  List<Row> alikeAbove(Row heading, List<Row> below) {
    List<Row> rows = grid.rows();
    int at = rows.indexOf(heading);
    Set<Integer> usual = new HashSet<>();
    List<Row> some = below.subList(0, Math.min(ROWS_COMPARED, below.size()));
    for (int column = 1; column <= grid.width(); column++) {
      int filled = 0;
      for (Row row : some) {
        filled += row.cell(column).isBlank() ? 0 : 1;
      }
      if (filled * 10 >= some.size() * 6) {
        usual.add(column);
      }
    }
    List<Row> alike = new ArrayList<>();
    for (Row row : rows.subList(0, at)) {
      long same = usual.stream().filter(column -> !row.cell(column).isBlank()).count();
      if (usual.size() >= 2 && same * 10 >= usual.size() * 8L) {
        alike.add(row);
      }
    }
    return alike;
  }

  /** The first headings may stand anywhere near the top. */
  private int firstByWords() {
    List<Row> rows = grid.rows();
    for (int i = 0; i < Math.min(ROWS_ABOVE, rows.size()); i++) {
      if (isHeading(rows.get(i)) && isWideEnough(i)) {
        return isPlainHeading(rows.get(i)) ? i : plainer(i);
      }
    }
    return next(Math.min(ROWS_ABOVE, rows.size()));
  }

  /** A title with words of the trade in it, and just below the headings proper. */
  private int plainer(int index) {
    List<Row> rows = grid.rows();
    for (int i = index + 1; i < Math.min(index + ROWS_OF_TITLES, rows.size()); i++) {
      Row row = rows.get(i);
      if (isHeading(row) && filled(row) > filled(rows.get(index)) && isWideEnough(i)) {
        boolean second = i == index + 1 && isSecond(rows.get(index), row);
        return second ? index : i;
      }
    }
    return index;
  }

  private int next(int from) {
    List<Row> rows = grid.rows();
    for (int i = from; i < rows.size(); i++) {
      if (mayFollow(i) && isPlainHeading(rows.get(i)) && isWideEnough(i)) {
        return i;
      }
    }
    return rows.size();
  }

  /** The next row of headings that is not the same headings once more. */
  int nextOther(int from, Row heading) {
    List<Row> rows = grid.rows();
    for (int i = from; i < rows.size(); i++) {
      Row row = rows.get(i);
      if (isOfOtherItems(row, heading)) {
        return i;
      }
      boolean again = sameCells(row, heading) >= 2;
      boolean candidate =
          again
              ? isHeading(row)
              : (mayFollow(i) && (isPlainHeading(row) || isUnderTitle(i)))
                  || isOverOtherColumns(i, from);
      boolean ofOthers = again && isUnderItems(i);
      if (candidate && isWideEnough(i) && (ofOthers || !isRepeat(row, heading))) {
        return i;
      }
    }
    return rows.size();
  }

  /**
   * Headings below a title that stands alone behind a gap: nothing but words for columns, or pins
   * of an item ({@code Pot Pin}) with one more such word and no point.
   */
  private boolean isUnderTitle(int index) {
    List<Row> rows = grid.rows();
    if (index < 2 || filled(rows.get(index - 1)) != 1) {
      return false;
    }
    boolean gap = rows.get(index - 1).number() > rows.get(index - 2).number() + 1;
    List<String> texts =
        rows.get(index).cells().stream()
            .map(cell -> CellText.clean(cell.text()))
            .filter(text -> !text.isEmpty())
            .toList();
    long words = texts.stream().filter(headings::isHeading).count();
    boolean pins = texts.stream().anyMatch(text -> headings.role(text) == Role.PIN);
    boolean points = texts.stream().anyMatch(Ends::looksLikePoint);
    boolean most = words == texts.size() || (pins && words >= 2 && words * 2 > texts.size());
    return gap
        && texts.size() > 1
        && most
        && !points
        && (words < texts.size() || isHeading(rows.get(index)));
  }

  /**
   * Behind a gap a row with a word for a column and no point, over rows that fill its columns and
   * no others, where the rows above fill other ones: {@code Board Pin | LCD Connection} below a
   * list of five columns.
   */
  private boolean isOverOtherColumns(int index, int from) {
    List<Row> rows = grid.rows();
    Row row = rows.get(index);
    boolean gap = index > from && row.number() > rows.get(index - 1).number() + 1;
    if (!gap || filled(row) < 2 || !looksLikeHeadings(row)) {
      return false;
    }
    Set<Integer> own = columnsOf(row);
    int below = index + 1;
    while (below < rows.size() && rows.get(below).number() == rows.get(below - 1).number() + 1) {
      if (!own.containsAll(columnsOf(rows.get(below)))) {
        return false;
      }
      below++;
    }
    long others =
        rows.subList(from, index).stream()
            .filter(above -> filled(above) > 1 && !own.containsAll(columnsOf(above)))
            .count();
    return below > index + 1 && others * 2 > index - from;
  }

  private boolean looksLikeHeadings(Row row) {
    boolean word = false;
    for (Cell cell : row.cells()) {
      String text = CellText.clean(cell.text());
      if (Ends.looksLikePoint(text) || CellText.isDigits(text) || text.length() > LONGEST_HEADING) {
        return false;
      }
      word |= !text.isEmpty() && headings.isHeading(text);
    }
    return word;
  }

  private static Set<Integer> columnsOf(Row row) {
    Set<Integer> columns = new HashSet<>();
    for (int column = 1; column <= row.cells().size(); column++) {
      if (!row.cell(column).isBlank()) {
        columns.add(column);
      }
    }
    return columns;
  }

  /** The same headings once more under the names of other items, one over each column of pins. */
  boolean isUnderItems(int index) {
    List<Row> rows = grid.rows();
    if (index == 0
        || index >= rows.size()
        || rows.get(index - 1).number() + 1 != rows.get(index).number()) {
      return false;
    }
    Row above = rows.get(index - 1);
    int named = 0;
    for (int column = 1; column <= above.cells().size(); column++) {
      Cell cell = above.cell(column);
      boolean pins = headings.role(CellText.clean(rows.get(index).cell(column).text())) == Role.PIN;
      if (!cell.isBlank() && (!pins || cell.kind() != Cell.Stored.TEXT)) {
        return false;
      }
      named += cell.isBlank() ? 0 : 1;
    }
    return named >= 2;
  }

  /** {@code Signal | J2 | P2} below {@code Signal | J1 | P1}: another table, of other items. */
  private boolean isOfOtherItems(Row row, Row heading) {
    int others = 0;
    int width = Math.max(row.cells().size(), heading.cells().size());
    for (int column = 1; column <= width; column++) {
      String text = CellText.clean(row.cell(column).text());
      String above = CellText.clean(heading.cell(column).text());
      boolean other = !text.equals(above) && areOfOneKind(text, above);
      others += other ? 1 : 0;
      boolean words = text.isEmpty() || text.equalsIgnoreCase(above) || headings.isHeading(text);
      if (!other && !words) {
        return false;
      }
    }
    return others >= 2;
  }

  private static boolean areOfOneKind(String text, String heading) {
    String letters = Ends.lettersOf(heading);
    return !letters.isEmpty()
        && CellText.hasDigit(heading)
        && CellText.hasDigit(text)
        && Ends.isDesignator(heading)
        && Ends.lettersOf(text).equals(letters);
  }

  private static int sameCells(Row row, Row heading) {
    int same = 0;
    for (int column = 1; column <= heading.cells().size(); column++) {
      String text = heading.cell(column).text();
      same += !text.isEmpty() && text.equalsIgnoreCase(row.cell(column).text()) ? 1 : 0;
    }
    return same;
  }

  /** Headings stand at the top, below a gap, or below a row of one or two cells. */
  private boolean mayFollow(int index) {
    if (index == 0) {
      return true;
    }
    Row row = grid.rows().get(index);
    Row before = grid.rows().get(index - 1);
    boolean title = filled(before) <= 2 && filled(before) < usuallyFilled(index);
    return row.number() > before.number() + 1
        || filled(before) == 1
        || title
        || (isOfWords(row) && !isHeading(before));
  }

  /** Nothing but words for columns, of three kinds at least: no row of data looks so. */
  private boolean isOfWords(Row row) {
    Set<Role> roles = new HashSet<>();
    for (Cell cell : row.cells()) {
      String text = CellText.clean(cell.text());
      if (!text.isEmpty() && (Ends.isDesignator(text) || !headings.isPlain(text))) {
        return false;
      }
      if (!text.isEmpty()) {
        roles.add(headings.role(text));
      }
    }
    return roles.size() > 2;
  }

  /** How many cells most of the rows above fill: where it is two, a row of two is no title. */
  private int usuallyFilled(int index) {
    List<Integer> counts = new ArrayList<>();
    for (int i = Math.max(0, index - ROWS_USUAL); i < index; i++) {
      counts.add(filled(grid.rows().get(i)));
    }
    Collections.sort(counts);
    return counts.size() < ROWS_ALIKE ? Integer.MAX_VALUE : counts.get(counts.size() / 2);
  }

  /** A title over a wide table is no heading, unless the headings proper follow. */
  private boolean isWideEnough(int index) {
    List<Row> rows = grid.rows();
    if (index + 1 >= rows.size()) {
      return true;
    }
    int below = filled(rows.get(index + 1));
    return below <= 3 * filled(rows.get(index)) || isSecond(rows.get(index), rows.get(index + 1));
  }

  /** How many cells of a row are filled. */
  static int filled(Row row) {
    int filled = 0;
    for (Cell cell : row.cells()) {
      filled += cell.isBlank() ? 0 : 1;
    }
    return filled;
  }

  /** Whether a row repeats the headings of its table. */
  private static boolean isRepeat(Row row, Row heading) {
    int same = 0;
    int headed = 0;
    int filled = 0;
    for (int column = 1; column <= heading.cells().size(); column++) {
      String text = heading.cell(column).text();
      filled += row.cell(column).isBlank() ? 0 : 1;
      if (!text.isBlank()) {
        headed++;
        same +=
            CellText.headingKey(text).equals(CellText.headingKey(row.cell(column).text())) ? 1 : 0;
      }
    }
    // Another item's headings differ in that item's cell alone: that is no repeat.
    return headed >= 2 && same == filled && same * 4 >= headed * 3;
  }

  private boolean isHeading(Row row) {
    Set<Role> roles = new HashSet<>();
    int known = 0;
    int filled = 0;
    int numbers = 0;
    int partsList = 0;
    int designators = 0;
    for (Cell cell : row.cells()) {
      if (cell.isBlank()) {
        continue;
      }
      filled++;
      String text = CellText.clean(cell.text());
      numbers += cell.kind() == Cell.Stored.NUMBER || CellText.isDigits(text) ? 1 : 0;
      partsList += headings.isOfPartsList(text) ? 1 : 0;
      if (text.endsWith(":")) {
        // A label of the page's head, with its value beside it.
        continue;
      }
      if (Ends.isDesignator(text) || SIZED.matcher(text).find()) {
        designators++;
      } else if (ends.isPhrase(text)) {
        return false;
      } else if (headings.isHeading(text)) {
        known++;
        if (words.is("points", text)) {
          roles.add(Role.POINTS);
        } else if (headings.role(text) != Role.KEEP) {
          roles.add(headings.role(text));
        }
      }
    }
    boolean items = known >= 1 && designators >= 2 && known + designators == filled;
    boolean twoPins = known >= 2 && roles.equals(Set.of(Role.PIN));
    return filled >= 2
        && (roles.size() >= 2 || twoPins || items)
        && (known * 10 >= filled * 3 || items)
        && numbers <= 1
        && (partsList < 2 || namesEnds(roles));
  }

  /** Headings of which most are words of the trade and nothing else: in a list, data is near. */
  private boolean isPlainHeading(Row row) {
    if (!isHeading(row)) {
      return false;
    }
    int filled = 0;
    int plain = 0;
    for (Cell cell : row.cells()) {
      if (!cell.isBlank()) {
        filled++;
        String text = CellText.clean(cell.text());
        plain += headings.isPlain(text) || Ends.isDesignator(text) ? 1 : 0;
      }
    }
    return plain * 10 >= filled * 5;
  }

  private static boolean namesEnds(Set<Role> roles) {
    boolean from = roles.contains(Role.FROM) || roles.contains(Role.FROM_PIN);
    boolean to = roles.contains(Role.TO) || roles.contains(Role.TO_PIN);
    return (from && to) || (roles.contains(Role.PIN) && roles.contains(Role.FAR));
  }

  /** Headings over headings: FROM and TO over Connector and Pin. */
  boolean isSecond(Row first, Row second) {
    if (second.number() != first.number() + 1 || isRepeat(second, first)) {
      return false;
    }
    int known = 0;
    int filled = 0;
    int underWide = 0;
    int lettered = 0;
    for (int column = 1; column <= second.cells().size(); column++) {
      Cell cell = second.cell(column);
      if (cell.isBlank()) {
        continue;
      }
      if (cell.kind() == Cell.Stored.NUMBER || Ends.looksLikePoint(CellText.clean(cell.text()))) {
        return false;
      }
      filled++;
      known += headings.isHeading(CellText.clean(cell.text())) ? 1 : 0;
      underWide += grid.isWide(first.number(), column) ? 1 : 0;
      lettered += CellText.hasDigit(cell.text()) ? 0 : 1;
    }
    boolean refines =
        filled > filled(first) || hasGap(first, second) || nameItemsOver(first, second);
    return (known * 2 >= filled && known >= 2 && refines)
        || (underWide > 0 && filled <= 4)
        || (underWide > 1 && lettered == filled && filled > filled(first));
  }

  /** {@code DESK | RACK A} over {@code pin | pin}: names over words for pins and nothing else. */
  private boolean nameItemsOver(Row first, Row second) {
    for (int column = 1; column <= second.cells().size(); column++) {
      String below = CellText.clean(second.cell(column).text());
      String over = CellText.clean(first.cell(column).text());
      boolean names =
          headings.role(below) == Role.PIN
              && !over.isEmpty()
              && (headings.role(over) == Role.KEEP || headings.role(over) == Role.ITEM);
      if (!below.isEmpty() && !names) {
        return false;
      }
    }
    return true;
  }

  /** Whether the second row fills cells that the first leaves blank. */
  private static boolean hasGap(Row first, Row second) {
    for (int column = 1; column <= second.cells().size(); column++) {
      if (first.cell(column).isBlank() && !second.cell(column).isBlank()) {
        return true;
      }
    }
    return false;
  }

  /** The pins of one item across, and below them marks; past the end where there are none. */
  private int matrix() {
    List<Row> rows = grid.rows();
    for (int i = 0; i + ROWS_NEEDED_TO_CONTRAST < rows.size() && i < ROWS_ABOVE; i++) {
      Set<String> pins = new HashSet<>();
      int filled = 0;
      for (int column = 2; column <= rows.get(i).cells().size(); column++) {
        String text = CellText.clean(rows.get(i).cell(column).text());
        filled += text.isEmpty() ? 0 : 1;
        if (ColumnProfile.PIN.matcher(text).matches()) {
          pins.add(text);
        }
      }
      // One more heading may stand over sums or remarks.
      if (pins.size() >= PINS_ACROSS && pins.size() + 1 >= filled && areMarked(i)) {
        return i;
      }
    }
    return rows.size();
  }

  private boolean areMarked(int heading) {
    List<Row> rows = grid.rows();
    Map<Integer, ColumnProfile> below =
        ColumnProfile.of(rows.subList(heading + 1, rows.size()), 2, grid.width(), words);
    int marked = 0;
    int other = 0;
    for (int column = 2; column <= rows.get(heading).cells().size(); column++) {
      ColumnProfile cells = below.get(column);
      if (cells != null && !rows.get(heading).cell(column).isBlank() && !cells.isEmpty()) {
        marked += cells.marks() > 0 ? 1 : 0;
        other += cells.marks() == 0 ? 1 : 0;
      }
    }
    return marked >= PINS_ACROSS - 1 && other * 4 <= marked;
  }

  /** Headings that no word gives away stand out by not looking like the cells below them. */
  private int contrasting() {
    List<Row> rows = grid.rows();
    int first = 0;
    while (first < rows.size() && filled(rows.get(first)) < 2) {
      first++;
    }
    if (first + ROWS_NEEDED_TO_CONTRAST >= rows.size()) {
      return rows.size();
    }
    List<Row> below = rows.subList(first + 1, rows.size());
    boolean among = alikeAbove(rows.get(first), below).size() >= ROWS_ALIKE;
    return isWideEnough(first) && !among && contrasts(first) ? first : rows.size();
  }

  private boolean contrasts(int first) {
    List<Row> rows = grid.rows();
    Row heading = rows.get(first);
    Map<Integer, ColumnProfile> below =
        ColumnProfile.of(rows.subList(first + 1, rows.size()), 1, grid.width(), words);
    int stands = 0;
    int like = 0;
    int partsList = 0;
    for (int column = 1; column <= heading.cells().size(); column++) {
      Cell cell = heading.cell(column);
      if (cell.isBlank()) {
        continue;
      }
      String text = CellText.clean(cell.text());
      partsList += headings.isOfPartsList(text) ? 1 : 0;
      ColumnProfile cells = Objects.requireNonNull(below.get(column));
      if (cells.isMarks() || cells.isEmpty()) {
        stands += cells.isMarks() ? 1 : 0;
        continue;
      }
      boolean asBelow =
          Ends.isDesignator(text) && cells.filled() > 0 && isDesignatorBelow(first, column, text);
      boolean twice = text.equals(CellText.clean(heading.cell(column - 1).text()));
      if (cell.kind() != Cell.Stored.TEXT
          || text.length() > 40
          || twice
          || Ends.looksLikePoint(text)) {
        return false;
      }
      if (asBelow) {
        like++;
        continue;
      }
      // Under the name of a device some rows hold one of its pins; over colours stands "colour".
      boolean pinsBelow = cells.canBePins();
      boolean colors =
          cells.mostly(cells.colors())
              && headings.isPlain(text)
              && headings.role(text) == Role.COLOR;
      stands += colors || (pinsBelow && text.chars().anyMatch(Character::isLetter)) ? 1 : 0;
    }
    return stands >= 2 && like * 3 <= stands && partsList < 2;
  }

  /** Whether designators of the same letters stand below; under ESP32 a GPIO23 is none. */
  private boolean isDesignatorBelow(int first, int column, String heading) {
    String letters = Ends.lettersOf(heading);
    int alike = 0;
    int filled = 0;
    for (Row row : grid.rows().subList(first + 1, Math.min(first + 100, grid.rows().size()))) {
      String text = CellText.clean(row.cell(column).text());
      filled += text.isEmpty() ? 0 : 1;
      boolean other = letters.length() > 2 && !Ends.lettersOf(text).equals(letters);
      alike += Ends.isDesignator(text) && !other ? 1 : 0;
    }
    return alike * 2 > filled;
  }
}
