package dev.ringout.trade;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.check.CheckResult;
import dev.ringout.diagnose.Fault;
import dev.ringout.diagnose.Fault.Alternative;
import dev.ringout.diagnose.Fault.HighWire;
import dev.ringout.diagnose.SlipFact;
import dev.ringout.support.UnitUnderTest;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What one value that is too high leaves open, by itself. A metre of stranded AWG 22 has 0.05 Ω, of
 * AWG 26 0.12 (MIL-DTL-29606A table III-A).
 */
class WhatOneHighValueLeavesTest {
  @TempDir Path folder;

  /** W1 is open, and what it should have stands in the row of W2 below. */
  private HighWire besideAnOpenRow(String lengthOfSecond) {
    UnitUnderTest unit = new UnitUnderTest(folder.resolve(lengthOfSecond));
    unit.wire("W1,J1-1,P1-1,22,2.4 m").reads("J1-1", "P1-1", "OL");
    unit.wire("W2,J1-2,P1-2,22," + lengthOfSecond).reads("J1-2", "P1-2", "0.124");
    unit.wire("W3,J1-3,P1-3,22,1 m").reads("J1-3", "P1-3", "0.052");
    return unit.check().diagnosis().faults().stream()
        .map(Fault::asHighWire)
        .flatMap(Optional::stream)
        .findFirst()
        .orElseThrow();
  }

  private static double oddsOfThePen(HighWire wire) {
    return wire.finding().alternatives().stream()
        .filter(one -> one.slips().get(0) instanceof SlipFact.ExchangedRows)
        .mapToDouble(Alternative::odds)
        .sum();
  }

  /** How many times as likely as a poor joint of the wire. */
  private static double ofThePenToPoorJoint(HighWire wire) {
    double poor =
        wire.causes().stream()
            .filter(one -> one.slips().get(0).asPoorJoint().isPresent())
            .mapToDouble(Alternative::odds)
            .sum();
    double pen = oddsOfThePen(wire);
    return pen / ((1 - pen) * poor);
  }

  @Test
  void rows_are_less_likely_exchanged_where_a_finer_wire_has_the_value_too() {
    double noWireHasIt = oddsOfThePen(besideAnOpenRow("0.4 m"));
    double finerWireHasIt = oddsOfThePen(besideAnOpenRow("1 m"));
    assertTrue(noWireHasIt > 0.5, "odds " + noWireHasIt);
    assertTrue(finerWireHasIt > 0.1 && finerWireHasIt < 0.3, "odds " + finerWireHasIt);
  }

  /** A gauge that has the value takes from both. */
  @Test
  void what_else_it_may_be_leaves_the_pen_as_likely_against_a_poor_joint() {
    double noWireHasIt = ofThePenToPoorJoint(besideAnOpenRow("0.4 m"));
    double finerWireHasIt = ofThePenToPoorJoint(besideAnOpenRow("1 m"));
    assertEquals(1, finerWireHasIt / noWireHasIt, 0.01);
  }

  /** Not even that the wire is thicker than listed, which 0.63 Ω on 30 m of AWG 20 would say. */
  @Test
  void a_value_beyond_the_meter_s_range_says_nothing_of_a_wire_that_other_faults_do_not_touch() {
    UnitUnderTest unit = new UnitUnderTest(folder);
    for (String row :
        List.of(
            "W1,J1-A,P1-1,20,30 m",
            "W2,P1-1,P2-1,20,30 m",
            "W3,P2-1,J1-A,20,30 m",
            "W4,J1-B,P3-1,20,30 m")) {
      unit.wireOfType(row, "solid");
    }
    // The end of W1 is in the spare cavity beside its own.
    unit.pin("P1,2,20").reads("J1-A", "P1-2", "1.0").reads("J1-A", "P1-1", "2.0");
    unit.reads("J1-B", "P3-1", "0.63");
    CheckResult within = unit.check();
    assertEquals(List.of("Miswire", "WrongGauge"), kinds(within));
    CheckResult beyond = unit.job("continuity range,500,mΩ").check();
    assertEquals(List.of("Miswire"), kinds(beyond));
  }

  private static List<String> kinds(CheckResult result) {
    return result.diagnosis().faults().stream().map(one -> one.getClass().getSimpleName()).toList();
  }
}
