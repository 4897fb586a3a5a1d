package dev.ringout.compare;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.ringout.check.CheckResult;
import dev.ringout.support.UnitUnderTest;
import dev.ringout.words.NotJudgedSentences;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A winding or shunt of fewer ohms than a join may have reads like one: what is read through it is
 * no wire. Plain circuit reasoning, no source.
 */
class LowPartsTest {
  @TempDir Path folder;

  /** A winding of 0.4 Ω between two wires of no gauge. */
  private CheckResult winding(String firstWire) {
    return new UnitUnderTest(folder)
        .withoutInsulationTest()
        .wire("W1,J1-1,M1-1")
        .wire("W2,J1-2,M1-2")
        .part("M1,1,2,winding,0.4,10,")
        .reads("J1-1", "M1-1", firstWire)
        .reads("J1-2", "M1-2", "0.02")
        .reads("M1-1", "M1-2", "0.4")
        .check();
  }

  private static List<String> notJudged(CheckResult result) {
    return result.comparison().inForce().stream()
        .filter(judged -> judged.why().isPresent())
        .map(NotJudgedSentences::why)
        .toList();
  }

  @Test
  void a_wire_that_reads_as_much_as_the_winding_behind_it_is_not_shown() {
    CheckResult result = winding("0.4");
    assertEquals(CheckResult.Verdict.INCOMPLETE, result.verdict());
    assertEquals(
        List.of(
            "the winding M1 alone may read as little: this shows no wire; lift one end of it and"
                + " read again"),
        notJudged(result));
  }

  @Test
  void a_wire_that_reads_less_is() {
    assertEquals(CheckResult.Verdict.CONFORMS, winding("0.05").verdict());
  }

  @Test
  void a_contact_beside_a_shunt_is_shown_closed_by_less_than_the_shunt_alone() {
    UnitUnderTest unit =
        new UnitUnderTest(folder)
            .withoutInsulationTest()
            .contact("S1,OFF,3,4")
            .contact("S1,ON,1,2")
            .wire("W1,J1-3,S1-1")
            .part("S1,1,2,resistor,0.4,10,")
            .reads("J1-3", "S1-1", "0.02")
            .reads("S1-1", "S1-2", "0.4")
            .reads("S1-3", "S1-4", "0.02")
            .reads("S1-3", "S1-1", "OL")
            .readsIn("S1=ON", "S1-3", "S1-4", "OL")
            .readsIn("S1=ON", "S1-1", "S1-2", "0.4");
    assertEquals(CheckResult.Verdict.INCOMPLETE, unit.check().verdict());
  }
}
