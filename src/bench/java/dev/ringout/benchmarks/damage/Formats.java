package dev.ringout.benchmarks.damage;

import com.github.miachm.sods.SpreadSheet;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** The same sheets, damaged cell by cell, in every format: what is said of them is the same. */
final class Formats {
  private static final List<String> FORMS = List.of("csv", "xlsx", "xls", "ods");

  private final Chance chance;

  Formats(Chance chance) {
    this.chance = chance;
  }

  void round(
      Runs runs,
      Map<String, List<List<String>>> harness,
      Map<String, List<List<String>>> readings,
      Path work)
      throws IOException, InterruptedException {
    Map<String, List<List<String>>> list = damaged(harness);
    Map<String, List<List<String>>> sheet = damaged(readings);
    String first = "";
    for (String form : FORMS) {
      String ending = form.equals("csv") ? "" : "." + form;
      Path h = work.resolve("harness" + ending);
      Path r = work.resolve("readings" + ending);
      write(list, h, form);
      write(sheet, r, form);
      String[] command = {"check", h.toString(), r.toString(), "--json"};
      Runs.Ran ran = runs.run(work, command);
      String said = normal(ran, ending);
      if (first.isEmpty()) {
        first = said;
      } else if (!first.equals(said)) {
        runs.keep(work, "differs in " + form + ": " + difference(first, said), command);
      }
    }
  }

  private static String difference(String one, String other) {
    int at = 0;
    while (at < Math.min(one.length(), other.length()) && one.charAt(at) == other.charAt(at)) {
      at++;
    }
    int from = Math.max(0, at - 60);
    return one.substring(from, Math.min(one.length(), at + 80))
        + " | "
        + other.substring(from, Math.min(other.length(), at + 80));
  }

  /** What is said, whatever the files and sheets are called. */
  private static String normal(Runs.Ran ran, String ending) {
    String said = (ran.code() + "\n" + ran.out() + ran.err()).replaceAll("\\s+", " ");
    if (ending.isEmpty()) {
      said =
          said.replaceAll("(harness|readings)/([a-z]+)\\.csv", "$1!$2")
              .replaceAll(
                  "\"file\" : \"(harness|readings)!([a-z]+)\", \"sheet\" : \"\"",
                  "\"file\" : \"$1\", \"sheet\" : \"$2\"");
    }
    return said.replace(ending.isEmpty() ? "." : ending, "").replace(".", "");
  }

  private Map<String, List<List<String>>> damaged(Map<String, List<List<String>>> sheets) {
    Map<String, List<List<String>>> copy = new LinkedHashMap<>();
    sheets.forEach(
        (name, rows) ->
            copy.put(
                name,
                new ArrayList<>(
                    rows.stream().map(row -> (List<String>) new ArrayList<>(row)).toList())));
    for (int i = chance.below(4); i > 0; i--) {
      List<List<String>> rows = copy.get(chance.of(List.copyOf(copy.keySet())));
      if (rows == null || rows.size() < 2) {
        continue;
      }
      int row = chance.below(rows.size());
      switch (chance.below(6)) {
        case 0 -> rows.remove(row);
        case 1 -> rows.add(row, rows.get(chance.below(rows.size())));
        default -> {
          List<String> cells = rows.get(row);
          String word = chance.oneIn(3) ? chance.of(chance.of(rows)) : chance.word();
          // What a file can't hold, or cuts, is no difference of reading; nor is an apostrophe that
          // text files alone take for the mark of a text.
          if (word.length() < 1000
              && word.chars().noneMatch(c -> c == 0xfeff)
              && !word.startsWith("'")) {
            cells.set(chance.below(cells.size()), word);
          }
        }
      }
    }
    return copy;
  }

  private static void write(Map<String, List<List<String>>> sheets, Path to, String form)
      throws IOException {
    switch (form) {
      case "csv" -> {
        Files.createDirectories(to);
        for (Map.Entry<String, List<List<String>>> sheet : sheets.entrySet()) {
          StringBuilder text = new StringBuilder();
          for (List<String> row : sheet.getValue()) {
            text.append(String.join(",", row.stream().map(Formats::quoted).toList())).append('\n');
          }
          Files.writeString(to.resolve(sheet.getKey() + ".csv"), text, StandardCharsets.UTF_8);
        }
      }
      case "ods" -> ods(sheets, to);
      default -> {
        try (Workbook book = form.equals("xls") ? new HSSFWorkbook() : new XSSFWorkbook();
            OutputStream out = Files.newOutputStream(to)) {
          sheets.forEach(
              (name, rows) -> {
                var sheet = book.createSheet(name);
                for (int r = 0; r < rows.size(); r++) {
                  var row = sheet.createRow(r);
                  for (int c = 0; c < rows.get(r).size(); c++) {
                    row.createCell(c).setCellValue(rows.get(r).get(c).replace("_x", "_x005F_x"));
                    if (form.equals("xls")) {
                      row.getCell(c).setCellValue(rows.get(r).get(c));
                    }
                  }
                }
              });
          book.write(out);
        }
      }
    }
  }

  private static void ods(Map<String, List<List<String>>> sheets, Path to) throws IOException {
    SpreadSheet book = new SpreadSheet();
    sheets.forEach(
        (name, rows) -> {
          int columns = rows.stream().mapToInt(List::size).max().orElse(1);
          var sheet = new com.github.miachm.sods.Sheet(name, Math.max(1, rows.size()), columns);
          for (int r = 0; r < rows.size(); r++) {
            for (int c = 0; c < rows.get(r).size(); c++) {
              if (!rows.get(r).get(c).isEmpty()) {
                sheet.getRange(r, c).setValue(rows.get(r).get(c));
              }
            }
          }
          book.appendSheet(sheet);
        });
    book.save(to.toFile());
  }

  private static String quoted(String text) {
    return "\"" + text.replace("\"", "\"\"") + "\"";
  }
}
