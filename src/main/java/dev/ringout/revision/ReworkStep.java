package dev.ringout.revision;

import dev.ringout.harness.Link;
import dev.ringout.harness.Point;
import java.util.Locale;
import java.util.Optional;

/**
 * One thing to do at the bench.
 *
 * <p>A wire is known by its place in the earlier list, counted on through the wires that are made
 * new: {@code which}.
 */
public sealed interface ReworkStep {

  /** What is made of it, by its kind. */
  <T> T match(Cases<T> cases);

  /** Counted from 1 through all visits. */
  int number();

  /** What is done. */
  Do what();

  /** The number on the wire while the step is done; empty for a jumper. */
  String wire();

  /** Where. */
  Point at();

  /** What is done. */
  enum Do {
    /** Take a wire's end off its point. */
    DISCONNECT,
    /** Put a wire's end on its point. */
    CONNECT,
    /** Draw out a wire whose two ends are off. */
    PULL,
    /** Cap and tie back the ends of a core that stays in its cable. */
    STOW,
    /** Take a jumper off. */
    UNLINK,
    /** Put a jumper on. */
    LINK;

    /** The word for it in JSON. */
    public String word() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  /**
   * A wire's end comes off its point.
   *
   * @param next where it goes then; absent for a wire that goes altogether
   */
  record Disconnect(int number, int which, String wire, Point at, Optional<Point> next)
      implements ReworkStep {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.disconnect(this);
    }

    @Override
    public Do what() {
      return Do.DISCONNECT;
    }
  }

  /**
   * A wire's end goes on its point.
   *
   * @param from where it came from; absent for a new wire
   * @param newContact the contact that it gets; empty where it keeps its own or is new
   */
  record Connect(
      int number, int which, String wire, Point at, Optional<Point> from, String newContact)
      implements ReworkStep {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.connect(this);
    }

    @Override
    public Do what() {
      return Do.CONNECT;
    }
  }

  /** A loose wire comes out, both its ends being off. */
  record Pull(int number, int which, String wire, Point at) implements ReworkStep {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.pull(this);
    }

    @Override
    public Do what() {
      return Do.PULL;
    }
  }

  /** A core stays in its cable, both its ends being off. */
  record Stow(int number, int which, String wire, Point at, String cable) implements ReworkStep {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.stow(this);
    }

    @Override
    public Do what() {
      return Do.STOW;
    }
  }

  /** A jumper comes off. */
  record TakeJumperOff(int number, Link jumper) implements ReworkStep {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.takeJumperOff(this);
    }

    @Override
    public Do what() {
      return Do.UNLINK;
    }

    @Override
    public String wire() {
      return "";
    }

    @Override
    public Point at() {
      return jumper.from();
    }
  }

  /** A jumper goes on. */
  record FitJumper(int number, Link jumper) implements ReworkStep {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.fitJumper(this);
    }

    @Override
    public Do what() {
      return Do.LINK;
    }

    @Override
    public String wire() {
      return "";
    }

    @Override
    public Point at() {
      return jumper.from();
    }
  }

  /** One answer for each kind. */
  interface Cases<T> {
    /** See {@link Disconnect}. */
    T disconnect(Disconnect step);

    /** See {@link Connect}. */
    T connect(Connect step);

    /** See {@link Pull}. */
    T pull(Pull step);

    /** See {@link Stow}. */
    T stow(Stow step);

    /** See {@link TakeJumperOff}. */
    T takeJumperOff(TakeJumperOff step);

    /** See {@link FitJumper}. */
    T fitJumper(FitJumper step);
  }
}
