package dev.ringout.record;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.check.CheckResult;
import dev.ringout.circuit.UnitMap;
import dev.ringout.readings.Noted;
import dev.ringout.readings.Noted.EndState;
import dev.ringout.readings.UnitHistory;
import dev.ringout.review.Review;
import dev.ringout.seal.Digest;
import dev.ringout.source.Place;
import dev.ringout.standards.CopperWire;
import dev.ringout.standards.Tables;
import dev.ringout.support.DrawnPhotograph;
import dev.ringout.support.UnitUnderTest;
import dev.ringout.work.SleeveText;
import dev.ringout.work.WorkPapers;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What was said of a unit where it is kept, as its record tells it. */
class WhatWasNotedTest {
  private static final String AT = "2026-11-20T08:15:30.250Z";
  private static final Noted NOTE = new Noted.Words(AT, "R. Adeyemi", "lid missing");

  @TempDir Path folder;

  /** A lock box of two good wires. */
  private CheckResult check() {
    return new UnitUnderTest(folder)
        .header("title,Span lock box")
        .withoutInsulationTest()
        .wire("W1,J1-A,P2-1,20,4 ft")
        .wire("W2,J1-B,P2-2,20,4 ft")
        .reads("J1-A", "P2-1", "0.05")
        .reads("J1-B", "P2-2", "0.05")
        .reads("J1-A", "REST", "OL")
        .check();
  }

  private RecordContent content(Noted... noted) {
    CheckResult result = check();
    Tables tables = Tables.published();
    CopperWire copper = CopperWire.published();
    return RecordContent.of(
        new TestRecord(
            result,
            Review.of(result.circuit(), tables, copper, List.of(), Optional.empty()),
            Optional.empty(),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            new UnitHistory(Arrays.asList(noted), List.of(), List.of()),
            WorkPapers.of(result.harness(), tables, copper, Set.of(), new SleeveText("{wire}"))
                .sheets(),
            UnitMap.of(result.harness()),
            Map.of(),
            "ringout of the test"));
  }

  private static Noted photograph(byte[] bytes, String text) {
    return new Noted.Photograph(
        AT,
        "R. Adeyemi",
        text,
        "J1-A to P2-1",
        "image/jpeg",
        Digest.of(bytes),
        () -> Optional.of(bytes));
  }

  private static Noted tick(EndState state, String who, String wire, String item, String pin) {
    return new Noted.EndTicked(AT, who, state, wire, item, pin);
  }

  private static Optional<RecordBlock.Table> table(RecordContent content, String name) {
    return content.blocks().stream()
        .filter(RecordBlock.Table.class::isInstance)
        .map(RecordBlock.Table.class::cast)
        .filter(table -> table.name().equals(name))
        .findFirst();
  }

  private static List<List<String>> rows(RecordContent content, String name) {
    return table(content, name).orElseThrow().rows();
  }

  private static List<RecordBlock.Photograph> photographs(RecordContent content) {
    return content.blocks().stream()
        .filter(RecordBlock.Photograph.class::isInstance)
        .map(RecordBlock.Photograph.class::cast)
        .toList();
  }

  private static String words(RecordContent content) {
    return content.blocks().toString();
  }

  @Test
  void each_stands_with_when_who_and_where_in_the_order_in_which_it_was_said() {
    Place cell = check().readings().readings().get(0).place();
    RecordContent content =
        content(
            NOTE,
            new Noted.ReadingTakenBack(AT, "R. Adeyemi", cell, "probe on the wrong pin"),
            photograph(DrawnPhotograph.of("jpeg", 60, 40), "contact backed out"),
            new Noted.Signed("2026-11-21T10:00:00Z", "M. Lindqvist", "inspector", "ba20 628c", ""));
    String when = "2026-11-20 08:15";
    assertEquals(
        List.of(
            List.of(when, "R. Adeyemi", "note", "lid missing", ""),
            List.of(
                when,
                "R. Adeyemi",
                "reading taken back",
                "probe on the wrong pin",
                "J1-A to P2-1, continuity.csv D2"),
            List.of(when, "R. Adeyemi", "photograph 1", "contact backed out", "J1-A to P2-1"),
            List.of(
                "2026-11-21 10:00",
                "M. Lindqvist",
                "signed as inspector",
                "the signature holds; key ba20 628c",
                "")),
        rows(content, "Noted"));
  }

  @Test
  void where_nothing_was_noted_the_record_has_no_part_of_it() {
    assertFalse(words(content()).contains("What was noted"));
  }

  @Test
  void the_verdict_stays_what_it_is() {
    assertEquals(content().blocks().get(1), content(NOTE).blocks().get(1));
  }

  @Test
  void another_note_or_another_photograph_is_another_content() {
    byte[] one = DrawnPhotograph.of("jpeg", 60, 40);
    byte[] other = DrawnPhotograph.of("jpeg", 61, 40);
    assertNotEquals(content().digest(), content(NOTE).digest());
    assertNotEquals(
        content(NOTE).digest(),
        content(new Noted.Words(AT, "R. Adeyemi", "lid missing.")).digest());
    assertNotEquals(
        content(NOTE).digest(),
        content(new Noted.Words(AT, "M. Lindqvist", "lid missing")).digest());
    assertNotEquals(
        content(photograph(one, "J1")).digest(), content(photograph(other, "J1")).digest());
    assertEquals(content(photograph(one, "J1")).digest(), content(photograph(one, "J1")).digest());
  }

  @Test
  void a_photograph_stands_with_what_it_shows_who_took_it_and_its_digest() {
    byte[] bytes = DrawnPhotograph.of("jpeg", 4000, 3000);
    RecordBlock.Photograph shown =
        photographs(content(photograph(bytes, "contact backed out"))).get(0);
    assertEquals(1600, shown.width());
    assertEquals("Photograph 1: contact backed out, at J1-A to P2-1", shown.shows());
    assertEquals(
        "Photograph 1: contact backed out, at J1-A to P2-1. R. Adeyemi, 2026-11-20 08:15 UTC,"
            + " SHA-256 "
            + Digest.of(bytes)
            + ".",
        shown.caption());
  }

  @Test
  void many_photographs_take_no_more_room_than_forty() {
    byte[] bytes = DrawnPhotograph.of("jpeg", 1600, 16);
    Noted[] many = new Noted[160];
    Arrays.setAll(many, i -> photograph(bytes, "number " + i));
    assertEquals(800, photographs(content(many)).get(159).width());
    assertEquals(1600, photographs(content(Arrays.copyOf(many, 40))).get(39).width());
  }

  @Test
  void what_is_no_picture_or_far_too_large_is_named_and_not_drawn() {
    byte[] text = "no picture".getBytes(StandardCharsets.US_ASCII);
    RecordContent content =
        content(
            photograph(text, "the lid"), photograph(DrawnPhotograph.claiming(60000, 60000), ""));
    assertEquals(List.of(), photographs(content));
    String words = words(content);
    assertTrue(
        words.contains(
            "Photograph 1: the lid, at J1-A to P2-1. It is not shown here: it is not a JPEG or PNG"
                + " (kept as image/jpeg). R. Adeyemi, 2026-11-20 08:15 UTC, SHA-256 "
                + Digest.of(text)),
        words);
    assertTrue(words.contains("it claims 60000 by 60000 pixels"), words);
  }

  @Test
  void ends_are_counted_by_item_and_those_that_lack_a_second_person_are_listed() {
    RecordContent content =
        content(
            tick(EndState.MADE, "R. Adeyemi", "W1", "J1", "A"),
            tick(EndState.CHECKED, "M. Lindqvist", "W1", "J1", "A"),
            tick(EndState.MADE, "R. Adeyemi", "W2", "J1", "B"));
    assertEquals(
        List.of("J1", "2", "2", "R. Adeyemi", "1", "M. Lindqvist"), rows(content, "Ends").get(0));
    assertEquals(List.of("P2", "2", "0", "", "0", ""), rows(content, "Ends").get(1));
    assertEquals(
        List.of(List.of("J1", "B", "W2", "made, not checked", "R. Adeyemi")),
        rows(content, "Ends not checked"));
    assertTrue(words(content).contains("3 of 4 ends not made and checked by a second person"));
  }

  @Test
  void nobody_checks_what_he_made_himself_however_he_writes_his_name() {
    for (String who : List.of("R. Adeyemi", "Adeyemi, R", "RA", "", "n/a")) {
      RecordContent content =
          content(
              tick(EndState.MADE, "R. Adeyemi", "W1", "J1", "A"),
              tick(EndState.CHECKED, who, "W1", "J1", "A"));
      assertEquals("0", rows(content, "Ends").get(0).get(4), who);
    }
  }

  @Test
  void an_end_that_is_made_again_or_undone_is_to_be_checked_again() {
    Noted made = tick(EndState.MADE, "R. Adeyemi", "W1", "J1", "A");
    Noted checked = tick(EndState.CHECKED, "M. Lindqvist", "W1", "J1", "A");
    Noted undone = tick(EndState.UNDONE, "R. Adeyemi", "W1", "J1", "A");
    assertEquals("1", rows(content(made, checked), "Ends").get(0).get(4));
    assertEquals("0", rows(content(made, checked, made), "Ends").get(0).get(4));
    assertEquals("0", rows(content(made, checked, undone), "Ends").get(0).get(2));
    assertEquals(
        "checked, and not marked as made",
        rows(content(checked), "Ends not checked").get(0).get(3));
  }

  @Test
  void where_nobody_ticked_there_is_no_table_of_ends() {
    assertTrue(table(content(NOTE), "Ends").isEmpty());
  }

  @Test
  void a_tick_on_an_end_that_the_list_does_not_have_is_told() {
    String words = words(content(tick(EndState.MADE, "R. Adeyemi", "W9", "J1", "A")));
    assertTrue(words.contains("Ticked, and not in the list: W9 at J1-A."), words);
  }
}
