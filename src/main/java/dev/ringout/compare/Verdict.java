package dev.ringout.compare;

import java.util.Optional;

/**
 * What a reading shows, and what follows for the unit.
 *
 * @param why of what is not judged: why not
 */
record Verdict(Observed observed, Outcome outcome, Optional<NotJudged> why) {
  static Verdict of(Observed observed, Outcome outcome) {
    return new Verdict(observed, outcome, Optional.empty());
  }

  static Verdict notJudged(NotJudged why) {
    return new Verdict(Observed.UNKNOWN, Outcome.NOT_JUDGED, Optional.of(why));
  }

  static Verdict notTested() {
    return of(Observed.UNKNOWN, Outcome.NOT_TESTED);
  }
}
