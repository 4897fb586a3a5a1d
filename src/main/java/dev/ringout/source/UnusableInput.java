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

  private final String file;
  private final Reason reason;

  /** A file that can't be used, and why in words for the user. */
  public UnusableInput(String file, Reason reason, String text) {
    super(text);
    this.file = file;
    this.reason = reason;
  }

  /** The file as a whole, as shown to the user. */
  public Place place() {
    return Place.of(file);
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
