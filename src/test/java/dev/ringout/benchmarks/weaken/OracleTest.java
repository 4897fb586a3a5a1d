package dev.ringout.benchmarks.weaken;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.benchmarks.weaken.Unit.Component;
import dev.ringout.benchmarks.weaken.Unit.Demand;
import dev.ringout.benchmarks.weaken.Unit.Joint;
import dev.ringout.benchmarks.weaken.Unit.JointKind;
import dev.ringout.benchmarks.weaken.Unit.PartKind;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;

/** The oracle can say no: each thing that it looks for is missed by hand once. */
class OracleTest {
  private static final List<String> POINTS =
      List.of(
          "J1-1", "J2-1", "J1-2", "S1-COM", "S1-NO", "J2-2", "S1-NC", "J2-3", "J1-4", "X1-1",
          "X1-2", "J2-4", "J1-5", "X2-A", "X2-K", "J2-5", "J1-6", "J2-6", "J2-7");

  private static final List<String> CONTINUITY =
      List.of(
          "J1-1,J2-1,,0.04",
          "J1-2,S1-COM,,0.04",
          "S1-NO,J2-2,,0.04",
          "S1-NC,J2-3,,0.04",
          "J1-4,X1-1,,0.04",
          "X1-2,J2-4,,0.04",
          "J1-5,X2-A,,0.04",
          "X2-K,J2-5,,0.04",
          "J1-6,J2-6,,0.072",
          "J2-6,J2-7,,0.003",
          "S1-COM,S1-NC,,0.03",
          "S1-COM,S1-NC,S1=ON,OL",
          "S1-COM,S1-NO,S1=ON,0.03",
          "X1-1,X1-2,,100.2",
          "X2-A,X2-K,,650",
          "X2-K,X2-A,,OL",
          "J1-1,REST,,OL",
          "J1-2,REST,,OL",
          "J2-2,REST,,OL",
          "J1-4+J2-4,REST,,OL",
          "J1-5+J2-5,REST,,OL");

  private static final List<String> INSULATION =
      List.of(
          "J1-1,REST,500,5000",
          "J1-2,REST,500,5000",
          "J2-2,REST,500,OL",
          "J1-4+J2-4,REST,500,5000",
          "J1-5+J2-5,REST,500,>2000");

  private static Joint joint(JointKind kind, String name, String from, String to, String position) {
    boolean wire = kind == JointKind.WIRE;
    double metres = name.startsWith("L") ? 4 : 1;
    return new Joint(
        kind,
        name,
        POINTS.indexOf(from),
        POINTS.indexOf(to),
        position,
        20,
        wire ? OptionalDouble.of(metres) : OptionalDouble.empty(),
        0.01);
  }

  private static Joint wire(String name, String from, String to) {
    return joint(JointKind.WIRE, name, from, to, "");
  }

  private static Component part(PartKind kind, String from, String to, OptionalDouble ohms) {
    return new Component(
        from.substring(0, 2),
        POINTS.indexOf(from),
        POINTS.indexOf(to),
        kind,
        ohms,
        OptionalDouble.empty(),
        100);
  }

  private static Unit unit() {
    return new Unit(
        "by hand",
        POINTS,
        List.of(
            wire("W1", "J1-1", "J2-1"),
            wire("W2", "J1-2", "S1-COM"),
            wire("W3", "S1-NO", "J2-2"),
            wire("W4", "S1-NC", "J2-3"),
            wire("W5", "J1-4", "X1-1"),
            wire("W6", "X1-2", "J2-4"),
            wire("W7", "J1-5", "X2-A"),
            wire("W8", "X2-K", "J2-5"),
            wire("L9", "J1-6", "J2-6"),
            wire("L10", "J1-6", "J2-6"),
            joint(JointKind.LINK, "", "J2-6", "J2-7", ""),
            joint(JointKind.CONTACT, "", "S1-COM", "S1-NC", "OFF"),
            joint(JointKind.CONTACT, "", "S1-COM", "S1-NO", "ON")),
        List.of(
            part(PartKind.RESISTOR, "X1-1", "X1-2", OptionalDouble.of(100)),
            part(PartKind.DIODE, "X2-A", "X2-K", OptionalDouble.empty())),
        List.of("OFF", "ON"),
        new Demand(true, 100e6, 500, false, true, true, true, "B", "0400 to 0499"));
  }

  private static Folder good() {
    Folder folder = new Folder();
    Table continuity = Table.of("From", "To", "State", "Reading", "Time");
    CONTINUITY.forEach(row -> continuity.row((row + ",2026-11-20 09:00").split(",", -1)));
    Table insulation = Table.of("From", "To", "Volts", "Reading", "Time");
    INSULATION.forEach(row -> insulation.row((row + ",2026-11-20 10:00").split(",", -1)));
    folder.sheets.put(Folder.CONTINUITY, continuity);
    folder.sheets.put(Folder.INSULATION, insulation);
    folder.sheets.put(
        Folder.JOB,
        Table.of("Name", "Value")
            .row("serial number", "0418")
            .row("revision", "B")
            .row("operator", "R. Adeyemi")
            .row("inspector", "M. Sorensen")
            .row("calibration due", "2027-03-01")
            .row("date", "2026-11-20")
            .row("continuity range", "40 MΩ")
            .row("insulation range", "10 GΩ"));
    return folder;
  }

  private static List<Oracle.Open> open(Consumer<Folder> change) {
    Folder folder = good();
    change.accept(folder);
    return new Oracle(unit()).open(List.of(folder), List.of());
  }

  private static Set<String> kinds(Consumer<Folder> change) {
    return Oracle.kinds(open(change));
  }

  private static Consumer<Folder> without(String sheet, String row) {
    return folder ->
        assertTrue(
            folder.sheet(sheet).rows.removeIf(cells -> String.join(",", cells).startsWith(row)));
  }

  private static Consumer<Folder> job(String name, String value) {
    return folder -> folder.sheet(Folder.JOB).put(name, value);
  }

  private static Consumer<Folder> reads(String sheet, String row, String text) {
    return folder -> {
      Table table = folder.sheet(sheet);
      for (int number = 0; number < table.rows.size(); number++) {
        if (String.join(",", table.rows.get(number)).startsWith(row)) {
          table.set(number, "Reading", text);
        }
      }
    };
  }

  @Test
  void a_complete_set_leaves_nothing_open() {
    assertEquals(List.of(), open(folder -> {}));
  }

  @Test
  void a_wire_whose_reading_is_gone_may_be_open() {
    assertEquals(
        List.of(new Oracle.Open("JointOpen", "wire W1 J1-1 to J2-1 open")),
        open(without(Folder.CONTINUITY, "J1-1,J2-1")));
  }

  @Test
  void a_beep_does_not_tell_two_wires_side_by_side_from_one() {
    List<Oracle.Open> open = open(reads(Folder.CONTINUITY, "J1-6,J2-6", "beep"));
    assertEquals(
        List.of("wire L9 J1-6 to J2-6 open", "wire L10 J1-6 to J2-6 open"),
        open.stream().map(Oracle.Open::text).toList());
  }

  @Test
  void ohms_of_one_wire_where_two_should_be_do_not_pass() {
    assertEquals(Set.of("JointOpen", "failing"), kinds(reads(Folder.CONTINUITY, "J1-6", "0.14")));
  }

  @Test
  void a_link_whose_reading_is_gone_may_be_open_and_a_word_is_enough_for_it() {
    assertEquals(Set.of("JointOpen"), kinds(without(Folder.CONTINUITY, "J2-6,J2-7")));
    assertEquals(Set.of(), kinds(reads(Folder.CONTINUITY, "J2-6,J2-7", "OK")));
    assertEquals(Set.of("JointOpen"), kinds(reads(Folder.CONTINUITY, "J1-1,J2-1", "OK")));
  }

  @Test
  void each_contact_is_missed_in_either_position() {
    assertEquals(Set.of("ContactOpen"), kinds(without(Folder.CONTINUITY, "S1-COM,S1-NC,,")));
    assertEquals(Set.of("ContactStuck"), kinds(without(Folder.CONTINUITY, "S1-COM,S1-NC,S1")));
    assertEquals(Set.of("ContactOpen"), kinds(without(Folder.CONTINUITY, "S1-COM,S1-NO,S1")));
  }

  @Test
  void each_part_is_missed() {
    assertEquals(
        Set.of("PartMissing", "PartShorted", "StrayJoin"),
        kinds(without(Folder.CONTINUITY, "X1-1,X1-2")));
    assertEquals(
        Set.of("PartMissing", "DiodeReversed"), kinds(without(Folder.CONTINUITY, "X2-A,X2-K")));
    assertEquals(Set.of("failing"), kinds(reads(Folder.CONTINUITY, "X1-1,X1-2", "20")));
  }

  @Test
  void a_leak_is_seen_by_insulation_alone_and_only_at_volts_and_range_enough() {
    assertEquals(Set.of("Leak"), kinds(without(Folder.INSULATION, "J1-1,REST")));
    assertEquals(
        Set.of("Leak"), kinds(folder -> folder.sheet(Folder.INSULATION).set(0, "Volts", "100")));
    assertEquals(
        Set.of("Leak"), kinds(folder -> folder.sheet(Folder.INSULATION).set(0, "Volts", "")));
    assertEquals(Set.of("Leak"), kinds(job("insulation range", "50 MΩ")));
    assertEquals(Set.of("Leak", "failing"), kinds(reads(Folder.INSULATION, "J1-1", "40")));
    assertEquals(Set.of("Leak"), kinds(reads(Folder.INSULATION, "J1-1", "OK")));
  }

  @Test
  void volts_on_the_job_sheet_stand_for_rows_that_have_none() {
    Consumer<Folder> noVolts =
        folder -> {
          Table table = folder.sheet(Folder.INSULATION);
          table.dropColumn(table.column("Volts"));
        };
    assertEquals(Set.of("Leak"), kinds(noVolts));
    assertEquals(Set.of(), kinds(noVolts.andThen(job("insulation volts", "500 V"))));
    assertEquals(Set.of("Leak"), kinds(noVolts.andThen(job("insulation volts", "250 V"))));
  }

  @Test
  void a_short_is_missed_where_neither_continuity_nor_insulation_holds_two_nets_apart() {
    Consumer<Folder> continuity = without(Folder.CONTINUITY, "J1-1,REST");
    assertEquals(Set.of(), kinds(continuity));
    assertEquals(
        Set.of("StrayJoin", "Leak"), kinds(continuity.andThen(without(Folder.INSULATION, "J1-1"))));
  }

  @Test
  void a_low_range_does_not_show_a_short_of_some_kilohms() {
    Consumer<Folder> lowRange =
        job("continuity range", "20 kΩ").andThen(folder -> folder.sheets.remove(Folder.INSULATION));
    assertTrue(
        open(lowRange).stream().anyMatch(one -> one.text().startsWith("short of 99000.0 Ω")));
    assertTrue(open(lowRange).stream().noneMatch(one -> one.text().startsWith("short of 0.0 Ω")));
  }

  @Test
  void the_job_sheet_is_held_to_the_list() {
    assertEquals(Set.of("serial number"), kinds(job("serial number", "")));
    assertEquals(Set.of("effectivity"), kinds(job("serial number", "0501")));
    assertEquals(Set.of("revision"), kinds(job("revision", "C")));
    assertEquals(Set.of("inspector"), kinds(job("inspector", "R. Adeyemi")));
    assertEquals(Set.of("calibration"), kinds(job("calibration due", "2026-11-19")));
    assertEquals(Set.of("calibration"), kinds(job("calibration due", "")));
    assertEquals(Set.of(), kinds(job("date", "")), "the days of its readings tell it too");
    assertEquals(
        Set.of("calibration"),
        kinds(
            folder -> {
              folder.sheet(Folder.JOB).put("date", "");
              for (String name : List.of(Folder.CONTINUITY, Folder.INSULATION)) {
                folder.sheet(name).dropColumn(folder.sheet(name).column("Time"));
              }
            }));
    assertEquals(Set.of("calibration"), kinds(job("insulation calibration due", "2026-11-19")));
    assertEquals(Set.of(), kinds(job("calibration due", "2026-11-20")));
  }

  @Test
  void a_row_that_cant_be_read_and_a_failing_row_are_never_passed_over() {
    assertEquals(
        Set.of("unread", "JointOpen"),
        kinds(folder -> folder.sheet(Folder.CONTINUITY).set(0, "To", "J2-99")));
    assertEquals(
        Set.of("failing", "JointOpen"), kinds(reads(Folder.CONTINUITY, "J1-1,J2-1", "FAIL")));
    assertEquals(
        Set.of("failing", "JointOpen"), kinds(reads(Folder.CONTINUITY, "J1-1,J2-1", "OL")));
  }

  @Test
  void two_serial_numbers_are_two_units() {
    Folder other = good();
    other.sheet(Folder.JOB).put("serial number", "0419");
    assertEquals(
        Set.of("serial number"),
        Oracle.kinds(new Oracle(unit()).open(List.of(good(), other), List.of())));
  }

  @Test
  void the_last_row_by_time_stands_wherever_it_is() {
    Consumer<Folder> failingFirst =
        folder ->
            folder
                .sheet(Folder.CONTINUITY)
                .rows
                .add(0, new ArrayList<>(List.of("J2-1", "J1-1", "", "OL", "2026-11-20 11:00")));
    assertEquals(Set.of("failing", "JointOpen"), kinds(failingFirst));
    Consumer<Folder> earlier =
        failingFirst.andThen(
            folder -> folder.sheet(Folder.CONTINUITY).set(0, "Time", "2026-11-20 08:00"));
    assertEquals(Set.of(), kinds(earlier));
  }

  @Test
  void what_was_touched_is_open_until_it_is_read_again() {
    Oracle oracle = new Oracle(unit());
    Set<String> touched = Oracle.kinds(oracle.open(List.of(good()), List.of("--touched", "W1")));
    assertTrue(touched.containsAll(Set.of("JointOpen", "StrayJoin", "Leak")), touched.toString());
    assertEquals(
        new TreeSet<>(Set.of("ContactOpen", "ContactStuck", "JointOpen")),
        new TreeSet<>(
            Set.copyOf(
                Oracle.kinds(oracle.open(List.of(good()), List.of("--opened", "S1"))).stream()
                    .filter(kind -> !kind.equals("StrayJoin") && !kind.equals("Leak"))
                    .toList())));
    Folder again = good();
    again.sheets.put(
        Folder.REWORK, Table.of("Time", "Items", "Wires", "Note").row("", "J1", "", "pin"));
    assertEquals(List.of(), oracle.open(List.of(good(), again), List.of()));
    Folder partly = again.copy();
    partly.sheet(Folder.CONTINUITY).rows.remove(0);
    List<Oracle.Open> open = oracle.open(List.of(good(), partly), List.of());
    assertEquals(List.of("wire W1 J1-1 to J2-1 open"), open.stream().map(o -> o.text()).toList());
  }

  @Test
  void a_reading_dated_after_a_rework_counts() {
    Oracle oracle = new Oracle(unit());
    Folder told = new Folder();
    told.sheets.put(Folder.JOB, good().sheet(Folder.JOB));
    Table rework = Table.of("Time", "Items", "Wires", "Note");
    told.sheets.put(Folder.REWORK, rework.row("2026-11-20 08:00", "", "W1", "pin"));
    assertEquals(List.of(), oracle.open(List.of(good(), told), List.of()));
    rework.set(0, "Time", "2026-11-20 12:00");
    assertTrue(!oracle.open(List.of(good(), told), List.of()).isEmpty());
  }

  /** ASTM B258 gives AWG 20 as 33.3 Ω/km; Kirchhoff's law the rest. */
  @Test
  void the_physics_are_those_of_the_books() {
    assertEquals(0.0333, Physics.copperOhms(20, 1), 0.0001);
    Network bridge = new Network(4);
    bridge.add(0, 2, 1);
    bridge.add(0, 3, 2);
    bridge.add(2, 1, 2);
    bridge.add(3, 1, 1);
    bridge.add(2, 3, 1);
    assertEquals(1.4, bridge.solve(List.of(0), List.of(1)).ohms(), 1e-12);
    Physics physics = new Physics(unit());
    Probing across =
        new Probing(
            false,
            List.of(POINTS.indexOf("J1-4")),
            List.of(POINTS.indexOf("J2-4")),
            Unit.State.NORMAL);
    Span good = physics.reading(across, Optional.empty());
    assertEquals(90 + 2 * 0.0300, good.low(), 0.001);
    assertEquals(110 + 2 * 0.0476, good.high(), 0.001);
  }
}
