package dev.ringout.harness;

import dev.ringout.source.Place;
import java.time.LocalDate;
import java.util.Optional;

/**
 * Somebody's word that a remark is accepted.
 *
 * @param subject the point or the wire of the remark, as the review shows it
 * @param untilDay the last day on which it holds; absent: for good
 */
public record Waiver(
    String rule,
    String subject,
    String who,
    String why,
    Optional<LocalDate> untilDay,
    Place place) {

  /** Whether its last day is over. */
  public boolean isExpired(LocalDate today) {
    return untilDay.isPresent() && untilDay.get().isBefore(today);
  }

  /** The last day in ISO form, or empty. */
  public String until() {
    return untilDay.map(LocalDate::toString).orElse("");
  }
}
