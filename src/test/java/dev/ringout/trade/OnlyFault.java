package dev.ringout.trade;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.ringout.check.CheckResult;
import dev.ringout.diagnose.Fault;
import java.util.List;

/** The fault of a check that is to find one and no more. */
final class OnlyFault {
  private OnlyFault() {}

  static Fault of(CheckResult result) {
    List<Fault> faults = result.diagnosis().faults();
    assertEquals(1, faults.size(), faults.toString());
    return faults.get(0);
  }
}
