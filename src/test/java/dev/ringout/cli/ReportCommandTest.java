package dev.ringout.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.seal.Keys;
import dev.ringout.seal.Seal;
import dev.ringout.support.Run;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ReportCommandTest {
  private static final Path SAMPLE = Path.of("harness-samples/swing-bridge");
  private static final Path BRIDGE = SAMPLE.resolve("junction-box.xlsx");
  private static final Path FAULTY = SAMPLE.resolve("point-to-point.xlsx");
  private static final Path CLEAN = SAMPLE.resolve("point-to-point-clean.xlsx");

  @TempDir Path folder;

  private Path unit() throws IOException {
    Path unit = Files.createDirectories(folder.resolve("unit"));
    Files.writeString(
        unit.resolve("wires.csv"),
        "Wire,From,To,Gauge,Length\nW1,J1-A,P1-1,20,1 m\nW2,J1-B,P1-2,20,1 m\n");
    Files.writeString(unit.resolve("header.csv"), "Name,Value\ntitle,Box\nrevision,A\n");
    return unit;
  }

  private Path readings(String name, String values, String... job) throws IOException {
    Path sheet = Files.createDirectories(folder.resolve(name));
    String[] two = values.split(" ", -1);
    Files.writeString(
        sheet.resolve("continuity.csv"),
        "Step,From,To,Reading,Unit\n1,J1-A,P1-1,%s,Ω\n2,J1-B,P1-2,%s,Ω\n3,J1-A,J1-B,OL,\n"
            .replaceFirst("%s", two[0])
            .replaceFirst("%s", two[1]));
    Files.writeString(
        sheet.resolve("insulation.csv"),
        "Step,From,To,Volts,Reading,Unit\n4,J1-A,REST,500,2000,MΩ\n");
    StringBuilder lines = new StringBuilder("Name,Value\nrevision,A\n");
    for (String line : job) {
      lines.append(line).append('\n');
    }
    Files.writeString(sheet.resolve("job.csv"), lines.toString());
    return sheet;
  }

  private String page(Object... arguments) throws IOException {
    Path page = folder.resolve("page.html");
    List<Object> all = new ArrayList<>(List.of("report"));
    all.addAll(List.of(arguments));
    all.addAll(List.of("-o", page, "--force"));
    Run run = Run.of(all.toArray());
    assertTrue(run.code() <= 2, run.err());
    return Files.readString(page);
  }

  @Test
  void the_first_page_holds_verdict_unit_counts_and_places_to_sign() throws IOException {
    String html = page(BRIDGE, FAULTY, "--date", "2026-11-20");
    String first = html.substring(0, html.indexOf("newpage\"></div>"));
    for (String part :
        new String[] {
          "FAULTS: 5.",
          "0418",
          "HSB-2210, B",
          "HSB-TP-07",
          "calibration due 2027-03-31",
          "20 °C",
          "R. Adeyemi, M. Lindqvist",
          "<td class=\"short\">203</td><td class=\"short\">185</td><td class=\"short\">0</td><td class=\"short\">18</td>",
          "Inspector, independent of the tester",
          "Stamp"
        }) {
      assertTrue(first.contains(part), part);
    }
    assertFalse(first.contains("class=\"warns\""), "nothing is in doubt");
  }

  @Test
  void conforms_stands_there_only_where_everything_is_proven() throws IOException {
    assertTrue(page(BRIDGE, CLEAN, "--date", "2026-11-20").contains("CONFORMS. Everything"));
    Path good = readings("good", "0.04 0.04");
    assertTrue(page(unit(), good).contains("CONFORMS. Everything"));
    Path blank = readings("blank", "0.04 ");
    String html = page(unit(), blank);
    assertFalse(html.contains("CONFORMS"), html);
    assertTrue(html.contains("NOT COMPLETE."), html);
  }

  @Test
  void what_makes_the_verdict_less_stands_beside_it() throws IOException {
    Path sheet =
        readings(
            "doubtful",
            "0.04 0.04",
            "operator,A. Ruiz",
            "inspector,a. ruiz",
            "instrument,meter 7",
            "calibration due,2026-03-01",
            "insulation range,1 GΩ");
    String html = page(unit(), sheet, "--date", "2026-03-02");
    assertTrue(html.contains("Calibration of meter 7 expired on 2026-03-01"), html);
    assertTrue(html.contains("Tester and inspector are the same person"), html);
    assertTrue(html.contains("1 reading is beyond the range"), html);
    assertTrue(page(unit(), sheet).contains("The date of the test is not stated"));
    Path silent = readings("silent", "0.04 0.04");
    assertTrue(page(unit(), silent).contains("There is no calibration date"));
  }

  @Test
  void every_reading_stands_there_with_its_limit_and_where_that_comes_from() throws IOException {
    String html = page(unit(), readings("some", "0.04 7"));
    assertTrue(html.contains("computed"), html);
    assertTrue(html.contains("open min"), html);
    assertTrue(html.contains("insulation min"), html);
    assertTrue(html.contains("data-verdict=\"poor or leaking\""), html);
    assertTrue(html.contains("AS LISTED"), html);
    assertTrue(html.contains("AS MEASURED"), html);
  }

  @Test
  void a_cell_stands_there_with_its_file_where_several_were_read() throws IOException {
    Path first = readings("one", "OL ");
    String html = page(unit(), first);
    assertTrue(html.contains(">continuity.csv D2<"), html);
    assertTrue(html.contains(">continuity.csv D3, step 2<"), html);
    html = page(unit(), first, readings("two", "0.04 "));
    assertTrue(html.contains(">two/continuity.csv!D2<"), html);
    assertTrue(html.contains(">one/continuity.csv!D2, step 1<"), "the first, taken again: " + html);
    assertTrue(html.contains(">two/continuity.csv!D2, step 1<"), html);
  }

  @Test
  void faults_are_marked_on_the_faces_of_the_sample() throws IOException {
    String html = page(BRIDGE, FAULTY, "--date", "2026-11-20");
    assertTrue(html.contains("J1 from both sides; marked 1: H"), html);
    assertTrue(html.contains("P1 from both sides; marked 3: E, F"), html);
    assertTrue(html.contains("Map of the unit"), html);
    assertTrue(html.contains("Insulation of the lowest nets"), html);
  }

  @Test
  void waivers_are_counted_and_named_on_the_first_page() throws IOException {
    Path blank = Files.createDirectories(folder.resolve("blank"));
    Files.writeString(
        blank.resolve("continuity.csv"), "Step,From,To,Reading,Unit\n1,J1-A,J1-B,,\n");
    String html =
        page(
            SAMPLE.resolve("paper-errors.xlsx"),
            blank,
            "--date",
            "2026-11-20",
            "--waivers",
            SAMPLE.resolve("waivers.csv"));
    assertTrue(html.contains("Waived: "), html);
    assertTrue(html.contains("The paper itself has"), html);
  }

  @Test
  void a_waiver_that_ends_on_a_day_holds_only_where_the_day_of_the_test_is_known()
      throws IOException {
    Path blank = Files.createDirectories(folder.resolve("blank"));
    Files.writeString(
        blank.resolve("continuity.csv"), "Step,From,To,Reading,Unit\n1,J1-A,J1-B,,\n");
    Path waivers = SAMPLE.resolve("waivers.csv");
    Path paper = SAMPLE.resolve("paper-errors.xlsx");
    String undated = page(paper, blank, "--waivers", waivers);
    assertTrue(
        undated.contains("holds until 2026-06-30, but the day of the test is not given"), undated);
    String before = page(paper, blank, "--waivers", waivers, "--date", "2026-06-30");
    assertFalse(before.contains("the day of the test is not given"), before);
    assertTrue(before.contains(", until 2026-06-30"), before);
  }

  @Test
  void the_same_inputs_give_the_same_bytes_in_every_form() throws IOException {
    for (String name : new String[] {"r.html", "r.pdf", "r.xlsx"}) {
      Path one = Files.createDirectories(folder.resolve("one")).resolve(name);
      Path other = Files.createDirectories(folder.resolve("two")).resolve(name);
      for (Path file : new Path[] {one, other}) {
        assertEquals(
            1, Run.of("report", BRIDGE, FAULTY, "-o", file, "--date", "2026-11-20").code());
      }
      assertArrayEquals(Files.readAllBytes(one), Files.readAllBytes(other), name);
      assertEquals(
          Files.readString(one.resolveSibling(name + ".seal")),
          Files.readString(other.resolveSibling(name + ".seal")));
    }
    Run again = Run.of("report", BRIDGE, FAULTY, "-o", folder.resolve("one/r.pdf"));
    assertEquals(73, again.code());
    assertEquals(64, Run.of("report", BRIDGE, FAULTY, "-o", folder.resolve("r.doc")).code());
    assertEquals(64, Run.of("report", BRIDGE).code());
  }

  /** Ω, µ and ≥ with an embedded font; headings tagged. */
  @Test
  void the_pdf_shows_every_sign_and_is_tagged() throws IOException {
    Path file = folder.resolve("r.pdf");
    Run.of("report", BRIDGE, FAULTY, "-o", file, "--date", "2026-11-20");
    try (PDDocument document = Loader.loadPDF(file.toFile())) {
      String text = new PDFTextStripper().getText(document);
      assertTrue(text.contains("≥ 100 MΩ"), "≥ and Ω");
      assertTrue(text.contains("page 2 of " + document.getNumberOfPages()));
      assertTrue(document.getDocumentCatalog().getMarkInfo().isMarked());
      assertTrue(document.getDocumentCatalog().getStructureTreeRoot() != null);
    }
  }

  @Test
  void the_workbook_keeps_its_filter_and_its_cells_never_start_a_formula() throws IOException {
    Path unit = unit();
    Files.writeString(
        unit.resolve("wires.csv"), "Wire,From,To,Signal\n=1+1,J1-A,P1-1,\nW2,J1-B,P1-2,\n");
    Path file = folder.resolve("r.xlsx");
    Run run = Run.of("report", unit, readings("some", "OL 0.04"), "-o", file);
    assertEquals(1, run.code(), run.err());
    try (XSSFWorkbook workbook = new XSSFWorkbook(Files.newInputStream(file))) {
      assertTrue(workbook.getSheet("Readings").getCTWorksheet().isSetAutoFilter());
      workbook.forEach(
          sheet ->
              sheet.forEach(
                  row -> {
                    for (Cell cell : row) {
                      assertFalse(cell.getCellType() == CellType.FORMULA);
                    }
                  }));
    }
  }

  private Path sealed(String name) throws IOException {
    Path inputs = Files.createDirectories(folder.resolve("in"));
    Files.copy(BRIDGE, inputs.resolve("harness.xlsx"));
    Files.copy(FAULTY, inputs.resolve("readings.xlsx"));
    Path key = folder.resolve("key");
    assertEquals(0, Run.of("report", "--new-key", key).code());
    Path record = folder.resolve(name);
    Run run =
        Run.of(
            "report",
            inputs.resolve("harness.xlsx"),
            inputs.resolve("readings.xlsx"),
            "-o",
            record,
            "--date",
            "2026-11-20",
            "--seal",
            key);
    assertEquals(1, run.code(), run.err());
    return record;
  }

  private Run verify(Path record) {
    return Run.of("report", "--verify", record, "--key", folder.resolve("key.pub"));
  }

  @Test
  void a_record_that_nobody_touched_is_as_it_was_sealed() throws IOException {
    Run run = verify(sealed("r.pdf"));
    assertEquals(0, run.code(), run.out() + run.err());
    assertTrue(run.out().endsWith("As sealed: record, inputs and signature.\n"), run.out());
    assertEquals(
        "rw-------",
        PosixFilePermissions.toString(Files.getPosixFilePermissions(folder.resolve("key"))));
  }

  /** One byte of the record, an input or the seal, anywhere: seeded. */
  @Test
  void one_changed_byte_anywhere_is_found_and_named() throws IOException {
    Path record = sealed("r.html");
    Random random = new Random(1);
    Path seal = folder.resolve("r.html.seal");
    for (Path file :
        new Path[] {
          record, folder.resolve("in/harness.xlsx"), folder.resolve("in/readings.xlsx"), seal
        }) {
      byte[] whole = Files.readAllBytes(file);
      for (int i = 0; i < 25; i++) {
        byte[] changed = whole.clone();
        changed[random.nextInt(changed.length)] ^= (byte) (1 << random.nextInt(7));
        Files.write(file, changed);
        Run run = verify(record);
        assertTrue(run.code() == 1 || run.code() == 65, file + ": " + run.out() + run.err());
        String said = run.out() + run.err();
        assertTrue(said.contains(file.equals(seal) ? "" : file.getFileName().toString()), said);
      }
      Files.write(file, whole);
    }
    assertEquals(0, verify(record).code());
  }

  @Test
  void another_verdict_another_reading_another_signature_are_each_named() throws IOException {
    Path record = sealed("r.html");
    Path seal = folder.resolve("r.html.seal");
    String html = Files.readString(record);
    Files.writeString(record, html.replace("FAULTS: 5.", "CONFORMS. Everything on the list."));
    assertTrue(verify(record).out().contains("DIFFERS     record r.html"));
    Files.writeString(record, html.replace("0.829 Ω", "0.429 Ω"));
    assertTrue(verify(record).out().contains("DIFFERS     record r.html"));
    Files.writeString(record, html);
    String text = Files.readString(seal);
    Files.writeString(seal, text.replace("verdict\tfaults", "verdict\tconforms"));
    assertTrue(verify(record).out().contains("DIFFERS     signature"));
    Files.writeString(seal, text.substring(0, text.indexOf("key\t")));
    assertTrue(verify(record).out().contains("DIFFERS     signature: there is none"));
    Path other = folder.resolve("other");
    Run.of("report", "--new-key", other);
    Files.writeString(seal, text);
    Run wrongKey = Run.of("report", "--verify", record, "--key", folder.resolve("other.pub"));
    assertTrue(wrongKey.out().contains("which is not the key given"), wrongKey.out());
    assertEquals(1, wrongKey.code());
    Run noKey = Run.of("report", "--verify", record);
    assertEquals(2, noKey.code(), "whose key it is nobody said");
    Files.delete(folder.resolve("in/readings.xlsx"));
    Run missing = verify(record);
    assertEquals(2, missing.code());
    assertTrue(missing.out().contains("in/readings.xlsx: it is not there"), missing.out());
    assertEquals(66, Run.of("report", "--verify", folder.resolve("none.pdf")).code());
  }

  @Test
  void a_retest_keeps_the_first_failing_values_and_names_the_record_before() throws IOException {
    Path unit = unit();
    Path first = folder.resolve("first.html");
    assertEquals(1, Run.of("report", unit, readings("one", "OL 0.04", SERIAL), "-o", first).code());
    Path second = folder.resolve("second.html");
    Run run =
        Run.of(
            "report",
            unit,
            readings("two", "0.04 0.04", SERIAL),
            "-o",
            second,
            "--continues",
            first,
            "--done",
            "W1 crimped anew at J1-A");
    assertEquals(0, run.code(), run.err());
    String html = Files.readString(second);
    assertTrue(html.contains("Done between: W1 crimped anew at J1-A"), html);
    assertTrue(html.contains("J1-A to P1-1"), html);
    assertTrue(html.contains("0.04 Ω, conforms"), html);
    assertTrue(html.contains("first.html"), html);
    Path third = folder.resolve("third.html");
    Run.of(
        "report", unit, readings("two", "0.04 0.04", SERIAL), "-o", third, "--continues", second);
    String seal = Files.readString(folder.resolve("third.html.seal"));
    assertTrue(seal.contains("earlier\tfirst.html"), seal);
    assertTrue(seal.contains("earlier\tsecond.html"), seal);
    assertTrue(seal.contains("failed\tfirst.html\tcontinuity\tJ1-A to P1-1\tOL"), seal);
    assertTrue(seal.contains("note\tW1 crimped anew at J1-A"), seal);
    Files.writeString(first, "another");
    Run changed = Run.of("report", "--verify", third);
    assertTrue(changed.out().contains("DIFFERS     earlier record first.html"), changed.out());
    Files.writeString(second, "another");
    Run refused =
        Run.of(
            "report",
            unit,
            readings("two", "0.04 0.04", SERIAL),
            "-o",
            folder.resolve("fourth.html"),
            "--continues",
            second);
    assertEquals(65, refused.code());
    assertTrue(refused.err().contains("is not as it was sealed"), refused.err());
  }

  private static final String SERIAL = "serial number,0418";

  /** The first record of unit 0418, by a list with a drawing. */
  private Path firstRecord() throws IOException {
    Path first = folder.resolve("first.html");
    Run run = Run.of("report", drawn("A"), readings("one", "OL 0.04", SERIAL), "-o", first);
    assertEquals(1, run.code(), run.err());
    return first;
  }

  private Path drawn(String revision) throws IOException {
    Path unit = unit();
    Files.writeString(
        unit.resolve("header.csv"),
        "Name,Value\ntitle,Box\ndrawing,HSB-1\nrevision," + revision + "\n");
    return unit;
  }

  private Run retest(Path unit, Path readings, Path before, Object... more) {
    List<Object> all = new ArrayList<>(List.of("report", unit, readings, "--continues", before));
    all.addAll(List.of(more));
    all.addAll(List.of("-o", folder.resolve("second.html"), "--force"));
    return Run.of(all.toArray());
  }

  @Test
  void a_retest_of_another_unit_is_refused_with_both_serial_numbers_named() throws IOException {
    Path first = firstRecord();
    Path other = readings("two", "0.04 0.04", "serial number,0419");
    Run run = retest(drawn("A"), other, first);
    assertEquals(65, run.code(), run.err());
    assertTrue(run.err().contains("two/job.csv!B3"), run.err());
    assertTrue(
        run.err().contains("unit 0419 can't continue first.html, which is of unit 0418"),
        run.err());
    assertFalse(Files.exists(folder.resolve("second.html")));
    assertEquals(
        65,
        retest(drawn("A"), other, first, "--same-unit").code(),
        "nobody can vouch for what the seal says is not so");
    Path same = readings("three", "0.04 0.04", "Serial Number, 04 18 ");
    assertEquals(0, retest(drawn("A"), same, first).code());
  }

  @Test
  void letters_of_a_serial_number_may_be_of_either_case() throws IOException {
    Path first = folder.resolve("first.html");
    Path one = readings("one", "OL 0.04", "serial number,hsb-7 a");
    assertEquals(1, Run.of("report", drawn("A"), one, "-o", first).code());
    Path two = readings("two", "0.04 0.04", "serial number,HSB-7A");
    assertEquals(0, retest(drawn("A"), two, first).code());
  }

  @Test
  void a_retest_by_another_list_or_revision_is_refused_with_both_named() throws IOException {
    Path first = firstRecord();
    Path two = readings("two", "0.04 0.04", SERIAL);
    Run revised = retest(drawn("B"), two, first);
    assertEquals(65, revised.code());
    Path silent = readings("three", "0.04 0.04", SERIAL);
    Files.writeString(silent.resolve("job.csv"), "Name,Value\n" + SERIAL + "\n");
    revised = retest(drawn("B"), silent, first);
    assertEquals(65, revised.code(), revised.err());
    assertTrue(
        revised
            .err()
            .contains("the list is of revision B; first.html was made by revision A of it"),
        revised.err());
    assertEquals(0, retest(drawn("B"), silent, first, "--any-revision").code());
    Path other = drawn("A");
    Files.writeString(
        other.resolve("header.csv"), "Name,Value\ntitle,Box\ndrawing,HSB-2\nrevision,A\n");
    Run run = retest(other, two, first, "--any-revision");
    assertEquals(65, run.code(), run.err());
    assertTrue(
        run.err().contains("the list is HSB-2; first.html was made by the list HSB-1"), run.err());
    Files.writeString(other.resolve("header.csv"), "Name,Value\ntitle,another box\nrevision,A\n");
    run = retest(other, two, first);
    assertEquals(65, run.code(), run.err());
    assertTrue(
        run.err().contains("the list is another box; first.html was made by the list Box"),
        run.err());
  }

  @Test
  void a_retest_that_does_not_state_its_serial_number_is_asked_for_it() throws IOException {
    Path first = firstRecord();
    for (Object[] more : new Object[][] {{}, {"--same-unit"}}) {
      Run run = retest(drawn("A"), readings("two", "0.04 0.04"), first, more);
      assertEquals(65, run.code(), run.err());
      assertTrue(run.err().contains("write the row \"serial number\" on the job sheet"), run.err());
    }
  }

  /** A seal of the time before units stood in seals. */
  private void takeUnitOutOf(Path seal) throws IOException {
    List<String> lines = new ArrayList<>(Files.readAllLines(seal));
    assertTrue(lines.removeIf(line -> line.startsWith("unit\t")), lines.toString());
    Files.writeString(seal, String.join("\n", lines) + "\n");
  }

  @Test
  void a_record_whose_seal_names_no_unit_is_continued_only_if_somebody_vouches()
      throws IOException {
    Path first = firstRecord();
    takeUnitOutOf(folder.resolve("first.html.seal"));
    Path two = readings("two", "0.04 0.04", SERIAL);
    Run refused = retest(drawn("A"), two, first);
    assertEquals(65, refused.code(), refused.err());
    assertTrue(
        refused.err().contains("its seal does not say of which unit and list it is"),
        refused.err());
    assertTrue(refused.err().contains("--same-unit"), refused.err());
    assertEquals(0, retest(drawn("A"), two, first, "--same-unit").code());
    Path second = folder.resolve("second.html");
    String html = Files.readString(second);
    assertTrue(html.contains("Unit of the record before: vouched for (first.html)"), html);
    Path third = folder.resolve("third.html");
    Run.of("report", drawn("A"), two, "-o", third, "--continues", second);
    html = Files.readString(third);
    assertTrue(html.contains("Unit of the record before: vouched for (first.html)"), html);
  }

  @Test
  void a_seal_names_the_unit_and_its_signature_covers_that() throws IOException {
    Path record = sealed("r.html");
    Path seal = folder.resolve("r.html.seal");
    String text = Files.readString(seal);
    String unit =
        "unit\t0418\tHarrow Sluice swing bridge, control junction box JB4 and cables\tHSB-2210\tB\n";
    assertTrue(text.contains(unit), text);
    Files.writeString(seal, text.replace("unit\t0418\t", "unit\t0419\t"));
    Run changed = verify(record);
    assertEquals(1, changed.code(), changed.out());
    assertTrue(changed.out().contains("DIFFERS     signature"), changed.out());
  }

  /** Made before seals named a unit: its signature is over the lines that it has. */
  @Test
  void an_old_seal_is_still_as_it_was_signed() throws Exception {
    Path record = sealed("r.html");
    Path seal = folder.resolve("r.html.seal");
    Seal now = Seal.read(Files.readString(seal)).seal();
    Seal old =
        new Seal(
            now.record(),
            now.content(),
            Optional.empty(),
            now.inputs(),
            List.of(),
            List.of(),
            List.of(),
            now.program(),
            now.verdict(),
            now.earlier(),
            now.failed(),
            now.notes());
    assertFalse(old.text().contains("unit\t"), old.text());
    Files.writeString(seal, old.signed(Keys.pair(folder.resolve("key"))));
    Run run = verify(record);
    assertEquals(0, run.code(), run.out() + run.err());
  }
}
