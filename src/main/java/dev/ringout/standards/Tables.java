package dev.ringout.standards;

import dev.ringout.source.FileBytes;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;

/**
 * The tables that come with the program, with a user's own laid over them: a row of the user's
 * stands in place of the published one with the same key.
 */
public final class Tables {
  /** Every table with the columns that are its key. */
  private static final Map<String, List<String>> KEYS =
      Map.ofEntries(
          Map.entry("contact-sizes", List.of("size")),
          Map.entry("insert-arrangements", List.of("arrangement", "family")),
          Map.entry("insert-labels", List.of("arrangement")),
          Map.entry("aircraft-current", List.of("awg")),
          Map.entry("voltage-drop", List.of("volts")),
          Map.entry("crimp-pull", List.of("standard", "awg")),
          Map.entry("lugs", List.of("colour")),
          Map.entry("crimp-tools", List.of("tool", "contact", "awg")),
          Map.entry("face-positions", List.of("names", "contact")),
          Map.entry("sleeve-schemes", List.of("scheme")),
          Map.entry("strip-lengths", List.of("contact")),
          Map.entry("designators", List.of("letters")),
          Map.entry("slips", List.of("slip", "where")),
          Map.entry("hand-movements", List.of("movement")),
          Map.entry("colour-codes", List.of("digit", "colour")),
          Map.entry("conductor-metals", List.of("metal")),
          Map.entry("wire-types", List.of("type", "awg")),
          Map.entry("wire-resistance", List.of("type", "awg")));

  /** Tables to which nothing can be added, and the column in which each row has a number. */
  private static final Map<String, String> WEIGHTS =
      Map.of("slips", "per_thousand", "hand-movements", "cost");

  private static final Pattern DECIMAL =
      Pattern.compile("[+-]?([0-9]+(\\.[0-9]*)?|\\.[0-9]+)([eE][+-]?[0-9]+)?");

  /** No weight is more: of a thousand chances, all. */
  private static final double MOST_WEIGHT = 1000;

  private final Map<String, List<Entry>> own;

  private Tables(Map<String, List<Entry>> own) {
    this.own = own;
  }

  /**
   * One row.
   *
   * @param origin who wrote the table
   * @param confidence how sure the row is, by its column {@code confidence}
   * @param source where the row stands: its own column {@code source}, else the table's
   */
  public record Entry(
      Map<String, String> values, Origin origin, Confidence confidence, String source) {

    /** Where the row stands, and whether a published one is from memory. */
    public String citation() {
      return isPublishedFromMemory() ? source + " (this row from memory)" : source;
    }

    /** Whether a published row says that it was written from memory. */
    public boolean isPublishedFromMemory() {
      return origin == Origin.PUBLISHED && isFromMemory();
    }

    /** Whether the row says that it was written from memory. */
    public boolean isFromMemory() {
      return confidence == Confidence.MEMORY;
    }

    /** A value, or empty. */
    public String get(String column) {
      return values.getOrDefault(column, "");
    }

    /** A value that is a number. */
    public double number(String column) {
      return Double.parseDouble(get(column));
    }
  }

  /** Who wrote a table. */
  public enum Origin {
    /** It comes with the program. */
    PUBLISHED,
    /** The user. */
    OWN
  }

  /** How sure a row is. */
  public enum Confidence {
    /** Read where its source has it. */
    SEEN,
    /** Written from memory of its source. */
    MEMORY,
    /** The row does not say. */
    NOT_STATED;

    private static final String COLUMN = "confidence";

    private static Confidence of(Map<String, String> row) {
      return switch (row.getOrDefault(COLUMN, "")) {
        case "seen" -> SEEN;
        case "memory" -> MEMORY;
        default -> NOT_STATED;
      };
    }
  }

  /** A user's table that can't be used, in words for the user. */
  public static final class Unusable extends Exception {
    private static final long serialVersionUID = 1L;

    Unusable(String text) {
      super(text);
    }
  }

  /** The published tables alone. */
  public static Tables published() {
    return new Tables(Map.of());
  }

  /**
   * The published tables with those of a folder laid over them: {@code contact-sizes.csv} and so
   * on, in the published form.
   */
  public static Tables with(Path folder) throws Unusable {
    return with(folder, FileBytes::read);
  }

  /**
   * The same.
   *
   * @param reader reads each table, once
   */
  public static Tables with(Path folder, FileBytes.Reader reader) throws Unusable {
    Map<String, List<Entry>> own = new LinkedHashMap<>();
    if (Files.exists(folder) && !Files.isDirectory(folder)) {
      throw new Unusable("is not a folder");
    }
    try (var files = Files.list(folder)) {
      for (Path file : files.sorted().toList()) {
        String name = String.valueOf(file.getFileName());
        if (name.endsWith(".csv")) {
          String table = name.substring(0, name.length() - ".csv".length());
          if (!KEYS.containsKey(table)) {
            throw new Unusable(
                name + " is not a known table; these are: " + String.join(", ", names()));
          }
          own.put(table, read(table, name, reader.read(file).utf8()));
        }
      }
    } catch (IOException e) {
      throw new Unusable("can't be read: " + e.getMessage());
    }
    return new Tables(own);
  }

  /** The names of all tables. */
  public static List<String> names() {
    return KEYS.keySet().stream().sorted().toList();
  }

  private static List<Entry> read(String table, String file, String text) throws Unusable {
    PublishedTable read;
    try {
      read = PublishedTable.of(text);
    } catch (RuntimeException e) {
      throw new Unusable(file + " is not clean CSV: " + e.getMessage());
    }
    PublishedTable published = PublishedTable.load(Tables.class, table + ".csv");
    List<Entry> entries = new ArrayList<>();
    refuseWords(file, read, published);
    refuseWeights(table, file, read, published);
    for (Map<String, String> row : read.rows()) {
      for (String column : published.rows().get(0).keySet()) {
        boolean needed = KEYS.getOrDefault(table, List.of()).contains(column);
        if (needed && !row.containsKey(column)) {
          throw new Unusable(file + " has no column " + column);
        }
      }
      entries.add(
          new Entry(
              row,
              Origin.OWN,
              Confidence.of(row),
              "own table " + file + (read.citation().isEmpty() ? "" : ": " + read.citation())));
    }
    return entries;
  }

  /** Where the published table has numbers, so must the user's. */
  private static void refuseWords(String file, PublishedTable own, PublishedTable published)
      throws Unusable {
    for (String column : published.rows().get(0).keySet()) {
      List<String> values =
          published.rows().stream().map(row -> row.getOrDefault(column, "")).toList();
      boolean numbers = values.stream().allMatch(value -> value.isEmpty() || isNumber(value));
      boolean names = column.equals("contact");
      if (!numbers || names || values.stream().allMatch(String::isEmpty)) {
        continue;
      }
      boolean mayBeBlank = values.contains("");
      boolean mayBeBelowZero = values.stream().anyMatch(value -> value.startsWith("-"));
      for (int i = 0; i < own.rows().size(); i++) {
        String value = own.rows().get(i).getOrDefault(column, "");
        boolean known = own.rows().get(i).containsKey(column);
        boolean number = isNumber(value) && (mayBeBelowZero || !value.startsWith("-"));
        if (known && !number && !(value.isEmpty() && mayBeBlank)) {
          throw new Unusable(row(file, i) + column + " needs a number, not \"" + value + "\"");
        }
      }
    }
  }

  private static String row(String file, int row) {
    return file + ", row " + (row + 1) + " of its data: ";
  }

  /** A weight is more than nothing, and stands for something that is known. */
  private static void refuseWeights(
      String table, String file, PublishedTable own, PublishedTable published) throws Unusable {
    String column = WEIGHTS.get(table);
    if (column == null) {
      return;
    }
    List<List<String>> known = published.rows().stream().map(row -> key(table, row)).toList();
    for (int i = 0; i < own.rows().size(); i++) {
      Map<String, String> row = own.rows().get(i);
      String where = row(file, i);
      if (!known.contains(key(table, row))) {
        throw new Unusable(
            where
                + String.join(" ", key(table, row))
                + " is none of "
                + known.stream().map(key -> String.join(" ", key)).toList());
      }
      String weight = row.getOrDefault(column, "");
      if (!weight.isEmpty()
          && (Double.parseDouble(weight) <= 0 || Double.parseDouble(weight) >= MOST_WEIGHT)) {
        throw new Unusable(where + column + " is to be above 0 and below 1000, not " + weight);
      }
    }
  }

  /** Java reads more: {@code NaN}, {@code 12d} and {@code 0x1p3} are typing errors in a table. */
  private static boolean isNumber(String value) {
    return DECIMAL.matcher(value).matches() && Double.isFinite(Double.parseDouble(value));
  }

  /** The rows of a table, the user's own first. */
  public List<Entry> rows(String table) {
    PublishedTable published = PublishedTable.load(Tables.class, table + ".csv");
    List<Entry> rows = new ArrayList<>(own.getOrDefault(table, List.of()));
    List<List<String>> taken = rows.stream().map(row -> key(table, row.values())).toList();
    for (Map<String, String> row : published.rows()) {
      if (!taken.contains(key(table, row))) {
        rows.add(
            new Entry(
                row,
                Origin.PUBLISHED,
                Confidence.of(row),
                row.getOrDefault("source", published.citation())));
      }
    }
    return List.copyOf(rows);
  }

  /** What a row is known by, so that a user's own can stand in its place. */
  static List<String> key(String table, Map<String, String> row) {
    return KEYS.getOrDefault(table, List.of()).stream()
        .map(column -> row.getOrDefault(column, ""))
        .toList();
  }
}
