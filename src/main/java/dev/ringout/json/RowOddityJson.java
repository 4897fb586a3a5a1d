package dev.ringout.json;

import dev.ringout.imports.list.RowOddity;
import java.util.Map;

/** What is odd about a row, or about all rows of a table, as facts by their names. */
final class RowOddityJson implements RowOddity.Cases<Map<String, Object>> {

  @Override
  public Map<String, Object> rowStruck(RowOddity.RowStruck odd) {
    return OddityFacts.of("row-struck").map();
  }

  @Override
  public Map<String, Object> rowSaysDeleted(RowOddity.RowSaysDeleted odd) {
    return OddityFacts.of("row-says-deleted").map();
  }

  @Override
  public Map<String, Object> conductorsOfCable(RowOddity.ConductorsOfCable odd) {
    return OddityFacts.of("conductors-of-cable").with("written", odd.written()).map();
  }

  @Override
  public Map<String, Object> stowedEnd(RowOddity.StowedEnd odd) {
    return OddityFacts.of("stowed-end")
        .with("written", odd.written())
        .with("name", odd.name())
        .map();
  }

  @Override
  public Map<String, Object> pinWithoutItem(RowOddity.PinWithoutItem odd) {
    return OddityFacts.of("pin-without-item").with("pin", odd.pin()).map();
  }

  @Override
  public Map<String, Object> noEnds(RowOddity.NoEnds odd) {
    return OddityFacts.of("no-ends").map();
  }

  @Override
  public Map<String, Object> namedWireWithoutEnds(RowOddity.NamedWireWithoutEnds odd) {
    return OddityFacts.of("named-wire-without-ends").with("wire", odd.wire()).map();
  }

  @Override
  public Map<String, Object> noOtherEnd(RowOddity.NoOtherEnd odd) {
    return OddityFacts.of("no-other-end").map();
  }

  @Override
  public Map<String, Object> namedWireWithoutOtherEnd(RowOddity.NamedWireWithoutOtherEnd odd) {
    return OddityFacts.of("named-wire-without-other-end").with("wire", odd.wire()).map();
  }

  @Override
  public Map<String, Object> noPinHere(RowOddity.NoPinHere odd) {
    return OddityFacts.of("no-pin-here").with("farEnd", odd.farEnd()).map();
  }

  @Override
  public Map<String, Object> besideNoPin(RowOddity.BesideNoPin odd) {
    return OddityFacts.of("beside-no-pin").with("farEnd", odd.farEnd()).map();
  }

  @Override
  public Map<String, Object> noConductor(RowOddity.NoConductor odd) {
    return OddityFacts.of("no-conductor").with("written", odd.written()).map();
  }

  @Override
  public Map<String, Object> farEndsNotListed(RowOddity.FarEndsNotListed odd) {
    return OddityFacts.of("far-ends-not-listed").map();
  }

  @Override
  public Map<String, Object> rangeWithOneEnd(RowOddity.RangeWithOneEnd odd) {
    return OddityFacts.of("range-with-one-end").with("pins", odd.pins()).map();
  }

  @Override
  public Map<String, Object> readAsRange(RowOddity.ReadAsRange odd) {
    return OddityFacts.of("read-as-range")
        .with("written", odd.written())
        .with("pins", odd.pins())
        .map();
  }

  @Override
  public Map<String, Object> oneConductorOnSeveral(RowOddity.OneConductorOnSeveral odd) {
    return OddityFacts.of("one-conductor-on-several").map();
  }

  @Override
  public Map<String, Object> wireToEach(RowOddity.WireToEach odd) {
    return OddityFacts.of("wire-to-each").map();
  }

  @Override
  public Map<String, Object> asManyAtBothEnds(RowOddity.AsManyAtBothEnds odd) {
    return OddityFacts.of("as-many-at-both-ends").map();
  }

  @Override
  public Map<String, Object> notAsManyAtBothEnds(RowOddity.NotAsManyAtBothEnds odd) {
    return OddityFacts.of("not-as-many-at-both-ends").map();
  }

  @Override
  public Map<String, Object> codeMissing(RowOddity.CodeMissing odd) {
    return OddityFacts.of("code-missing").map();
  }

  @Override
  public Map<String, Object> codeNotInLegend(RowOddity.CodeNotInLegend odd) {
    return OddityFacts.of("code-not-in-legend").with("written", odd.written()).map();
  }

  @Override
  public Map<String, Object> codeOfSeveral(RowOddity.CodeOfSeveral odd) {
    return OddityFacts.of("code-of-several").with("written", odd.written()).map();
  }

  @Override
  public Map<String, Object> namesWithoutWires(RowOddity.NamesWithoutWires odd) {
    return OddityFacts.of("names-without-wires").with("heading", odd.heading().orElse("")).map();
  }

  @Override
  public Map<String, Object> rowsAreNets(RowOddity.RowsAreNets odd) {
    return OddityFacts.of("rows-are-nets").map();
  }

  @Override
  public Map<String, Object> rowOfSeveralNames(RowOddity.RowOfSeveralNames odd) {
    return OddityFacts.of("row-of-several-names").with("names", odd.names()).map();
  }

  @Override
  public Map<String, Object> itemUnclear(RowOddity.ItemUnclear odd) {
    return OddityFacts.of("item-unclear")
        .with("written", odd.written())
        .with("heading", odd.heading())
        .map();
  }

  @Override
  public Map<String, Object> inAnotherNet(RowOddity.InAnotherNet odd) {
    return OddityFacts.of("in-another-net")
        .with("point", odd.point())
        .with("otherRow", odd.otherRow())
        .map();
  }

  @Override
  public Map<String, Object> marksNotTaken(RowOddity.MarksNotTaken odd) {
    return OddityFacts.of("marks-not-taken")
        .with(
            "marks",
            odd.marks().stream()
                .map(
                    mark ->
                        OddityFacts.none()
                            .with("mark", mark.text())
                            .with("times", mark.times())
                            .map())
                .toList())
        .with("sharedTerminals", odd.sharedTerminals())
        .map();
  }

  @Override
  public Map<String, Object> marksShareTerminals(RowOddity.MarksShareTerminals odd) {
    return OddityFacts.of("marks-share-terminals")
        .with("sharedTerminals", odd.sharedTerminals())
        .map();
  }
}
