package dev.ringout.revision;

import dev.ringout.harness.Link;
import dev.ringout.harness.Part;
import dev.ringout.harness.Point;
import dev.ringout.harness.Switch;
import dev.ringout.harness.Wire;
import dev.ringout.revision.Change.MovedEnd;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * What makes two changes one, whichever lists they were found between: what is done to which wire
 * or item. The cells in which the lists say so, and what else they say of the wire, differ from
 * list to list.
 */
public sealed interface ChangeIdentity {

  /** Of a change. */
  static ChangeIdentity of(Change change) {
    return change.match(new OfChange());
  }

  /** A wire that goes or comes, by what has to be at hand for it. */
  record WholeWire(boolean added, String name, Point from, Point to, Map<Field, String> facts)
      implements ChangeIdentity {
    static WholeWire of(boolean added, Wire wire) {
      Map<Field, String> facts = new EnumMap<>(Field.class);
      Field.MAKING.forEach(field -> facts.put(field, field.of(wire)));
      return new WholeWire(added, wire.name(), wire.from(), wire.to(), facts);
    }
  }

  /** Ends of a wire that go elsewhere. */
  record MovedWire(String name, List<MovedEnd> ends) implements ChangeIdentity {}

  /** Another number on a wire between two points. */
  record NewNumber(String old, String now, Point from, Point to) implements ChangeIdentity {}

  /** Something else said of a wire. */
  record WireFact(String name, Field field, String old, String now) implements ChangeIdentity {}

  /** An item that comes or goes. */
  record WholeItem(boolean added, String ref) implements ChangeIdentity {}

  /** Something else said of an item. */
  record ItemFact(String ref, ItemField field, String old, String now) implements ChangeIdentity {}

  /** A jumper that comes or goes. */
  record WholeJumper(boolean added, Point from, Point to) implements ChangeIdentity {}

  /** A switch contact that comes or goes. */
  record WholeContact(boolean added, String ref, String state, Point from, Point to)
      implements ChangeIdentity {}

  /** The normal position of a switch. */
  record NormalPosition(String ref, String old, String now) implements ChangeIdentity {}

  /** A part that comes or goes. */
  record WholePart(
      boolean added, Part.Kind kind, String ref, OptionalDouble ohms, Point from, Point to)
      implements ChangeIdentity {}

  /** Each kind's own. */
  final class OfChange implements Change.Cases<ChangeIdentity> {
    private OfChange() {}

    @Override
    public ChangeIdentity removed(Change.Removed change) {
      return WholeWire.of(false, change.wire());
    }

    @Override
    public ChangeIdentity added(Change.Added change) {
      return WholeWire.of(true, change.wire());
    }

    @Override
    public ChangeIdentity moved(Change.Moved change) {
      return new MovedWire(change.before().name(), change.ends());
    }

    @Override
    public ChangeIdentity renumbered(Change.Renumbered change) {
      Wire now = change.after();
      return new NewNumber(change.before().name(), now.name(), now.from(), now.to());
    }

    @Override
    public ChangeIdentity altered(Change.Altered change) {
      return new WireFact(change.after().name(), change.field(), change.old(), change.now());
    }

    @Override
    public ChangeIdentity itemAdded(Change.ItemAdded change) {
      return new WholeItem(true, change.ref());
    }

    @Override
    public ChangeIdentity itemDropped(Change.ItemDropped change) {
      return new WholeItem(false, change.ref());
    }

    @Override
    public ChangeIdentity itemAltered(Change.ItemAltered change) {
      return new ItemFact(change.after().ref(), change.field(), change.old(), change.now());
    }

    @Override
    public ChangeIdentity jumper(Change.Jumper change) {
      Link link = change.link();
      return new WholeJumper(change.added(), link.from(), link.to());
    }

    @Override
    public ChangeIdentity switchContact(Change.SwitchContact change) {
      Switch.Contact contact = change.contact();
      return new WholeContact(
          change.added(), contact.ref(), contact.state(), contact.from(), contact.to());
    }

    @Override
    public ChangeIdentity normalPosition(Change.NormalPosition change) {
      return new NormalPosition(change.ref(), change.old(), change.now());
    }

    @Override
    public ChangeIdentity ofPart(Change.OfPart change) {
      Part part = change.part();
      return new WholePart(
          change.added(), part.kind(), part.ref(), part.ohms(), part.from(), part.to());
    }
  }
}
