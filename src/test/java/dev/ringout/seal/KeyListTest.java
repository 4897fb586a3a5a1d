package dev.ringout.seal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.seal.KeyList.Listed;
import dev.ringout.seal.KeyList.Standing;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Whose keys a shop knows, and when a signature by each counts. */
class KeyListTest {
  private static final String PRINT = "0123 4567 89ab cdef 0123 4567 89ab cdef";

  private static final Listed WITHDRAWN =
      new Listed(
          "Katarina Novak",
          PRINT,
          Instant.parse("2026-11-01T08:00:00Z"),
          Optional.of(LocalDate.of(2026, 12, 31)),
          Optional.of(Instant.parse("2026-12-01T10:00:00Z")),
          "tablet lost");

  private static final Listed IN_USE =
      new Listed(
          "Katarina Novak", PRINT, WITHDRAWN.from(), WITHDRAWN.until(), Optional.empty(), "");

  private static Optional<Instant> at(String time) {
    return Optional.ofNullable(time).map(Instant::parse);
  }

  @ParameterizedTest
  @CsvSource({
    "2026-11-01T07:59:59Z, EARLY",
    "2026-11-01T08:00:00Z, GOOD",
    "2026-12-31T23:59:59Z, GOOD",
    "2027-01-01T00:00:00Z, LATE",
    ", NO_TIME"
  })
  void a_signature_counts_from_the_first_moment_to_the_end_of_the_last_day(
      String signed, Standing standing) {
    assertEquals(standing, IN_USE.at(at(signed)));
  }

  @ParameterizedTest
  @CsvSource({
    "2026-11-01T07:59:59Z, EARLY",
    "2026-12-01T09:59:59Z, GOOD_AT_ITS_TIME",
    "2026-12-01T10:00:00Z, WITHDRAWN",
    "2027-06-01T00:00:00Z, WITHDRAWN",
    ", NO_TIME"
  })
  void after_its_withdrawal_none_counts_and_one_before_was_good_at_its_time(
      String signed, Standing standing) {
    assertEquals(standing, WITHDRAWN.at(at(signed)));
  }

  @Test
  void what_is_written_is_read_the_same() throws Exception {
    KeyList list = new KeyList(List.of(WITHDRAWN));
    assertEquals(
        "ringout-keys/1\nkey\tKatarina Novak\t"
            + PRINT
            + "\t2026-11-01T08:00:00Z\t2026-12-31\t2026-12-01T10:00:00Z\ttablet lost\n",
        list.text());
    assertEquals(list, KeyList.read(list.text()));
    assertEquals(list, KeyList.read(list.text().replace("\n", "\r\n")), "kept by an editor");
  }

  @Test
  void a_word_of_two_lines_can_t_become_a_key_of_its_own() throws Exception {
    Listed sly =
        new Listed(
            "Katarina Novak",
            PRINT,
            WITHDRAWN.from(),
            Optional.empty(),
            WITHDRAWN.withdrawn(),
            "lost\nkey\tA. Nother\t" + PRINT.replace('0', '1'));
    assertEquals(1, KeyList.read(new KeyList(List.of(sly)).text()).keys().size());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "ringout-seal/1\n",
        "ringout-keys/1",
        "ringout-keys/1\nkey\tK\t" + PRINT + "\t2026-11-01T08:00:00Z\t\t\t",
        "ringout-keys/1\nkey\tK\t" + PRINT + "\t2026-11-01\t\t\t\n",
        "ringout-keys/1\nkey\tK\t" + PRINT + "\t2026-11-01T08:00:00Z\t\tyesterday\tlost\n",
        "ringout-keys/1\nkey\tK\t0123\t2026-11-01T08:00:00Z\t\t\t\n",
        "ringout-keys/1\nkey\tK\t" + PRINT + "\t2026-11-01T08:00:00Z\t\t\n"
      })
  void half_a_list_is_none(String text) {
    assertThrows(KeyList.Unusable.class, () -> KeyList.read(text));
  }

  @Test
  void a_key_that_stands_twice_is_refused_for_one_line_may_take_back_what_the_other_withdrew() {
    String twice =
        new KeyList(List.of(WITHDRAWN)).text()
            + new KeyList(List.of(IN_USE)).text().substring("ringout-keys/1\n".length());
    KeyList.Unusable refused = assertThrows(KeyList.Unusable.class, () -> KeyList.read(twice));
    assertTrue(String.valueOf(refused.getMessage()).contains("line 3"), refused.getMessage());
  }
}
