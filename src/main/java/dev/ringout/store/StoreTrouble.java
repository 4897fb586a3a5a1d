package dev.ringout.store;

/** A store that can't be used, or not for this; and why, in words for the user. */
public final class StoreTrouble extends Exception {
  private static final long serialVersionUID = 1L;

  /** What is wrong with it. */
  public enum Reason {
    /** It is not there, or can't be reached. */
    MISSING,
    /** Who asks may not. */
    DENIED,
    /** It is there, and is none, or is damaged, or of another version. */
    NOT_UNDERSTOOD,
    /** It can't be written. */
    NOT_WRITTEN,
    /** Somebody else leads the test by now. */
    TAKEN_OVER,
    /** What was to be kept was kept before. */
    KEPT_BEFORE
  }

  private final Reason reason;

  /** Something that a store does not have, or has twice. */
  public static StoreTrouble of(Reason reason, String text) {
    return new StoreTrouble(reason, text);
  }

  /** A row that others name is not there: somebody took it out, or the file is damaged. */
  public static StoreTrouble torn() {
    return new StoreTrouble(
        Reason.NOT_UNDERSTOOD,
        "it is damaged, or somebody changed it: what belongs together is not all there; keep it,"
            + " and take the last backup");
  }

  StoreTrouble(Reason reason, String text) {
    super(text);
    this.reason = reason;
  }

  StoreTrouble(Reason reason, String text, Throwable cause) {
    super(text, cause);
    this.reason = reason;
  }

  /** What is wrong. */
  public Reason reason() {
    return reason;
  }

  /** Why, for the user. */
  public String text() {
    return String.valueOf(getMessage());
  }
}
