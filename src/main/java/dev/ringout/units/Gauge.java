package dev.ringout.units;

import java.util.Optional;

/** The size of a conductor: an American wire gauge or a cross-section in square millimetres. */
public sealed interface Gauge permits Gauge.Awg, Gauge.SquareMillimetres {

  /** What is made of it, by its kind: a use that lacks a kind does not compile. */
  <T> T match(Cases<T> cases);

  /** The American gauge that it is; absent where it is metric. */
  default Optional<Awg> asAwg() {
    return Optional.empty();
  }

  /** The square millimetres that it is; absent where it is an American gauge. */
  default Optional<Double> asSquareMillimetres() {
    return Optional.empty();
  }

  /** As a mechanic writes it: {@code AWG 20}, {@code AWG 4/0}, {@code 0.75 mm²}. */
  String label();

  /**
   * An American wire gauge.
   *
   * @param number the gauge number; 1/0 is 0, 2/0 is -1, 3/0 is -2, 4/0 is -3
   */
  record Awg(int number) implements Gauge {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.awg(this);
    }

    @Override
    public Optional<Awg> asAwg() {
      return Optional.of(this);
    }

    /** The gauge without its prefix: {@code 20} or {@code 4/0}. */
    public String size() {
      return number > 0 ? Integer.toString(number) : (1 - number) + "/0";
    }

    @Override
    public String label() {
      return "AWG " + size();
    }
  }

  /** A metric conductor, by its nominal cross-section. */
  record SquareMillimetres(double squareMillimetres) implements Gauge {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.squareMillimetres(this);
    }

    @Override
    public Optional<Double> asSquareMillimetres() {
      return Optional.of(squareMillimetres);
    }

    @Override
    public String label() {
      return Numbers.plain(squareMillimetres) + " mm²";
    }
  }

  /** One answer for each kind. */
  interface Cases<T> {
    /** See {@link Awg}. */
    T awg(Awg gauge);

    /** See {@link SquareMillimetres}. */
    T squareMillimetres(SquareMillimetres gauge);
  }
}
