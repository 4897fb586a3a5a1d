package dev.ringout.source;

/** An input file as a whole is missing, unreadable or not what its name says. */
public final class UnusableInput extends Exception {
  private static final long serialVersionUID = 1L;

  /** Why a file can't be used. */
  public enum Reason {
    /** Missing, or the system refuses to open it. */
    MISSING,
    /** Opened, but its content can't be understood. */
    NOT_UNDERSTOOD
  }

  // Exceptions can be stored, places can't; nobody stores these.
  private final transient Place place;
  private final Reason reason;

  /** A file that can't be used, and why in words for the user. */
  public UnusableInput(String file, Reason reason, String text) {
    this(Place.of(file), reason, text);
  }

  /** A file that can't be used because of what stands at a place in it. */
  public UnusableInput(Place place, Reason reason, String text) {
    super(text);
    this.place = place;
    this.reason = reason;
  }

  /** The file as a whole, as shown to the user, or the place in it that is to blame. */
  public Place place() {
    return place;
  }

  /** Missing or not understood. */
  public Reason reason() {
    return reason;
  }

  /** What is wrong, in words for the user. */
  public String text() {
    return String.valueOf(getMessage());
  }
}
