package dev.ringout.imports.list;

import java.util.List;

/**
 * What is odd about a sheet, or about what was said of the list. Each kind holds its facts; the
 * writers put them into words.
 */
public sealed interface SheetOddity extends Oddity {

  /** What is made of it, by its kind: a writer that lacks a kind does not compile. */
  <T> T match(Cases<T> cases);

  @Override
  default <T> T matchFamily(Oddity.Families<T> families) {
    return families.sheetOddity(this);
  }

  /**
   * Two values for what there is one of in a list; the first is taken.
   *
   * @param fact its name in the header of a harness file
   */
  record HeaderDiffers(String fact, String taken, String other) implements SheetOddity {
    @Override
    public OddityKind kind() {
      return OddityKind.HEADER;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.headerDiffers(this);
    }
  }

  /** A file without wires. */
  record NoWires() implements SheetOddity {
    @Override
    public OddityKind kind() {
      return OddityKind.NO_WIRES;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.noWires(this);
    }
  }

  /** A table that can be read in several ways. */
  record Undecided(Layout first) implements SheetOddity {
    @Override
    public OddityKind kind() {
      return OddityKind.UNDECIDED;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.undecided(this);
    }
  }

  /** The user says of two columns that they are one and the same end. */
  record RoleSaidTwice(String role) implements SheetOddity {
    @Override
    public OddityKind kind() {
      return OddityKind.HEADING;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.roleSaidTwice(this);
    }
  }

  /** The user names an item that the list does not have. */
  record ItemNotFound(String item) implements SheetOddity {
    @Override
    public OddityKind kind() {
      return OddityKind.HEADING;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.itemNotFound(this);
    }
  }

  /** What the user says of a cell or a row that the list does not have. */
  record NothingCorrected(String option, String value) implements SheetOddity {
    @Override
    public OddityKind kind() {
      return OddityKind.HEADING;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.nothingCorrected(this);
    }
  }

  /** Cells are read as the user says. */
  record ReadAsSaid(String written, String meant, int cells) implements SheetOddity {
    @Override
    public OddityKind kind() {
      return OddityKind.ALIAS;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.readAsSaid(this);
    }
  }

  /** Cells of which nothing is made hold points. */
  record PointsUnused(int cells, List<String> places) implements SheetOddity {
    /** Keeps a copy of what is listed. */
    public PointsUnused {
      places = List.copyOf(places);
    }

    @Override
    public OddityKind kind() {
      return OddityKind.NOT_USED;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.pointsUnused(this);
    }
  }

  /** The user names a sheet or a table that the list does not have. */
  record SheetNotFound(String name) implements SheetOddity {
    @Override
    public OddityKind kind() {
      return OddityKind.HEADING;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.sheetNotFound(this);
    }
  }

  /** A sheet on which no table of wires is recognised. */
  record NoTable() implements SheetOddity {
    @Override
    public OddityKind kind() {
      return OddityKind.NO_WIRES;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.noTable(this);
    }
  }

  /** A table whose columns tell no wires. */
  record ColumnsWithoutWires(List<String> headings) implements SheetOddity {
    /** Keeps a copy of what is listed. */
    public ColumnsWithoutWires {
      headings = List.copyOf(headings);
    }

    @Override
    public OddityKind kind() {
      return OddityKind.NO_WIRES;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.columnsWithoutWires(this);
    }
  }

  /** A sheet is hidden. */
  record HiddenSheet() implements SheetOddity {
    @Override
    public OddityKind kind() {
      return OddityKind.HIDDEN;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.hiddenSheet(this);
    }
  }

  /** Rows are hidden. */
  record HiddenRows(List<Integer> rows) implements SheetOddity {
    /** Keeps a copy of what is listed. */
    public HiddenRows {
      rows = List.copyOf(rows);
    }

    @Override
    public OddityKind kind() {
      return OddityKind.HIDDEN;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.hiddenRows(this);
    }
  }

  /** Columns are hidden. */
  record HiddenColumns(List<String> columns) implements SheetOddity {
    /** Keeps a copy of what is listed. */
    public HiddenColumns {
      columns = List.copyOf(columns);
    }

    @Override
    public OddityKind kind() {
      return OddityKind.HIDDEN;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.hiddenColumns(this);
    }
  }

  /** A sheet has a filter. */
  record FilteredRows() implements SheetOddity {
    @Override
    public OddityKind kind() {
      return OddityKind.FILTERED;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.filteredRows(this);
    }
  }

  /** Merged cells hold for every row that they span. */
  record MergedCells(int cells) implements SheetOddity {
    @Override
    public OddityKind kind() {
      return OddityKind.MERGED;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.mergedCells(this);
    }
  }

  /** A cell has a comment. */
  record CellComment(String written) implements SheetOddity {
    @Override
    public OddityKind kind() {
      return OddityKind.COMMENT;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.cellComment(this);
    }
  }

  /** A cell is written in red. */
  record RedText(String written) implements SheetOddity {
    @Override
    public OddityKind kind() {
      return OddityKind.RED;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.redText(this);
    }
  }

  /** Many cells are written in red. */
  record MuchRedText(int cells) implements SheetOddity {
    @Override
    public OddityKind kind() {
      return OddityKind.RED;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.muchRedText(this);
    }
  }

  /** What a column is was said of a heading that no column has. */
  record ColumnNotFound(String heading) implements SheetOddity {
    @Override
    public OddityKind kind() {
      return OddityKind.HEADING;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.columnNotFound(this);
    }
  }

  /** Rows were to be joined by a heading that no column has. */
  record NameColumnNotFound(String heading) implements SheetOddity {
    @Override
    public OddityKind kind() {
      return OddityKind.HEADING;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.nameColumnNotFound(this);
    }
  }

  /** Rows above the headings are read like those below. */
  record RowsAboveRead(int rows) implements SheetOddity {
    @Override
    public OddityKind kind() {
      return OddityKind.HEADING;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.rowsAboveRead(this);
    }
  }

  /** A sheet that lists bridges, of which none is read. */
  record BridgesNotRead() implements SheetOddity {
    @Override
    public OddityKind kind() {
      return OddityKind.NO_WIRES;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.bridgesNotRead(this);
    }
  }

  /** A column that may change the wires is left out where the user says the layout alone. */
  record ColumnLeftOut(String heading, String letter) implements SheetOddity {
    @Override
    public OddityKind kind() {
      return OddityKind.HEADING;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.columnLeftOut(this);
    }
  }

  /** Columns are taken for ends by their cells alone where the user says the layout alone. */
  record ColumnsGuessed(List<String> columns) implements SheetOddity {
    /** Keeps a copy of what is listed. */
    public ColumnsGuessed {
      columns = List.copyOf(columns);
    }

    @Override
    public OddityKind kind() {
      return OddityKind.HEADING;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.columnsGuessed(this);
    }
  }

  /** What the cells say against the way to read a table that the user chose. */
  record SpeaksAgainst(List<Evidence> found) implements SheetOddity {
    /** Keeps a copy of what is listed. */
    public SpeaksAgainst {
      found = List.copyOf(found);
    }

    @Override
    public OddityKind kind() {
      return OddityKind.HEADING;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.speaksAgainst(this);
    }
  }

  /** The headings stand below each other in the first column. */
  record LiesOnItsSide(List<String> headings) implements SheetOddity {
    /** Keeps a copy of what is listed. */
    public LiesOnItsSide {
      headings = List.copyOf(headings);
    }

    @Override
    public OddityKind kind() {
      return OddityKind.NO_WIRES;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.liesOnItsSide(this);
    }
  }

  /** Headings below each other; each column of the sheet is read as a row. */
  record ReadOnItsSide(List<String> headings) implements SheetOddity {
    /** Keeps a copy of what is listed. */
    public ReadOnItsSide {
      headings = List.copyOf(headings);
    }

    @Override
    public OddityKind kind() {
      return OddityKind.HEADING;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.readOnItsSide(this);
    }
  }

  /**
   * What a writer makes of each kind.
   *
   * @param <T> what it makes
   */
  interface Cases<T> {

    /** A sheet that lists bridges, of which none is read. */
    T bridgesNotRead(BridgesNotRead odd);

    T liesOnItsSide(LiesOnItsSide odd);

    /** Headings below each other; each column of the sheet is read as a row. */
    T readOnItsSide(ReadOnItsSide odd);

    T columnLeftOut(ColumnLeftOut odd);

    T columnsGuessed(ColumnsGuessed odd);

    T speaksAgainst(SpeaksAgainst odd);

    /** Rows above the headings are read like those below. */
    T rowsAboveRead(RowsAboveRead odd);

    T headerDiffers(HeaderDiffers odd);

    T noWires(NoWires odd);

    T noTable(NoTable odd);

    T undecided(Undecided odd);

    T sheetNotFound(SheetNotFound odd);

    T pointsUnused(PointsUnused odd);

    T roleSaidTwice(RoleSaidTwice odd);

    T itemNotFound(ItemNotFound odd);

    T nothingCorrected(NothingCorrected odd);

    T readAsSaid(ReadAsSaid odd);

    T columnsWithoutWires(ColumnsWithoutWires odd);

    T hiddenSheet(HiddenSheet odd);

    T hiddenRows(HiddenRows odd);

    T hiddenColumns(HiddenColumns odd);

    T filteredRows(FilteredRows odd);

    T mergedCells(MergedCells odd);

    T cellComment(CellComment odd);

    T redText(RedText odd);

    T muchRedText(MuchRedText odd);

    T columnNotFound(ColumnNotFound odd);

    T nameColumnNotFound(NameColumnNotFound odd);
  }
}
