package dev.ringout.seal;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.security.KeyPair;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Who sealed a record. */
class KeysTest {
  private static final String TEXT = "ringout-seal/1\nverdict\tconforms\n";

  @TempDir Path folder;

  private Path written(KeyPair pair) throws Exception {
    Path key = folder.resolve("key");
    Files.writeString(key, Keys.pem(pair.getPrivate()));
    Files.writeString(folder.resolve("key.pub"), Keys.pem(pair.getPublic()));
    return key;
  }

  @Test
  void what_a_key_signs_its_public_half_verifies() {
    KeyPair pair = Keys.create();
    assertTrue(Keys.verify(TEXT, Keys.sign(TEXT, pair.getPrivate()), pair.getPublic()));
  }

  @Test
  void a_signature_is_of_one_text_and_by_one_key() {
    KeyPair pair = Keys.create();
    byte[] signature = Keys.sign(TEXT, pair.getPrivate());
    assertFalse(Keys.verify(TEXT + " ", signature, pair.getPublic()), "another text");
    assertFalse(Keys.verify(TEXT, signature, Keys.create().getPublic()), "another key");
    signature[0] ^= 1;
    assertFalse(Keys.verify(TEXT, signature, pair.getPublic()), "a changed signature");
    assertFalse(Keys.verify(TEXT, new byte[0], pair.getPublic()), "no signature");
  }

  @Test
  void a_key_is_read_back_from_its_files() throws Exception {
    KeyPair pair = Keys.create();
    KeyPair read = Keys.pair(written(pair));
    assertTrue(Keys.verify(TEXT, Keys.sign(TEXT, read.getPrivate()), pair.getPublic()));
    assertArrayEquals(pair.getPublic().getEncoded(), read.getPublic().getEncoded());
  }

  @Test
  void a_file_that_holds_no_key_is_refused_by_its_name() throws Exception {
    Path key = written(Keys.create());
    Path publicKey = folder.resolve("key.pub");
    Files.writeString(publicKey, "not a key\n");
    Keys.Unusable noKey = assertThrows(Keys.Unusable.class, () -> Keys.pair(key));
    assertEquals(publicKey + " has no part \"-----BEGIN PUBLIC KEY-----\"", noKey.getMessage());
    Files.writeString(publicKey, "-----BEGIN PUBLIC KEY-----\nAAAA\n-----END PUBLIC KEY-----\n");
    Keys.Unusable other = assertThrows(Keys.Unusable.class, () -> Keys.publicKey(publicKey));
    assertEquals(publicKey + " holds no Ed25519 public key", other.getMessage());
  }

  @Test
  void a_fingerprint_can_be_read_aloud_and_is_one_key_s_alone() {
    KeyPair pair = Keys.create();
    String fingerprint = Keys.fingerprint(pair.getPublic());
    assertTrue(fingerprint.matches("([0-9a-f]{4} ){7}[0-9a-f]{4}"), fingerprint);
    assertNotEquals(fingerprint, Keys.fingerprint(Keys.create().getPublic()));
  }
}
