package dev.ringout.meter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Where a meter is, in the form of VPP-4.3 or in short. */
class MeterAddressTest {
  @ParameterizedTest
  @CsvSource({
    "TCPIP::192.0.2.7::5025::SOCKET, TCPIP::192.0.2.7::5025::SOCKET",
    "tcpip0::meter.local::5025::socket, TCPIP::meter.local::5025::SOCKET",
    "192.0.2.7:5025, TCPIP::192.0.2.7::5025::SOCKET",
    "localhost:5025, TCPIP::localhost::5025::SOCKET",
    "[::1]:5025, TCPIP::[::1]::5025::SOCKET",
    "TCPIP::192.0.2.7::hislip0::INSTR, TCPIP::192.0.2.7::hislip0::INSTR",
    "TCPIP::192.0.2.7::hislip0, TCPIP::192.0.2.7::hislip0::INSTR",
    "'TCPIP::127.0.0.1::hislip0,5026::INSTR', 'TCPIP::127.0.0.1::hislip0,5026::INSTR'",
    "ASRL/dev/ttyUSB0::INSTR, ASRL/dev/ttyUSB0::INSTR",
    "/dev/ttyUSB0, ASRL/dev/ttyUSB0::INSTR",
    "ASRLCOM3::INSTR, ASRLCOM3::INSTR",
    "ASRL3::INSTR, ASRLCOM3::INSTR",
    "COM3, ASRLCOM3::INSTR",
    "none, none",
    "practice, practice",
  })
  void an_address_is_understood(String text, String means) throws MeterTrouble {
    assertEquals(means, MeterAddress.of(text).text());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "meter",
        "192.0.2.7",
        "192.0.2.7:0",
        "192.0.2.7:65536",
        "TCPIP::192.0.2.7::SOCKET",
        "TCPIP::::5025::SOCKET",
        "GPIB0::22::INSTR",
        "http://192.0.2.7",
      })
  void what_is_no_address_is_said(String text) {
    MeterTrouble trouble = assertThrows(MeterTrouble.class, () -> MeterAddress.of(text));
    assertEquals(new Failure.NoAddress(text), trouble.failure());
  }
}
