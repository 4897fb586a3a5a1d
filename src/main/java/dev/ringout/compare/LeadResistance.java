package dev.ringout.compare;

import dev.ringout.source.Place;
import dev.ringout.units.OhmsRange;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Most readings above what their wires account for are likelier one pair of leads that was not
 * nulled than as many poor joints (common practice, no source).
 */
public final class LeadResistance {
  private static final int LEAST_READINGS = 5;
  private static final double MOST_OF_THEM = 0.8;

  private LeadResistance() {}

  /**
   * Nearly all readings with a computed value off to one side.
   *
   * @param first the cell of the first that is off
   * @param above whether they are above it: the leads were not nulled; else nulled too far
   * @param off how many are off to that side
   * @param compared of how many
   * @param leastOhms by how much the least of them is
   */
  public record AllOff(Place first, boolean above, int off, int compared, double leastOhms) {}

  /** Whether nearly all readings with a computed value are above it, or nearly all below. */
  public static Optional<AllOff> doubt(Comparison comparison) {
    List<Double> above = new ArrayList<>();
    List<Double> below = new ArrayList<>();
    Optional<Place> place = Optional.empty();
    List<Judged> computed = computed(comparison);
    for (Judged judged : computed) {
      OhmsRange expected = judged.limit().expected();
      if (judged.value() == ValueVerdict.HIGH) {
        above.add(judged.seen().middleOhms() - expected.highOhms());
      } else if (judged.value() == ValueVerdict.LOW) {
        below.add(expected.lowOhms() - judged.seen().middleOhms());
      } else {
        continue;
      }
      place = place.isPresent() ? place : Optional.of(judged.reading().place());
    }
    boolean high = above.size() >= below.size();
    List<Double> off = high ? above : below;
    if (computed.size() < LEAST_READINGS || off.size() < computed.size() * MOST_OF_THEM) {
      return Optional.empty();
    }
    double least = off.stream().mapToDouble(Double::doubleValue).min().orElse(0);
    return place.map(first -> new AllOff(first, high, off.size(), computed.size(), least));
  }

  /** Values of joins that were held against what their wires account for. */
  private static List<Judged> computed(Comparison comparison) {
    return comparison.inForce().stream()
        .filter(judged -> judged.limit().expected().isKnown())
        .filter(judged -> judged.expected().isJoined())
        .filter(judged -> judged.reading().measured().value().isPresent())
        .filter(judged -> judged.value() != ValueVerdict.NOT_COMPARED)
        .toList();
  }
}
