package dev.ringout.people;

import static dev.ringout.people.Role.ADMINISTRATOR;
import static dev.ringout.people.Role.ENGINEER;
import static dev.ringout.people.Role.INSPECTOR;
import static dev.ringout.people.Role.LEAD;
import static dev.ringout.people.Role.TESTER;

import java.util.EnumSet;
import java.util.Locale;
import java.util.Set;

/**
 * What can be done at a bench of a shop, and which roles may. This is the one place where that is
 * said; whatever is asked of a page names one of these.
 */
public enum Act {
  /** See units, readings, records and papers. */
  LOOK,
  /** Lead a test, and choose the meter for it. */
  TEST,
  /** Tick ends of wires: made by one, checked by another. */
  TICK,
  /** Say something about a unit. */
  NOTE,
  /** Take a reading back after its test. */
  TAKE_BACK,
  /** Hand wire lists in, and say how they are read. */
  LIST,
  /** Sign a unit, or seal its record: each as what he is. */
  SIGN,
  /** See what goes on at all benches. */
  OVERSEE,
  /** Say who may sign in. */
  PEOPLE;

  /** Which roles may. */
  public Set<Role> roles() {
    return switch (this) {
      case LOOK -> EnumSet.allOf(Role.class);
      case TEST -> EnumSet.of(TESTER, LEAD);
      case TICK, TAKE_BACK -> EnumSet.of(TESTER, INSPECTOR, LEAD);
      case NOTE, SIGN -> EnumSet.of(TESTER, INSPECTOR, ENGINEER, LEAD);
      case OVERSEE -> EnumSet.of(INSPECTOR, ENGINEER, LEAD);
      case LIST -> EnumSet.of(ENGINEER, LEAD);
      case PEOPLE -> EnumSet.of(ADMINISTRATOR);
    };
  }

  /** Whether somebody with these roles may. */
  public boolean isFor(Set<Role> those) {
    return those.stream().anyMatch(roles()::contains);
  }

  /** As a page is told. */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
