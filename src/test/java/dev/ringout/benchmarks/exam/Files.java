package dev.ringout.benchmarks.exam;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** The list and the sheet in the documented form: folders of CSV. */
final class Files {
  static final String CONTINUITY = "continuity";
  static final String INSULATION = "insulation";

  private Files() {}

  private static void write(Path folder, String sheet, List<List<String>> rows) {
    StringBuilder text = new StringBuilder();
    for (List<String> row : rows) {
      text.append(String.join(",", row)).append('\n');
    }
    try {
      java.nio.file.Files.createDirectories(folder);
      java.nio.file.Files.writeString(folder.resolve(sheet + ".csv"), text);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static void list(Box box, Path folder) {
    List<List<String>> wires = new ArrayList<>();
    List<List<String>> links = new ArrayList<>();
    List<List<String>> contacts = new ArrayList<>();
    wires.add(
        List.of("Wire", "From", "From Pin", "To", "To Pin", "Gauge", "Wire Type", "Length (m)"));
    links.add(List.of("Ref", "Pin", "To Pin"));
    contacts.add(List.of("Ref", "State", "Pin", "To Pin"));
    for (Box.Cond one : box.conds) {
      String ref = box.item(one.a());
      switch (one.sort()) {
        case WIRE -> wires.add(wire(box, one));
        case LINK -> links.add(List.of(ref, box.pin(one.a()), box.pin(one.b())));
        case CONTACT -> {
          String position = one.position().substring(one.position().indexOf('=') + 1);
          contacts.add(List.of(ref, position, box.pin(one.a()), box.pin(one.b())));
        }
      }
    }
    List<List<String>> pins = new ArrayList<>();
    pins.add(List.of("Ref", "Pin"));
    for (int point = 0; point < box.points.size(); point++) {
      pins.add(List.of(box.item(point), box.pin(point)));
    }
    write(folder, "wires", wires);
    write(folder, "links", links);
    write(folder, "switches", contacts);
    write(folder, "pins", pins);
    write(folder, "parts", parts(box));
  }

  private static List<String> wire(Box box, Box.Cond one) {
    boolean all = box.gauges;
    return List.of(
        one.name(),
        box.item(one.a()),
        box.pin(one.a()),
        box.item(one.b()),
        box.pin(one.b()),
        all ? Integer.toString(one.awg()) : "",
        all ? one.type() : "",
        all ? Double.toString(one.metres()) : "");
  }

  private static List<List<String>> parts(Box box) {
    List<List<String>> parts = new ArrayList<>();
    parts.add(List.of("Ref", "Pin", "To Pin", "Kind", "Ohms", "Tolerance %"));
    for (Box.Part part : box.parts) {
      boolean measured = part.listed() > 0;
      parts.add(
          List.of(
              box.item(part.a()),
              box.pin(part.a()),
              box.pin(part.k()),
              part.sort().name().toLowerCase(Locale.ROOT),
              measured ? Meter.text(part.listed(), 1) + " Ω" : "",
              measured ? Meter.text(part.tolerance(), 1) : ""));
    }
    return parts;
  }

  static void sheet(Box box, List<Row> rows, Meter meter, Habit habit, Path folder) {
    List<List<String>> continuity = new ArrayList<>();
    List<List<String>> insulation = new ArrayList<>();
    continuity.add(List.of("Step", "From", "To", "State", "Reading", "Reverse", "Unit", "Note"));
    insulation.add(List.of("Step", "From", "To", "State", "Volts", "Reading", "Unit"));
    int step = 1;
    for (Row row : rows) {
      String number = Integer.toString(step++);
      String from = side(box, row.plus());
      String to = side(box, row.minus());
      if (row.insulation()) {
        insulation.add(List.of(number, from, to, row.state(), "500", row.reading(), "MΩ"));
      } else {
        continuity.add(
            List.of(
                number,
                from,
                to,
                row.state(),
                habit.asWritten(row.reading()),
                habit.asWritten(row.reverse()),
                habit.unit(),
                habit.note(step)));
      }
    }
    write(folder, CONTINUITY, continuity);
    write(folder, INSULATION, insulation);
    List<List<String>> job = new ArrayList<>();
    job.add(List.of("Name", "Value"));
    job(meter).forEach((name, value) -> job.add(List.of(name, value)));
    write(folder, "job", job);
  }

  private static Map<String, String> job(Meter meter) {
    Map<String, String> job = new LinkedHashMap<>();
    job.put("serial number", "0007");
    job.put("date", "2026-11-20");
    job.put("operator", "K. Moreau");
    job.put("instrument", "bench meter");
    job.put("continuity range", "40 MΩ");
    job.put("insulation range", "10 GΩ");
    if (!meter.leadsTold().isEmpty()) {
      job.put("lead null", meter.leadsTold());
    }
    if (!meter.accuracyTold().isEmpty()) {
      job.put("meter accuracy", meter.accuracyTold());
    }
    return job;
  }

  private static String side(Box box, int[] points) {
    if (points.length == 0) {
      return "REST";
    }
    List<String> names = new ArrayList<>();
    for (int point : points) {
      names.add(box.points.get(point));
    }
    return String.join("+", names);
  }
}
