package dev.ringout.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeFalse;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.github.miachm.sods.Sheet;
import com.github.miachm.sods.SpreadSheet;
import dev.ringout.support.Run;
import java.io.IOException;
import java.io.OutputStream;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Duration;
import java.util.Collections;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import org.apache.poi.hssf.record.crypto.Biff8EncryptionKey;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.apache.poi.poifs.crypt.EncryptionInfo;
import org.apache.poi.poifs.crypt.EncryptionMode;
import org.apache.poi.poifs.crypt.Encryptor;
import org.apache.poi.poifs.filesystem.POIFSFileSystem;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Files that are not what they seem: a clear message, the right exit code, nothing written. */
class BadInputTest {
  @TempDir Path folder;
  private Path readings = Path.of("");

  @BeforeEach
  void writeGoodReadings() throws IOException {
    readings =
        Files.writeString(folder.resolve("readings.csv"), "From,To,Reading\nJ1-A,P2-1,0.2\n");
  }

  private void assertRefused(Path harness, int code, String message) throws IOException {
    Path output = folder.resolve("result.txt");
    Run run = Run.of("check", harness, readings, "-o", output);
    assertEquals(code, run.code(), run.err());
    assertTrue(run.err().contains(message), run.err());
    assertFalse(run.err().contains("\tat "), "no stack trace: " + run.err());
    assertEquals("", run.out());
    assertFalse(Files.exists(output), "nothing written");
    try (Stream<Path> left = Files.list(folder)) {
      assertTrue(left.noneMatch(path -> path.toString().endsWith(".part")), "nothing left over");
    }
  }

  private Path file(String name, String text) throws IOException {
    return Files.writeString(folder.resolve(name), text);
  }

  private Path workbook(String name, String... sheets) throws IOException {
    Path file = folder.resolve(name);
    try (Workbook workbook = new XSSFWorkbook();
        OutputStream out = Files.newOutputStream(file)) {
      for (String sheet : sheets) {
        workbook.createSheet(sheet);
      }
      workbook.write(out);
    }
    return file;
  }

  @Test
  void a_text_file_called_xlsx() throws IOException {
    assertRefused(
        file("list.xlsx", "From,To\nJ1-A,P2-1\n"),
        65,
        "list.xlsx: is called a workbook, but its content is not one");
  }

  @Test
  void an_empty_file_called_xlsx() throws IOException {
    assertRefused(file("list.xlsx", ""), 65, "is an empty file, not a workbook");
  }

  @Test
  void an_empty_workbook() throws IOException {
    assertRefused(workbook("list.xlsx"), 65, "there is no sheet Wires; the file holds no sheet");
  }

  @Test
  void a_workbook_without_wires() throws IOException {
    assertRefused(
        workbook("list.xlsx", "Parts list", "Notes"),
        65,
        "there is no sheet Wires; found: Parts list, Notes");
  }

  @Test
  void a_sheet_of_wires_that_is_empty() throws IOException {
    assertRefused(workbook("list.xlsx", "Wires"), 65, "list.xlsx!Wires: the sheet is empty");
  }

  @Test
  void headings_without_wires() throws IOException {
    assertRefused(file("list.csv", "From,To\n"), 65, "the sheet lists no wires");
  }

  @Test
  void a_workbook_protected_by_a_password() throws Exception {
    Path plain = workbook("plain.xlsx", "Wires");
    Path locked = folder.resolve("locked.xlsx");
    try (POIFSFileSystem container = new POIFSFileSystem()) {
      Encryptor encryptor = new EncryptionInfo(EncryptionMode.agile).getEncryptor();
      encryptor.confirmPassword("secret");
      try (OutputStream out = encryptor.getDataStream(container)) {
        Files.copy(plain, out);
      }
      try (OutputStream out = Files.newOutputStream(locked)) {
        container.writeFilesystem(out);
      }
    }
    assertRefused(locked, 65, "is protected by a password");
  }

  @Test
  void an_older_workbook_protected_by_a_password() throws Exception {
    Path locked = folder.resolve("locked.xls");
    Biff8EncryptionKey.setCurrentUserPassword("secret");
    try (HSSFWorkbook workbook = new HSSFWorkbook();
        OutputStream out = Files.newOutputStream(locked)) {
      workbook.createSheet("Wires").createRow(0).createCell(0).setCellValue("From");
      workbook.write(out);
    } finally {
      Biff8EncryptionKey.setCurrentUserPassword(null);
    }
    assertRefused(locked, 65, "is protected by a password");
  }

  @Test
  void a_zip_bomb() throws IOException {
    Path bomb = folder.resolve("bomb.xlsx");
    Path plain = workbook("plain.xlsx", "Wires");
    byte[] blanks = " ".repeat(1 << 20).getBytes(StandardCharsets.UTF_8);
    try (ZipInputStream in = new ZipInputStream(Files.newInputStream(plain));
        ZipOutputStream out = new ZipOutputStream(Files.newOutputStream(bomb))) {
      for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
        byte[] content = in.readAllBytes();
        out.putNextEntry(new ZipEntry(entry.getName()));
        if (entry.getName().equals("xl/worksheets/sheet1.xml")) {
          String xml = new String(content, StandardCharsets.UTF_8);
          int end = xml.indexOf("<sheetData");
          out.write(xml.substring(0, end).getBytes(StandardCharsets.UTF_8));
          for (int megabyte = 0; megabyte < 200; megabyte++) {
            out.write(blanks);
          }
          out.write(xml.substring(end).getBytes(StandardCharsets.UTF_8));
        } else {
          out.write(content);
        }
      }
    }
    assertRefused(bomb, 65, "unpacks to far more than a wire list would");
  }

  @Test
  void a_truncated_workbook() throws IOException {
    byte[] whole = Files.readAllBytes(workbook("whole.xlsx", "Wires"));
    Path half = folder.resolve("half.xlsx");
    Files.write(half, java.util.Arrays.copyOf(whole, whole.length / 2));
    assertRefused(half, 65, "half.xlsx: is a damaged workbook");
  }

  /** Found by damaging workbooks at random: a sheet that is named and not there. */
  @Test
  void a_workbook_that_lacks_one_of_its_sheets() throws IOException {
    Path whole = workbook("whole.xlsx", "Wires");
    Path list = folder.resolve("list.xlsx");
    try (ZipFile from = new ZipFile(whole.toFile());
        ZipOutputStream to = new ZipOutputStream(Files.newOutputStream(list))) {
      for (ZipEntry entry : Collections.list(from.entries())) {
        if (!entry.getName().equals("xl/worksheets/sheet1.xml")) {
          to.putNextEntry(new ZipEntry(entry.getName()));
          from.getInputStream(entry).transferTo(to);
          to.closeEntry();
        }
      }
    }
    assertRefused(list, 65, "list.xlsx: is a damaged workbook");
  }

  /** What steers a terminal, or turns the direction of reading, is named and never echoed. */
  @Test
  void a_name_with_a_terminal_escape() throws IOException {
    Path list = Files.createDirectories(folder.resolve("unit"));
    Files.writeString(
        list.resolve("wires.csv"),
        "Wire,From,To\n\"W\u001b[31m1\",J1-A,P2-1\nW\u202e2,J1-B,P2-2\n");
    Run run = Run.of("check", list, readings);
    assertEquals(65, run.code(), run.err());
    assertTrue(run.err().contains("A2 (Wire): \"W\ufffd[31m1\" holds a character"), run.err());
    assertTrue(run.err().contains("A3 (Wire)"), run.err());
    assertFalse(run.err().contains("\u001b"), run.err());
    assertFalse(run.err().contains("\u202e"), run.err());
  }

  /** Nor are words of the command line, names of files, and names of sheets of any kind of file. */
  @Test
  void words_files_and_sheets_with_a_terminal_escape() throws IOException {
    Path list = Files.createDirectories(folder.resolve("unit"));
    Files.writeString(list.resolve("wires.csv"), "Wire,From,To\nW1,J1-A,P2-1\n");
    Files.writeString(list.resolve("od\u001b[31md.csv"), "A\n");
    Path out = folder.resolve("ou\u001b[31mt.html");
    Files.writeString(out, "");
    Path ods = folder.resolve("list.ods");
    SpreadSheet book = new SpreadSheet();
    book.appendSheet(new Sheet("Wi\u202eres", 2, 3));
    book.save(ods.toFile());
    for (Run run :
        List.of(
            Run.of("plan", list),
            Run.of("plan", list, "-o", out),
            Run.of("plan", "no\u001b[31mne.xlsx"),
            Run.of("trace", list, "J\u001b[31m1"),
            Run.of("plan", list, "--no\u001b[31mne"),
            Run.of("check", list, list, "--json"),
            Run.of("review", ods),
            Run.of("found", list, "W\u001b[31m1 on J9"))) {
      assertFalse(run.err().contains("\u001b") || run.err().contains("\u202e"), run.err());
      assertFalse(run.out().contains("\u001b") || run.out().contains("\u202e"), run.out());
    }
  }

  @Test
  void a_name_in_two_lines_is_read_as_one() throws IOException {
    Path list = file("list.csv", "Wire,From,To\n\"W\n1\",J1-A,P2-1\n");
    assertTrue(Run.of("trace", list, "J1-A").out().contains("W 1"));
  }

  @Test
  void a_device_that_never_ends() throws IOException {
    Path zero = Path.of("/dev/zero");
    assumeTrue(Files.exists(zero), "a system without such a device");
    assertRefused(zero, 66, "zero: is a device or a pipe, not a file");
    Files.createSymbolicLink(folder.resolve("list.csv"), zero);
    assertRefused(folder.resolve("list.csv"), 66, "list.csv: is a device or a pipe");
    Path inFolder = Files.createDirectories(folder.resolve("unit"));
    Files.createSymbolicLink(inFolder.resolve("wires.csv"), zero);
    assertRefused(inFolder, 66, "unit/wires.csv: is not a file that can be read");
  }

  /** Found by trying it: a plan stood in place of the wire list that it was made from. */
  @Test
  void no_result_is_written_over_what_it_was_made_from() throws IOException {
    Path list = file("list.csv", "Wire,From,To\nW1,J1-A,P2-1\n");
    Path link = Files.createSymbolicLink(folder.resolve("link.csv"), list);
    String before = Files.readString(list);
    for (Object[] command :
        new Object[][] {
          {"plan", list, "-o", list, "--force"},
          {"work", list, "-o", link, "--force"},
          {"work", list, "-o", folder.resolve("x/../list.csv"), "--force"},
          {"check", list, readings, "-o", readings, "--force"},
          {"diff", list, list, "-o", list, "--force"},
          {"report", list, readings, "-o", list, "--force"},
          {"asfound", readings, "-o", readings, "--force"},
          {"import", list, "-o", list, "--force"}
        }) {
      Run run = Run.of(command);
      assertTrue(run.code() == 64 || run.code() == 73, run.code() + " " + run.err());
      assertEquals(before, Files.readString(list), String.valueOf(command[0]));
    }
    assertTrue(
        Run.of("plan", list, "-o", list, "--force").err().contains("is what this command reads"));
  }

  /** Found by damaging workbooks at random. */
  @Test
  void a_workbook_with_a_sheet_that_has_no_name() throws IOException {
    Path list =
        sampleWith(
            "list.xlsx",
            "xl/workbook.xml",
            book -> book.replaceFirst("<sheet name=\"Wires\"", "<sheet other=\"Wires\""));
    assertRefused(list, 65, "list.xlsx: there is no sheet Wires");
  }

  private Path sampleWith(String name, UnaryOperator<String> wires) throws IOException {
    return sampleWith(name, "xl/worksheets/sheet2.xml", wires);
  }

  private Path sampleWith(String name, String changed, UnaryOperator<String> change)
      throws IOException {
    Path to = folder.resolve(name);
    Path sample = Path.of("harness-samples/swing-bridge/junction-box.xlsx");
    try (ZipFile from = new ZipFile(sample.toFile());
        ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(to))) {
      for (ZipEntry entry : Collections.list(from.entries())) {
        byte[] part = from.getInputStream(entry).readAllBytes();
        zip.putNextEntry(new ZipEntry(entry.getName()));
        zip.write(
            entry.getName().equals(changed)
                ? change
                    .apply(new String(part, StandardCharsets.UTF_8))
                    .getBytes(StandardCharsets.UTF_8)
                : part);
        zip.closeEntry();
      }
    }
    return to;
  }

  private static String withRow(String sheet, String row) {
    return sheet.replace("</sheetData>", row + "</sheetData>");
  }

  private static String cell(String address, String text) {
    return "<c r=\"" + address + "\" t=\"inlineStr\"><is><t>" + text + "</t></is></c>";
  }

  @Test
  void a_workbook_with_entities_that_multiply_or_reach_out() throws IOException {
    String prolog = "<?xml version=\"1.0\"?><!DOCTYPE w [%s]>";
    String reaching = prolog.replace("%s", "<!ENTITY x SYSTEM \"file:///etc/hostname\">");
    StringBuilder many = new StringBuilder("<!ENTITY a0 \"x\">");
    for (int i = 1; i < 12; i++) {
      many.append("<!ENTITY a" + i + " \"" + ("&a" + (i - 1) + ";").repeat(10) + "\">");
    }
    String multiplying = prolog.replace("%s", many);
    String row = "<row r=\"999\">" + cell("A999", "&x;&a11;") + "</row>";
    for (String head : new String[] {reaching, multiplying}) {
      Path list =
          sampleWith(
              "list.xlsx",
              sheet -> head + withRow(sheet, row).replaceFirst("<\\?xml[^>]*\\?>", ""));
      assertRefused(list, 65, "list.xlsx: is a damaged workbook");
    }
  }

  /** Once a minute's work: every entry of twenty thousand hid every column anew. */
  @Test
  void a_workbook_that_hides_every_column_again_and_again() throws IOException {
    StringBuilder columns = new StringBuilder();
    for (int i = 0; i < 20_000; i++) {
      columns.append("<col min=\"0\" max=\"" + (16_384 + i) + "\" hidden=\"1\"/>");
    }
    Path list =
        sampleWith(
            "list.xlsx",
            sheet ->
                sheet
                    .replaceFirst("<cols>.*</cols>", "")
                    .replaceFirst("<sheetData", "<cols>" + columns + "</cols><sheetData"));
    assertTimeoutPreemptively(
        Duration.ofSeconds(20), () -> assertEquals(0, Run.of("trace", list, "J1-A").code()));
  }

  /** What is found in the place of headings or sheets is named, but not thousands of it. */
  @Test
  void a_row_of_ten_thousand_headings_and_a_folder_of_a_hundred_tables() throws IOException {
    Path list = file("list.csv", "x,".repeat(10_000) + "x\nW1,J1-A,P2-1\n");
    Run run = Run.of("review", list);
    assertEquals(65, run.code());
    assertTrue(run.err().contains("x, x, x and 9961 more"), run.err());
    Path tables = Files.createDirectories(folder.resolve("tables"));
    for (int i = 0; i < 100; i++) {
      Files.writeString(tables.resolve("t" + i + ".csv"), "A\n");
    }
    assertTrue(Run.of("review", tables).err().contains(" and 60 more"));
  }

  @Test
  void a_file_that_would_fill_the_memory() throws IOException {
    Path large = folder.resolve("large.csv");
    try (RandomAccessFile file = new RandomAccessFile(large.toFile(), "rw")) {
      file.setLength(300L * 1024 * 1024);
    }
    assertRefused(large, 66, "it is larger than any list");
  }

  @Test
  void a_workbook_with_rows_and_columns_beyond_every_sheet() throws IOException {
    Path rows =
        sampleWith(
            "list.xlsx",
            sheet ->
                withRow(sheet, "<row r=\"2147483647\">" + cell("A2147483647", "W") + "</row>"));
    assertRefused(rows, 65, "list.xlsx!Wires!");
    Path below =
        sampleWith(
            "list.xlsx", sheet -> withRow(sheet, "<row r=\"-1\">" + cell("A1", "W") + "</row>"));
    assertRefused(below, 65, "a row is numbered \"-1\"");
    Path columns =
        sampleWith(
            "list.xlsx",
            sheet -> withRow(sheet, "<row r=\"999\">" + cell("ZZZZZ999", "W") + "</row>"));
    assertRefused(columns, 65, "a cell is addressed \"ZZZZZ999\"");
  }

  /** Found by damaging sheets at random: Java takes these for numbers, nobody else does. */
  @Test
  void a_face_position_that_only_a_program_would_read() throws IOException {
    Path unit = Files.createDirectories(folder.resolve("unit"));
    Files.writeString(unit.resolve("wires.csv"), "Wire,From,To\nW1,J1-A,P2-1\n");
    Files.writeString(
        unit.resolve("pins.csv"), "Ref,Pin,X (mm),Y (mm)\nJ1,A,NaN,12d\nJ1,B,0x1p3,1e999\n");
    Run run = Run.of("work", unit);
    assertEquals(65, run.code());
    for (String text : new String[] {"NaN", "12d", "0x1p3", "1e999"}) {
      assertTrue(run.err().contains("\"" + text + "\" is not a number"), run.err());
    }
  }

  /** The same: a note longer than a cell of a workbook may be. */
  @Test
  void a_text_that_no_cell_can_hold() throws IOException {
    Path list = file("list.csv", "Wire,From,To,Signal\nW1,J1-A,P2-1," + "x".repeat(40_000) + "\n");
    Path papers = folder.resolve("papers.xlsx");
    Run run = Run.of("work", list, "-o", papers);
    assertEquals(0, run.code(), run.err());
    assertTrue(Files.size(papers) > 0);
  }

  @Test
  void a_missing_file() throws IOException {
    assertRefused(folder.resolve("nowhere.xlsx"), 66, "nowhere.xlsx: there is no such file");
  }

  @Test
  void a_missing_file_is_told_with_its_folder_and_what_lies_there_under_a_like_name()
      throws IOException {
    file("swing-bridge.csv", "From,To");
    Run run = Run.of("check", folder.resolve("swing-brigde.xlsx"), readings);
    assertTrue(
        run.err().contains("there is no such file in " + folder + "; maybe swing-bridge.csv"),
        run.err());
    Run nowhere = Run.of("check", folder.resolve("units/box.xlsx"), readings);
    assertTrue(nowhere.err().contains("no folder " + folder.resolve("units")), nowhere.err());
  }

  @Test
  void a_list_and_readings_in_the_wrong_order_are_told_apart() throws IOException {
    Path list = file("list.csv", "Wire,From,To\nW1,J1-A,P2-1\n");
    Run swapped = Run.of("check", readings, list);
    assertEquals(65, swapped.code());
    assertTrue(swapped.err().contains("readings.csv!1: this looks like readings"), swapped.err());
    assertTrue(swapped.err().contains("list.csv!1: this looks like a harness file"), swapped.err());
    assertEquals(65, Run.of("check", readings, readings).code(), "they would prove themselves");
    Path box = Path.of("harness-samples/swing-bridge/junction-box.xlsx");
    Path sheet = Path.of("harness-samples/swing-bridge/point-to-point.xlsx");
    Run books = Run.of("check", sheet, box);
    assertTrue(books.err().contains("point-to-point.xlsx: there is no sheet Wires"), books.err());
    assertTrue(books.err().contains("Job; this looks like readings"), books.err());
    assertEquals(2, books.err().lines().filter(line -> line.startsWith("error")).count());
    assertFalse(books.err().contains("is not read"), books.err());
  }

  @Test
  void help_is_a_command_too() {
    assertEquals(Run.of("check", "--help").out(), Run.of("help", "check").out());
    assertEquals(Run.of("--help").out(), Run.of("help").out());
    assertEquals(64, Run.of("help", "chek").code());
  }

  @Test
  void every_missing_file_is_named() {
    Run run = Run.of("check", folder.resolve("a.xlsx"), folder.resolve("b.xlsx"));
    assertEquals(66, run.code());
    assertTrue(run.err().contains("a.xlsx: there is no such file"), run.err());
    assertTrue(run.err().contains("b.xlsx: there is no such file"), run.err());
  }

  @Test
  void a_folder_without_permission() throws IOException {
    Path closed = Files.createDirectory(folder.resolve("closed"));
    Files.setPosixFilePermissions(closed, PosixFilePermissions.fromString("---------"));
    assumeFalse(Files.isReadable(closed), "the user who runs the tests may read anything");
    assertRefused(closed, 66, "closed: may not be read: permission denied");
  }

  @Test
  void a_folder_without_tables() throws IOException {
    assertRefused(
        Files.createDirectory(folder.resolve("empty")), 65, "is a folder that holds no .csv file");
  }

  @Test
  void a_load_at_a_point_that_the_harness_does_not_have() throws IOException {
    Path unit = Files.createDirectory(folder.resolve("loads"));
    Files.writeString(unit.resolve("wires.csv"), "Wire,From,To\nW1,J1-12,TB1-1\n");
    Files.writeString(unit.resolve("loads.csv"), "From,To,Amps\nJ1-21,TB1-1,5\n");
    Run run = Run.of("review", unit);
    assertEquals(65, run.code());
    assertTrue(run.err().contains("the harness has no point J1-21; maybe J1-12"), run.err());
  }

  @Test
  void a_picture() throws IOException {
    assertRefused(file("list.png", "\u0089PNG\r\n\u001a\n"), 65, "is not a table that can be read");
  }

  @Test
  void a_wire_to_itself() throws IOException {
    assertRefused(
        file("list.csv", "From,To\nJ1-A,J1-A\n"),
        65,
        "error: list.csv!B2 (To): the wire goes from J1-A to itself");
  }

  @Test
  void a_gauge_with_a_letter_in_it() throws IOException {
    assertRefused(
        file("list.csv", "From,To,Gauge\nJ1-A,P2-1,2O\n"),
        65,
        "error: list.csv!C2 (Gauge): \"2O\" is not a gauge;");
  }

  @Test
  void problems_of_all_files_are_collected() throws IOException {
    readings = file("readings2.csv", "From,To,Reading\nJ1-A,P2-1,three\nJ1-A,J1-A,0.2\n");
    Path harness = file("list.csv", "From,To,Gauge\nJ1-A,P2-1,2O\n");
    assertRefused(harness, 65, "list.csv!C2");
    assertRefused(harness, 65, "readings2.csv!C2");
    assertRefused(harness, 65, "ringout: 3 errors in the files; nothing was done.");
  }

  @Test
  void a_reading_at_a_point_that_the_harness_lacks() throws IOException {
    readings = file("readings.csv", "From,To,Reading\nJ1-a,P2-1,0.2\n");
    Run run = Run.of("check", file("list.csv", "From,To\nJ1-A,P2-1\n"), readings);
    assertEquals(65, run.code(), run.err());
    String message =
        "the harness has no point J1-a; a spare cavity is listed on the sheet Pins; maybe J1-A";
    assertTrue(run.err().contains(message), run.err());
    assertTrue(run.out().startsWith("NOT COMPLETE"), "no verdict, and the rest: " + run.out());
  }
}
