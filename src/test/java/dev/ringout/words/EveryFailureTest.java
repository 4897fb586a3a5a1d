package dev.ringout.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.meter.Failure;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Every way in which a meter gives no reading has its sentence, its code and its line in a page.
 */
class EveryFailureTest {
  private static final List<Failure> EVERY =
      List.of(
          new Failure.NoAddress("meter"),
          new Failure.NoLink(),
          new Failure.NoProfile("mine", "line 2: ..."),
          new Failure.Refused("TCPIP::192.0.2.7::5025::SOCKET"),
          new Failure.NotFound("ASRL/dev/ttyUSB0::INSTR", "there is no such port"),
          new Failure.InUse("ASRLCOM3::INSTR"),
          new Failure.NoSerial("not permitted"),
          new Failure.Gone("ASRLCOM3::INSTR"),
          new Failure.Silent("READ?", 3000),
          new Failure.HalfLine("+1.2", 3000),
          new Failure.TooLong("1111", 4096),
          new Failure.Garbage("READ?", "#$%\u0007"),
          new Failure.Unasked("*ESE?", "+3.1E-01"),
          new Failure.Queued("READ?", "-230,\"Data corrupt or stale\""),
          new Failure.OtherMeter("A,B,1,1", "A,B,2,1"),
          new Failure.OtherQuantity("1.2 V", "V"),
          new Failure.Unsettled(10_000, "12.3"),
          new Failure.NoValue(3000, "9.91E37"),
          new Failure.SetOtherwise("FUNC?", "\"RES\"", "\"CONT\""),
          new Failure.NoVolts("5.00 MOhm"),
          new Failure.NotTogether("47 Ω"),
          new Failure.NotKept("data", "no space left"),
          new Failure.Interrupted());

  @Test
  void none_is_missing_here() {
    assertEquals(
        Arrays.stream(Failure.class.getPermittedSubclasses())
            .map(Class::getSimpleName)
            .sorted()
            .toList(),
        EVERY.stream().map(one -> one.getClass().getSimpleName()).sorted().toList());
  }

  @Test
  void each_is_a_sentence_without_control_characters() {
    for (Failure failure : EVERY) {
      String sentence = MeterWords.failure(failure);
      assertFalse(sentence.isBlank());
      assertFalse(sentence.matches(".*(\\[|\\bnull\\b|\\p{Cntrl}).*"), sentence);
    }
  }

  @Test
  void each_has_its_name_as_code_in_the_schema_and_a_line_in_the_reference() throws IOException {
    String schema = Files.readString(Path.of("docs/reference/meters.schema.json"));
    String page = Files.readString(Path.of("docs/reference/meters.md"));
    for (Failure failure : EVERY) {
      String code =
          failure
              .getClass()
              .getSimpleName()
              .replaceAll("(?<=[a-z])(?=[A-Z])", "-")
              .toLowerCase(java.util.Locale.ROOT);
      assertEquals(code, MeterWords.code(failure));
      assertTrue(schema.contains("\"" + code + "\""), code);
      assertTrue(page.contains("| `" + code + "` |"), code);
    }
  }
}
