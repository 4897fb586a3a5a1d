package dev.ringout.readings;

import dev.ringout.source.Place;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * The job sheet of one readings file.
 *
 * @param entries name to value, as written
 * @param continuityRangeOhms the top of the meter's range on continuity
 * @param insulationRangeOhms the top of the insulation tester's range
 * @param meter what is said of the meter
 * @param revision the revision the readings were taken against, or empty
 * @param revisionPlace the cell that gives the revision, or the file
 */
public record Job(
    Map<String, String> entries,
    OptionalDouble continuityRangeOhms,
    OptionalDouble insulationRangeOhms,
    Meter meter,
    String revision,
    Place revisionPlace) {

  /** The entry of that name in any case, without the blanks around it; or empty. */
  public String value(String name) {
    return entries.entrySet().stream()
        .filter(entry -> entry.getKey().equalsIgnoreCase(name))
        .map(Map.Entry::getValue)
        .findFirst()
        .orElse("")
        .strip();
  }
}
