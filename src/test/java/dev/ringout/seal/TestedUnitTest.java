package dev.ringout.seal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.seal.Objection.About;
import dev.ringout.seal.TestedUnit.Continuation;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Which record may continue which. */
class TestedUnitTest {
  private static final TestedUnit BOX = new TestedUnit("SB-0042", "Junction box", "SB-1200", "B");

  private static List<About> objections(TestedUnit now, TestedUnit before) {
    return about(now.after("first.html", Optional.of(before), false, false));
  }

  private static List<About> about(Continuation continuation) {
    return continuation.objections().stream().map(Objection::about).toList();
  }

  @Test
  void a_unit_continues_its_own_record() {
    assertEquals(List.of(), objections(BOX, BOX));
  }

  @Test
  void a_number_is_the_same_however_it_is_spaced_and_in_capitals_or_not() {
    assertEquals(
        List.of(), objections(BOX, new TestedUnit("sb -0042", "Junction box", "sb-1200", "b")));
  }

  @Test
  void another_unit_s_record_is_not_continued() {
    TestedUnit other = new TestedUnit("SB-0043", "Junction box", "SB-1200", "B");
    assertEquals(List.of(About.UNIT), objections(BOX, other));
    assertEquals(
        List.of(About.UNIT),
        about(BOX.after("first.html", Optional.of(other), true, true)),
        "nobody can vouch for what the seal itself denies");
  }

  @Test
  void a_record_by_another_drawing_is_not_continued() {
    assertEquals(
        List.of(About.LIST),
        objections(BOX, new TestedUnit("SB-0042", "Junction box", "SB-1300", "B")));
  }

  @Test
  void where_a_drawing_is_not_stated_the_titles_tell() {
    assertEquals(List.of(), objections(BOX, new TestedUnit("SB-0042", "Junction box", "", "B")));
    assertEquals(
        List.of(About.LIST), objections(BOX, new TestedUnit("SB-0042", "Cable 7", "", "B")));
  }

  @Test
  void another_revision_is_continued_only_where_it_is_asked_for() {
    TestedUnit before = new TestedUnit("SB-0042", "Junction box", "SB-1200", "A");
    assertEquals(List.of(About.LIST), objections(BOX, before));
    assertEquals(List.of(), about(BOX.after("first.html", Optional.of(before), false, true)));
  }

  @Test
  void a_unit_without_a_serial_number_continues_nothing() {
    TestedUnit nameless = new TestedUnit("", "Junction box", "SB-1200", "B");
    assertEquals(List.of(About.UNIT), objections(nameless, BOX));
  }

  @Test
  void what_an_old_seal_does_not_say_somebody_may_vouch_for() {
    assertEquals(
        List.of(About.UNIT), about(BOX.after("first.html", Optional.empty(), false, false)));
    Continuation vouched = BOX.after("first.html", Optional.empty(), true, false);
    assertEquals(List.of(), vouched.objections());
    assertTrue(vouched.vouchedFor());
    assertFalse(BOX.after("first.html", Optional.of(BOX), true, false).vouchedFor());
  }
}
