package dev.ringout.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * A unit of two wires and filled test sheets of it, each a folder of .csv: for tests of what stands
 * around the values.
 */
final class SmallUnit {
  private static final String CONTINUITY =
      "1,J1-A,P1-1,0.04,Ω\n2,J1-B,P1-2,0.04,Ω\n3,J1-A,REST,OL,\n";
  private static final String INSULATION = "4,J1-A,REST,500,60,2000,MΩ\n";

  private final Path folder;

  SmallUnit(Path folder) {
    this.folder = folder;
  }

  /** The list, with rows of its sheets Header ({@code effectivity,0100 to 0200}) and Limits. */
  Path list(List<String> header, List<String> limits) throws IOException {
    Path unit = Files.createDirectories(folder.resolve("unit"));
    Files.writeString(
        unit.resolve("wires.csv"),
        "Wire,From,To,Gauge,Length\nW1,J1-A,P1-1,20,1 m\nW2,J1-B,P1-2,20,1 m\n");
    rows(unit.resolve("header.csv"), "title,Box", header);
    rows(unit.resolve("limits.csv"), "insulation volts,500 V", limits);
    return unit;
  }

  /** The list with nothing special about it. */
  Path list() throws IOException {
    return list(List.of(), List.of());
  }

  /** A test sheet of a good unit with these rows on its sheet Job. */
  Path sheet(String name, String... job) throws IOException {
    return filled(name, CONTINUITY, INSULATION, job);
  }

  /** A test sheet with rows such as {@code 1,J1-A,P1-1,0.04,Ω}; a blank one is left out. */
  Path filled(String name, String continuity, String insulation, String... job) throws IOException {
    Path sheet = Files.createDirectories(folder.resolve(name));
    if (!continuity.isEmpty()) {
      Files.writeString(
          sheet.resolve("continuity.csv"), "Step,From,To,Reading,Unit,Time,By\n" + continuity);
    }
    if (!insulation.isEmpty()) {
      Files.writeString(
          sheet.resolve("insulation.csv"),
          "Step,From,To,Volts,Seconds,Reading,Unit\n" + insulation);
    }
    if (job.length > 0) {
      rows(sheet.resolve("job.csv"), "procedure,TP-1", List.of(job));
    }
    return sheet;
  }

  private static void rows(Path file, String first, List<String> rows) throws IOException {
    List<String> lines = new ArrayList<>(List.of("Name,Value", first));
    lines.addAll(rows);
    Files.write(file, lines);
  }

  /** A page without its line breaks, to look for sentences in. */
  static String flat(String page) {
    return page.replaceAll("\\s+", " ");
  }
}
