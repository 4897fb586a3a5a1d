package dev.ringout.words;

import dev.ringout.imports.list.SheetOddity;
import dev.ringout.units.Numbers;
import dev.ringout.units.Text;
import java.util.stream.Collectors;

/** What is odd about a sheet, or about what was said of the list, as a sentence. */
final class SheetOddityWords implements SheetOddity.Cases<OddityWords> {

  @Override
  public OddityWords noWires(SheetOddity.NoWires odd) {
    return OddityWords.of("no wires were found in this file; none were made up");
  }

  @Override
  public OddityWords noTable(SheetOddity.NoTable odd) {
    return OddityWords.of(
        "no table of wires is recognised here; if there is one, say what its columns are with --column");
  }

  @Override
  public OddityWords undecided(SheetOddity.Undecided odd) {
    return OddityWords.of(
        "it is not certain how this table tells its wires, so nothing is read: say which of the ways"
            + " shown is meant");
  }

  @Override
  public OddityWords sheetNotFound(SheetOddity.SheetNotFound odd) {
    return OddityWords.of(
        "no sheet and no table is called \"" + odd.name() + "\", which the options name");
  }

  @Override
  public OddityWords pointsUnused(SheetOddity.PointsUnused odd) {
    int more = odd.cells() - odd.places().size();
    return OddityWords.of(
        Numbers.count(odd.cells(), "cell")
            + (odd.cells() == 1 ? " names a point" : " name points")
            + " and "
            + (odd.cells() == 1 ? "is not used: " : "are not used: ")
            + String.join(", ", odd.places())
            + (more > 0 ? " and " + more + " more" : ""));
  }

  @Override
  public OddityWords columnsWithoutWires(SheetOddity.ColumnsWithoutWires odd) {
    return OddityWords.of("the columns " + String.join(", ", odd.headings()) + " tell no wires");
  }

  @Override
  public OddityWords hiddenSheet(SheetOddity.HiddenSheet odd) {
    return OddityWords.of("the sheet is hidden; it was read all the same");
  }

  @Override
  public OddityWords hiddenRows(SheetOddity.HiddenRows odd) {
    return OddityWords.of(
        Numbers.count(odd.rows().size(), "hidden row")
            + " were read like the others: "
            + RowNumbers.named(odd.rows()));
  }

  @Override
  public OddityWords hiddenColumns(SheetOddity.HiddenColumns odd) {
    return OddityWords.of(
        Numbers.count(odd.columns().size(), "hidden column")
            + " were read like the others: "
            + String.join(", ", odd.columns()));
  }

  @Override
  public OddityWords filteredRows(SheetOddity.FilteredRows odd) {
    return OddityWords.of("the sheet has a filter; every row was read, shown or not");
  }

  @Override
  public OddityWords mergedCells(SheetOddity.MergedCells odd) {
    return OddityWords.of(
        Numbers.count(odd.cells(), "merged cell") + " hold for every row that they span");
  }

  @Override
  public OddityWords cellComment(SheetOddity.CellComment odd) {
    return OddityWords.of("a comment says: \"" + odd.written() + "\"");
  }

  @Override
  public OddityWords redText(SheetOddity.RedText odd) {
    return OddityWords.of(
        "\"" + odd.written() + "\" is written in red: a change marked by hand? Read as it stands");
  }

  @Override
  public OddityWords muchRedText(SheetOddity.MuchRedText odd) {
    return OddityWords.of(odd.cells() + " cells are written in red: a red-line, or a decoration?");
  }

  @Override
  public OddityWords headerDiffers(SheetOddity.HeaderDiffers odd) {
    return OddityWords.of(
        Text.of(
            "a second %s, \"%s\"; \"%s\" is used%s",
            odd.fact(),
            odd.other(),
            odd.taken(),
            odd.fact().equals("revision") ? ", or say --revision \"" + odd.other() + "\"" : ""));
  }

  @Override
  public OddityWords columnNotFound(SheetOddity.ColumnNotFound odd) {
    return OddityWords.of("no column is headed \"" + odd.heading() + "\", which --column names");
  }

  @Override
  public OddityWords nameColumnNotFound(SheetOddity.NameColumnNotFound odd) {
    return OddityWords.of("no column is headed \"" + odd.heading() + "\", which --join-by names");
  }

  @Override
  public OddityWords roleSaidTwice(SheetOddity.RoleSaidTwice odd) {
    return OddityWords.of(
        "this column too is said to be " + odd.role() + ": one column is one end");
  }

  @Override
  public OddityWords itemNotFound(SheetOddity.ItemNotFound odd) {
    return OddityWords.of("no item is called \"" + odd.item() + "\", which --one-point names");
  }

  @Override
  public OddityWords nothingCorrected(SheetOddity.NothingCorrected odd) {
    return OddityWords.of(
        "\"" + odd.value() + "\", which --" + odd.option() + " names, is not in the list");
  }

  @Override
  public OddityWords readAsSaid(SheetOddity.ReadAsSaid odd) {
    return OddityWords.of(
        Numbers.count(odd.cells(), "cell")
            + " with \""
            + odd.written()
            + "\" read as \""
            + odd.meant()
            + "\", as you said");
  }

  @Override
  public OddityWords rowsAboveRead(SheetOddity.RowsAboveRead odd) {
    return OddityWords.of(
        Numbers.count(odd.rows(), "row")
            + " above the headings "
            + (odd.rows() == 1 ? "is" : "are")
            + " read like the rows below");
  }

  @Override
  public OddityWords bridgesNotRead(SheetOddity.BridgesNotRead odd) {
    return OddityWords.of(
        "this speaks of bridges, and none of it is read: say which column holds the joined terminals, as --column B=Bridge, or --layout none");
  }

  @Override
  public OddityWords liesOnItsSide(SheetOddity.LiesOnItsSide odd) {
    return OddityWords.of(
        "the headings ("
            + String.join(", ", odd.headings())
            + ") stand below each other: turn rows into columns, and import that");
  }

  @Override
  public OddityWords readOnItsSide(SheetOddity.ReadOnItsSide odd) {
    return OddityWords.of(
        "the headings ("
            + String.join(", ", odd.headings())
            + ") stand below each other: each column is read as a row, and --column A means row 1");
  }

  @Override
  public OddityWords columnLeftOut(SheetOddity.ColumnLeftOut odd) {
    return OddityWords.of(
        "the column "
            + odd.heading()
            + " may change what the wires are, and is not used so: say what it is, or leave it out"
            + " with --column "
            + odd.letter()
            + "=Keep");
  }

  @Override
  public OddityWords columnsGuessed(SheetOddity.ColumnsGuessed odd) {
    return OddityWords.of(
        "no heading says so, but these columns look like ends: "
            + String.join(", ", odd.columns())
            + "; --column says what each is");
  }

  @Override
  public OddityWords speaksAgainst(SheetOddity.SpeaksAgainst odd) {
    return OddityWords.of(
        "read as said, and yet "
            + odd.found().stream().map(HypothesisWords::evidence).collect(Collectors.joining("; "))
            + ": look at its wires");
  }
}
