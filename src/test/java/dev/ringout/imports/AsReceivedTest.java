package dev.ringout.imports;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.harness.Harness;
import dev.ringout.harness.Wire;
import dev.ringout.harness.Wiring;
import dev.ringout.imports.list.ImportResult;
import dev.ringout.intake.HarnessReader;
import dev.ringout.sheet.TabularFile;
import dev.ringout.source.Place;
import dev.ringout.source.Problem;
import dev.ringout.source.Problems;
import dev.ringout.source.Severity;
import dev.ringout.support.ImportedList;
import dev.ringout.support.Run;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The bridge as three shops sent it, and what is left of a list after it was written and read. */
class AsReceivedTest {
  private static final Path SAMPLE = Path.of("harness-samples/swing-bridge");

  @TempDir Path folder;

  private static Harness harness(Path file) throws Exception {
    Problems problems = new Problems();
    try (TabularFile table = TabularFile.open(file, "harness", problems)) {
      Harness harness = HarnessReader.read(table, "harness", problems);
      assertEquals(
          List.of(),
          problems.list().stream()
              .filter(problem -> problem.severity() != Severity.NOTE)
              .map(Problem::sentence)
              .toList());
      return harness;
    }
  }

  private static Set<Set<String>> nets(Wiring wiring) {
    ImportResult result =
        new ImportResult(
            List.of(),
            wiring,
            List.of(),
            ImportResult.EndsFound.NONE,
            List.of(),
            List.of(),
            List.of());
    return new HashSet<>(new ImportedList(result, List.of()).nets().values());
  }

  private static Wiring wiring(Harness harness) {
    return new Wiring(harness.wires(), harness.items(), harness.pins(), harness.links());
  }

  @ParameterizedTest
  @ValueSource(strings = {"connector-sheets.xlsx", "cable-schedule.ods", "net-table.csv"})
  void each_shop_s_list_has_the_bridge_s_nets(String file) throws Exception {
    Set<Set<String>> bridge = nets(wiring(harness(SAMPLE.resolve("junction-box.xlsx"))));
    ImportedList list = ImportedList.of(SAMPLE.resolve("as-received").resolve(file));
    assertEquals(bridge, nets(list.result().wiring()));
    assertEquals(0, list.result().lostRows());
  }

  /** A wire without its place, which is another file's. */
  private static Wire unplaced(Wire wire) {
    return wire.listedAt(Place.of(""));
  }

  @ParameterizedTest
  @ValueSource(strings = {"out.xlsx", "out", "out.csv"})
  void what_was_imported_written_and_read_again_is_the_same(String out) throws Exception {
    for (String file : List.of("connector-sheets.xlsx", "cable-schedule.ods", "net-table.csv")) {
      Path list = SAMPLE.resolve("as-received").resolve(file);
      Path to = folder.resolve(file + "-" + out);
      Run run = Run.of("import", list, "-o", out.contains(".") ? to : to + "/");
      assertEquals(0, run.code(), run.err());
      ImportedList imported = ImportedList.of(list);
      Harness read = harness(to);
      assertEquals(
          imported.wires().stream().map(AsReceivedTest::unplaced).toList(),
          read.wires().stream().map(AsReceivedTest::unplaced).toList());
      assertEquals(nets(imported.result().wiring()), nets(wiring(read)));
    }
  }

  @Test
  void a_harness_file_is_refused_for_its_links_and_switches_would_be_lost() {
    Run run = Run.of("import", SAMPLE.resolve("junction-box.xlsx"));
    assertEquals(65, run.code());
    assertTrue(run.err().contains("is a harness file already"), run.err());
  }
}
