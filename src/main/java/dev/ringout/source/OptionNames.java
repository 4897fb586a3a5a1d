package dev.ringout.source;

/** What a user says on the command line where a message tells him that he may: named once. */
public final class OptionNames {
  /** A serial number for readings that give none. */
  public static final String SERIAL = "--serial";

  /** Readings against another revision count. */
  public static final String ANY_REVISION = "--any-revision";

  /** Readings of other units. */
  public static final String ALSO = "--also";

  /** Somebody vouches that a record before is of the same unit. */
  public static final String SAME_UNIT = "--same-unit";

  /** Wires that were worked on. */
  public static final String TOUCHED = "--touched";

  /** Items that were opened. */
  public static final String OPENED = "--opened";

  /** The day of the test. */
  public static final String DATE = "--date";

  /** The folder in which inputs of a record lie. */
  public static final String INPUTS = "--inputs";

  private OptionNames() {}
}
