package dev.ringout.imports.kbl;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.source.UnusableInput;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a harness file may do to the program that reads it: nothing. */
class KblXmlTest {
  private static final Path SWING_BRIDGE = Path.of("src/test/resources/kbl/swing-bridge.kbl");

  @TempDir Path folder;

  private Path file(String name, String text) throws IOException {
    return Files.writeString(folder.resolve(name), text);
  }

  private String refusal(String text) throws IOException {
    Path file = file("unit.kbl", text);
    assertTrue(KblImporter.is(file));
    return assertTimeoutPreemptively(
        Duration.ofSeconds(20),
        () ->
            assertThrows(UnusableInput.class, () -> KblImporter.read(file, "unit.kbl", Set.of()))
                .text());
  }

  @Test
  void entities_that_grow_are_not_read() throws Exception {
    StringBuilder text = new StringBuilder("<!DOCTYPE KBL_container [<!ENTITY a0 \"ha\">");
    for (int i = 1; i < 60; i++) {
      text.append("<!ENTITY a").append(i).append(" \"");
      text.append("&a").append(i - 1).append(";&a").append(i - 1).append(";\">");
    }
    text.append("]><KBL_container><Harness>&a59;</Harness></KBL_container>");
    assertTrue(refusal(text.toString()).contains("DTD"));
  }

  @Test
  void no_other_file_is_looked_into() throws Exception {
    Path secret = file("secret.txt", "SECRET");
    String refused =
        refusal(
            "<!DOCTYPE KBL_container [<!ENTITY x SYSTEM \""
                + secret.toUri()
                + "\">]><KBL_container><Harness><Part_number>&x;</Part_number></Harness>"
                + "</KBL_container>");
    assertFalse(refused.contains("SECRET"), refused);
    assertTrue(
        refusal("<!DOCTYPE KBL_container SYSTEM \"http://localhost:9/x.dtd\"><KBL_container/>")
            .contains("DTD"));
    assertTrue(refusal("<KBL_container><Harness>&x;</Harness></KBL_container>").length() > 10);
  }

  @ParameterizedTest
  @ValueSource(strings = {"Harness", "Segment"})
  void elements_in_each_other_without_end_are_not_read(String name) throws Exception {
    String text =
        "<KBL_container>"
            + ("<" + name + ">").repeat(100_000)
            + ("</" + name + ">").repeat(100_000)
            + "</KBL_container>";
    assertTrue(refusal(text).contains("deep"), "deep");
  }

  @Test
  void a_file_that_ends_too_early_is_damaged_and_no_part_of_it_is_a_harness() throws Exception {
    String text = Files.readString(SWING_BRIDGE);
    for (int length : new int[] {text.length() / 2, text.length() * 3 / 4, text.length() - 20}) {
      String refused = refusal(text.substring(0, length));
      assertTrue(refused.startsWith("is damaged XML in line "), refused);
    }
  }

  @Test
  void other_xml_is_refused_by_its_outermost_element() throws Exception {
    assertTrue(
        refusal("<?xml version=\"1.0\"?><Shopping/>")
            .contains("its outermost element is Shopping, not KBL_container"));
  }

  /** A file that says UTF-8 and was saved otherwise would have other names. */
  @Test
  void letters_that_do_not_fit_the_encoding_are_not_guessed() throws Exception {
    String text = Files.readString(SWING_BRIDGE).replace("Panel", "Schaltpult \u00fc");
    Path file = folder.resolve("unit.kbl");
    PrintStream before = System.err;
    ByteArrayOutputStream printed = new ByteArrayOutputStream();
    System.setErr(new PrintStream(printed, true, StandardCharsets.UTF_8));
    try {
      Files.write(file, text.getBytes(StandardCharsets.ISO_8859_1));
      assertTrue(KblImporter.is(file));
      String refused =
          assertThrows(UnusableInput.class, () -> KblImporter.read(file, "unit.kbl", Set.of()))
              .text();
      assertTrue(refused.contains("encoding"), refused);
      Files.write(file, text.replace("UTF-8", "ISO-8859-1").getBytes(StandardCharsets.ISO_8859_1));
      assertEquals(
          "Schaltpult \u00fc",
          KblImporter.read(file, "unit.kbl", Set.of()).wiring().items().get(0).note());
      Files.writeString(file, text.replace("UTF-8", "martian"));
      assertTrue(KblImporter.is(file));
      assertThrows(UnusableInput.class, () -> KblImporter.read(file, "unit.kbl", Set.of()));
    } finally {
      System.setErr(before);
    }
    assertEquals("", printed.toString(StandardCharsets.UTF_8), "nothing is printed by the way");
  }

  @Test
  void what_it_is_tells_the_content_and_not_the_name() throws Exception {
    String text = Files.readString(SWING_BRIDGE);
    assertTrue(KblImporter.is(file("unit.txt", text)));
    assertTrue(KblImporter.is(file("marked", "\ufeff" + text)));
    assertTrue(KblImporter.is(file("unit", "\n" + text.substring(text.indexOf("<kbl:")))));
    assertFalse(KblImporter.is(file("list.csv", "Wire,From,To\nW1,J1-A,P2-1\n")));
    assertFalse(KblImporter.is(file("page.html", "<html><body/></html>")));
    assertFalse(KblImporter.is(folder));
    assertFalse(KblImporter.is(folder.resolve("nowhere.kbl")));
    Path bytes = folder.resolve("bytes");
    byte[] random = new byte[5000];
    new Random(7).nextBytes(random);
    Files.write(bytes, random);
    assertFalse(KblImporter.is(bytes));
  }

  @Test
  void what_is_only_called_like_one_is_no_table_either() throws Exception {
    for (String text : List.of("", "Wire,From,To\nW1,J1-A,P2-1\n", "<KBL_cont", "\0\1\2")) {
      assertTrue(refusal(text).startsWith("is damaged XML"), text);
    }
  }

  /** Damage of any kind ends in a refusal or in counts that add up, and never otherwise. */
  @Test
  void damage_at_random_is_refused_or_accounted_for() throws Exception {
    String text = Files.readString(SWING_BRIDGE);
    Random random = new Random(20);
    int read = 0;
    for (int i = 0; i < 400; i++) {
      StringBuilder damaged = new StringBuilder(text);
      int at = random.nextInt(text.length());
      switch (i % 4) {
        case 0 -> damaged.setCharAt(at, (char) (32 + random.nextInt(90)));
        case 1 -> damaged.delete(at, Math.min(text.length(), at + random.nextInt(60)));
        case 2 -> damaged.insert(at, text.substring(at / 2, at / 2 + random.nextInt(60)));
        default -> damaged.insert(at, "_9");
      }
      Path file = file("damaged.kbl", damaged.toString());
      if (!KblImporter.is(file)) {
        continue;
      }
      try {
        var rows = KblImporter.read(file, "damaged.kbl", Set.of()).sheets().get(0).rows();
        assertEquals(rows.total(), rows.wire() + rows.skipped());
        read++;
      } catch (UnusableInput e) {
        assertFalse(e.text().isBlank());
      }
    }
    assertTrue(read > 50, read + " were still read");
  }
}
