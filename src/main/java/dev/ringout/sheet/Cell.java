package dev.ringout.sheet;

/**
 * One cell as the file has it.
 *
 * @param text the text; numbers in their shortest form ({@code 7}, never {@code 7.0})
 */
public record Cell(Kind kind, String text) {
  /** A cell that holds nothing. */
  public static final Cell EMPTY = new Cell(Kind.TEXT, "");

  /** What a spreadsheet stored. */
  public enum Kind {
    TEXT,
    NUMBER,
    /** A number shown as a date; its text is the date in ISO form. */
    DATE,
    BOOLEAN,
    /** An error value such as {@code #REF!}. */
    ERROR,
    /** A formula without a stored result. */
    UNCALCULATED
  }

  /** A cell of plain text. */
  public static Cell text(String text) {
    return text.isEmpty() ? EMPTY : new Cell(Kind.TEXT, text);
  }

  /** Whether there is nothing in it but blanks. */
  public boolean isBlank() {
    return kind == Kind.TEXT && text.isBlank();
  }
}
