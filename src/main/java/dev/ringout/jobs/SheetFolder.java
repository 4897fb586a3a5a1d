package dev.ringout.jobs;

import dev.ringout.harness.NaturalOrder;
import dev.ringout.intake.ReadingsReader;
import dev.ringout.sheet.Sheet;
import dev.ringout.sheet.TabularFile;
import dev.ringout.source.FileBytes;
import dev.ringout.source.Place;
import dev.ringout.source.Problem;
import dev.ringout.source.Problems;
import dev.ringout.source.Severity;
import dev.ringout.source.UnusableInput;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/**
 * A folder of filled test sheets: a file or a folder for each. One that holds the tables of a test
 * sheet ({@code continuity.csv}) is a test sheet itself.
 */
final class SheetFolder {
  private static final List<String> TABLES = List.of(".xlsx", ".xls", ".ods", ".csv");

  private SheetFolder() {}

  /** The sheets of a folder in natural order; what is no folder of sheets is one sheet. */
  static List<Path> sheets(Path named, String shownName, Problems problems) throws IOException {
    if (!Files.isDirectory(named)) {
      return List.of(named);
    }
    List<Path> entries;
    try (Stream<Path> all = Files.list(named)) {
      entries =
          all.filter(path -> !isHidden(name(path)))
              .sorted(Comparator.comparing(SheetFolder::name, NaturalOrder.INSTANCE))
              .toList();
    }
    if (entries.stream().anyMatch(SheetFolder::isTableOfSheet)) {
      return List.of(named);
    }
    List<Path> sheets = new ArrayList<>();
    for (Path entry : entries) {
      if (Files.isDirectory(entry)
          || TABLES.stream().anyMatch(lowerName(entry)::endsWith)
          || holdsReadings(entry)) {
        sheets.add(entry);
      } else {
        problems.add(
            new Problem(
                Place.of(shownName + "/" + name(entry)),
                "",
                Severity.NOTE,
                "is not a table and is not read",
                ""));
      }
    }
    if (sheets.isEmpty()) {
      problems.error(Place.of(shownName), "is a folder that holds no test sheet");
    }
    return List.copyOf(sheets);
  }

  /** A check takes a test sheet by what is in it, whatever it is called. */
  private static boolean holdsReadings(Path entry) {
    try (TabularFile table =
        TabularFile.open(entry, name(entry), new Problems(), FileBytes::read)) {
      for (Sheet sheet : table.sheets()) {
        if (ReadingsReader.holdsReadings(sheet)) {
          return true;
        }
      }
      return false;
    } catch (UnusableInput | IOException e) {
      return false;
    }
  }

  /** What a spreadsheet leaves beside a file that is open, and what is not meant to be seen. */
  private static boolean isHidden(String name) {
    return name.startsWith(".") || name.startsWith("~$");
  }

  private static boolean isTableOfSheet(Path entry) {
    String name = lowerName(entry);
    return name.endsWith(".csv")
        && ReadingsReader.isSheetName(name.substring(0, name.length() - ".csv".length()));
  }

  private static String name(Path path) {
    return String.valueOf(path.getFileName());
  }

  private static String lowerName(Path path) {
    return name(path).toLowerCase(Locale.ROOT);
  }
}
