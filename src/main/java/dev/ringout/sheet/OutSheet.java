package dev.ringout.sheet;

import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * A sheet to be written: a row of headings and rows of text.
 *
 * @param rows cells as text, so that no spreadsheet makes a date of a pin
 * @param look how it prints and is filled in
 * @param pictures in a workbook's cells; a file of text alone has none
 */
public record OutSheet(
    String name,
    List<String> headings,
    List<List<String>> rows,
    Look look,
    List<OutPicture> pictures) {
  /** What is given can't be changed afterwards. */
  public OutSheet {
    pictures = List.copyOf(pictures);
  }

  /** A table without pictures. */
  public OutSheet(String name, List<String> headings, List<List<String>> rows, Look look) {
    this(name, headings, rows, look, List.of());
  }

  /** The same with pictures in its cells. */
  public OutSheet with(List<OutPicture> others) {
    return new OutSheet(name, headings, rows, look, others);
  }

  /** A plain table. */
  public OutSheet(String name, List<String> headings, List<List<String>> rows) {
    this(name, headings, rows, Look.PLAIN);
  }

  /**
   * How a sheet prints and is filled in.
   *
   * @param title stands above each printed page; empty where the sheet is not for print
   * @param numbers columns whose cells are numbers
   * @param choices what may be chosen in a column
   * @param toFill columns that are written into
   * @param texts columns in which what is typed stays as typed: a serial number keeps its zeros
   * @param markWhere a formula over row 2: a filled row is marked where it is true; may be empty
   * @param codes columns whose texts are drawn as bar codes too, where pages can hold one
   * @param filter whether rows can be chosen by their values
   * @param about stands beside the sheet's name on a page; may be empty
   * @param picture a drawing (SVG) above the table where pages can hold one; may be empty
   */
  public record Look(
      String title,
      Set<Integer> numbers,
      Map<Integer, List<String>> choices,
      Set<Integer> toFill,
      Set<Integer> texts,
      String markWhere,
      Map<Integer, BarCode> codes,
      boolean filter,
      String about,
      String picture) {
    /** Nothing but a table. */
    public static final Look PLAIN = printed("");

    /** A printed sheet of words. */
    public static Look printed(String title) {
      return new Look(title, Set.of(), Map.of(), Set.of(), Set.of(), "", Map.of(), false, "", "");
    }

    /** The same with columns of numbers. */
    public Look withNumbers(Integer... columns) {
      return new Look(
          title, Set.of(columns), choices, toFill, texts, markWhere, codes, filter, about, picture);
    }

    /** The same with columns that are written into. */
    public Look withToFill(Integer... columns) {
      return new Look(
          title,
          numbers,
          choices,
          Set.of(columns),
          texts,
          markWhere,
          codes,
          filter,
          about,
          picture);
    }

    /** The same with columns that are written into, in which what is typed stays as typed. */
    public Look withTextToFill(Integer... columns) {
      return new Look(
          title,
          numbers,
          choices,
          Set.of(columns),
          Set.of(columns),
          markWhere,
          codes,
          filter,
          about,
          picture);
    }

    /** The same with what may be chosen in a column. */
    public Look withChoices(int column, List<String> any) {
      return new Look(
          title,
          numbers,
          Map.of(column, any),
          toFill,
          texts,
          markWhere,
          codes,
          filter,
          about,
          picture);
    }

    /** The same with a formula over row 2 that marks a row. */
    public Look withMarkWhere(String formula) {
      return new Look(
          title, numbers, choices, toFill, texts, formula, codes, filter, about, picture);
    }

    /** The same with the texts of a column as bar codes. */
    public Look withCodes(int column, BarCode code) {
      return new Look(
          title,
          numbers,
          choices,
          toFill,
          texts,
          markWhere,
          Map.of(column, code),
          filter,
          about,
          picture);
    }

    /** The same with rows that can be chosen by their values. */
    public Look withFilter() {
      return new Look(
          title, numbers, choices, toFill, texts, markWhere, codes, true, about, picture);
    }

    /** The same with words beside the sheet's name. */
    public Look withAbout(String words) {
      return new Look(
          title, numbers, choices, toFill, texts, markWhere, codes, filter, words, picture);
    }

    /** The same with a drawing above the table. */
    public Look withPicture(String svg) {
      return new Look(title, numbers, choices, toFill, texts, markWhere, codes, filter, about, svg);
    }
  }
}
