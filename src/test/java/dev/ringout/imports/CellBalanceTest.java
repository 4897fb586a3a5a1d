package dev.ringout.imports;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.fasterxml.jackson.jr.ob.JSON;
import dev.ringout.imports.list.Words;
import dev.ringout.sheet.Sheet;
import dev.ringout.sheet.Surroundings;
import dev.ringout.sheet.TabularFile;
import dev.ringout.source.Place;
import dev.ringout.source.Problems;
import dev.ringout.support.Run;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** No cell of a list goes without a word: every filled cell is counted as something. */
class CellBalanceTest {
  private static final Words WORDS = Words.standard();

  private static final Path MESSES = Path.of("src/test/resources/lists");
  private static final Path AS_RECEIVED = Path.of("harness-samples/swing-bridge/as-received");

  /** Lists that others made; they lie beside the project, not in it. */
  private static final Path SHARED = Path.of("../shared/lists");

  private static final List<String> FORMS = List.of(".xlsx", ".xls", ".ods", ".csv", ".wlist");

  @TempDir Path folder;

  static Stream<Path> messes() throws IOException {
    return files(MESSES);
  }

  static Stream<Path> asReceived() throws IOException {
    return files(AS_RECEIVED);
  }

  static Stream<Path> shared() throws IOException {
    return Files.isDirectory(SHARED) ? files(SHARED) : Stream.of(SHARED);
  }

  private static Stream<Path> files(Path folder) throws IOException {
    try (Stream<Path> all = Files.walk(folder)) {
      return all
          .filter(Files::isRegularFile)
          .filter(
              file ->
                  folder.equals(MESSES)
                      || FORMS.stream()
                          .anyMatch(
                              form -> file.toString().toLowerCase(Locale.ROOT).endsWith(form)))
          .sorted()
          .toList()
          .stream();
    }
  }

  private static List<Map<?, ?>> maps(@Nullable Object part) {
    List<Map<?, ?>> maps = new ArrayList<>();
    if (part instanceof List<?> list) {
      for (Object one : list) {
        if (one instanceof Map<?, ?> map) {
          maps.add(map);
        }
      }
    }
    return maps;
  }

  private static int number(Map<?, ?> cells, String name) {
    return cells.get(name) instanceof Number number ? number.intValue() : -1;
  }

  /**
   * Filled cells of each sheet. A merged cell is given in each row that it spans, as the import
   * says that it counts them.
   */
  private static Map<String, Integer> filled(Path list) throws Exception {
    Map<String, Integer> filled = new LinkedHashMap<>();
    try (TabularFile file =
        TabularFile.open(list, String.valueOf(list.getFileName()), new Problems())) {
      for (Sheet sheet : file.sheets()) {
        int count = cellsOf(sheet).values().stream().mapToInt(Map::size).sum();
        if (count > 0) {
          filled.put(sheet.name(), count);
        }
      }
    }
    return filled;
  }

  /** Texts by row and column, merged ones in each row that they span. */
  private static Map<Integer, Map<Integer, String>> cellsOf(Sheet sheet) throws Exception {
    Map<Integer, Map<Integer, String>> cells = new TreeMap<>();
    Surroundings around =
        sheet.forEachRow(
            row -> {
              Map<Integer, String> own = new TreeMap<>();
              for (int column = 1; column <= row.cells().size(); column++) {
                if (!row.cell(column).isBlank()) {
                  own.put(column, row.cell(column).text());
                }
              }
              cells.put(row.number(), own);
            });
    for (Surroundings.Merge merge : around.merges()) {
      String text =
          cells.getOrDefault(merge.firstRow(), Map.of()).getOrDefault(merge.firstColumn(), "");
      for (int row = merge.firstRow() + 1; row <= merge.lastRow(); row++) {
        if (!text.isEmpty() && cells.containsKey(row)) {
          cells.getOrDefault(row, new TreeMap<>()).put(merge.firstColumn(), text);
        }
      }
    }
    return cells;
  }

  private static void assertAddsUp(Path list, Map<String, Object> json) throws Exception {
    Map<String, Integer> counted = new LinkedHashMap<>();
    for (Map<?, ?> sheet : maps(json.get("cells"))) {
      int sum = 0;
      for (String use : List.of("wires", "pins", "notes", "headings", "notRead", "notUsed")) {
        sum += number(sheet, use);
      }
      assertEquals(number(sheet, "filled"), sum, list + " " + sheet);
      assertEquals(number(sheet, "notUsed"), cells(sheet.get("unused")), list + " " + sheet);
      counted.put(String.valueOf(sheet.get("sheet")), sum);
    }
    if (Boolean.TRUE.equals(json.get("decided"))) {
      assertEquals(filled(list), counted, list.toString());
    } else {
      assertEquals(Map.of(), counted, list + ": nothing is read, nothing is counted");
    }
  }

  /** Cells in ranges such as {@code B4} and {@code B4:D4}. */
  private static int cells(@Nullable Object ranges) {
    int cells = 0;
    if (ranges instanceof List<?> list) {
      for (Object range : list) {
        String[] ends = String.valueOf(range).split(":", -1);
        cells += column(ends[ends.length - 1]) - column(ends[0]) + 1;
      }
    }
    return cells;
  }

  private static int column(String cell) {
    int column = 0;
    for (char letter : cell.replaceAll("\\d", "").toCharArray()) {
      column = column * 26 + letter - 'A' + 1;
    }
    return column;
  }

  private static Map<String, Object> imported(Path list) throws IOException {
    return JSON.std.mapFrom(Run.of("import", list, "--json").out());
  }

  /** A table of the document: where it stands, and which of its columns is what. */
  private record Table(
      String sheet,
      int headingRow,
      int lastRow,
      int first,
      int last,
      Map<Integer, String> roles,
      Map<Integer, String> headings) {

    /** Whether a text is a heading: of the second row, or once more below. */
    boolean isHeading(int column, String text) {
      return plain(headings.getOrDefault(column, "")).contains(plain(text));
    }
  }

  private static List<Table> tables(Map<String, Object> json) {
    List<Map<?, ?>> all = maps(json.get("sheets"));
    List<Table> tables = new ArrayList<>();
    for (Map<?, ?> one : all) {
      boolean reads =
          !List.of("none", "marks", "connections").contains(String.valueOf(one.get("layout")));
      String[] range = String.valueOf(one.get("range")).split(":", -1);
      int heading = number(one, "headingRow");
      int last =
          all.stream()
              .filter(other -> Objects.equals(other.get("sheet"), one.get("sheet")))
              .mapToInt(other -> number(other, "headingRow"))
              .filter(row -> row > heading)
              .min()
              .orElse(Integer.MAX_VALUE);
      Map<Integer, String> roles = new LinkedHashMap<>();
      Map<Integer, String> headings = new LinkedHashMap<>();
      for (Map<?, ?> column : maps(one.get("columns"))) {
        int index = column(String.valueOf(column.get("column")));
        roles.put(index, String.valueOf(column.get("as")));
        headings.put(index, String.valueOf(column.get("heading")));
      }
      if (reads) {
        tables.add(
            new Table(
                String.valueOf(one.get("sheet")),
                heading,
                last,
                column(range[0]),
                column(range[1]),
                roles,
                headings));
      }
    }
    return tables;
  }

  /** Cells of which nothing is made, of rows that were skipped, or of which something is said. */
  private static Set<String> notTaken(Map<String, Object> json) {
    Set<String> notTaken = new HashSet<>();
    for (Map<?, ?> sheet : maps(json.get("cells"))) {
      if (sheet.get("unused") instanceof List<?> unused) {
        for (Object range : unused) {
          String[] ends = String.valueOf(range).split(":", -1);
          int row = Integer.parseInt(ends[0].replaceAll("\\D", ""));
          for (int column = column(ends[0]); column <= column(ends[ends.length - 1]); column++) {
            notTaken.add(sheet.get("sheet") + "!" + column + "!" + row);
          }
        }
      }
    }
    for (Map<?, ?> sheet : maps(json.get("sheets"))) {
      for (Map<?, ?> row : maps(sheet.get("skipped"))) {
        notTaken.add(sheet.get("sheet") + "!" + row.get("row"));
      }
    }
    for (Map<?, ?> problem : maps(json.get("problems"))) {
      String cell = String.valueOf(problem.get("cell"));
      if (cell.matches("[A-Z]+\\d+")) {
        notTaken.add(problem.get("sheet") + "!" + column(cell) + "!" + cell.replaceAll("\\D", ""));
      }
    }
    return notTaken;
  }

  /** Only letters and digits, without leading zeros: {@code J01 - A} is found in {@code J1-A}. */
  private static String plain(String text) {
    return text.toLowerCase(Locale.ROOT)
        .replaceAll("[^\\p{L}\\p{N}]", "")
        .replaceAll("(?<!\\p{N})0+(?=\\p{N})", "");
  }

  /** What is said to be in wires, pins or notes, and is nowhere in the harness that was written. */
  private static List<String> lost(Path list, Path harness, Map<String, Object> json)
      throws Exception {
    List<String> written = new ArrayList<>();
    try (TabularFile file = TabularFile.open(harness, "harness.xlsx", new Problems())) {
      for (Sheet sheet : file.sheets()) {
        cellsOf(sheet)
            .values()
            .forEach(row -> row.values().forEach(one -> written.add(plain(one))));
      }
    }
    String all = String.join("\n", written);
    boolean twice =
        json.get("counts") instanceof Map<?, ?> counts && number(counts, "foundAtBothEnds") > 0;
    Set<String> notTaken = notTaken(json);
    List<String> lost = new ArrayList<>();
    try (TabularFile file = TabularFile.open(list, "list", new Problems())) {
      for (Sheet sheet : file.sheets()) {
        Map<Integer, Map<Integer, String>> cells = cellsOf(sheet);
        for (Table table : tables(json)) {
          if (!table.sheet().equals(sheet.name())) {
            continue;
          }
          for (var row : cells.entrySet()) {
            for (var cell : row.getValue().entrySet()) {
              boolean inside =
                  row.getKey() > table.headingRow()
                      && row.getKey() < table.lastRow()
                      && cell.getKey() >= table.first()
                      && cell.getKey() <= table.last();
              String place = sheet.name() + "!" + cell.getKey() + "!" + row.getKey();
              boolean taken =
                  !notTaken.contains(place)
                      && !notTaken.contains(sheet.name() + "!" + row.getKey());
              String role = table.roles().getOrDefault(cell.getKey(), "Keep");
              boolean heading =
                  table.isHeading(cell.getKey(), cell.getValue())
                      && !table.headings().getOrDefault(cell.getKey(), "").isEmpty();
              if (inside && taken && !heading && !isFound(cell.getValue(), role, all, twice)) {
                lost.add(
                    Place.columnLetters(cell.getKey())
                        + row.getKey()
                        + " ("
                        + role
                        + "): "
                        + cell.getValue());
              }
            }
          }
        }
      }
    }
    return lost;
  }

  /**
   * Whether a text stands in a harness.
   *
   * @param twice whether wires are listed at both ends: the colour at the second one, which is
   *     compared, may be the same in another notation
   */
  private static boolean isFound(String text, String role, String harness, boolean twice) {
    boolean nothing = WORDS.isNothing(text);
    if (nothing || (twice && role.equals("Color"))) {
      return true;
    }
    boolean inOtherUnits = role.equals("Gauge") || role.equals("Length");
    boolean explained = role.endsWith("Code");
    if (inOtherUnits || explained) {
      return true;
    }
    if (role.equals("Keep") || role.equals("Note")) {
      return harness.contains(plain(text));
    }
    boolean end = role.startsWith("From") || role.startsWith("To") || role.startsWith("Far");
    return Stream.of(text.split("[^\\p{L}\\p{N}]+", -1))
        // "CONN J1-A", "TB2, term. 7", "CAP & STOW": words of the trade beside a point are no name.
        .filter(word -> !end || word.matches(".*\\p{N}.*"))
        .map(CellBalanceTest::plain)
        .allMatch(harness::contains);
  }

  private void assertNothingIsLost(Path list) throws Exception {
    Path harness = folder.resolve("harness.xlsx");
    Run run = Run.of("import", list, "-o", harness, "--json");
    if (Files.exists(harness)) {
      assertEquals(
          List.of(), lost(list, harness, JSON.std.mapFrom(run.out())), list + "\n" + run.err());
    }
  }

  @ParameterizedTest
  @MethodSource("messes")
  void what_a_messy_list_is_said_to_give_stands_in_the_harness(Path mess) throws Exception {
    Path list = folder.resolve("list.xlsx");
    MessyList.read(mess).write(list);
    assertNothingIsLost(list);
  }

  @ParameterizedTest
  @MethodSource("asReceived")
  void what_the_three_shops_lists_are_said_to_give_stands_in_the_harness(Path list)
      throws Exception {
    assertNothingIsLost(list);
  }

  @ParameterizedTest
  @MethodSource("shared")
  void what_others_lists_are_said_to_give_stands_in_the_harness(Path list) throws Exception {
    assumeTrue(Files.isRegularFile(list), "[NOT RUN] the lists of others are not beside the clone");
    assertNothingIsLost(list);
  }

  @ParameterizedTest
  @MethodSource("messes")
  void every_cell_of_a_messy_list_is_counted_once(Path mess) throws Exception {
    Path list = folder.resolve("list.xlsx");
    MessyList.read(mess).write(list);
    assertAddsUp(list, imported(list));
  }

  @ParameterizedTest
  @MethodSource("asReceived")
  void every_cell_of_the_bridge_as_three_shops_sent_it_is_counted_once(Path list) throws Exception {
    Map<String, Object> json = imported(list);
    assertAddsUp(list, json);
    assertTrue(!maps(json.get("cells")).isEmpty());
  }

  @ParameterizedTest
  @MethodSource("shared")
  void every_cell_of_lists_that_others_made_is_counted_once(Path list) throws Exception {
    assumeTrue(Files.isRegularFile(list), "[NOT RUN] the lists of others are not beside the clone");
    Map<String, Object> json = imported(list);
    if (json.containsKey("counts")) {
      assertAddsUp(list, json);
    }
  }
}
