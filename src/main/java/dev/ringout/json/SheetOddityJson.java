package dev.ringout.json;

import dev.ringout.imports.list.SheetOddity;
import java.util.Map;

/** What is odd about a sheet, or about what was said of the list, as facts by their names. */
final class SheetOddityJson implements SheetOddity.Cases<Map<String, Object>> {

  @Override
  public Map<String, Object> noWires(SheetOddity.NoWires odd) {
    return OddityFacts.of("no-wires").map();
  }

  @Override
  public Map<String, Object> noTable(SheetOddity.NoTable odd) {
    return OddityFacts.of("no-table").map();
  }

  @Override
  public Map<String, Object> columnsWithoutWires(SheetOddity.ColumnsWithoutWires odd) {
    return OddityFacts.of("columns-without-wires").with("headings", odd.headings()).map();
  }

  @Override
  public Map<String, Object> hiddenSheet(SheetOddity.HiddenSheet odd) {
    return OddityFacts.of("hidden-sheet").map();
  }

  @Override
  public Map<String, Object> hiddenRows(SheetOddity.HiddenRows odd) {
    return OddityFacts.of("hidden-rows").with("rows", odd.rows()).map();
  }

  @Override
  public Map<String, Object> hiddenColumns(SheetOddity.HiddenColumns odd) {
    return OddityFacts.of("hidden-columns").with("columns", odd.columns()).map();
  }

  @Override
  public Map<String, Object> filteredRows(SheetOddity.FilteredRows odd) {
    return OddityFacts.of("filtered-rows").map();
  }

  @Override
  public Map<String, Object> mergedCells(SheetOddity.MergedCells odd) {
    return OddityFacts.of("merged-cells").with("cells", odd.cells()).map();
  }

  @Override
  public Map<String, Object> cellComment(SheetOddity.CellComment odd) {
    return OddityFacts.of("cell-comment").with("written", odd.written()).map();
  }

  @Override
  public Map<String, Object> redText(SheetOddity.RedText odd) {
    return OddityFacts.of("red-text").with("written", odd.written()).map();
  }

  @Override
  public Map<String, Object> muchRedText(SheetOddity.MuchRedText odd) {
    return OddityFacts.of("much-red-text").with("cells", odd.cells()).map();
  }

  @Override
  public Map<String, Object> columnNotFound(SheetOddity.ColumnNotFound odd) {
    return OddityFacts.of("column-not-found").with("heading", odd.heading()).map();
  }

  @Override
  public Map<String, Object> nameColumnNotFound(SheetOddity.NameColumnNotFound odd) {
    return OddityFacts.of("name-column-not-found").with("heading", odd.heading()).map();
  }
}
