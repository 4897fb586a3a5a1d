package dev.ringout.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.support.Run;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import java.util.zip.ZipFile;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/**
 * The test sheet as the hands hold it: read from the written file with another library, or as bare
 * XML, than it was written with.
 */
class TestSheetOnPaperTest {
  private static final Path BRIDGE = Path.of("harness-samples/swing-bridge/junction-box.xlsx");

  /** For a glove (common practice, no source). */
  private static final double BOX_MM = 12;

  private static final double POINTS_OF_A_MM = 72 / 25.4;

  @TempDir static Path folder;

  private static Path written(String name, Object... more) {
    Path file = folder.resolve(name);
    if (!Files.exists(file)) {
      List<Object> words =
          new ArrayList<>(List.of("plan", BRIDGE, "-o", file + (name.contains(".") ? "" : "/")));
      words.addAll(List.of(more));
      Run run = Run.of(words.toArray());
      assertEquals(0, run.code(), run.err());
    }
    return file;
  }

  private static List<String> pages() throws IOException {
    List<String> pages = new ArrayList<>();
    try (PDDocument document = Loader.loadPDF(written("sheet.pdf", "--serial", "0418").toFile())) {
      PDFTextStripper text = new PDFTextStripper();
      for (int page = 1; page <= document.getNumberOfPages(); page++) {
        text.setStartPage(page);
        text.setEndPage(page);
        pages.add(text.getText(document).replaceAll("\\s+", " "));
      }
    }
    return pages;
  }

  private static Document part(Path workbook, String part) throws Exception {
    try (ZipFile zip = new ZipFile(workbook.toFile());
        InputStream in = zip.getInputStream(zip.getEntry(part))) {
      return DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(in);
    }
  }

  private static List<Element> elements(Document document, String name) {
    NodeList nodes = document.getElementsByTagName(name);
    List<Element> elements = new ArrayList<>();
    for (int i = 0; i < nodes.getLength(); i++) {
      elements.add((Element) nodes.item(i));
    }
    return elements;
  }

  /** The part of a sheet, by its place in the workbook. */
  private static Document sheet(String name) throws Exception {
    Path file = written("sheet.xlsx", "--serial", "0418");
    int place = 0;
    for (Element sheet : elements(part(file, "xl/workbook.xml"), "sheet")) {
      place++;
      if (sheet.getAttribute("name").equals(name)) {
        return part(file, "xl/worksheets/sheet" + place + ".xml");
      }
    }
    throw new AssertionError("no sheet " + name);
  }

  private static List<String> lines(String sheet) throws IOException {
    return Files.readAllLines(written("sheets").resolve(sheet + ".csv"), StandardCharsets.UTF_8);
  }

  @Test
  void every_page_with_volts_says_so() throws IOException {
    List<String> pages = pages().stream().filter(page -> page.contains("Seconds Reading")).toList();
    assertTrue(pages.size() > 1, "several pages");
    for (String page : pages) {
      assertTrue(page.contains("DANGER, 500 V"), page);
      assertTrue(page.contains("people clear of both ends"), page);
      assertTrue(page.contains("electronics and suppressors off"), page);
      assertTrue(page.contains("discharge before you touch"), page);
      assertTrue(page.contains("Your procedure and local code come first"), page);
    }
  }

  @Test
  void every_page_on_which_hands_go_into_the_unit_says_what_may_be_live() throws IOException {
    List<String> pages = pages().stream().filter(page -> page.contains("Limit Reading")).toList();
    assertTrue(pages.size() > 1, "several pages");
    for (String page : pages) {
      assertTrue(page.contains("proven dead here; stored charge let off"), page);
    }
  }

  @Test
  void every_page_says_which_unit_it_is_of() throws IOException {
    for (String page : pages()) {
      assertTrue(page.contains("serial number 0418"), page);
    }
  }

  @Test
  void a_glove_can_write_into_the_box_on_paper() throws IOException {
    try (PDDocument document = Loader.loadPDF(written("sheet.pdf", "--serial", "0418").toFile())) {
      Steps steps = new Steps();
      steps.getText(document);
      assertTrue(steps.apartMm.size() > 200, steps.apartMm.size() + " rows");
      for (double apart : steps.apartMm) {
        assertTrue(apart >= BOX_MM, apart + " mm");
      }
    }
  }

  /** How far the numbers of two steps that follow each other stand apart. */
  private static final class Steps extends PDFTextStripper {
    private final List<Double> apartMm = new ArrayList<>();
    private boolean isToFill;
    private int page;
    private int last;
    private double lastY;

    @Override
    protected void writeString(String text, List<TextPosition> positions) {
      String first = text.strip().split("\\s", -1)[0];
      if (List.of("Continuity", "Insulation", "Calls").contains(text.strip())) {
        isToFill = !first.equals("Calls");
      }
      boolean inFirstColumn = positions.get(0).getXDirAdj() < 20 * POINTS_OF_A_MM;
      if (!isToFill || !inFirstColumn || !first.matches("\\d+")) {
        return;
      }
      int step = Integer.parseInt(first);
      double y = positions.get(0).getYDirAdj();
      if (step == last + 1 && page == getCurrentPageNo()) {
        apartMm.add((y - lastY) / POINTS_OF_A_MM);
      }
      page = getCurrentPageNo();
      last = step;
      lastY = y;
    }
  }

  @Test
  void a_glove_can_write_into_the_box_of_a_printed_workbook() throws Exception {
    for (String name : List.of("Continuity", "Insulation")) {
      Document sheet = sheet(name);
      int rows = 0;
      for (Element row : elements(sheet, "row")) {
        Element first = (Element) row.getElementsByTagName("c").item(0);
        if (List.of("", "n").contains(first.getAttribute("t"))) {
          assertTrue(Double.parseDouble(row.getAttribute("ht")) >= BOX_MM * POINTS_OF_A_MM, name);
          rows++;
        }
      }
      assertTrue(rows > 80, name + ": " + rows);
      Element fit = elements(sheet, "pageSetup").get(0);
      assertEquals("portrait", fit.getAttribute("orientation"));
    }
  }

  @Test
  void a_workbook_prints_its_caution_and_headings_on_every_page_and_says_the_serial_number()
      throws Exception {
    List<String> titles =
        elements(part(written("sheet.xlsx", "--serial", "0418"), "xl/workbook.xml"), "definedName")
            .stream()
            .filter(name -> name.getAttribute("name").equals("_xlnm.Print_Titles"))
            .map(Element::getTextContent)
            .toList();
    assertTrue(titles.contains("Insulation!$1:$2"), titles.toString());
    assertTrue(titles.contains("Continuity!$1:$2"), titles.toString());
    for (String name : List.of("Read first", "Job", "Continuity", "Insulation", "Calls")) {
      String header = elements(sheet(name), "oddHeader").get(0).getTextContent();
      assertTrue(header.contains("serial number 0418"), header);
      String footer = elements(sheet(name), "oddFooter").get(0).getTextContent();
      assertTrue(footer.contains("page &P of &N"), footer);
    }
  }

  @Test
  void limits_are_said_as_people_say_them_and_kept_as_numbers_beside() throws Exception {
    List<String> limits =
        lines("continuity").stream().skip(1).map(line -> line.split(",", -1)[6]).toList();
    assertTrue(limits.contains("≥ 100 kΩ"), limits.toString());
    for (String limit : limits) {
      assertTrue(limit.matches("([≤≥] )?[0-9.]{1,4}(–[0-9.]{1,4})? [mkM]?Ω|open"), limit);
    }
    Document sheet = sheet("Continuity");
    long numbers =
        elements(sheet, "c").stream()
            .filter(cell -> cell.getAttribute("r").matches("[MN]\\d+"))
            .filter(cell -> cell.getElementsByTagName("v").getLength() > 0)
            .filter(cell -> List.of("", "n").contains(cell.getAttribute("t")))
            .count();
    assertTrue(numbers > 200, numbers + " cells");
  }

  @Test
  void one_begins_at_a_connector_and_not_at_a_single_part() throws IOException {
    List<String> items =
        lines("continuity").stream().skip(1).map(line -> line.split(",", -1)[1]).toList();
    assertEquals("J1", items.get(0));
    assertTrue(items.indexOf("CR1") > items.indexOf("J4"), items.toString());
    assertTrue(items.indexOf("CR2") > items.indexOf("J4"), items.toString());
  }

  @Test
  void by_connector_is_one_connector_after_the_other() throws IOException {
    Path sheets = written("by-connector", "--by-connector");
    List<String> items = new ArrayList<>();
    for (String line : Files.readAllLines(sheets.resolve("continuity.csv"))) {
      String[] cells = line.split(",", -1);
      boolean isPair = cells[0].matches("\\d+") && !cells[3].equals("REST") && cells[5].isEmpty();
      if (isPair && (items.isEmpty() || !items.get(items.size() - 1).equals(cells[1]))) {
        items.add(cells[1]);
      }
    }
    List<String> connectors = items.stream().filter(item -> item.matches("[JP]\\d+")).toList();
    assertEquals(connectors.stream().distinct().toList(), connectors);
    assertEquals("J1", items.get(0));
  }

  @Test
  void pins_stand_as_they_are_read_on_an_insert_and_the_shell_last() throws IOException {
    List<String> pins =
        Stream.of("A", "Z", "a", "c", "AA", "SHELL", "R", "2", "10")
            .sorted(dev.ringout.harness.InsertOrder.INSTANCE)
            .toList();
    assertEquals(List.of("2", "10", "A", "R", "Z", "a", "c", "AA", "SHELL"), pins);
    List<String> read =
        lines("insulation").stream()
            .map(line -> line.split(",", -1))
            .filter(cells -> cells[1].equals("J1"))
            .map(cells -> cells[2])
            .toList();
    assertTrue(read.indexOf("a") > read.indexOf("Z"), read.toString());
  }

  @Test
  void what_has_to_be_moved_first_is_a_bar_across_the_sheet() throws IOException {
    String page = Files.readString(written("sheet.html"));
    assertTrue(page.contains("Set S1 to MADE."), "switch");
    assertTrue(
        page.contains("Set S1 back to CLEAR. Set S2 to MADE.")
            || page.contains("Set S1 back to CLEAR.  Set S2 to MADE."),
        "back again");
    assertEquals(1, page.split("How to tie REST</th>", -1).length - 1, "drawn once");
    assertTrue(page.contains("aria-label=\"How to tie REST\""), "a drawing");
  }

  @Test
  void the_probe_that_stays_is_named() throws IOException {
    assertTrue(lines("continuity").stream().anyMatch(line -> line.contains(" stays; ")));
    assertFalse(lines("continuity").stream().anyMatch(line -> line.contains("same pin")));
  }

  @Test
  void no_line_ends_within_the_name_of_a_point_that_is_tied_to_others() throws IOException {
    assertTrue(
        Files.readString(written("sheet.html"))
            .contains("<span class=\"name\">P4-4+</span> <span class=\"name\">P4-5+</span>"));
  }

  /** Found by an attacker: volts went on with a switch still operated. */
  @Test
  void insulation_begins_with_every_switch_put_back() throws IOException {
    try (XSSFWorkbook book = new XSSFWorkbook(Files.newInputStream(written("sheet.xlsx")))) {
      List<String> bars = new ArrayList<>();
      for (Row row : book.getSheet("Insulation")) {
        String first = row.getCell(0) == null ? "" : row.getCell(0).toString();
        if (first.startsWith("■")) {
          bars.add(first);
        }
      }
      assertTrue(
          bars.stream().anyMatch(bar -> bar.startsWith("■ Set S2 back to CLEAR.")),
          bars.toString());
    }
  }

  @Test
  void a_sheet_that_was_printed_before_limits_were_said_is_read_as_it_was() {
    Run run = Run.of("check", BRIDGE, Path.of("src/test/resources/sheets/before-limits-were-said"));
    assertEquals("", run.err());
    assertTrue(run.out().startsWith("CONFORMS."), run.out());
  }

  @Test
  void a_reading_written_into_a_bar_is_not_left_out_in_silence() throws IOException {
    Path sheet = Files.createDirectories(folder.resolve("bar"));
    Files.writeString(
        sheet.resolve("continuity.csv"),
        "Step,From,To,Reading\n■ Set S1 to MADE.,,,0.2\n1,J1-A,TB1-1,0.03\n");
    Run run = Run.of("check", BRIDGE, sheet);
    assertEquals(65, run.code());
    assertTrue(run.err().replaceAll("\\s+", " ").contains("use another row"), run.err());
  }

  /** Typed over the words of the bar, a value stands in the column Step. */
  @Test
  void a_reading_written_over_a_bar_is_not_left_out_in_silence() throws IOException {
    Path sheet = Files.createDirectories(folder.resolve("over"));
    for (String typed : List.of("0.2", "314", "OL")) {
      Files.writeString(
          sheet.resolve("continuity.csv"),
          "Step,From,To,Reading\n" + typed + ",,,\n1,J1-A,TB1-1,0.03\n");
      Run run = Run.of("check", BRIDGE, sheet);
      assertEquals(65, run.code());
      String said = run.err().replaceAll("\\s+", " ");
      assertTrue(
          said.contains(
              "(Step): step "
                  + typed
                  + ": nothing else stands in this row; a value belongs in the column Reading"),
          said);
    }
  }

  @Test
  void what_is_written_into_any_other_column_of_a_bar_is_seen_too() throws IOException {
    for (String column : List.of("Limit", "Unit", "By", "Time", "Note", "Least (Ω)", "Most (Ω)")) {
      Path sheet =
          Files.createDirectories(folder.resolve("bar " + column.length() + column.charAt(0)));
      Files.writeString(
          sheet.resolve("continuity.csv"),
          "Step,From,To,Reading," + column + "\n■ Set S1 to MADE.,,,,0.2\n1,J1-A,TB1-1,0.03,\n");
      Run run = Run.of("check", BRIDGE, sheet);
      assertEquals(65, run.code(), column);
      assertTrue(run.err().contains("E2"), run.err());
    }
  }

  @Test
  void what_was_lifted_or_switched_is_put_back_when_nothing_more_is_read() throws IOException {
    Path unit = Files.createDirectories(folder.resolve("ring"));
    Files.writeString(
        unit.resolve("wires.csv"),
        "Wire,From,To\nW1,TB1-1,TB2-1\nW2,TB1-1,TB2-1\nW3,TB1-2,TB2-2\n");
    Files.writeString(unit.resolve("limits.csv"), "Name,Value,Unit\ninsulation test,none,\n");
    Path sheet = folder.resolve("ring.xlsx");
    assertEquals(0, Run.of("plan", unit, "-o", sheet).code());
    try (XSSFWorkbook book = new XSSFWorkbook(Files.newInputStream(sheet))) {
      var rows = book.getSheet("Continuity");
      String last = rows.getRow(rows.getLastRowNum()).getCell(0).toString();
      assertTrue(last.startsWith("■ Put W"), last);
      assertTrue(last.endsWith("back on its point."), last);
    }
    Path page = folder.resolve("ring.html");
    assertEquals(0, Run.of("plan", unit, "-o", page).code());
    assertTrue(Files.readString(page).contains("back on its point.</td></tr>\n</tbody>"));
  }

  /** Found by looking: S5=LOCKED was printed over the limit beside it. */
  @Test
  void a_switch_s_position_keeps_to_its_column_on_paper() throws IOException {
    Path unit = Files.createDirectories(folder.resolve("switched"));
    Files.writeString(
        unit.resolve("wires.csv"), "Wire,From,To\nW1,TB1-1,S51-COM\nW2,TB1-2,S51-NO\n");
    Files.writeString(
        unit.resolve("switches.csv"), "Ref,State,Pin,To Pin\nS51,FREE,,\nS51,LOCKED,COM,NO\n");
    Path sheet = folder.resolve("switched.pdf");
    assertEquals(0, Run.of("plan", unit, "-o", sheet).code());
    try (PDDocument document = Loader.loadPDF(sheet.toFile())) {
      Words words = new Words();
      words.getText(document);
      assertFalse(words.ends("LOCKED").isEmpty(), "a step with the switch operated");
      double limit = words.starts("Limit").get(0);
      for (double end : words.ends("LOCKED")) {
        assertTrue(end <= limit, "LOCKED ends at " + end + ", Limit begins at " + limit);
      }
    }
  }

  /** Where words begin and end on the pages, in points. */
  private static final class Words extends PDFTextStripper {
    private final StringBuilder letters = new StringBuilder();
    private final List<TextPosition> places = new ArrayList<>();

    @Override
    protected void writeString(String text, List<TextPosition> positions) {
      for (TextPosition position : positions) {
        letters.append(position.getUnicode());
        places.add(position);
      }
    }

    List<Double> starts(String word) {
      return at(word, 0, 0);
    }

    List<Double> ends(String word) {
      return at(word, word.length() - 1, 1);
    }

    private List<Double> at(String word, int letter, int widths) {
      List<Double> found = new ArrayList<>();
      for (int i = letters.indexOf(word); i >= 0; i = letters.indexOf(word, i + 1)) {
        TextPosition place = places.get(i + letter);
        found.add((double) (place.getXDirAdj() + widths * place.getWidthDirAdj()));
      }
      return found;
    }
  }

  @Test
  void no_row_of_the_job_looks_filled_by_the_words_beside_it() throws IOException {
    List<String> job = lines("job");
    assertTrue(job.contains("date,,year-month-day"), job.toString());
    assertFalse(job.stream().anyMatch(row -> row.matches(".*,,[\\d].*")), job.toString());
  }

  @Test
  void what_was_read_with_stands_in_the_sheet_of_the_retest_and_who_does_not() throws IOException {
    Path before = Files.createDirectories(folder.resolve("before"));
    Files.writeString(
        before.resolve("continuity.csv"), "Step,From,To,Reading\n1,J1-A,TB1-1,0.03\n");
    Files.writeString(
        before.resolve("job.csv"),
        """
        Name,Value,Unit
        serial number,0418,
        instrument,milliohm meter,
        continuity range,40,MΩ
        meter accuracy,0.5 % + 2 digits,
        operator,R. Adeyemi,
        """);
    Path retest = written("retest", "--touched", "W012", "--after", before);
    String job = Files.readString(retest.resolve("job.csv"));
    assertTrue(job.contains("serial number,0418,"), job);
    assertTrue(job.contains("instrument,milliohm meter,"), job);
    assertTrue(job.contains("meter accuracy,0.5 % + 2 digits,"), job);
    assertTrue(job.contains("continuity range,,"), "without its unit it would be 40 Ω");
    assertTrue(job.contains("operator,,"), "who reads is written by who reads");
  }
}
