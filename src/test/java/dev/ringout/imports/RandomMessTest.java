package dev.ringout.imports;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.harness.Harness;
import dev.ringout.harness.Point;
import dev.ringout.harness.Wire;
import dev.ringout.harness.Wiring;
import dev.ringout.imports.list.ImportOptions;
import dev.ringout.imports.list.ImportResult;
import dev.ringout.imports.list.ImportResult.RowCounts;
import dev.ringout.imports.list.ImportResult.SheetReport;
import dev.ringout.imports.list.Words;
import dev.ringout.intake.HarnessReader;
import dev.ringout.print.ImportedSheets;
import dev.ringout.sheet.Cell;
import dev.ringout.sheet.OutFile;
import dev.ringout.sheet.OutSheet;
import dev.ringout.sheet.Row;
import dev.ringout.sheet.Sheet;
import dev.ringout.sheet.Surroundings;
import dev.ringout.sheet.TabularFile;
import dev.ringout.source.Place;
import dev.ringout.source.Problems;
import dev.ringout.source.Severity;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Lists broken at random: whatever comes, every row is accounted for and every wire has its ends.
 */
class RandomMessTest {
  @TempDir Path folder;

  private static final String[] ODD = {
    "\"",
    "N/C",
    "-",
    "J1",
    "J1-A",
    "A+B",
    "D1-D9",
    "SPARE",
    "CAP & STOW",
    "2-Jan",
    "1E5",
    "TRUE",
    "#REF!",
    "",
    " ",
    "\u00A0",
    "R+B",
    "a, b",
    "J1-A, J2-B",
    "0",
    "-1",
    "1e309",
    "FROM",
    "To",
    "Pin",
    "Signal",
    "X",
    "∞"
  };

  private static final List<Cell.Stored> KINDS = List.of(Cell.Stored.values());

  private record Rows(List<Row> rows) implements Sheet, TabularFile {
    @Override
    public String name() {
      return "J9 x";
    }

    @Override
    public Place place() {
      return Place.of("list", name());
    }

    @Override
    public Surroundings forEachRow(Consumer<Row> each) {
      rows.forEach(each);
      return Surroundings.none();
    }

    @Override
    public List<Sheet> sheets() {
      return List.of(this);
    }

    @Override
    public boolean isSingleTable() {
      return false;
    }

    @Override
    public void close() {}
  }

  private static List<List<Row>> seeds() throws Exception {
    List<List<Row>> seeds = new ArrayList<>();
    try (Stream<Path> files = Files.list(Path.of("src/test/resources/lists"))) {
      for (Path file : files.sorted().toList()) {
        List<Row> rows = new ArrayList<>();
        for (MessyList.Line line : MessyList.read(file).lines()) {
          rows.add(new Row(rows.size() + 1, line.cells().stream().map(Cell::text).toList()));
        }
        seeds.add(rows);
      }
    }
    return seeds;
  }

  private static Cell odd(Random random) {
    return Cell.text(ODD[random.nextInt(ODD.length)]);
  }

  private static List<Row> broken(List<Row> seed, Random random) {
    List<Row> rows = new ArrayList<>();
    int number = 0;
    for (Row row : seed) {
      if (random.nextInt(12) == 0) {
        continue;
      }
      number += random.nextInt(20) == 0 ? 3 : 1;
      List<Cell> cells = new ArrayList<>(row.cells());
      int changes = random.nextInt(3) == 0 ? random.nextInt(4) : 0;
      for (int i = 0; i < changes && !cells.isEmpty(); i++) {
        int column = random.nextInt(cells.size());
        switch (random.nextInt(5)) {
          case 0 -> cells.remove(column);
          case 1 -> cells.add(column, odd(random));
          case 2 -> cells.set(column, new Cell(KINDS.get(random.nextInt(KINDS.size())), "7"));
          case 3 -> {
            String left = random.nextBoolean() ? "" : "J1";
            cells.set(column, cells.get(column).in(new Cell.Ink(true, left, true)));
          }
          default -> cells.set(column, odd(random));
        }
      }
      rows.add(new Row(number, cells));
    }
    return rows;
  }

  /** Rows that were not read stop what comes after, and nothing else does. */
  private static void assertLoads(ImportResult result, Path file) throws Exception {
    List<OutSheet> sheets = ImportedSheets.of(result, Map.of("title", "x"));
    if (file.toString().endsWith(".xlsx")) {
      OutFile.workbook(file, sheets);
    } else {
      OutFile.folder(file, sheets);
    }
    Problems problems = new Problems();
    try (TabularFile table = TabularFile.open(file, "harness", problems)) {
      Harness harness = HarnessReader.read(table, "harness", problems);
      assertEquals(
          List.of(),
          problems.list().stream()
              .filter(problem -> problem.severity() == Severity.ERROR)
              .map(problem -> problem.place() + " " + problem.sentence())
              .filter(problem -> !problem.contains("could not be read and may be wires"))
              .toList(),
          file.toString());
      Wiring wiring = result.wiring();
      assertEquals(
          wiring.wires().stream().map(Wire::notes).toList(),
          harness.wires().stream().map(Wire::notes).toList());
      assertEquals(
          wiring.wires().stream().map(RandomMessTest::ends).toList(),
          harness.wires().stream().map(RandomMessTest::ends).toList());
      assertEquals(wiring.links().size(), harness.links().size());
      assertEquals(
          wiring.pins().stream().map(pin -> pin.point() + pin.note()).toList(),
          harness.pins().stream().map(pin -> pin.point() + pin.note()).toList(),
          () -> file + " " + wiring.pins());
    }
  }

  private static String ends(Wire wire) {
    return wire.name() + " " + wire.from() + " > " + wire.to() + " " + wire.gaugeLabel();
  }

  @Test
  void whatever_comes_rows_balance_and_wires_have_ends() throws Exception {
    List<List<Row>> seeds = seeds();
    Words words = Words.standard();
    ImportOptions some =
        new ImportOptions(Map.of(), Set.of("Signal", "Pin"), Set.of("X", "o"), Set.of("J1"));
    for (int seed = 0; seed < 1500; seed++) {
      Random random = new Random(seed);
      Rows list = new Rows(broken(seeds.get(random.nextInt(seeds.size())), random));
      ImportOptions options = random.nextInt(4) == 0 ? some : ImportOptions.none();
      ImportResult result =
          ListImporter.read(list, "list", words, options, HarnessReader::noteHeading);
      for (SheetReport sheet : result.sheets()) {
        RowCounts rows = sheet.rows();
        assertEquals(
            rows.total(),
            rows.wire()
                + rows.spare()
                + rows.heading()
                + rows.note()
                + rows.blank()
                + rows.skipped(),
            "seed " + seed);
        assertTrue(rows.wire() >= 0 && rows.blank() >= 0, "seed " + seed);
      }
      if (seed % 4 == 0 && result.joinsAnything()) {
        assertLoads(result, folder.resolve(seed % 100 == 0 ? seed + ".xlsx" : "" + seed));
      }
      for (Wire wire : result.wiring().wires()) {
        for (Point point : List.of(wire.from(), wire.to())) {
          assertFalse(point.ref().isEmpty() || point.pin().isEmpty(), "seed " + seed);
        }
      }
    }
  }
}
