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

  /** A difference of wires: applied to the earlier list, all of them give the later. */
  sealed interface OfWire extends Change {}

  /** A wire that is gone. */
  record Removed(Wire wire) implements OfWire {}

  /** A wire that is new. */
  record Added(Wire wire) implements OfWire {}

  /**
   * A wire that goes elsewhere.
   *
   * @param before as the earlier revision has it
   * @param after as the later has it
   * @param ends the ends that moved: one or both
   */
  record Moved(Wire before, Wire after, List<MovedEnd> ends) implements OfWire {}

  /** An end that moved from one point to another. */
  record MovedEnd(Point from, Point to) {}

  /** A wire that has another number. */
  record Renumbered(Wire before, Wire after) implements OfWire {}

  /** Something else of a wire that differs. */
  record Altered(Wire before, Wire after, Field field, String old, String now) implements OfWire {}

  /** An item that is new. */
  record ItemAdded(String ref) implements Change {}

  /** An item that is gone. */
  record ItemDropped(String ref) implements Change {}

  /** Something of an item that differs. */
  record ItemAltered(Item after, String field, String old, String now) implements Change {}

  /** A jumper that is gone, or new. */
  record Jumper(Link link, boolean added) implements Change {}

  /** A switch contact that is gone, or new. */
  record SwitchContact(Switch.Contact contact, boolean added) implements Change {}

  /** A part that is gone, or new, or is another. */
  record OfPart(Part part, boolean added) implements Change {}
}
