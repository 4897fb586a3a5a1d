package dev.ringout.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.seal.SealFinding;
import dev.ringout.seal.SealFinding.Kind;
import dev.ringout.seal.SealFinding.State;
import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What somebody who verifies a record is told. */
class SealSentencesTest {
  private static String sentence(Kind kind) {
    return SealSentences.sentence(new SealFinding(kind, "box.xlsx", "no such disk"));
  }

  @ParameterizedTest
  @EnumSource(Kind.class)
  void every_finding_has_a_sentence_of_its_own(Kind kind) {
    assertFalse(sentence(kind).isBlank());
    assertEquals(
        1,
        Arrays.stream(Kind.values()).filter(one -> sentence(one).equals(sentence(kind))).count(),
        sentence(kind));
  }

  @ParameterizedTest
  @EnumSource(Kind.class)
  void what_is_of_a_file_names_the_file(Kind kind) {
    boolean ofFile = kind.name().matches("(RECORD|INPUT|KEPT|EARLIER)_.*");
    assertTrue(!ofFile || sentence(kind).contains("box.xlsx"), sentence(kind));
  }

  @Test
  void what_is_as_sealed_is_named_without_a_complaint() {
    assertEquals("record box.xlsx", sentence(Kind.RECORD_SAME));
    assertEquals("content digest", sentence(Kind.DIGEST_SAME));
    assertEquals(State.AS_SEALED, SealFinding.of(Kind.RECORD_SAME, "").state());
  }

  @Test
  void what_is_other_than_sealed_differs_and_what_can_t_be_looked_at_is_not_shown() {
    for (Kind kind : Kind.values()) {
      State state = SealFinding.of(kind, "").state();
      if (kind.name().endsWith("_OTHER_BYTES")) {
        assertEquals(State.DIFFERS, state, kind.name());
      }
      if (kind.name().matches("(INPUT|EARLIER)_(MISSING|UNREADABLE)|KEPT_NO(T_FOUND|_SUCH_.*)")) {
        assertEquals(State.NOT_SHOWN, state, kind.name());
      }
      if (kind.name().endsWith("_SAME")) {
        assertEquals(State.AS_SEALED, state, kind.name());
      }
    }
  }

  @Test
  void a_missing_signature_differs_only_where_a_key_is_trusted() {
    assertEquals(State.DIFFERS, SealFinding.of(Kind.SIGNATURE_MISSING, "").state());
    assertEquals(State.NOT_SHOWN, SealFinding.of(Kind.NOT_SIGNED, "").state());
  }

  @Test
  void the_verdict_is_the_worst_of_all() {
    assertEquals("NOT AS SEALED.", SealSentences.verdict(true, true));
    assertEquals("NOT AS SEALED.", SealSentences.verdict(true, false));
    assertTrue(SealSentences.verdict(false, true).startsWith("Nothing differs, but"));
    assertTrue(SealSentences.verdict(false, false).startsWith("As sealed"));
  }
}
