package dev.ringout.imports.find;

import dev.ringout.cells.CellText;
import dev.ringout.imports.list.Ends;
import dev.ringout.imports.list.Words;
import dev.ringout.sheet.Cell;
import dev.ringout.sheet.Row;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * What the cells under a heading look like, by the first rows.
 *
 * @param rows how many rows were looked at
 * @param filled how many of them hold something
 * @param distinct how many different texts they hold
 */
record ColumnProfile(
    int rows,
    int filled,
    int distinct,
    int numbers,
    int shortTexts,
    int colors,
    int gauges,
    int lengths,
    int points,
    int marks,
    int designators,
    int names,
    int pins,
    int prose,
    int paths,
    int pointLists,
    int bridges,
    int arrows,
    int dittos,
    int pinNames,
    int bridgeMarks,
    int inWords,
    boolean running) {
  private static final int ROWS_LOOKED_AT = 400;
  private static final int LONGEST_PIN = 24;

  private static final Pattern GAUGE =
      Pattern.compile("(?i)(awg|#)\\s*\\d{1,2}|\\d{1,2}\\s*(awg|ga\\.?)|[\\d.,]+\\s*mm[²2]");
  private static final Pattern LENGTH =
      Pattern.compile("(?i)\\d+([.,]\\d+)?\\s*(mm|cm|m|ft|feet|in|inch|inches|'|\")\\.?");
  private static final Pattern MARK = Pattern.compile("(?i)\\(?[xo*•✓●]\\)?(\\s*\\[\\d+\\])?");

  /** A pin with its name behind a stroke: {@code A2/DQ13}. */
  private static final Pattern NAMED_PIN =
      Pattern.compile("[A-Za-z]{0,2}\\d{1,3}/[A-Za-z][A-Za-z0-9_#?+-]{1,12}(/.{1,10})?");

  private static final Pattern ARROW =
      Pattern.compile(
          "<?[-=\u2013]*>|<[-=\u2013]*|[\u2190-\u2194\u21d0-\u21d4\u27f5-\u27f7\u25ba\u25b6\u25cf]");

  /** Terminals to which a bridge leads: {@code 5}, {@code \u2192 3}, {@code 3, 4}. */
  private static final Pattern BRIDGE =
      Pattern.compile(
          "[-=>\u2192 ]*[A-Za-z]{0,2}\\d{1,4}[a-z]?(\\s*[,;+]\\s*[A-Za-z]{0,2}\\d{1,4}[a-z]?)*|\\d{1,3}(-\\d{1,3})+");

  /** One short word, as the pins of boards are called: {@code GPIO17}, {@code VCC}, {@code 5V}. */
  private static final Pattern NAME_OF_PIN =
      Pattern.compile("[\\p{L}\\d+~*#-][\\w+./~#*-]{0,9}|\\d[.,]\\dV");

  /** A pin's own name: a number, a letter or two, both, or a polarity. */
  static final Pattern PIN =
      Pattern.compile("[A-Za-z]{0,3}\\d{1,4}[A-Za-z]?|[A-Za-z]{1,2}|[+-]|[A-Za-z]{1,3}[+-]");

  static Map<Integer, ColumnProfile> of(List<Row> body, int first, int last, Words words) {
    Map<Integer, ColumnProfile> profiles = new HashMap<>();
    List<Row> rows = body.subList(0, Math.min(body.size(), ROWS_LOOKED_AT));
    for (int column = first; column <= last; column++) {
      profiles.put(column, of(rows, column, words));
    }
    return profiles;
  }

  private static ColumnProfile of(List<Row> rows, int column, Words words) {
    int[] count = new int[20];
    boolean running = rows.size() > 2;
    Set<String> distinct = new HashSet<>();
    Ends ends = new Ends(words);
    for (Row row : rows) {
      Cell cell = row.cell(column);
      String text = CellText.clean(cell.text());
      // A stroke is a mark for "as above" elsewhere.
      count[18] += Ends.isMarkOfBridge(text) ? 1 : 0;
      if (text.isEmpty() || words.isDitto(text)) {
        count[16] += text.isEmpty() ? 0 : 1;
        continue;
      }
      distinct.add(text);
      count[0]++;
      running &= CellText.wholeNumber(text).equals(Integer.toString(count[0]));
      count[17] += arePins(text) || NAME_OF_PIN.matcher(text).matches() ? 1 : 0;
      count[1] += cell.kind() == Cell.Stored.NUMBER || CellText.isDigits(text) ? 1 : 0;
      count[2] += text.length() <= LONGEST_PIN ? 1 : 0;
      count[3] += !words.color(firstWord(text)).isEmpty() ? 1 : 0;
      count[4] += GAUGE.matcher(text).matches() ? 1 : 0;
      count[5] += LENGTH.matcher(text).matches() ? 1 : 0;
      count[6] += Ends.looksLikePoint(text) ? 1 : 0;
      count[7] += MARK.matcher(text).matches() ? 1 : 0;
      count[8] += Ends.isDesignator(text) ? 1 : 0;
      count[9] += isName(text) ? 1 : 0;
      count[10] += arePins(text) ? 1 : 0;
      count[15] += ARROW.matcher(text).matches() ? 1 : 0;
      count[14] += BRIDGE.matcher(text).matches() ? 1 : 0;
      count[13] += Ends.pointsOfNet(text).size() > 1 ? 1 : 0;
      count[12] += ends.path(text).isPresent() ? 1 : 0;
      count[11] += isProse(text) ? 1 : 0;
      count[19] += isPointInWords(text, words) ? 1 : 0;
    }
    return new ColumnProfile(
        rows.size(),
        count[0],
        distinct.size(),
        count[1],
        count[2],
        count[3],
        count[4],
        count[5],
        count[6],
        count[7],
        count[8],
        count[9],
        count[10],
        count[11],
        count[12],
        count[13],
        count[14],
        count[15],
        count[16],
        count[17],
        count[18],
        count[19],
        running);
  }

  /** What names a thing: some letters, not many words. */
  private static boolean isName(String text) {
    long letters = text.chars().filter(Character::isLetter).count();
    return !isProse(text)
        && letters >= 2
        && text.length() <= 30
        && text.chars().filter(c -> c == ' ').count() <= 3;
  }

  /** {@code CN8 pin 7}: an item, a word for its pins, and one. */
  private static boolean isPointInWords(String text, Words words) {
    String[] parts = text.split(" +", -1);
    return parts.length > 2
        && words.isAny("pin", parts[parts.length - 2])
        && PIN.matcher(parts[parts.length - 1]).matches();
  }

  /** A pin, or several with commas between. */
  private static boolean arePins(String text) {
    for (String piece : text.split("\\s*[,;&]\\s*", -1)) {
      if (!PIN.matcher(piece).matches() && !NAMED_PIN.matcher(piece).matches()) {
        return false;
      }
    }
    return true;
  }

  private static boolean isProse(String text) {
    // Languages without blanks between words: four signs are a phrase.
    boolean phrase = text.codePoints().filter(Character::isIdeographic).count() > 3;
    return phrase || text.length() > 40 || text.chars().filter(c -> c == ' ').count() > 5;
  }

  private static String firstWord(String text) {
    int end = 0;
    while (end < text.length() && Character.isLetter(text.charAt(end))) {
      end++;
    }
    return end < 2 ? "" : text.substring(0, end);
  }

  boolean isEmpty() {
    return filled == 0;
  }

  boolean mostly(int count) {
    return filled > 0 && count * 10 >= filled * 8;
  }

  boolean isNumeric() {
    return filled > 0 && numbers * 10 >= filled * 9;
  }

  /** Whether the cells can be pins: short, no colours, no lengths. */
  boolean canBePins() {
    return filled >= 2 && mostly(shortTexts) && !mostly(colors) && !mostly(lengths) && !isMarks();
  }

  /** Whether hardly any text comes twice. */
  boolean isDistinct() {
    return distinct * 10 >= filled * 8;
  }

  /** Whether the cells are marks of bridges, and some come again. */
  boolean marksBridges() {
    return bridgeMarks >= 2 && bridgeMarks * 10 >= (filled + dittos) * 8 && distinct < bridgeMarks;
  }

  boolean areArrows() {
    return filled >= 2 && arrows * 10 >= filled * 9;
  }

  /** Whether most texts come again, as the names of devices do. */
  boolean comesAgain() {
    return distinct * 2 <= filled;
  }

  /** Whether the cells list points of nets: several in many of them, and points in nearly all. */
  boolean listsPoints() {
    return pointLists >= 2 && mostly(points + pointLists);
  }

  boolean isMarks() {
    // One mark, and below it a sum.
    boolean summed = marks == 1 && filled == 2 && numbers == 1;
    return filled > 0 && (marks * 10 >= filled * 6 || summed);
  }

  /** Whether the cells are mostly full points or name things: what an end's column holds. */
  boolean canBeItems() {
    return filled + dittos >= 2
        && filled > 0
        && (mostly(points) || designators * 10 >= filled * 6 || names * 10 >= filled * 7)
        && !mostly(colors)
        && !mostly(lengths)
        && !mostly(gauges)
        && prose * 5 < filled
        && !isMarks();
  }

  /** Whether the cells look like pins and nothing else. */
  boolean looksLikePins() {
    return filled >= 2 && mostly(pins) && !mostly(colors) && !isMarks();
  }

  /** Whether blanks stand below most texts, as where a text holds for the rows below it. */
  boolean isSparse() {
    return filled * 2 <= rows && filled > 0;
  }
}
