package dev.ringout.json;

import dev.ringout.imports.list.WiringOddity;

/**
 * What is odd where the rows are put together: two ends, numbers, names and contacts, as facts by
 * their names.
 */
final class WiringOddityJson implements WiringOddity.Cases<Reason> {

  @Override
  public Reason rowsDisagree(WiringOddity.RowsDisagree odd) {
    return Reason.of("rows-disagree")
        .with("from", odd.from())
        .with("to", odd.to())
        .with("role", odd.role().title())
        .with("one", odd.one())
        .with("other", odd.other());
  }

  @Override
  public Reason numbersDisagree(WiringOddity.NumbersDisagree odd) {
    return Reason.of("numbers-disagree")
        .with("from", odd.from())
        .with("to", odd.to())
        .with("one", odd.one())
        .with("other", odd.other());
  }

  @Override
  public Reason noPinNamedThere(WiringOddity.NoPinNamedThere odd) {
    return Reason.of("no-pin-named-there")
        .with("from", odd.from())
        .with("to", odd.to())
        .with("otherWires", odd.otherWires())
        .with("meant", odd.meant());
  }

  @Override
  public Reason noWireNamedThere(WiringOddity.NoWireNamedThere odd) {
    return Reason.of("no-wire-named-there")
        .with("from", odd.from())
        .with("to", odd.to())
        .with("meant", odd.meant());
  }

  @Override
  public Reason otherEndNamedThere(WiringOddity.OtherEndNamedThere odd) {
    return Reason.of("other-end-named-there")
        .with("from", odd.from())
        .with("to", odd.to())
        .with("says", odd.says())
        .with("meant", odd.meant());
  }

  @Override
  public Reason pinNotListedThere(WiringOddity.PinNotListedThere odd) {
    return Reason.of("pin-not-listed-there")
        .with("from", odd.from())
        .with("to", odd.to())
        .with("item", odd.item())
        .with("pin", odd.pin())
        .with("meant", odd.meant());
  }

  @Override
  public Reason manyToUnlistedPin(WiringOddity.ManyToUnlistedPin odd) {
    return Reason.of("many-to-unlisted-pin").with("rows", odd.rows()).with("pin", odd.pin());
  }

  @Override
  public Reason numberAtOnePin(WiringOddity.NumberAtOnePin odd) {
    return Reason.of("number-at-one-pin").with("wire", odd.wire()).with("point", odd.point());
  }

  @Override
  public Reason numberAtSeveralPins(WiringOddity.NumberAtSeveralPins odd) {
    return Reason.of("number-at-several-pins")
        .with("wire", odd.wire())
        .with("points", odd.points());
  }

  @Override
  public Reason numbersOfCircuits(WiringOddity.NumbersOfCircuits odd) {
    return Reason.of("numbers-of-circuits")
        .with("sharing", odd.sharing())
        .with("wires", odd.wires());
  }

  @Override
  public Reason numberUsedAgain(WiringOddity.NumberUsedAgain odd) {
    return Reason.of("number-used-again")
        .with("wire", odd.wire())
        .with("times", odd.times())
        .with(
            "runs",
            odd.runs().stream()
                .map(run -> Json.object("from", run.from(), "to", run.to()))
                .toList());
  }

  @Override
  public Reason farEndsOfPin(WiringOddity.FarEndsOfPin odd) {
    return Reason.of("far-ends-of-pin")
        .with("point", odd.point())
        .with("farEnds", odd.farEnds())
        .with("first", odd.first());
  }

  @Override
  public Reason wiresOfContact(WiringOddity.WiresOfContact odd) {
    return Reason.of("wires-of-contact")
        .with("point", odd.point())
        .with("wires", odd.wires())
        .with("rows", odd.rows());
  }

  @Override
  public Reason toItself(WiringOddity.ToItself odd) {
    return Reason.of("to-itself").with("point", odd.point());
  }

  @Override
  public Reason listedWithoutWire(WiringOddity.ListedWithoutWire odd) {
    return Reason.of("listed-without-wire").with("point", odd.point());
  }

  @Override
  public Reason sameEnds(WiringOddity.SameEnds odd) {
    return Reason.of("same-ends")
        .with("from", odd.from())
        .with("to", odd.to())
        .with("otherRow", odd.otherRow());
  }

  @Override
  public Reason sameWire(WiringOddity.SameWire odd) {
    return Reason.of("same-wire").with("otherRow", odd.otherRow());
  }

  @Override
  public Reason gaugeNotTaken(WiringOddity.GaugeNotTaken odd) {
    return Reason.of("gauge-not-taken")
        .with("complaint", odd.complaint())
        .with("meant", odd.meant());
  }

  @Override
  public Reason lengthNotTaken(WiringOddity.LengthNotTaken odd) {
    return Reason.of("length-not-taken")
        .with("complaint", odd.complaint())
        .with("meant", odd.meant());
  }

  @Override
  public Reason gaugesWithoutUnit(WiringOddity.GaugesWithoutUnit odd) {
    return Reason.of("gauges-without-unit")
        .with("cells", odd.cells())
        .with("written", odd.written())
        .with("places", odd.places());
  }

  @Override
  public Reason lengthsWithoutUnit(WiringOddity.LengthsWithoutUnit odd) {
    return Reason.of("lengths-without-unit")
        .with("cells", odd.cells())
        .with("written", odd.written())
        .with("places", odd.places());
  }

  @Override
  public Reason contactsOfTwoCases(WiringOddity.ContactsOfTwoCases odd) {
    return Reason.of("contacts-of-two-cases").with("points", odd.points());
  }

  @Override
  public Reason itemOfTwoCases(WiringOddity.ItemOfTwoCases odd) {
    return Reason.of("item-of-two-cases").with("written", odd.written()).with("item", odd.item());
  }

  @Override
  public Reason prefixLeftOut(WiringOddity.PrefixLeftOut odd) {
    return Reason.of("prefix-left-out").with("prefix", odd.prefix());
  }

  @Override
  public Reason takenFor(WiringOddity.TakenFor odd) {
    return Reason.of("taken-for").with("written", odd.written()).with("item", odd.item());
  }

  @Override
  public Reason twinItems(WiringOddity.TwinItems odd) {
    return Reason.of("twin-items").with("items", odd.items());
  }

  @Override
  public Reason takenAsOnePoint(WiringOddity.TakenAsOnePoint odd) {
    return Reason.of("taken-as-one-point").with("item", odd.item()).with("times", odd.times());
  }

  @Override
  public Reason terminalForEach(WiringOddity.TerminalForEach odd) {
    return Reason.of("terminal-for-each").with("item", odd.item()).with("times", odd.times());
  }

  @Override
  public Reason pinElsewhere(WiringOddity.PinElsewhere odd) {
    return Reason.of("pin-elsewhere").with("item", odd.item());
  }

  @Override
  public Reason namedOnceWithoutPin(WiringOddity.NamedOnceWithoutPin odd) {
    return Reason.of("named-once-without-pin").with("ends", odd.ends());
  }
}
