package dev.ringout.benchmarks.damage;

import dev.ringout.support.Folders;
import dev.ringout.support.Triggers;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The file of a store, damaged in its bytes and in its rows: whatever is read of it afterwards, no
 * row is another that {@code store check} or a sealed record still calls as it was written.
 */
final class Stores {
  private static final int PAGE_BYTES = 4096;
  private static final String FILE = "bench.db";

  private final Chance chance;
  private final Path kept;

  Stores(Chance chance, Path kept) {
    this.chance = chance;
    this.kept = kept;
  }

  /** A unit with two tests, a note and a signature, and a sealed record of it. */
  void prepare(Runs runs, Path seeds) throws IOException, InterruptedException {
    Files.createDirectories(kept);
    String store = kept.resolve(FILE).toString();
    String list = seeds.resolve("csv-harness").toString();
    String key = kept.resolve("key").toString();
    runs.must(kept, "report", "--new-key", key);
    for (String sheet : List.of("csv-readings", "office-readings.xlsx")) {
      runs.must(kept, "store", "add", list, seeds.resolve(sheet).toString(), "--store", store);
    }
    runs.must(
        kept, "store", "note", "unit:0418", "lid missing", "--who", "R. Adeyemi", "--store", store);
    runs.must(
        kept,
        "store",
        "sign",
        "unit:0418",
        "--key",
        key,
        "--role",
        "lead",
        "--who",
        "M. Lindqvist",
        "--store",
        store);
    String record = kept.resolve("record.html").toString();
    runs.must(kept, "report", "unit:0418", "-o", record, "--seal", key, "--store", store);
    runs.must(kept, "store", "check", "--store", store);
  }

  void round(Runs runs, Path work) throws IOException, InterruptedException {
    Path folder = work.resolve("store");
    Folders.copy(kept, folder);
    Path file = folder.resolve(FILE);
    Optional<Map<String, List<String>>> before = rows(file);
    if (chance.oneIn(2)) {
      Files.write(file, bytes(Files.readAllBytes(file)));
    } else {
      rowsOf(file);
    }
    Optional<Map<String, List<String>>> after = rows(file);
    boolean other = after.isPresent() && !after.equals(before);
    String store = file.toString();
    String record = folder.resolve("record.html").toString();
    Runs.Ran check = runs.run(folder, "store", "check", "--store", store);
    if (other && check.code() == 0) {
      runs.keep(folder, "checks though its rows are others: " + difference(before, after), "store");
    }
    String[] verify = {
      "report", "--verify", record, "--key", folder.resolve("key.pub").toString(), "--store", store
    };
    Runs.Ran verified = runs.run(folder, verify);
    if (verified.code() == 0 && other && check.code() != 0 && isSealed(before, after)) {
      runs.keep(folder, "verifies though its entries are others", verify);
    }
    runs.run(folder, chance.of(commands(folder, store)));
  }

  private static List<String[]> commands(Path folder, String store) {
    String to = folder.resolve("out").toString();
    return List.of(
        new String[] {"units", "--store", store},
        new String[] {"units", "0418", "--store", store},
        new String[] {"units", "0418", "--json", "--store", store},
        new String[] {"check", "unit:0418", "--store", store},
        new String[] {"check", "unit:0418", "--json", "--store", store},
        new String[] {"report", "unit:0418", "-o", to + ".html", "--store", store},
        new String[] {"lot", "unit:0418", "--store", store},
        new String[] {"plan", "unit:0418", "--after", "unit:0418", "--store", store},
        new String[] {"store", "note", "unit:0418", "x", "--who", "R. Adeyemi", "--store", store},
        new String[] {"store", "backup", to + ".db", "--store", store},
        new String[] {"store", "copy", store, to + ".db"},
        new String[] {"store", "migrate", "--store", store});
  }

  /** Pages exchanged, emptied or cut off, and bytes within them. */
  private byte[] bytes(byte[] whole) {
    byte[] bytes = whole.clone();
    int pages = Math.max(1, bytes.length / PAGE_BYTES);
    int page = chance.below(pages) * PAGE_BYTES;
    int length = Math.min(PAGE_BYTES, bytes.length - page);
    switch (chance.below(6)) {
      case 0 -> Arrays.fill(bytes, page, page + length, (byte) 0);
      case 1 -> System.arraycopy(whole, chance.below(pages) * PAGE_BYTES, bytes, page, length);
      case 2 -> bytes = Arrays.copyOf(bytes, page);
      default -> {
        // The header, the tree of a page, and what is in its cells.
        int from = chance.oneIn(3) ? chance.below(100) : page + chance.below(length);
        for (int i = 0; i < 1 + chance.below(4); i++) {
          int at = Math.min(bytes.length - 1, from + i);
          bytes[at] = (byte) (chance.oneIn(2) ? bytes[at] ^ (1 << chance.below(8)) : 0xff);
        }
      }
    }
    return bytes;
  }

  /** Rows changed, taken out, put in twice; tables taken away. What the file refuses stays. */
  private void rowsOf(Path file) {
    try (Connection open = DriverManager.getConnection("jdbc:sqlite:" + file);
        Statement statement = open.createStatement()) {
      statement.execute("pragma foreign_keys = off");
      List<String> triggers = Triggers.takenFrom(statement);
      for (int i = 1 + chance.below(2); i > 0; i--) {
        change(statement);
      }
      Triggers.putBack(statement, triggers);
    } catch (SQLException e) {
      // A table that was taken away a moment ago.
      return;
    }
  }

  private void change(Statement statement) throws SQLException {
    String table =
        chance.of(
            List.of("entry", "entry", "session", "harness", "harness_part", "unit", "station"));
    List<String> columns = new ArrayList<>();
    try (ResultSet of = statement.executeQuery("select * from " + table + " limit 1")) {
      for (int i = 1; i <= of.getMetaData().getColumnCount(); i++) {
        columns.add(of.getMetaData().getColumnName(i));
      }
    }
    String column = chance.of(columns);
    String value = "'" + chance.word().replace("'", "''").replace("\0", "") + "'";
    String some = " where " + column + " in (select " + column + " from " + table;
    String one = some + " order by random() limit 1)";
    String sql =
        switch (chance.below(8)) {
          case 0 -> "delete from " + table + one;
          case 1 -> "update " + table + " set " + column + " = null" + one;
          case 2 -> "update " + table + " set " + column + " = x'00ff10'" + one;
          case 3 -> "update " + table + " set " + column + " = -1" + one;
          case 4 -> chance.oneIn(6) ? "drop table " + table : "pragma user_version = 7";
          default -> "update " + table + " set " + column + " = " + value + one;
        };
    try {
      statement.execute(sql);
    } catch (SQLException e) {
      // A row that the file itself refuses.
      return;
    }
  }

  /** Every row of every table; absent where not all can be read. */
  private static Optional<Map<String, List<String>>> rows(Path file) {
    Map<String, List<String>> rows = new LinkedHashMap<>();
    try (Connection open =
            DriverManager.getConnection("jdbc:sqlite:file:" + file + "?immutable=1");
        Statement statement = open.createStatement()) {
      for (String table :
          List.of("harness", "harness_part", "unit", "session", "entry", "station")) {
        List<String> of = new ArrayList<>();
        try (ResultSet all = statement.executeQuery("select * from " + table + " not indexed")) {
          while (all.next()) {
            StringBuilder row = new StringBuilder();
            for (int i = 1; i <= all.getMetaData().getColumnCount(); i++) {
              byte[] value = all.getBytes(i);
              row.append(value == null ? "null" : Arrays.toString(value)).append('|');
            }
            of.add(row.toString());
          }
        }
        of.sort(null);
        rows.put(table, of);
      }
      return Optional.of(rows);
    } catch (SQLException e) {
      return Optional.empty();
    }
  }

  private static boolean isSealed(
      Optional<Map<String, List<String>>> before, Optional<Map<String, List<String>>> after) {
    return !entries(before).equals(entries(after));
  }

  /** What is in them, not of which test they say to be: a file finds them by their place. */
  private static List<String> entries(Optional<Map<String, List<String>>> rows) {
    return rows.map(one -> one.getOrDefault("entry", List.of())).orElse(List.of()).stream()
        .map(row -> row.substring(row.indexOf('|')))
        .sorted()
        .toList();
  }

  private static String difference(
      Optional<Map<String, List<String>>> before, Optional<Map<String, List<String>>> after) {
    StringBuilder tables = new StringBuilder();
    before.ifPresent(
        old ->
            old.forEach(
                (table, rows) -> {
                  if (!rows.equals(after.map(now -> now.getOrDefault(table, rows)).orElse(rows))) {
                    tables.append(table).append(' ');
                  }
                }));
    return tables.toString();
  }
}
