package dev.ringout.bench;

import dev.ringout.source.Place;
import dev.ringout.source.Problem;
import dev.ringout.source.Severity;
import java.util.List;

/** Something that was asked of the bench and not done; nothing of it was kept. */
public final class Refused extends Exception {
  private static final long serialVersionUID = 1L;

  /** Why. */
  public enum Reason {
    /** It can't be understood. */
    NOT_UNDERSTOOD,
    /** There is no such thing. */
    MISSING,
    /** What was answered is not what is asked any more. */
    MEANWHILE,
    /** The store can't be written. */
    NOT_WRITTEN
  }

  private final Reason reason;
  private final transient List<Problem> problems;

  /** For a reason in words. */
  public Refused(Reason reason, String text) {
    this(reason, List.of(new Problem(Place.NOWHERE, "", Severity.ERROR, text, "")));
  }

  /** For what is wrong in an input. */
  public Refused(Reason reason, List<Problem> problems) {
    super(reason.name());
    this.reason = reason;
    this.problems = List.copyOf(problems);
  }

  /** Why. */
  public Reason reason() {
    return reason;
  }

  /** Why, in words. */
  public List<Problem> problems() {
    return problems;
  }
}
