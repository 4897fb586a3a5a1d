package dev.ringout.json;

import dev.ringout.imports.list.RowOddity;

/** What is odd about a row, or about all rows of a table, as facts by their names. */
final class RowOddityJson implements RowOddity.Cases<Reason> {

  @Override
  public Reason rowStruck(RowOddity.RowStruck odd) {
    return Reason.of("row-struck");
  }

  @Override
  public Reason rowSaysDeleted(RowOddity.RowSaysDeleted odd) {
    return Reason.of("row-says-deleted");
  }

  @Override
  public Reason rowFilledAsDeleted(RowOddity.RowFilledAsDeleted odd) {
    return Reason.of("row-filled-as-deleted").with("legend", odd.legend());
  }

  @Override
  public Reason filledAsDeletedInPart(RowOddity.FilledAsDeletedInPart odd) {
    return Reason.of("filled-as-deleted-in-part")
        .with("legend", odd.legend())
        .with("rows", odd.rows());
  }

  @Override
  public Reason fillsNotExplained(RowOddity.FillsNotExplained odd) {
    return Reason.of("fills-not-explained").with("rows", odd.rows()).with("ofRows", odd.ofRows());
  }

  @Override
  public Reason conductorsOfCable(RowOddity.ConductorsOfCable odd) {
    return Reason.of("conductors-of-cable").with("written", odd.written());
  }

  @Override
  public Reason stowedEnd(RowOddity.StowedEnd odd) {
    return Reason.of("stowed-end").with("written", odd.written()).with("name", odd.name());
  }

  @Override
  public Reason pinWithoutItem(RowOddity.PinWithoutItem odd) {
    return Reason.of("pin-without-item").with("pin", odd.pin());
  }

  @Override
  public Reason noEnds(RowOddity.NoEnds odd) {
    return Reason.of("no-ends");
  }

  @Override
  public Reason namedWireWithoutEnds(RowOddity.NamedWireWithoutEnds odd) {
    return Reason.of("named-wire-without-ends").with("wire", odd.wire());
  }

  @Override
  public Reason noOtherEnd(RowOddity.NoOtherEnd odd) {
    return Reason.of("no-other-end");
  }

  @Override
  public Reason namedWireWithoutOtherEnd(RowOddity.NamedWireWithoutOtherEnd odd) {
    return Reason.of("named-wire-without-other-end").with("wire", odd.wire());
  }

  @Override
  public Reason noPinHere(RowOddity.NoPinHere odd) {
    return Reason.of("no-pin-here").with("farEnd", odd.farEnd());
  }

  @Override
  public Reason besideNoPin(RowOddity.BesideNoPin odd) {
    return Reason.of("beside-no-pin").with("farEnd", odd.farEnd());
  }

  @Override
  public Reason noConductor(RowOddity.NoConductor odd) {
    return Reason.of("no-conductor").with("written", odd.written());
  }

  @Override
  public Reason farEndsNotListed(RowOddity.FarEndsNotListed odd) {
    return Reason.of("far-ends-not-listed");
  }

  @Override
  public Reason rangeWithOneEnd(RowOddity.RangeWithOneEnd odd) {
    return Reason.of("range-with-one-end").with("pins", odd.pins());
  }

  @Override
  public Reason readAsRange(RowOddity.ReadAsRange odd) {
    return Reason.of("read-as-range").with("written", odd.written()).with("pins", odd.pins());
  }

  @Override
  public Reason oneConductorOnSeveral(RowOddity.OneConductorOnSeveral odd) {
    return Reason.of("one-conductor-on-several");
  }

  @Override
  public Reason wireToEach(RowOddity.WireToEach odd) {
    return Reason.of("wire-to-each");
  }

  @Override
  public Reason asManyAtBothEnds(RowOddity.AsManyAtBothEnds odd) {
    return Reason.of("as-many-at-both-ends");
  }

  @Override
  public Reason notAsManyAtBothEnds(RowOddity.NotAsManyAtBothEnds odd) {
    return Reason.of("not-as-many-at-both-ends");
  }

  @Override
  public Reason codeMissing(RowOddity.CodeMissing odd) {
    return Reason.of("code-missing");
  }

  @Override
  public Reason codeNotInLegend(RowOddity.CodeNotInLegend odd) {
    return Reason.of("code-not-in-legend").with("written", odd.written());
  }

  @Override
  public Reason codeOfSeveral(RowOddity.CodeOfSeveral odd) {
    return Reason.of("code-of-several").with("written", odd.written());
  }

  @Override
  public Reason namesWithoutWires(RowOddity.NamesWithoutWires odd) {
    return Reason.of("names-without-wires").with("heading", odd.heading().orElse(""));
  }

  @Override
  public Reason rowsAreNets(RowOddity.RowsAreNets odd) {
    return Reason.of("rows-are-nets").with("star", odd.star());
  }

  @Override
  public Reason rowOfSeveralNames(RowOddity.RowOfSeveralNames odd) {
    return Reason.of("row-of-several-names").with("names", odd.names());
  }

  @Override
  public Reason itemUnclear(RowOddity.ItemUnclear odd) {
    return Reason.of("item-unclear").with("written", odd.written()).with("heading", odd.heading());
  }

  @Override
  public Reason spareAtBothEnds(RowOddity.SpareAtBothEnds odd) {
    return Reason.of("spare-at-both-ends").with("wire", odd.wire());
  }

  @Override
  public Reason halvesSideBySide(RowOddity.HalvesSideBySide odd) {
    return Reason.of("halves-side-by-side")
        .with("item", odd.item())
        .with("columns", odd.columns())
        .with("second", odd.second());
  }

  @Override
  public Reason secondColumnOfItem(RowOddity.SecondColumnOfItem odd) {
    return Reason.of("second-column-of-item").with("item", odd.item()).with("column", odd.column());
  }

  @Override
  public Reason inAnotherNet(RowOddity.InAnotherNet odd) {
    return Reason.of("in-another-net").with("point", odd.point()).with("otherRow", odd.otherRow());
  }

  @Override
  public Reason marksNotTaken(RowOddity.MarksNotTaken odd) {
    return Reason.of("marks-not-taken")
        .with(
            "marks",
            odd.marks().stream()
                .map(mark -> Json.object("mark", mark.text(), "times", mark.times()))
                .toList())
        .with("sharedTerminals", odd.sharedTerminals());
  }

  @Override
  public Reason marksShareTerminals(RowOddity.MarksShareTerminals odd) {
    return Reason.of("marks-share-terminals").with("sharedTerminals", odd.sharedTerminals());
  }

  @Override
  public Reason goesOn(RowOddity.GoesOn odd) {
    return Reason.of("goes-on").with("from", odd.from());
  }

  @Override
  public Reason namesOnSeveralRows(RowOddity.NamesOnSeveralRows odd) {
    return Reason.of("names-on-several-rows")
        .with("heading", odd.heading())
        .with("names", odd.names());
  }

  @Override
  public Reason endInDoubt(RowOddity.EndInDoubt odd) {
    return Reason.of("end-in-doubt").with("end", odd.end());
  }

  @Override
  public Reason takenOut(RowOddity.TakenOut odd) {
    return Reason.of("taken-out").with("sign", odd.sign());
  }

  @Override
  public Reason partedNumber(RowOddity.PartedNumber odd) {
    return Reason.of("parted-number").with("number", odd.number());
  }

  @Override
  public Reason severalCores(RowOddity.SeveralCores odd) {
    return Reason.of("several-cores").with("cores", odd.cores());
  }

  @Override
  public Reason rowsLeftOut(RowOddity.RowsLeftOut odd) {
    return Reason.of("rows-left-out").with("row", odd.row());
  }

  @Override
  public Reason remarkMayChange(RowOddity.RemarkMayChange odd) {
    return Reason.of("remark-may-change").with("remark", odd.remark());
  }

  @Override
  public Reason takenAsOnePin(RowOddity.TakenAsOnePin odd) {
    return Reason.of("taken-as-one-pin").with("written", odd.written());
  }

  @Override
  public Reason pointWithoutNet(RowOddity.PointWithoutNet odd) {
    return Reason.of("point-without-net").with("point", odd.point());
  }

  @Override
  public Reason bridgedByMarks(RowOddity.BridgedByMarks odd) {
    return Reason.of("bridged-by-marks").with("terminals", odd.terminals());
  }

  @Override
  public Reason severalWires(RowOddity.SeveralWires odd) {
    return Reason.of("several-wires").with("count", odd.count());
  }

  @Override
  public Reason pointsLeftOut(RowOddity.PointsLeftOut odd) {
    return Reason.of("points-left-out").with("points", odd.points());
  }

  @Override
  public Reason codesUnexplained(RowOddity.CodesUnexplained odd) {
    return Reason.of("codes-unexplained").with("heading", odd.heading()).with("codes", odd.codes());
  }

  @Override
  public Reason titleTaken(RowOddity.TitleTaken odd) {
    return Reason.of("title-taken").with("title", odd.title()).with("item", odd.item());
  }

  @Override
  public Reason titleNotRead(RowOddity.TitleNotRead odd) {
    return Reason.of("title-not-read").with("title", odd.title());
  }

  @Override
  public Reason otherTableBelow(RowOddity.OtherTableBelow odd) {
    return Reason.of("title-not-read").with("title", odd.title());
  }
}
