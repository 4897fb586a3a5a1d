package dev.ringout.support;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;

/**
 * Units of one list on a bench: a cable of equal wires from J1 to P2, each read end to end with a
 * milliohm meter. What a joint has differs from joint to joint, and a little from unit to unit.
 */
public final class LotFolder {
  private static final double WIRE_OHMS = 0.106;
  private static final double OF_A_JOINT = 0.002;
  private static final double OF_A_READING = 0.0006;

  private final Path folder;
  private final int wires;
  private final Random random;
  private final double[] joints;
  private final Map<String, Unit> units = new TreeMap<>();

  /** A cable of so many wires, by a seed. */
  public LotFolder(Path folder, int wires, long seed) {
    this.folder = folder;
    this.wires = wires;
    this.random = new Random(seed);
    this.joints = random.doubles(wires).map(share -> (share - 0.5) * 2 * OF_A_JOINT).toArray();
  }

  /** One unit in the making. */
  public final class Unit {
    private final String serial;
    private final Map<String, String> job = new LinkedHashMap<>();
    private final Map<String, String> readings = new LinkedHashMap<>();

    private Unit(String serial) {
      this.serial = serial;
      job.put("serial number", serial);
      job.put("continuity range", "40 MΩ");
      job.put("lead null", "nulled");
      job.put("meter accuracy", "0.2 % + 2 digits");
      job.put("meter resolution", "0.1 mΩ");
      for (int wire = 1; wire <= wires; wire++) {
        double ohms = WIRE_OHMS + joints[wire - 1] + random.nextGaussian() * OF_A_READING;
        readings.put("J1-" + wire, String.format(Locale.ROOT, "%.4f", ohms));
      }
    }

    /** A row of the job sheet. */
    public Unit job(String name, String value) {
      job.put(name, value);
      return this;
    }

    /** A reading as it is written instead. */
    public Unit reads(int wire, String value) {
      readings.put("J1-" + wire, value);
      return this;
    }

    /** So much more at one joint. */
    public Unit poor(int wire, double ohms) {
      double now = Double.parseDouble(readings.getOrDefault("J1-" + wire, ""));
      return reads(wire, String.format(Locale.ROOT, "%.4f", now + ohms));
    }

    /** So much more at all joints. */
    public Unit level(double ohms) {
      for (int wire = 1; wire <= wires; wire++) {
        poor(wire, ohms);
      }
      return this;
    }
  }

  /** A unit in which nothing is wrong, unless it is said. */
  public Unit unit(String serial) {
    return units.computeIfAbsent(serial, Unit::new);
  }

  /** So many units in which nothing is wrong, 0001 and on. */
  public LotFolder good(int count) {
    for (int i = 1; i <= count; i++) {
      unit(String.format(Locale.ROOT, "%04d", i));
    }
    return this;
  }

  /** The list. */
  public Path list() {
    return folder.resolve("list");
  }

  /** The folder of the sheets. */
  public Path sheets() {
    return folder.resolve("sheets");
  }

  /** Writes it all. */
  public LotFolder write() {
    try {
      Files.createDirectories(list());
      List<String> rows = new ArrayList<>(List.of("Wire,From,To,Gauge,Length"));
      for (int wire = 1; wire <= wires; wire++) {
        rows.add("W" + wire + ",J1-" + wire + ",P2-" + wire + ",20,3 m");
      }
      Files.write(list().resolve("wires.csv"), rows);
      Files.write(
          list().resolve("limits.csv"), List.of("Name,Value,Unit", "insulation test,none,"));
      Files.write(list().resolve("header.csv"), List.of("Name,Value", "title,Bridge cable"));
      for (Unit unit : units.values()) {
        write(unit);
      }
      return this;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private void write(Unit unit) throws IOException {
    Path sheet = Files.createDirectories(sheets().resolve("unit-" + unit.serial));
    List<String> job = new ArrayList<>(List.of("Name,Value"));
    unit.job.forEach((name, value) -> job.add(name + "," + value));
    Files.write(sheet.resolve("job.csv"), job);
    List<String> rows = new ArrayList<>(List.of("From,To,Reading"));
    unit.readings.forEach(
        (from, value) -> rows.add(from + "," + from.replace("J1", "P2") + "," + value));
    // Pins that are apart, so that the cable is proven.
    for (int wire = 1; wire < wires; wire++) {
      rows.add("J1-" + wire + ",REST,OL");
    }
    Files.write(sheet.resolve("continuity.csv"), rows);
  }
}
