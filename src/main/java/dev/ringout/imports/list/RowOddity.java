package dev.ringout.imports.list;

import java.util.List;
import java.util.Optional;

/**
 * What is odd about a row, or about all rows of a table. Each kind holds its facts; the writers put
 * them into words.
 */
public sealed interface RowOddity extends Oddity {

  /** What is made of it, by its kind: a writer that lacks a kind does not compile. */
  <T> T match(Cases<T> cases);

  @Override
  default <T> T matchFamily(Oddity.Families<T> families) {
    return families.rowOddity(this);
  }

  /** A mark of a matrix and how often it stands there. */
  record Mark(String text, int times) {}

  /** A row is struck through. */
  record RowStruck() implements RowOddity {
    @Override
    public OddityKind kind() {
      return OddityKind.STRUCK;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.rowStruck(this);
    }
  }

  /** A row says that it is deleted. */
  record RowSaysDeleted() implements RowOddity {
    @Override
    public OddityKind kind() {
      return OddityKind.STRUCK;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.rowSaysDeleted(this);
    }
  }

  /** A row's ends are filled with a colour that the list explains as deleted. */
  record RowFilledAsDeleted(String legend) implements RowOddity {
    @Override
    public OddityKind kind() {
      return OddityKind.STRUCK;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.rowFilledAsDeleted(this);
    }
  }

  /** Some cells of rows, but not both ends, are filled with the colour explained as deleted. */
  record FilledAsDeletedInPart(String legend, List<Integer> rows) implements RowOddity {
    /** Keeps a copy of what is listed. */
    public FilledAsDeletedInPart {
      rows = List.copyOf(rows);
    }

    @Override
    public OddityKind kind() {
      return OddityKind.STRUCK;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.filledAsDeletedInPart(this);
    }
  }

  /** Some rows have a colour that the list does not explain. */
  record FillsNotExplained(List<Integer> rows, int ofRows) implements RowOddity {
    /** Keeps a copy of what is listed. */
    public FillsNotExplained {
      rows = List.copyOf(rows);
    }

    @Override
    public OddityKind kind() {
      return OddityKind.FILL;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.fillsNotExplained(this);
    }
  }

  /** A type or colour names several conductors of one cable. */
  record ConductorsOfCable(String written) implements RowOddity {
    @Override
    public OddityKind kind() {
      return OddityKind.SEVERAL;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.conductorsOfCable(this);
    }
  }

  /** A wire ends on no contact. */
  record StowedEnd(String written, String name) implements RowOddity {
    @Override
    public OddityKind kind() {
      return OddityKind.STOWED;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.stowedEnd(this);
    }
  }

  /** A pin has no item. */
  record PinWithoutItem(String pin) implements RowOddity {
    @Override
    public OddityKind kind() {
      return OddityKind.NO_END;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.pinWithoutItem(this);
    }
  }

  /** A row gives what a wire is, and neither of its ends. */
  record NoEnds() implements RowOddity {
    @Override
    public OddityKind kind() {
      return OddityKind.NO_END;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.noEnds(this);
    }
  }

  /** A wire has a number and no ends. */
  record NamedWireWithoutEnds(String wire) implements RowOddity {
    @Override
    public OddityKind kind() {
      return OddityKind.NO_END;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.namedWireWithoutEnds(this);
    }
  }

  /** A wire without a number has one end. */
  record NoOtherEnd() implements RowOddity {
    @Override
    public OddityKind kind() {
      return OddityKind.NO_END;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.noOtherEnd(this);
    }
  }

  /** A wire with a number has one end. */
  record NamedWireWithoutOtherEnd(String wire) implements RowOddity {
    @Override
    public OddityKind kind() {
      return OddityKind.NO_END;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.namedWireWithoutOtherEnd(this);
    }
  }

  /** A wire has a far end and no pin of the connector whose rows these are. */
  record NoPinHere(String farEnd) implements RowOddity {
    @Override
    public OddityKind kind() {
      return OddityKind.NO_END;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.noPinHere(this);
    }
  }

  /** A far end stands beside no pin and there is no sign of a wire. */
  record BesideNoPin(String farEnd) implements RowOddity {
    @Override
    public OddityKind kind() {
      return OddityKind.NO_END;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.besideNoPin(this);
    }
  }

  /** A terminal stands beside no conductor. */
  record NoConductor(String written) implements RowOddity {
    @Override
    public OddityKind kind() {
      return OddityKind.NO_END;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.noConductor(this);
    }
  }

  /** A table does not say where its wires go. */
  record FarEndsNotListed() implements RowOddity {
    @Override
    public OddityKind kind() {
      return OddityKind.NO_END;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.farEndsNotListed(this);
    }
  }

  /** A range of pins has one far end. */
  record RangeWithOneEnd(int pins) implements RowOddity {
    @Override
    public OddityKind kind() {
      return OddityKind.RANGE;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.rangeWithOneEnd(this);
    }
  }

  /** A text is read as a range of pins. */
  record ReadAsRange(String written, int pins) implements RowOddity {
    @Override
    public OddityKind kind() {
      return OddityKind.RANGE;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.readAsRange(this);
    }
  }

  /** One conductor lands on several terminals. */
  record OneConductorOnSeveral() implements RowOddity {
    @Override
    public OddityKind kind() {
      return OddityKind.SEVERAL;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.oneConductorOnSeveral(this);
    }
  }

  /** A cell lists several points. */
  record WireToEach() implements RowOddity {
    @Override
    public OddityKind kind() {
      return OddityKind.SEVERAL;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.wireToEach(this);
    }
  }

  /** Both ends list as many points. */
  record AsManyAtBothEnds() implements RowOddity {
    @Override
    public OddityKind kind() {
      return OddityKind.SEVERAL;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.asManyAtBothEnds(this);
    }
  }

  /** Both ends list points, and not as many. */
  record NotAsManyAtBothEnds() implements RowOddity {
    @Override
    public OddityKind kind() {
      return OddityKind.SEVERAL;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.notAsManyAtBothEnds(this);
    }
  }

  /** A row without a code, in a table that gives its items as codes. */
  record CodeMissing() implements RowOddity {
    @Override
    public OddityKind kind() {
      return OddityKind.CODE;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.codeMissing(this);
    }
  }

  /** The legend has no such code. */
  record CodeNotInLegend(String written) implements RowOddity {
    @Override
    public OddityKind kind() {
      return OddityKind.CODE;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.codeNotInLegend(this);
    }
  }

  /** A code does not name one item. */
  record CodeOfSeveral(String written) implements RowOddity {
    @Override
    public OddityKind kind() {
      return OddityKind.CODE;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.codeOfSeveral(this);
    }
  }

  /** A table gives pins and their names alone; by the heading of the names they could be joined. */
  record NamesWithoutWires(Optional<String> heading) implements RowOddity {
    @Override
    public OddityKind kind() {
      return OddityKind.NAMES;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.namesWithoutWires(this);
    }
  }

  /**
   * Each row is one net.
   *
   * @param star whether its wires run from the first point to each other
   */
  record RowsAreNets(boolean star) implements RowOddity {
    @Override
    public OddityKind kind() {
      return OddityKind.NAMES;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.rowsAreNets(this);
    }
  }

  /** A row that is one net has several names. */
  record RowOfSeveralNames(List<String> names) implements RowOddity {
    /** Keeps a copy of what is listed. */
    public RowOfSeveralNames {
      names = List.copyOf(names);
    }

    @Override
    public OddityKind kind() {
      return OddityKind.NAMES_DIFFER;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.rowOfSeveralNames(this);
    }
  }

  /** A text under the heading of several items does not say which it means. */
  record ItemUnclear(String written, String heading) implements RowOddity {
    @Override
    public OddityKind kind() {
      return OddityKind.NO_PIN;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.itemUnclear(this);
    }
  }

  /** A core of a cable that a word says is spare at both ends: no wire is made of it. */
  record SpareAtBothEnds(String wire) implements RowOddity {
    @Override
    public OddityKind kind() {
      return OddityKind.STOWED;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.spareAtBothEnds(this);
    }
  }

  /**
   * Pins of one item stand in two columns, with another item's between: two halves, or two ends.
   *
   * @param columns the letters of the two columns
   * @param second the letters of the columns to leave out while the first half is read
   */
  record HalvesSideBySide(String item, List<String> columns, List<String> second)
      implements RowOddity {
    /** Keeps a copy of what is listed. */
    public HalvesSideBySide {
      columns = List.copyOf(columns);
      second = List.copyOf(second);
    }

    @Override
    public OddityKind kind() {
      return OddityKind.IN_DOUBT;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.halvesSideBySide(this);
    }
  }

  /** A second column of one item, beside its first, is taken for other names of the same pins. */
  record SecondColumnOfItem(String item, String column) implements RowOddity {
    @Override
    public OddityKind kind() {
      return OddityKind.NOT_USED;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.secondColumnOfItem(this);
    }
  }

  /** A point stands in two rows that are two nets. */
  record InAnotherNet(String point, int otherRow) implements RowOddity {
    @Override
    public OddityKind kind() {
      return OddityKind.PIN_TWICE;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.inAnotherNet(this);
    }
  }

  /** Nobody has said which marks are wires. */
  record MarksNotTaken(List<Mark> marks, int sharedTerminals) implements RowOddity {
    /** Keeps a copy of what is listed. */
    public MarksNotTaken {
      marks = List.copyOf(marks);
    }

    @Override
    public OddityKind kind() {
      return OddityKind.MARKS;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.marksNotTaken(this);
    }
  }

  /** Terminals are marked by several devices. */
  record MarksShareTerminals(int sharedTerminals) implements RowOddity {
    @Override
    public OddityKind kind() {
      return OddityKind.MARKS;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.marksShareTerminals(this);
    }
  }

  /** Rows that are nets share names; they are not joined. */
  record NamesOnSeveralRows(String heading, List<String> names) implements RowOddity {
    /** Keeps a copy of what is listed. */
    public NamesOnSeveralRows {
      names = List.copyOf(names);
    }

    @Override
    public OddityKind kind() {
      return OddityKind.NAMES;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.namesOnSeveralRows(this);
    }
  }

  /** A row without a near end goes on from the point above. */
  record GoesOn(String from) implements RowOddity {
    @Override
    public OddityKind kind() {
      return OddityKind.CARRIED;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.goesOn(this);
    }
  }

  /** An end that the list itself leaves open: a question mark, "or", a range without its wires. */
  record EndInDoubt(String end) implements RowOddity {
    @Override
    public OddityKind kind() {
      return OddityKind.IN_DOUBT;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.endInDoubt(this);
    }
  }

  /** A row that stands for rows which are left out. */
  record RowsLeftOut(String row) implements RowOddity {
    @Override
    public OddityKind kind() {
      return OddityKind.IN_DOUBT;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.rowsLeftOut(this);
    }
  }

  /** A remark that may change the wire of its row. */
  record RemarkMayChange(String remark) implements RowOddity {
    @Override
    public OddityKind kind() {
      return OddityKind.IN_DOUBT;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.remarkMayChange(this);
    }
  }

  /** Two names with a stroke between, which may be two pins. */
  record TakenAsOnePin(String written) implements RowOddity {
    @Override
    public OddityKind kind() {
      return OddityKind.IN_DOUBT;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.takenAsOnePin(this);
    }
  }

  /** A point of which no net is told. */
  record PointWithoutNet(String point) implements RowOddity {
    @Override
    public OddityKind kind() {
      return OddityKind.IN_DOUBT;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.pointWithoutNet(this);
    }
  }

  /** Terminals that follow one another with the same mark in the column of bridges. */
  record BridgedByMarks(String terminals) implements RowOddity {
    @Override
    public OddityKind kind() {
      return OddityKind.IN_DOUBT;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.bridgedByMarks(this);
    }
  }

  /** A row that counts several wires. */
  record SeveralWires(String count) implements RowOddity {
    @Override
    public OddityKind kind() {
      return OddityKind.IN_DOUBT;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.severalWires(this);
    }
  }

  /** A row of a chain that names fewer points than the list has columns. */
  record PointsLeftOut(int points) implements RowOddity {
    @Override
    public OddityKind kind() {
      return OddityKind.NO_END;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.pointsLeftOut(this);
    }
  }

  /** A column of letters that may change a wire, which nothing explains. */
  record CodesUnexplained(String heading, List<String> codes) implements RowOddity {
    /** Keeps a copy of what is listed. */
    public CodesUnexplained {
      codes = List.copyOf(codes);
    }

    @Override
    public OddityKind kind() {
      return OddityKind.CODE;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.codesUnexplained(this);
    }
  }

  /** A row taken for a title, whose item does not lead it. */
  record TitleTaken(String title, String item) implements RowOddity {
    @Override
    public OddityKind kind() {
      return OddityKind.NAMES;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.titleTaken(this);
    }
  }

  /** A text alone between the wires, of which nothing is read. */
  record TitleNotRead(String title) implements RowOddity {
    @Override
    public OddityKind kind() {
      return OddityKind.NOT_USED;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.titleNotRead(this);
    }
  }

  /** Below a text between the wires the rows fill other columns than above: another table. */
  record OtherTableBelow(String title) implements RowOddity {
    @Override
    public OddityKind kind() {
      return OddityKind.IN_DOUBT;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.otherTableBelow(this);
    }
  }

  /** A row begins with a sign that takes rows out in files of text. */
  record TakenOut(String sign) implements RowOddity {
    @Override
    public OddityKind kind() {
      return OddityKind.IN_DOUBT;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.takenOut(this);
    }
  }

  /** A decimal comma without quotes has parted a number, and moved what stands behind it. */
  record PartedNumber(String number) implements RowOddity {
    @Override
    public OddityKind kind() {
      return OddityKind.IN_DOUBT;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.partedNumber(this);
    }
  }

  /** One cell names several cores, and no end of the row as many pins. */
  record SeveralCores(String cores) implements RowOddity {
    @Override
    public OddityKind kind() {
      return OddityKind.IN_DOUBT;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.severalCores(this);
    }
  }

  /**
   * What a writer makes of each kind.
   *
   * @param <T> what it makes
   */
  interface Cases<T> {

    /** A row taken for a title, whose item does not lead it. */
    T titleTaken(TitleTaken odd);

    /** A text alone between the wires, of which nothing is read. */
    T titleNotRead(TitleNotRead odd);

    T otherTableBelow(OtherTableBelow odd);

    /** A column of letters that may change a wire, which nothing explains. */
    T codesUnexplained(CodesUnexplained odd);

    /** A row of a chain that names fewer points than the list has columns. */
    T pointsLeftOut(PointsLeftOut odd);

    T rowStruck(RowStruck odd);

    T rowSaysDeleted(RowSaysDeleted odd);

    T rowFilledAsDeleted(RowFilledAsDeleted odd);

    T filledAsDeletedInPart(FilledAsDeletedInPart odd);

    T fillsNotExplained(FillsNotExplained odd);

    T conductorsOfCable(ConductorsOfCable odd);

    T stowedEnd(StowedEnd odd);

    T pinWithoutItem(PinWithoutItem odd);

    T noEnds(NoEnds odd);

    T namedWireWithoutEnds(NamedWireWithoutEnds odd);

    T noOtherEnd(NoOtherEnd odd);

    T namedWireWithoutOtherEnd(NamedWireWithoutOtherEnd odd);

    T noPinHere(NoPinHere odd);

    T besideNoPin(BesideNoPin odd);

    T noConductor(NoConductor odd);

    T farEndsNotListed(FarEndsNotListed odd);

    T rangeWithOneEnd(RangeWithOneEnd odd);

    T readAsRange(ReadAsRange odd);

    T oneConductorOnSeveral(OneConductorOnSeveral odd);

    T wireToEach(WireToEach odd);

    T asManyAtBothEnds(AsManyAtBothEnds odd);

    T notAsManyAtBothEnds(NotAsManyAtBothEnds odd);

    T codeMissing(CodeMissing odd);

    T codeNotInLegend(CodeNotInLegend odd);

    T codeOfSeveral(CodeOfSeveral odd);

    T namesWithoutWires(NamesWithoutWires odd);

    T rowsAreNets(RowsAreNets odd);

    T rowOfSeveralNames(RowOfSeveralNames odd);

    T itemUnclear(ItemUnclear odd);

    T spareAtBothEnds(SpareAtBothEnds odd);

    T halvesSideBySide(HalvesSideBySide odd);

    T secondColumnOfItem(SecondColumnOfItem odd);

    T inAnotherNet(InAnotherNet odd);

    T marksNotTaken(MarksNotTaken odd);

    T marksShareTerminals(MarksShareTerminals odd);

    T goesOn(GoesOn odd);

    T namesOnSeveralRows(NamesOnSeveralRows odd);

    T endInDoubt(EndInDoubt odd);

    T rowsLeftOut(RowsLeftOut odd);

    T remarkMayChange(RemarkMayChange odd);

    /** Terminals that follow one another with the same mark in the column of bridges. */
    T bridgedByMarks(BridgedByMarks odd);

    /** A point of which no net is told. */
    T pointWithoutNet(PointWithoutNet odd);

    /** Two names with a stroke between, which may be two pins. */
    T takenAsOnePin(TakenAsOnePin odd);

    T severalWires(SeveralWires odd);

    T takenOut(TakenOut odd);

    T partedNumber(PartedNumber odd);

    T severalCores(SeveralCores odd);
  }
}
