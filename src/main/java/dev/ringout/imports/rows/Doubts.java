package dev.ringout.imports.rows;

import dev.ringout.cells.CellText;
import dev.ringout.cells.PinList;
import dev.ringout.imports.list.ColumnCertainty;
import dev.ringout.imports.list.Ends;
import dev.ringout.imports.list.Grammar;
import dev.ringout.imports.list.Layout;
import dev.ringout.imports.list.ListColumn;
import dev.ringout.imports.list.ListFindings;
import dev.ringout.imports.list.ListTable;
import dev.ringout.imports.list.Role;
import dev.ringout.imports.list.RowOddity;
import dev.ringout.imports.list.SkipReason;
import dev.ringout.imports.list.Words;
import dev.ringout.sheet.Row;
import dev.ringout.source.Severity;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What a list itself leaves open: an end with a question mark, two pins with a stroke between,
 * numbers from and to that may be four wires, rows that are left out, and remarks that change a
 * wire. A form that most cells of a column have is the column's way of writing.
 */
final class Doubts {
  private static final Pattern STROKE =
      Pattern.compile(
          "(?:.*[\\s:.-])?[A-Za-z]?\\d{1,3}[A-Za-z]?\\s*/\\s*(?:.*[:.-])?[A-Za-z]?\\d{1,3}[A-Za-z]?");
  private static final Pattern STROKE_IN_POINT =
      Pattern.compile(
          "[A-Z]{1,4}\\d{1,4}[:.-][A-Za-z]?\\d{1,3}[A-Za-z]?\\s*/\\s*(?:[A-Z]{1,4}\\d{1,4}[:.-])?[A-Za-z]?\\d{1,3}[A-Za-z]?"
              + "|[A-Z]{1,4}\\d{1,4}[:.-][A-Za-z0-9]{1,3}\\s*/\\s*[A-Z]{1,4}\\d{1,4}[:.-][A-Za-z0-9]{1,3}");

  /** Greek and Cyrillic letters look like Latin ones. */
  private static final Pattern LOOK_ALIKE = Pattern.compile(".*[\u0370-\u03ff\u0400-\u04ff].*");

  /**
   * {@code R1 100 kΩ}, {@code 470µF cap +}: the value of a part, in units that are written with
   * Greek letters.
   */
  private static final Pattern VALUE =
      Pattern.compile(
          "(?<![\\w.,])\\d{1,4}(?:[.,]\\d{1,3})?\\s?(?:[kKMGm]?\u03a9|\u03bc[AFHV])(?!\\p{L})");

  /** Pins that are called by what they supply: {@code GND}, {@code VCC}, {@code 5V}. */
  private static final Pattern SUPPLY_PIN =
      Pattern.compile("[AD]?GND|V(?:CC|DD|SS|IN|BAT|REF)|[+-]?\\d{1,2}V");

  private static final Pattern VOLTS = Pattern.compile("\\d{1,2}[.,]\\d ?V");

  private static final Pattern POINT_RANGE =
      Pattern.compile(
          "[A-Z]{1,4}\\d{1,4}[:.-]\\w{1,4}\\s*(to|thru|through|bis|\u00e0|hasta|tot)\\s*\\S{1,12}");

  /** What is longer is a sentence and no pin. */
  private static final int LONGEST_PIN = 16;

  private static final Pattern NUMBERS = Pattern.compile("\\d{1,3}\\s?-\\s?\\d{1,3}");
  private static final Pattern RANGE_OF_NAMES =
      Pattern.compile("([A-Za-z]{1,6})\\d{1,3}\\s?-\\s?\\d{1,3}");
  private static final Pattern DIGITS = Pattern.compile("\\d{1,3}");
  private static final Pattern CONNECTOR = Pattern.compile("(?:[JPX]|TB|XT|CN)\\d{1,3}");
  private static final Pattern MEASURE = Pattern.compile("\\d+[.,]\\d+ ?(mm|cm|m|ft|in|V|A)");

  /** {@code J-1-3} among {@code J1-2}: one dash may be of the item's name. */
  private static final Pattern DASHED_ITEM = Pattern.compile("[A-Z]{1,4}-\\d{1,3}[-:.]\\w{1,4}");

  /** {@code A B}, {@code 1=2}, {@code 1|2}, {@code 1_2}: two pins in a column of pins. */
  private static final Pattern TWO_PINS =
      Pattern.compile("[A-Za-z]?\\d{0,3}[\\s=|_\\\\][A-Za-z]?\\d{0,3}");

  private static final Pattern LETTERS = Pattern.compile("[A-Za-z]\\s?[/-]\\s?[A-Za-z]");
  private static final Pattern BLANKS = Pattern.compile("\\d{1,3}( \\d{1,3})+");

  /** Terminal marking of switching devices, from memory (IEC 60947-1). */
  private static final Pattern MARKING =
      Pattern.compile("(?:.*[\\s:.-])?[1-8]/?[LT][1-4]|(?:.*[\\s:.-])?[1-8]/[LTN][1-4]?");

  private static final Pattern WORDS = Pattern.compile("(?=.*\\p{L}{4}).*\\s.*");
  private static final Pattern POINT_NUMBERS =
      Pattern.compile("[-+=]?[A-Z]{1,4}\\d{1,4}[:.](\\d{1,3})\\s?-\\s?(\\d{1,3})");
  private static final Pattern WORDED_RANGE =
      Pattern.compile(
          "(?iu)(?:da )?[a-z]?\\d{1,3}(?:\\s+(?:bis|\u00e0|a|al|t/m|tot|hasta|at\u00e9)\\s+|\\s*[~>]\\s*)"
              + "[a-z]?\\d{1,3}");

  /**
   * {@code J1-1-4}, {@code J1:A-D}: pins from and to, where the other points have no third part.
   */
  private static final Pattern DASHED_RANGE =
      Pattern.compile(
          "[-+=]?[A-Z]{1,4}\\d{1,4}[:.-](?:\\d{1,3}\\s?-\\s?\\d{1,3}|[A-Z]\\s?-\\s?[A-Z])");

  /** A connector's or a strip's designator with a pin: {@code J3-2}. */
  private static final Pattern POINT_IN_REMARK =
      Pattern.compile("[-+=]?[A-Z]{1,3}\\d{1,3}[-:.]\\w{1,4}");

  private static final Pattern NAMES_POINT =
      Pattern.compile(".*\\b" + POINT_IN_REMARK.pattern() + "\\b.*");

  /** {@code X1:1/2/3}, {@code X1:1 2 3 PE}: as many wires as there are pins, or nobody knows. */
  private static final Pattern SEVERAL_PINS =
      Pattern.compile(
          "[-+=]?[A-Z]{1,4}\\d{1,4}[:.-]\\w{1,3}(?:(?:/\\w{1,3}){2,}|(?: \\w{1,2}){1,})");

  /** {@code J1-1 (2)}: a number in brackets behind a pin. */
  private static final Pattern COUNTED = Pattern.compile("\\S+ ?\\(\\+?\\d{1,3}\\)");

  /** {@code TB1-2*}: the mark of a footnote is no part of a pin's name. */
  private static final Pattern FOOTNOTED = Pattern.compile("\\S*\\d[*!\u2020\u2021]+");

  /** {@code J1-4 -}: a point, and a sign that leads to what stands beside it. */
  private static final Pattern SIGN_BEHIND_POINT =
      Pattern.compile("[A-Z]{1,4}\\d{1,4}[:.-]\\w{1,5} [-+/>]");

  /** {@code S1-S12 pin B}: the same pin of several items. */
  private static final Pattern ITEMS_FROM_TO =
      Pattern.compile("([A-Z]{1,4})\\d{1,3} ?- ?\\1\\d{1,3}(?:[ :.]\\S.*)");

  /** {@code S1-S4} beside a pin: this pin of several items, or a name. */
  private static final Pattern ITEM_TO_ITEM =
      Pattern.compile("([A-Z]{1,4})\\d{1,3} ?- ?\\1\\d{1,3}");

  /** {@code Motor X, 2B · 2A}: two pins of an item. */
  private static final Pattern DOTTED =
      Pattern.compile("(?:.*[\\s,:])?\\w{1,3}[-+\u2212]? [\u00b7\u2022] \\w{1,3}[-+\u2212]?");

  private static final Pattern OTHER_BRACKETS = Pattern.compile(".*\\w\\s*[\\[{<].*\\d.*");

  private static final Pattern SEVERAL_ITEMS =
      Pattern.compile(
          "([A-Z]{1,3})\\d{1,3}(?:\\s*[,/&+]\\s*|\\s+(?:to|and|bis|und|et|y|e|en)\\s+|\\s+)\\1\\d{1,3}");

  /** "Accelerometer, Barometer": two things, or one with a long name. */
  private static final Pattern SEVERAL_NAMES =
      Pattern.compile("[\\p{L} ]{3,30}(?:\\s*[,;]\\s*|\\s+[&+]\\s+)[\\p{L}\\d ]{3,30}");

  private static final Pattern OWN_TO =
      Pattern.compile("[A-Za-z]?\\d{1,3} (?:to|mit|with|et|y|e|en|a|\u00e0|an|auf) [\\w ]{1,20}");
  private static final Pattern ITEM_IN_REMARK = Pattern.compile("[A-Z]{1,3}\\d{1,3}");
  private static final Pattern IN_BRACKETS = Pattern.compile("\\(([^()]{1,60})\\)");

  private static final Pattern MORE =
      Pattern.compile("\\S;\\s*\\S|\\S\\s\\+\\s[^\\s(]|->|\u2192|\\s(?:via|\u00fcber|par)\\s");

  /** {@code VIN board + COM relay}: two points, each a word of its item. */
  private static final Pattern ADDED_NAMES =
      Pattern.compile("\\p{L}\\S* \\p{L}[^+]* \\+ \\p{L}\\S* \\S.*");

  private static final Pattern POINT_AND_WORDS = Pattern.compile("(\\S+), \\p{L}+ \\p{L}[^\\d,;]*");

  /** Short words with commas between, a sign or a digit in each: {@code PUL-, DIR-, ENA-}. */
  private static final Pattern LISTED_PINS =
      Pattern.compile(".*\\s(?:(?=\\S*[\\d+\u2212-])\\S{1,8},\\s*)+(?=\\S*[\\d+\u2212-])\\S{1,8}");

  private static final Pattern NUMBERED = Pattern.compile("[A-Za-z]{0,3}\\d{1,3}[A-Za-z+-]?");

  private static final Pattern WORDED = Pattern.compile("\\p{L}{3}");
  private static final Pattern ARROWS =
      Pattern.compile("[-=<>|_.\u2013\u2014\u2190-\u2194\u25ba\u25c4]+");

  private static final Pattern CODE = Pattern.compile("[A-Z]{1,3}|[-+]");

  /** So many different words under a heading may be states; more are descriptions. */
  private static final int MOST_STATES = 8;

  private static final int LONGEST_STATE = 24;

  private static final Pattern BEHIND_DESIGNATOR =
      Pattern.compile("[A-Z]{1,3}\\d{1,3}\\s+[^\\s\\d]{1,3}\\.?\\d{1,3}");
  private static final Pattern DOTS = Pattern.compile("[.\u2026\u22ee:]{2,}|\u2026");
  private static final Pattern SUPERSCRIPT =
      Pattern.compile(".*[\u00b9\u00b2\u00b3\u2070-\u2079].*");

  private final ListTable table;
  private final Words words;
  private final Ends ends;
  private final ListFindings findings;
  private final Tally tally;
  private final OpenRows openRows;
  private final CountedRanges counted;
  private final EndsWithoutItem endsWithoutItem;
  private final NamesLikeSpare namesLikeSpare;
  private final Map<Integer, Map<String, Boolean>> open = new HashMap<>();
  private final Map<String, Boolean> changes = new HashMap<>();
  private final Map<Integer, Boolean> points = new HashMap<>();
  private final Map<Integer, Boolean> parted = new HashMap<>();
  private final Map<Integer, Boolean> mostlyPlain = new HashMap<>();
  private final Map<Integer, Map<String, Share>> shares = new HashMap<>();

  Doubts(ListTable table, Words words, Ends ends, ListFindings findings, Tally tally) {
    this.ends = ends;
    this.table = table;
    this.words = words;
    this.findings = findings;
    this.tally = tally;
    this.openRows = new OpenRows(table, words);
    this.counted = new CountedRanges(table, words);
    this.endsWithoutItem = new EndsWithoutItem(table, words, ends);
    this.namesLikeSpare = new NamesLikeSpare(table, words);
  }

  /**
   * Says once which columns hold letters or words that may say of a row that it is no wire, and
   * that nothing explains.
   */
  void report() {
    for (ListColumn column : table.columns()) {
      boolean left = column.role() == Role.NOTE || column.role() == Role.KEEP;
      if (!left || !table.layout().tellsWires() || words.mentions("reading", column.heading())) {
        continue;
      }
      Set<String> codes = new TreeSet<>();
      int filled = 0;
      for (Row row : table.body()) {
        String text = column.textIn(row);
        filled += text.isEmpty() ? 0 : 1;
        if (!text.isEmpty() && codes.size() <= MOST_STATES) {
          codes.add(text);
        }
      }
      boolean differ = codes.size() > 1 || (filled > 0 && filled < table.body().size());
      if (differ && mayTakeRowsOut(column, codes, filled)) {
        findings.warning(
            table.grid().place(table.headingRow(), column.index()),
            new RowOddity.CodesUnexplained(column.heading(), List.copyOf(codes)));
      } else if (differ && words.mentions("remarks", column.heading()) && areShortRemarks(codes)) {
        findings.note(
            table.grid().place(table.headingRow(), column.index()),
            new RowOddity.CodesUnexplained(column.heading(), List.copyOf(codes)));
      }
    }
  }

  /** Whether letters, words for yes and no, or states stand under a heading. */
  private boolean mayTakeRowsOut(ListColumn column, Set<String> codes, int filled) {
    boolean ofStates =
        words.mentions("action", column.heading()) || words.mentions("fitted", column.heading());
    if (ofStates) {
      return codes.size() <= MOST_STATES
          && codes.stream().allMatch(code -> code.length() <= LONGEST_STATE);
    }
    if (column.role() == Role.NOTE || column.known()) {
      return false;
    }
    boolean yesAndNo =
        codes.size() == 2 && codes.stream().allMatch(code -> words.is("yes or no", code));
    // Most rows of a list are as they were: letters on few are of these.
    boolean ofSome = filled * 2 <= table.body().size() && codes.size() <= 4;
    return yesAndNo || (ofSome && codes.stream().allMatch(CODE.asMatchPredicate()));
  }

  /** A word or two without a number, on some rows: one that is not known may take its wire out. */
  private boolean areShortRemarks(Set<String> codes) {
    return codes.size() <= MOST_STATES
        && codes.stream()
            .allMatch(
                code -> code.length() <= LONGEST_STATE && !CellText.hasDigit(code) && isShort(code))
        && codes.stream().anyMatch(code -> words.color(code).isEmpty());
  }

  private static boolean isShort(String text) {
    return text.chars().filter(c -> c == ' ').count() < 2;
  }

  /** Says what is open in a row that may hold a wire; whether it can't be read for that. */
  boolean of(Row row) {
    if (isLeftOut(row)) {
      return true;
    }
    Optional<OpenRows.Open> open = openRows.of(row);
    if (open.isPresent() && open.get().lost()) {
      lose(row, open.get().column(), open.get().oddity(), SkipReason.END_IN_DOUBT);
      return true;
    }
    open.ifPresent(one -> findings.warning(table.place(row, one.column()), one.oddity()));
    Optional<ListColumn> beside = pinBesideItsColumn(row);
    if (beside.isPresent()) {
      String text = beside.get().textIn(row);
      lose(row, beside.get(), new RowOddity.EndInDoubt(text), SkipReason.END_IN_DOUBT);
      return true;
    }
    boolean ranges = counted.are(row);
    for (ListColumn column : table.columns()) {
      String text = column.textIn(row);
      boolean settled = table.grid().isSettled(row.number(), column.index());
      if (text.isEmpty() || settled || (ranges && column.role().isEnd())) {
        continue;
      }
      if (column.role().isEnd()) {
        if (!isToldElsewhere(row, column, text) && isOpenOnceLookedAt(text, column)) {
          lose(row, column, new RowOddity.EndInDoubt(text), SkipReason.END_IN_DOUBT);
          return true;
        }
        brackets(row, column, text);
        if (text.equals("?")) {
          // It is also what the program itself writes for a terminal without a name.
          findings.warning(table.place(row, column), new RowOddity.EndInDoubt(text));
        }
        boolean nothing = words.is("stow", text) || words.isNothing(text);
        if (!column.role().isPinOfEnd() && !nothing && SEVERAL_NAMES.matcher(text).matches()) {
          findings.warning(
              table.place(row, column), new RowOddity.ItemUnclear(text, column.heading()));
        }
      } else if (isOpenPin(text, column)) {
        lose(row, column, new RowOddity.EndInDoubt(text), SkipReason.END_IN_DOUBT);
        return true;
      } else if (column.role() == Role.ITEM && SEVERAL_ITEMS.matcher(text).matches()) {
        lose(row, column, new RowOddity.EndInDoubt(text), SkipReason.END_IN_DOUBT);
        return true;
      } else if (column.role() == Role.ITEM && isSaidToBeAnother(text)) {
        findings.warning(table.place(row, column), new RowOddity.RemarkMayChange(text));
      } else if (column.role() == Role.PATH) {
        brackets(row, column, text);
      } else if (column.role() == Role.NOTE || column.role() == Role.KEEP) {
        remark(row, column, text);
      } else if (column.role() == Role.TYPE && words.mentions("between", text)) {
        findings.warning(table.place(row, column), new RowOddity.RemarkMayChange(text));
      } else if ((column.role() == Role.SIGNAL || column.role() == Role.COLOR)
          && (joins(row) || table.layout() == Layout.BLOCK)
          && saysOtherwise(text, column)) {
        findings.warning(table.place(row, column), new RowOddity.RemarkMayChange(text));
      }
    }
    return false;
  }

  /**
   * {@code see pin 23}, where the row of pin 23 names this one: the wire is told there. Else the
   * cell leads nowhere, and is open.
   */
  boolean isToldElsewhere(Row row, ListColumn column, String text) {
    Optional<ListColumn> pin = table.column(Role.PIN);
    if (!leadsElsewhere(text) || pin.isEmpty() || column.role() != Role.FAR) {
      return false;
    }
    String there = lastWord(text);
    String here = pin.get().textIn(row);
    return table.body().stream()
        .filter(other -> pin.get().textIn(other).equals(there))
        .map(column::textIn)
        .anyMatch(far -> !here.isEmpty() && namesPin(far, here));
  }

  /**
   * A number in a column without a heading next to the pins of an end, in a row that has none
   * there: it slipped by one column, or is something else.
   */
  private Optional<ListColumn> pinBesideItsColumn(Row row) {
    for (ListColumn pin : table.columns()) {
      if (!pin.role().isPinOfEnd() || !pin.textIn(row).isEmpty()) {
        continue;
      }
      Optional<ListColumn> beside =
          table.columns().stream()
              .filter(column -> column.role() == Role.KEEP && column.heading().isEmpty())
              .filter(column -> !column.isSaid() && column.index() == pin.index() + 1)
              .filter(column -> DIGITS.matcher(column.textIn(row)).matches())
              .findFirst();
      if (beside.isPresent()) {
        return beside;
      }
    }
    return Optional.empty();
  }

  private boolean leadsElsewhere(String text) {
    int blank = text.indexOf(' ');
    return blank > 0 && words.is("see", text.substring(0, blank));
  }

  private static boolean namesPin(String far, String pin) {
    return List.of(far.split("[\\s:./-]+", -1)).contains(pin);
  }

  private static String lastWord(String text) {
    return text.substring(text.lastIndexOf(' ') + 1);
  }

  private boolean isLeftOut(Row row) {
    Optional<ListColumn> first = Optional.empty();
    for (ListColumn column : table.columns()) {
      String text = column.textIn(row);
      if (text.isEmpty()) {
        continue;
      }
      if (!DOTS.matcher(text).matches() && !words.is("through", text)) {
        return false;
      }
      first = first.isEmpty() ? Optional.of(column) : first;
    }
    first.ifPresent(
        column ->
            lose(
                row,
                column,
                new RowOddity.RowsLeftOut(column.textIn(row)),
                SkipReason.ROWS_LEFT_OUT));
    return first.isPresent();
  }

  /** Long lists repeat their texts: each is looked at once a column. */
  private boolean isOpenOnceLookedAt(String text, ListColumn column) {
    return open.computeIfAbsent(column.index(), key -> new HashMap<>())
        .computeIfAbsent(text, key -> isOpen(text, column));
  }

  private boolean isOpen(String text, ListColumn column) {
    if (words.isNothing(text) || text.startsWith("#")) {
      return false;
    }
    boolean asked =
        isAsked(text)
            || (words.is("doubt", text) && !isNamedLikeOthers(text, column) && !hasPins(column));
    boolean either = text.length() < 40 && hasWord("either", text);
    return (asked && text.length() > 1)
        || words.is("continued", text)
        || leadsElsewhere(text)
        || either
        || isUnreadRange(text, column)
        || isUnreadPin(text, column)
        || isRangeInWords(text)
        || namesSeveral(text, column)
        || isOtherItem(text, column)
        || SEVERAL_PINS.matcher(text).matches()
        || (column.role().isPinOfEnd() && BLANKS.matcher(text).matches())
        || (column.role().isPinOfEnd()
            && !ends.isPhrase(text)
            && isUnusual(CountedRanges.APART, text, column))
        || joinsPins(text)
        || (!column.role().isPinOfEnd() && isNoName(text))
        || (column.role().isPinOfEnd() && isUnusual(TWO_PINS, text, column))
        || isUnusual(COUNTED, text, column)
        || isUnusual(FOOTNOTED, text, column)
        || isUnusual(OTHER_BRACKETS, text, column)
        || DOTTED.matcher(text).matches()
        || SIGN_BEHIND_POINT.matcher(text).matches()
        || (!column.role().isPinOfEnd() && ITEMS_FROM_TO.matcher(text).matches())
        || namesItems(text, column)
        || tellsMoreThanOne(text, column)
        || listsPins(text, column)
        || (!column.role().isPinOfEnd() && setsNamesApart(text, column))
        || saysMoreOfPoint(text)
        || (column.role().isPinOfEnd() && isNoPin(text))
        || (STROKE_IN_POINT.matcher(text).matches() && !isMarking(text))
        || isOfTwoByStroke(text, column)
        || isUnusual(DASHED_ITEM, text, column)
        || isUnusual(DASHED_RANGE, text, column)
        || isUnusual(LOOK_ALIKE, VALUE.matcher(text).replaceAll(""), column)
        || POINT_RANGE.matcher(text).matches()
        || isUnusual(NUMBERS, text, column)
        || isRangeOfNames(text, column)
        || isUnusual(BLANKS, text, column)
        || (isUnusual(LETTERS, text, column) && !words.is("port", text))
        || isUnusual(SUPERSCRIPT, text, column)
        || (column.role().isPinOfEnd()
            && isUnusual(MEASURE, text, column)
            && !isSupplyPin(text, column))
        || endsWithoutItem.isOne(text, column);
  }

  /**
   * {@code 3.3V} among {@code GND} or {@code 5V} is a pin's name; among numbers it is a measure.
   */
  private boolean isSupplyPin(String text, ListColumn column) {
    return VOLTS.matcher(text).matches() && share(SUPPLY_PIN, column).like() > 0;
  }

  /** Whether a word stands for itself between others: the O of "O/P 1" is no "or". */
  private boolean hasWord(String kind, String text) {
    return text.indexOf(' ') > 0
        && Arrays.stream(text.split(" ", -1)).anyMatch(word -> words.is(kind, word));
  }

  /** The main terminals of a contactor, {@code 1/L1} to {@code 6/T3}: one terminal, two names. */
  private static boolean isMarking(String text) {
    return MARKING.matcher(text).matches();
  }

  /** {@code 3/4} where it is not usual: either pin, or both. */
  private boolean isOfTwoByStroke(String text, ListColumn column) {
    return isUnusual(STROKE, text, column) && !isMarking(text) && !isPartedByStroke(column);
  }

  /** {@code K1/A1}, {@code K1/A2}: the stroke parts an item, which comes again, from its pin. */
  private boolean isPartedByStroke(ListColumn column) {
    return parted.computeIfAbsent(column.index(), index -> partsByStroke(column));
  }

  private boolean partsByStroke(ListColumn column) {
    Set<String> items = new HashSet<>();
    int parted = 0;
    for (Row row : table.body()) {
      String[] pieces = column.textIn(row).split("/", -1);
      if (pieces.length == 2 && Ends.isDesignator(pieces[0].strip())) {
        items.add(pieces[0].strip());
        parted++;
      }
    }
    return parted >= 3 && items.size() < parted;
  }

  /** Whether most cells of an end's column have a pin beside them: a name there is an item. */
  private boolean hasPins(ListColumn column) {
    Optional<ListColumn> pins = table.column(column.role().pinOfEnd());
    if (pins.isEmpty() || column.role().isPinOfEnd()) {
      return false;
    }
    // A strip called TBA is named again and again, each time with a terminal.
    Set<String> terminals = new HashSet<>();
    for (Row row : table.body()) {
      if (words.is("doubt", column.textIn(row))) {
        String text = pins.get().textIn(row);
        if (text.isEmpty()) {
          return false;
        }
        terminals.add(text);
      }
    }
    return terminals.size() > 1;
  }

  /** TBA beside TBB and TBD is a strip, and not "to be announced". */
  private boolean isNamedLikeOthers(String text, ListColumn column) {
    Set<String> like = new HashSet<>();
    for (Row row : table.body()) {
      String other = column.textIn(row);
      if (other.length() == text.length()
          && other.length() > 2
          && other.regionMatches(true, 0, text, 0, other.length() - 1)) {
        like.add(other.toUpperCase(Locale.ROOT));
      }
    }
    return like.size() > 1;
  }

  /**
   * Words among the pins of an item that the heading names: {@code Battery (+)} is another item.
   */
  private boolean isOtherItem(String text, ListColumn column) {
    Role item = column.role() == Role.FROM_PIN ? Role.FROM : Role.TO;
    boolean headed =
        (column.role() == Role.FROM_PIN || column.role() == Role.TO_PIN)
            && !column.item().isEmpty()
            && !column.isSaid()
            && table.column(item).isEmpty();
    if (headed && (words.is("other side", text) || words.is("one side", text))) {
      // External: not a pin of this item.
      return true;
    }
    if (!headed || !WORDS.matcher(text).matches()) {
      return false;
    }
    return mostlyPlain.computeIfAbsent(column.index(), index -> isMostlyPlain(column));
  }

  private boolean isMostlyPlain(ListColumn column) {
    int filled = 0;
    int plain = 0;
    for (Row row : table.body()) {
      String other = column.textIn(row);
      filled += other.isEmpty() ? 0 : 1;
      plain += !other.isEmpty() && !WORDS.matcher(other).matches() ? 1 : 0;
    }
    return plain * 2 > filled;
  }

  /** {@code S1 t.3}: behind a designator something with a number, that nobody reads as a pin. */
  private boolean isUnreadPin(String text, ListColumn column) {
    boolean item = column.role() == Role.FROM || column.role() == Role.TO;
    return item
        && !hasPinColumn(column.role())
        && BEHIND_DESIGNATOR.matcher(text).matches()
        && ends.parse(text, column.grammar()).pin().isEmpty();
  }

  /**
   * {@code GPIO4-7} among {@code GPIO8}, {@code GPIO9}: pins from and to, for the others have no
   * second number.
   */
  private boolean isRangeOfNames(String text, ListColumn column) {
    Matcher range = RANGE_OF_NAMES.matcher(text);
    if (!range.matches()) {
      return false;
    }
    return column.role().isPinOfEnd()
        ? isUnusual(RANGE_OF_NAMES, text, column)
        : isMostly(Pattern.compile(Pattern.quote(range.group(1)) + "\\d{1,3}"), column);
  }

  private boolean isMostly(Pattern form, ListColumn column) {
    Share share = share(form, column);
    return share.like() > 1 && share.isAtLeast(6);
  }

  /** Two dots in what is read as one point: the points between would be lost. */
  private boolean isUnreadRange(String text, ListColumn column) {
    return text.contains("..")
        && CellText.hasDigit(text)
        && PinList.range(text).size() < 2
        && ends.parseAll(text, column.grammar()).size() < 2;
  }

  /** {@code Controller B1 and B2}, {@code LDR leg 2 and R1 leg 1}: two points. */
  private boolean joinsPins(String text) {
    String[] parts = text.split(" +", -1);
    for (int and = 2; and + 1 < parts.length; and++) {
      if (words.is("and", parts[and])
          && NUMBERED.matcher(parts[and - 1]).matches()
          && NUMBERED.matcher(parts[parts.length - 1]).matches()) {
        return true;
      }
    }
    return false;
  }

  /** Signs alone; a mark of a question is what the program itself writes. */
  private boolean isNoName(String text) {
    return text.length() > 1
        && !words.isDitto(text)
        && text.chars().noneMatch(Character::isLetterOrDigit);
  }

  /** What no pin is called: a remark, an arrow, another full point beside it. */
  private boolean isNoPin(String text) {
    boolean several = text.indexOf(';') > 0 || text.indexOf(',') > 0;
    boolean point = false;
    for (String piece : several ? text.split("\\s*[;,]\\s*", -1) : new String[0]) {
      point |= Ends.looksLikePoint(piece);
    }
    return point
        || text.contains("->")
        || text.indexOf('\u2192') > 0
        || words.mentions("changes wire", text)
        || words.mentions("joins", text)
        || hasWord("and", text);
  }

  /** Whether a text is of a form that not even a half of the column has. */
  private boolean isUnusual(Pattern form, String text, ListColumn column) {
    return form.matcher(text).matches() && !isUsual(form, share(form, column));
  }

  private static boolean isUsual(Pattern form, Share share) {
    // Pins of a block are often written 1-1, 1-2; two pins with a stroke between are often two.
    return form.equals(NUMBERS)
        ? share.isAtLeast(3) && share.like() > 1
        : share.isAtLeast(9) && share.like() > 2;
  }

  /** How many of a column's texts are of a form. */
  private record Share(int like, int filled) {
    boolean isAtLeast(int tenths) {
      return like * 10 >= filled * tenths;
    }
  }

  private Share share(Pattern form, ListColumn column) {
    return shares
        .computeIfAbsent(column.index(), index -> new HashMap<>())
        .computeIfAbsent(form.pattern(), pattern -> counted(form, column));
  }

  private Share counted(Pattern form, ListColumn column) {
    int filled = 0;
    int like = 0;
    for (Row row : table.body()) {
      String text = column.textIn(row);
      filled += text.isEmpty() ? 0 : 1;
      like += form.matcher(text).matches() ? 1 : 0;
    }
    return new Share(like, filled);
  }

  private void remark(Row row, ListColumn column, String text) {
    if (text.startsWith("=")) {
      // It explains a colour.
      return;
    }
    if (isAmongArrows(column, text)) {
      findings.warning(table.place(row, column), new RowOddity.RemarkMayChange(text));
      return;
    }
    if (words.is("quantity", column.heading()) && CellText.isDigits(text) && !text.equals("1")) {
      if (countsPoints(row, text)) {
        return;
      }
      findings.warning(table.place(row, column), new RowOddity.SeveralWires(text));
    } else if (text.length() < 200
        && (changes.computeIfAbsent(
                text,
                key ->
                    words.mentions("changes wire", text)
                        || words.is("doubt", text)
                        || (CellText.hasDigit(text) && words.mentions("joins", text))
                        || saysNoWire(text))
            || (table.layout() == Layout.FROM_TO && namesAnother(row, column, text)))) {
      findings.warning(table.place(row, column), new RowOddity.RemarkMayChange(text));
    }
  }

  /** {@code --|>-- Schottky} where the other rows have an arrow: what lies in the way. */
  private boolean isAmongArrows(ListColumn column, String text) {
    if (!column.heading().isEmpty() || !WORDED.matcher(text).find()) {
      return false;
    }
    Share arrows = share(ARROWS, column);
    return arrows.like() > 1 && arrows.isAtLeast(5);
  }

  /** Whether a row has both ends of a wire: a signal that is called spare then says otherwise. */
  private boolean joins(Row row) {
    if (table.layout() != Layout.FROM_TO) {
      return false;
    }
    long ends =
        table.columns().stream()
            .filter(column -> column.role().isEnd() && !column.role().isPinOfEnd())
            .map(column -> column.textIn(row))
            .filter(text -> !words.isNothing(text))
            .count();
    return ends == 2;
  }

  /** Whether a column of remarks names points all over: then it is one of points. */
  private boolean tellsPoints(ListColumn column) {
    return points.computeIfAbsent(
        column.index(),
        index -> {
          List<String> filled =
              table.body().stream()
                  .map(row -> CellText.clean(row.cell(index).text()))
                  .filter(text -> !text.isEmpty())
                  .toList();
          long naming = filled.stream().filter(NAMES_POINT.asMatchPredicate()).count();
          return naming > 2 && naming * 10 >= filled.size() * 9L;
        });
  }

  /** {@code + J3-2}: a remark with a point that is no end of its row. */
  private boolean namesAnother(Row row, ListColumn column, String text) {
    boolean settled = column.role() == Role.KEEP && column.certainty() == ColumnCertainty.CERTAIN;
    if (text.length() > 60 || column.heading().isEmpty() || settled || tellsPoints(column)) {
      return false;
    }
    List<String> own =
        table.columns().stream()
            .filter(one -> one.index() != column.index())
            .map(one -> one.textIn(row))
            .toList();
    return Arrays.stream(text.split("[\\s,;()+]+", -1))
        .filter(POINT_IN_REMARK.asMatchPredicate())
        .anyMatch(point -> !own.contains(point));
  }

  /** "Not used", "deleted", in a remark: the row may be no wire. */
  private boolean saysNoWire(String text) {
    boolean word = text.length() > 3 && !text.startsWith("-");
    return word && (words.is("spare", text) || words.mentions("deleted", text));
  }

  /** {@code P2-4 and P2-5}, {@code P2-6 via TB1-4}: more than one point, read as one. */
  private boolean namesSeveral(String text, ListColumn column) {
    return text.indexOf(' ') > 0
        && Arrays.stream(text.split("[\\s,;]+", -1)).filter(Ends::looksLikePoint).count() > 1
        && ends.parseAll(text, column.grammar()).size() < 2;
  }

  /**
   * A signal or a colour that is a remark: "spare", "deleted", "bridge to 8", "blue (now TB1-6)".
   */
  private boolean saysOtherwise(String text, ListColumn column) {
    boolean spare =
        words.is("spare", text)
            && !namesLikeSpare.isOne(text, column)
            && (column.role() == Role.COLOR || table.layout() == Layout.FROM_TO);
    return spare
        || words.mentions("deleted", text)
        || words.mentions("changes wire", text)
        || (CellText.hasDigit(text) && words.mentions("joins", text))
        || NAMES_POINT.matcher(text).matches();
  }

  /** Own pins, or pins of a net, that are asked for in the list itself, or are several. */
  private boolean isOpenPin(String text, ListColumn column) {
    boolean points = column.role() == Role.POINTS && table.layout() != Layout.MARKS;
    if (!points && column.role() != Role.PIN) {
      return false;
    }
    boolean own = column.role() == Role.PIN;
    boolean stroke = own && table.layout() != Layout.NET_LIST && isOfTwoByStroke(text, column);
    boolean otherItem =
        points
            && table.layout() == Layout.ROW_NETS
            && CONNECTOR.matcher(text).matches()
            && isMostly(DIGITS, column);
    return (own && isSentenceOfPins(text))
        || otherItem
        || (table.layout().tellsWires()
            && text.length() > 1
            && text.length() <= LONGEST_PIN
            && (isAsked(text)
                || stroke
                || (words.is("doubt", text) && !isNamedLikeOthers(text, column))));
  }

  private static boolean isAsked(String text) {
    return text.startsWith("\u00bf") || text.endsWith("?") || text.contains("? ");
  }

  /** "4 + 5 bridged", "13 to shell" in a column of pins. */
  private boolean isSentenceOfPins(String text) {
    return text.indexOf(' ') > 0
        && CellText.hasDigit(text)
        && table.layout() != Layout.NET_LIST
        && (words.mentions("joins", text)
            || hasWord("and", text)
            || OWN_TO.matcher(text).matches()
            || words.mentions("changes wire", text));
  }

  /** {@code J1, J2} where the pins stand in a column of their own: each of them, or one. */
  private boolean namesItems(String text, ListColumn column) {
    return !column.role().isPinOfEnd()
        && hasPinColumn(column.role())
        && (SEVERAL_ITEMS.matcher(text).matches() || isUnusual(ITEM_TO_ITEM, text, column));
  }

  private boolean hasPinColumn(Role end) {
    return table.column(end.pinOfEnd()).isPresent();
  }

  /** What stands in brackets behind an end is said where it may change the wire. */
  private void brackets(Row row, ListColumn column, String text) {
    Matcher brackets = IN_BRACKETS.matcher(text);
    while (text.indexOf('(') > 0 && brackets.find()) {
      String said = brackets.group(1).strip();
      boolean point = Arrays.stream(said.split("[\\s,;()+&]+", -1)).anyMatch(Ends::looksLikePoint);
      boolean more = (said.startsWith("+") && said.length() > 1) || said.startsWith("&");
      boolean item = ITEM_IN_REMARK.matcher(said).matches();
      if (point
          || more
          || item
          || words.is("spare", said)
          || words.mentions("changes wire", said)
          || words.mentions("deleted", said)
          || words.mentions("joins", said)
          || words.mentions("by way of", said)
          || hasWord("and", said)
          || isAsAnother(said)) {
        findings.warning(table.place(row, column), new RowOddity.RemarkMayChange(said));
      }
    }
  }

  private boolean isSaidToBeAnother(String text) {
    Matcher brackets = IN_BRACKETS.matcher(text);
    return text.indexOf('(') > 0 && brackets.find() && isAsAnother(brackets.group(1).strip());
  }

  /** {@code same as J2}: one item under two names, or two of a kind. */
  private boolean isAsAnother(String said) {
    return words.mentions("same as", said)
        && Arrays.stream(said.split("[\\s,;=]+", -1)).anyMatch(Ends::isDesignator);
  }

  /** {@code U6 B2 + R1}, {@code IMU pin 13 via R3}: more than an end, and read as one. */
  private boolean tellsMoreThanOne(String text, ListColumn column) {
    boolean more =
        CellText.hasDigit(text) && MORE.matcher(text).find() && !ends.isPoleInWords(text);
    return !column.role().isPinOfEnd()
        && (more || ADDED_NAMES.matcher(text).matches())
        && ends.parseAll(text, column.grammar()).size() < 2;
  }

  /** {@code J28.2, pod end only}: a point, and words that say more of it. */
  private static boolean saysMoreOfPoint(String text) {
    Matcher more = POINT_AND_WORDS.matcher(text);
    return more.matches() && Ends.looksLikePoint(more.group(1));
  }

  /** {@code Horn ; Bell}: two points, if the user says so; else a name, or nobody knows. */
  private boolean setsNamesApart(String text, ListColumn column) {
    return Ends.isSetApart(text)
        && ends.parseAll(text, column.grammar()).stream().anyMatch(one -> one.pin().isEmpty());
  }

  /** {@code Drive X - PUL-, DIR-, ENA-}: pins with commas between, read as one of a long name. */
  private boolean listsPins(String text, ListColumn column) {
    if (column.role().isPinOfEnd() || text.indexOf(',') < 0) {
      return false;
    }
    List<Ends.Text> points = ends.parseAll(text, column.grammar());
    return points.size() == 1
        && points.get(0).item().indexOf(',') > 0
        && LISTED_PINS.matcher(text).matches();
  }

  /** {@code 1 bis 4}, {@code J1:1-4}: several pins, or nobody knows. */
  private static boolean isRangeInWords(String text) {
    Matcher range = POINT_NUMBERS.matcher(text);
    boolean up =
        range.matches() && Integer.parseInt(range.group(1)) < Integer.parseInt(range.group(2));
    return up || WORDED_RANGE.matcher(text).matches();
  }

  /** Whether an end of the row names as many points as are counted. */
  private boolean countsPoints(Row row, String count) {
    if (table.layout() == Layout.NET_LIST) {
      return table.columns().stream()
          .filter(column -> column.role() == Role.PIN)
          .map(column -> column.textIn(row))
          .anyMatch(text -> Integer.toString(Ends.pointsOfNet(text).size()).equals(count));
    }
    return table.columns().stream()
        .filter(column -> column.role() == Role.FROM || column.role() == Role.TO)
        .map(column -> column.textIn(row))
        .anyMatch(
            text ->
                Integer.toString(ends.parseAll(text, Grammar.AS_IT_LOOKS).size()).equals(count));
  }

  private void lose(Row row, ListColumn column, RowOddity oddity, SkipReason why) {
    findings.add(Severity.ERROR, table.place(row, column), column.heading(), oddity);
    tally.skip(row.number(), why);
  }
}
