package dev.ringout.people;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.people.People.Refusal;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.Optional;
import org.bouncycastle.crypto.generators.Argon2BytesGenerator;
import org.bouncycastle.crypto.params.Argon2Parameters;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is kept of a passphrase. */
class PassphrasesTest {
  private static final String GOOD = "four lamps on a bridge";

  private final Passphrases passphrases = new Passphrases();

  private static byte[] times(int count, int value) {
    byte[] bytes = new byte[count];
    Arrays.fill(bytes, (byte) value);
    return bytes;
  }

  /** The vector of RFC 9106, 5.3, from memory. */
  @Test
  void the_library_reckons_as_the_standard_does() {
    Argon2BytesGenerator generator = new Argon2BytesGenerator();
    generator.init(
        new Argon2Parameters.Builder(Argon2Parameters.ARGON2_id)
            .withVersion(Argon2Parameters.ARGON2_VERSION_13)
            .withMemoryAsKB(32)
            .withIterations(3)
            .withParallelism(4)
            .withSalt(times(16, 2))
            .withSecret(times(8, 3))
            .withAdditional(times(12, 4))
            .build());
    byte[] tag = new byte[32];
    generator.generateBytes(times(32, 1), tag);
    assertEquals(
        "0d640df58d78766c08c037a34a8b53c9d01ef0452d75b65eb52520e96b01e659",
        HexFormat.of().formatHex(tag));
  }

  @Test
  void what_is_kept_tells_the_passphrase_from_any_other_and_is_itself_none() {
    String kept = passphrases.kept(GOOD);
    assertTrue(kept.startsWith("$argon2id$v=19$m=65536,t=3,p=4$"), kept);
    assertTrue(passphrases.isOf(Optional.of(kept), GOOD));
    assertFalse(passphrases.isOf(Optional.of(kept), GOOD + " "));
    assertFalse(passphrases.isOf(Optional.of(kept), kept));
    assertNotEquals(kept, passphrases.kept(GOOD), "two people may have the same");
  }

  /** A case of the tests of the algorithm's reference implementation, from memory. */
  @Test
  void what_another_program_has_kept_is_understood() {
    assertTrue(
        passphrases.isOf(
            Optional.of(
                "$argon2id$v=19$m=256,t=2,p=1$c29tZXNhbHQ$nf65EOgLrQMR/uIPnA4rEsF5h7TKyQwu9U1bMCHGi/4"),
            "password"));
  }

  @Test
  void nobody_has_a_passphrase_and_what_was_damaged_is_none() {
    assertFalse(passphrases.isOf(Optional.empty(), GOOD));
    assertFalse(passphrases.isOf(Optional.of(""), GOOD));
    assertFalse(passphrases.isOf(Optional.of("$argon2id$v=19$m=1,t=1,p=1$x$y"), GOOD));
  }

  @Test
  void a_letter_is_the_same_however_a_keyboard_composes_it() {
    String kept = passphrases.kept("Brücke über den Fluss");
    assertTrue(passphrases.isOf(Optional.of(kept), "Bru\u0308cke u\u0308ber den Fluss"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "eleven long", "aaaaaaaaaaaaaaaa", "121212121212", "maren lindqvist"})
  void what_is_short_or_easily_guessed_is_none(String passphrase) {
    assertThrows(Refusal.class, () -> Passphrases.require(passphrase, "Maren Lindqvist"));
  }

  @Test
  void some_words_are_one() {
    assertDoesNotThrow(() -> Passphrases.require(GOOD, "Maren Lindqvist"));
  }
}
