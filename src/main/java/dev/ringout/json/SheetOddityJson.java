package dev.ringout.json;

import dev.ringout.imports.list.SheetOddity;

/** What is odd about a sheet, or about what was said of the list, as facts by their names. */
final class SheetOddityJson implements SheetOddity.Cases<Reason> {

  @Override
  public Reason noWires(SheetOddity.NoWires odd) {
    return Reason.of("no-wires");
  }

  @Override
  public Reason noTable(SheetOddity.NoTable odd) {
    return Reason.of("no-table");
  }

  @Override
  public Reason undecided(SheetOddity.Undecided odd) {
    return Reason.of("undecided").with("layout", odd.first().word());
  }

  @Override
  public Reason sheetNotFound(SheetOddity.SheetNotFound odd) {
    return Reason.of("sheet-not-found").with("name", odd.name());
  }

  @Override
  public Reason pointsUnused(SheetOddity.PointsUnused odd) {
    return Reason.of("points-unused").with("cells", odd.cells()).with("places", odd.places());
  }

  @Override
  public Reason columnsWithoutWires(SheetOddity.ColumnsWithoutWires odd) {
    return Reason.of("columns-without-wires").with("headings", odd.headings());
  }

  @Override
  public Reason hiddenSheet(SheetOddity.HiddenSheet odd) {
    return Reason.of("hidden-sheet");
  }

  @Override
  public Reason hiddenRows(SheetOddity.HiddenRows odd) {
    return Reason.of("hidden-rows").with("rows", odd.rows());
  }

  @Override
  public Reason hiddenColumns(SheetOddity.HiddenColumns odd) {
    return Reason.of("hidden-columns").with("columns", odd.columns());
  }

  @Override
  public Reason filteredRows(SheetOddity.FilteredRows odd) {
    return Reason.of("filtered-rows");
  }

  @Override
  public Reason mergedCells(SheetOddity.MergedCells odd) {
    return Reason.of("merged-cells").with("cells", odd.cells());
  }

  @Override
  public Reason cellComment(SheetOddity.CellComment odd) {
    return Reason.of("cell-comment").with("written", odd.written());
  }

  @Override
  public Reason redText(SheetOddity.RedText odd) {
    return Reason.of("red-text").with("written", odd.written());
  }

  @Override
  public Reason muchRedText(SheetOddity.MuchRedText odd) {
    return Reason.of("much-red-text").with("cells", odd.cells());
  }

  @Override
  public Reason headerDiffers(SheetOddity.HeaderDiffers odd) {
    return Reason.of("header-differs")
        .with("fact", odd.fact())
        .with("taken", odd.taken())
        .with("other", odd.other());
  }

  @Override
  public Reason columnNotFound(SheetOddity.ColumnNotFound odd) {
    return Reason.of("column-not-found").with("heading", odd.heading());
  }

  @Override
  public Reason nameColumnNotFound(SheetOddity.NameColumnNotFound odd) {
    return Reason.of("name-column-not-found").with("heading", odd.heading());
  }

  @Override
  public Reason roleSaidTwice(SheetOddity.RoleSaidTwice odd) {
    return Reason.of("role-said-twice").with("role", odd.role());
  }

  @Override
  public Reason nothingCorrected(SheetOddity.NothingCorrected odd) {
    return Reason.of("nothing-corrected").with("option", odd.option()).with("value", odd.value());
  }

  @Override
  public Reason readAsSaid(SheetOddity.ReadAsSaid odd) {
    return Reason.of("read-as-said")
        .with("written", odd.written())
        .with("meant", odd.meant())
        .with("cells", odd.cells());
  }

  @Override
  public Reason itemNotFound(SheetOddity.ItemNotFound odd) {
    return Reason.of("item-not-found").with("item", odd.item());
  }

  @Override
  public Reason rowsAboveRead(SheetOddity.RowsAboveRead odd) {
    return Reason.of("rows-above-read").with("rows", odd.rows());
  }

  @Override
  public Reason bridgesNotRead(SheetOddity.BridgesNotRead odd) {
    return Reason.of("bridges-not-read");
  }

  @Override
  public Reason liesOnItsSide(SheetOddity.LiesOnItsSide odd) {
    return Reason.of("lies-on-its-side").with("headings", odd.headings());
  }

  @Override
  public Reason readOnItsSide(SheetOddity.ReadOnItsSide odd) {
    return Reason.of("read-on-its-side").with("headings", odd.headings());
  }

  @Override
  public Reason columnLeftOut(SheetOddity.ColumnLeftOut odd) {
    return Reason.of("column-left-out").with("heading", odd.heading()).with("letter", odd.letter());
  }

  @Override
  public Reason columnsGuessed(SheetOddity.ColumnsGuessed odd) {
    return Reason.of("columns-guessed").with("columns", odd.columns());
  }

  @Override
  public Reason speaksAgainst(SheetOddity.SpeaksAgainst odd) {
    return Reason.of("speaks-against")
        .with("found", odd.found().stream().map(one -> one.kind().word()).toList());
  }
}
