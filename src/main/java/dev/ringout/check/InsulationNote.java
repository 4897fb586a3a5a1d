package dev.ringout.check;

import dev.ringout.compare.Judged;
import dev.ringout.harness.Part;
import java.util.List;

/**
 * What must be said about insulation readings beside their verdicts. Each kind holds its facts;
 * {@code words} says it.
 */
public sealed interface InsulationNote {

  /** What is made of it, by its kind: a writer that lacks a kind does not compile. */
  <T> T match(Cases<T> cases);

  /**
   * Parts between the two sides that do not bear the volts of a reading; the first of them first.
   */
  record Strained(Judged reading, double volts, List<Part> parts) implements InsulationNote {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.strained(this);
    }
  }

  /**
   * Low insulation was read at another temperature than 20 °C.
   *
   * @param lowestOhms the lowest value that was read
   * @param lowestAtReferenceOhms what it would be at 20 °C, by a rule of thumb: shown only
   */
  record Warmer(double celsius, double lowestOhms, double lowestAtReferenceOhms)
      implements InsulationNote {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.warmer(this);
    }
  }

  /** One answer for each kind. */
  interface Cases<T> {
    /** See {@link Strained}. */
    T strained(Strained note);

    /** See {@link Warmer}. */
    T warmer(Warmer note);
  }
}
