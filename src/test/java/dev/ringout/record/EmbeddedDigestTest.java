package dev.ringout.record;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The digest that a page shows of itself; RecordFormsTest of the sheets reads it from every form.
 */
class EmbeddedDigestTest {
  private static final String DIGEST = "0123456789abcdef".repeat(4);
  private static final String OTHER = "f".repeat(64);

  @TempDir Path folder;

  private Optional<String> shownBy(String text) throws IOException {
    Path page = folder.resolve("record.html");
    Files.writeString(page, text);
    return EmbeddedDigest.of(page);
  }

  @Test
  void it_is_read_from_a_page() throws IOException {
    assertEquals(Optional.of(DIGEST), shownBy("<p>Content digest " + DIGEST + "</p>"));
  }

  @Test
  void it_may_be_broken_into_lines() throws IOException {
    String broken = DIGEST.substring(0, 40) + "\n" + DIGEST.substring(40);
    assertEquals(Optional.of(DIGEST), shownBy("Content digest\n" + broken + "\n"));
  }

  @Test
  void the_last_one_counts_a_note_may_quote_another() throws IOException {
    assertEquals(
        Optional.of(DIGEST),
        shownBy("<p>Content digest " + OTHER + "</p><p>Content digest " + DIGEST + "</p>"));
  }

  @Test
  void a_page_without_a_whole_digest_shows_none() throws IOException {
    assertEquals(Optional.empty(), shownBy("<p>no digest</p>"));
    assertEquals(Optional.empty(), shownBy("<p>Content digest " + DIGEST.substring(1) + "</p>"));
  }
}
