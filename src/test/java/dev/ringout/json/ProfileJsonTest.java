package dev.ringout.json;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.imports.list.ColumnChoice;
import dev.ringout.imports.list.ImportOptions;
import dev.ringout.imports.list.Units;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** A shop's way of writing lists, as it is kept. */
class ProfileJsonTest {
  private static String complaint(String text) {
    return String.valueOf(
        assertThrows(ProfileJson.Unreadable.class, () -> ProfileJson.read(text)).getMessage());
  }

  @Test
  void what_is_kept_is_what_is_read_again() throws Exception {
    ImportOptions said =
        new ImportOptions(
            Map.of("Fm Term", ColumnChoice.of("From Pin").orElseThrow()),
            Set.of("Net"),
            Set.of("X"),
            Set.of("GND"));
    assertEquals(said, ProfileJson.read(ProfileJson.write(said)));
  }

  @Test
  void a_length_keeps_its_unit() throws Exception {
    ImportOptions said =
        new ImportOptions(
            Map.of("Lg", ColumnChoice.of("Length (in)").orElseThrow()),
            Set.of(),
            Set.of(),
            Set.of());
    assertTrue(ProfileJson.write(said).contains("\"Lg\" : \"Length (in)\""));
    assertEquals(said, ProfileJson.read(ProfileJson.write(said)));
  }

  @Test
  void units_that_the_lists_leave_out_are_kept() throws Exception {
    ImportOptions said =
        new ImportOptions(
            Map.of(),
            Set.of(),
            Set.of(),
            Set.of(),
            new Units(Units.OfLength.of("in"), Units.OfGauge.of("mm²")),
            Map.of());
    assertTrue(ProfileJson.write(said).contains("\"gaugeUnit\" : \"mm2\""));
    assertEquals(said, ProfileJson.read(ProfileJson.write(said)));
    assertEquals(
        "\"miles\" is no lengthUnit",
        complaint("{\"format\": \"ringout-profile/1\", \"lengthUnit\": \"miles\"}"));
  }

  @Test
  void a_profile_that_says_little_is_one() throws Exception {
    assertEquals(ImportOptions.none(), ProfileJson.read("{\"format\": \"ringout-profile/1\"}"));
  }

  @Test
  void another_document_is_no_profile() {
    assertEquals(
        "is no profile: its format should be \"ringout-profile/1\"",
        complaint("{\"format\": \"ringout-check/1\"}"));
  }

  @Test
  void what_is_no_json_can_t_be_read() {
    assertTrue(complaint("Wire,From,To\n").startsWith("can't be read: "));
  }

  @Test
  void a_column_that_nothing_can_be_is_named() {
    assertEquals(
        "\"Colour of the sky\" is nothing that a column can be",
        complaint(
            "{\"format\": \"ringout-profile/1\", \"columns\": {\"A\": \"Colour of the sky\"}}"));
  }
}
