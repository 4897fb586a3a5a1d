package dev.ringout.meter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.readings.Measured;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Answers by SCPI-99, and lines of meters that only talk, are read as what they say. */
class WhatMetersSayTest {
  private static String scpi(String answer) {
    return told(ScpiAnswer.read(answer, 9.9e37, false));
  }

  private static String line(String line) {
    return told(DisplayLine.read(line, false));
  }

  private static String told(Shown shown) {
    return shown.match(
        new Shown.Cases<>() {
          @Override
          public String resistance(Shown.Resistance resistance) {
            Measured measured = resistance.measured();
            String volts =
                resistance.volts().isPresent() ? " at " + resistance.volts().getAsDouble() : "";
            return (measured.isBelowZero() ? "below zero " : "") + measured.text() + volts;
          }

          @Override
          public String noValue(Shown.NoValue none) {
            return "no value";
          }

          @Override
          public String held(Shown.Held held) {
            return "held";
          }

          @Override
          public String otherQuantity(Shown.OtherQuantity other) {
            return "other " + other.unit();
          }

          @Override
          public String withoutVolts(Shown.WithoutVolts without) {
            return "no volts";
          }

          @Override
          public String unreadable(Shown.Unreadable unreadable) {
            return "?";
          }
        });
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "12                  | 12 Ω",
        "+12                 | 12 Ω",
        "12.5                | 12.5 Ω",
        ".5                  | 0.5 Ω",
        "+1.25E+01           | 12.5 Ω",
        "1.25e1              | 12.5 Ω",
        "0                   | 0 Ω",
        "+4.70000000E+03     | 4.7 kΩ",
        "12.5 OHM            | 12.5 Ω",
        "12.5OHM             | 12.5 Ω",
        "1.2 KOHM            | 1.2 kΩ",
        "1.2 MOHM            | 1.2 MΩ",
        "12.5,OHM            | 12.5 Ω",
        "+1.25E+01OHM4W,+12.3SECS,+00042RDNG# | 12.5 Ω",
        "+9.9E37,+0          | OL",
        "12.5,OHM,+0.1       | 12.5 Ω",
        "12.5,+4.5E-01       | 12.5 Ω",
        "9.9E37              | OL",
        "+9.90000000E+37     | OL",
        "INF                 | OL",
        "INFinity            | OL",
        "9.91E37             | no value",
        "+9.91000000E+37     | no value",
        "NAN                 | no value",
        "-9.9E37             | below zero -OL",
        "NINF                | below zero -OL",
        "-INF                | below zero -OL",
        "-0.002              | below zero -0.002 Ω",
        "1.25 V              | other V",
        "1.25,VDC            | other VDC",
        "1.2 mOhm            | ?",
        "1.25.3              | ?",
        "1.2 3.4             | ?",
        "0,\"No error\"      | ?",
        "-113,\"Undefined\"  | ?",
        "E+01                | ?",
        "hello               | ?",
        "5.1,MΩ              | 5.1 MΩ",
        "0.5 kOhms           | 500 Ω",
        "0.5 Mohms           | 500 kΩ",
        "0.5 mohms           | ?",
        "47 Ω                | 47 Ω",
        "47 \u2126           | 47 Ω",
        "4.7 kΩ              | 4.7 kΩ",
        "4.7 mΩ              | ?",
        "4.7,mΩ              | ?",
        "0.5 kOhms,HOLD      | ?",
        "47 ΩV               | ?",
        "0.5,0,MOHM          | ?",
        "0.5,,MOHM           | ?",
        "0.5,MOHM;0          | ?",
        "0.5 OHM,HOLD        | ?",
        "+9,90000000E+37     | ?",
        "0,21                | ?",
        "4,7E1               | ?",
        "1,234               | ?",
        "1.234,5             | ?",
        "9.9E37 V            | other V",
        "9.9E37,V            | other V",
        "INF,V               | ?",
        "0,+1.2E+01          | ?",
        "+0,+9.9E+37         | ?",
        "1,+1.2E+01          | ?",
        "+1.2E+01,+9.9E+37   | ?",
        "+1.2E+01,+0         | 12 Ω",
        "OL                  | OL",
        "-OL                 | below zero -OL",
        "OVERLOAD            | OL",
      })
  void an_answer_is_read_by_scpi_99(String answer, String means) {
    assertEquals(means, scpi(answer));
  }

  @Test
  void a_meter_that_says_1E9_where_it_means_over_range_has_its_floor() {
    assertEquals("OL", told(ScpiAnswer.read("+1.00000000E+09", 1e9, false)));
    assertEquals("1 GΩ", scpi("+1.00000000E+09"));
    assertEquals("999 MΩ", told(ScpiAnswer.read("9.99E8", 1e9, false)));
  }

  @Test
  void the_second_field_of_an_insulation_tester_is_its_volts() {
    assertEquals("2 GΩ at 500.0", told(ScpiAnswer.read("2.0E+09,5.00E+02", 9.9e37, true)));
    assertEquals("2 GΩ at 500.0", told(ScpiAnswer.read("2.0E+09,500 V", 9.9e37, true)));
    assertEquals("no volts", told(ScpiAnswer.read("2.0E+09", 9.9e37, true)));
    for (String noVolts : new String[] {"9.91E37", "1E9", "-500", "500,MOHM"}) {
      assertEquals("?", told(ScpiAnswer.read("5.0E+08," + noVolts, 9.9e37, true)), noVolts);
    }
    assertEquals("?", told(ScpiAnswer.read("500,5.0E+08", 9.9e37, true)), "the other way round");
    assertEquals("no volts", told(ScpiAnswer.read("2.0E+09,0", 9.9e37, true)), "no test is on");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "0.312 Ω             | 0.312 Ω",
        "000.31 Ohm          | 0.31 Ω",
        "+0.31 ohms          | 0.31 Ω",
        "12.3mΩ              | 0.0123 Ω",
        "1.234 kOhm          | 1.23 kΩ",
        "1.234 KOHM          | 1.23 kΩ",
        "1.234 MOHM          | 1.23 MΩ",
        "1.234 MΩ            | 1.23 MΩ",
        "RES 0.312 Ω AUTO    | 0.312 Ω",
        "RES  1.23 k         | 1.23 kΩ",
        "OHM 12.3            | 12.3 Ω",
        "kOhm 1.234          | 1.23 kΩ",
        "CONT 0.3 Ohm        | 0.3 Ω",
        "0,31 Ω              | 0.31 Ω",
        "1.5E+3 Ohm          | 1.5 kΩ",
        "OL                  | OL",
        ".OL MΩ              | OL",
        "O.L                 | OL",
        "0L                  | OL",
        "0.L Ω               | OL",
        "0L. MΩ              | OL",
        "OL. MOhm            | OL",
        "RES O.L MOhm        | OL",
        "-OL                 | below zero -OL",
        "O L                 | OL",
        "RES OPEN            | OL",
        "∞ Ω                 | OL",
        "OL mV               | other mV",
        "1.234 k Ohm         | 1.23 kΩ",
        "1.234 M Ω           | 1.23 MΩ",
        "> 1.00 GΩ           | > 1 GΩ",
        ">200MOhm            | > 200 MΩ",
        "< 0.1 Ω             | < 0.1 Ω",
        "-0.02 Ω             | below zero -0.02 Ω",
        "- 0.02 Ω            | below zero -0.02 Ω",
        "----                | no value",
        "RES ---- Ohm        | no value",
        "HOLD 0.3 Ω          | held",
        "0.3 Ω MAX           | held",
        "1.234 V DC          | other V",
        "DIODE 0.512 V       | other DIODE",
        "23 °C               | other °C",
        "512 V 1.23 GΩ       | 1.23 GΩ at 512.0",
        "1.23 GOhm, 512 V    | 1.23 GΩ at 512.0",
        "> 10.0 GΩ 1.02 kV   | > 10 GΩ at 1020.0",
        "0.3                 | ?",
        "1,234 Ω             | ?",
        "0.3 Ω 0.4 Ω         | ?",
        "0.3 Ω V             | ?",
        "1.2.3 Ω             | ?",
        "#@!                 | ?",
        "hello               | ?",
        "DCV 0.21 Ohm        | ?",
        "47.0 MEG OHM        | 47 MΩ",
        "47 Kilo Ohm         | 47 kΩ",
        "47 MegOhm           | 47 MΩ",
        "47 Megohms          | 47 MΩ",
        "47 kilohms          | 47 kΩ",
        "47 milliohms        | 0.047 Ω",
        "2W 0.21 Ohm         | 0.21 Ω",
        "4W 0.21 Ohm         | 0.21 Ω",
        "0.21 Ohm, 4-wire    | 0.21 Ω",
        "0.21OHM4W           | 0.21 Ω",
        "0.21 4W             | ?",
        "0.21 W              | other W",
        "42W 0.21 Ohm        | other W",
        "Open                | OL",
        "OVL                 | OL",
        "OVERFLOW            | OL",
        "Overload            | OL",
        "Inf Ohm             | OL",
        "> OL                | OL",
        ">OL MΩ              | OL",
        "< OL                | ?",
        "> 1.00 Ohm OL       | ?",
        ">= 1.00 GOhm        | > 1 GΩ",
        "≥ 1.00 GΩ           | > 1 GΩ",
        "<= 0.1 Ω            | < 0.1 Ω",
        "OLkOhm              | OL",
        "OLkΩ                | OL",
        "O.LMOhm             | OL",
        "OLkV                | ?",
        "OPENLEAD            | ?",
        "Open lead 0.21 Ohm  | ?",
        "open 0.21 Ohm       | ?",
        "OHM 1.234 kOhm      | 1.23 kΩ",
        "OH  0.312  Ohm      | 0.312 Ω",
        "0.312,OHM,AUTO      | 0.312 Ω",
        "RES,0.312,kOhm      | 312 Ω",
        "RES,47,kOhm         | ?",
        "0.312 Ohm 4W        | 0.312 Ω",
        "AUTO 0.312 Ohm RS   | 0.312 Ω",
        "0,0012,Ohm          | ?",
        "0012,31 Ohm, AUTO   | ?",
        "1,23 GΩ 512,5 V     | 1.23 GΩ at 512.5",
        "21 Oh               | ?",
        "O/L MOhm            | OL",
        "O/L 0.21 Ohm        | ?",
        "0.21 Volt           | other Volt",
        "MEG 47 Ohm          | ?",
        "47 Ohm MEG          | ?",
        "47 MEG kOhm         | ?",
        "47 MEG              | ?",
        "M 47 Ohm            | ?",
        "47 Ohm M            | ?",
        "kΩ 47 Ω             | ?",
        "4k7 Ohm             | ?",
        "47 E3 Ohm           | ?",
        "INVALID 0.21 Ohm    | ?",
        "RANGE 400 Ohm       | ?",
        "LOW BAT 0.21 Ohm    | ?",
        "DH 0.21 Ohm         | held",
        "REL 0.21 Ohm        | held",
        "--0.21 Ohm          | ?",
        "12.34 kOL MOhm      | ?",
        "OL0.21 Ohm          | ?",
      })
  void a_line_of_a_meter_that_talks_is_read(String line, String means) {
    assertEquals(means, line(line));
  }

  /** A display over its range whose line came a little damaged is no join. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "0.0L Ohm", "0.00 L Ohm", "0 L Ohm", "0. L Ohm", "00.L Ohm", "00L Ohm", "0L0 Ohm",
            "0.L0 Ohm",
        "0.OL Ohm", "0OL Ohm", "0FL Ohm", "0.LO Ohm", "0 LO Ohm", "1O Ohm", "4q7 Ohm", "0.2l Ohm",
        "4.O Ohm", "4,O Ohm", "47q Ohm", "1e Ohm", "kOhm,47"
      })
  void what_is_glued_to_a_number_and_is_no_unit_is_not_passed_over(String line) {
    String told = line(line);
    assertTrue(told.equals("?") || told.equals("OL"), line + " is told as " + told);
  }

  /** Volts where no tester puts them are on the circuit: take it for live. */
  @Test
  void volts_beside_ohms_are_an_insulation_testers_alone() {
    MeterProfile.Talk plain = new MeterProfile.Talk(MeterProfile.Sends.STREAM, "", false, false);
    MeterProfile.Talk tester = new MeterProfile.Talk(MeterProfile.Sends.STREAM, "", false, true);
    assertEquals("other VAC", told(DisplayLine.read("0.00 Ohm 230 VAC", plain)));
    assertEquals("other V", told(DisplayLine.read("0.00 Ohm 24 V", plain)));
    assertEquals("1.23 GΩ at 512.0", told(DisplayLine.read("512 V 1.23 GΩ", tester)));
    assertEquals("no volts", told(DisplayLine.read("5.00 MOhm", tester)));
    assertEquals("no volts", told(DisplayLine.read("OL GOhm 0 V", tester)));
    assertEquals("other VAC", told(DisplayLine.read("1.23 GOhm 230 VAC", tester)));
    assertEquals("?", told(DisplayLine.read("1.23 GOhm -500 V", tester)));
    assertEquals("other V", told(DisplayLine.read("1.23 GOhm >500 V", tester)));
    assertEquals("?", told(DisplayLine.read("1.23 GOhm 50000 V", tester)));
  }

  @ParameterizedTest
  @ValueSource(strings = {"0.31 \u2126", "0.31 \u00ea", "0.31 \u00f4", "0.31 \u00a6\u00b8"})
  void the_ohm_sign_has_many_codes(String line) {
    assertEquals("0.31 Ω", line(line));
  }

  /** Twenty thousand blanks once took half a minute to be understood. */
  @Test
  void what_is_longer_than_any_display_is_noise() {
    assertEquals(new Shown.Unreadable(), DisplayLine.read("0.31" + " ".repeat(300) + "Ohm", true));
    assertEquals(new Shown.Unreadable(), DisplayLine.read("OL" + " ".repeat(20_000) + "x", true));
    assertTrue(DisplayLine.read("0.31 Ohm" + " ".repeat(300), true).resistance().isPresent());
    String far = "+3.1E-01" + " ".repeat(300) + "OHM";
    assertEquals(new Shown.Unreadable(), ScpiAnswer.read(far, 9e36, false));
    assertTrue(ScpiAnswer.read(far.replaceAll(" +", " "), 9e36, false).resistance().isPresent());
  }

  @Test
  void a_number_without_a_unit_is_ohms_where_the_profile_says_so() {
    assertEquals("0.31 Ω", told(DisplayLine.read("0.31", true)));
    assertEquals("1.31 kΩ", told(DisplayLine.read("1.31 k", true)));
  }

  @Test
  void the_last_digit_is_that_of_the_display() {
    assertEquals(
        0.0005,
        DisplayLine.read("0.312 Ω", false)
            .resistance()
            .flatMap(one -> one.measured().value())
            .orElseThrow()
            .halfDigitOhms(),
        1e-12);
  }

  @Test
  void damaged_lines_are_never_a_smaller_value_that_stands_alone() {
    assertTrue(DisplayLine.read("\u0000\u0001\u00ff", false).resistance().isEmpty());
    assertTrue(ScpiAnswer.read("", 9.9e37, false).resistance().isEmpty());
    assertEquals(
        OptionalDouble.empty(),
        DisplayLine.read("0.3 Ω", false).resistance().orElseThrow().volts());
  }
}
