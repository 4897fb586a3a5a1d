package dev.ringout.imports.rows;

import dev.ringout.cells.CellText;
import dev.ringout.imports.list.Words;
import dev.ringout.standards.PublishedTable;
import java.time.Month;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What spreadsheets show of dates, truth values and errors, in seven languages: what stands in a
 * list that was saved as text. The names are data, see {@code spreadsheet-texts.csv}.
 */
final class SpreadsheetTexts {
  /** {@code 2-Jan}, {@code 3. Mai}, {@code 2 de agosto}, {@code 2 août 2025}. */
  private static final Pattern DAY_MONTH =
      Pattern.compile(
          "(\\d{1,2})\\.?(?:[-/. ]{1,2}| de )(\\p{L}{3,10})\\.?(?:(?:[-/. ]{1,2}| de )(?:\\d{4}|\\d{2}))?");

  /** {@code Jan-02}, {@code ago-12}: month and year, always of two or four digits. */
  private static final Pattern MONTH_YEAR =
      Pattern.compile("(\\p{L}{3,10})\\.?[-/. ]{1,2}(\\d{2}|(?:19|20)\\d{2})");

  private static final Pattern ISO_DATE = Pattern.compile("\\d{4}-(\\d{2})-(\\d{2})(?:T.*)?");

  private static final String CLOCK =
      "(?:[ T]\\d{1,2}:\\d{2}(?::\\d{2}(?:\\.\\d+)?)?(?: ?[AP]M)?Z?)?";

  private static final Pattern YEAR_FIRST =
      Pattern.compile("(?:19|20)\\d{2}([-/.])(\\d{1,2})\\1(\\d{1,2})" + CLOCK);
  private static final Pattern YEAR_LAST =
      Pattern.compile("(\\d{1,2})([-/.])(\\d{1,2})\\2(?:19|20)\\d{2}" + CLOCK);

  private static final Pattern NUMBERED_ERROR =
      Pattern.compile("(?:Err|Fehler|Erreur|Errore|Fout|Erro):\\d{3}");

  private static final int LONGEST_DATE = 30;
  private static final int LONGEST_TRUTH = 10;
  private static final int LONGEST_MONTH_WRITTEN = 4;
  private static final int ROWS_LOOKED_AT = 400;

  private static final SpreadsheetTexts STANDARD = new SpreadsheetTexts();

  private final Map<String, Integer> months;
  private final Set<String> truths;
  private final Set<String> errors;

  private SpreadsheetTexts() {
    Map<String, Integer> monthOf = new HashMap<>();
    Set<String> truthTexts = new HashSet<>();
    Set<String> errorTexts = new HashSet<>();
    for (Map<String, String> row :
        PublishedTable.load(SpreadsheetTexts.class, "spreadsheet-texts.csv").rows()) {
      List<String> texts = List.of(row.getOrDefault("texts", "").split(" ", -1));
      switch (row.getOrDefault("kind", "")) {
        case "month" -> {
          int month = Integer.parseInt(row.getOrDefault("value", ""));
          texts.forEach(text -> monthOf.put(text, month));
        }
        case "truth" -> truthTexts.addAll(texts);
        default -> errorTexts.addAll(texts);
      }
    }
    months = Map.copyOf(monthOf);
    truths = Set.copyOf(truthTexts);
    errors = Set.copyOf(errorTexts);
  }

  static SpreadsheetTexts standard() {
    return STANDARD;
  }

  /**
   * A date as a spreadsheet shows it.
   *
   * @param month of the year; with two numbers that may be either, the month is the second where
   *     points part them and the first elsewhere
   * @param day of the month, or the year's last two digits
   * @param name the month as a designator may have had it: {@code MRZ}
   */
  record ShownDate(int month, int day, String name) {}

  boolean isTruth(String text) {
    return text.length() <= LONGEST_TRUTH && truths.contains(text);
  }

  /** Whether a text is a truth value in any case: a pin has no such name. */
  boolean isTruthInAnyCase(String text) {
    return text.length() <= LONGEST_TRUTH && truths.contains(text.toUpperCase(Locale.ROOT));
  }

  boolean isError(String text) {
    return errors.contains(text) || NUMBERED_ERROR.matcher(text).matches();
  }

  /** Whether a text is made of hashes alone, as of a column that is too narrow. */
  static boolean isHashes(String text) {
    return text.length() > 2 && text.chars().allMatch(c -> c == '#');
  }

  /** The date that a cell stores, by its text in ISO form. */
  static Optional<ShownDate> stored(String isoDate) {
    Matcher date = ISO_DATE.matcher(isoDate);
    return date.matches()
        ? numbers(number(date.group(1)), number(date.group(2)))
        : Optional.empty();
  }

  /** The date that a text shows, where it shows one. */
  Optional<ShownDate> date(String text) {
    if (text.length() < 5 || text.length() > LONGEST_DATE) {
      return Optional.empty();
    }
    if (!hasMonthLetters(text)) {
      return text.length() < 8 || !CellText.isDigit(text.charAt(0))
          ? Optional.empty()
          : numbers(text);
    }
    Matcher dayFirst = DAY_MONTH.matcher(text);
    if (dayFirst.matches()) {
      return named(dayFirst.group(2), Integer.parseInt(dayFirst.group(1)));
    }
    Matcher monthFirst = MONTH_YEAR.matcher(text);
    return monthFirst.matches()
        ? named(monthFirst.group(1), Integer.parseInt(monthFirst.group(2)) % 100)
        : numbers(text);
  }

  private Optional<ShownDate> named(String letters, int day) {
    String plain = String.join("", Words.tokens(letters.toLowerCase(Locale.ROOT)));
    Integer month = months.get(plain);
    if (month == null) {
      return Optional.empty();
    }
    boolean asWritten =
        letters.length() <= LONGEST_MONTH_WRITTEN && letters.equalsIgnoreCase(plain);
    return Optional.of(
        new ShownDate(month, day, asWritten ? plain.toUpperCase(Locale.ROOT) : english(month)));
  }

  private static Optional<ShownDate> numbers(String text) {
    Matcher yearFirst = YEAR_FIRST.matcher(text);
    if (yearFirst.matches()) {
      return numbers(number(yearFirst.group(2)), number(yearFirst.group(3)));
    }
    Matcher yearLast = YEAR_LAST.matcher(text);
    if (!yearLast.matches()) {
      return Optional.empty();
    }
    int first = number(yearLast.group(1));
    int second = number(yearLast.group(3));
    boolean dayFirst = yearLast.group(2).equals(".") || first > 12;
    return dayFirst ? numbers(second, first) : numbers(first, second);
  }

  private static Optional<ShownDate> numbers(int month, int day) {
    boolean swapped = month > 12;
    int oneToTwelve = swapped ? day : month;
    int other = swapped ? month : day;
    return oneToTwelve < 1 || oneToTwelve > 12 || other < 1 || other > 31
        ? Optional.empty()
        : Optional.of(new ShownDate(oneToTwelve, other, english(oneToTwelve)));
  }

  private static int number(String digits) {
    return Integer.parseInt(digits);
  }

  static String english(int month) {
    return Month.of(month).name().substring(0, 3);
  }

  /**
   * Whether a text that looks like a date is a name all the same, because its column is of that
   * form: others of its form are no dates, or all are in capitals, which spreadsheets never write.
   */
  boolean isOfColumnsForm(String text, List<String> column) {
    String form = form(text);
    String letters = letters(text);
    int filled = 0;
    int dates = 0;
    int names = 0;
    boolean sameName = false;
    for (String other : column.subList(0, Math.min(column.size(), ROWS_LOOKED_AT))) {
      filled++;
      if (form(other).equals(form)) {
        boolean date = date(other).isPresent();
        dates += date ? 1 : 0;
        names += date ? 0 : 1;
        sameName |= !date && !letters.isEmpty() && letters(other).equals(letters);
      }
    }
    boolean capitals = !letters.isEmpty() && letters.equals(letters.toUpperCase(Locale.ROOT));
    boolean ofItsForm = dates + names > 2 && (dates + names) * 2 >= filled;
    return sameName
        || (capitals && ofItsForm)
        || (letters.isEmpty() ? names * 4 >= dates + names : names > 0 && names >= dates);
  }

  /** {@code A-9} of "OUT-12", {@code 9-Aa} of "12-Mrz". */
  private static String form(String text) {
    StringBuilder form = new StringBuilder();
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      char kind =
          CellText.isDigit(c)
              ? '9'
              : Character.isUpperCase(c) ? 'A' : Character.isLetter(c) ? 'a' : c;
      if (form.length() == 0 || form.charAt(form.length() - 1) != kind) {
        form.append(kind);
      }
    }
    return form.toString();
  }

  private static String letters(String text) {
    StringBuilder letters = new StringBuilder();
    text.chars().filter(Character::isLetter).forEach(c -> letters.append((char) c));
    return letters.toString();
  }

  private static boolean hasMonthLetters(String text) {
    int run = 0;
    for (int i = 0; i < text.length() && run < 3; i++) {
      run = Character.isLetter(text.charAt(i)) ? run + 1 : 0;
    }
    return run == 3;
  }
}
