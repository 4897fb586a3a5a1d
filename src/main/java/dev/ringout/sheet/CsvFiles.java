package dev.ringout.sheet;

import de.siegmar.fastcsv.reader.CommentStrategy;
import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import dev.ringout.source.Place;
import dev.ringout.source.Problems;
import dev.ringout.source.UnusableInput;
import dev.ringout.source.UnusableInput.Reason;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import java.util.stream.Stream;

/**
 * CSV files: comma, semicolon or tab, whichever the first line has most of; UTF-8, or UTF-16 with a
 * byte-order mark. A file that is no UTF-8 is read as Windows-1252, and that is said.
 */
final class CsvFiles implements TabularFile {
  private static final Charset WINDOWS_1252 = Charset.forName("windows-1252");

  private final List<Sheet> sheets;
  private final boolean single;

  private CsvFiles(List<Sheet> sheets, boolean single) {
    this.sheets = sheets;
    this.single = single;
  }

  static CsvFiles single(Path path, String shownName, Problems problems) throws IOException {
    return new CsvFiles(List.of(CsvSheet.open(path, shownName, problems)), true);
  }

  static CsvFiles folder(Path folder, String shownName, Problems problems)
      throws IOException, UnusableInput {
    List<Path> paths;
    try (Stream<Path> entries = Files.list(folder)) {
      paths =
          entries
              .filter(path -> fileName(path).toLowerCase(Locale.ROOT).endsWith(".csv"))
              .sorted(Comparator.comparing(CsvFiles::fileName))
              .toList();
    } catch (UncheckedIOException e) {
      throw e.getCause();
    }
    if (paths.isEmpty()) {
      throw new UnusableInput(
          shownName, Reason.NOT_UNDERSTOOD, "is a folder that holds no .csv file");
    }
    List<Sheet> sheets = new ArrayList<>();
    for (Path path : paths) {
      sheets.add(CsvSheet.open(path, shownName + "/" + fileName(path), problems));
    }
    return new CsvFiles(List.copyOf(sheets), false);
  }

  private static String fileName(Path path) {
    return String.valueOf(path.getFileName());
  }

  @Override
  public List<Sheet> sheets() {
    return sheets;
  }

  @Override
  public boolean isSingleTable() {
    return single;
  }

  @Override
  public void close() {}

  private record CsvSheet(Path path, String shownName, Charset charset, char separator)
      implements Sheet {

    static CsvSheet open(Path path, String shownName, Problems problems) throws IOException {
      Charset charset = charset(path);
      if (charset.equals(WINDOWS_1252)) {
        problems.warning(
            Place.of(shownName),
            "is not UTF-8: read as Windows-1252; check that Ω and µ came through");
      }
      try (BufferedReader reader = reader(path, charset)) {
        String first = reader.readLine();
        while (first != null && first.isBlank()) {
          first = reader.readLine();
        }
        return new CsvSheet(path, shownName, charset, separator(first == null ? "" : first));
      }
    }

    private static char separator(String line) {
      char best = ',';
      for (char candidate : new char[] {';', '\t'}) {
        if (count(line, candidate) > count(line, best)) {
          best = candidate;
        }
      }
      return best;
    }

    private static long count(String line, char character) {
      return line.chars().filter(c -> c == character).count();
    }

    private static Charset charset(Path path) throws IOException {
      try (var in = Files.newInputStream(path)) {
        byte[] mark = in.readNBytes(2);
        if (mark.length == 2 && (mark[0] & 0xff) == 0xff && (mark[1] & 0xff) == 0xfe) {
          return StandardCharsets.UTF_16;
        }
        if (mark.length == 2 && (mark[0] & 0xff) == 0xfe && (mark[1] & 0xff) == 0xff) {
          return StandardCharsets.UTF_16;
        }
      }
      try {
        StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(Files.readAllBytes(path)));
        return StandardCharsets.UTF_8;
      } catch (CharacterCodingException e) {
        return WINDOWS_1252;
      }
    }

    private static BufferedReader reader(Path path, Charset charset) throws IOException {
      BufferedReader reader = Files.newBufferedReader(path, charset);
      reader.mark(1);
      if (reader.read() != '\uFEFF') {
        reader.reset();
      }
      return reader;
    }

    @Override
    public String name() {
      String file = fileName(path);
      return file.substring(0, file.length() - ".csv".length());
    }

    @Override
    public Place place() {
      return Place.of(shownName);
    }

    @Override
    public void forEachRow(Consumer<Row> each) throws UnusableInput {
      try (BufferedReader in = reader(path, charset);
          CsvReader<CsvRecord> csv =
              CsvReader.builder()
                  .fieldSeparator(separator)
                  .commentStrategy(CommentStrategy.NONE)
                  .skipEmptyLines(false)
                  .allowMissingFields(true)
                  .allowExtraFields(true)
                  .ofCsvRecord(in)) {
        int number = 0;
        for (CsvRecord record : csv) {
          number++;
          Row row = new Row(number, record.getFields().stream().map(Cell::text).toList());
          if (!row.isBlank()) {
            each.accept(row);
          }
        }
      } catch (CsvParseException e) {
        throw new UnusableInput(
            shownName,
            Reason.NOT_UNDERSTOOD,
            "is no clean CSV (a quote that is never closed?): " + e.getMessage());
      } catch (IOException | UncheckedIOException e) {
        throw new UnusableInput(shownName, Reason.MISSING, "can't be read: " + e.getMessage());
      }
    }
  }
}
