package dev.ringout.source;

/**
 * Where something stands in the user's files.
 *
 * @param file the file as shown to the user
 * @param sheet the sheet's name, or empty for a CSV file
 * @param row counted from 1, or 0 where no row is meant
 * @param column counted from 1, or 0 where no column is meant
 */
public record Place(String file, String sheet, int row, int column) {

  /** In no file: of what was worked out and stands nowhere. */
  public static final Place NOWHERE = new Place("", "", 0, 0);

  /** Whether it is in no file. */
  public boolean isNowhere() {
    return equals(NOWHERE);
  }

  /** A whole file. */
  public static Place of(String file) {
    return new Place(file, "", 0, 0);
  }

  /** A whole sheet. */
  public static Place of(String file, String sheet) {
    return new Place(file, sheet, 0, 0);
  }

  /** The whole row in which it is. */
  public Place wholeRow() {
    return new Place(file, sheet, row, 0);
  }

  /** The cell as spreadsheets name it ({@code G14}); {@code 14} for a row, empty for neither. */
  public String cell() {
    return (column > 0 ? columnLetters(column) : "") + (row > 0 ? row : "");
  }

  /** The letters of a column counted from 1: A, B … Z, AA. */
  public static String columnLetters(int column) {
    StringBuilder letters = new StringBuilder();
    for (int rest = column; rest > 0; rest = (rest - 1) / 26) {
      letters.insert(0, (char) ('A' + (rest - 1) % 26));
    }
    return letters.toString();
  }

  /** The column of its letters, counted from 1. */
  public static int column(String letters) {
    int column = 0;
    for (int i = 0; i < letters.length(); i++) {
      column = 26 * column + letters.charAt(i) - 'A' + 1;
    }
    return column;
  }

  /** In one piece: {@code readings.xlsx!Continuity!G14}. */
  @Override
  public String toString() {
    StringBuilder text = new StringBuilder(file);
    if (!sheet.isEmpty()) {
      text.append('!').append(sheet);
    }
    if (!cell().isEmpty()) {
      text.append('!').append(cell());
    }
    return text.toString();
  }
}
