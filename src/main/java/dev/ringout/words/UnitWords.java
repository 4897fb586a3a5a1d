package dev.ringout.words;

import dev.ringout.check.CheckResult.Verdict;
import dev.ringout.units.Numbers;
import java.util.Optional;

/** How a unit of the store stands, in a few words. */
public final class UnitWords {
  private UnitWords() {}

  /**
   * A verdict that was kept.
   *
   * @param conceded readings out of limits that an inspector accepts
   * @param insulationTest whether the list asks for one
   */
  public static String verdict(
      Optional<Verdict> verdict, int faults, int notProven, int conceded, boolean insulationTest) {
    return plain(verdict, faults, notProven, conceded)
        + (insulationTest ? "" : ", no insulation test");
  }

  private static String plain(Optional<Verdict> verdict, int faults, int notProven, int conceded) {
    return verdict
        .map(
            one ->
                switch (one) {
                  case CONFORMS ->
                      conceded == 0
                          ? "conforms"
                          : "conforms by waiver, "
                              + Numbers.count(conceded, "reading")
                              + " out of limits";
                  case FAULTS ->
                      "has " + (faults == 0 ? "failing readings" : Numbers.count(faults, "fault"));
                  case INCOMPLETE -> "is not complete, " + notProven + " not proven";
                })
        .orElse("has a verdict that this program does not know");
  }
}
