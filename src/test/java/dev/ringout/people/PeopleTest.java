package dev.ringout.people;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.people.People.Refusal;
import dev.ringout.store.Entry;
import dev.ringout.store.SaidOfPeople;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The people of a shop, as what was said of them leaves them. */
class PeopleTest {
  private static final String AT = "2026-11-30T10:00:00Z";

  private final List<Entry> said = new ArrayList<>();

  private People people() {
    return People.of(said);
  }

  private void say(List<SaidOfPeople> more) {
    for (SaidOfPeople one : more) {
      said.add(
          new Entry(said.size() + 1, one.at(), one.who(), one.kind().word(), one.body(), "", ""));
    }
  }

  private void add(String name, Role... roles) throws Refusal {
    say(people().added(name, EnumSet.copyOf(List.of(roles)), "kept of " + name, "X. Young", AT));
  }

  private void shop() throws Refusal {
    add("Maren Lindqvist", Role.ADMINISTRATOR, Role.LEAD);
    add("Rotimi Adeyemi", Role.TESTER);
  }

  @Test
  void the_first_is_an_administrator() throws Refusal {
    assertThrows(Refusal.class, () -> add("Rotimi Adeyemi", Role.TESTER));
    assertFalse(people().canSignIn());
    shop();
    assertTrue(people().canSignIn());
  }

  @Test
  void a_person_is_found_however_the_name_is_typed_and_no_other_is() throws Refusal {
    shop();
    assertEquals("Rotimi Adeyemi", people().named(" rotimi  ADEYEMI ").orElseThrow().name());
    assertTrue(people().named("R. Adeyemi").isEmpty());
    assertTrue(people().named("").isEmpty());
  }

  /** Who tested and who inspects are told apart by name: no two names may be one person's. */
  @ParameterizedTest
  @ValueSource(strings = {"Rotimi Adeyemi", "R. Adeyemi", "adeyemi, rotimi", "RA", "Rotimi A."})
  void a_name_that_may_be_another_s_is_nobody_s(String name) throws Refusal {
    shop();
    assertThrows(Refusal.class, () -> add(name, Role.INSPECTOR));
    say(people().withdrawn("Rotimi Adeyemi", "left", "X. Young", AT));
    assertThrows(Refusal.class, () -> add(name, Role.INSPECTOR), "for ever");
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "none", "inspector", "A\u200bda", "A\tB"})
  void what_names_nobody_is_no_name(String name) {
    assertThrows(Refusal.class, () -> add(name, Role.ADMINISTRATOR));
  }

  @Test
  void the_last_administrator_can_t_lock_himself_out() throws Refusal {
    shop();
    assertThrows(
        Refusal.class,
        () -> people().roles("Maren Lindqvist", Set.of(Role.LEAD), "Maren Lindqvist", AT));
    assertThrows(
        Refusal.class, () -> people().withdrawn("Maren Lindqvist", "left", "Maren Lindqvist", AT));
    add("Katarina Novak", Role.ADMINISTRATOR);
    say(people().withdrawn("Maren Lindqvist", "left", "Katarina Novak", AT));
    assertFalse(people().named("Maren Lindqvist").orElseThrow().isIn());
    assertThrows(
        Refusal.class, () -> people().withdrawn("Katarina Novak", "left", "Katarina Novak", AT));
  }

  @Test
  void roles_and_passphrase_are_those_that_were_said_last() throws Refusal {
    shop();
    int before = people().named("Rotimi Adeyemi").orElseThrow().since();
    say(people().roles("Rotimi Adeyemi", Set.of(Role.INSPECTOR), "Maren Lindqvist", AT));
    assertEquals(before, people().named("Rotimi Adeyemi").orElseThrow().since());
    say(people().passphrase("Rotimi Adeyemi", "another", "Maren Lindqvist", AT));
    Member now = people().named("Rotimi Adeyemi").orElseThrow();
    assertEquals(Set.of(Role.INSPECTOR), now.roles());
    assertEquals("another", now.kept());
    assertTrue(now.since() > before, "who came in with the one before is out");
    say(people().outEverywhere("Rotimi Adeyemi", "Rotimi Adeyemi", AT));
    assertTrue(people().named("Rotimi Adeyemi").orElseThrow().since() > now.since());
  }

  @Test
  void who_is_withdrawn_is_out_and_stays_with_what_he_did() throws Refusal {
    shop();
    assertThrows(
        Refusal.class, () -> people().withdrawn("Rotimi Adeyemi", " ", "Maren Lindqvist", AT));
    say(people().withdrawn("Rotimi Adeyemi", "left the shop", "Maren Lindqvist", AT));
    Member gone = people().named("Rotimi Adeyemi").orElseThrow();
    assertFalse(gone.isIn());
    assertFalse(gone.may(Act.LOOK));
    assertEquals("left the shop", gone.withdrawn());
    assertThrows(
        Refusal.class,
        () -> people().passphrase("Rotimi Adeyemi", "another", "Rotimi Adeyemi", AT));
  }

  /** What a role may not do is said here once more, by hand. */
  @Test
  void nobody_may_do_what_his_work_does_not_ask_for() {
    assertFalse(Act.TEST.isFor(Set.of(Role.INSPECTOR, Role.ENGINEER, Role.ADMINISTRATOR)));
    assertFalse(Act.LIST.isFor(Set.of(Role.TESTER, Role.INSPECTOR, Role.ADMINISTRATOR)));
    assertFalse(Act.SIGN.isFor(Set.of(Role.ADMINISTRATOR)));
    assertFalse(Act.PEOPLE.isFor(Set.of(Role.TESTER, Role.INSPECTOR, Role.ENGINEER, Role.LEAD)));
    assertFalse(Act.LOOK.isFor(Set.of()));
    for (Role role : Role.values()) {
      assertTrue(Act.LOOK.isFor(Set.of(role)), role.word());
    }
  }
}
