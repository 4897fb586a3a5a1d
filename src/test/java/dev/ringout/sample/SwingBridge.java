package dev.ringout.sample;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;

/**
 * The control junction box and cables of an invented swing bridge, and the test sheets of a good
 * and of a faulty unit. Names, numbers and faults are invented.
 */
final class SwingBridge {
  private static final String[] LETTERS =
      "A B C D E F G H J K L M N P R S T U V W X Y Z a b c".split(" ");

  /** Ohms per metre of AWG 20, 16 and 22 copper at 20 °C (ASTM B258 and NBS Handbook 100). */
  private static final Map<String, Double> OHMS_PER_METRE =
      Map.of("20", 0.03331, "16", 0.01317, "22", 0.05296);

  private static final double CONTACT_OHMS = 0.005;
  private static final Set<String> NORMAL = Set.of("S1=CLEAR", "S2=CLEAR");

  private final Workbook harness = new Workbook();
  private final Bench good = new Bench();
  private final List<String[]> wires = new ArrayList<>();
  private int number;

  SwingBridge() {
    harness
        .sheet("Header", "Name", "Value")
        .sheet(
            "Wires",
            "Wire",
            "From",
            "From Pin",
            "To",
            "To Pin",
            "Gauge",
            "Color",
            "Length (m)",
            "Signal",
            "Cable",
            "Group",
            "Note")
        .sheet("Items", "Ref", "Kind", "Part", "Location", "Mates", "Note")
        .sheet("Pins", "Ref", "Pin", "Size", "X (mm)", "Y (mm)", "Note")
        .sheet("Links", "Ref", "Pin", "To Pin", "Note")
        .sheet("Switches", "Ref", "State", "Pin", "To Pin")
        .sheet("Parts", "Ref", "Pin", "To Pin", "Kind", "Ohms", "Tolerance %", "Note")
        .sheet("Limits", "Name", "Value", "Unit");
    header();
    items();
    boxWires();
    consoleCable();
    limitSwitchCable();
    motorCable();
    sensorCable();
    lampTestDiode();
    linksSwitchesParts();
    pins();
  }

  private void header() {
    harness
        .row("Header", "title", "Harrow Sluice swing bridge, control junction box JB4 and cables")
        .row("Header", "drawing", "HSB-2210")
        .row("Header", "revision", "B")
        .row("Header", "unit", "JB4")
        .row("Limits", "contact", "5", "mΩ")
        .row("Limits", "insulation min", "100", "MΩ")
        .row("Limits", "insulation volts", "500", "V");
  }

  private void items() {
    item("J1", "connector", "26 contacts, size 20", "box, console side", "P1");
    item("J2", "connector", "19 contacts, size 20", "box, pivot side", "P2");
    item("J3", "connector", "6 contacts, size 16", "box, pivot side", "P3");
    item("J4", "connector", "10 contacts, size 22D", "box, pivot side", "P4");
    item("P1", "connector", "26 contacts, size 20", "cable C1, box end", "J1");
    item("P11", "connector", "26 contacts, size 20", "cable C1, console end", "");
    item("P2", "connector", "19 contacts, size 20", "cable C2, box end", "J2");
    item("P3", "connector", "6 contacts, size 16", "cable C3, box end", "J3");
    item("P4", "connector", "10 contacts, size 22D", "cable C4, box end", "J4");
    item("TB1", "terminal strip", "12 terminals", "box, upper rail", "");
    item("TB2", "terminal strip", "10 terminals", "box, lower rail", "");
    item("SP1", "splice", "", "box, behind TB1", "");
    item("E1", "ground stud", "", "box, left wall", "");
    item("E2", "ground stud", "", "box, right wall", "");
    item("S1", "limit switch", "", "east landing, span closed", "");
    item("S2", "limit switch", "", "pier, span open", "");
    item("M1", "motor", "delta, 3 leads", "slewing drive", "");
    item("RS1", "position sensor", "one rotor, three stator windings", "pivot", "");
    item("DS1", "lamp", "", "east landing", "");
    item("L1", "lock solenoid", "", "nose lock", "");
    item("CR1", "diode", "", "across L1", "");
    item("CR2", "diode", "", "box, lamp test", "");
  }

  private void item(String ref, String kind, String part, String location, String mates) {
    harness.row("Items", ref, kind, part, location, mates, "");
  }

  private void wire(
      String from, String to, String gauge, String colour, String metres, String signal) {
    wire(from, to, gauge, colour, metres, signal, "", "");
  }

  private void wire(
      String from,
      String to,
      String gauge,
      String colour,
      String metres,
      String signal,
      String cable,
      String group) {
    number++;
    String name = String.format(Locale.ROOT, "W%03d", number);
    String[] one = from.split("-", 2);
    String[] other = to.split("-", 2);
    harness.row(
        "Wires", name, one[0], one[1], other[0], other[1], gauge, colour, metres, signal, cable,
        group, "");
    double ohms =
        OHMS_PER_METRE.getOrDefault(gauge, 0.0) * Double.parseDouble(metres) + 2 * CONTACT_OHMS;
    good.join(name, from, to, ohms, "");
    wires.add(new String[] {name, from, to});
  }

  private void boxWires() {
    wire("J1-A", "TB1-1", "20", "RED", "0.8", "24V");
    wire("J1-B", "TB1-10", "20", "BLK", "0.8", "0V");
    String[] commands = {
      "SPAN OPEN",
      "SPAN CLOSE",
      "CREEP",
      "STOP",
      "LOCK OUT",
      "LOCK IN",
      "CLEAR EAST",
      "CLEAR WEST",
      "SPAN CLOSED",
      "SPAN OPENED",
      "LAMP EAST"
    };
    String[] colours = {
      "WHT", "GRN", "BLU", "YEL", "VIO", "GRY", "ORN", "BRN", "WHT/RED", "WHT/GRN", "WHT/BLU"
    };
    String[] letters = {"C", "D", "E", "F", "G", "H", "J", "K", "L", "M", "N"};
    for (int i = 0; i < commands.length; i++) {
      wire("J1-" + letters[i], "J2-" + (i + 1), "20", colours[i], "0.9", commands[i]);
    }
    String[] phases = {"U", "V", "W"};
    String[] phaseLetters = {"P", "R", "S"};
    for (int i = 0; i < 3; i++) {
      wire("J1-" + phaseLetters[i], "TB2-" + (i + 1), "20", "BLK", "0.6", "MOTOR " + phases[i]);
      wire("TB2-" + (i + 1), "J3-" + (i + 1), "16", "BLK", "0.5", "MOTOR " + phases[i]);
    }
    wire("J1-T", "TB2-4", "20", "BRN", "0.6", "BRAKE");
    wire("TB2-4", "J3-4", "16", "BRN", "0.5", "BRAKE");
    wire("J1-U", "TB2-5", "20", "ORN", "0.6", "HORN");
    wire("TB2-5", "J2-12", "20", "ORN", "0.7", "HORN");
    wire("J1-V", "J4-1", "22", "WHT", "0.7", "ROTOR +", "", "PAIR 1");
    wire("J1-W", "J4-2", "22", "BLU", "0.7", "ROTOR -", "", "PAIR 1");
    wire("J1-X", "J4-3", "22", "BARE", "0.7", "ROTOR SHIELD", "", "PAIR 1");
    wire("J1-Y", "J4-4", "22", "RED", "0.7", "STATOR 1");
    wire("J1-Z", "J4-5", "22", "YEL", "0.7", "STATOR 2");
    wire("J1-a", "J4-6", "22", "BLK", "0.7", "STATOR 3");
    wire("J1-b", "J4-7", "22", "GRN", "0.7", "SENSOR CASE");
    wire("J1-c", "E1-1", "20", "GRN/YEL", "0.3", "GROUND");
    wire("TB1-2", "J2-13", "20", "RED", "0.7", "24V");
    wire("TB1-3", "J2-14", "20", "RED", "0.7", "24V");
    wire("TB1-11", "J2-15", "20", "BLK", "0.7", "0V");
    wire("TB1-12", "SP1-1", "20", "BLK", "0.3", "0V");
    wire("SP1-1", "J2-16", "20", "BLK", "0.5", "0V");
    wire("SP1-1", "J4-8", "22", "BLK", "0.5", "0V");
    wire("E1-1", "E2-1", "16", "GRN/YEL", "1.1", "GROUND");
    wire("J3-5", "E2-1", "16", "GRN/YEL", "0.4", "GROUND");
    wire("J1-SHELL", "E1-2", "16", "BRAID", "0.2", "GROUND");
    wire("J2-SHELL", "E2-2", "16", "BRAID", "0.2", "GROUND");
    wire("TB2-6", "J3-6", "16", "BLU", "0.5", "BRAKE RELEASE");
    wire("TB2-7", "J2-17", "20", "BLU", "0.6", "BRAKE RELEASE");
  }

  private void consoleCable() {
    String[] colours = {
      "BLK", "BRN", "RED", "ORN", "YEL", "GRN", "BLU", "VIO", "GRY", "WHT", "WHT/BLK", "WHT/BRN",
      "WHT/RED"
    };
    for (int i = 0; i < LETTERS.length; i++) {
      wire(
          "P1-" + LETTERS[i],
          "P11-" + (i + 1),
          "20",
          colours[i % colours.length],
          "12",
          "",
          "C1",
          i == 18 || i == 19 ? "C1 PAIR 1" : "");
    }
  }

  private void limitSwitchCable() {
    String[][] rows = {
      {"P2-1", "S1-COM", "RED"}, {"P2-2", "S1-NO", "WHT"}, {"P2-3", "S1-NC", "GRN"},
      {"P2-4", "S2-COM", "RED/BLK"}, {"P2-5", "S2-NO", "WHT/BLK"}, {"P2-6", "S2-NC", "GRN/BLK"},
      {"P2-7", "DS1-1", "YEL"}, {"P2-8", "DS1-2", "GRY"}, {"P2-9", "L1-1", "BLU"},
      {"P2-10", "L1-2", "BRN"}
    };
    for (String[] row : rows) {
      wire(row[0], row[1], "20", row[2], "8", "", "C2", "");
    }
    wire("L1-1", "CR1-K", "20", "BLU", "0.2", "");
    wire("L1-2", "CR1-A", "20", "BRN", "0.2", "");
  }

  private void motorCable() {
    for (String[] row :
        new String[][] {
          {"P3-1", "M1-U", "BLK"},
          {"P3-2", "M1-V", "BRN"},
          {"P3-3", "M1-W", "GRY"},
          {"P3-5", "M1-PE", "GRN/YEL"}
        }) {
      wire(row[0], row[1], "16", row[2], "5", "", "C3", "");
    }
  }

  private void sensorCable() {
    String[][] rows = {
      {"P4-1", "RS1-R1", "WHT"}, {"P4-2", "RS1-R2", "BLU"}, {"P4-3", "RS1-SHD", "BARE"},
      {"P4-4", "RS1-S1", "RED"}, {"P4-5", "RS1-S2", "YEL"}, {"P4-6", "RS1-S3", "BLK"}
    };
    for (int i = 0; i < rows.length; i++) {
      wire(rows[i][0], rows[i][1], "22", rows[i][2], "5", "", "C4", i < 3 ? "C4 PAIR 1" : "");
    }
  }

  private void lampTestDiode() {
    wire("TB1-4", "CR2-A", "20", "WHT", "0.2", "LAMP TEST IN");
    wire("CR2-K", "TB1-5", "20", "WHT", "0.2", "LAMP TEST OUT");
  }

  private void linksSwitchesParts() {
    link("TB1", "1", "2", "jumper, 24 V");
    link("TB1", "2", "3", "jumper, 24 V");
    link("TB1", "10", "11", "jumper, 0 V");
    link("TB1", "11", "12", "jumper, 0 V");
    link("TB2", "6", "7", "jumper, brake release");
    link("E1", "1", "2", "box wall");
    link("E2", "1", "2", "box wall");
    for (String ref : new String[] {"S1", "S2"}) {
      contact(ref, "CLEAR", "NC");
      contact(ref, "MADE", "NO");
    }
    harness
        .row("Parts", "DS1", "1", "2", "lamp", "96 Ω", "15", "cold")
        .row("Parts", "L1", "1", "2", "winding", "48 Ω", "10", "")
        .row("Parts", "", "CR1-K", "CR1-A", "diode", "", "", "")
        .row("Parts", "CR2", "A", "K", "diode", "", "", "")
        .row("Parts", "M1", "U", "V", "winding", "4.8 Ω", "10", "delta")
        .row("Parts", "M1", "V", "W", "winding", "4.8 Ω", "10", "delta")
        .row("Parts", "M1", "W", "U", "winding", "4.8 Ω", "10", "delta")
        .row("Parts", "RS1", "R1", "R2", "winding", "62 Ω", "10", "rotor")
        .row("Parts", "RS1", "S1", "S2", "winding", "40.5 Ω", "10", "stator, delta")
        .row("Parts", "RS1", "S2", "S3", "winding", "40.5 Ω", "10", "stator, delta")
        .row("Parts", "RS1", "S3", "S1", "winding", "40.5 Ω", "10", "stator, delta");
  }

  private void link(String ref, String pin, String toPin, String note) {
    harness.row("Links", ref, pin, toPin, note);
    good.join(
        "link " + ref + "-" + pin, ref + "-" + pin, ref + "-" + toPin, 2 * CONTACT_OHMS * 0.9, "");
  }

  private void contact(String ref, String state, String pin) {
    harness.row("Switches", ref, state, "COM", pin);
    good.join(ref + " " + pin, ref + "-COM", ref + "-" + pin, 0.03, ref + "=" + state);
  }

  /** Inserts of our own: rings counted clockwise from the key on the box half's wiring side. */
  private void pins() {
    for (String ref : new String[] {"J1", "P1"}) {
      insert(ref, List.of(LETTERS), "20", 3.2, 14, 9, 3);
    }
    for (int i = 1; i <= 26; i++) {
      pin(
          "P11",
          Integer.toString(i),
          "20",
          3 * ((i - 1) % 13 - 6) + (i > 13 ? 1.5 : 0),
          i > 13 ? -3 : 0);
    }
    for (String end : new String[] {"J", "P"}) {
      insert(end + "2", numbers(19), "20", 3.2, 12, 6, 1);
      insert(end + "3", numbers(6), "16", 5, 5, 1);
      insert(end + "4", numbers(10), "22D", 2, 8, 2);
    }
  }

  private static List<String> numbers(int count) {
    return IntStream.rangeClosed(1, count).mapToObj(Integer::toString).toList();
  }

  private void insert(
      String ref, List<String> names, String size, double pitchMillimetres, int... rings) {
    int next = 0;
    for (int ring : rings) {
      double radius = ring == 1 ? 0 : pitchMillimetres / (2 * Math.sin(Math.PI / ring));
      for (int i = 0; i < ring; i++) {
        double angle = 2 * Math.PI * i / ring;
        double x = radius * Math.sin(angle);
        // The cable's half meets the box's face to face: its wiring side is the mirror image.
        pin(ref, names.get(next), size, ref.startsWith("P") ? -x : x, radius * Math.cos(angle));
        next++;
      }
    }
  }

  private void pin(String ref, String pin, String size, double x, double y) {
    String point = ref + "-" + pin;
    boolean used = wires.stream().anyMatch(wire -> wire[1].equals(point) || wire[2].equals(point));
    harness.row("Pins", ref, pin, size, millimetres(x), millimetres(y), used ? "" : "spare");
    good.point(point);
  }

  private static String millimetres(double length) {
    return Double.toString(Math.round(length * 100) / 100.0 + 0.0);
  }

  Workbook harness() {
    return harness;
  }

  Bench goodUnit() {
    return good;
  }

  /**
   * The faulty unit: one swap, one open crimp, one moved end, one high joint; wet is added later.
   */
  Bench faultyUnit() {
    Bench.Joint e = good.joint(wireAt("P1-E"));
    Bench.Joint f = good.joint(wireAt("P1-F"));
    Bench.Joint moved = good.joint(wireAt("J2-17"));
    Bench.Joint high = good.joint(wireAt("P1-T"));
    return good.with(e.name(), e.from(), f.to(), e.ohms())
        .with(f.name(), f.from(), e.to(), f.ohms())
        .without(wireAt("J2-6"))
        .with(moved.name(), moved.from(), "J2-18", moved.ohms())
        .with(high.name(), high.from(), high.to(), high.ohms() + 0.43);
  }

  String wireAt(String point) {
    return wires.stream()
        .filter(wire -> wire[1].equals(point) || wire[2].equals(point))
        .findFirst()
        .orElseThrow()[0];
  }

  /** The filled test sheet of the good unit. */
  Workbook cleanReadings() {
    return sheet(good, "0417", Set.of(), Set.of(), false);
  }

  /** The filled test sheet of the faulty unit, with a wet connector and three blanks. */
  Workbook faultyReadings() {
    Set<String> wet = Set.of("J4-1", "J4-2", "J4-4", "J4-5", "J4-6", "J4-8", "J4-9");
    return sheet(faultyUnit(), "0418", wet, Set.of(14, 57, 91), true);
  }

  /**
   * The filled test sheet of a unit with a wire of another gauge, a poor crimp inside its limit, a
   * limit switch on its other contact, a diode the wrong way round and a lamp that is missing.
   */
  Workbook valueReadings() {
    Bench.Joint thin = good.joint(wireAt("DS1-1"));
    Bench.Joint crimp = good.joint(wireAt("P1-M"));
    double ohmsOf22 = OHMS_PER_METRE.getOrDefault("22", 0.0) * 8 + 2 * CONTACT_OHMS;
    Bench unit =
        good.with(thin.name(), thin.from(), thin.to(), ohmsOf22)
            .with(crimp.name(), crimp.from(), crimp.to(), crimp.ohms() + 0.041)
            .with("S1 NC", "S1-COM", "S1-NO", 0.03)
            .with("S1 NO", "S1-COM", "S1-NC", 0.03);
    return sheet(
        unit, "0419", Set.of(), Set.of(), false, new Parts("OL", "OL", "612"), 0.985, 0.02);
  }

  /** What the parts read that differ from unit to unit. */
  private record Parts(String lamp, String diode, String diodeReversed) {
    static final Parts GOOD = new Parts("95.4", "612", "OL");
  }

  private Workbook sheet(
      Bench unit, String serial, Set<String> wet, Set<Integer> blankSteps, boolean followUp) {
    return sheet(unit, serial, wet, blankSteps, followUp, Parts.GOOD, 0.96, 0.06);
  }

  private Workbook sheet(
      Bench unit,
      String serial,
      Set<String> wet,
      Set<Integer> blankSteps,
      boolean followUp,
      Parts parts,
      double least,
      double spread) {
    Random random = new Random(4);
    Workbook book =
        new Workbook()
            .sheet(
                "Continuity",
                "Step",
                "From",
                "To",
                "State",
                "Reading",
                "Reverse",
                "Unit",
                "By",
                "Note")
            .sheet(
                "Insulation",
                "Step",
                "From",
                "To",
                "Volts",
                "Seconds",
                "Reading",
                "Unit",
                "By",
                "Note")
            .sheet("Job", "Name", "Value");
    book.row("Job", "serial number", serial)
        .row("Job", "procedure", "HSB-TP-07")
        .row("Job", "revision", "B")
        .row("Job", "operator", "R. Adeyemi")
        .row("Job", "inspector", "M. Lindqvist")
        .row("Job", "date", "2026-11-20")
        .row("Job", "instrument", "milliohm meter and insulation tester")
        .row("Job", "instrument number", "T-118")
        .row("Job", "calibration due", "2027-03-31")
        .row("Job", "continuity range", "40 MΩ")
        .row("Job", "insulation range", "10 GΩ")
        .row("Job", "temperature", "20 °C")
        .row("Job", "lead null", "nulled")
        .row("Job", "meter accuracy", "0.2 % + 2 digits")
        .row("Job", "meter resolution", "1 mΩ")
        .row("Job", "humidity", "46 %");
    Steps steps = new Steps(book, unit, random, blankSteps, least, spread);
    for (Bench.Joint joint : good.joints()) {
      if (joint.state().isEmpty()) {
        steps.pair(joint.from(), joint.to(), NORMAL, "");
      }
    }
    for (String ref : new String[] {"S1", "S2"}) {
      String other = ref.equals("S1") ? "S2=CLEAR" : "S1=CLEAR";
      String first = ref.equals("S1") ? "P2-1" : "P2-4";
      String open = ref.equals("S1") ? "P2-2" : "P2-5";
      String closed = ref.equals("S1") ? "P2-3" : "P2-6";
      Set<String> made = Set.of(ref + "=MADE", other);
      steps.pair(first, closed, NORMAL, "");
      steps.pair(first, open, NORMAL, "");
      steps.pair(first, open, made, ref + "=MADE");
      steps.pair(first, closed, made, ref + "=MADE");
    }
    steps.continuity("P2-7", "P2-8", "", parts.lamp());
    steps.part("P2-9", "P2-10", 48.6);
    steps.part("P3-1", "P3-2", 3.27);
    steps.part("P3-2", "P3-3", 3.25);
    steps.part("P3-3", "P3-1", 3.28);
    steps.part("P4-1", "P4-2", 62.3);
    steps.part("P4-4", "P4-5", 27.4);
    steps.part("P4-5", "P4-6", 27.3);
    steps.part("P4-6", "P4-4", 27.5);
    steps.bothWays("TB1-4", "TB1-5", "", parts.diode(), parts.diodeReversed());
    if (followUp) {
      steps.pair("P1-E", "P11-6", NORMAL, "");
      steps.pair("P1-F", "P11-5", NORMAL, "");
      steps.pair("TB2-7", "J2-18", NORMAL, "");
    }
    insulation(steps, wet);
    return book;
  }

  /** Each net against the rest; nets that parts join are tied together for the test. */
  private void insulation(Steps steps, Set<String> wet) {
    Map<String, String> tiedTo = new LinkedHashMap<>();
    tiedTo.put("P2-7", "P2-7+P2-8");
    tiedTo.put("P2-9", "P2-9+P2-10");
    tiedTo.put("P3-1", "P3-1+P3-2+P3-3");
    tiedTo.put("P4-1", "P4-1+P4-2");
    tiedTo.put("CR2-A", "CR2-A+CR2-K");
    tiedTo.put("P4-4", "P4-4+P4-5+P4-6");
    Set<String> done = Set.of("P2-8", "P2-10", "P3-2", "P3-3", "P4-2", "P4-5", "P4-6", "CR2-K");
    for (Set<String> net : good.nets(NORMAL)) {
      String first = firstConnectorPoint(net);
      if (!done.contains(first)) {
        steps.insulation(tiedTo.getOrDefault(first, first), net, wet);
      }
    }
  }

  private static String firstConnectorPoint(Set<String> net) {
    return new TreeSet<>(net)
        .stream()
            .filter(point -> point.startsWith("P") || point.startsWith("J"))
            .findFirst()
            .orElse(net.iterator().next());
  }

  /** The rows of a test sheet, each read off the bench as it is written. */
  private static final class Steps {
    private final Workbook book;
    private final Bench unit;
    private final Random random;
    private final Set<Integer> blank;
    private final double least;
    private final double spread;
    private int step;

    Steps(
        Workbook book, Bench unit, Random random, Set<Integer> blank, double least, double spread) {
      this.least = least;
      this.spread = spread;
      this.book = book;
      this.unit = unit;
      this.random = random;
      this.blank = blank;
    }

    void pair(String from, String to, Set<String> states, String state) {
      double ohms = unit.read(from, to, states);
      double shaken = ohms * (least + spread * random.nextDouble());
      continuity(
          from,
          to,
          state,
          Double.isInfinite(ohms) ? "OL" : String.format(Locale.ROOT, "%.3f", shaken));
    }

    void part(String from, String to, double ohms) {
      continuity(from, to, "", String.format(Locale.ROOT, ohms < 10 ? "%.2f" : "%.1f", ohms));
    }

    private void continuity(String from, String to, String state, String reading) {
      bothWays(from, to, state, reading, "");
    }

    /** A diode by the meter's two polarities. */
    void bothWays(String from, String to, String state, String reading, String reverse) {
      step++;
      boolean skipped = blank.contains(step);
      book.row(
          "Continuity",
          Integer.toString(step),
          from,
          to,
          state,
          skipped ? "" : reading,
          reverse,
          "Ω",
          skipped ? "" : "RA",
          "");
    }

    void insulation(String from, Set<String> net, Set<String> wet) {
      step++;
      boolean joined =
          unit.reachable(from.split("\\+", -1)[0], NORMAL).keySet().stream()
              .anyMatch(point -> !net.contains(point) && !from.contains("+"));
      boolean isWet = net.stream().anyMatch(wet::contains);
      String megohms =
          joined
              ? "0.00"
              : isWet
                  ? String.format(Locale.ROOT, "%.1f", 2 + 7 * random.nextDouble())
                  : String.format(Locale.ROOT, "%.0f", 1200 + 3000 * random.nextDouble());
      book.row(
          "Insulation", Integer.toString(step), from, "REST", "500", "60", megohms, "MΩ", "RA", "");
    }
  }
}
