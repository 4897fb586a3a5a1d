package dev.ringout.imports.join;

import dev.ringout.cells.LikelyMeant;
import dev.ringout.imports.list.Draft;
import dev.ringout.imports.list.ListFindings;
import dev.ringout.imports.list.WiringOddity;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Matches wires that are listed at both ends, and says which are not. */
final class BothEnds {
  private static final int SAID_ONE_BY_ONE = 20;

  private final PinNames pins;
  private final ListFindings findings;
  private final TwoRows twoRows;
  private final List<Draft> wires = new ArrayList<>();
  private final Map<String, List<Draft>> unlisted = new LinkedHashMap<>();
  private int matched;
  private int oneSided;
  private int farPinNotListed;
  private int farHasNoList;

  BothEnds(PinNames pins, TwoRows twoRows, ListFindings findings) {
    this.pins = pins;
    this.findings = findings;
    this.twoRows = twoRows;
  }

  /** How many wires were found at both ends. */
  int matched() {
    return matched;
  }

  /** How many go to a pin that the other connector's own list does not have. */
  int farPinNotListed() {
    return farPinNotListed;
  }

  /** How many were found at one end though the other's own list has their pin. */
  int oneSided() {
    return oneSided;
  }

  /** How many go to an item that has no list of its own. */
  int farHasNoList() {
    return farHasNoList;
  }

  List<Draft> match(List<Draft> drafts) {
    Map<String, List<Draft>> byEnd = new HashMap<>();
    for (Draft draft : drafts) {
      if (draft.block()) {
        byEnd.computeIfAbsent(draft.from().toString(), key -> new ArrayList<>()).add(draft);
      }
    }
    Set<Draft> taken = Collections.newSetFromMap(new IdentityHashMap<>());
    for (Draft draft : drafts) {
      if (!draft.block()) {
        wires.add(draft);
      } else if (!taken.contains(draft)) {
        taken.add(draft);
        matchOne(draft, byEnd, taken);
      }
    }
    reportUnlisted(byEnd);
    return wires;
  }

  private void matchOne(Draft draft, Map<String, List<Draft>> byEnd, Set<Draft> taken) {
    String here = draft.from().toString();
    String there = draft.to().toString();
    for (Draft other : byEnd.getOrDefault(there, List.of())) {
      if (!taken.contains(other) && other.to().toString().equals(here)) {
        taken.add(other);
        matched++;
        wires.add(twoRows.merge(draft, other));
        return;
      }
    }
    wires.add(draft);
    if (!pins.hasList(draft.to().item())) {
      farHasNoList++;
      return;
    }
    if (draft.to().hasPin() && !pins.lists(draft.to().item(), draft.to().pin())) {
      farPinNotListed++;
      unlisted.computeIfAbsent(draft.to().pin(), key -> new ArrayList<>()).add(draft);
      return;
    }
    oneSided++;
    reportOneSided(draft, byEnd);
  }

  private void reportOneSided(Draft draft, Map<String, List<Draft>> byEnd) {
    List<Draft> others = byEnd.getOrDefault(draft.to().toString(), List.of());
    findings.warning(draft.to().place(), oneSided(draft, others, meant(draft, byEnd)));
  }

  private static WiringOddity oneSided(Draft draft, List<Draft> others, String meant) {
    String from = draft.from().toString();
    String to = draft.to().toString();
    if (!draft.to().hasPin()) {
      return new WiringOddity.NoPinNamedThere(from, to, !others.isEmpty(), meant);
    }
    return others.isEmpty()
        ? new WiringOddity.NoWireNamedThere(from, to, meant)
        : new WiringOddity.OtherEndNamedThere(
            from,
            to,
            others.stream().map(other -> other.to().toString()).distinct().toList(),
            meant);
  }

  /** The pin over there whose own row leads back here, or one that is a slip of the pen away. */
  private String meant(Draft draft, Map<String, List<Draft>> byEnd) {
    String item = draft.to().item();
    List<String> open = new ArrayList<>();
    for (String pin : pins.of(item)) {
      List<Draft> rows = byEnd.getOrDefault(item + "-" + pin, List.of());
      for (Draft row : rows) {
        if (row.to().toString().equals(draft.from().toString())) {
          return item + "-" + pin;
        }
      }
      if (rows.isEmpty()) {
        open.add(pin);
      }
    }
    String nearest =
        LikelyMeant.nearest(
            draft.to().pin(), pins.lists(item, draft.to().pin()) ? open : pins.of(item));
    return nearest.isEmpty() || nearest.equals(draft.to().pin()) ? "" : item + "-" + nearest;
  }

  private void reportUnlisted(Map<String, List<Draft>> byEnd) {
    unlisted.forEach(
        (pin, drafts) -> {
          if (drafts.size() > SAID_ONE_BY_ONE) {
            findings.warning(
                drafts.get(0).to().place(), new WiringOddity.ManyToUnlistedPin(drafts.size(), pin));
          } else {
            for (Draft draft : drafts) {
              findings.warning(
                  draft.to().place(),
                  new WiringOddity.PinNotListedThere(
                      draft.from().toString(),
                      draft.to().toString(),
                      draft.to().item(),
                      pin,
                      meant(draft, byEnd)));
            }
          }
        });
  }

  /** Pins of a connector's own list that stand on two rows with different far ends. */
  void reportTwice(List<Draft> drafts, ListChecks checks) {
    Map<String, Set<String>> farEnds = new LinkedHashMap<>();
    Map<String, Draft> last = new HashMap<>();
    Map<String, Set<Integer>> rows = new HashMap<>();
    for (Draft draft : drafts) {
      if (draft.block() && draft.from().own()) {
        farEnds
            .computeIfAbsent(draft.from().toString(), key -> new HashSet<>())
            .add(draft.to().toString());
        last.put(draft.from().toString(), draft);
        rows.computeIfAbsent(draft.from().toString(), key -> new HashSet<>())
            .add(draft.place().row());
      }
    }
    farEnds.forEach(
        (point, ends) -> {
          Draft draft = last.get(point);
          if (ends.size() > 1
              && draft != null
              && checks.isContact(draft.from())
              && rows.getOrDefault(point, Set.of()).size() > 1) {
            findings.warning(
                draft.from().place(),
                new WiringOddity.FarEndsOfPin(
                    point, ends.size(), ends.stream().sorted().limit(6).toList()));
          }
        });
  }
}
