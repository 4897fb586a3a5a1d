package dev.ringout.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Columns of a text that a typist or a terminal has lined up with blanks: each begins at the same
 * place in nearly every line below the headings.
 *
 * @param starts where each column begins, counted from 0
 */
record AlignedText(List<Integer> starts) implements TextLines {
  private static final Pattern PIECE = Pattern.compile("\\S+(?: \\S+)*");

  private static final int LEAST_COLUMNS = 3;
  private static final int LEAST_LINES = 2;

  /** The columns that the first lines show, or none. */
  static Optional<AlignedText> of(List<String> lines) {
    AlignedText best = new AlignedText(List.of());
    for (int i = 0; i < lines.size(); i++) {
      AlignedText own = new AlignedText(startsOf(lines.get(i)));
      if (own.starts().size() >= LEAST_COLUMNS
          && own.starts().size() > best.starts().size()
          && own.fits(lines.subList(i + 1, lines.size()))) {
        best = own;
      }
    }
    return best.starts().isEmpty() ? Optional.empty() : Optional.of(best);
  }

  private static List<Integer> startsOf(String line) {
    List<Integer> starts = new ArrayList<>();
    Matcher piece = PIECE.matcher(line);
    while (piece.find()) {
      starts.add(piece.start());
    }
    return List.copyOf(starts);
  }

  private boolean fits(List<String> below) {
    int lines = 0;
    int fit = 0;
    for (String line : below) {
      if (startsOf(line).size() > 1) {
        lines++;
        fit += fits(line) ? 1 : 0;
      }
    }
    return fit >= LEAST_LINES && fit * 10 >= lines * 9;
  }

  /** Whether every piece of a line begins where a column does, and none goes past the next. */
  private boolean fits(String line) {
    return starts.containsAll(startsOf(line))
        && starts.stream()
            .allMatch(at -> at == 0 || at >= line.length() || line.charAt(at - 1) == ' ');
  }

  /** The cells of a line; one that is not lined up is one cell. */
  @Override
  public List<Cell> cells(String line) {
    if (startsOf(line).size() < 2 || !fits(line)) {
      return List.of(Cell.text(line.strip()));
    }
    List<Cell> cells = new ArrayList<>();
    for (int i = 0; i < starts.size(); i++) {
      int from = Math.min(starts.get(i), line.length());
      int to = i + 1 < starts.size() ? Math.min(starts.get(i + 1), line.length()) : line.length();
      cells.add(Cell.text(line.substring(from, to).strip()));
    }
    return List.copyOf(cells);
  }
}
