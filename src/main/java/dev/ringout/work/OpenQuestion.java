package dev.ringout.work;

import dev.ringout.readings.Measured;
import dev.ringout.readings.Side;

/** What the readings of an unknown unit leave open, or say twice. */
public sealed interface OpenQuestion {

  /** What is made of it, by its kind. */
  <T> T match(Cases<T> cases);

  /** A list of joins has no switches: readings in another position of one are left out. */
  record OtherPositionsLeftOut(int readings) implements OpenQuestion {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.otherPositionsLeftOut(this);
    }
  }

  /** More than a joint may have and less than counts as open. */
  record NeitherJoinedNorApart(Side from, Side to, Measured measured) implements OpenQuestion {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.neitherJoinedNorApart(this);
    }
  }

  /** Read apart, and other readings join the two. */
  record Contradicted(Side from, Side to, Measured measured) implements OpenQuestion {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.contradicted(this);
    }
  }

  /** One answer for each kind. */
  interface Cases<T> {
    /** See {@link OtherPositionsLeftOut}. */
    T otherPositionsLeftOut(OtherPositionsLeftOut question);

    /** See {@link NeitherJoinedNorApart}. */
    T neitherJoinedNorApart(NeitherJoinedNorApart question);

    /** See {@link Contradicted}. */
    T contradicted(Contradicted question);
  }
}
