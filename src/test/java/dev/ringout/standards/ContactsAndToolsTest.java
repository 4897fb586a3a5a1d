package dev.ringout.standards;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.standards.ContactSizes.ContactSize;
import dev.ringout.units.Gauge;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Crimp contacts, what wire they take, and how the tool is set for them. */
class ContactsAndToolsTest {
  private final CopperWire copper = CopperWire.published();
  private final ContactSizes sizes = ContactSizes.published(copper);
  private final CrimpTools tools = CrimpTools.of(Tables.published());

  private ContactSize size(String name) {
    return sizes.find(name).orElseThrow();
  }

  /** Source: SAE AS39029/58 and /56: 360 and 348 are size 22D, 363 and 351 size 20. */
  @ParameterizedTest
  @CsvSource({
    "M39029/58-360, 22D, true",
    "AS39029/56-348, 22D, false",
    "m39029/58-363, 20, true",
    "M39029/56-351, 20, false"
  })
  void a_contact_is_known_by_its_part_number_in_either_spelling(
      String part, String size, boolean pin) {
    assertEquals(size, size(part).size());
    assertEquals(pin, size(part).isPin(part));
    assertEquals(!pin, size(part).isSocket(part));
  }

  /** Source: contact tables of MIL-DTL-38999 connectors: size 20 takes AWG 24 to 20. */
  @Test
  void a_contact_takes_its_gauges_and_no_other() {
    assertEquals(Optional.of(true), sizes.takes(size("20"), new Gauge.Awg(24)));
    assertEquals(Optional.of(true), sizes.takes(size("20"), new Gauge.Awg(20)));
    assertEquals(Optional.of(false), sizes.takes(size("20"), new Gauge.Awg(18)));
  }

  @Test
  void a_range_from_memory_says_so_where_it_is_cited() {
    assertTrue(size("22M").citation().endsWith("wire range from memory"));
    assertFalse(size("22D").citation().contains("memory"));
  }

  /**
   * Source: data plate of the M22520/1-01 tool: selector 3 for AWG 22; 4 for AWG 20 from memory.
   */
  @Test
  void the_tool_is_set_by_the_wire_and_a_setting_from_memory_is_marked() {
    CrimpTools.Setting seen = tools.find("", size("20"), "22").orElseThrow();
    assertEquals("3", seen.selector());
    CrimpTools.Setting remembered = tools.find("", size("20"), "20").orElseThrow();
    assertEquals("4", remembered.selector());
    assertTrue(remembered.fromMemory());
  }

  /** Source: MIL-DTL-28827C 3.16: a new switch's closed contact has at most 0.1 Ω. */
  @Test
  void a_new_switch_s_closed_contact_has_a_tenth_of_an_ohm_at_most() {
    assertEquals(0.1, SwitchContacts.mostOhmsWhenNew());
  }
}
