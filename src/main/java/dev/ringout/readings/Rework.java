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
 * @param number by which the sheets planned after it know it again, or empty
 * @param timeText as written, or empty
 * @param time when; absent where none is given or it can't be understood
 * @param items the items that were opened, the ends of the wires among them
 * @param wires the wires that were touched
 * @param note what was done, or empty
 * @param readAfter whether its row says that the readings of its file, as far as they have no time,
 *     were taken after it
 */
public record Rework(
    String number,
    String timeText,
    Optional<TimeOfReading> time,
    Set<String> items,
    Set<String> wires,
    String note,
    boolean readAfter,
    Place place) {

  /** Where a rework stands that no sheet tells of yet. */
  private static final Place BESIDE = Place.of("command line");

  /**
   * A rework that somebody tells of beside the sheets. The items at both ends of a wire were opened
   * for it.
   */
  public static Rework told(Harness harness, Set<String> wires, Set<String> items) {
    return new Rework(
        "", "", Optional.empty(), opened(harness, wires, items), wires, "", false, BESIDE);
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

  /** The same rework under a number, as a sheet that is planned after it tells of it. */
  public Rework numbered(String other) {
    return new Rework(other, timeText, time, items, wires, note, true, place);
  }

  /**
   * Whether a row of another file tells of this rework. Without a number and a time one can't be
   * told from the next at the same place: then only a sheet that was planned after it knows it.
   */
  public boolean isToldBy(Rework row) {
    if (!items.equals(row.items)
        || !wires.equals(row.wires)
        || !row.readAfter
        || place.equals(BESIDE)) {
      return false;
    }
    boolean otherTime =
        !timeText.isEmpty() && !row.timeText.isEmpty() && !timeText.equals(row.timeText);
    if (otherTime) {
      return false;
    }
    if (!number.isEmpty() && !row.number.isEmpty()) {
      return number.equals(row.number);
    }
    return timeText.isEmpty() ? number.isEmpty() && !row.number.isEmpty() : !row.timeText.isEmpty();
  }
}
