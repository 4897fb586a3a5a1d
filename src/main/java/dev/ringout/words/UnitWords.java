package dev.ringout.words;

import dev.ringout.check.CheckResult.Verdict;
import dev.ringout.units.Numbers;
import java.util.Optional;

/** How a unit of the store stands, in a few words. */
public final class UnitWords {
  private UnitWords() {}

  /** A verdict that was kept. */
  public static String verdict(Optional<Verdict> verdict, int faults, int notProven) {
    return verdict
        .map(
            one ->
                switch (one) {
                  case CONFORMS -> "conforms";
                  case FAULTS ->
                      "has " + (faults == 0 ? "failing readings" : Numbers.count(faults, "fault"));
                  case INCOMPLETE -> "is not complete, " + notProven + " not proven";
                })
        .orElse("has a verdict that this program does not know");
  }
}
