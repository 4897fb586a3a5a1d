package dev.ringout.lot;

import dev.ringout.diagnose.Fault;
import java.util.Locale;

/**
 * What faults are counted by; each also says who or what is suspect where several units share one.
 */
public enum FaultSort {
  OPEN(Suspect.PAPER),
  SHORT(Suspect.PAPER),
  MISWIRE(Suspect.PAPER),
  HIGH_RESISTANCE(Suspect.TOOL),
  LOW_INSULATION(Suspect.PROCESS),
  WRONG_GAUGE(Suspect.PAPER),
  WRONG_PART(Suspect.PAPER),
  TEST(Suspect.TEST);

  private final Suspect suspect;

  FaultSort(Suspect suspect) {
    this.suspect = suspect;
  }

  /** What is more likely than that as many hands did the same wrong. */
  public enum Suspect {
    /** The list, the drawing or the label by which all were wired. */
    PAPER,
    /** The crimp tool, its setting, or the batch of contacts. */
    TOOL,
    /** What was done to all alike: cleaning, potting, storing, or a batch of inserts. */
    PROCESS,
    /** The sheet, the meter or its leads. */
    TEST
  }

  /** Who or what is suspect where several units share such a fault. */
  public Suspect suspect() {
    return suspect;
  }

  /** The word used in every output. */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** What a fault is counted by. */
  public static FaultSort of(Fault fault) {
    return fault.match(new Sorted());
  }

  private static final class Sorted implements Fault.Cases<FaultSort> {
    @Override
    public FaultSort open(Fault.Open fault) {
      return OPEN;
    }

    @Override
    public FaultSort shorted(Fault.Shorted fault) {
      return SHORT;
    }

    @Override
    public FaultSort miswire(Fault.Miswire fault) {
      return MISWIRE;
    }

    @Override
    public FaultSort highResistance(Fault.HighResistance fault) {
      return HIGH_RESISTANCE;
    }

    @Override
    public FaultSort highWire(Fault.HighWire fault) {
      return fault.isLikeliestOfAnotherGauge() ? WRONG_GAUGE : HIGH_RESISTANCE;
    }

    @Override
    public FaultSort unequalWire(Fault.UnequalWire fault) {
      return HIGH_RESISTANCE;
    }

    @Override
    public FaultSort wrongGauge(Fault.WrongGauge fault) {
      return WRONG_GAUGE;
    }

    @Override
    public FaultSort lowInsulation(Fault.LowInsulation fault) {
      return LOW_INSULATION;
    }

    @Override
    public FaultSort wrongPart(Fault.WrongPart fault) {
      return WRONG_PART;
    }

    @Override
    public FaultSort wrongSwitch(Fault.WrongSwitch fault) {
      return WRONG_PART;
    }

    @Override
    public FaultSort misread(Fault.Misread fault) {
      return TEST;
    }

    @Override
    public FaultSort slippedRows(Fault.SlippedRows fault) {
      return TEST;
    }

    @Override
    public FaultSort misscaled(Fault.Misscaled fault) {
      return TEST;
    }

    @Override
    public FaultSort exchangedRows(Fault.ExchangedRows fault) {
      return TEST;
    }

    @Override
    public FaultSort leadsNotNulled(Fault.LeadsNotNulled fault) {
      return TEST;
    }

    @Override
    public FaultSort onPaper(Fault.OnPaper fault) {
      return of(fault.same());
    }
  }
}
