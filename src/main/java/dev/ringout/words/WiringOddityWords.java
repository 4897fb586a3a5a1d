package dev.ringout.words;

import dev.ringout.imports.list.WiringOddity;
import dev.ringout.units.Numbers;
import dev.ringout.units.Text;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/**
 * What is odd where the rows are put together: two ends, numbers, names and contacts, as a
 * sentence.
 */
final class WiringOddityWords implements WiringOddity.Cases<OddityWords> {

  @Override
  public OddityWords rowsDisagree(WiringOddity.RowsDisagree odd) {
    return OddityWords.of(
        odd.from()
            + " to "
            + odd.to()
            + ": "
            + odd.role().title().toLowerCase(Locale.ROOT)
            + " is "
            + odd.one()
            + " in one row and "
            + odd.other()
            + " in the other");
  }

  @Override
  public OddityWords numbersDisagree(WiringOddity.NumbersDisagree odd) {
    return OddityWords.of(
        odd.from()
            + " to "
            + odd.to()
            + ": the wire is "
            + odd.one()
            + " in one row and "
            + odd.other()
            + " in the other");
  }

  @Override
  public OddityWords noPinNamedThere(WiringOddity.NoPinNamedThere odd) {
    return OddityWords.of(
        odd.from() + " goes to " + odd.to() + ", but it names no pin there", odd.meant());
  }

  @Override
  public OddityWords noWireNamedThere(WiringOddity.NoWireNamedThere odd) {
    return OddityWords.of(
        odd.from() + " goes to " + odd.to() + ", but " + odd.to() + "'s own row names no wire",
        odd.meant());
  }

  @Override
  public OddityWords otherEndNamedThere(WiringOddity.OtherEndNamedThere odd) {
    return OddityWords.of(
        odd.from()
            + " goes to "
            + odd.to()
            + ", but "
            + odd.to()
            + "'s own row says "
            + String.join(", ", odd.says()),
        odd.meant());
  }

  @Override
  public OddityWords pinNotListedThere(WiringOddity.PinNotListedThere odd) {
    return OddityWords.of(
        odd.from()
            + " goes to "
            + odd.to()
            + ", but "
            + odd.item()
            + "'s own list has no pin "
            + odd.pin(),
        odd.meant());
  }

  @Override
  public OddityWords manyToUnlistedPin(WiringOddity.ManyToUnlistedPin odd) {
    return OddityWords.of(
        odd.rows()
            + " rows lead to a pin "
            + odd.pin()
            + " that the other connector's own list does not have: a mark of another kind? Kept as points");
  }

  @Override
  public OddityWords numberAtOnePin(WiringOddity.NumberAtOnePin odd) {
    return OddityWords.of(
        "the wire " + odd.wire() + " ends at " + odd.point() + "; no other pin has its number");
  }

  @Override
  public OddityWords numberAtSeveralPins(WiringOddity.NumberAtSeveralPins odd) {
    return OddityWords.of(
        "the wire number "
            + odd.wire()
            + " stands at "
            + odd.points().size()
            + " pins ("
            + String.join(", ", odd.points())
            + "): read as a chain of wires in their order; one wire has two ends");
  }

  @Override
  public OddityWords numbersOfCircuits(WiringOddity.NumbersOfCircuits odd) {
    return OddityWords.of(
        odd.sharing()
            + " of "
            + odd.wires()
            + " wires share their number with another: are these numbers of circuits or nets rather than of wires?");
  }

  @Override
  public OddityWords numberUsedAgain(WiringOddity.NumberUsedAgain odd) {
    return OddityWords.of(
        "the wire number "
            + odd.wire()
            + " is used "
            + odd.times()
            + " times: "
            + odd.runs().stream()
                .map(run -> run.from() + " to " + run.to())
                .collect(Collectors.joining(", ")));
  }

  @Override
  public OddityWords farEndsOfPin(WiringOddity.FarEndsOfPin odd) {
    return OddityWords.of(
        odd.point() + " has " + odd.farEnds() + " far ends: " + String.join(", ", odd.first()));
  }

  @Override
  public OddityWords wiresOfContact(WiringOddity.WiresOfContact odd) {
    return OddityWords.of(
        odd.point()
            + " has "
            + odd.wires()
            + " wires ("
            + odd.rows().stream().map(row -> "row " + row).collect(Collectors.joining(", "))
            + "): one contact takes one wire, unless both are crimped in it");
  }

  @Override
  public OddityWords toItself(WiringOddity.ToItself odd) {
    return OddityWords.of("a wire from " + odd.point() + " to itself; left out");
  }

  @Override
  public OddityWords listedWithoutWire(WiringOddity.ListedWithoutWire odd) {
    return OddityWords.of(odd.point() + " is listed more than once, without a wire");
  }

  @Override
  public OddityWords sameEnds(WiringOddity.SameEnds odd) {
    return OddityWords.of(
        odd.from()
            + " to "
            + odd.to()
            + " stands in row "
            + odd.otherRow()
            + " too: two wires, or one row twice? Kept");
  }

  @Override
  public OddityWords sameWire(WiringOddity.SameWire odd) {
    return OddityWords.of("the same wire and ends as row " + odd.otherRow() + "; read once");
  }

  @Override
  public OddityWords gaugeNotTaken(WiringOddity.GaugeNotTaken odd) {
    return OddityWords.of(odd.complaint() + "; kept as a note", odd.meant());
  }

  @Override
  public OddityWords lengthNotTaken(WiringOddity.LengthNotTaken odd) {
    return OddityWords.of(odd.complaint() + "; kept as a note", odd.meant());
  }

  @Override
  public OddityWords gaugesWithoutUnit(WiringOddity.GaugesWithoutUnit odd) {
    return OddityWords.of(
        withoutUnit("gauge", odd.cells(), odd.written(), odd.places())
            + "--gauge-unit mm2, or --gauge-unit AWG; until then kept as "
            + (odd.cells() == 1 ? "a note" : "notes"));
  }

  @Override
  public OddityWords lengthsWithoutUnit(WiringOddity.LengthsWithoutUnit odd) {
    return OddityWords.of(
        withoutUnit("length", odd.cells(), odd.written(), odd.places())
            + "--length-unit mm, or cm, m, in, ft; until then kept as "
            + (odd.cells() == 1 ? "a note" : "notes"));
  }

  @Override
  public OddityWords contactsOfTwoCases(WiringOddity.ContactsOfTwoCases odd) {
    return OddityWords.of(
        String.join(" and ", odd.points()) + " are two contacts: a capital is not a small letter");
  }

  @Override
  public OddityWords itemOfTwoCases(WiringOddity.ItemOfTwoCases odd) {
    return OddityWords.of("\"" + odd.written() + "\" and \"" + odd.item() + "\" are one item");
  }

  @Override
  public OddityWords prefixLeftOut(WiringOddity.PrefixLeftOut odd) {
    return OddityWords.of(
        "the titles begin with "
            + odd.prefix()
            + ", which far ends leave out: left out throughout");
  }

  @Override
  public OddityWords takenFor(WiringOddity.TakenFor odd) {
    return OddityWords.of("\"" + odd.written() + "\" is taken for " + odd.item());
  }

  @Override
  public OddityWords twinItems(WiringOddity.TwinItems odd) {
    return OddityWords.of(String.join(" and ", odd.items()) + " are taken as different items");
  }

  @Override
  public OddityWords takenAsOnePoint(WiringOddity.TakenAsOnePoint odd) {
    return OddityWords.of(
        odd.item() + " is named " + odd.times() + " times without a pin: taken as one point");
  }

  @Override
  public OddityWords terminalForEach(WiringOddity.TerminalForEach odd) {
    return OddityWords.of(
        odd.item()
            + " is named "
            + odd.times()
            + " times without a pin: each wire has a terminal of its own there (?1 to ?"
            + odd.times()
            + "). If it is one point, say --one-point \""
            + odd.item()
            + "\"; for every such item --one-point all");
  }

  @Override
  public OddityWords pinElsewhere(WiringOddity.PinElsewhere odd) {
    return OddityWords.of(odd.item() + " has no pin here, and has one elsewhere");
  }

  @Override
  public OddityWords namedOnceWithoutPin(WiringOddity.NamedOnceWithoutPin odd) {
    return OddityWords.of(
        odd.ends()
            + " ends are named once and without a pin; each has one terminal, written \"?\"");
  }

  /** {@code 9 lengths have no unit: "12" (H2), "13" (H3) and 7 more; give it once for all: }. */
  private static String withoutUnit(
      String thing, int cells, List<String> written, List<String> places) {
    List<String> first = new ArrayList<>();
    for (int i = 0; i < Math.min(written.size(), places.size()); i++) {
      first.add("\"" + written.get(i) + "\" (" + places.get(i) + ")");
    }
    String more = cells > first.size() ? " and " + (cells - first.size()) + " more" : "";
    return Text.of(
        "%s %s no unit: %s%s; give it once for all with ",
        Numbers.count(cells, thing), cells == 1 ? "has" : "have", String.join(", ", first), more);
  }
}
