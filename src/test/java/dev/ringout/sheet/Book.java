package dev.ringout.sheet;

import dev.ringout.source.Problems;
import dev.ringout.source.UnusableInput;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.apache.poi.openxml4j.exceptions.InvalidFormatException;
import org.apache.poi.openxml4j.opc.PackagingURIHelper;
import org.apache.poi.openxml4j.opc.TargetMode;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.xssf.usermodel.XSSFRelation;
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

  /** A workbook of the newer format with a theme of its own, written and read back. */
  static Book of(Path file, Content content, String theme) throws IOException, UnusableInput {
    try (XSSFWorkbook workbook = new XSSFWorkbook();
        OutputStream out = Files.newOutputStream(file)) {
      content.in(workbook);
      var part =
          workbook
              .getPackage()
              .createPart(
                  PackagingURIHelper.createPartName("/xl/theme/theme1.xml"),
                  XSSFRelation.THEME.getContentType());
      try (OutputStream into = part.getOutputStream()) {
        into.write(theme.getBytes(StandardCharsets.UTF_8));
      }
      workbook
          .getPackagePart()
          .addRelationship(
              part.getPartName(), TargetMode.INTERNAL, XSSFRelation.THEME.getRelation());
      workbook.write(out);
    } catch (InvalidFormatException e) {
      throw new IOException(e);
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
