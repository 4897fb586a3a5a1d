package dev.ringout.imports.list;

import java.util.List;

/**
 * What is odd where the rows are put together: two ends, numbers, names and contacts. Each kind
 * holds its facts; the writers put them into words.
 */
public sealed interface WiringOddity extends Oddity {

  /** What is made of it, by its kind: a writer that lacks a kind does not compile. */
  <T> T match(Cases<T> cases);

  @Override
  default <T> T matchFamily(Oddity.Families<T> families) {
    return families.wiringOddity(this);
  }

  /** One run of a wire. */
  record Run(String from, String to) {}

  /** The rows of a wire's two ends give it another gauge, length or colour. */
  record RowsDisagree(String from, String to, Role role, String one, String other)
      implements WiringOddity {
    @Override
    public OddityKind kind() {
      return OddityKind.ENDS_DIFFER;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.rowsDisagree(this);
    }
  }

  /** The rows of a wire's two ends give it another number. */
  record NumbersDisagree(String from, String to, String one, String other) implements WiringOddity {
    @Override
    public OddityKind kind() {
      return OddityKind.ENDS_DIFFER;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.numbersDisagree(this);
    }
  }

  /** A wire goes to an item with a list of its own, and names no pin there. */
  record NoPinNamedThere(String from, String to, boolean otherWires, String meant)
      implements WiringOddity {
    @Override
    public OddityKind kind() {
      return otherWires ? OddityKind.ENDS_DIFFER : OddityKind.ONE_SIDED;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.noPinNamedThere(this);
    }
  }

  /** The far pin's own row names no wire. */
  record NoWireNamedThere(String from, String to, String meant) implements WiringOddity {
    @Override
    public OddityKind kind() {
      return OddityKind.ONE_SIDED;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.noWireNamedThere(this);
    }
  }

  /** The far pin's own row leads elsewhere. */
  record OtherEndNamedThere(String from, String to, List<String> says, String meant)
      implements WiringOddity {
    /** Keeps a copy of what is listed. */
    public OtherEndNamedThere {
      says = List.copyOf(says);
    }

    @Override
    public OddityKind kind() {
      return OddityKind.ENDS_DIFFER;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.otherEndNamedThere(this);
    }
  }

  /** The far item's own list has no such pin. */
  record PinNotListedThere(String from, String to, String item, String pin, String meant)
      implements WiringOddity {
    @Override
    public OddityKind kind() {
      return OddityKind.ONE_SIDED;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.pinNotListedThere(this);
    }
  }

  /** Many rows lead to a pin that no list has. */
  record ManyToUnlistedPin(int rows, String pin) implements WiringOddity {
    @Override
    public OddityKind kind() {
      return OddityKind.ONE_SIDED;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.manyToUnlistedPin(this);
    }
  }

  /** A wire number stands at one pin alone. */
  record NumberAtOnePin(String wire, String point) implements WiringOddity {
    @Override
    public OddityKind kind() {
      return OddityKind.ONE_SIDED;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.numberAtOnePin(this);
    }
  }

  /** A wire number stands at more than two pins. */
  record NumberAtSeveralPins(String wire, List<String> points) implements WiringOddity {
    /** Keeps a copy of what is listed. */
    public NumberAtSeveralPins {
      points = List.copyOf(points);
    }

    @Override
    public OddityKind kind() {
      return OddityKind.WIRE_TWICE;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.numberAtSeveralPins(this);
    }
  }

  /** Many wires share their number with another. */
  record NumbersOfCircuits(int sharing, int wires) implements WiringOddity {
    @Override
    public OddityKind kind() {
      return OddityKind.WIRE_TWICE;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.numbersOfCircuits(this);
    }
  }

  /** A wire number is used more than once; the first few are named. */
  record NumberUsedAgain(String wire, int times, List<Run> runs) implements WiringOddity {
    /** Keeps a copy of what is listed. */
    public NumberUsedAgain {
      runs = List.copyOf(runs);
    }

    @Override
    public OddityKind kind() {
      return OddityKind.WIRE_TWICE;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.numberUsedAgain(this);
    }
  }

  /** A pin of a connector's own list has several far ends; the first few are named. */
  record FarEndsOfPin(String point, int farEnds, List<String> first) implements WiringOddity {
    /** Keeps a copy of what is listed. */
    public FarEndsOfPin {
      first = List.copyOf(first);
    }

    @Override
    public OddityKind kind() {
      return OddityKind.PIN_TWICE;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.farEndsOfPin(this);
    }
  }

  /** A contact has several wires; the first few rows are named. */
  record WiresOfContact(String point, int wires, List<Integer> rows) implements WiringOddity {
    /** Keeps a copy of what is listed. */
    public WiresOfContact {
      rows = List.copyOf(rows);
    }

    @Override
    public OddityKind kind() {
      return OddityKind.PIN_TWICE;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.wiresOfContact(this);
    }
  }

  /** A wire runs from a point to itself. */
  record ToItself(String point) implements WiringOddity {
    @Override
    public OddityKind kind() {
      return OddityKind.PIN_TWICE;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.toItself(this);
    }
  }

  /** A spare point is listed more than once. */
  record ListedWithoutWire(String point) implements WiringOddity {
    @Override
    public OddityKind kind() {
      return OddityKind.PIN_TWICE;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.listedWithoutWire(this);
    }
  }

  /** Two rows without a number have the same ends. */
  record SameEnds(String from, String to, int otherRow) implements WiringOddity {
    @Override
    public OddityKind kind() {
      return OddityKind.DUPLICATE;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.sameEnds(this);
    }
  }

  /** Two rows have the same number and ends. */
  record SameWire(int otherRow) implements WiringOddity {
    @Override
    public OddityKind kind() {
      return OddityKind.DUPLICATE;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.sameWire(this);
    }
  }

  /** A gauge is none; kept as a note. */
  record GaugeNotTaken(String complaint, String meant) implements WiringOddity {
    @Override
    public OddityKind kind() {
      return OddityKind.GAUGE;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.gaugeNotTaken(this);
    }
  }

  /** A length is none; kept as a note. */
  record LengthNotTaken(String complaint, String meant) implements WiringOddity {
    @Override
    public OddityKind kind() {
      return OddityKind.LENGTH;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.lengthNotTaken(this);
    }
  }

  /**
   * The gauges of a list that are given without a unit; kept as notes.
   *
   * @param written the first of them
   * @param places their cells
   */
  record GaugesWithoutUnit(int cells, List<String> written, List<String> places)
      implements WiringOddity {
    /** What is given can't be changed afterwards. */
    public GaugesWithoutUnit {
      written = List.copyOf(written);
      places = List.copyOf(places);
    }

    @Override
    public List<String> gaugesWithoutUnit() {
      return written;
    }

    @Override
    public OddityKind kind() {
      return OddityKind.GAUGE;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.gaugesWithoutUnit(this);
    }
  }

  /**
   * The lengths of a list that are given without a unit; kept as notes.
   *
   * @param written the first of them
   * @param places their cells
   */
  record LengthsWithoutUnit(int cells, List<String> written, List<String> places)
      implements WiringOddity {
    /** What is given can't be changed afterwards. */
    public LengthsWithoutUnit {
      written = List.copyOf(written);
      places = List.copyOf(places);
    }

    @Override
    public List<String> lengthsWithoutUnit() {
      return written;
    }

    @Override
    public OddityKind kind() {
      return OddityKind.LENGTH;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.lengthsWithoutUnit(this);
    }
  }

  /** Two contacts differ by case alone. */
  record ContactsOfTwoCases(List<String> points) implements WiringOddity {
    /** Keeps a copy of what is listed. */
    public ContactsOfTwoCases {
      points = List.copyOf(points);
    }

    @Override
    public OddityKind kind() {
      return OddityKind.CASE_TWIN;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.contactsOfTwoCases(this);
    }
  }

  /** An item is written in two cases. */
  record ItemOfTwoCases(String written, String item) implements WiringOddity {
    @Override
    public OddityKind kind() {
      return OddityKind.CASE_TWIN;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.itemOfTwoCases(this);
    }
  }

  /** Titles begin with digits that far ends leave out. */
  record PrefixLeftOut(String prefix) implements WiringOddity {
    @Override
    public OddityKind kind() {
      return OddityKind.ALIAS;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.prefixLeftOut(this);
    }
  }

  /** A name is taken for an item's. */
  record TakenFor(String written, String item) implements WiringOddity {
    @Override
    public OddityKind kind() {
      return OddityKind.ALIAS;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.takenFor(this);
    }
  }

  /** Items differ in zeros alone. */
  record TwinItems(List<String> items) implements WiringOddity {
    /** Keeps a copy of what is listed. */
    public TwinItems {
      items = List.copyOf(items);
    }

    @Override
    public OddityKind kind() {
      return OddityKind.ALIAS;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.twinItems(this);
    }
  }

  /** An item without pins is one point. */
  record TakenAsOnePoint(String item, int times) implements WiringOddity {
    @Override
    public OddityKind kind() {
      return OddityKind.NO_PIN;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.takenAsOnePoint(this);
    }
  }

  /** Each wire has a terminal of its own at an item without pins. */
  record TerminalForEach(String item, int times) implements WiringOddity {
    @Override
    public OddityKind kind() {
      return OddityKind.NO_PIN;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.terminalForEach(this);
    }
  }

  /** An item is named without a pin, and elsewhere with one. */
  record PinElsewhere(String item) implements WiringOddity {
    @Override
    public OddityKind kind() {
      return OddityKind.NO_PIN;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.pinElsewhere(this);
    }
  }

  /** Ends are named once and without a pin. */
  record NamedOnceWithoutPin(int ends) implements WiringOddity {
    @Override
    public OddityKind kind() {
      return OddityKind.NO_PIN;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.namedOnceWithoutPin(this);
    }
  }

  /**
   * What a writer makes of each kind.
   *
   * @param <T> what it makes
   */
  interface Cases<T> {
    T rowsDisagree(RowsDisagree odd);

    T numbersDisagree(NumbersDisagree odd);

    T noPinNamedThere(NoPinNamedThere odd);

    T noWireNamedThere(NoWireNamedThere odd);

    T otherEndNamedThere(OtherEndNamedThere odd);

    T pinNotListedThere(PinNotListedThere odd);

    T manyToUnlistedPin(ManyToUnlistedPin odd);

    T numberAtOnePin(NumberAtOnePin odd);

    T numberAtSeveralPins(NumberAtSeveralPins odd);

    T numbersOfCircuits(NumbersOfCircuits odd);

    T numberUsedAgain(NumberUsedAgain odd);

    T farEndsOfPin(FarEndsOfPin odd);

    T wiresOfContact(WiresOfContact odd);

    T toItself(ToItself odd);

    T listedWithoutWire(ListedWithoutWire odd);

    T sameEnds(SameEnds odd);

    T sameWire(SameWire odd);

    T gaugeNotTaken(GaugeNotTaken odd);

    T lengthNotTaken(LengthNotTaken odd);

    T gaugesWithoutUnit(GaugesWithoutUnit odd);

    T lengthsWithoutUnit(LengthsWithoutUnit odd);

    T contactsOfTwoCases(ContactsOfTwoCases odd);

    T itemOfTwoCases(ItemOfTwoCases odd);

    T prefixLeftOut(PrefixLeftOut odd);

    T takenFor(TakenFor odd);

    T twinItems(TwinItems odd);

    T takenAsOnePoint(TakenAsOnePoint odd);

    T terminalForEach(TerminalForEach odd);

    T pinElsewhere(PinElsewhere odd);

    T namedOnceWithoutPin(NamedOnceWithoutPin odd);
  }
}
