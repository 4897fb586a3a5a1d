package dev.ringout.revision;

import dev.ringout.harness.Item;
import dev.ringout.harness.Link;
import dev.ringout.harness.Part;
import dev.ringout.harness.Point;
import dev.ringout.harness.Switch;
import dev.ringout.harness.Wire;
import java.util.List;

/** One difference between two revisions, by the names of the later. */
public sealed interface Change {

  /** What is made of it, by its kind: who lacks a kind does not compile. */
  <T> T match(Cases<T> cases);

  /** Whether it is of a wire: applied to the earlier list, all such give the later. */
  default boolean isOfWire() {
    return false;
  }

  /** Whether something of an item differs that both revisions have. */
  default boolean isOfItem() {
    return false;
  }

  /** A difference of wires. */
  sealed interface OfWire extends Change {
    @Override
    default boolean isOfWire() {
      return true;
    }
  }

  /** A wire that is gone. */
  record Removed(Wire wire) implements OfWire {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.removed(this);
    }
  }

  /** A wire that is new. */
  record Added(Wire wire) implements OfWire {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.added(this);
    }
  }

  /**
   * A wire that goes elsewhere.
   *
   * @param before as the earlier revision has it
   * @param after as the later has it
   * @param ends the ends that moved: one or both
   */
  record Moved(Wire before, Wire after, List<MovedEnd> ends) implements OfWire {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.moved(this);
    }
  }

  /** An end that moved from one point to another. */
  record MovedEnd(Point from, Point to) {}

  /** A wire that has another number. */
  record Renumbered(Wire before, Wire after) implements OfWire {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.renumbered(this);
    }
  }

  /** Something else of a wire that differs. */
  record Altered(Wire before, Wire after, Field field, String old, String now) implements OfWire {
    /** Whether both lists say it: where one says nothing, nobody asks for another wire. */
    public boolean isSaidByBoth() {
      return !old.isEmpty() && !now.isEmpty();
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.altered(this);
    }
  }

  /** An item that is new. */
  record ItemAdded(String ref) implements Change {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.itemAdded(this);
    }
  }

  /** An item that is gone. */
  record ItemDropped(String ref) implements Change {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.itemDropped(this);
    }
  }

  /** Something of an item that differs. */
  record ItemAltered(Item after, ItemField field, String old, String now) implements Change {
    /** Whether both lists say it: where one says nothing, nobody asks for another item. */
    public boolean isSaidByBoth() {
      return !old.isEmpty() && !now.isEmpty();
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.itemAltered(this);
    }

    @Override
    public boolean isOfItem() {
      return true;
    }
  }

  /** A jumper that is gone, or new. */
  record Jumper(Link link, boolean added) implements Change {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.jumper(this);
    }
  }

  /** A switch contact that is gone, or new. */
  record SwitchContact(Switch.Contact contact, boolean added) implements Change {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.switchContact(this);
    }
  }

  /** The position that a switch is in unless a reading says otherwise. */
  record NormalPosition(String ref, String old, String now) implements Change {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.normalPosition(this);
    }
  }

  /** A part that is gone, or new, or is another. */
  record OfPart(Part part, boolean added) implements Change {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.ofPart(this);
    }
  }

  /** One answer for each kind. */
  interface Cases<T> {
    /** See {@link Removed}. */
    T removed(Removed change);

    /** See {@link Added}. */
    T added(Added change);

    /** See {@link Moved}. */
    T moved(Moved change);

    /** See {@link Renumbered}. */
    T renumbered(Renumbered change);

    /** See {@link Altered}. */
    T altered(Altered change);

    /** See {@link ItemAdded}. */
    T itemAdded(ItemAdded change);

    /** See {@link ItemDropped}. */
    T itemDropped(ItemDropped change);

    /** See {@link ItemAltered}. */
    T itemAltered(ItemAltered change);

    /** See {@link Jumper}. */
    T jumper(Jumper change);

    /** See {@link SwitchContact}. */
    T switchContact(SwitchContact change);

    /** See {@link NormalPosition}. */
    T normalPosition(NormalPosition change);

    /** See {@link OfPart}. */
    T ofPart(OfPart change);
  }
}
