package dev.ringout.seal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What tells whether a file is the one that was sealed. */
class DigestTest {
  @TempDir Path folder;

  /** The example of FIPS 180-2, appendix B.1, and the message of no bits that NIST tests with. */
  @Test
  void it_is_sha_256_as_published() {
    assertEquals(
        "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad", Digest.of("abc"));
    assertEquals("e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855", Digest.of(""));
  }

  @Test
  void one_byte_changed_added_or_taken_makes_another() throws IOException {
    Path file = folder.resolve("point-to-point.csv");
    Files.writeString(file, "From,To,Reading\nJ1-A,P2-1,0.2\n");
    String sealed = Digest.of(file);
    for (String changed :
        List.of(
            "From,To,Reading\nJ1-A,P2-1,0.3\n",
            "From,To,Reading\nJ1-A,P2-1,0.2\n\n",
            "From,To,Reading\nJ1-A,P2-1,0.2")) {
      Files.writeString(file, changed);
      assertNotEquals(sealed, Digest.of(file), changed);
    }
  }

  @Test
  void a_file_and_its_text_have_one_digest() throws IOException {
    Path file = folder.resolve("note.txt");
    Files.writeString(file, "0.2 Ω");
    assertEquals(Digest.of("0.2 Ω"), Digest.of(file));
  }
}
