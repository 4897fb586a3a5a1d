package dev.ringout.readings;

import dev.ringout.harness.Harness;
import dev.ringout.harness.Wire;
import dev.ringout.source.Place;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.Optional;
import java.util.Set;

/**
 * What was opened and touched between readings: those taken before prove nothing of it any more.
 *
 * @param timeText as written, or empty
 * @param time when; absent where none is given or it can't be understood
 * @param items the items that were opened, the ends of the wires among them
 * @param wires the wires that were touched
 * @param note what was done, or empty
 * @param readAfter whether its row says that the readings of its file, as far as they have no time,
 *     were taken after it
 */
public record Rework(
    String timeText,
    Optional<TimeOfReading> time,
    Set<String> items,
    Set<String> wires,
    String note,
    boolean readAfter,
    Place place) {

  /**
   * A rework that somebody tells of beside the sheets. The items at both ends of a wire were opened
   * for it.
   */
  public static Rework told(Harness harness, Set<String> wires, Set<String> items, Place place) {
    return new Rework("", Optional.empty(), opened(harness, wires, items), wires, "", false, place);
  }

  /** Some items, and those at the ends of some wires. */
  public static Set<String> opened(Harness harness, Set<String> wires, Set<String> items) {
    Set<String> opened = new LinkedHashSet<>(items);
    for (Wire wire : harness.wires()) {
      if (wires.contains(wire.name())) {
        opened.add(wire.from().ref());
        opened.add(wire.to().ref());
      }
    }
    return Collections.unmodifiableSet(opened);
  }

  /** Whether two rows, in whichever files, tell of the same rework. */
  public boolean isSame(Rework other) {
    return timeText.equals(other.timeText)
        && items.equals(other.items)
        && wires.equals(other.wires);
  }
}
