package dev.ringout.text;

import dev.ringout.imports.list.ColumnChoice;
import dev.ringout.imports.list.Grammar;
import dev.ringout.imports.list.ImportOptions;
import dev.ringout.imports.list.ImportOptions.Corrections;
import dev.ringout.imports.list.ImportOptions.Shape;
import dev.ringout.imports.list.Layout;
import dev.ringout.imports.list.RowRange;
import dev.ringout.imports.list.Said;
import dev.ringout.imports.list.Units;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * What is said of a shop's lists, in the words of the command line: as options, and as a profile,
 * which is a plain text of the same words with a remark beside each.
 */
public final class ProfileText {
  private static final String FIRST_LINE = "profile: ringout 2";

  private final Map<String, ColumnChoice> columns = new LinkedHashMap<>();
  private final Set<String> joinBy = new LinkedHashSet<>();
  private final Set<String> marks = new LinkedHashSet<>();
  private final Set<String> onePoint = new LinkedHashSet<>();
  private final Set<String> sheets = new LinkedHashSet<>();
  private final Set<String> modules = new LinkedHashSet<>();
  private final Map<String, String> header = new LinkedHashMap<>();
  private Units units = Units.UNSAID;
  private final List<Said<RowRange>> rows = new ArrayList<>();
  private final List<Said<Integer>> headingRows = new ArrayList<>();
  private final List<Said<Layout>> layouts = new ArrayList<>();
  private final List<Said<String>> items = new ArrayList<>();
  private final List<Said<Grammar>> separators = new ArrayList<>();
  private final List<Said<RowRange>> leftOut = new ArrayList<>();
  private final Map<String, String> texts = new LinkedHashMap<>();

  /** Nothing said yet. */
  public ProfileText() {
    // Nothing is said so far.
  }

  /** A word that can't be understood, in words for the user. */
  public static final class Unreadable extends Exception {
    private static final long serialVersionUID = 1L;

    private Unreadable(String text) {
      super(text);
    }
  }

  /** Whether a text is a profile of this form. */
  public static boolean is(String text) {
    return text.lines().map(String::strip).anyMatch(FIRST_LINE::equals);
  }

  /**
   * Takes what a profile says.
   *
   * @throws Unreadable naming the line that can't be understood
   */
  public void read(String text) throws Unreadable {
    int number = 0;
    for (String line : text.lines().toList()) {
      number++;
      String words = line.strip();
      if (words.isEmpty() || words.startsWith("#") || words.equals(FIRST_LINE)) {
        continue;
      }
      int colon = words.indexOf(':');
      try {
        if (colon < 0) {
          throw new Unreadable("\"" + words + "\" has no colon after its first word");
        }
        say(words.substring(0, colon).strip(), words.substring(colon + 1).strip());
      } catch (Unreadable e) {
        throw new Unreadable("line " + number + ": " + e.getMessage());
      }
    }
  }

  /** Takes an older profile or what was said before. */
  public void take(ImportOptions options) {
    columns.putAll(options.columns());
    joinBy.addAll(options.joinBy());
    marks.addAll(options.marks());
    onePoint.addAll(options.onePoint());
    units = options.units();
    header.putAll(options.header());
    sheets.addAll(options.shape().sheets());
    modules.addAll(options.shape().modules());
    rows.addAll(options.shape().rows());
    headingRows.addAll(options.shape().headingRows());
    layouts.addAll(options.shape().layouts());
    items.addAll(options.shape().items());
    separators.addAll(options.shape().separators());
    leftOut.addAll(options.corrections().leftOut());
    texts.putAll(options.corrections().texts());
  }

  /**
   * Takes one thing said, by the name of its option.
   *
   * @throws Unreadable where the value is none of what the option takes
   */
  public void say(String option, String value) throws Unreadable {
    switch (option) {
      case "column" -> column(value);
      case "join-by" -> joinBy.add(value);
      case "marks" -> marks.addAll(List.of(value.split("\\s*,\\s*", -1)));
      case "one-point" -> onePoint.add(value);
      case "sheet" -> sheets.add(value);
      case "module" -> modules.add(value);
      case "rows" -> rows.add(new Said<>(where(value), range(last(value))));
      case "heading-row" -> headingRows.add(new Said<>(where(value), number(last(value))));
      case "layout" -> layouts.add(new Said<>(where(value), layout(last(value))));
      case "item" -> items.add(new Said<>(where(value), last(value)));
      case "length-unit" -> units = new Units(Optional.of(lengthUnit(value)), units.gauge());
      case "gauge-unit" -> units = new Units(units.length(), Optional.of(gaugeUnit(value)));
      case "title", "revision" -> header.put(option, value);
      case "leave-out" -> leaveOut(where(value), last(value));
      case "read-as" -> readAs(value);
      case "separator" -> separators.add(new Said<>(where(value), separator(last(value))));
      default -> throw new Unreadable("\"" + option + "\" is nothing that a profile can say");
    }
  }

  private void column(String value) throws Unreadable {
    int equals = value.lastIndexOf('=');
    String title = equals < 0 ? "" : value.substring(equals + 1).strip();
    ColumnChoice role =
        ColumnChoice.of(title)
            .orElseThrow(
                () ->
                    new Unreadable(
                        "\""
                            + value
                            + "\": expected HEADING=ROLE, where ROLE is one of "
                            + String.join(", ", ColumnChoice.titles())));
    columns.put(value.substring(0, equals).strip(), role);
  }

  /** {@code 19,22-24}: rows and runs of rows. */
  private void leaveOut(String where, String rows) throws Unreadable {
    for (String piece : rows.split(",", -1)) {
      String row = piece.strip();
      leftOut.add(new Said<>(where, range(row.contains("-") ? row : row + "-" + row)));
    }
  }

  /** A point may begin with the sign between, {@code =A1-K1:A1}; what the list says rarely does. */
  private void readAs(String value) throws Unreadable {
    int equals = value.indexOf('=', 1);
    String said = equals < 0 ? "" : value.substring(0, equals).strip();
    String meant = equals < 0 ? "" : value.substring(equals + 1).strip();
    if (said.isEmpty() || meant.isEmpty()) {
      throw new Unreadable(
          "\"" + value + "\": expected what the list says, =, and what it means: \"P2-?=P2-7\"");
    }
    texts.put(said, meant);
  }

  private static Units.OfLength lengthUnit(String word) throws Unreadable {
    return Units.OfLength.of(word)
        .orElseThrow(() -> new Unreadable("\"" + word + "\": expected one of mm, cm, m, in, ft"));
  }

  private static Units.OfGauge gaugeUnit(String word) throws Unreadable {
    return Units.OfGauge.of(word)
        .orElseThrow(() -> new Unreadable("\"" + word + "\": expected AWG or mm2"));
  }

  private static Grammar separator(String word) throws Unreadable {
    if (word.isEmpty()) {
      throw new Unreadable("expected a sign such as - or :, blank or none");
    }
    return Grammar.of(word);
  }

  private static String where(String value) {
    int mark = value.lastIndexOf('!');
    return mark < 0 ? "" : value.substring(0, mark);
  }

  private static String last(String value) {
    return value.substring(value.lastIndexOf('!') + 1);
  }

  private static RowRange range(String text) throws Unreadable {
    String[] ends = text.split("-", -1);
    if (ends.length == 2) {
      int first = number(ends[0].strip());
      int last = number(ends[1].strip());
      if (first >= 1 && last >= first) {
        return new RowRange(first, last);
      }
    }
    throw new Unreadable("\"" + text + "\": expected two rows such as 5-40");
  }

  private static int number(String text) throws Unreadable {
    if (!text.matches("\\d{1,7}")) {
      throw new Unreadable("\"" + text + "\": expected the number of a row");
    }
    return Integer.parseInt(text);
  }

  private static Layout layout(String word) throws Unreadable {
    return Layout.of(word)
        .orElseThrow(
            () ->
                new Unreadable(
                    "\""
                        + word
                        + "\": expected one of "
                        + String.join(
                            ", ", Stream.of(Layout.values()).map(Layout::word).toList())));
  }

  /** All that was said. */
  public ImportOptions options() {
    return new ImportOptions(
        columns,
        joinBy,
        marks,
        onePoint,
        units,
        header,
        new Shape(sheets, rows, headingRows, layouts, items, separators, modules),
        new Corrections(leftOut, texts));
  }

  /** The profile that says so much. */
  public static String write(ImportOptions options) {
    StringBuilder text = new StringBuilder();
    text.append("# How a shop writes its wire lists. Read with --profile; change it by hand.\n");
    text.append("# SHEET! or SHEET!CELL! before a value says it of one sheet or table alone.\n");
    text.append(FIRST_LINE).append('\n');
    Shape shape = options.shape();
    part(text, "which sheets are read; all where none is named", "sheet", shape.sheets());
    part(text, "which modules of a harness file are read", "module", shape.modules());
    part(text, "which rows are read", "rows", texts(shape.rows()));
    part(
        text,
        "where the headings stand; 0 where there are none",
        "heading-row",
        texts(shape.headingRows()));
    part(
        text,
        "how a table tells its wires",
        "layout",
        shape.layouts().stream().map(one -> one.prefix() + one.value().word()).toList());
    part(text, "the connector whose pins a table lists", "item", texts(shape.items()));
    part(
        text,
        "what stands between item and pin",
        "separator",
        shape.separators().stream().map(one -> one.prefix() + one.value().word()).toList());
    part(
        text,
        "what the columns are",
        "column",
        options.columns().entrySet().stream()
            .map(entry -> entry.getKey() + " = " + entry.getValue())
            .toList());
    part(
        text,
        "the unit of lengths without one",
        "length-unit",
        options.units().length().map(Units.OfLength::word).stream().toList());
    part(
        text,
        "the unit of gauges without one",
        "gauge-unit",
        options.units().gauge().map(Units.OfGauge::word).stream().toList());
    part(
        text,
        "what a cell says, and what it means",
        "read-as",
        options.corrections().texts().entrySet().stream()
            .map(entry -> entry.getKey() + " = " + entry.getValue())
            .toList());
    part(text, "rows that are no wires", "leave-out", texts(options.corrections().leftOut()));
    part(text, "rows with the same text here are one net", "join-by", options.joinBy());
    part(text, "marks that are wires", "marks", options.marks());
    part(text, "items that are one point", "one-point", options.onePoint());
    return text.toString();
  }

  private static <T> List<String> texts(List<Said<T>> all) {
    return all.stream().map(one -> one.prefix() + one.value()).toList();
  }

  private static void part(
      StringBuilder text, String remark, String option, Iterable<String> values) {
    boolean any = false;
    for (String value : values) {
      if (!any) {
        text.append("\n# ").append(remark).append('\n');
      }
      any = true;
      text.append(option).append(": ").append(value).append('\n');
    }
  }
}
