package dev.ringout.jobs;

import dev.ringout.source.Problem;
import java.util.List;

/** A request that can't be meant: it names what the list does not have. */
public final class WrongRequest extends Exception {
  private static final long serialVersionUID = 1L;

  /** Which part of a request. */
  public enum Part {
    /** The items to which a job is limited. */
    ONLY,
    /** Wires that were touched. */
    TOUCHED,
    /** Items that were opened. */
    OPENED,
    /** An item that has another name. */
    RENAME,
    /** What is on a sleeve. */
    SLEEVE,
    /** The folder of the user's own tables. */
    TABLES,
    /** Positions of switches. */
    STATE,
    /** A wire. */
    WIRE,
    /** A point. */
    POINT,
    /** Readings of other units. */
    OTHERS,
    /** A cell of a reading, or a test. */
    CELL,
    /** Who says it. */
    WHO,
    /** A person of the shop. */
    PERSON,
    /** The key to seal with. */
    SEAL_KEY,
    /** The key that is trusted. */
    TRUSTED_KEY,
    /** The list of keys that are trusted. */
    KEY_LIST,
    /** The list of ids by which people stand in a record. */
    IDS
  }

  private final Part part;
  private final transient List<Problem> problems;

  WrongRequest(Part part, String text) {
    this(part, text, List.of());
  }

  private WrongRequest(Part part, String text, List<Problem> problems) {
    super(text);
    this.part = part;
    this.problems = problems;
  }

  /** What a job makes of a request once its inputs are read. */
  interface Job<T> {
    T run() throws WrongRequest;
  }

  /**
   * Runs a job whose inputs are read. Where its request can't be meant, what is odd in the inputs
   * is told with it: often it says why, for the list is not the one that was thought of.
   */
  static <T> Answer<T> answer(Job<T> job, Inputs inputs) throws WrongRequest {
    try {
      return Answer.of(job.run(), inputs);
    } catch (WrongRequest e) {
      throw e.after(inputs);
    }
  }

  /** The same, with what was odd in the inputs that were read before. */
  WrongRequest after(Inputs inputs) {
    return new WrongRequest(part, text(), inputs.problems().list());
  }

  /** The part that is wrong. */
  public Part part() {
    return part;
  }

  /** What was odd in the inputs, as far as they were read before this was seen. */
  public List<Problem> problems() {
    return problems;
  }

  /** What is wrong with it. */
  public String text() {
    return String.valueOf(getMessage());
  }
}
