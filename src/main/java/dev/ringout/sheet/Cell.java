package dev.ringout.sheet;

import dev.ringout.units.Text;

/**
 * One cell as the file has it.
 *
 * @param text the text, struck out or not; numbers in their shortest form ({@code 7}, never {@code
 *     7.0})
 * @param ink how the text is marked
 * @param shown what the spreadsheet shows of a number where its format says more than the number
 *     ({@code 36 kΩ} for 36), else empty
 * @param fill the colour that the cell is filled with, as six hexadecimal digits of red, green and
 *     blue; empty where it is white or none
 */
public record Cell(Stored kind, String text, Ink ink, String shown, String fill) {
  /** What can't be seen is made visible here, once for every kind of file. */
  public Cell {
    text = Text.visible(text);
  }

  /** A cell that holds nothing. */
  public static final Cell EMPTY = new Cell(Stored.TEXT, "");

  /** What a spreadsheet stored. */
  public enum Stored {
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

  /**
   * How a text is marked: what a red pen does on paper.
   *
   * @param struck whether any of it is struck through
   * @param left what is not struck through
   * @param red whether it is written in red
   */
  public record Ink(boolean struck, String left, boolean red) {
    /** Neither struck nor red. */
    public static final Ink PLAIN = new Ink(false, "", false);

    /** Red, and not struck. */
    public static final Ink RED = new Ink(false, "", true);
  }

  /** A cell in plain ink. */
  public Cell(Stored kind, String text) {
    this(kind, text, Ink.PLAIN, "", "");
  }

  /** The same number, which the spreadsheet shows otherwise. */
  Cell shownAs(String other) {
    return other.isEmpty() ? this : new Cell(kind, text, ink, Text.visible(other), fill);
  }

  /** A cell of plain text. */
  public static Cell text(String text) {
    return text.isEmpty() ? EMPTY : new Cell(Stored.TEXT, text);
  }

  /** The same cell, marked. */
  public Cell in(Ink other) {
    return other.equals(ink) ? this : new Cell(kind, text, other, shown, fill);
  }

  /** The same cell, filled with a colour. */
  public Cell filled(String colour) {
    return colour.equals(fill) ? this : new Cell(kind, text, ink, shown, colour);
  }

  /** Whether there is nothing in it but blanks. */
  public boolean isBlank() {
    return kind == Stored.TEXT && text.isBlank();
  }

  /** Whether all of its text is struck through. */
  public boolean isStruck() {
    return ink.struck() && ink.left().isBlank();
  }
}
