package dev.ringout.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.imports.list.ImportOptions;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A profile is a plain text in the words of the command line. */
class ProfileTextTest {
  private static final List<Map.Entry<String, String>> EVERYTHING =
      List.of(
          Map.entry("sheet", "Wires"),
          Map.entry("module", "M1"),
          Map.entry("rows", "Wires!5-40"),
          Map.entry("heading-row", "4"),
          Map.entry("layout", "Wires!A4!from-to"),
          Map.entry("item", "Pins!J3"),
          Map.entry("separator", "blank"),
          Map.entry("column", "Fm Term=From Pin"),
          Map.entry("column", "D=Length (in)"),
          Map.entry("join-by", "Net"),
          Map.entry("marks", "X,o"),
          Map.entry("read-as", "P2-? = P2-7"),
          Map.entry("leave-out", "Wires!19-22"),
          Map.entry("one-point", "GND"),
          Map.entry("length-unit", "in"),
          Map.entry("gauge-unit", "mm2"));

  private static ImportOptions said() throws Exception {
    ProfileText said = new ProfileText();
    for (Map.Entry<String, String> one : EVERYTHING) {
      said.say(one.getKey(), one.getValue());
    }
    return said.options();
  }

  @Test
  void what_is_saved_is_what_is_read_again() throws Exception {
    String text = ProfileText.write(said());
    assertTrue(ProfileText.is(text));
    ProfileText again = new ProfileText();
    again.read(text);
    assertEquals(said(), again.options());
  }

  @Test
  void a_profile_has_a_remark_over_each_kind_of_thing_it_says() throws Exception {
    String text = ProfileText.write(said());
    assertTrue(
        text.contains("# how a table tells its wires\nlayout: Wires!A4!from-to\n"), () -> text);
    assertTrue(text.contains("column: D = Length (in)\n"), () -> text);
  }

  @Test
  void a_text_without_its_first_line_is_no_profile() {
    assertTrue(!ProfileText.is("Wire,From,To\n"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          layout: sideways   | line 2: "sideways": expected one of from-to, block
          rows: 40-5         | line 2: "40-5": expected two rows such as 5-40
          rows: 5            | line 2: "5": expected two rows such as 5-40
          heading-row: four  | line 2: "four": expected the number of a row
          column: D=Sky      | line 2: "D=Sky": expected HEADING=ROLE
          column: From Pin   | line 2: "From Pin": expected HEADING=ROLE
          length-unit: mile  | line 2: "mile": expected one of mm, cm, m, in, ft
          colour: red        | line 2: "colour" is nothing that a profile can say
          From Pin           | line 2: "From Pin" has no colon after its first word
          """)
  void a_line_that_can_t_be_understood_is_named(String line, String complaint) {
    ProfileText profile = new ProfileText();
    ProfileText.Unreadable thrown =
        assertThrows(
            ProfileText.Unreadable.class, () -> profile.read("profile: ringout 2\n" + line));
    assertTrue(
        String.valueOf(thrown.getMessage()).startsWith(complaint),
        () -> String.valueOf(thrown.getMessage()));
  }
}
