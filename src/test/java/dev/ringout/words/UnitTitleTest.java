package dev.ringout.words;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.ringout.support.UnitUnderTest;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What stands above every page of a unit. */
class UnitTitleTest {
  private final UnitUnderTest unit;

  UnitTitleTest(@TempDir Path folder) {
    unit = new UnitUnderTest(folder).wire("W1,J1-A,P2-1");
  }

  @Test
  void a_unit_is_known_by_its_title_drawing_revision_and_serials() {
    unit.header("title,Span lock box")
        .header("drawing,SB-41")
        .header("revision,C")
        .header("effectivity,0100 to 0200");
    assertEquals(
        "Span lock box, SB-41, revision C, for 0100 to 0200", UnitTitle.of(unit.harness()));
  }

  @Test
  void what_the_list_does_not_state_is_said_to_be_missing() {
    assertEquals("Unit without a title, revision not stated", UnitTitle.of(unit.harness()));
  }

  @Test
  void a_list_that_asks_for_no_insulation_test_says_so_on_every_page() {
    unit.header("title,Span lock box").withoutInsulationTest();
    assertEquals(
        "Span lock box, revision not stated, no insulation test", UnitTitle.of(unit.harness()));
  }
}
