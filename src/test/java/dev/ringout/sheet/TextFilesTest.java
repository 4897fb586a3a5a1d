package dev.ringout.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.source.Problems;
import dev.ringout.source.UnusableInput;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Text files with any separator and coding, and what is written so that it reads back. */
class TextFilesTest {
  @TempDir Path folder;

  private Book csv(String text) throws IOException, UnusableInput {
    return Book.read(Files.writeString(folder.resolve("list.csv"), text));
  }

  @ParameterizedTest
  @ValueSource(strings = {",", ";", "\t"})
  void the_separator_is_found_in_the_text(String separator) throws Exception {
    Book book = csv("Wire,From,To\nW1,J1-A,P2-1\nW2,J1-B,P2-2\n".replace(",", separator));
    assertEquals(List.of("W2", "J1-B", "P2-2"), book.texts(3));
    assertEquals("list", book.sheet(), "the file's name without its ending");
  }

  @Test
  void commas_within_numbers_do_not_part_cells_that_semicolons_part() throws Exception {
    Book book = csv("Wire;Gauge;Length\nW1;0,75;1,5\nW2;0,5;2,5\n");
    assertEquals(List.of("W1", "0,75", "1,5"), book.texts(2));
  }

  @Test
  void a_quoted_cell_holds_separators_quotes_and_lines() throws Exception {
    Book book = csv("Wire,Note\nW1,\"red, \"\"spare\"\"\nsee sheet 2\"\nW2,x\n");
    assertEquals("red, \"spare\"\nsee sheet 2", book.cell(2, 2).text());
  }

  @Test
  void a_cell_of_several_lines_is_one_in_a_text_parted_by_tabs_too() throws Exception {
    Book book =
        csv("Wire\tNote\tTo\nW1\t\"see\nsheet \"\"2\"\"\"\tJ1\nW2\tx\tJ2\nW3\t12\" pipe\tJ3\n");
    assertEquals("see\nsheet \"2\"", book.cell(2, 2).text());
    assertEquals(List.of("W2", "x", "J2"), book.texts(3));
    assertEquals("12\" pipe", book.cell(4, 2).text());
  }

  /** People write it for "as above". */
  @ParameterizedTest
  @ValueSource(strings = {"W2\t\"\tJ2", "W2\t\"\t\"", "\"\tRED\tJ2"})
  void a_quote_that_stands_alone_between_tabs_opens_nothing(String line) throws Exception {
    Book book = csv("Wire\tNote\tTo\nW1\tx\tJ1\n" + line + "\nW3\tx\tJ3\n");
    assertEquals(List.of(line.split("\t", -1)), book.texts(3));
    assertEquals(List.of("W3", "x", "J3"), book.texts(4));
  }

  @Test
  void a_quote_that_would_swallow_rows_opens_nothing() throws Exception {
    Book book = csv("Wire\tNote\tTo\nW1\t\"x\tJ1\nW2\tx\tJ2\nW3\tx\"\tJ3\n");
    assertEquals(List.of("W2", "x", "J2"), book.texts(3));
  }

  /** People write it for "as above" in a text with commas as well. */
  @ParameterizedTest
  @ValueSource(strings = {"\"", "\"\"\""})
  void a_quote_alone_that_would_swallow_lines_is_refused_with_its_cell(String mark)
      throws Exception {
    String text = "Wire,To,Colour\nW1,J1,red\nW2,J2," + mark + "\nW3,J3,blue\nW4,J4," + mark + "\n";
    assertEquals("list.csv!C3", refused(text, "UTF-8").place().toString());
  }

  private UnusableInput refused(String text, String coding) throws IOException {
    Path file = folder.resolve("list.csv");
    Files.write(file, text.getBytes(Charset.forName(coding)));
    return assertThrows(UnusableInput.class, () -> Book.read(file));
  }

  @ParameterizedTest
  @CsvSource({"IBM850, CP850 (DOS)", "IBM437, CP437 (DOS)"})
  void a_text_of_the_time_before_is_refused_with_its_place_and_likely_coding(
      String coding, String name) throws Exception {
    String letters = coding.equals("IBM437") ? "Ω ± ² ü" : "Größe Ø µ ³ ü";
    UnusableInput refused = refused("Wire;Signal\nW1;a\nW2;" + letters + "\n", coding);
    assertEquals(UnusableInput.Reason.NOT_UNDERSTOOD, refused.reason());
    assertEquals("list.csv!B3", refused.place().toString());
    assertTrue(refused.text().matches("the byte (81|9d) is no letter of UTF-8.*"), refused.text());
    assertTrue(refused.text().contains("most likely in " + name), refused.text());
  }

  @Test
  void what_can_be_read_but_looks_like_another_coding_is_said() throws Exception {
    Path file = folder.resolve("list.csv");
    Files.write(file, "Wire,Länge mm²\nW1,5\n".getBytes(Charset.forName("IBM850")));
    String warning = Book.read(file).problems().list().get(0).text();
    assertTrue(warning.endsWith("(it may be CP850 (DOS): see B1)"), warning);
  }

  @Test
  void a_damaged_letter_makes_no_other_coding_of_a_whole_file() throws Exception {
    Path file = folder.resolve("list.csv");
    byte[] bytes = "Wire,Länge Größe\nW1,5 Ω\nW2,ä\n".getBytes(Charset.forName("UTF-8"));
    bytes[bytes.length - 2] = 'x';
    Files.write(file, bytes);
    UnusableInput refused = assertThrows(UnusableInput.class, () -> Book.read(file));
    assertEquals("list.csv!B3", refused.place().toString());
    assertTrue(refused.text().startsWith("is UTF-8 elsewhere"), refused.text());
  }

  @ParameterizedTest
  @CsvSource({
    "UTF-8, ''",
    "UTF-8, \uFEFF",
    "UTF-16LE, \uFEFF",
    "UTF-16BE, \uFEFF",
    "windows-1252, ''"
  })
  void the_coding_is_found_and_its_mark_is_no_part_of_the_first_cell(String coding, String mark)
      throws Exception {
    Path file = folder.resolve("list.csv");
    Files.write(file, (mark + "Länge,mm²\n1,2\n").getBytes(Charset.forName(coding)));
    assertEquals(List.of("Länge", "mm²"), Book.read(file).texts(1));
  }

  @Test
  void every_cell_of_a_text_file_is_text() throws Exception {
    Book book = csv("Pin,Zero\n1-2,007\n");
    assertEquals(new Cell(Cell.Stored.TEXT, "1-2"), book.cell(2, 1), "no date");
    assertEquals(new Cell(Cell.Stored.TEXT, "007"), book.cell(2, 2));
  }

  @Test
  void a_folder_is_a_sheet_for_each_file_by_name() throws Exception {
    Files.writeString(folder.resolve("Wires.csv"), "Wire\nW1\n");
    Files.writeString(folder.resolve("Items.csv"), "Item\nJ1\n");
    try (TabularFile file = TabularFile.open(folder, "box", new Problems())) {
      assertEquals(List.of("Items", "Wires"), file.sheets().stream().map(Sheet::name).toList());
    }
  }

  @ParameterizedTest
  @CsvSource({"empty.xlsx, empty file", "text.xlsx, not one", "nowhere.csv, no such file"})
  void what_is_no_table_is_refused_with_the_reason(String name, String reason) throws Exception {
    Path file = folder.resolve(name);
    if (name.startsWith("text")) {
      Files.writeString(file, "Wire,From,To\n");
    } else if (name.startsWith("empty")) {
      Files.writeString(file, "");
    }
    UnusableInput refused = assertThrows(UnusableInput.class, () -> Book.read(file));
    assertTrue(refused.text().contains(reason), refused.text());
  }

  private static final OutSheet WIRES =
      new OutSheet(
          "Wires",
          List.of("Wire", "From", "Note"),
          List.of(
              List.of("W1", "J1-A", "007"),
              List.of("1-2", "", "two\nlines"),
              List.of("W3", "J1-C", "a, \"b\"; c")));

  @ParameterizedTest
  @ValueSource(strings = {"harness.xlsx", "harness.csv"})
  void what_is_written_reads_back_as_it_was(String name) throws Exception {
    Path file = folder.resolve(name);
    if (name.endsWith(".csv")) {
      OutFile.csv(file, WIRES);
    } else {
      OutFile.workbook(file, List.of(WIRES));
    }
    Book book = Book.read(file);
    assertEquals(WIRES.headings(), book.texts(1));
    for (int row = 0; row < WIRES.rows().size(); row++) {
      for (int column = 0; column < 3; column++) {
        assertEquals(
            WIRES.rows().get(row).get(column),
            book.cell(row + 2, column + 1).text().replace("\r\n", "\n"));
      }
    }
    assertEquals(Cell.Stored.TEXT, book.cell(3, 1).kind(), "no spreadsheet makes a date of a pin");
  }

  /** Common practice, no source: a cell that begins so is taken for a formula when it is opened. */
  @ParameterizedTest
  @ValueSource(strings = {"=1+1", "+24V", "-12V", "@home"})
  void a_text_that_would_start_a_formula_is_written_as_text(String text) throws Exception {
    OutSheet sheet = new OutSheet("Notes", List.of("Note"), List.of(List.of(text)));
    Path csv = folder.resolve("notes.csv");
    OutFile.csv(csv, sheet);
    String line = Files.readAllLines(csv).get(1);
    assertTrue(line.replaceFirst("^\"", "").startsWith("'"), line);
    assertEquals(text, OutFile.asWritten(OutFile.harmless(text)), "and read as it was meant");

    Path workbook = folder.resolve("notes.xlsx");
    OutFile.workbook(workbook, List.of(sheet));
    assertEquals(new Cell(Cell.Stored.TEXT, text), Book.read(workbook).cell(2, 1));
  }

  @Test
  void the_same_sheets_make_the_same_file_whenever_they_are_written() throws Exception {
    OutFile.workbook(folder.resolve("one.xlsx"), List.of(WIRES));
    OutFile.workbook(folder.resolve("two.xlsx"), List.of(WIRES));
    assertEquals(-1, Files.mismatch(folder.resolve("one.xlsx"), folder.resolve("two.xlsx")));
  }
}
