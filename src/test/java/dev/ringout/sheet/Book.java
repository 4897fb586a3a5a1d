package dev.ringout.sheet;

import dev.ringout.source.Problems;
import dev.ringout.source.UnusableInput;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** A file as it is read: its rows, what stands around them, and what is odd about it. */
record Book(String sheet, List<Row> rows, Surroundings around, Problems problems) {

  /** What a spreadsheet would have been told to do. */
  interface Content {
    void in(Workbook workbook);
  }

  /** The first sheet of a file. */
  static Book read(Path file) throws IOException, UnusableInput {
    Problems problems = new Problems();
    try (TabularFile table = TabularFile.open(file, file.getFileName().toString(), problems)) {
      List<Row> rows = new ArrayList<>();
      Sheet sheet = table.sheets().get(0);
      Surroundings around = sheet.forEachRow(rows::add);
      return new Book(sheet.name(), List.copyOf(rows), around, problems);
    }
  }

  /** A workbook in the format of its name, written and read back. */
  static Book of(Path file, Content content) throws IOException, UnusableInput {
    try (Workbook workbook =
            file.toString().endsWith(".xls") ? new HSSFWorkbook() : new XSSFWorkbook();
        OutputStream out = Files.newOutputStream(file)) {
      content.in(workbook);
      workbook.write(out);
    }
    return read(file);
  }

  /** A cell by its row and column, counted from 1. */
  Cell cell(int row, int column) {
    return rows.stream()
        .filter(one -> one.number() == row)
        .findFirst()
        .map(one -> one.cell(column))
        .orElse(Cell.EMPTY);
  }

  /** The texts of a row. */
  List<String> texts(int row) {
    return rows.stream()
        .filter(one -> one.number() == row)
        .flatMap(one -> one.cells().stream())
        .map(Cell::text)
        .toList();
  }
}
