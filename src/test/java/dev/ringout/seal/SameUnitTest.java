package dev.ringout.seal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which records are of one unit: a good one of another must never stand for it. */
class SameUnitTest {
  private static TestedUnit unit(String serial, String title, String drawing) {
    return new TestedUnit(serial, title, drawing, "B");
  }

  @ParameterizedTest
  @CsvSource({
    "0418,0418,true",
    "0418,418,true",
    "SB 0418,sb0418,true",
    "0418,0419,false",
    "'','',false",
    "0418,'',false",
    "'',0418,false"
  })
  void two_records_are_of_one_unit_by_its_serial_number(String one, String other, boolean same) {
    assertEquals(same, unit(one, "box", "HSB-2210").isSameUnitAs(unit(other, "box", "HSB-2210")));
  }

  @Test
  void and_only_by_one_list() {
    TestedUnit box = unit("0418", "box", "HSB-2210");
    assertFalse(box.isSameUnitAs(unit("0418", "box", "HSB-2211")), "another drawing");
    assertTrue(box.isSameUnitAs(unit("0418", "box, reworked", "hsb-2210")));
    assertTrue(box.isSameUnitAs(unit("0418", "Box", "")), "by its title where one has no drawing");
    assertFalse(box.isSameUnitAs(unit("0418", "cable", "")));
    assertFalse(box.isSameUnitAs(unit("0418", "", "")), "nothing says that it is");
  }

  private static List<Objection> objections(TestedUnit unit, TestedUnit before, boolean sameUnit) {
    return unit.after("first.html", Optional.of(before), sameUnit, false).objections();
  }

  @Test
  void a_record_by_another_list_names_both_by_their_drawings_else_by_their_titles() {
    TestedUnit box = unit("0418", "box", "HSB-2210");
    assertEquals(
        List.of(new Objection.OtherList("first.html", "HSB-2210", "HSB-2211")),
        objections(box, unit("0418", "box", "HSB-2211"), false));
    assertEquals(
        List.of(new Objection.OtherList("first.html", "box", "cable")),
        objections(box, unit("0418", "cable", ""), false));
  }

  @Test
  void whoever_vouches_does_so_only_where_something_is_not_said() {
    TestedUnit box = unit("0418", "box", "HSB-2210");
    assertFalse(box.after("first.html", Optional.of(box), true, false).vouchedFor());
    TestedUnit unsaid = unit("", "box", "HSB-2210");
    assertTrue(box.after("first.html", Optional.of(unsaid), true, false).vouchedFor());
    assertFalse(box.after("first.html", Optional.of(unsaid), false, false).vouchedFor());
    assertEquals(
        List.of(new Objection.NumberNotStated("first.html")), objections(box, unsaid, false));
    assertEquals(List.of(), objections(box, unsaid, true));
  }

  @Test
  void what_is_written_is_digested_byte_for_byte_and_comes_through_unchanged() throws Exception {
    byte[] text = "W1 J1-A J2-13 0.03 Ω\n".getBytes(StandardCharsets.UTF_8);
    ByteArrayOutputStream to = new ByteArrayOutputStream();
    Digest.OfWritten digest = new Digest.OfWritten(to);
    try (OutputStream out = digest) {
      out.write(text, 0, 5);
      out.write(text[5]);
      out.write(text, 6, text.length - 6);
    }
    assertEquals(new String(text, StandardCharsets.UTF_8), to.toString(StandardCharsets.UTF_8));
    assertEquals(Digest.of(text), digest.sha256());
  }
}
