package dev.ringout.readings;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Nobody inspects what he measured himself, however he writes his name. */
class PersonTest {
  /** Found by two attackers. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "r adeyemi",
        "Adeyemi, R.",
        "Adeyemi",
        "RA",
        "R.A.",
        "Mr. Adeyemi",
        "Mrs Adeyemi",
        "Dr. Adeyemi",
        "Ing. R. Adeyemi",
        "Insp. Adeyemi",
        "Rotimi A.",
        "R.",
        "AdeyemiR",
        "R. Adeyemi1",
        "R. Adeyemi 2",
        "R. Adeyem\u0131",
        "\u202eimeyedA .R",
        "R. Adeyemi\u3164",
        "\u0280. Adeyemi",
        "R. \u2c6ddeyemi",
        "Rotimi Adeyemi"
      })
  void who_may_be_the_tester_is_taken_for_him(String name) {
    assertTrue(Person.isSame("R. Adeyemi", name), name);
    assertTrue(Person.isSame(name, "R. Adeyemi"), name);
  }

  @ParameterizedTest
  @CsvSource({
    "R. Adeyemi, M. Lindqvist",
    "R. Adeyemi, K. Novak",
    "R. Adeyemi, R. Berg",
    "R. Adeyemi, Dr. Novak",
    "4711, 4712",
    "K. Novak, K. Nowak",
    "Jan de Vries, Jan de Boer"
  })
  void two_people_are_two(String one, String other) {
    assertFalse(Person.isSame(one, other));
    assertFalse(Person.isSame(other, one));
  }

  @ParameterizedTest
  @ValueSource(strings = {"", " ", "n/a", "-", "inspector", "same as tester", "xxx"})
  void nobody_is_named(String cell) {
    assertFalse(Person.isNamed(cell));
  }

  /** Found by an attacker: one letter of another script made the tester his own inspector. */
  @Test
  void a_word_of_two_scripts_is_nobodys_name() {
    assertFalse(Person.isNamed("R. Ad\u0435yemi"));
    assertTrue(Person.isNamed("\u0410\u0434\u0435\u044f"));
  }
}
