package dev.ringout.readings;

import dev.ringout.harness.SerialNumbers;
import dev.ringout.harness.SwitchState;
import dev.ringout.source.Place;
import java.time.LocalDate;
import java.util.Optional;

/**
 * An inspector's word that a reading out of limits is accepted.
 *
 * @param acceptedOhms the worst value that is accepted: the highest of a join or part, the lowest
 *     of insulation
 * @param untilDay the last day on which it holds; absent: for good
 * @param serials the units that it is for; absent: the unit that is tested
 */
public record Concession(
    Reading.Kind kind,
    Side from,
    Side to,
    SwitchState state,
    double acceptedOhms,
    String who,
    String why,
    Optional<LocalDate> untilDay,
    Optional<SerialNumbers> serials,
    Place place) {}
