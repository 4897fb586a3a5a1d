package dev.ringout.sheet;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Consumer;

/**
 * A sheet to be written: a row of headings and rows of text.
 *
 * @param rows cells as text, so that no spreadsheet makes a date of a pin
 * @param look how it prints and is filled in
 * @param pictures in a workbook's cells; a file of text alone has none
 * @param drawings in a workbook below the table; a page draws its look's own
 */
public record OutSheet(
    String name,
    List<String> headings,
    List<List<String>> rows,
    Look look,
    List<OutPicture> pictures,
    List<OutDrawing> drawings) {
  /** What is given can't be changed afterwards. */
  public OutSheet {
    pictures = List.copyOf(pictures);
    drawings = List.copyOf(drawings);
  }

  /** A table without pictures. */
  public OutSheet(String name, List<String> headings, List<List<String>> rows, Look look) {
    this(name, headings, rows, look, List.of(), List.of());
  }

  /** The same with pictures in its cells. */
  public OutSheet with(List<OutPicture> others) {
    return new OutSheet(name, headings, rows, look, others, drawings);
  }

  /** The same with drawings below its table. */
  public OutSheet withDrawings(List<OutDrawing> others) {
    return new OutSheet(name, headings, rows, look, pictures, others);
  }

  /** The columns that paper shows. */
  public int printedColumns() {
    return headings.size() - look.onScreen().size();
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
   * @param choices what may be chosen in a column; on paper it is ringed
   * @param toFill columns that are written into
   * @param texts columns in which what is typed stays as typed: a serial number keeps its zeros
   * @param markWhere a formula over row 2: a filled row is marked where it is true; may be empty
   * @param codes columns whose texts are drawn as bar codes too, where pages can hold one
   * @param filter whether rows can be chosen by their values
   * @param about stands beside the sheet's name on a page; may be empty
   * @param picture drawings (SVG) above the table, or where pages have none below it; may be empty
   * @param caution stands on every page of the sheet; may be empty
   * @param bars the row from which on something else holds, and what: a bar across the sheet; the
   *     number of rows for one below them all
   * @param widthsMm how wide columns are printed, those that are not as wide as what they hold
   * @param rowMm how high a row to fill in is; 0 where it is as high as what it holds
   * @param onScreen columns, the last ones, that a workbook has to reckon with and no paper shows
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
      String picture,
      String caution,
      SortedMap<Integer, String> bars,
      Map<Integer, Integer> widthsMm,
      int rowMm,
      Set<Integer> onScreen) {
    /** Nothing but a table. */
    public static final Look PLAIN = printed("");

    /** A printed sheet of words. */
    public static Look printed(String title) {
      return new Parts(title).look();
    }

    /** The same with columns of numbers. */
    public Look withNumbers(Integer... columns) {
      return with(parts -> parts.numbers = Set.of(columns));
    }

    /** The same with columns that are written into. */
    public Look withToFill(Integer... columns) {
      return with(parts -> parts.toFill = Set.of(columns));
    }

    /** The same with columns that are written into, in which what is typed stays as typed. */
    public Look withTextToFill(Integer... columns) {
      return with(
          parts -> {
            parts.toFill = Set.of(columns);
            parts.texts = Set.of(columns);
          });
    }

    /** The same with what may be chosen in a column. */
    public Look withChoices(int column, List<String> any) {
      return with(parts -> parts.choices = Map.of(column, any));
    }

    /** The same with a formula over row 2 that marks a row. */
    public Look withMarkWhere(String formula) {
      return with(parts -> parts.markWhere = formula);
    }

    /** The same with the texts of a column as bar codes. */
    public Look withCodes(int column, BarCode code) {
      return with(parts -> parts.codes = Map.of(column, code));
    }

    /** The same with rows that can be chosen by their values. */
    public Look withFilter() {
      return with(parts -> parts.filter = true);
    }

    /** The same with words beside the sheet's name. */
    public Look withAbout(String words) {
      return with(parts -> parts.about = words);
    }

    /** The same with drawings beside the table. */
    public Look withPicture(String svg) {
      return with(parts -> parts.picture = svg);
    }

    /** The same with a caution on every page. */
    public Look withCaution(String words) {
      return with(parts -> parts.caution = words);
    }

    /** The same with bars across the sheet before some of its rows. */
    public Look withBars(SortedMap<Integer, String> words) {
      return with(parts -> parts.bars = words);
    }

    /** The same with rows of a height, and columns as wide as a hand or an eye needs them. */
    public Look withSizes(int heightMm, Map<Integer, Integer> columnsMm) {
      return with(
          parts -> {
            parts.rowMm = heightMm;
            parts.widthsMm = columnsMm;
          });
    }

    /** The same with last columns that no paper shows. */
    public Look withOnScreen(Integer... columns) {
      return with(parts -> parts.onScreen = Set.of(columns));
    }

    /** The look of some of all rows, from one on; a bar below the last one is of the last. */
    public Look from(int first, int rows, int all) {
      SortedMap<Integer, String> own = new TreeMap<>();
      int end = first + rows == all ? all + 1 : first + rows;
      bars.subMap(first, end).forEach((row, words) -> own.put(row - first, words));
      return withBars(own);
    }

    private Look with(Consumer<Parts> change) {
      Parts parts = new Parts(title);
      parts.numbers = numbers;
      parts.choices = choices;
      parts.toFill = toFill;
      parts.texts = texts;
      parts.markWhere = markWhere;
      parts.codes = codes;
      parts.filter = filter;
      parts.about = about;
      parts.picture = picture;
      parts.caution = caution;
      parts.bars = bars;
      parts.widthsMm = widthsMm;
      parts.rowMm = rowMm;
      parts.onScreen = onScreen;
      change.accept(parts);
      return parts.look();
    }
  }

  /** A look in the making. */
  private static final class Parts {
    private final String title;
    private Set<Integer> numbers = Set.of();
    private Map<Integer, List<String>> choices = Map.of();
    private Set<Integer> toFill = Set.of();
    private Set<Integer> texts = Set.of();
    private String markWhere = "";
    private Map<Integer, BarCode> codes = Map.of();
    private boolean filter;
    private String about = "";
    private String picture = "";
    private String caution = "";
    private SortedMap<Integer, String> bars = new TreeMap<>();
    private Map<Integer, Integer> widthsMm = Map.of();
    private int rowMm;
    private Set<Integer> onScreen = Set.of();

    private Parts(String title) {
      this.title = title;
    }

    private Look look() {
      return new Look(
          title,
          numbers,
          choices,
          toFill,
          texts,
          markWhere,
          codes,
          filter,
          about,
          picture,
          caution,
          Collections.unmodifiableSortedMap(new TreeMap<>(bars)),
          widthsMm,
          rowMm,
          onScreen);
    }
  }
}
