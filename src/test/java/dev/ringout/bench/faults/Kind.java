package dev.ringout.bench.faults;

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
  ROW_SLIP,
  WRONG_PIN,
  LEADS,
  PAPER;

  /** Whether the test or the paper is wrong and the unit is not. */
  boolean isOfTheTest() {
    return java.util.EnumSet.of(ROW_SLIP, WRONG_PIN, LEADS, PAPER).contains(this);
  }

  String words() {
    return name().toLowerCase(java.util.Locale.ROOT).replace('_', ' ');
  }
}
