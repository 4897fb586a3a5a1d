package dev.ringout.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/**
 * Tables of a plain text with bars around their cells, {@code | From | To |}, and a rule of dashes
 * below the headings; the lines between are titles and remarks.
 */
record BarredText() implements TextLines {
  private static final Pattern RULE =
      Pattern.compile("\\|?\\s*:?-{2,}:?\\s*(\\|\\s*:?-{2,}:?\\s*)+\\|?");

  /** A line drawn between paragraphs. */
  private static final Pattern DRAWN = Pattern.compile("([-*_=])\\1{2,}");

  /** What makes a line a title, a quotation or an item of a list. */
  private static final Pattern MARK = Pattern.compile("^(#{1,6}|>|[-*+])\\s+");

  private static final Pattern BAR = Pattern.compile("(?<!\\\\)\\|");
  private static final int LEAST_LINES = 3;

  /** Whether lines hold such a table: a rule, with a line in bars above and one below. */
  static boolean isIn(List<String> lines) {
    long barred = lines.stream().filter(BarredText::isBarred).count();
    return barred >= LEAST_LINES && lines.stream().anyMatch(BarredText::isRule);
  }

  private static boolean isBarred(String line) {
    return line.strip().startsWith("|");
  }

  private static boolean isRule(String line) {
    return isBarred(line) && RULE.matcher(line.strip()).matches();
  }

  @Override
  public List<Cell> cells(String line) {
    String text = line.strip();
    if (isRule(text) || DRAWN.matcher(text).matches()) {
      return List.of();
    }
    if (!BAR.matcher(text).find()) {
      return List.of(Cell.text(MARK.matcher(text).replaceFirst("")));
    }
    // A row without the bars at its ends is a row all the same.
    boolean closed = text.length() > 1 && text.endsWith("|") && !text.endsWith("\\|");
    int from = isBarred(text) ? 1 : 0;
    String inside = text.substring(from, closed ? text.length() - 1 : text.length());
    List<Cell> cells = new ArrayList<>();
    for (String cell : BAR.split(inside, -1)) {
      cells.add(Cell.text(cell.strip().replace("\\|", "|")));
    }
    return List.copyOf(cells);
  }
}
