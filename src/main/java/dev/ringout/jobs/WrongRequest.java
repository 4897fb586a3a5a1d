package dev.ringout.jobs;

import java.util.Optional;

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
    /** The key to seal with. */
    SEAL_KEY,
    /** The key that is trusted. */
    TRUSTED_KEY
  }

  private final Part part;

  WrongRequest(Part part, String text) {
    super(text);
    this.part = part;
  }

  /** A name that is none, with the nearest that is one. */
  static WrongRequest noSuch(Part part, String name, String nearest) {
    return new WrongRequest(
        part,
        "the harness has no "
            + name
            + Optional.of(nearest)
                .filter(one -> !one.isEmpty())
                .map(one -> "; maybe " + one)
                .orElse(""));
  }

  /** The part that is wrong. */
  public Part part() {
    return part;
  }

  /** What is wrong with it. */
  public String text() {
    return String.valueOf(getMessage());
  }
}
