package dev.ringout.revision;

import dev.ringout.harness.Point;
import dev.ringout.harness.Wire;

/**
 * Whether an end that moves gets to where it goes.
 *
 * @param wire the wire as the later revision has it
 * @param from where the end was
 * @param to where it goes
 * @param why what tells
 */
public record Reach(Wire wire, Point from, Point to, Why why) {

  /** Whether it gets there. */
  public Verdict verdict() {
    return why.verdict();
  }

  /** What can be told. */
  public enum Verdict {
    /** Within one item, or a longer wire goes the same way. */
    REACHES,
    /** It is shorter than what is listed for the way. */
    TOO_SHORT,
    /** Nothing listed tells: try it before anything is cut. */
    UNKNOWN
  }

  /** By what it is told. */
  public sealed interface Why {
    /** What is made of it, by its kind. */
    <T> T match(Cases<T> cases);

    /** What follows of it. */
    Verdict verdict();
  }

  /** It moves within an item. */
  public record StaysAtItem(String item) implements Why {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.staysAtItem(this);
    }

    @Override
    public Verdict verdict() {
      return Verdict.REACHES;
    }
  }

  /** The later list wants less of it than there is. */
  public record ListWantsLess(double metres, double wantedMetres) implements Why {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.listWantsLess(this);
    }

    @Override
    public Verdict verdict() {
      return Verdict.REACHES;
    }
  }

  /** Other wires are listed that go the same way; the shortest of them is known to reach. */
  public record OthersThatWay(double metres, double shortestMetres) implements Why {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.othersThatWay(this);
    }

    @Override
    public Verdict verdict() {
      return metres >= shortestMetres ? Verdict.REACHES : Verdict.TOO_SHORT;
    }
  }

  /** No length is listed for it. */
  public record NoLength() implements Why {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.noLength(this);
    }

    @Override
    public Verdict verdict() {
      return Verdict.UNKNOWN;
    }
  }

  /** No other wire goes that way. */
  public record NoOtherThatWay(double metres) implements Why {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.noOtherThatWay(this);
    }

    @Override
    public Verdict verdict() {
      return Verdict.UNKNOWN;
    }
  }

  /** One answer for each kind. */
  public interface Cases<T> {
    /** See {@link StaysAtItem}. */
    T staysAtItem(StaysAtItem why);

    /** See {@link ListWantsLess}. */
    T listWantsLess(ListWantsLess why);

    /** See {@link OthersThatWay}. */
    T othersThatWay(OthersThatWay why);

    /** See {@link NoLength}. */
    T noLength(NoLength why);

    /** See {@link NoOtherThatWay}. */
    T noOtherThatWay(NoOtherThatWay why);
  }
}
