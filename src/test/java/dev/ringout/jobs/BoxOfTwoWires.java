package dev.ringout.jobs;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** A list of two wires at revision B, and test sheets of it, each a folder of .csv. */
final class BoxOfTwoWires {
  private final Path folder;

  BoxOfTwoWires(Path folder) {
    this.folder = folder;
  }

  Path list() throws IOException {
    return write(
        "box",
        "wires",
        List.of("Wire,From,To,Gauge,Length", "W1,J1-A,P1-1,20,1 m", "W2,J1-B,P1-2,20,1 m"),
        "header",
        List.of("Name,Value", "title,Span lock box", "revision,B"));
  }

  /** A sheet of a good unit with these rows on its sheet Job, such as {@code serial number,7}. */
  Path readings(String name, String... job) throws IOException {
    List<String> rows = new ArrayList<>(List.of("Name,Value"));
    rows.addAll(List.of(job));
    return write(
        name,
        "continuity",
        List.of("Step,From,To,Reading,Unit", "1,J1-A,P1-1,0.04,Ω", "2,J1-B,P1-2,0.04,Ω"),
        "job",
        rows);
  }

  /** A list with a wire that ends nowhere. */
  Path wrongList() throws IOException {
    return write(
        "wrong", "wires", List.of("Wire,From,To", "W1,J1-A,"), "header", List.of("Name,Value"));
  }

  Path missing() {
    return folder.resolve("no-such-file.xlsx");
  }

  private Path write(
      String name, String sheet, List<String> rows, String other, List<String> otherRows)
      throws IOException {
    Path in = Files.createDirectories(folder.resolve(name));
    Files.write(in.resolve(sheet + ".csv"), rows);
    Files.write(in.resolve(other + ".csv"), otherRows);
    return in;
  }
}
