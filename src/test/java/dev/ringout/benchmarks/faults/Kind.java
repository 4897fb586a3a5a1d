package dev.ringout.benchmarks.faults;

import dev.ringout.diagnose.Fault;
import java.util.List;
import java.util.Optional;

/** The slips that the bench plants. */
enum Kind {
  NONE,
  OPEN_WIRE,
  OPEN_LINK,
  MOVED_FREE,
  MOVED_TAKEN,
  CROSSED,
  RING,
  SHIFT,
  MIRRORED,
  MIRRORED_ROW,
  ROTATED,
  PLUGS_CROSSED,
  BRIDGE,
  EXTRA_JUMPER,
  SHIELD_TO_PIN,
  POOR_JOINT,
  LEAK_TO_NET,
  LEAK_TO_SHELL,
  MOISTURE,
  PART_OTHER,
  PART_REVERSED,
  PART_MISSING,
  SWITCH_OTHER_WAY,
  SWITCH_STUCK,
  CONTACT_WELDED,
  ROW_SLIP(Fault.SlippedRows.class),
  WRONG_PIN(Fault.Misread.class),
  LEADS(Fault.LeadsNotNulled.class),
  PAPER(Fault.OnPaper.class);

  private final Optional<Class<? extends Fault>> ofTheTest;

  /** One of the unit: what it made of it is held against physics. */
  Kind() {
    ofTheTest = Optional.empty();
  }

  /** One of the test or of the paper: the unit is sound, and just this must be said. */
  Kind(Class<? extends Fault> said) {
    ofTheTest = Optional.of(said);
  }

  /** Whether the test or the paper is wrong and the unit is not. */
  boolean isOfTheTest() {
    return ofTheTest.isPresent();
  }

  /** Whether it is among faults told as what it is; one of the unit is held against physics. */
  boolean isSaidIn(List<Fault> faults) {
    return ofTheTest.isEmpty() || faults.stream().anyMatch(ofTheTest.get()::isInstance);
  }

  String words() {
    return name().toLowerCase(java.util.Locale.ROOT).replace('_', ' ');
  }
}
