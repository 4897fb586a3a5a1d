package dev.ringout.readings;

import dev.ringout.source.Place;
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
 */
public record Rework(
    String timeText,
    Optional<TimeOfReading> time,
    Set<String> items,
    Set<String> wires,
    String note,
    Place place) {

  /** Whether two rows, in whichever files, tell of the same rework. */
  public boolean isSame(Rework other) {
    return timeText.equals(other.timeText)
        && items.equals(other.items)
        && wires.equals(other.wires);
  }
}
