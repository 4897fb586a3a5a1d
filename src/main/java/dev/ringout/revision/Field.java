package dev.ringout.revision;

import dev.ringout.harness.Wire;
import dev.ringout.units.Numbers;
import java.util.Locale;
import java.util.Set;

/** What a list says of a wire besides its name and its ends. */
public enum Field {
  GAUGE,
  TYPE,
  COLOR,
  LENGTH,
  SIGNAL,
  CABLE,
  GROUP,
  /** At the end that the earlier revision lists first. */
  FROM_CONTACT,
  /** At the end that the earlier revision lists second. */
  TO_CONTACT,
  NOTE;

  /** What has to be at hand for a wire. */
  static final Set<Field> MAKING = Set.of(GAUGE, TYPE, COLOR, LENGTH, SIGNAL);

  /** What a wire's row says; empty where it says nothing. */
  public String of(Wire wire) {
    return switch (this) {
      case GAUGE -> wire.gaugeLabel();
      case TYPE -> wire.type();
      case COLOR -> wire.colour();
      case LENGTH -> wire.length().map(one -> Numbers.rounded(one.metres(), 6) + " m").orElse("");
      case SIGNAL -> wire.signal();
      case CABLE -> wire.cable();
      case GROUP -> wire.group();
      case FROM_CONTACT -> wire.fromContact();
      case TO_CONTACT -> wire.toContact();
      case NOTE -> wire.note();
    };
  }

  /** The word for it in every output. */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  /** Whether it is another wire that has to be made, not only another word on paper. */
  public boolean isOfTheWireItself() {
    return this == GAUGE || this == TYPE || this == COLOR;
  }

  /** Whether two values say the same: case and spaces do not matter. */
  static boolean same(String one, String other) {
    return one.equals(other) || plain(one).equals(plain(other));
  }

  /** What is compared: case and spaces do not matter. */
  static String plain(String text) {
    return text.strip().toUpperCase(Locale.ROOT).replaceAll("\\s+", " ");
  }
}
