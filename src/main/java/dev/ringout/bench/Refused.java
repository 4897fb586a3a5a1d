package dev.ringout.bench;

import dev.ringout.jobs.Answer;
import dev.ringout.jobs.WrongRequest;
import dev.ringout.source.Place;
import dev.ringout.source.Problem;
import dev.ringout.source.Severity;
import dev.ringout.store.StoreTrouble;
import java.util.ArrayList;
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
    NOT_WRITTEN,
    /** Who asks has not signed in. */
    STRANGER,
    /** It is not for who asks. */
    NOT_ALLOWED,
    /** It was asked too often. */
    TOO_OFTEN
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

  /** For a store that can't be used. */
  public static Refused by(StoreTrouble trouble) {
    return new Refused(Reason.NOT_WRITTEN, "The store " + trouble.text());
  }

  /** For a request that names what is not there. */
  public static Refused by(WrongRequest wrong) {
    return new Refused(Reason.NOT_UNDERSTOOD, wrong.text());
  }

  /**
   * What was answered.
   *
   * @throws Refused where it was refused, with all that was wrong
   */
  public static <T> T given(Answer<T> answer) throws Refused {
    List<T> given = new ArrayList<>();
    List<Problem> problems =
        answer.match(
            one -> {
              given.add(one.value());
              return List.<Problem>of();
            },
            Answer.Refused::problems);
    if (given.isEmpty()) {
      throw new Refused(Reason.NOT_UNDERSTOOD, problems);
    }
    return given.get(0);
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
