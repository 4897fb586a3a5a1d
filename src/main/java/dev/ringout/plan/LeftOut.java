package dev.ringout.plan;

import dev.ringout.compare.Coverage.Unprovable;
import dev.ringout.compare.Unproven;

/** What no step of a plan proves. Each kind holds its facts; {@code words} says it. */
public sealed interface LeftOut {

  /** What is made of it, by its kind: a writer that lacks a kind does not compile. */
  <T> T match(Cases<T> cases);

  /** What no reading shows while the parts between are in place. */
  record WithPartsInPlace(Unprovable unprovable) implements LeftOut {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.withPartsInPlace(this);
    }
  }

  /** Insulation, which the list asks for, and of which no test is planned. */
  record InsulationNotPlanned() implements LeftOut {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.insulationNotPlanned(this);
    }
  }

  /** What a good unit's readings would leave unproven. */
  record NotShown(Unproven unproven) implements LeftOut {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.notShown(this);
    }
  }

  /** One answer for each kind. */
  interface Cases<T> {
    /** See {@link WithPartsInPlace}. */
    T withPartsInPlace(WithPartsInPlace reason);

    /** See {@link InsulationNotPlanned}. */
    T insulationNotPlanned(InsulationNotPlanned reason);

    /** See {@link NotShown}. */
    T notShown(NotShown reason);
  }
}
