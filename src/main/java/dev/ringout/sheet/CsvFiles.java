package dev.ringout.sheet;

import de.siegmar.fastcsv.reader.CommentStrategy;
import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.reader.FieldMismatchStrategy;
import dev.ringout.source.FileBytes;
import dev.ringout.source.Place;
import dev.ringout.source.Problems;
import dev.ringout.source.UnusableInput;
import dev.ringout.source.UnusableInput.Reason;
import dev.ringout.units.Text;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.Charset;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;

/**
 * CSV files: comma, semicolon or tab, whichever the first lines have most of, in an encoding that
 * {@link TextCoding} finds.
 */
final class CsvFiles implements TabularFile {
  /** In a folder of tables, such as a retest that was put beside them. */
  private static final List<String> OTHER_TABLES = List.of(".tsv", ".xlsx", ".xls", ".ods");

  private final List<Sheet> sheets;
  private final boolean single;

  private CsvFiles(List<Sheet> sheets, boolean single) {
    this.sheets = sheets;
    this.single = single;
  }

  static CsvFiles single(FileBytes file, String shownName, Problems problems)
      throws IOException, UnusableInput {
    return new CsvFiles(List.of(CsvSheet.open(file, shownName, problems)), true);
  }

  static CsvFiles folder(Path folder, String shownName, Problems problems, FileBytes.Reader reader)
      throws IOException, UnusableInput {
    List<Path> all;
    try (Stream<Path> entries = Files.list(folder)) {
      all = entries.sorted(Comparator.comparing(CsvFiles::fileName)).toList();
    } catch (UncheckedIOException e) {
      throw e.getCause();
    }
    List<Path> paths =
        all.stream()
            .filter(path -> fileName(path).toLowerCase(Locale.ROOT).endsWith(".csv"))
            .toList();
    if (paths.isEmpty()) {
      throw new UnusableInput(
          shownName, Reason.NOT_UNDERSTOOD, "is a folder that holds no .csv file");
    }
    for (Path path : all) {
      if (isOtherTable(path)) {
        problems.warning(
            Place.of(shownName + "/" + fileName(path)),
            "is not read: of a folder the .csv files are; give it as a file of its own");
      }
    }
    List<FileBytes> tables = new ArrayList<>();
    for (Path path : paths) {
      if (!Files.isRegularFile(path)) {
        throw new UnusableInput(
            shownName + "/" + fileName(path), Reason.MISSING, "is not a file that can be read");
      }
      tables.add(reader.read(path));
    }
    return folder(tables, shownName, problems);
  }

  /** The tables of a folder. */
  static CsvFiles folder(List<FileBytes> tables, String shownName, Problems problems)
      throws IOException, UnusableInput {
    List<Sheet> sheets = new ArrayList<>();
    for (FileBytes table : tables) {
      sheets.add(CsvSheet.open(table, shownName + "/" + table.name(), problems));
    }
    return new CsvFiles(List.copyOf(sheets), false);
  }

  /** What a spreadsheet leaves there while it is open begins with a mark. */
  private static boolean isOtherTable(Path path) {
    String name = fileName(path).toLowerCase(Locale.ROOT);
    return OTHER_TABLES.stream().anyMatch(name::endsWith)
        && !name.startsWith("~$")
        && !name.startsWith(".");
  }

  private static String fileName(Path path) {
    return String.valueOf(path.getFileName());
  }

  /** Whether a file can be text: no zero bytes but those of UTF-16, no other control characters. */
  static boolean isText(FileBytes file) {
    byte[] head = file.first(4096);
    int odd = 0;
    for (byte one : head) {
      odd += one >= 0 && one < ' ' && "\t\r\n\f".indexOf(one) < 0 ? 1 : 0;
    }
    boolean wide = TextCoding.of(file).name().startsWith("UTF-16");
    return wide ? odd <= head.length / 2 : odd == 0;
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

  private record CsvSheet(
      FileBytes file,
      String shownName,
      Charset charset,
      char separator,
      boolean quotes,
      Optional<? extends TextLines> byLine)
      implements Sheet {
    private static final int LINES_LOOKED_AT = 50;
    private static final List<Character> SEPARATORS = List.of(',', ';', '\t');

    static CsvSheet open(FileBytes file, String shownName, Problems problems)
        throws IOException, UnusableInput {
      Charset charset = TextCoding.checked(file, shownName, problems);
      List<String> head = new ArrayList<>();
      try (BufferedReader reader = reader(file, charset)) {
        String line = reader.readLine();
        while (line != null && head.size() < LINES_LOOKED_AT) {
          head.add(line);
          line = reader.readLine();
        }
      }
      char separator = separator(head);
      boolean parted =
          SEPARATORS.stream().anyMatch(one -> sum(counts(head, one)) * 2 >= head.size());
      return new CsvSheet(
          file,
          shownName,
          charset,
          separator,
          separator != '\t' || quoted(file, charset),
          BarredText.isIn(head)
              ? Optional.of(new BarredText())
              : parted ? Optional.empty() : AlignedText.of(head));
    }

    /**
     * The separator: of those of which nearly every line has as many, or else of all, the one of
     * which there are most. A net's points may stand in one cell with semicolons between.
     */
    private static char separator(List<String> lines) {
      List<Character> even = new ArrayList<>();
      for (char candidate : SEPARATORS) {
        if (isEven(counts(lines, candidate))) {
          even.add(candidate);
        }
      }
      char best = even.isEmpty() ? ',' : even.get(0);
      for (char candidate : even.isEmpty() ? SEPARATORS : even) {
        long more = sum(counts(lines, candidate));
        best = more > sum(counts(lines, best)) ? candidate : best;
      }
      return best;
    }

    private static long sum(List<Integer> counts) {
      return counts.stream().mapToLong(Integer::longValue).sum();
    }

    /** Whether nearly every line that is not blank has one and the same number. */
    private static boolean isEven(List<Integer> counts) {
      Map<Integer, Integer> lines = new HashMap<>();
      counts.forEach(count -> lines.merge(count, 1, Integer::sum));
      lines.remove(0);
      int most = lines.values().stream().mapToInt(Integer::intValue).max().orElse(0);
      return most >= 3 && most * 10 >= counts.size() * 8;
    }

    /**
     * How many stand in each line outside quotes; a quoted field may go on in the next lines where
     * every quote is closed. Blank lines are left out.
     */
    private static List<Integer> counts(List<String> lines, char character) {
      List<Integer> counts = new ArrayList<>();
      long quotes = lines.stream().flatMapToInt(String::chars).filter(c -> c == '"').count();
      boolean quoted = false;
      for (String line : lines) {
        quoted &= quotes % 2 == 0;
        boolean goesOn = quoted;
        int count = 0;
        for (int i = 0; i < line.length(); i++) {
          char c = line.charAt(i);
          quoted ^= c == '"';
          count += !quoted && c == character ? 1 : 0;
        }
        if (goesOn && !counts.isEmpty()) {
          counts.set(counts.size() - 1, counts.get(counts.size() - 1) + count);
        } else if (!line.isBlank()) {
          counts.add(count);
        }
      }
      return counts;
    }

    private static boolean quoted(FileBytes file, Charset charset) throws IOException {
      try (BufferedReader reader = reader(file, charset)) {
        return TabQuotes.holdCells(reader);
      }
    }

    private static BufferedReader reader(FileBytes file, Charset charset) throws IOException {
      // A letter that does not fit is an error, as it is where a file is read by its name.
      BufferedReader reader =
          new BufferedReader(new InputStreamReader(file.open(), charset.newDecoder()));
      reader.mark(1);
      if (reader.read() != '\uFEFF') {
        reader.reset();
      }
      return reader;
    }

    @Override
    public String name() {
      String name = Text.visible(file.name());
      int dot = name.lastIndexOf('.');
      return dot > 0 ? name.substring(0, dot) : name;
    }

    @Override
    public Place place() {
      return Place.of(shownName);
    }

    @Override
    public Surroundings forEachRow(Consumer<Row> each) throws UnusableInput {
      if (byLine.isPresent()) {
        return forEachLine(byLine.get(), each);
      }
      try (BufferedReader in = reader(file, charset);
          CsvReader<CsvRecord> csv =
              CsvReader.builder()
                  .fieldSeparator(separator)
                  .quoteCharacter(quotes ? '"' : '\0')
                  .commentStrategy(CommentStrategy.NONE)
                  .skipEmptyLines(false)
                  .missingFieldStrategy(FieldMismatchStrategy.IGNORE)
                  .extraFieldStrategy(FieldMismatchStrategy.IGNORE)
                  .ofCsvRecord(in)) {
        int number = 0;
        for (CsvRecord record : csv) {
          number++;
          refuseSwallowedLines(record.getFields(), number);
          Row row =
              new Row(
                  number,
                  record.getFields().stream().map(OutFile::asWritten).map(Cell::text).toList());
          if (!row.isBlank()) {
            each.accept(row);
          }
        }
        return Surroundings.none();
      } catch (CsvParseException e) {
        throw new UnusableInput(
            shownName,
            Reason.NOT_UNDERSTOOD,
            "is not clean CSV (a quote that is never closed?): "
                + (e.getCause() == null ? e : e.getCause()).getMessage());
      } catch (IOException | UncheckedIOException e) {
        throw new UnusableInput(shownName, Reason.MISSING, "can't be read: " + e.getMessage());
      }
    }

    private Surroundings forEachLine(TextLines lines, Consumer<Row> each) throws UnusableInput {
      try (BufferedReader in = reader(file, charset)) {
        int number = 0;
        for (String line = in.readLine(); line != null; line = in.readLine()) {
          number++;
          Row row = new Row(number, lines.cells(line));
          if (!row.isBlank()) {
            each.accept(row);
          }
        }
        return Surroundings.none();
      } catch (IOException e) {
        throw new UnusableInput(shownName, Reason.MISSING, "can't be read: " + e.getMessage());
      }
    }

    /**
     * A quote alone in a cell, which people write for "as above", opens a cell that ends at the
     * next such quote: what stands between would be lost.
     */
    private void refuseSwallowedLines(List<String> fields, int row) throws UnusableInput {
      for (int i = 0; i < fields.size(); i++) {
        String field = fields.get(i);
        if (field.indexOf('\n') < 0 || field.indexOf(separator) < 0) {
          continue;
        }
        String behind = field.replaceFirst("^\"+", "");
        char first = behind.isEmpty() ? 'x' : behind.charAt(0);
        boolean alone = first == '\n' || first == '\r' || first == separator;
        if (alone) {
          throw new UnusableInput(
              shownName + "!" + Place.columnLetters(i + 1) + row,
              Reason.NOT_UNDERSTOOD,
              "is a quote alone, which holds the lines below it together: write \"as above\" as"
                  + " words, or what stands above once more");
        }
      }
    }
  }
}
