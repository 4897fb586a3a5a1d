package dev.ringout.reference;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import dev.ringout.support.ResistorUnit;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Against a general circuit simulator's operating point (ngspice 39): the netlists and the results
 * they gave are kept in src/test/resources/spice; where the simulator is installed it is run again.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class SimulatorTest {
  private static final Path FOLDER = Path.of("src/test/resources/spice");

  private static Map<String, Double> results(String csv) {
    Map<String, Double> results = new TreeMap<>();
    csv.lines()
        .skip(1)
        .map(line -> line.split(",", 2))
        .forEach(cells -> results.put(cells[0], Double.valueOf(cells[1])));
    return results;
  }

  static Map<String, Double> kept() throws IOException {
    return results(Files.readString(FOLDER.resolve("results.csv")));
  }

  static Iterable<String> netlists() throws IOException {
    return kept().keySet();
  }

  @ParameterizedTest
  @MethodSource("netlists")
  void what_is_computed_is_what_the_simulator_found(String name) throws IOException {
    ResistorUnit unit = new ResistorUnit();
    String probe = "";
    for (String line : Files.readAllLines(FOLDER.resolve(name + ".cir"))) {
      String[] words = line.split(" ", -1);
      if (line.startsWith("R")) {
        unit.resistor(words[1], words[2], Double.parseDouble(words[3]));
      } else if (line.startsWith("I1")) {
        probe = words[2];
      }
    }
    double ohms = kept().getOrDefault(name, 0.0);
    assertEquals(ohms, unit.between("0", probe), 1e-6 * ohms);
  }

  @Test
  void every_netlist_has_its_result() throws IOException {
    try (var files = Files.list(FOLDER)) {
      assertEquals(files.filter(file -> file.toString().endsWith(".cir")).count(), kept().size());
    }
  }

  @Test
  void the_simulator_gives_the_kept_results_again() throws Exception {
    Process run =
        new ProcessBuilder("src/test/spice/run.sh")
            .redirectError(ProcessBuilder.Redirect.DISCARD)
            .start();
    String printed = new String(run.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    int code = run.waitFor();
    assumeTrue(code != 3, "the simulator is not installed");
    assertEquals(0, code);
    Map<String, Double> again = results(printed);
    assertEquals(kept().keySet(), again.keySet());
    for (Map.Entry<String, Double> one : kept().entrySet()) {
      assertEquals(
          one.getValue(),
          again.getOrDefault(one.getKey(), 0.0),
          1e-6 * one.getValue(),
          one.getKey());
    }
  }
}
