package dev.ringout.circuit;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.ringout.circuit.Expected.ThroughParts;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What ways through parts read, and whether a meter tells one from another. */
class ThroughPartsTest {
  private static ThroughParts parts(double low, double high) {
    return new ThroughParts(low, high, 1, false, List.of(0));
  }

  /** 300 Ω ± 10 % is not told from 300.5 Ω ± 10 %, nor from 320 Ω; from 400 Ω it is. */
  @ParameterizedTest
  @CsvSource({
    "270, 330, 270, 331, false",
    "270, 330, 270, 330, false",
    "270, 330, 288, 352, false",
    "270, 330, 360, 440, true",
    "270, 330, 325, 400, true",
    "43, 53, 0, Infinity, true",
    "0, Infinity, 0, Infinity, false",
    "300, Infinity, Infinity, Infinity, true",
    "Infinity, Infinity, Infinity, Infinity, false"
  })
  void a_reading_tells_two_ways_apart_that_have_little_in_common(
      double low, double high, double otherLow, double otherHigh, boolean isTold) {
    assertEquals(isTold, parts(low, high).isToldFrom(parts(otherLow, otherHigh)));
    assertEquals(isTold, parts(otherLow, otherHigh).isToldFrom(parts(low, high)));
  }
}
