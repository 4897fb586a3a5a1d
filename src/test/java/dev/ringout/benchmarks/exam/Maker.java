package dev.ringout.benchmarks.exam;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;

/** Makes units at random, as a shop would have them. */
final class Maker {
  /** The look of a unit's wires. */
  enum Make {
    PLAIN,
    MIXED_GAUGES,
    WITHOUT_GAUGES,
    MIXED_WITHOUT_GAUGES,
    LONG_AND_THIN
  }

  /** Most that a stranded wire may have, ohms a metre at 20 °C (SAE AS22759/16: 16.2 Ω/kft ...). */
  private static final Map<Integer, Double> MOST =
      Map.of(26, 0.1355, 24, 0.0859, 22, 0.0531, 20, 0.0324, 18, 0.0204, 16, 0.01578, 14, 0.01004);

  private static final String LETTERS = "ABCDEFGHJKLMNPRSTUVWXYZabcdefghjkmnpqrstuvwxyz";

  private final Random random;
  private final Make make;
  private final boolean rich;
  private final Box box = new Box();
  private final Map<String, List<Integer>> free = new LinkedHashMap<>();
  private int wires;
  private int refs;

  private Maker(Random random, Make make, boolean rich) {
    this.random = random;
    this.make = make;
    this.rich = rich;
  }

  /**
   * A good unit of about so many wires.
   *
   * @param rich whether it has what not every box has: splices of splices, switches of many
   *     positions, coils in a row and side by side, studs with many lugs, plugs that look alike
   */
  static Box of(Random random, Make make, int wires, boolean rich) {
    Maker maker = new Maker(random, make, rich);
    maker.box.gauges = make != Make.WITHOUT_GAUGES && make != Make.MIXED_WITHOUT_GAUGES;
    maker.connectors(wires);
    maker.specials(wires);
    while (maker.wires < wires && maker.pinsLeft() > 4) {
      maker.wire(maker.pin(), maker.pin());
    }
    return maker.box;
  }

  private void connectors(int wanted) {
    int pins = wanted * 2 + wanted / 5 + 8;
    String[] names = {"J1", "P1", "J11", "P11", "J2", "P2", "J3", "P3", "J4", "P4", "J5", "P5"};
    int at = 0;
    while (pins > 0) {
      String ref = at < names.length ? names[at] : "J" + (at + 10);
      int size = Math.min(wanted < 60 ? 26 : 45, 10 + 4 * random.nextInt(10));
      boolean lettered = random.nextBoolean();
      List<Integer> cavities = new ArrayList<>();
      for (int pin = 0; pin < size; pin++) {
        String label = lettered ? LETTERS.substring(pin, pin + 1) : Integer.toString(pin + 1);
        cavities.add(box.point(ref, label));
      }
      free.put(ref, cavities);
      pins -= size;
      at++;
    }
  }

  private int pinsLeft() {
    return free.values().stream().mapToInt(List::size).sum();
  }

  /** The next cavity of some connector, now and then with one left empty before it. */
  private int pin() {
    List<List<Integer>> some = free.values().stream().filter(one -> !one.isEmpty()).toList();
    List<Integer> cavities = some.get(random.nextInt(some.size()));
    if (cavities.size() > 2 && random.nextInt(12) == 0) {
      cavities.remove(0);
    }
    return cavities.remove(0);
  }

  private void wire(int a, int b) {
    int awg = gauge();
    double metres =
        make == Make.LONG_AND_THIN ? 35 + random.nextInt(45) : 0.3 + random.nextInt(60) / 10.0;
    double ohms = ohms(awg, metres);
    String type = awg <= 16 || random.nextInt(3) == 0 ? "AS22759/16" : "";
    wires++;
    box.conds.add(
        new Box.Cond(
            "W" + (100 + wires), Box.Sort.WIRE, a, b, "", awg, type, metres, ohms, 0, false));
  }

  /** A wire as made: a little under the most, and two crimps. */
  double ohms(int awg, double metres) {
    return MOST.getOrDefault(awg, 0.03) * metres * (0.92 + 0.07 * random.nextDouble())
        + 0.001
        + 0.009 * random.nextDouble();
  }

  /** A wire of another gauge. */
  static double ohmsOf(int awg, double metres) {
    return MOST.getOrDefault(awg, 0.03) * metres * 0.96 + 0.004;
  }

  private int gauge() {
    return switch (make) {
      case PLAIN, WITHOUT_GAUGES -> random.nextInt(8) == 0 ? 20 : 22;
      case MIXED_GAUGES, MIXED_WITHOUT_GAUGES ->
          List.of(24, 22, 20, 18, 16, 14).get(random.nextInt(6));
      case LONG_AND_THIN -> random.nextBoolean() ? 24 : 26;
    };
  }

  private void link(String item, String from, String to) {
    int a = box.point(item, from);
    int b = box.point(item, to);
    box.conds.add(
        new Box.Cond(
            "link " + item + "-" + from + " to " + item + "-" + to,
            Box.Sort.LINK,
            a,
            b,
            "",
            0,
            "",
            0,
            0.0005 + 0.003 * random.nextDouble(),
            0,
            false));
  }

  private void specials(int wanted) {
    int sets = 1 + wanted / 60;
    for (int set = 0; set < sets; set++) {
      strip(wanted);
      splice();
      stud();
      coil();
      selector();
      switch (random.nextInt(4)) {
        case 0 -> between(Box.PartSort.RESISTOR, "R", 50 + random.nextInt(900), 5);
        case 1 -> between(Box.PartSort.LAMP, "DS", 20 + random.nextInt(100), 15);
        case 2 -> between(Box.PartSort.DIODE, "CR", 0, 0);
        default -> between(Box.PartSort.CAPACITOR, "C", 0, 0);
      }
      shield();
      if (rich) {
        richer();
      }
    }
  }

  private void richer() {
    switch (random.nextInt(7)) {
      case 0 -> splicesOfSplices();
      case 1 -> rotary();
      case 2 -> coilsInARow();
      case 3 -> coilsSideBySide();
      case 4 -> manyLugs();
      case 5 -> plugsAlike();
      default -> twoStripsAlike();
    }
  }

  /** A splice whose ends go to further splices. */
  private void splicesOfSplices() {
    int first = box.point("SP" + ++refs, "1");
    for (int branch = 0; branch < 2; branch++) {
      int next = box.point("SP" + ++refs, "1");
      wire(first, next);
      wire(pin(), next);
      wire(pin(), next);
    }
    wire(pin(), first);
  }

  /** A switch of four positions and two poles. */
  private void rotary() {
    String ref = "S" + ++refs;
    List<String> positions = List.of("OFF", "LOW", "MID", "HIGH");
    box.switches.add(new Box.Selector(ref, positions));
    for (String pole : List.of("A", "B")) {
      int common = box.point(ref, pole);
      wire(pin(), common);
      for (int at = 0; at < positions.size(); at++) {
        int throwTo = box.point(ref, pole + at);
        contact(ref, positions.get(at), common, throwTo);
        wire(pin(), throwTo);
      }
    }
  }

  private void coilsInARow() {
    String one = "K" + ++refs;
    String other = "K" + ++refs;
    wire(pin(), box.point(one, "X1"));
    wire(box.point(one, "X2"), box.point(other, "X1"));
    wire(pin(), box.point(other, "X2"));
    winding(one);
    winding(other);
  }

  /** Two coils between the same two buses: a way around each other's wires. */
  private void coilsSideBySide() {
    int supply = box.point("SP" + ++refs, "1");
    int back = box.point("SP" + ++refs, "1");
    wire(pin(), supply);
    wire(pin(), back);
    for (int coil = 0; coil < 2; coil++) {
      String ref = "K" + ++refs;
      wire(supply, box.point(ref, "X1"));
      wire(back, box.point(ref, "X2"));
      winding(ref);
    }
  }

  private void winding(String ref) {
    part(
        ref,
        Box.PartSort.WINDING,
        box.point(ref, "X1"),
        box.point(ref, "X2"),
        80 + random.nextInt(500),
        10);
  }

  private void manyLugs() {
    int stud = box.point("E" + ++refs, "1");
    for (int lug = 0; lug < 8; lug++) {
      wire(pin(), stud);
    }
  }

  /** Two plugs of one size, wired pin to pin. */
  private void plugsAlike() {
    String one = "J" + (60 + refs);
    String other = "P" + (60 + refs);
    refs++;
    for (int number = 1; number <= 9; number++) {
      wire(box.point(one, Integer.toString(number)), box.point(other, Integer.toString(number)));
    }
  }

  /** Two strips with the same terminals and the same jumpers, a wire from each to each. */
  private void twoStripsAlike() {
    String one = "TB" + ++refs;
    String other = "TB" + ++refs;
    for (String ref : List.of(one, other)) {
      for (int pin = 1; pin <= 6; pin++) {
        box.point(ref, Integer.toString(pin));
      }
      link(ref, "1", "2");
      link(ref, "5", "6");
    }
    for (int pin = 2; pin <= 5; pin++) {
      String label = Integer.toString(pin);
      wire(box.point(one, label), box.point(other, label));
    }
  }

  /** A strip with a chain of jumpers, a ring of jumpers, and single terminals. */
  private void strip(int wanted) {
    String ref = "TB" + ++refs;
    int size = wanted < 40 ? 8 : 12;
    for (int pin = 1; pin <= size; pin++) {
      box.point(ref, Integer.toString(pin));
    }
    link(ref, "1", "2");
    link(ref, "2", "3");
    boolean ring = random.nextBoolean();
    if (ring) {
      link(ref, "4", "5");
      link(ref, "5", "6");
      link(ref, "6", "7");
      link(ref, "4", "7");
    }
    for (int pin = 1; pin <= size; pin++) {
      if (random.nextInt(6) > 0) {
        wire(pin(), box.point(ref, Integer.toString(pin)));
      }
    }
    if (random.nextInt(3) == 0) {
      // Two conductors in parallel from a stud to the bus.
      int stud = box.point("E" + ++refs, "1");
      wire(stud, box.point(ref, "1"));
      wire(stud, box.point(ref, "1"));
    }
  }

  private void splice() {
    String ref = "SP" + ++refs;
    int at = box.point(ref, "1");
    int ends = 3 + random.nextInt(2);
    for (int end = 0; end < ends; end++) {
      wire(pin(), at);
    }
  }

  private void stud() {
    int at = box.point("E" + ++refs, "1");
    for (int end = 0; end < 3; end++) {
      wire(pin(), at);
    }
  }

  private void coil() {
    String ref = "K" + ++refs;
    int a = box.point(ref, "X1");
    int b = box.point(ref, "X2");
    wire(pin(), a);
    wire(pin(), b);
    double ohms = 80 + random.nextInt(500);
    part(ref, Box.PartSort.WINDING, a, b, ohms, 10);
    switch (random.nextInt(4)) {
      case 0 -> part(ref, Box.PartSort.DIODE, b, a, 0, 0);
      case 1 -> part(ref, Box.PartSort.SUPPRESSOR, a, b, 0, 0);
      default -> {
        // A bare coil.
      }
    }
  }

  private void part(String ref, Box.PartSort sort, int a, int k, double listed, double tolerance) {
    double real = listed * (1 + tolerance / 100 * 0.8 * (2 * random.nextDouble() - 1));
    String name = sort.name().toLowerCase(Locale.ROOT) + " " + ref;
    box.parts.add(new Box.Part(name, sort, a, k, listed, tolerance, real));
  }

  private void between(Box.PartSort sort, String letters, double ohms, double tolerance) {
    String ref = letters + ++refs;
    int a = box.point(ref, sort == Box.PartSort.DIODE ? "A" : "1");
    int k = box.point(ref, sort == Box.PartSort.DIODE ? "K" : "2");
    wire(pin(), a);
    wire(pin(), k);
    part(ref, sort, a, k, ohms, tolerance);
  }

  private void selector() {
    String ref = "S" + ++refs;
    int com = box.point(ref, "COM");
    int nc = box.point(ref, "NC");
    int no = box.point(ref, "NO");
    box.switches.add(new Box.Selector(ref, List.of("FREE", "MADE")));
    contact(ref, "FREE", com, nc);
    contact(ref, "MADE", com, no);
    wire(pin(), com);
    wire(pin(), nc);
    wire(pin(), no);
  }

  private void contact(String ref, String position, int a, int b) {
    box.conds.add(
        new Box.Cond(
            "contact " + box.points.get(a) + " to " + box.points.get(b) + " of " + ref,
            Box.Sort.CONTACT,
            a,
            b,
            ref + "=" + position,
            0,
            "",
            0,
            0.004 + 0.05 * random.nextDouble(),
            0,
            false));
  }

  private void shield() {
    List<String> refs = new ArrayList<>(free.keySet());
    String ref = refs.get(random.nextInt(refs.size()));
    wire(pin(), box.point(ref, "SHELL"));
  }
}
