package dev.ringout.words;

import dev.ringout.harness.Point;
import dev.ringout.harness.Wire;
import dev.ringout.revision.Change;
import dev.ringout.revision.Change.Added;
import dev.ringout.revision.Change.Altered;
import dev.ringout.revision.Change.Moved;
import dev.ringout.revision.Change.MovedEnd;
import dev.ringout.revision.Change.Removed;
import dev.ringout.revision.Change.Renumbered;
import dev.ringout.revision.NetChange;
import dev.ringout.revision.Rename;
import dev.ringout.units.Numbers;
import dev.ringout.units.Text;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Changes in words. */
public final class ChangeWords {
  private static final int POINTS_NAMED = 6;

  private ChangeWords() {}

  /**
   * What is said of a change.
   *
   * @param kind its class
   * @param subject a wire's number, or an item
   * @param sentence needs no other
   */
  public record Said(String kind, String subject, String sentence) {}

  public static Said of(Change change) {
    if (change instanceof Removed one) {
      String name = one.wire().name();
      return new Said("removed", name, Text.of("%s goes: %s", name, wire(one.wire())));
    } else if (change instanceof Added one) {
      String name = one.wire().name();
      return new Said("added", name, Text.of("%s is new: %s", name, wire(one.wire())));
    } else if (change instanceof Moved one) {
      return moved(one);
    } else if (change instanceof Renumbered one) {
      return new Said(
          "renumbered",
          one.after().name(),
          Text.of(
              "%s, %s to %s, is %s now",
              one.before().name(), one.after().from(), one.after().to(), one.after().name()));
    } else if (change instanceof Altered one) {
      String name = one.after().name();
      return new Said("altered", name, was(name, one.field().word(), one.old(), one.now()));
    } else if (change instanceof Change.ItemAdded one) {
      return new Said("new item", one.ref(), one.ref() + " is new");
    } else if (change instanceof Change.ItemDropped one) {
      return new Said("dropped item", one.ref(), one.ref() + " is gone");
    } else if (change instanceof Change.ItemAltered one) {
      String ref = one.after().ref();
      return new Said("item", ref, was(ref, one.field(), one.old(), one.now()));
    } else if (change instanceof Change.Jumper one) {
      return addedOrNot(
          "jumper",
          one.link().from().ref(),
          Text.of("the jumper from %s to %s", one.link().from(), one.link().to()),
          one.added());
    } else if (change instanceof Change.SwitchContact one) {
      return addedOrNot(
          "contact",
          one.contact().ref(),
          Text.of(
              "the contact of %s from %s to %s, closed in %s,",
              one.contact().ref(), one.contact().from(), one.contact().to(), one.contact().state()),
          one.added());
    } else if (change instanceof Change.OfPart one) {
      return part(one);
    }
    throw new IllegalArgumentException("a change of no known kind");
  }

  private static Said moved(Moved one) {
    List<String> ends = new ArrayList<>();
    for (MovedEnd end : one.ends()) {
      ends.add(end.from() + " to " + end.to());
    }
    return new Said(
        ends.size() > 1 ? "moved, both ends" : "moved",
        one.after().name(),
        Text.of("%s moves from %s", one.before().name(), String.join(" and from ", ends)));
  }

  private static Said part(Change.OfPart one) {
    String ohms =
        one.part().ohms().isPresent()
            ? ", " + Numbers.plain(one.part().ohms().getAsDouble()) + " Ω,"
            : "";
    return addedOrNot(
        "part",
        one.part().ref(),
        Text.of(
            "the %s%s from %s to %s", one.part().label(), ohms, one.part().from(), one.part().to()),
        one.added());
  }

  private static Said addedOrNot(String what, String subject, String sentence, boolean added) {
    return new Said(
        what + (added ? " added" : " removed"),
        subject,
        sentence + (added ? " is new" : " is gone"));
  }

  private static String was(String subject, String field, String old, String now) {
    return Text.of("%s: %s was %s, is %s now", subject, field, orNothing(old), orNothing(now));
  }

  private static String wire(Wire wire) {
    List<String> words = new ArrayList<>(List.of(wire.from() + " to " + wire.to()));
    words.add(wire.gaugeLabel());
    words.add(wire.type());
    words.add(wire.colour());
    words.add(wire.length().map(one -> Numbers.rounded(one.metres(), 6) + " m").orElse(""));
    words.add(wire.signal());
    words.removeIf(String::isEmpty);
    return String.join(", ", words);
  }

  private static String orNothing(String text) {
    return text.isEmpty() ? "nothing" : text;
  }

  /** A rename with its evidence. */
  public static String sentence(Rename rename) {
    String what = rename.ofItem() ? rename.oldRef() + " is " + rename.newRef() + " now" : "";
    if (!rename.pins().isEmpty()) {
      List<String> olds = List.copyOf(rename.pins().keySet());
      String first = olds.get(0);
      String last = olds.get(olds.size() - 1);
      String pins =
          Text.of(
              "its pins %s … %s are %s … %s",
              first,
              last,
              rename.pins().getOrDefault(first, ""),
              rename.pins().getOrDefault(last, ""));
      what = what.isEmpty() ? rename.newRef() + ": " + pins : what + ", " + pins;
    }
    return Text.of(
        "%s: %d of %d wire ends go where they went%s",
        what, rename.agreeing(), rename.ends(), rename.asTold() ? " (as you said)" : "");
  }

  /** Nets as lists of their points, long ones shortened. */
  public static String sentence(NetChange change) {
    return Text.of(
        "%s: %s → %s",
        change.kind().name().toLowerCase(Locale.ROOT), nets(change.before()), nets(change.after()));
  }

  private static String nets(List<List<Point>> nets) {
    List<String> texts = new ArrayList<>();
    for (List<Point> net : nets) {
      List<String> points = net.stream().map(Point::toString).toList();
      texts.add("{" + Text.first(points, POINTS_NAMED) + "}");
    }
    return texts.isEmpty() ? "nothing" : String.join(" + ", texts);
  }
}
