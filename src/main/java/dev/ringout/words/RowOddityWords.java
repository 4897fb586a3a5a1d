package dev.ringout.words;

import dev.ringout.imports.list.RowOddity;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;

/** What is odd about a row, or about all rows of a table, as a sentence. */
final class RowOddityWords implements RowOddity.Cases<OddityWords> {

  @Override
  public OddityWords rowStruck(RowOddity.RowStruck odd) {
    return OddityWords.of("the row is struck through: taken as deleted");
  }

  @Override
  public OddityWords rowSaysDeleted(RowOddity.RowSaysDeleted odd) {
    return OddityWords.of("the row says that it is deleted");
  }

  @Override
  public OddityWords rowFilledAsDeleted(RowOddity.RowFilledAsDeleted odd) {
    return OddityWords.of(
        "the row is filled with the colour that the list explains as \""
            + odd.legend()
            + "\": taken as deleted");
  }

  @Override
  public OddityWords filledAsDeletedInPart(RowOddity.FilledAsDeletedInPart odd) {
    return OddityWords.of(
        "in "
            + RowNumbers.named(odd.rows())
            + " some cells are filled with the colour that the list explains as \""
            + odd.legend()
            + "\", but not both ends: read as they stand");
  }

  @Override
  public OddityWords fillsNotExplained(RowOddity.FillsNotExplained odd) {
    return OddityWords.of(
        odd.rows().size()
            + " of "
            + odd.ofRows()
            + " rows have cells filled with a colour that the list does not explain: "
            + RowNumbers.named(odd.rows())
            + "; read as they stand");
  }

  @Override
  public OddityWords conductorsOfCable(RowOddity.ConductorsOfCable odd) {
    return OddityWords.of("\"" + odd.written() + "\" is read as that many conductors of one cable");
  }

  @Override
  public OddityWords stowedEnd(RowOddity.StowedEnd odd) {
    return OddityWords.of(
        "\""
            + odd.written()
            + "\": the wire ends on no contact; its end is a point of its own, STOWED-"
            + odd.name());
  }

  @Override
  public OddityWords pinWithoutItem(RowOddity.PinWithoutItem odd) {
    return OddityWords.of("the pin " + odd.pin() + " has no item, and none stands above");
  }

  @Override
  public OddityWords noEnds(RowOddity.NoEnds odd) {
    return OddityWords.of("a wire without ends");
  }

  @Override
  public OddityWords namedWireWithoutEnds(RowOddity.NamedWireWithoutEnds odd) {
    return OddityWords.of("the wire " + odd.wire() + " has no ends");
  }

  @Override
  public OddityWords noOtherEnd(RowOddity.NoOtherEnd odd) {
    return OddityWords.of("the wire has no other end");
  }

  @Override
  public OddityWords namedWireWithoutOtherEnd(RowOddity.NamedWireWithoutOtherEnd odd) {
    return OddityWords.of("the wire " + odd.wire() + " has no other end; a spare one says SPARE");
  }

  @Override
  public OddityWords noPinHere(RowOddity.NoPinHere odd) {
    return OddityWords.of("a wire to " + odd.farEnd() + " without a pin here");
  }

  @Override
  public OddityWords besideNoPin(RowOddity.BesideNoPin odd) {
    return OddityWords.of(odd.farEnd() + " stands beside no pin: taken as not connected here");
  }

  @Override
  public OddityWords noConductor(RowOddity.NoConductor odd) {
    return OddityWords.of("\"" + odd.written() + "\" without a conductor");
  }

  @Override
  public OddityWords farEndsNotListed(RowOddity.FarEndsNotListed odd) {
    return OddityWords.of(
        "the list does not say where its wires go; each far end is a point of its own, named after"
            + " its pin");
  }

  @Override
  public OddityWords rangeWithOneEnd(RowOddity.RangeWithOneEnd odd) {
    return OddityWords.of(
        "a range of " + odd.pins() + " pins with one far end; which wire goes where?");
  }

  @Override
  public OddityWords readAsRange(RowOddity.ReadAsRange odd) {
    return OddityWords.of(
        "\"" + odd.written() + "\" is read as a range of " + odd.pins() + " pins");
  }

  @Override
  public OddityWords oneConductorOnSeveral(RowOddity.OneConductorOnSeveral odd) {
    return OddityWords.of(
        "one conductor on several terminals: read as a wire to the first, linked to the rest");
  }

  @Override
  public OddityWords wireToEach(RowOddity.WireToEach odd) {
    return OddityWords.of("several points in a cell: read as a wire to each");
  }

  @Override
  public OddityWords asManyAtBothEnds(RowOddity.AsManyAtBothEnds odd) {
    return OddityWords.of("as many points at both ends: read as one wire each, in their order");
  }

  @Override
  public OddityWords notAsManyAtBothEnds(RowOddity.NotAsManyAtBothEnds odd) {
    return OddityWords.of("several points at both ends, and not as many: which goes to which?");
  }

  @Override
  public OddityWords codeMissing(RowOddity.CodeMissing odd) {
    return OddityWords.of("the code is missing");
  }

  @Override
  public OddityWords codeNotInLegend(RowOddity.CodeNotInLegend odd) {
    return OddityWords.of("the legend has no code \"" + odd.written() + "\"");
  }

  @Override
  public OddityWords codeOfSeveral(RowOddity.CodeOfSeveral odd) {
    return OddityWords.of(
        "the code \"" + odd.written() + "\" does not name one item: which of them?");
  }

  @Override
  public OddityWords namesWithoutWires(RowOddity.NamesWithoutWires odd) {
    return OddityWords.of(
        "pins and their names, but no wires"
            + odd.heading()
                .map(
                    heading ->
                        "; to take pins of one name as joined, say --join-by \"" + heading + "\"")
                .orElse(""));
  }

  @Override
  public OddityWords rowsAreNets(RowOddity.RowsAreNets odd) {
    return OddityWords.of(
        "each row is taken as one net; its wires run "
            + (odd.star()
                ? "from its first point to each other"
                : "from item to item in the order of the columns"));
  }

  @Override
  public OddityWords rowOfSeveralNames(RowOddity.RowOfSeveralNames odd) {
    return OddityWords.of(
        "one row, but the names "
            + String.join(" and ", odd.names())
            + ": joined only where the name is the same; points without a name of their own are left out");
  }

  @Override
  public OddityWords itemUnclear(RowOddity.ItemUnclear odd) {
    return OddityWords.of(
        "\"" + odd.written() + "\" under \"" + odd.heading() + "\" does not say which item");
  }

  @Override
  public OddityWords spareAtBothEnds(RowOddity.SpareAtBothEnds odd) {
    return OddityWords.of(
        "wire " + odd.wire() + " is spare at both ends, as the list says: no wire is made of it");
  }

  @Override
  public OddityWords halvesSideBySide(RowOddity.HalvesSideBySide odd) {
    return OddityWords.of(
        "pins of "
            + odd.item()
            + " stand in the columns "
            + String.join(" and ", odd.columns())
            + ", with pins of another item between: two halves of a list side by side? No row is"
            + " read. Import one half at a time, without the columns of the other:"
            + odd.second().stream()
                .map(letter -> " --column " + letter + "=Keep")
                .collect(Collectors.joining()));
  }

  @Override
  public OddityWords secondColumnOfItem(RowOddity.SecondColumnOfItem odd) {
    return OddityWords.of(
        "column "
            + odd.column()
            + " is taken for other names of the pins of "
            + odd.item()
            + " and is not used; if they are more pins, this list is not read right");
  }

  @Override
  public OddityWords inAnotherNet(RowOddity.InAnotherNet odd) {
    return OddityWords.of(
        odd.point()
            + " is also in row "
            + odd.otherRow()
            + ", which is another net; not joined here");
  }

  @Override
  public OddityWords marksNotTaken(RowOddity.MarksNotTaken odd) {
    return OddityWords.of(
        "marks ("
            + odd.marks().stream()
                .map(mark -> mark.text() + " " + mark.times() + " times")
                .collect(Collectors.joining(", "))
            + ") may be wires, alternatives or types: nothing was joined. "
            + odd.sharedTerminals()
            + " terminals are marked by several devices. To take a mark as a wire, say --marks X");
  }

  @Override
  public OddityWords marksShareTerminals(RowOddity.MarksShareTerminals odd) {
    return OddityWords.of(
        odd.sharedTerminals()
            + " terminals are marked by several devices: their wires meet there, unless the devices are alternatives");
  }

  @Override
  public OddityWords goesOn(RowOddity.GoesOn odd) {
    return OddityWords.of("no near end is given: goes on from " + odd.from() + " above");
  }

  @Override
  public OddityWords namesOnSeveralRows(RowOddity.NamesOnSeveralRows odd) {
    return OddityWords.of(
        "these names stand on several rows, which are not joined: "
            + String.join(", ", odd.names())
            + "; if each is one net, say --join-by \""
            + odd.heading()
            + "\"");
  }

  /** What says on the command line what a cell means: the user writes the point. */
  private static String readAs(String text) {
    return readAs(text, "POINT");
  }

  private static String readAs(String text, String meant) {
    return "--read-as \"" + (text + "=" + meant).replace("\"", "\\\"") + "\"";
  }

  /** {@code D5 + D6 board}, {@code board D5 + D6}: what is said of one alone holds for each. */
  private static List<String> inFull(String... points) {
    String first = points[0];
    String last = points[points.length - 1];
    String before = first.substring(0, first.lastIndexOf(' ') + 1);
    String behind = last.indexOf(' ') < 0 ? "" : last.substring(last.indexOf(' '));
    boolean firstInWords = Arrays.stream(points).skip(1).noneMatch(point -> point.contains(" "));
    boolean lastInWords =
        Arrays.stream(points).limit(points.length - 1).noneMatch(point -> point.contains(" "));
    return Arrays.stream(points)
        .map(
            point ->
                point.contains(" ")
                    ? point
                    : (firstInWords ? before : "") + point + (lastInWords ? behind : ""))
        .toList();
  }

  /** The command as it may be meant, for what can be told: two points, or a name in words. */
  private static String asItMayBeMeant(String text) {
    String each =
        text.contains(" + ")
            ? "; each of them: " + readAs(text, String.join(" ; ", inFull(text.split(" \\+ ", -1))))
            : "";
    boolean name = text.matches("(?=.*\\p{L}{3}.*\\s)[^;?]*");
    return each + (name ? "; as it stands: " + readAs(text, text) : "");
  }

  @Override
  public OddityWords endInDoubt(RowOddity.EndInDoubt odd) {
    return OddityWords.of(
        "\""
            + odd.end()
            + "\" leaves open which point it is; write one point, or one row for each, or say what"
            + " it means: "
            + readAs(odd.end())
            + asItMayBeMeant(odd.end()));
  }

  @Override
  public OddityWords takenOut(RowOddity.TakenOut odd) {
    return OddityWords.of(
        "the row begins with "
            + odd.sign()
            + ", like a row that was taken out: delete the row, or the sign");
  }

  @Override
  public OddityWords partedNumber(RowOddity.PartedNumber odd) {
    return OddityWords.of(
        odd.number()
            + " may be one number that its comma split in two, so that all behind it moved by a column:"
            + " put such numbers in quotes, or write them with a point");
  }

  @Override
  public OddityWords severalCores(RowOddity.SeveralCores odd) {
    return OddityWords.of(
        "\"" + odd.cores() + "\" names several cores: write a row for each, or as many pins");
  }

  @Override
  public OddityWords rowsLeftOut(RowOddity.RowsLeftOut odd) {
    return OddityWords.of("\"" + odd.row() + "\" stands for rows that are left out: write each");
  }

  @Override
  public OddityWords remarkMayChange(RowOddity.RemarkMayChange odd) {
    return OddityWords.of(
        "the remark \""
            + odd.remark()
            + "\" may change this wire; the wire is read as its other cells say");
  }

  @Override
  public OddityWords takenAsOnePin(RowOddity.TakenAsOnePin odd) {
    return OddityWords.of(
        "it holds \""
            + odd.written()
            + "\", which is taken for one pin of two names; if these are two pins, give each a row");
  }

  @Override
  public OddityWords pointWithoutNet(RowOddity.PointWithoutNet odd) {
    return OddityWords.of("no net is given for " + odd.point() + "; it is listed without a wire");
  }

  @Override
  public OddityWords bridgedByMarks(RowOddity.BridgedByMarks odd) {
    return OddityWords.of("the marks of bridges are read as joining " + odd.terminals());
  }

  @Override
  public OddityWords severalWires(RowOddity.SeveralWires odd) {
    return OddityWords.of("the row gives a count of " + odd.count() + " and is read as one wire");
  }

  @Override
  public OddityWords pointsLeftOut(RowOddity.PointsLeftOut odd) {
    return OddityWords.of(
        "a point of the row is left out: its wires run between the "
            + odd.points()
            + " that are there");
  }

  @Override
  public OddityWords codesUnexplained(RowOddity.CodesUnexplained odd) {
    return OddityWords.of(
        (odd.heading().isEmpty()
                ? "what stands in this column without a heading"
                : "what stands under " + odd.heading())
            + " may change a wire, and the list does not say how: "
            + String.join(", ", odd.codes())
            + "; read as the rows stand");
  }

  @Override
  public OddityWords titleTaken(RowOddity.TitleTaken odd) {
    return OddityWords.of(
        "\"" + odd.title() + "\" is taken for a title: the rows below it are of " + odd.item());
  }

  @Override
  public OddityWords otherTableBelow(RowOddity.OtherTableBelow odd) {
    return OddityWords.of(
        "below \""
            + odd.title()
            + "\" the rows fill other columns than above, so they may be another table and its"
            + " headings: leave them out with --leave-out, and read them alone with --rows");
  }

  @Override
  public OddityWords titleNotRead(RowOddity.TitleNotRead odd) {
    return OddityWords.of(
        "\"" + odd.title() + "\" stands alone between the wires; they are read without it");
  }
}
