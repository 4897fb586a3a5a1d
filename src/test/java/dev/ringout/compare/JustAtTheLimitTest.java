package dev.ringout.compare;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.ringout.check.CheckResult;
import dev.ringout.support.UnitUnderTest;
import java.nio.file.Path;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Readings at a limit and a digit to either side of it: 1 Ω joined, 100 kΩ open, 100 MΩ good. */
class JustAtTheLimitTest {
  @TempDir Path folder;

  private UnitUnderTest unit() {
    return new UnitUnderTest(folder)
        .wire("W1,J1-A,P2-1")
        .wire("W2,J1-B,P2-2")
        .wire("W3,J1-C,DS1-1")
        .wire("W4,DS1-2,P2-3")
        .part("DS1,1,2,lamp,40,20")
        .wire("W5,J1-D,RV1-1")
        .wire("W6,RV1-2,P2-4")
        .part("RV1,1,2,suppressor,");
  }

  private static Judged first(CheckResult result) {
    return result.comparison().inForce().get(0);
  }

  @ParameterizedTest
  @CsvSource({
    "<1,CONFORMS,JOINED",
    "<1.01,NOT_JUDGED,UNKNOWN",
    ">0.99,NOT_JUDGED,UNKNOWN",
    ">1,RESISTIVE,RESISTIVE",
    ">99.9k,RESISTIVE,RESISTIVE",
    ">100k,OPEN,APART",
    "1.000,CONFORMS,JOINED",
    "1.002,RESISTIVE,RESISTIVE",
    "99.99k,RESISTIVE,RESISTIVE",
    "100.00k,OPEN,APART"
  })
  void a_join(String reading, Outcome outcome, Observed observed) {
    Judged judged = first(unit().reads("J1-A", "P2-1", reading).check());
    assertEquals(outcome, judged.outcome());
    assertEquals(observed, judged.observed());
  }

  @ParameterizedTest
  @CsvSource({
    "<1,UNEXPECTED_JOIN,JOINED",
    "<1.01,RESISTIVE,RESISTIVE",
    ">99.9k,NOT_JUDGED,UNKNOWN",
    ">100k,CONFORMS,APART",
    "5.000,UNEXPECTED_JOIN,JOINED",
    "5.002,RESISTIVE,RESISTIVE",
    "99.99k,RESISTIVE,RESISTIVE",
    "100.00k,CONFORMS,APART"
  })
  void a_gap(String reading, Outcome outcome, Observed observed) {
    Judged judged = first(unit().reads("J1-A", "P2-2", reading).check());
    assertEquals(outcome, judged.outcome());
    assertEquals(observed, judged.observed());
  }

  /** A lamp of 40 Ω, 20 %, and up to 1 Ω of wires on either side. */
  @ParameterizedTest
  @CsvSource({
    "31,PART_VALUE,RESISTIVE",
    "32,CONFORMS,RESISTIVE",
    "48,CONFORMS,RESISTIVE",
    "60,PART_VALUE,RESISTIVE",
    "0.3,UNEXPECTED_JOIN,JOINED",
    "200k,PART_VALUE,APART",
    "<32,NOT_JUDGED,UNKNOWN",
    "<31.9,PART_VALUE,RESISTIVE",
    ">10,NOT_JUDGED,UNKNOWN",
    ">60,PART_VALUE,APART",
    "OL,PART_VALUE,APART",
    "PASS,NOT_JUDGED,UNKNOWN",
    "FAIL,PART_VALUE,UNKNOWN",
    "beep,NOT_JUDGED,UNKNOWN"
  })
  void a_way_through_a_part(String reading, Outcome outcome, Observed observed) {
    Judged judged = first(unit().reads("J1-C", "P2-3", reading).check());
    assertEquals(outcome, judged.outcome());
    assertEquals(observed, judged.observed());
  }

  /**
   * A bridge that is there by mistake has up to 5 Ω of its own (common practice, no source). A
   * suppressor is open to direct current: a steady reading is no lower than an open's.
   */
  @ParameterizedTest
  @CsvSource({
    "5.000,UNEXPECTED_JOIN",
    "5.002,PART_VALUE",
    "5k,PART_VALUE",
    "200k,CONFORMS",
    "OL,CONFORMS",
    ">5,NOT_JUDGED"
  })
  void a_part_that_is_open_to_direct_current(String reading, Outcome outcome) {
    assertEquals(outcome, first(unit().reads("J1-D", "P2-4", reading).check()).outcome());
  }

  @ParameterizedTest
  @CsvSource({
    "100,CONFORMS,APART",
    "99.9,LOW_INSULATION,APART",
    "0.1,LOW_INSULATION,APART",
    "0.0999,LOW_INSULATION,UNKNOWN",
    "<100,LOW_INSULATION,UNKNOWN",
    "<101,NOT_JUDGED,UNKNOWN",
    ">100,CONFORMS,APART",
    ">99,NOT_JUDGED,UNKNOWN",
    "PASS,NOT_JUDGED,UNKNOWN",
    "FAIL,LOW_INSULATION,UNKNOWN",
    "beep,NOT_JUDGED,UNKNOWN"
  })
  void insulation(String reading, Outcome outcome, Observed observed) {
    Judged judged = first(unit().insulation("J1-A", "J1-B", reading).check());
    assertEquals(outcome, judged.outcome());
    assertEquals(observed, judged.observed());
  }
}
