package dev.ringout.benchmarks.weaken;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;

/** A folder of sheets: a harness, or one file of readings. */
final class Folder {
  static final String CONTINUITY = "continuity";
  static final String INSULATION = "insulation";
  static final String JOB = "job";
  static final String REWORK = "rework";

  final Map<String, Table> sheets = new LinkedHashMap<>();

  Folder copy() {
    Folder copy = new Folder();
    sheets.forEach((name, table) -> copy.sheets.put(name, table.copy()));
    return copy;
  }

  /** A sheet; an empty one where it is missing. */
  Table sheet(String name) {
    Table table = sheets.get(name);
    return table == null ? new Table() : table;
  }

  boolean has(String name) {
    return sheets.containsKey(name);
  }

  /** Writes the sheets that differ from what stands in the folder, and deletes the others. */
  Path write(Path folder) {
    try {
      Files.createDirectories(folder);
      try (var files = Files.list(folder)) {
        for (Path file : files.toList()) {
          Path name = file.getFileName();
          if (name == null || !sheets.containsKey(name.toString().replace(".csv", ""))) {
            Files.delete(file);
          }
        }
      }
      for (Map.Entry<String, Table> sheet : sheets.entrySet()) {
        Files.writeString(folder.resolve(sheet.getKey() + ".csv"), sheet.getValue().csv());
      }
      return folder;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
