package dev.ringout.meter;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What a profile may have sent to a meter: test volts are switched on by hand alone. */
class WhatIsSentTest {
  @ParameterizedTest
  @ValueSource(
      strings = {
        "OUTP ON",
        "OUTP1 ON",
        "OUTPUT2 ON",
        "SYST:OUTP ON",
        "::OUTP ON",
        "SENS:FUNC \"RES\";:OUTP ON",
        "SOUR2:VOLT 5",
        "[SOURce]:VOLT 500",
        "TEST1:STAR",
        "MAN:STAR",
        "HIPOT1",
        "SAFE1:STAR",
        "VOLT 500",
        "HV ON",
        "*RST\u000bOUTP ON"
      })
  void what_could_switch_volts_on_is_never_sent(String command) {
    for (String word : new String[] {"set-up", "two-wire", "query"}) {
      String profile = "speaks: scpi\n" + word + ": " + command + "\n";
      assertThrows(MeterTrouble.class, () -> MeterProfileText.read("hot", profile), profile);
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"*RST", "*CLS", "CONF:RES", "CONF:FRES 100", "SENS:RES:NPLC 1", "FORM:ELEM READ"})
  void what_sets_a_meter_to_ohms_is_sent(String command) {
    assertDoesNotThrow(
        () -> MeterProfileText.read("ohms", "speaks: scpi\nset-up: " + command + "\n"));
  }

  /** Over range means more than that, and no more. */
  @ParameterizedTest
  @CsvSource({
    "two-wire: CONF:RES 100, 100",
    "two-wire: CONFigure:SCALar:RESistance 1E3, 1000",
    "set-up: RES:RANG 10000, 10000",
    "two-wire: CONF:RES, -1",
    "set-up: RES:RANG:AUTO ON, -1",
    "set-up: RES:NPLC 1, -1"
  })
  void a_range_that_is_set_is_known(String line, double ohms) throws Exception {
    assertEquals(
        ohms,
        MeterProfileText.read("ranged", "speaks: scpi\n" + line + "\n")
            .language()
            .rangeOhms()
            .orElse(-1));
  }

  /** Noise decides what has settled: beyond ohms it would be anything. */
  @ParameterizedTest
  @ValueSource(strings = {"noise-ohms: 1000000", "query: *IDN?", "query: READ", "query:"})
  void a_profile_that_would_take_anything_is_refused(String line) {
    assertThrows(
        MeterTrouble.class,
        () -> MeterProfileText.read("odd", "speaks: scpi\n" + line + "\n"),
        line);
  }
}
