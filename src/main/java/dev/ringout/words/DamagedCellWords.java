package dev.ringout.words;

import dev.ringout.imports.list.DamagedCell;
import java.util.List;

/** What a spreadsheet or a hand has made of a cell, or what was cleaned of it, as a sentence. */
final class DamagedCellWords implements DamagedCell.Cases<OddityWords> {

  @Override
  public OddityWords madeBoolean(DamagedCell.MadeBoolean odd) {
    return OddityWords.of(
        "the spreadsheet changed this cell to " + odd.value(), odd.value().substring(0, 1));
  }

  @Override
  public OddityWords saysBoolean(DamagedCell.SaysBoolean odd) {
    return OddityWords.of(
        "the cell says " + odd.value() + "; a spreadsheet may have changed a letter to it",
        odd.value().substring(0, 1));
  }

  @Override
  public OddityWords errorValue(DamagedCell.ErrorValue odd) {
    return OddityWords.of("the cell holds the error " + odd.value());
  }

  @Override
  public OddityWords hashesAlone(DamagedCell.HashesAlone odd) {
    return OddityWords.of(
        "the cell shows "
            + odd.value()
            + " in place of what it held: its column was too narrow when the list was saved as text");
  }

  @Override
  public OddityWords noResult(DamagedCell.NoResult odd) {
    return OddityWords.of(
        "the cell holds a formula without a stored result; open and save it in a spreadsheet");
  }

  @Override
  public OddityWords madeTime(DamagedCell.MadeTime odd) {
    return OddityWords.of(
        "the spreadsheet changed this cell to a time (" + odd.value() + ")",
        either(odd.candidates()));
  }

  @Override
  public OddityWords madeDate(DamagedCell.MadeDate odd) {
    return OddityWords.of(
        "the spreadsheet changed this cell to a date ("
            + odd.value()
            + ")"
            + beside(odd.neighbours()),
        either(odd.candidates()));
  }

  @Override
  public OddityWords looksLikeDate(DamagedCell.LooksLikeDate odd) {
    return OddityWords.of(
        "\""
            + odd.value()
            + "\" looks like a date that a spreadsheet made"
            + beside(odd.neighbours()),
        either(odd.candidates()));
  }

  @Override
  public OddityWords hasMinus(DamagedCell.HasMinus odd) {
    return OddityWords.of(
        "the number " + odd.number() + " has a minus: a dash before a pin, or a polarity?",
        odd.number().substring(1));
  }

  @Override
  public OddityWords tooManyDigits(DamagedCell.TooManyDigits odd) {
    return OddityWords.of(
        "a spreadsheet keeps "
            + odd.digitsKept()
            + " digits of a number; the last of "
            + odd.number()
            + " may have become zeros");
  }

  @Override
  public OddityWords numberAmongNames(DamagedCell.NumberAmongNames odd) {
    return OddityWords.of(
        "the number "
            + odd.number()
            + " stands among names such as "
            + odd.name()
            + ": the spreadsheet has taken an E for an exponent",
        exponents(odd.candidates()));
  }

  @Override
  public OddityWords withExponent(DamagedCell.WithExponent odd) {
    return OddityWords.of(
        "\"" + odd.value() + "\" is a number with an exponent: a name with an E in it was lost",
        exponents(odd.candidates()));
  }

  @Override
  public OddityWords withFraction(DamagedCell.WithFraction odd) {
    return OddityWords.of(
        "the number "
            + odd.number()
            + " has a fraction; a zero at its end would be lost, and an E taken for an exponent",
        either(odd.candidates()));
  }

  @Override
  public OddityWords stepOfNeighbours(DamagedCell.StepOfNeighbours odd) {
    return OddityWords.of(
        "the number "
            + odd.number()
            + " continues its neighbours by the same step, as dragging a cell down does",
        either(odd.candidates()));
  }

  @Override
  public OddityWords gaugeCountsUp(DamagedCell.GaugeCountsUp odd) {
    return OddityWords.of(
        "the gauge "
            + odd.gauge()
            + " is one more than the row above, row after row: dragged down?",
        "the gauge of the first of these rows");
  }

  @Override
  public OddityWords zeroLost(DamagedCell.ZeroLost odd) {
    return OddityWords.of(
        "the number " + odd.number() + " stands among texts with leading zeros", odd.padded());
  }

  @Override
  public OddityWords struckInPart(DamagedCell.StruckInPart odd) {
    return OddityWords.of(
        "\"" + odd.written() + "\" is struck through in part; read as \"" + odd.left() + "\"");
  }

  @Override
  public OddityWords nothingAbove(DamagedCell.NothingAbove odd) {
    return OddityWords.of(
        "the mark "
            + odd.mark()
            + " says \"as above\", but nothing stands above that may be repeated");
  }

  @Override
  public OddityWords sharedByMark(DamagedCell.SharedByMark odd) {
    return OddityWords.of(
        "the mark "
            + odd.mark()
            + " under "
            + odd.heading()
            + ": two wires don't share it by a mark");
  }

  @Override
  public OddityWords blanksIgnored(DamagedCell.BlanksIgnored odd) {
    return OddityWords.of(
        "blanks that can't be seen were ignored: " + RowNumbers.named(odd.rows()));
  }

  @Override
  public OddityWords dashesMadePlain(DamagedCell.DashesMadePlain odd) {
    return OddityWords.of(
        "dashes or quotes of another kind were read as the plain ones: "
            + RowNumbers.named(odd.rows()));
  }

  @Override
  public OddityWords marksReadAsAbove(DamagedCell.MarksReadAsAbove odd) {
    return OddityWords.of("marks for \"as above\" were read so: " + RowNumbers.named(odd.rows()));
  }

  @Override
  public OddityWords blanksReadAsAbove(DamagedCell.BlanksReadAsAbove odd) {
    return OddityWords.of("blanks were read as the text above: " + RowNumbers.named(odd.rows()));
  }

  private static String either(List<String> candidates) {
    return String.join(" or ", candidates);
  }

  /** Names with an E that a spreadsheet reads as a number; any number of them make a zero. */
  private static String exponents(List<String> candidates) {
    return candidates.isEmpty() ? "0E0, 00E4 or the like" : either(candidates);
  }

  private static String beside(List<String> neighbours) {
    return neighbours.isEmpty() ? "" : "; its neighbours are " + String.join(" and ", neighbours);
  }
}
