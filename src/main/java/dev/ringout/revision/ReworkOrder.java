package dev.ringout.revision;

import dev.ringout.harness.Wire;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * The work that makes the later revision of the earlier, in an order that can be done: each item is
 * opened once; within a visit every end that leaves is taken off before any is put on, so that a
 * cavity is free before it is filled and a ring of moves has its ends parked, capped and tagged,
 * between; items that give each other ends are opened together.
 *
 * @param visits item after item
 * @param relabels sleeves and labels to renew
 * @param cut wires to make new: those added, and those that are another wire now
 * @param taken wires that come out or are capped
 * @param reaches for each moved end whether it gets there
 * @param exchanges items, parts and switch contacts that are others now; an item's wires come off
 *     and on again with it
 */
public record ReworkOrder(
    List<Visit> visits,
    List<Relabel> relabels,
    List<Wire> cut,
    List<Wire> taken,
    List<Reach> reaches,
    List<Change> exchanges) {

  /** Items that are open at one time, and what is done there. */
  public record Visit(List<String> items, List<ReworkStep> steps) {}

  /** The work of a difference. */
  public static ReworkOrder of(Difference difference) {
    return new ReworkBuilder(difference).build();
  }

  /** Every step, visit after visit. */
  public List<ReworkStep> steps() {
    return visits.stream().flatMap(visit -> visit.steps().stream()).toList();
  }

  /** The items that are opened. */
  public Set<String> opened() {
    Set<String> opened = new LinkedHashSet<>();
    visits.forEach(visit -> opened.addAll(visit.items()));
    return opened;
  }
}
