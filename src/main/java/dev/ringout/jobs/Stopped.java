package dev.ringout.jobs;

/** A job that can't go on, because of a file that is not a list or readings. */
public final class Stopped extends Exception {
  private static final long serialVersionUID = 1L;

  private final boolean missing;

  private Stopped(String text, boolean missing) {
    super(text);
    this.missing = missing;
  }

  static Stopped missing(String text) {
    return new Stopped(text, true);
  }

  static Stopped notUnderstood(String text) {
    return new Stopped(text, false);
  }

  /** Why, for the user. */
  public String text() {
    return String.valueOf(getMessage());
  }

  /** Whether something is not there at all. */
  public boolean isMissing() {
    return missing;
  }
}
