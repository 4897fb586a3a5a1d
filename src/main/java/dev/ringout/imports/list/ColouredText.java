package dev.ringout.imports.list;

import dev.ringout.cells.CellText;
import dev.ringout.sheet.Cell;
import dev.ringout.sheet.Row;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * A text in a colour, beside a colour, or that may name one: what legends are made of.
 *
 * @param fill the colour, or empty where the text may only name it
 * @param row where the text stands
 * @param swatch the column of the blank or short cell that shows the colour; the text's own where
 *     it is filled itself
 */
public record ColouredText(String fill, String text, int row, int column, int swatch) {
  private static final int MOST = 4096;
  private static final int LONGEST = 80;
  private static final int LONGEST_SWATCH = 12;

  /** Rows of wires have more filled cells than a legend's. */
  private static final int CELLS_OF_A_LEGEND = 3;

  /** Whether the colour is shown by a cell in which nothing stands. */
  public boolean isBeside() {
    return !fill.isEmpty() && swatch != column;
  }

  /** The candidates of a sheet, each text with a colour once; none where no cell is filled. */
  static List<ColouredText> of(List<Row> rows) {
    List<ColouredText> texts = new ArrayList<>();
    Set<String> seen = new HashSet<>();
    boolean anyFill = false;
    for (Row row : rows) {
      int filled = 0;
      boolean coloured = false;
      for (Cell cell : row.cells()) {
        filled += cell.isBlank() ? 0 : 1;
        coloured |= !cell.fill().isEmpty();
      }
      anyFill |= coloured;
      boolean few = filled <= CELLS_OF_A_LEGEND;
      if ((coloured || few) && texts.size() < MOST) {
        add(row, few, seen, texts);
      }
    }
    return anyFill ? List.copyOf(texts) : List.of();
  }

  private static void add(Row row, boolean few, Set<String> seen, List<ColouredText> texts) {
    for (int column = 1; column <= row.cells().size(); column++) {
      Cell cell = row.cell(column);
      String text = cell.text();
      if (cell.kind() != Cell.Stored.TEXT || !canExplain(text)) {
        continue;
      }
      int swatch = cell.fill().isEmpty() ? swatch(row, column, few) : column;
      if (few || swatch != column) {
        String fill = row.cell(swatch).fill();
        keep(
            new ColouredText(fill, CellText.clean(text), row.number(), column, swatch),
            seen,
            texts);
      }
    }
  }

  /**
   * The cell that shows a text's colour, or the text's own. A legend has its colours before its
   * texts, unless it begins with a text.
   */
  private static int swatch(Row row, int column, boolean few) {
    boolean after = few && beginsWithText(row);
    for (int beside :
        new int[] {after ? column + 1 : column - 1, after ? column - 1 : column + 1}) {
      Cell cell = row.cell(beside);
      boolean shows = cell.isBlank() || (few && cell.text().length() <= LONGEST_SWATCH);
      if (!cell.fill().isEmpty() && shows) {
        return beside;
      }
    }
    return column;
  }

  private static boolean beginsWithText(Row row) {
    for (Cell cell : row.cells()) {
      if (!cell.isBlank() || !cell.fill().isEmpty()) {
        return cell.fill().isEmpty();
      }
    }
    return false;
  }

  /** A sign or a word of some letters; points and numbers explain nothing. */
  private static boolean canExplain(String text) {
    if (text.length() < 3 || text.length() > LONGEST) {
      return false;
    }
    int run = 0;
    for (int i = 0; i < text.length(); i++) {
      run = Character.isLetter(text.charAt(i)) ? run + 1 : 0;
      if (run == 3) {
        return true;
      }
    }
    return false;
  }

  private static void keep(ColouredText text, Set<String> seen, List<ColouredText> texts) {
    if (seen.add(text.fill() + " " + text.text())) {
      texts.add(text);
    }
  }
}
