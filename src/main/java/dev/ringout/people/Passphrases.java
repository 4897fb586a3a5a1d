package dev.ringout.people;

import dev.ringout.people.People.Refusal;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.text.Normalizer;
import java.util.Arrays;
import java.util.Base64;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.bouncycastle.crypto.generators.Argon2BytesGenerator;
import org.bouncycastle.crypto.params.Argon2Parameters;

/**
 * What is kept of a passphrase, and whether another is the same: Argon2id (RFC 9106) with the
 * memory, passes and lanes that its chapter 4 recommends where memory is short. One after the
 * other: who sends many takes the time of the others who sign in, and not the machine's memory.
 */
public final class Passphrases {
  private static final int MEMORY_KIB = 64 * 1024;
  private static final int PASSES = 3;
  private static final int LANES = 4;
  private static final int SALT_BYTES = 16;
  private static final int TAG_BYTES = 32;

  /**
   * NIST SP 800-63B asks for 8 where a second thing is asked for, and else for more; from memory.
   */
  private static final int SHORTEST = 12;

  private static final int LONGEST = 200;
  private static final int LEAST_DIFFERENT = 5;

  private static final Pattern KEPT =
      Pattern.compile(
          "\\$argon2id\\$v=19\\$m=(\\d{1,7}),t=(\\d{1,2}),p=(\\d{1,2})"
              + "\\$([A-Za-z0-9+/]{11,86})\\$([A-Za-z0-9+/]{22,86})");

  /** Kept of nobody: who has no name takes the same time. */
  private static final String NOBODY = written(new byte[SALT_BYTES], new byte[TAG_BYTES]);

  private final SecureRandom random;

  /** Salts come from the system's own source. */
  public Passphrases() {
    this.random = new SecureRandom();
  }

  /**
   * Whether a passphrase can be one.
   *
   * @param name of the person
   * @throws Refusal where it is too short, or easily guessed
   */
  public static void require(String passphrase, String name) throws Refusal {
    String plain = plain(passphrase);
    int length = plain.codePointCount(0, plain.length());
    if (length < SHORTEST || length > LONGEST) {
      throw new Refusal(
          "a passphrase has " + SHORTEST + " to " + LONGEST + " letters: some words do");
    }
    String bare = bare(plain);
    if (bare.codePoints().distinct().count() < LEAST_DIFFERENT || bare.equals(bare(name))) {
      throw new Refusal(
          "a passphrase is not the name, and has "
              + LEAST_DIFFERENT
              + " different letters or more");
    }
  }

  private static String bare(String text) {
    return text.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]+", "");
  }

  /** What is kept of one, in the form that other tools have for it. */
  public synchronized String kept(String passphrase) {
    byte[] salt = new byte[SALT_BYTES];
    random.nextBytes(salt);
    return written(salt, tag(passphrase, salt, MEMORY_KIB, PASSES, LANES, TAG_BYTES));
  }

  private static String written(byte[] salt, byte[] tag) {
    Base64.Encoder base64 = Base64.getEncoder().withoutPadding();
    return "$argon2id$v=19$m="
        + MEMORY_KIB
        + ",t="
        + PASSES
        + ",p="
        + LANES
        + "$"
        + base64.encodeToString(salt)
        + "$"
        + base64.encodeToString(tag);
  }

  /**
   * Whether a passphrase is the one of which this is kept. It is reckoned through in any case: of
   * nobody as of somebody.
   *
   * @param kept absent where there is nobody
   */
  public synchronized boolean isOf(Optional<String> kept, String passphrase) {
    Matcher known = KEPT.matcher(kept.orElse(NOBODY));
    if (!known.matches()) {
      return false;
    }
    byte[] tag = Base64.getDecoder().decode(known.group(5));
    byte[] same =
        tag(
            passphrase.length() > LONGEST ? "" : passphrase,
            Base64.getDecoder().decode(known.group(4)),
            Math.min(number(known, 1), 16 * MEMORY_KIB),
            Math.max(1, number(known, 2)),
            Math.max(1, number(known, 3)),
            tag.length);
    return MessageDigest.isEqual(tag, same) && kept.isPresent();
  }

  private static int number(Matcher in, int group) {
    return Integer.parseInt(in.group(group));
  }

  /** One keyboard composes a letter where another has it (NFKC, as RFC 8265 has it). */
  private static String plain(String passphrase) {
    return Normalizer.normalize(passphrase, Normalizer.Form.NFKC);
  }

  private static byte[] tag(
      String passphrase, byte[] salt, int memoryKib, int passes, int lanes, int length) {
    Argon2BytesGenerator generator = new Argon2BytesGenerator();
    generator.init(
        new Argon2Parameters.Builder(Argon2Parameters.ARGON2_id)
            .withVersion(Argon2Parameters.ARGON2_VERSION_13)
            .withMemoryAsKB(memoryKib)
            .withIterations(passes)
            .withParallelism(lanes)
            .withSalt(salt)
            .build());
    byte[] secret = plain(passphrase).getBytes(StandardCharsets.UTF_8);
    byte[] tag = new byte[length];
    generator.generateBytes(secret, tag);
    Arrays.fill(secret, (byte) 0);
    return tag;
  }
}
