package dev.ringout.imports.rows;

import dev.ringout.cells.CellText;
import dev.ringout.imports.find.PageFurniture;
import dev.ringout.imports.list.Ends;
import dev.ringout.imports.list.Layout;
import dev.ringout.imports.list.ListColumn;
import dev.ringout.imports.list.ListFindings;
import dev.ringout.imports.list.ListTable;
import dev.ringout.imports.list.Role;
import dev.ringout.imports.list.RowOddity;
import dev.ringout.imports.list.Titles;
import dev.ringout.imports.list.Words;
import dev.ringout.sheet.Cell;
import dev.ringout.sheet.Row;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Which rows of a table are titles, headings, furniture or deleted, and which may hold a wire. */
final class RowFrames {
  private static final Pattern PAGE =
      Pattern.compile(
          "(?iu)(sheet|page|seite|blatt|folio|feuille|hoja|p[aá]gina|foglio|blad|folha)\\s*\\d+"
              + "(\\s*(of|/|von|sur|de|di|van)\\s*\\d+)?|.*cont(inue|'?)d.*");

  private static final Pattern EXPLAINED = Pattern.compile("[\\p{L}\\d/]{1,6}\\s*=\\s*\\S.*");

  private final ListTable table;
  private final Words words;
  private final TableCells cells;
  private final Fills fills;
  private Optional<Titles.BothEnds> sectionEnds;
  private String section = "";

  /** Rows that say of others that they are no wires. */
  private final List<Row> speaking = new ArrayList<>();

  /** Rows taken for titles whose item does not lead them. */
  private final List<Row> unclear = new ArrayList<>();

  /** Texts alone between the wires that are not understood. */
  private final List<Row> unread = new ArrayList<>();

  private final List<Row> rowsOfHeadings;

  RowFrames(ListTable table, Words words, TableCells cells) {
    this.fills = new Fills(table, words);
    this.table = table;
    this.words = words;
    this.cells = cells;
    this.sectionEnds = endsAbove();
    this.rowsOfHeadings = rowsOfHeadings();
  }

  /** What a row is besides one that may hold a wire. */
  enum Frame {
    BLANK,
    /** The headings once more. */
    HEADING,
    /** A title, the page's furniture or a remark. */
    NOTE,
    STRUCK,
    /** It says that it is deleted. */
    DELETED,
    /** Its ends are filled with a colour that means deleted. */
    FILLED,
    /** None of these: it may hold a wire. */
    CONTENT
  }

  /** The connector that the last section title named, or empty. */
  String section() {
    return section;
  }

  /** The items at both ends that the last title named. */
  Optional<Titles.BothEnds> sectionEnds() {
    return sectionEnds;
  }

  /** What the titles just above the headings say of both ends. */
  private Optional<Titles.BothEnds> endsAbove() {
    Optional<Titles.BothEnds> found = Optional.empty();
    for (Row row : table.grid().rows()) {
      boolean above = row.number() < table.headingRow() && row.number() >= table.headingRow() - 3;
      if (above && found.isEmpty()) {
        found = Titles.ends(row.cell(table.firstColumn()).text(), words);
      }
    }
    return found;
  }

  /** A title with the items at both ends, where the list's columns are of pins alone. */
  private boolean namesBothEnds(int filled, String only) {
    Optional<Titles.BothEnds> named =
        isOfPinsAlone() && filled <= 2 ? Titles.ends(only, words) : Optional.empty();
    sectionEnds = named.isPresent() ? named : sectionEnds;
    return named.isPresent();
  }

  private boolean isOfPinsAlone() {
    return table.layout() == Layout.FROM_TO
        && cells.column(Role.FROM).isEmpty()
        && cells.column(Role.TO).isEmpty();
  }

  /** What a row is; a title's connector holds for the rows below it. */
  Frame of(Row row) {
    int filled = 0;
    int struck = 0;
    int same = 0;
    int headings = 0;
    String only = "";
    boolean deleted = false;
    for (ListColumn column : table.columns()) {
      Cell cell = row.cell(column.index());
      boolean headed = !column.heading().isEmpty();
      headings += headed ? 1 : 0;
      if (cell.isBlank()) {
        continue;
      }
      filled++;
      only = cell.text();
      struck += cell.isStruck() ? 1 : 0;
      same += headed && isSame(cell.text(), column.heading()) ? 1 : 0;
      boolean remark =
          switch (column.role()) {
            case NOTE, KEEP, FROM, TO, FAR -> true;
            default -> false;
          };
      // With a sign before it the word explains a colour, and says nothing of the row.
      boolean explains = cell.text().startsWith("=");
      deleted |=
          remark && !explains && cell.text().length() < 14 && words.is("deleted", cell.text());
    }
    if (filled == 0) {
      return Frame.BLANK;
    }
    boolean again = same >= 2 && same == filled && same * 4 >= headings * 2;
    if (again || isFromAndTo(row) || isRowOfHeadings(row, filled)) {
      return Frame.HEADING;
    }
    if (PageFurniture.isPage(row, words) || fills.isLegend(row) || explainsLetters(row)) {
      return Frame.NOTE;
    }
    if (struck * 2 > filled || endsAreStruck(row)) {
      return Frame.STRUCK;
    }
    if (deleted || (filled > 2 && isCommentedOut(row))) {
      return Frame.DELETED;
    }
    if (isFurniture(row) || isSigned(row) || isTitleBlock(row) || isTotal(row, filled)) {
      return Frame.NOTE;
    }
    Frame frame = filled <= 2 ? shortRow(row, filled, CellText.clean(only)) : Frame.CONTENT;
    return frame == Frame.CONTENT && fills.isDeleted(row) ? Frame.FILLED : frame;
  }

  /** The rows of headings in two rows; none where they are one. */
  private List<Row> rowsOfHeadings() {
    int first = table.headingRow();
    int body = table.body().isEmpty() ? 0 : table.body().get(0).number();
    return first == 0 || body - first < 2
        ? List.of()
        : table.grid().rows().stream()
            .filter(row -> row.number() >= first && row.number() < body)
            .toList();
  }

  /** One row of headings in two rows, once more. */
  private boolean isRowOfHeadings(Row row, int filled) {
    return filled > 1 && rowsOfHeadings.stream().anyMatch(heading -> repeats(row, heading, filled));
  }

  private boolean repeats(Row row, Row heading, int filled) {
    long same =
        table.columns().stream()
            .map(ListColumn::index)
            .filter(column -> !row.cell(column).isBlank() && !heading.cell(column).isBlank())
            .filter(column -> isSame(row.cell(column).text(), heading.cell(column).text()))
            .count();
    long headed =
        table.columns().stream().filter(one -> !heading.cell(one.index()).isBlank()).count();
    return same == filled && same * 4 >= headed * 3;
  }

  /** "Source" and "Destination" where both ends stand: other words for the headings. */
  private boolean isFromAndTo(Row row) {
    return isWordAt(row, Role.FROM, "from") && isWordAt(row, Role.TO, "to");
  }

  private boolean isWordAt(Row row, Role end, String kind) {
    return cells
        .column(end)
        .map(column -> column.textIn(row))
        .filter(text -> text.length() > 2 && words.is(kind, text))
        .isPresent();
  }

  /** Why a row is taken for deleted by its fill. */
  RowOddity filledAsDeleted(Row row) {
    return fills.asDeleted(row);
  }

  /** Says once what holds for the table as a whole. */
  void report(ListFindings findings) {
    for (Row row : unclear) {
      findings.warning(table.place(row), new RowOddity.TitleTaken(firstText(row), name(row)));
    }
    for (Row row : speaking) {
      findings.warning(table.place(row), new RowOddity.RemarkMayChange(firstText(row)));
    }
    List<Row> body = table.body();
    int last = body.isEmpty() ? 0 : body.get(body.size() - 1).number();
    for (Row row : unread) {
      if (row.number() < last && isOtherTableBelow(row)) {
        findings.error(table.place(row), new RowOddity.OtherTableBelow(firstText(row)));
      } else if (row.number() < last) {
        findings.note(table.place(row), new RowOddity.TitleNotRead(firstText(row)));
      }
    }
    fills.report(findings);
  }

  /**
   * Whether a column that all rows above a title fill is empty in all rows below it, and no
   * headings stand between: what is below may be another table, whose headings are not understood.
   */
  private boolean isOtherTableBelow(Row title) {
    int next =
        Stream.concat(unread.stream(), rowsOfHeadings.stream())
            .mapToInt(Row::number)
            .filter(number -> number > title.number())
            .min()
            .orElse(Integer.MAX_VALUE);
    List<Row> below = rowsOfSeveralCells(title.number(), next);
    List<Row> above = rowsOfSeveralCells(0, title.number());
    return below.size() > 1
        && above.size() > 1
        && table.columns().stream()
            .filter(column -> above.stream().noneMatch(row -> column.textIn(row).isEmpty()))
            .anyMatch(column -> below.stream().allMatch(row -> column.textIn(row).isEmpty()));
  }

  private List<Row> rowsOfSeveralCells(int after, int before) {
    return table.body().stream()
        .filter(row -> row.number() > after && row.number() < before)
        .filter(row -> row.cells().stream().filter(cell -> !cell.isBlank()).count() > 1)
        .toList();
  }

  /** {@code A = 2.5 mm²} in every cell of a row. */
  private boolean explainsLetters(Row row) {
    int filled = 0;
    for (ListColumn column : table.columns()) {
      String text = column.textIn(row);
      if (!text.isEmpty()) {
        filled++;
        if (!EXPLAINED.matcher(text).matches()) {
          return false;
        }
      }
    }
    return filled > 1;
  }

  /** A row that begins with "Total". */
  private boolean isTotal(Row row, int filled) {
    String first = withoutColon(firstText(row));
    int blank = first.indexOf(' ');
    boolean begins = blank > 3 && words.is("total", first.substring(0, blank));
    return first.length() > 3 && (words.is("total", first) || (begins && filled <= 2));
  }

  private static String withoutColon(String text) {
    return text.endsWith(":") ? text.substring(0, text.length() - 1).strip() : text;
  }

  /** A row of the page's furniture: an end that is called "Date" or "Sheet". */
  private boolean isFurniture(Row row) {
    for (ListColumn column : table.columns()) {
      boolean end =
          switch (column.role()) {
            case FROM, TO, FAR -> true;
            default -> false;
          };
      String text = end ? column.textIn(row) : "";
      if (!text.isEmpty() && words.is("furniture", withoutColon(text))) {
        return true;
      }
    }
    return false;
  }

  /** {@code Drawn: P. Osei | Checked: L. Ames}: every cell is a label of the page and its value. */
  private boolean isSigned(Row row) {
    boolean any = false;
    for (ListColumn column : table.columns()) {
      String text = column.textIn(row);
      if (text.isEmpty()) {
        continue;
      }
      int colon = text.indexOf(':');
      String value = text.substring(colon + 1);
      if (colon < 1
          || !isLabelOfPage(text.substring(0, colon))
          || Ends.holdsPoint(value)
          || Ends.isDesignator(value.strip())) {
        return false;
      }
      any = true;
    }
    return any;
  }

  /** {@code Drawn | P. Hale | Checked | M. Orr}: labels of the page, each with its value beside. */
  private boolean isTitleBlock(Row row) {
    int labels = 0;
    boolean first = true;
    for (ListColumn column : table.columns()) {
      String text = column.textIn(row);
      if (text.isEmpty()) {
        continue;
      }
      boolean label = isLabelOfPage(text);
      if ((first && !label) || Ends.holdsPoint(text) || Ends.isDesignator(text)) {
        return false;
      }
      first = false;
      labels += label ? 1 : 0;
    }
    return labels > 1;
  }

  private boolean isLabelOfPage(String text) {
    return words.is("furniture", text) || words.is("signed", text);
  }

  /** A row that a mark at its beginning takes out, where no other row begins so. */
  private boolean isCommentedOut(Row row) {
    String first = row.cell(table.firstColumn()).text().strip();
    return first.startsWith("#") && first.length() > 1 && Character.isWhitespace(first.charAt(1));
  }

  private static boolean isSame(String text, String heading) {
    int length = text.length();
    int least = heading.length();
    if (length < least || length > least + 4) {
      return false;
    }
    if (length == least) {
      return text.equalsIgnoreCase(heading);
    }
    boolean begins = text.isBlank() || text.regionMatches(true, 0, heading, 0, Math.min(2, least));
    return (begins || text.charAt(0) <= ' ')
        && CellText.headingKey(text).equals(CellText.headingKey(heading));
  }

  private boolean endsAreStruck(Row row) {
    boolean any = false;
    for (ListColumn column : table.columns()) {
      boolean end = column.role().isEnd() || column.role() == Role.PIN;
      Cell cell = row.cell(column.index());
      if (end && !cell.isBlank()) {
        if (!cell.isStruck()) {
          return false;
        }
        any = true;
      }
    }
    return any;
  }

  /** A row of one or two cells: a title, the page's furniture, a note, or after all a wire. */
  private Frame shortRow(Row row, int filled, String only) {
    for (ListColumn column : table.columns()) {
      String text = column.textIn(row);
      if (!text.isEmpty() && (words.is("furniture", text) || PAGE.matcher(text).matches())) {
        return Frame.NOTE;
      }
      if (text.equals("#") || text.startsWith("# ")) {
        return Frame.NOTE;
      }
    }
    if (filled == 1 && (saysOfRows(only) || isSentence(row, only))) {
      speaking.add(row);
      sectionEnds = Optional.empty();
      cells.forget();
      return Frame.NOTE;
    }
    if (isTitle(row, filled) || headsBlock(row, filled)) {
      section = name(row);
      if (!Titles.leads(section, firstText(row), words)) {
        unclear.add(row);
      }
      cells.forget();
      return Frame.NOTE;
    }
    if (namesBothEnds(filled, rawText(row))) {
      cells.forget();
      return Frame.NOTE;
    }
    if (sectionEnds.isPresent() && filled == 1 && isOfPinsAlone()) {
      // A title that is not understood: the rows below it are no longer of the one above.
      sectionEnds = Optional.empty();
      cells.forget();
      return Frame.NOTE;
    }
    if (filled == 1 && only.indexOf(' ') > 0 && table.layout() == Layout.FROM_TO) {
      unread.add(row);
    }
    boolean remark =
        table.layout() != Layout.PATHS
            && filled == 1
            && only.length() > 24
            && only.indexOf(' ') > 0;
    return remark ? Frame.NOTE : Frame.CONTENT;
  }

  /** "Cable W5 to P9" where each end has its column: no item, and the one above no longer holds. */
  private boolean isSentence(Row row, String only) {
    boolean ends = cells.column(Role.FROM).isPresent() && cells.column(Role.FROM_PIN).isPresent();
    boolean first = !row.cell(table.firstColumn()).isBlank();
    return table.layout() == Layout.FROM_TO
        && ends
        && first
        && only.strip().indexOf(' ') > 0
        && (words.mentions("cable", only) || words.mentions("by way of", only))
        && (words.mentions("to", only) || words.mentions("from", only));
  }

  /** "Deleted wires:", "J2 not fitted": what it says of the rows around it nobody reads. */
  private boolean saysOfRows(String text) {
    return table.layout() != Layout.PATHS
        && text.indexOf(' ') > 0
        && text.length() < 48
        && (words.mentions("deleted", text)
            || words.mentions("out of use", text)
            || (CellText.hasDigit(text) && words.mentions("likewise", text)));
  }

  /** A designator that stands where no pin or wire can: {@code J1 - POWER}. */
  private boolean isTitle(Row row, int filled) {
    if (table.layout() == Layout.FROM_TO && table.headingRow() > 0) {
      return false;
    }
    String text = firstText(row);
    boolean block =
        table.layout() == Layout.BLOCK
            || table.layout() == Layout.PIN_NAMES
            || table.layout() == Layout.WIRE_ENDS
            || table.layout() == Layout.OPEN_ENDED;
    if (!block || title(row).isEmpty()) {
      return false;
    }
    boolean besidePins = row.cell(ownPinColumn()).isBlank();
    boolean headless = table.headingRow() == 0 && !CellText.isDigits(text);
    return headless
        || (filled == 1 && (besidePins || !pinsLookLikeItems()) && farIsBlank(row, text));
  }

  /** A name alone above the headings once more: {@code PUMP A}. */
  private boolean headsBlock(Row row, int filled) {
    if (filled != 1) {
      return false;
    }
    int next = table.body().indexOf(row) + 1;
    return next < table.body().size()
        && isHeadingAgain(table.body().get(next))
        && !name(row).isEmpty();
  }

  private String name(Row row) {
    String title = title(row);
    return title.isEmpty() ? Titles.name(firstText(row), words) : title;
  }

  private boolean isHeadingAgain(Row row) {
    int filled = 0;
    int same = 0;
    for (ListColumn column : table.columns()) {
      String text = row.cell(column.index()).text();
      filled += text.isBlank() ? 0 : 1;
      same += !column.heading().isEmpty() && isSame(text, column.heading()) ? 1 : 0;
    }
    return same >= 2 && same == filled;
  }

  /** Whether the table's pins are named as other lists name their items: {@code D18}. */
  private boolean pinsLookLikeItems() {
    int alike = 0;
    int pins = 0;
    for (Row row : table.body()) {
      String text = CellText.clean(row.cell(ownPinColumn()).text());
      if (!text.isEmpty()) {
        pins++;
        alike += Ends.isDesignator(text.split("[ (,:]", 2)[0]) ? 1 : 0;
      }
    }
    return alike * 2 > pins;
  }

  private boolean farIsBlank(Row row, String text) {
    return cells
        .column(Role.FAR)
        .map(column -> column.textIn(row))
        .filter(far -> !far.isEmpty() && !far.equals(text))
        .isEmpty();
  }

  private int ownPinColumn() {
    return cells.column(Role.PIN).map(ListColumn::index).orElse(table.firstColumn());
  }

  /** The first text as it was typed: two blanks part names. */
  private String rawText(Row row) {
    for (ListColumn column : table.columns()) {
      if (!row.cell(column.index()).isBlank()) {
        return row.cell(column.index()).text();
      }
    }
    return "";
  }

  private String firstText(Row row) {
    for (ListColumn column : table.columns()) {
      String text = column.textIn(row);
      if (!text.isEmpty()) {
        return text;
      }
    }
    return "";
  }

  /** The designator of a title, the last of several cells first. */
  private String title(Row row) {
    String found = "";
    for (ListColumn column : table.columns()) {
      String text = column.textIn(row);
      for (String part : text.split("[\\s,:;()]+|(?<=\\d)-|-(?=\\D)", -1)) {
        if (Ends.isDesignator(part)) {
          found = part;
          break;
        }
      }
    }
    return found;
  }
}
