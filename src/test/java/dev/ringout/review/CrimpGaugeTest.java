package dev.ringout.review;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.circuit.Circuit;
import dev.ringout.source.Severity;
import dev.ringout.standards.CopperWire;
import dev.ringout.standards.Tables;
import dev.ringout.support.UnitUnderTest;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The wire ranges are those of SAE AS39029/56 and /58; see PublishedValuesTest. */
class CrimpGaugeTest {
  @TempDir Path folder;

  private List<Remark> remarks(UnitUnderTest unit) {
    return Review.of(
            Circuit.of(unit.harness()),
            Tables.published(),
            CopperWire.published(),
            List.of(),
            Optional.empty())
        .remarks()
        .stream()
        .filter(remark -> remark.rule().equals("crimp-gauge"))
        .filter(remark -> remark.severity() == Severity.ERROR)
        .toList();
  }

  @Test
  void a_wire_too_thick_for_its_cavity_s_contact_is_an_error_with_its_source() {
    List<Remark> remarks =
        remarks(new UnitUnderTest(folder).wire("W1,J1-4,P2-4,16").pin("J1,4,20").pin("P2,4,16"));

    assertEquals(1, remarks.size());
    Remark remark = remarks.get(0);
    assertEquals(Severity.ERROR, remark.severity());
    assertEquals("J1-4", remark.point());
    assertEquals("W1 is AWG 16; a size 20 contact takes AWG 24 to 20", remark.text());
    assertTrue(remark.source().contains("AS39029"));
  }

  @ParameterizedTest
  @CsvSource({
    "20,M39029/58-363,0",
    "18,M39029/58-363,1",
    "28,22D,0",
    "30,22D,1",
    "0.5 mm²,20,0",
    "0.75 mm²,20,1",
    "0.14 mm²,20,1",
    "20,unknown,0"
  })
  void the_contact_may_be_named_with_the_wire_by_size_or_part_number(
      String gauge, String contact, int remarks) {
    assertEquals(
        remarks,
        remarks(new UnitUnderTest(folder).wire("W1,J1-4,P2-4," + gauge + ",," + contact)).size());
  }

  @Test
  void the_contact_named_with_the_wire_wins_over_the_cavity_s() {
    assertEquals(
        0, remarks(new UnitUnderTest(folder).wire("W1,J1-4,P2-4,16,,16").pin("J1,4,20")).size());
  }

  @Test
  void wire_ends_that_could_not_be_checked_are_counted() {
    var result =
        new UnitUnderTest(folder)
            .wire("W1,J1-4,P2-4,20,,20")
            .wire("W2,J1-5,P2-5,20,,unknown")
            .reads("J1-4", "P2-4", "0.01")
            .check();
    assertTrue(
        result.review().remarks().stream()
            .anyMatch(remark -> remark.text().startsWith("3 wire ends of connectors")),
        result.review().remarks().toString());
  }

  @Test
  void a_remark_is_shown_beside_the_readings_and_does_not_change_the_verdict() {
    var result =
        new UnitUnderTest(folder).wire("W1,J1-4,P2-4,16,,20").reads("J1-4", "P2-4", "0.01").check();
    assertEquals(1, result.review().count(Severity.ERROR));
    assertEquals("conforms", result.verdict().word());
  }
}
