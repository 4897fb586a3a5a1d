package dev.ringout.words;

import dev.ringout.check.CheckResult.Verdict;
import dev.ringout.diagnose.Fault;
import dev.ringout.lot.ByFactor;
import dev.ringout.lot.Drift;
import dev.ringout.lot.FaultSort.Suspect;
import dev.ringout.lot.Lot;
import dev.ringout.lot.LotUnit;
import dev.ringout.lot.Proportion;
import dev.ringout.lot.SharedFault;
import dev.ringout.units.Numbers;
import dev.ringout.units.Ohms;
import dev.ringout.units.Text;
import java.util.ArrayList;
import java.util.List;

/** Many units side by side, as sentences. */
public final class LotWords {
  private static final int MOST_UNITS_NAMED = 12;
  private static final double MILLI = 1e-3;

  private LotWords() {}

  /** How many units there are, and how they stand. */
  public static String verdict(Lot lot) {
    List<String> parts = new ArrayList<>();
    int conform = lot.with(Verdict.CONFORMS).size();
    long byWaiver = lot.with(Verdict.CONFORMS).stream().filter(unit -> unit.conceded() > 0).count();
    parts.add(
        Text.of("%d %s", conform, conform == 1 ? "conforms" : "conform")
            + (byWaiver == 0 ? "" : " (" + byWaiver + " by waiver)"));
    int faulty = lot.with(Verdict.FAULTS).size();
    add(parts, faulty, faulty == 1 ? "has faults" : "have faults");
    int open = lot.with(Verdict.INCOMPLETE).size();
    add(parts, open, open == 1 ? "is not complete" : "are not complete");
    add(parts, lot.refused().size(), "can't be checked");
    return Text.of(
            "%s: %s.",
            Numbers.count(lot.units().size() + lot.refused().size(), "unit"),
            String.join(", ", parts))
        + (lot.harness().limits().demands().insulationTest()
            ? ""
            : " NO INSULATION TEST: the list asks for none.");
  }

  private static void add(List<String> parts, int count, String what) {
    if (count > 0) {
      parts.add(count + " " + what);
    }
  }

  /** How many passed at once, and what that says of others made the same way. */
  public static String firstPass(Lot lot) {
    Proportion first = lot.firstPassYield();
    if (first.of() == 0) {
      return "no unit's test has an end";
    }
    return Text.of(
        "%d of %d whose test has an end passed at once (%s); of units made like these %s to %s"
            + " would (95 %%)",
        first.count(),
        first.of(),
        percent(first.share()),
        percent(first.lowShare()),
        percent(first.highShare()));
  }

  private static String percent(double share) {
    return Math.round(100 * share) + " %";
  }

  /** How a unit stands. */
  public static String verdict(LotUnit unit) {
    if (unit.unread() > 0) {
      return Numbers.count(unit.unread(), "cell") + " not read";
    }
    return switch (unit.verdict()) {
      case CONFORMS ->
          unit.conceded() > 0
              ? "conforms by waiver"
              : unit.failedBefore() ? "conforms after retest" : "conforms";
      case FAULTS -> "FAULTS";
      case INCOMPLETE -> "not complete";
    };
  }

  /** What fails, where; or what is owed; empty for a unit that conforms. */
  public static String what(LotUnit unit) {
    List<String> parts = new ArrayList<>();
    unit.faults().forEach(fault -> parts.add(inShort(fault)));
    if (parts.isEmpty() && unit.failing() > 0) {
      parts.add(Numbers.count(unit.failing(), "failing reading") + " without an explanation");
    }
    if (unit.conceded() > 0) {
      parts.add(Numbers.count(unit.conceded(), "reading") + " out of limits accepted");
    }
    if (unit.verdict() == Verdict.INCOMPLETE) {
      if (unit.notTested() > 0) {
        parts.add(unit.notTested() + " not tested");
      }
      parts.add(
          unit.notProven() > 0
              ? unit.notProven() + " not proven"
              : "the values are good; ringout check says what it waits for");
    }
    return String.join("; ", parts);
  }

  /** A fault in a few words: its kind and where. */
  public static String inShort(Fault fault) {
    if (fault.wires().isEmpty() && fault.points().isEmpty()) {
      // It stands among others in a row: only a sentence ends in a full stop.
      return FaultSentences.summary(fault).replaceFirst("\\.$", "");
    }
    String where =
        fault.wires().isEmpty() || fault.wires().size() > 2
            ? Text.first(fault.points().stream().map(Object::toString).toList(), 2)
            : String.join(", ", fault.wires().stream().map(wire -> wire.name()).toList());
    return (FaultSentences.kind(fault) + " " + where).strip();
  }

  /** A fault that several units share. */
  public static String shared(SharedFault shared) {
    return Text.of(
        "%s: %s Units %s.",
        Numbers.count(shared.units().size(), "unit"),
        FaultSentences.summary(shared.fault()),
        Text.first(shared.units(), MOST_UNITS_NAMED));
  }

  /** Who or what is suspect of it. */
  public static String suspect(SharedFault shared) {
    return shared.isMoreThanChance()
        ? suspect(shared.sort().suspect())
        : "With so few units this may be chance.";
  }

  private static String suspect(Suspect suspect) {
    return switch (suspect) {
      case PAPER -> "Look at the list, the drawing and the sleeves first: all were wired by them.";
      case TOOL -> "Look at the crimp tool, its setting and the batch of contacts first.";
      case PROCESS ->
          "Look at what was done to all of them (cleaning, potting, storing), or at a batch of"
              + " inserts.";
      case TEST -> "Look at the sheet, the meter and its leads first, then at the units.";
    };
  }

  /** What must be known of a lot before anything is made of its spreads. */
  public static List<String> limits(Lot lot) {
    List<String> limits = new ArrayList<>();
    if (!lot.hasSiblings()) {
      limits.add(
          Text.of(
              "%s: with fewer than %d no join can be said to stand out from its siblings.",
              Numbers.count(lot.units().size(), "unit"), Lot.LEAST_SIBLINGS));
    } else if (lot.isSmall()) {
      limits.add(
          Text.of(
              "%s are few: the spread of so few may be wrong by half.",
              Numbers.count(lot.units().size(), "unit")));
    }
    return limits;
  }

  /** Units whose values are the same, digit for digit. */
  public static String sameValues(List<String> units) {
    return Text.of(
        "%s have the same values, digit for digit: a filled sheet was copied. Read %s again.",
        String.join(", ", units), units.size() == 2 ? "one of them" : "all but one");
  }

  /** By what a join stands out. */
  public static String outstanding(Lot.Outstanding one) {
    return Text.of(
        "%s in %s: %s %s than in its %s (%s of their spread)%s",
        one.spread().join(),
        one.of().unit(),
        small(Math.abs(one.of().ohms())),
        one.of().ohms() > 0 ? "more" : "less",
        Numbers.count(one.spread().units() - 1L, "sibling"),
        times(one.of().score()),
        "; " + byItself(one));
  }

  /** What its limit says of a reading that stands out. */
  public static String byItself(Lot.Outstanding one) {
    if (one.of().isAccepted()) {
      return "out of its limit, accepted by an inspector";
    }
    return one.of().fails() ? "it fails" : "within its limit";
  }

  /** {@code 7.2 times}. */
  public static String times(double score) {
    return Numbers.rounded(Math.abs(score), 2) + " times";
  }

  /** Milliohms where an ohm is much. */
  public static String small(double ohms) {
    return Math.abs(ohms) < 1 ? milliohms(ohms) + " mΩ" : Ohms.text(ohms);
  }

  /** Milliohms without their unit; what no meter shows is none. */
  public static String milliohms(double ohms) {
    return Numbers.rounded(Math.abs(ohms) < MILLI / 1000 ? 0 : ohms / MILLI, 3);
  }

  /** The same with its sign. */
  public static String signed(double ohms) {
    String text = small(ohms);
    return text.startsWith("-") || text.startsWith("0 ") ? text : "+" + text;
  }

  /** Whether a factor makes a difference. */
  public static String factor(ByFactor by) {
    String notStated =
        by.notStated() == 0
            ? ""
            : Text.of(" %s do not state it.", Numbers.count(by.notStated(), "unit"));
    if (by.byChance().isEmpty()) {
      return "Too few units of each to say whether they differ." + notStated;
    }
    return (by.differs()
            ? Text.of("They read differently (by chance %s).", odds(by.byChance().getAsDouble()))
            : "No difference that chance does not explain.")
        + notStated;
  }

  /** How the levels change from day to day. */
  public static String drift(Drift drift) {
    String days = Text.of("%s to %s, %d units", drift.first(), drift.last(), drift.units());
    return drift.isMoreThanChance()
        ? Text.of(
            "%s: all joins %s by %s a day (by chance %s). Look at the leads, the meter and the"
                + " temperature, then at the tool.",
            days,
            drift.ohmsADay() > 0 ? "rise" : "fall",
            small(Math.abs(drift.ohmsADay())),
            odds(drift.byChance()))
        : days + ": no change that chance does not explain.";
  }

  private static String odds(double chance) {
    return chance < 1e-4 ? "less than 1 in 10,000" : "1 in " + Math.round(1 / chance);
  }
}
