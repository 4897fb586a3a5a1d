package dev.ringout.standards;

import de.siegmar.fastcsv.reader.CommentStrategy;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * A data file of published values. Its lines {@code # source:} name where they come from.
 *
 * @param citation the sources, in one line
 * @param rows column to value
 */
public record PublishedTable(String citation, List<Map<String, String>> rows) {
  private static final String SOURCE = "source:";

  /**
   * Reads a table that comes with the program.
   *
   * @param owner a class in the table's package
   * @throws IllegalStateException where the program was built without it
   */
  public static PublishedTable load(Class<?> owner, String name) {
    try (InputStream in = owner.getResourceAsStream(name)) {
      if (in == null) {
        throw new IllegalStateException("built without the table " + name);
      }
      return of(new String(in.readAllBytes(), StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * The row that has a value in a column, which is its name.
   *
   * @throws IllegalStateException where the program was built without it
   */
  Map<String, String> row(String column, String name) {
    return rows.stream()
        .filter(row -> name.equals(row.get(column)))
        .findFirst()
        .orElseThrow(() -> new IllegalStateException("built without the row " + name));
  }

  /** A table by its text. */
  static PublishedTable of(String text) {
    try {
      String citation =
          text.lines()
              .filter(line -> line.startsWith("# " + SOURCE))
              .map(line -> line.substring(("# " + SOURCE).length()).strip())
              .collect(Collectors.joining("; "));
      try (CsvReader<NamedCsvRecord> csv =
          CsvReader.builder().commentStrategy(CommentStrategy.SKIP).ofNamedCsvRecord(text)) {
        return new PublishedTable(
            citation, csv.stream().map(NamedCsvRecord::getFieldsAsMap).toList());
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
