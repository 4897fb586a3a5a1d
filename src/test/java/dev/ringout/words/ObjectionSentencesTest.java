package dev.ringout.words;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.ringout.seal.TestedUnit;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What somebody reads whose record can't continue another. */
class ObjectionSentencesTest {
  private static final TestedUnit BOX = new TestedUnit("SB-0042", "Junction box", "SB-1200", "B");

  private static List<String> said(TestedUnit now, Optional<TestedUnit> before) {
    return now.after("first.html", before, false, false).objections().stream()
        .map(ObjectionSentences::of)
        .toList();
  }

  @Test
  void another_unit_another_list_and_another_revision_are_named_with_both() {
    assertEquals(
        List.of(
            "unit SB-0042 can't continue first.html, which is of unit SB-0043",
            "the list is SB-1200; first.html was made by the list SB-1300"),
        said(BOX, Optional.of(new TestedUnit("SB-0043", "Junction box", "SB-1300", "A"))));
    assertEquals(
        List.of(
            "the list is of revision B; first.html was made by no stated revision of it; to"
                + " continue it all the same, say --any-revision"),
        said(BOX, Optional.of(new TestedUnit("SB-0042", "Junction box", "SB-1200", ""))));
  }

  @Test
  void what_a_seal_does_not_say_is_told_with_the_way_to_vouch_for_it() {
    String vouch =
        "; if you know that it is the same, vouch for it with --same-unit, which the record will"
            + " say";
    String cannot = "first.html can't be continued: ";
    assertEquals(
        List.of(cannot + "its seal does not say of which unit and list it is" + vouch),
        said(BOX, Optional.empty()));
    assertEquals(
        List.of(
            cannot + "its seal gives no serial number" + vouch,
            cannot
                + "nothing shows whether it was made by this list: it has no drawing number"
                + " or title"
                + vouch),
        said(BOX, Optional.of(new TestedUnit("", "", "", "B"))));
  }

  @Test
  void a_unit_without_a_number_is_told_where_to_write_it() {
    assertEquals(
        List.of(
            "there is no serial number, so nobody knows whether this is the unit of first.html;"
                + " write the row \"serial number\" on the job sheet"),
        said(new TestedUnit(" ", "Junction box", "SB-1200", "B"), Optional.of(BOX)));
  }
}
