package dev.ringout.words;

import dev.ringout.harness.Part;
import dev.ringout.harness.Point;
import dev.ringout.harness.Switch;
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
public final class ChangeWords implements Change.Cases<ChangeWords.Said> {
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

  /** What is said of a change. */
  public static Said of(Change change) {
    return change.match(new ChangeWords());
  }

  @Override
  public Said removed(Removed change) {
    String name = change.wire().name();
    return new Said(
        "removed", name, Text.of("%s runs from %s; removed", name, wire(change.wire())));
  }

  @Override
  public Said added(Added change) {
    String name = change.wire().name();
    return new Said("added", name, Text.of("%s is new, from %s", name, wire(change.wire())));
  }

  @Override
  public Said moved(Moved change) {
    List<String> ends = new ArrayList<>();
    for (MovedEnd end : change.ends()) {
      ends.add(end.from() + " to " + end.to());
    }
    return new Said(
        ends.size() > 1 ? "moved, both ends" : "moved",
        change.after().name(),
        Text.of("%s moves from %s", change.before().name(), String.join(" and from ", ends)));
  }

  @Override
  public Said renumbered(Renumbered change) {
    Wire now = change.after();
    return new Said(
        "renumbered",
        now.name(),
        Text.of(
            "%s, %s to %s, is %s now", change.before().name(), now.from(), now.to(), now.name()));
  }

  @Override
  public Said altered(Altered change) {
    String name = change.after().name();
    return new Said("altered", name, was(name, change.field().word(), change.old(), change.now()));
  }

  @Override
  public Said itemAdded(Change.ItemAdded change) {
    return new Said("new item", change.ref(), change.ref() + " is new");
  }

  @Override
  public Said itemDropped(Change.ItemDropped change) {
    return new Said("dropped item", change.ref(), change.ref() + " is not in the new list");
  }

  @Override
  public Said itemAltered(Change.ItemAltered change) {
    String ref = change.after().ref();
    return new Said("item", ref, was(ref, change.field().word(), change.old(), change.now()));
  }

  @Override
  public Said jumper(Change.Jumper change) {
    return addedOrNot(
        "jumper",
        change.link().from().ref(),
        Text.of("the jumper from %s to %s", change.link().from(), change.link().to()),
        change.added());
  }

  @Override
  public Said switchContact(Change.SwitchContact change) {
    Switch.Contact contact = change.contact();
    return addedOrNot(
        "contact",
        contact.ref(),
        Text.of(
            "the contact of %s from %s to %s, closed in %s,",
            contact.ref(), contact.from(), contact.to(), contact.state()),
        change.added());
  }

  @Override
  public Said normalPosition(Change.NormalPosition change) {
    return new Said(
        "normal position",
        change.ref(),
        was(change.ref(), "normal position", change.old(), change.now()));
  }

  @Override
  public Said ofPart(Change.OfPart change) {
    Part part = change.part();
    String ohms =
        part.ohms().isPresent() ? ", " + Numbers.plain(part.ohms().getAsDouble()) + " Ω," : "";
    return addedOrNot(
        "part",
        part.ref(),
        Text.of("the %s%s from %s to %s", part.label(), ohms, part.from(), part.to()),
        change.added());
  }

  private static Said addedOrNot(String what, String subject, String sentence, boolean added) {
    return new Said(
        what + (added ? " added" : " removed"),
        subject,
        sentence + (added ? " is new" : " is not in the new list"));
  }

  private static String was(String subject, String field, String old, String now) {
    return Text.of("%s: %s %s, now %s", subject, field, orNotGiven(old), orNotGiven(now));
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

  private static String orNotGiven(String text) {
    return text.isEmpty() ? "not given" : text;
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
