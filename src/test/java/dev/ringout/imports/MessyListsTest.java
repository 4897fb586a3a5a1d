package dev.ringout.imports;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.harness.PinDetail;
import dev.ringout.imports.MessyList.Line;
import dev.ringout.imports.list.Finding;
import dev.ringout.imports.list.ImportResult.RowCounts;
import dev.ringout.imports.list.ImportResult.SheetReport;
import dev.ringout.source.Severity;
import dev.ringout.support.ImportedList;
import dev.ringout.words.ImportWords;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** One small list for each kind of mess, the finding that is expected written beside the row. */
class MessyListsTest {
  private static final Path LISTS = Path.of("src/test/resources/lists");

  @TempDir Path folder;

  static Stream<Path> lists() throws IOException {
    try (Stream<Path> files = Files.list(LISTS)) {
      return files.sorted().toList().stream();
    }
  }

  @ParameterizedTest
  @MethodSource("lists")
  void each_kind_of_mess_is_said_beside_its_row(Path file) throws Exception {
    MessyList list = MessyList.read(file);
    Path workbook = folder.resolve("list.xlsx");
    list.write(workbook);
    ImportedList imported = ImportedList.of(workbook);

    List<String> wires = new ArrayList<>();
    List<String> links = new ArrayList<>();
    List<String> findings = new ArrayList<>();
    for (int i = 0; i < list.lines().size(); i++) {
      Line line = list.lines().get(i);
      int row = i + 1;
      for (String expected : line.expected()) {
        String word = expected.split(" ", 2)[0];
        switch (word) {
          case "wire" -> wires.add(row + ": " + expected.substring("wire ".length()));
          case "link" -> links.add(expected.substring("link ".length()));
          case "spare" -> assertIsSpare(imported, expected.substring("spare ".length()), row);
          case "lost", "skipped" ->
              assertTrue(
                  imported.result().sheets().stream()
                      .flatMap(sheet -> sheet.skipped().stream())
                      .anyMatch(one -> one.row() == row && one.lost() == word.equals("lost")),
                  "row " + row + " " + word + ": " + imported.findings());
          case "error", "warning", "note" -> {
            if (!expected.equals("note")) {
              assertFinds(imported, expected, row);
              findings.add(expected);
            }
          }
          case "heading", "merged", "end" -> {}
          default -> throw new IllegalArgumentException("row " + row + ": " + expected);
        }
      }
    }
    assertEquals(
        String.join("\n", wires),
        String.join(
            "\n",
            imported.wires().stream()
                .sorted(java.util.Comparator.comparingInt(wire -> wire.place().row()))
                .map(wire -> wire.place().row() + ": " + wire.from() + " > " + wire.to())
                .toList()),
        () -> imported.findings().toString());
    assertTrue(
        imported.links().stream()
            .map(link -> link.from() + " > " + link.to())
            .toList()
            .containsAll(links),
        () -> links + " among " + imported.links());
    assertNothingElseIsSaid(imported, findings);
    assertRowsBalance(list, imported);
  }

  private static void assertIsSpare(ImportedList imported, String point, int row) {
    assertTrue(
        imported.result().wiring().pins().stream()
            .map(PinDetail::point)
            .anyMatch(pin -> pin.toString().equals(point)),
        point + " of row " + row + " among " + imported.pins());
  }

  private static boolean matches(Finding finding, String expected) {
    String[] words = expected.split(" ", 3);
    return finding.severity().word().equals(words[0])
        && finding.kind().word().equals(words[1])
        && (words.length < 3 || ImportWords.problem(finding).sentence().contains(words[2]));
  }

  private static void assertFinds(ImportedList imported, String expected, int row) {
    assertTrue(
        imported.result().findings().stream()
            .anyMatch(
                finding ->
                    matches(finding, expected)
                        && (finding.place().row() == row || finding.place().row() == 0)),
        "row " + row + ": " + expected + "\namong\n" + String.join("\n", imported.findings()));
  }

  /** A false alarm costs trust: what is not written in the list must not be found. */
  private static void assertNothingElseIsSaid(ImportedList imported, List<String> expected) {
    for (Finding finding : imported.result().findings()) {
      if (finding.severity() != Severity.NOTE) {
        assertTrue(
            expected.stream().anyMatch(one -> matches(finding, one)),
            "not expected: " + finding.kind() + " " + ImportWords.problem(finding));
      }
    }
  }

  /** Tables below each other share the sheet's rows; tables beside each other have them all. */
  private static RowCounts sum(RowCounts one, RowCounts other) {
    return new RowCounts(
        one.total() + other.total(),
        one.wire() + other.wire(),
        one.spare() + other.spare(),
        one.heading() + other.heading(),
        one.note() + other.note(),
        one.blank() + other.blank(),
        one.skipped() + other.skipped());
  }

  private static void assertRowsBalance(MessyList list, ImportedList imported) {
    Map<String, RowCounts> byRange = new TreeMap<>();
    for (SheetReport sheet : imported.result().sheets()) {
      byRange.merge(sheet.range(), sheet.rows(), MessyListsTest::sum);
    }
    for (Map.Entry<String, RowCounts> table : byRange.entrySet()) {
      RowCounts rows = table.getValue();
      assertEquals(list.lines().size(), rows.total(), "rows of " + rows);
      assertEquals(
          rows.total(),
          rows.wire()
              + rows.spare()
              + rows.heading()
              + rows.note()
              + rows.blank()
              + rows.skipped());
      for (String kind : List.of("heading", "note")) {
        long expected =
            list.lines().stream().filter(line -> line.expected().get(0).equals(kind)).count();
        // What stands above tables beside each other is counted with the first.
        boolean beside = kind.equals("note") && !table.getKey().startsWith("A");
        if (beside) {
          continue;
        }
        int counted = kind.equals("heading") ? rows.heading() : rows.note();
        assertEquals(expected, counted, kind.toLowerCase(Locale.ROOT) + " rows");
      }
    }
  }
}
