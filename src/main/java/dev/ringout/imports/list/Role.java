package dev.ringout.imports.list;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** What a column of a list can be. */
public enum Role {
  WIRE("Wire"),
  FROM("From"),
  FROM_PIN("From Pin"),
  TO("To"),
  TO_PIN("To Pin"),
  /** The strip or connector within the item at one end, where the list has both. */
  FROM_STRIP("From Strip"),
  TO_STRIP("To Strip"),
  /** The far end, seen from the connector whose pins the table lists. */
  FAR("Far End"),
  FAR_PIN("Far Pin"),
  /** The connector whose pins the table lists. */
  ITEM("Item"),
  /** A number that stands for the item at one end; the legend says which. */
  FROM_CODE("From Code"),
  TO_CODE("To Code"),
  /** A pin of the table's own connector. */
  PIN("Pin"),
  /** The pin at both ends: a core that lands on terminals of its own name. */
  BOTH_PINS("Both Pins"),
  /** Further terminals of the strip that are bridged to the row's own. */
  BRIDGE("Bridge"),
  /** Points one after another. */
  PATH("Path"),
  /** Names the net on which the row's pin is. */
  NET("Net"),
  /** Pins of the item that the heading names. */
  POINTS("Points"),
  GAUGE("Gauge"),
  TYPE("Wire Type"),
  COLOR("Color"),
  LENGTH("Length"),
  SIGNAL("Signal"),
  CABLE("Cable"),
  GROUP("Group"),
  FROM_CONTACT("From Contact"),
  TO_CONTACT("To Contact"),
  NOTE("Note"),
  /** Not understood, or not needed: goes along as a note under its own heading. */
  KEEP("Keep");

  private final String title;

  Role(String title) {
    this.title = title;
  }

  /** The column's name in every output and on the command line. */
  public String title() {
    return title;
  }

  /** A role by its title, whatever the case, blanks and punctuation. */
  public static Optional<Role> of(String title) {
    String key = key(title);
    return Arrays.stream(values()).filter(role -> key(role.title).equals(key)).findFirst();
  }

  private static String key(String text) {
    return text.toLowerCase(Locale.ROOT).replaceAll("[^a-z]", "");
  }

  /** Whether it names one end of a wire, or the pin there. */
  public boolean isEnd() {
    return this == FROM || this == TO || this == FAR || isPinOfEnd();
  }

  /** Whether it names the pin at one end of a wire. */
  public boolean isPinOfEnd() {
    return this == FROM_PIN || this == TO_PIN || this == FAR_PIN;
  }

  /** The role of the pin at an end that is no pin itself. */
  public Role pinOfEnd() {
    return switch (this) {
      case FROM -> FROM_PIN;
      case TO -> TO_PIN;
      default -> FAR_PIN;
    };
  }

  /** Whether a blank or a mark for "as above" takes the value of the row before. */
  public boolean repeats() {
    return this != PIN
        && this != FROM_PIN
        && this != TO_PIN
        && this != FAR_PIN
        && this != WIRE
        && this != BOTH_PINS
        && this != PATH
        && this != BRIDGE
        && this != FROM_CODE
        && this != TO_CODE
        && this != FAR
        && this != POINTS
        && this != NOTE
        && this != KEEP;
  }
}
