package dev.ringout.record;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.check.CheckResult;
import dev.ringout.circuit.UnitMap;
import dev.ringout.harness.Waiver;
import dev.ringout.readings.UnitHistory;
import dev.ringout.review.Remark;
import dev.ringout.review.Review;
import dev.ringout.seal.Seal;
import dev.ringout.source.Place;
import dev.ringout.standards.CopperWire;
import dev.ringout.standards.Tables;
import dev.ringout.support.UnitUnderTest;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a record says of a unit, before it takes any form. */
class RecordContentTest {
  @TempDir Path folder;

  private CheckResult check(String name, String readingOfW1) {
    return new UnitUnderTest(folder.resolve(name))
        .header("title,Span lock box")
        .withoutInsulationTest()
        .wire("W1,J1-A,P2-1,20,4 ft")
        .wire("W2,J1-B,P2-2,20,4 ft")
        .reads("J1-A", "P2-1", readingOfW1)
        .reads("J1-B", "P2-2", "0.05")
        .reads("J1-A", "REST", "OL")
        .check();
  }

  private static TestRecord record(CheckResult result, List<Waiver> waivers) {
    return new TestRecord(
        result,
        Review.of(
            result.circuit(),
            Tables.published(),
            CopperWire.published(),
            waivers,
            Optional.empty()),
        Optional.empty(),
        List.of(new Seal.Named("box.xlsx", "ab".repeat(32))),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        UnitHistory.NONE,
        List.of(),
        UnitMap.of(result.harness()),
        Map.of("copper", "a published table"),
        "ringout of the test");
  }

  private RecordContent content(String name, String readingOfW1) {
    return RecordContent.of(record(check(name, readingOfW1), List.of()));
  }

  private static List<RecordBlock> firstPage(RecordContent content) {
    return content.blocks().stream()
        .takeWhile(block -> !block.equals(new RecordBlock.NewPage()))
        .toList();
  }

  private static RecordBlock.Table table(RecordContent content, String name) {
    return content.blocks().stream()
        .filter(RecordBlock.Table.class::isInstance)
        .map(RecordBlock.Table.class::cast)
        .filter(table -> table.name().equals(name))
        .findFirst()
        .orElseThrow();
  }

  private static String cell(RecordBlock.Table table, int row, String heading) {
    return table.rows().get(row).get(table.headings().indexOf(heading));
  }

  @Test
  void the_first_page_holds_the_verdict_the_unit_and_places_to_sign() {
    List<RecordBlock> page = firstPage(content("good", "0.05"));
    assertEquals(
        new RecordBlock.Heading(
            1, "Test record: Span lock box, revision not stated, no insulation test"),
        page.get(0));
    assertTrue(page.get(1) instanceof RecordBlock.Verdict verdict && verdict.good());
    assertTrue(page.get(page.size() - 1) instanceof RecordBlock.Signatures, page.toString());
  }

  @Test
  void a_failing_reading_stands_with_its_limit_and_where_that_comes_from() {
    RecordBlock.Table readings = table(content("poor", "5"), "Readings");
    assertEquals("5 Ω", cell(readings, 0, "Reading"));
    assertTrue(cell(readings, 0, "Limit").matches("≤ [0-9.]+ m?Ω"), readings.rows().toString());
    assertEquals("computed", cell(readings, 0, "Limit from"));
    assertEquals("poor or leaking", cell(readings, 0, "Verdict"));
    assertEquals("conforms", cell(readings, 1, "Verdict"));
    assertEquals("≥ 100 kΩ", cell(readings, 2, "Limit"), "apart, by open min");
  }

  @Test
  void every_limit_that_was_used_says_where_it_comes_from() {
    RecordBlock.Table limits = table(content("good", "0.05"), "Limits");
    List<String> named = limits.rows().stream().map(row -> row.get(0)).toList();
    for (String one :
        List.of(
            "tolerance on what is computed",
            "one crimp and mated contact",
            "temperature of the wires",
            "leads still in the readings")) {
      assertTrue(named.contains(one), named.toString());
    }
    limits.rows().forEach(row -> assertFalse(row.get(2).isEmpty(), row.toString()));
  }

  @Test
  void a_source_is_said_once_and_what_is_from_memory_is_a_mark() {
    for (List<String> row : table(content("good", "0.05"), "Sources").rows()) {
      List<String> sources = List.of(row.get(1).replace(" †", "").split("; ", -1));
      assertEquals(sources.stream().distinct().toList(), sources, row.get(0));
      assertFalse(row.get(1).contains("from memory"), row.toString());
    }
  }

  @Test
  void columns_in_which_no_row_has_anything_are_left_out() {
    assertEquals(
        List.of(
            "Kind",
            "From",
            "To",
            "Wire",
            "Reading",
            "Limit",
            "Expected",
            "Limit from",
            "Verdict",
            "Cell",
            "Reading (Ω)",
            "Least (Ω)",
            "Most (Ω)"),
        table(content("good", "0.05"), "Readings").headings());
  }

  @Test
  void a_waiver_stands_on_the_first_page_with_who_and_why() {
    CheckResult result = check("good", "0.05");
    Remark remark = record(result, List.of()).review().remarks().get(0);
    Waiver waiver =
        new Waiver(
            remark.rule(),
            remark.subject(),
            "A. Stone",
            "as on the drawing",
            Optional.empty(),
            Place.NOWHERE);
    RecordContent content = RecordContent.of(record(result, List.of(waiver)));
    String words = firstPage(content).toString();
    assertTrue(
        words.contains(
            "Waived: "
                + remark.rule()
                + " at "
                + remark.subject()
                + ", by A. Stone: as on the drawing"),
        words);
  }

  @Test
  void a_part_without_anything_to_say_is_left_out() {
    List<String> parts =
        content("good", "0.05").blocks().stream()
            .flatMap(block -> block.part().stream())
            .map(RecordBlock.Heading::text)
            .toList();
    assertEquals(
        List.of(
            "To look at",
            "What this test can't see",
            "Limits used",
            "Readings",
            "Tables and their sources",
            "Rules by which the paper was checked",
            "Input files"),
        parts.stream().filter(part -> !part.equals("Remarks")).toList());
  }

  @Test
  void the_same_inputs_give_the_same_digest_and_it_is_the_last_that_is_said() {
    RecordContent once = content("a", "0.05");
    RecordContent again = content("b", "0.05");
    assertEquals(once.digest(), again.digest());
    assertEquals(
        new RecordBlock.Words("Content digest " + once.digest(), false),
        once.blocks().get(once.blocks().size() - 1));
  }

  @Test
  void another_reading_another_program_or_another_input_gives_another_digest() {
    CheckResult result = check("a", "0.05");
    TestRecord record = record(result, List.of());
    String digest = RecordContent.of(record).digest();
    assertNotEquals(digest, content("b", "0.06").digest());
    assertNotEquals(digest, RecordContent.of(madeFrom(record, "another ringout", "ab")).digest());
    assertNotEquals(digest, RecordContent.of(madeFrom(record, record.program(), "cd")).digest());
  }

  private static TestRecord madeFrom(TestRecord one, String program, String sha256) {
    return new TestRecord(
        one.result(),
        one.review(),
        one.date(),
        List.of(new Seal.Named("box.xlsx", sha256.repeat(32))),
        one.kept(),
        one.earlier(),
        one.failedBefore(),
        one.notes(),
        one.history(),
        one.faces(),
        one.map(),
        one.tables(),
        program);
  }

  @Test
  void what_failed_first_is_kept_with_the_record_in_which_it_did() {
    Seal.Failed before = new Seal.Failed("first.html", "continuity", "J1-B to P2-2", "OL");
    TestRecord record = record(check("poor", "5"), List.of());
    TestRecord later =
        new TestRecord(
            record.result(),
            record.review(),
            record.date(),
            record.inputs(),
            record.kept(),
            List.of(new Seal.Earlier("first.html", "cd".repeat(32), "faults", "", false)),
            List.of(before),
            List.of("W2 crimped again"),
            record.history(),
            record.faces(),
            record.map(),
            record.tables(),
            record.program());
    assertEquals(
        List.of(before, new Seal.Failed("second.html", "continuity", "J1-A to P2-1", "5 Ω")),
        FailedFirst.of(later, "second.html"));
    RecordBlock.Table failed = table(RecordContent.of(later), "Failed first");
    assertEquals("first.html", cell(failed, 0, "In record"));
    assertEquals("0.05 Ω, conforms", cell(failed, 0, "Now"));
  }

  @Test
  void a_value_beyond_its_limit_is_drawn_as_one_that_fails() {
    String good = joinsChart(content("good", "0.05"));
    String poor = joinsChart(content("poor", "5"));
    assertTrue(good.contains("<circle") && !good.contains("l1.9 1.9"), "rings alone");
    assertTrue(poor.contains("l1.9 1.9"), "a lozenge");
  }

  private static String joinsChart(RecordContent content) {
    return content.blocks().stream()
        .filter(RecordBlock.Picture.class::isInstance)
        .map(RecordBlock.Picture.class::cast)
        .filter(picture -> picture.caption().startsWith("Joins: "))
        .map(RecordBlock.Picture::svg)
        .findFirst()
        .orElseThrow();
  }
}
