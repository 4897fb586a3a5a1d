package dev.ringout.bench;

import dev.ringout.jobs.StoreAtHand;
import dev.ringout.meter.Profiles;
import dev.ringout.meter.Ticks;
import java.nio.file.Path;
import java.time.ZoneId;
import java.util.Optional;

/**
 * How a bench is set up.
 *
 * @param station its name
 * @param meter address of the meter that reads continuity; typed where it is called none
 * @param profile of it; the usual one of its address where there is none
 * @param insulationMeter address of the insulation tester
 * @param data the folder of the store: profiles and lead nulls are there
 * @param practice whether the unit is simulated, and so is what is read
 * @param slips so many slips of the hand are planted in a practice unit
 * @param seed chooses them
 */
public record BenchSetup(
    StoreAtHand store,
    String station,
    String meter,
    Optional<String> profile,
    String insulationMeter,
    Optional<String> insulationProfile,
    Path data,
    boolean practice,
    int slips,
    long seed,
    Ticks ticks,
    ZoneId zone) {

  /** This program's profiles, and the user's own beside the store. */
  Profiles profiles() {
    return new Profiles(Optional.of(data.resolve("meters")));
  }
}
