package dev.ringout.reference;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.check.CheckResult;
import dev.ringout.compare.ValueVerdict;
import dev.ringout.standards.CopperWire;
import dev.ringout.standards.Tables;
import dev.ringout.standards.WireOhms;
import dev.ringout.support.UnitUnderTest;
import dev.ringout.units.Gauge;
import dev.ringout.units.OhmsRange;
import dev.ringout.units.Text;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Wires as their specifications let them be made raise nothing, at either end of what is allowed.
 */
class InSpecWiresTest {
  private static final double METRES = 10;

  /** The resistivity of annealed copper, Ω·mm²/m (International Annealed Copper Standard). */
  private static final double COPPER = 1 / 58.0;

  /** ASTM B496-04: the standard increment of resistance for stranding. */
  private static final double LAY = 1.02;

  @TempDir Path folder;

  /** A size, its strands, nominal area and the most that each coating may have. */
  private record Size(
      String awg,
      String strands,
      double squareMillimetres,
      double silver,
      double nickel,
      double tin) {
    double nominalOhmsPerKilometre() {
      return 1000 * COPPER / squareMillimetres * LAY;
    }
  }

  /**
   * Source: MIL-DTL-29606A table III-A, annealed copper conductors: nominal area in mm², the most
   * ohms per km at 20 °C coated with silver, nickel and tin (the area of size 8 is printed 0.605
   * there; 133 strands of AWG 29 have 8.605).
   */
  private static final List<Size> SIZES =
      List.of(
          new Size("30", "7x38", 0.0568, 330.4, 363.2, 355.6),
          new Size("28", "7x36", 0.0887, 209.3, 222.8, 225.1),
          new Size("26", "19x38", 0.1540, 126.0, 138.5, 133.5),
          new Size("24", "19x36", 0.2407, 79.7, 85.0, 86.0),
          new Size("22", "19x34", 0.3821, 49.5, 52.5, 53.1),
          new Size("20", "19x32", 0.6162, 30.2, 32.1, 32.4),
          new Size("18", "19x30", 0.9627, 19.0, 20.0, 20.4),
          new Size("16", "19x29", 1.229, 14.8, 15.6, 15.8),
          new Size("14", "19x27", 1.941, 9.45, 9.84, 10.0),
          new Size("12", "19x25", 3.085, 5.97, 6.20, 6.30),
          new Size("12", "37x28", 2.976, 6.23, 6.50, 6.63),
          new Size("10", "37x26", 4.740, 3.90, 4.07, 4.13),
          new Size("8", "133x29", 8.605, 2.16, 2.28, 2.30),
          new Size("6", "133x27", 13.59, 1.37, 1.43, 1.46),
          new Size("4", "133x25", 21.59, 0.866, 0.902, 0.919),
          new Size("2", "665x30", 33.70, 0.558, 0.581, 0.600),
          new Size("1", "817x30", 41.40, 0.456, 0.472, 0.489));

  private static String ohms(double ohmsPerKilometre) {
    return Text.of("%.6f", ohmsPerKilometre / 1000 * METRES);
  }

  /** One wire for each reading; nothing is allowed for contacts, lengths or the meter. */
  private CheckResult check(List<String[]> wires) {
    UnitUnderTest unit =
        new UnitUnderTest(folder.resolve("unit"))
            .withoutInsulationTest()
            .limit("contact,0,Ω")
            .limit("tolerance,1,%");
    for (int i = 0; i < wires.size(); i++) {
      String[] wire = wires.get(i);
      String row = Text.of("W%d,J1-%d,P2-%d,%s,10 m", i + 1, i + 1, i + 1, wire[0]);
      unit.wireOfType(row, wire[1]).reads("J1-" + (i + 1), "P2-" + (i + 1), wire[2]);
    }
    return unit.check();
  }

  private void raiseNothing(List<String[]> wires) {
    CheckResult result = check(wires);
    assertEquals(List.of(), result.diagnosis().faults());
    assertEquals(List.of(), result.values().unlike());
    assertEquals(wires.size(), result.values().count(ValueVerdict.AS_EXPECTED));
  }

  @Test
  void of_48_and_more_wires_without_a_type_none_reads_low_or_high_at_either_end() {
    List<String[]> wires = new ArrayList<>();
    for (Size size : SIZES) {
      wires.add(new String[] {size.awg(), "", ohms(size.nominalOhmsPerKilometre())});
      wires.add(new String[] {size.awg(), "", ohms(size.silver())});
      wires.add(new String[] {size.awg(), "", ohms(size.nickel())});
      wires.add(new String[] {size.awg(), "", ohms(size.tin())});
    }
    raiseNothing(wires);
  }

  @Test
  void with_the_construction_as_the_type_none_does_either() {
    List<String[]> wires = new ArrayList<>();
    for (Size size : SIZES) {
      for (String type : List.of(size.strands(), size.strands().replace('x', '/') + " ETFE")) {
        wires.add(new String[] {size.awg(), type, ohms(size.nominalOhmsPerKilometre())});
        wires.add(new String[] {size.awg(), type, ohms(size.tin())});
        wires.add(new String[] {size.awg(), type, ohms(size.nickel())});
      }
    }
    raiseNothing(wires);
  }

  /** Source: the solid copper of ASTM B258, as printed in ohms per 1000 ft by HyperPhysics. */
  @Test
  void nor_does_a_solid_wire_whose_list_says_nothing_or_says_so() {
    List<String[]> wires = new ArrayList<>();
    String[][] solid = {
      {"30", "103.2"}, {"26", "40.81"}, {"24", "25.67"}, {"22", "16.14"}, {"20", "10.15"},
      {"18", "6.385"}, {"16", "4.016"}, {"14", "2.525"}, {"12", "1.588"}, {"10", "0.9989"},
      {"8", "0.6282"}
    };
    for (String[] one : solid) {
      String read = ohms(Double.parseDouble(one[1]) / 0.3048);
      wires.add(new String[] {one[0], "", read});
      wires.add(new String[] {one[0], "solid hook-up", read});
    }
    raiseNothing(wires);
  }

  /** Source: IEC 60228:2004 tables 2 and 3, ohms per km of classes 2 and 5, plain and coated. */
  @Test
  void nor_does_a_metric_conductor_of_class_2_or_5() {
    List<String[]> wires = new ArrayList<>();
    double[][] sizes = {
      {0.5, 36.0, 36.7, 39.0, 40.1},
      {0.75, 24.5, 24.8, 26.0, 26.7},
      {1, 18.1, 18.2, 19.5, 20.0},
      {1.5, 12.1, 12.2, 13.3, 13.7},
      {2.5, 7.41, 7.56, 7.98, 8.21},
      {4, 4.61, 4.70, 4.95, 5.09},
      {6, 3.08, 3.11, 3.30, 3.39},
      {10, 1.83, 1.84, 1.91, 1.95},
      {16, 1.15, 1.16, 1.21, 1.24},
      {50, 0.387, 0.391, 0.386, 0.393},
      {120, 0.153, 0.154, 0.161, 0.164},
      {240, 0.0754, 0.0762, 0.0801, 0.0817}
    };
    for (double[] size : sizes) {
      String gauge = size[0] + " mm²";
      wires.add(new String[] {gauge, "", ohms(1000 * COPPER / size[0] * LAY)});
      for (int i = 1; i < size.length; i++) {
        wires.add(new String[] {gauge, "", ohms(size[i])});
        wires.add(new String[] {gauge, i < 3 ? "class 2" : "H07V-K class 5", ohms(size[i])});
      }
    }
    raiseNothing(wires);
  }

  private static OhmsRange perKilometre(Gauge gauge, String type) {
    OhmsRange metre =
        WireOhms.of(CopperWire.published(), Tables.published())
            .perMetre(gauge, type, 20)
            .orElseThrow();
    return new OhmsRange(metre.lowOhms() * 1000, metre.highOhms() * 1000);
  }

  @Test
  void an_untyped_wire_may_have_what_solid_copper_has_up_to_the_specification_s_most() {
    OhmsRange sixteen = perKilometre(new Gauge.Awg(16), "");
    assertEquals(13.17, sixteen.lowOhms(), 0.01, "solid copper");
    assertEquals(15.8, sixteen.highOhms(), 1e-9, "coated with tin");
    OhmsRange stranded = perKilometre(new Gauge.Awg(16), "stranded hook-up");
    assertEquals(14.3, stranded.lowOhms(), 0.05, "nominal area with its lay");
    assertEquals(15.8, stranded.highOhms(), 1e-9);
  }

  /** Source: 19 strands of AWG 32 have 19 times its area; ASTM B258. */
  @Test
  void a_construction_gives_the_area_exactly() {
    OhmsRange nineteen = perKilometre(new Gauge.Awg(20), "19/32");
    assertEquals(1000 * COPPER / (19 * 0.032028), nineteen.lowOhms(), 0.01);
    assertEquals(32.4, nineteen.highOhms(), 1e-9);
    OhmsRange seven = perKilometre(new Gauge.Awg(22), "7/30 PVC");
    assertEquals(1000 * COPPER / (7 * 0.050926), seven.lowOhms(), 0.01);
    assertTrue(seven.highOhms() < perKilometre(new Gauge.Awg(24), "").lowOhms(), "no AWG 24");
    OhmsRange sixteen = perKilometre(new Gauge.SquareMillimetres(0.5), "16/0.2");
    assertEquals(1000 * COPPER / (16 * Math.PI / 4 * 0.2 * 0.2), sixteen.lowOhms(), 0.01);
    assertEquals(40.1, sixteen.highOhms(), 1e-9, "IEC 60228 class 5, coated");
  }

  /** Three cores of AWG 20 are no wire of three strands. */
  @Test
  void the_cores_of_a_cable_are_no_strands() {
    assertEquals(
        perKilometre(new Gauge.Awg(20), ""), perKilometre(new Gauge.Awg(20), "3x20 cable"));
    assertEquals(
        perKilometre(new Gauge.SquareMillimetres(0.5), ""),
        perKilometre(new Gauge.SquareMillimetres(0.5), "LiYY 7x0.5"));
  }
}
