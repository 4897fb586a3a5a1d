package dev.ringout.store;

import dev.ringout.seal.Keys;
import java.security.GeneralSecurityException;
import java.security.PrivateKey;
import java.security.PublicKey;
import java.util.ArrayList;
import java.util.Base64;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Somebody's signature under all that was read of a unit: an Ed25519 signature of who signs as
 * what, of the last hash of each test before, and of the hash before it in its own.
 *
 * @param at when
 * @param key whose it is (DER, RFC 8410), in Base64
 * @param bytes the signature, in Base64
 * @param tests the unit's tests before, each with its last hash
 */
public record Signature(
    String who, String at, String role, String key, String bytes, Map<String, String> tests) {
  /** What is given can't be changed afterwards. */
  public Signature {
    tests = Collections.unmodifiableMap(new LinkedHashMap<>(tests));
  }

  /**
   * Signs.
   *
   * @param previous the hash of the entry before
   */
  public static Signature of(
      String who,
      String at,
      String role,
      Map<String, String> tests,
      String previous,
      PublicKey key,
      PrivateKey secret) {
    String own = Base64.getEncoder().encodeToString(key.getEncoded());
    byte[] bytes = Keys.sign(signed(who, at, role, own, tests, previous), secret);
    return new Signature(who, at, role, own, Base64.getEncoder().encodeToString(bytes), tests);
  }

  private static String signed(
      String who, String at, String role, String key, Map<String, String> tests, String previous) {
    List<String> lines = new ArrayList<>(List.of("ringout store", Fields.line(who, at, role, key)));
    tests.forEach((test, hash) -> lines.add(Fields.line(test, hash)));
    lines.add(previous);
    return String.join("\n", lines);
  }

  /** As the body of an entry. */
  public String body() {
    List<String> lines = new ArrayList<>(List.of(Fields.line(who, at, role, key, bytes)));
    tests.forEach((test, hash) -> lines.add(Fields.line(test, hash)));
    return String.join("\n", lines);
  }

  /** Of an entry's body; absent where it is none. */
  public static Optional<Signature> of(String body) {
    List<List<String>> lines = Fields.of(body);
    List<String> own = lines.get(0);
    Map<String, String> tests = new LinkedHashMap<>();
    for (List<String> line : lines.subList(1, lines.size())) {
      if (line.size() != 2) {
        return Optional.empty();
      }
      tests.put(line.get(0), line.get(1));
    }
    return own.size() == 5
        ? Optional.of(
            new Signature(own.get(0), own.get(1), own.get(2), own.get(3), own.get(4), tests))
        : Optional.empty();
  }

  /** Whether it is by its key, and of what stands before it. */
  boolean isOf(String previous) {
    try {
      PublicKey by = Keys.publicKey(Base64.getDecoder().decode(key));
      return Keys.verify(
          signed(who, at, role, key, tests, previous), Base64.getDecoder().decode(bytes), by);
    } catch (GeneralSecurityException | IllegalArgumentException e) {
      return false;
    }
  }

  /** By what its key is known; empty where it is none. */
  public String fingerprint() {
    try {
      return Keys.fingerprint(Keys.publicKey(Base64.getDecoder().decode(key)));
    } catch (GeneralSecurityException | IllegalArgumentException e) {
      return "";
    }
  }
}
