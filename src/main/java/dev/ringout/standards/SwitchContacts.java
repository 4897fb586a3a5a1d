package dev.ringout.standards;

/** Closed switch contacts. */
public final class SwitchContacts {
  private SwitchContacts() {}

  /** The highest resistance of a new switch's closed contact, in ohms. */
  public static double mostOhmsWhenNew() {
    return Double.parseDouble(
        PublishedTable.load(SwitchContacts.class, "switch-contacts.csv")
            .row("name", "new")
            .getOrDefault("max_ohm", ""));
  }
}
