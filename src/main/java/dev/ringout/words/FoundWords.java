package dev.ringout.words;

import dev.ringout.harness.Point;
import dev.ringout.harness.Wire;
import dev.ringout.units.Text;
import dev.ringout.work.FoundWire;
import java.util.List;
import java.util.stream.Collectors;

/** What is to be said of a wire found on a point. */
public final class FoundWords {
  private FoundWords() {}

  /** What most likely happened. */
  public static String slip(FoundWire found) {
    String name = found.wire().name();
    String here = found.here().map(Point::toString).orElse("");
    String instead = found.instead().map(Point::toString).orElse("");
    return switch (found.slip()) {
      case NONE -> Text.of("%s belongs on %s.", name, here);
      case NEIGHBOUR -> Text.of("%s belongs in %s: it is one cavity over.", name, instead);
      case LOOK_ALIKE ->
          Text.of("%s belongs in %s, which looks like %s in writing.", name, instead, here);
      case SAME_ITEM -> Text.of("%s belongs in %s of the same item.", name, instead);
      case OTHER_ITEM_SAME_PIN ->
          Text.of(
              "%s belongs in %s, the same cavity of another item: the plugs or their labels may be"
                  + " exchanged.",
              name, instead);
      case OTHER_ITEM ->
          Text.of(
              "%s has no end at %s: it goes from %s to %s. Its number may be misread.",
              name,
              found.here().map(Point::ref).orElse(""),
              found.belongs().get(0),
              found.belongs().get(1));
      case NOT_SAID ->
          Text.of("%s belongs on %s and %s.", name, found.belongs().get(0), found.belongs().get(1));
    };
  }

  /** A wire as one finds it: number, colour, gauge, ends, signal. */
  public static String wire(Wire wire) {
    List<String> words =
        List.of(
            wire.name() + (wire.colour().isEmpty() ? "" : " " + wire.colour()),
            wire.gaugeLabel(),
            wire.from() + " to " + wire.to(),
            wire.signal());
    return words.stream().filter(word -> !word.isEmpty()).collect(Collectors.joining(", "));
  }

  /** Who belongs on the point. */
  public static String there(FoundWire found) {
    String here = found.here().map(Point::toString).orElse("");
    return found.listedHere().isEmpty()
        ? here + " should have no wire: it is empty, or has a jumper only."
        : here
            + " is for "
            + found.listedHere().stream().map(FoundWords::wire).collect(Collectors.joining("; "))
            + ".";
  }

  /** What to do before anything is moved. */
  public static String advice(FoundWire found) {
    String net = found.sameNet() ? " The net is the same either way, but it is not as drawn." : "";
    String who =
        found.slip() == FoundWire.Slip.NEIGHBOUR || found.slip() == FoundWire.Slip.LOOK_ALIKE
            ? "Look which wire sits in its place: the two may be crossed, or the whole run shifted."
            : "Read the sleeve at both ends, and ring the wire out.";
    return who + " Tag it as found before it is moved." + net;
  }
}
