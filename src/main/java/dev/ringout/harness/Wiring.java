package dev.ringout.harness;

import java.util.List;

/** What a wire list alone tells of a unit: no parts, switches or limits. */
public record Wiring(List<Wire> wires, List<Item> items, List<PinDetail> pins, List<Link> links) {
  /** Nothing is wired. */
  public static final Wiring NONE = new Wiring(List.of(), List.of(), List.of(), List.of());
}
