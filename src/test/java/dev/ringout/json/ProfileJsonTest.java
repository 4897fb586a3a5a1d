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
  void an_older_profile_is_still_read() throws Exception {
    ImportOptions said =
        ProfileJson.read(
            "{\"format\": \"ringout-profile/1\", \"columns\": {\"Lg\": \"Length (in)\"},"
                + " \"joinBy\": [\"Net\"], \"marks\": [\"X\"], \"onePoint\": [\"GND\"],"
                + " \"gaugeUnit\": \"mm2\"}");
    assertEquals(Map.of("Lg", ColumnChoice.of("Length (in)").orElseThrow()), said.columns());
    assertEquals(Set.of("Net"), said.joinBy());
    assertEquals(Set.of("X"), said.marks());
    assertEquals(Set.of("GND"), said.onePoint());
    assertEquals(Units.OfGauge.of("mm2"), said.units().gauge());
    assertEquals(
        "\"miles\" is not a lengthUnit",
        complaint("{\"format\": \"ringout-profile/1\", \"lengthUnit\": \"miles\"}"));
  }

  @Test
  void a_profile_that_says_little_is_one() throws Exception {
    assertEquals(ImportOptions.none(), ProfileJson.read("{\"format\": \"ringout-profile/1\"}"));
  }

  @Test
  void another_document_is_no_profile() {
    assertEquals(
        "is not a profile: its format should be \"ringout-profile/1\"",
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
