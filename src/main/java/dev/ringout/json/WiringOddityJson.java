package dev.ringout.json;

import dev.ringout.imports.list.WiringOddity;
import java.util.Map;

/**
 * What is odd where the rows are put together: two ends, numbers, names and contacts, as facts by
 * their names.
 */
final class WiringOddityJson implements WiringOddity.Cases<Map<String, Object>> {

  @Override
  public Map<String, Object> rowsDisagree(WiringOddity.RowsDisagree odd) {
    return OddityFacts.of("rows-disagree")
        .with("from", odd.from())
        .with("to", odd.to())
        .with("role", odd.role().title())
        .with("one", odd.one())
        .with("other", odd.other())
        .map();
  }

  @Override
  public Map<String, Object> numbersDisagree(WiringOddity.NumbersDisagree odd) {
    return OddityFacts.of("numbers-disagree")
        .with("from", odd.from())
        .with("to", odd.to())
        .with("one", odd.one())
        .with("other", odd.other())
        .map();
  }

  @Override
  public Map<String, Object> noPinNamedThere(WiringOddity.NoPinNamedThere odd) {
    return OddityFacts.of("no-pin-named-there")
        .with("from", odd.from())
        .with("to", odd.to())
        .with("otherWires", odd.otherWires())
        .with("meant", odd.meant())
        .map();
  }

  @Override
  public Map<String, Object> noWireNamedThere(WiringOddity.NoWireNamedThere odd) {
    return OddityFacts.of("no-wire-named-there")
        .with("from", odd.from())
        .with("to", odd.to())
        .with("meant", odd.meant())
        .map();
  }

  @Override
  public Map<String, Object> otherEndNamedThere(WiringOddity.OtherEndNamedThere odd) {
    return OddityFacts.of("other-end-named-there")
        .with("from", odd.from())
        .with("to", odd.to())
        .with("says", odd.says())
        .with("meant", odd.meant())
        .map();
  }

  @Override
  public Map<String, Object> pinNotListedThere(WiringOddity.PinNotListedThere odd) {
    return OddityFacts.of("pin-not-listed-there")
        .with("from", odd.from())
        .with("to", odd.to())
        .with("item", odd.item())
        .with("pin", odd.pin())
        .with("meant", odd.meant())
        .map();
  }

  @Override
  public Map<String, Object> manyToUnlistedPin(WiringOddity.ManyToUnlistedPin odd) {
    return OddityFacts.of("many-to-unlisted-pin")
        .with("rows", odd.rows())
        .with("pin", odd.pin())
        .map();
  }

  @Override
  public Map<String, Object> numberAtOnePin(WiringOddity.NumberAtOnePin odd) {
    return OddityFacts.of("number-at-one-pin")
        .with("wire", odd.wire())
        .with("point", odd.point())
        .map();
  }

  @Override
  public Map<String, Object> numberAtSeveralPins(WiringOddity.NumberAtSeveralPins odd) {
    return OddityFacts.of("number-at-several-pins")
        .with("wire", odd.wire())
        .with("points", odd.points())
        .map();
  }

  @Override
  public Map<String, Object> numbersOfCircuits(WiringOddity.NumbersOfCircuits odd) {
    return OddityFacts.of("numbers-of-circuits")
        .with("sharing", odd.sharing())
        .with("wires", odd.wires())
        .map();
  }

  @Override
  public Map<String, Object> numberUsedAgain(WiringOddity.NumberUsedAgain odd) {
    return OddityFacts.of("number-used-again")
        .with("wire", odd.wire())
        .with("times", odd.times())
        .with(
            "runs",
            odd.runs().stream()
                .map(run -> OddityFacts.none().with("from", run.from()).with("to", run.to()).map())
                .toList())
        .map();
  }

  @Override
  public Map<String, Object> farEndsOfPin(WiringOddity.FarEndsOfPin odd) {
    return OddityFacts.of("far-ends-of-pin")
        .with("point", odd.point())
        .with("farEnds", odd.farEnds())
        .with("first", odd.first())
        .map();
  }

  @Override
  public Map<String, Object> wiresOfContact(WiringOddity.WiresOfContact odd) {
    return OddityFacts.of("wires-of-contact")
        .with("point", odd.point())
        .with("wires", odd.wires())
        .with("rows", odd.rows())
        .map();
  }

  @Override
  public Map<String, Object> toItself(WiringOddity.ToItself odd) {
    return OddityFacts.of("to-itself").with("point", odd.point()).map();
  }

  @Override
  public Map<String, Object> listedWithoutWire(WiringOddity.ListedWithoutWire odd) {
    return OddityFacts.of("listed-without-wire").with("point", odd.point()).map();
  }

  @Override
  public Map<String, Object> sameEnds(WiringOddity.SameEnds odd) {
    return OddityFacts.of("same-ends")
        .with("from", odd.from())
        .with("to", odd.to())
        .with("otherRow", odd.otherRow())
        .map();
  }

  @Override
  public Map<String, Object> sameWire(WiringOddity.SameWire odd) {
    return OddityFacts.of("same-wire").with("otherRow", odd.otherRow()).map();
  }

  @Override
  public Map<String, Object> gaugeNotTaken(WiringOddity.GaugeNotTaken odd) {
    return OddityFacts.of("gauge-not-taken")
        .with("complaint", odd.complaint())
        .with("meant", odd.meant())
        .map();
  }

  @Override
  public Map<String, Object> lengthNotTaken(WiringOddity.LengthNotTaken odd) {
    return OddityFacts.of("length-not-taken")
        .with("complaint", odd.complaint())
        .with("meant", odd.meant())
        .map();
  }

  @Override
  public Map<String, Object> gaugesNotTaken(WiringOddity.GaugesNotTaken odd) {
    return OddityFacts.of("gauges-not-taken")
        .with("cells", odd.cells())
        .with("complaint", odd.complaint())
        .with("column", odd.column())
        .with("meant", odd.meant())
        .map();
  }

  @Override
  public Map<String, Object> lengthsNotTaken(WiringOddity.LengthsNotTaken odd) {
    return OddityFacts.of("lengths-not-taken")
        .with("cells", odd.cells())
        .with("complaint", odd.complaint())
        .with("column", odd.column())
        .with("meant", odd.meant())
        .map();
  }

  @Override
  public Map<String, Object> contactsOfTwoCases(WiringOddity.ContactsOfTwoCases odd) {
    return OddityFacts.of("contacts-of-two-cases").with("points", odd.points()).map();
  }

  @Override
  public Map<String, Object> itemOfTwoCases(WiringOddity.ItemOfTwoCases odd) {
    return OddityFacts.of("item-of-two-cases")
        .with("written", odd.written())
        .with("item", odd.item())
        .map();
  }

  @Override
  public Map<String, Object> prefixLeftOut(WiringOddity.PrefixLeftOut odd) {
    return OddityFacts.of("prefix-left-out").with("prefix", odd.prefix()).map();
  }

  @Override
  public Map<String, Object> takenFor(WiringOddity.TakenFor odd) {
    return OddityFacts.of("taken-for")
        .with("written", odd.written())
        .with("item", odd.item())
        .map();
  }

  @Override
  public Map<String, Object> twinItems(WiringOddity.TwinItems odd) {
    return OddityFacts.of("twin-items").with("items", odd.items()).map();
  }

  @Override
  public Map<String, Object> takenAsOnePoint(WiringOddity.TakenAsOnePoint odd) {
    return OddityFacts.of("taken-as-one-point")
        .with("item", odd.item())
        .with("times", odd.times())
        .map();
  }

  @Override
  public Map<String, Object> terminalForEach(WiringOddity.TerminalForEach odd) {
    return OddityFacts.of("terminal-for-each")
        .with("item", odd.item())
        .with("times", odd.times())
        .map();
  }

  @Override
  public Map<String, Object> pinElsewhere(WiringOddity.PinElsewhere odd) {
    return OddityFacts.of("pin-elsewhere").with("item", odd.item()).map();
  }

  @Override
  public Map<String, Object> namedOnceWithoutPin(WiringOddity.NamedOnceWithoutPin odd) {
    return OddityFacts.of("named-once-without-pin").with("ends", odd.ends()).map();
  }
}
