package dev.ringout.harness;

import java.util.Collections;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * How the unit stood while a reading was taken: the positions of its switches, and the wires, links
 * and parts of which one end was lifted.
 *
 * @param positions switch to position, only of switches that are not in their normal position; and
 *     wire, link or part to {@link #LIFTED}
 */
public record SwitchState(SortedMap<String, String> positions) {
  /** What is given can't be changed afterwards. */
  public SwitchState {
    positions =
        positions.isEmpty()
            ? Collections.emptySortedMap()
            : Collections.unmodifiableSortedMap(new TreeMap<>(positions));
  }

  /** What stands for a position where an end of a wire, link or part is off. */
  public static final String LIFTED = "LIFTED";

  /** Every switch in its normal position. */
  public static SwitchState normal() {
    return new SwitchState(new TreeMap<>());
  }

  /** Whether every switch is in its normal position. */
  public boolean isNormal() {
    return positions.isEmpty();
  }

  /** The position of a switch in this state. */
  public String positionOf(Switch one) {
    return positions.getOrDefault(one.ref(), one.normalState());
  }

  /** This state with one switch moved to a position. */
  public SwitchState with(Switch one, String position) {
    SortedMap<String, String> moved = new TreeMap<>(positions);
    if (position.equals(one.normalState())) {
      moved.remove(one.ref());
    } else {
      moved.put(one.ref(), position);
    }
    return new SwitchState(moved);
  }

  /** This state with one end of a wire off its point. */
  public SwitchState withLifted(Wire wire) {
    return withLifted(wire.name());
  }

  /** This state with one end of a link off its point. */
  public SwitchState withLifted(Link link) {
    return withLifted(link.name());
  }

  /** This state with one lead of a part off its point. */
  public SwitchState withLifted(Part part) {
    return withLifted(part.label());
  }

  private SwitchState withLifted(String name) {
    SortedMap<String, String> lifted = new TreeMap<>(positions);
    lifted.put(name, LIFTED);
    return new SwitchState(lifted);
  }

  /** Whether one end of any wire, link or part is off its point. */
  public boolean liftsAny() {
    return positions.containsValue(LIFTED);
  }

  /** This state with nothing lifted. */
  public SwitchState withoutLifts() {
    SortedMap<String, String> set = new TreeMap<>(positions);
    set.values().removeIf(LIFTED::equals);
    return new SwitchState(set);
  }

  /** Whether one end of a wire is off its point. */
  public boolean isLifted(Wire wire) {
    return LIFTED.equals(positions.get(wire.name()));
  }

  /** Whether one end of a link is off its point. */
  public boolean isLifted(Link link) {
    return LIFTED.equals(positions.get(link.name()));
  }

  /** Whether one lead of a part is off its point. */
  public boolean isLifted(Part part) {
    return LIFTED.equals(positions.get(part.label()));
  }

  /** Most states that are compared are one. */
  @Override
  public boolean equals(Object other) {
    return this == other
        || (other instanceof SwitchState state && positions.equals(state.positions));
  }

  @Override
  public int hashCode() {
    return positions.hashCode();
  }

  /** As written on a test sheet: {@code S1=AHEAD; S2=OPEN}; empty in the normal state. */
  @Override
  public String toString() {
    return positions.entrySet().stream()
        .map((Map.Entry<String, String> entry) -> entry.getKey() + "=" + entry.getValue())
        .collect(Collectors.joining("; "));
  }
}
