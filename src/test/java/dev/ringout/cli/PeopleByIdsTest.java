package dev.ringout.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.support.Run;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A record that leaves the shop without the names of its people. */
class PeopleByIdsTest {
  private static final Path SAMPLE = Path.of("harness-samples/swing-bridge");

  @TempDir private Path folder;

  private Run report(String ids) throws IOException {
    return Run.of(
        "report",
        SAMPLE.resolve("junction-box.xlsx"),
        SAMPLE.resolve("point-to-point.xlsx"),
        "-o",
        folder.resolve("record.html"),
        "--ids",
        Files.writeString(folder.resolve("ids.txt"), ids));
  }

  @Test
  void people_stand_by_their_ids_and_the_record_verifies_as_any() throws IOException {
    Run written = report("P17\tR. Adeyemi\nP17\tRA\nP4\tM. Lindqvist\n");
    assertEquals(1, written.code(), written.err());
    String record = Files.readString(folder.resolve("record.html"));
    assertTrue(record.contains("P17") && record.contains("P4"));
    assertFalse(record.contains("Adeyemi"));
    assertFalse(record.contains("Lindqvist"));
    assertTrue(record.contains("People stand here by ids."));
    String seal = Files.readString(folder.resolve("record.html.seal"));
    assertFalse(seal.contains("Adeyemi"), seal);
    Run checked = Run.of("report", "--verify", folder.resolve("record.html"), "--inputs", SAMPLE);
    assertTrue(checked.out().contains("as sealed   content digest"), checked.out());
    assertTrue(checked.out().contains("Nothing differs"), checked.out());
  }

  /** Nobody's name leaves the shop because his line was forgotten. */
  @Test
  void a_name_without_an_id_keeps_the_record_from_being_written() throws IOException {
    Run refused = report("P17\tR. Adeyemi\n");
    assertEquals(64, refused.code());
    assertTrue(refused.err().contains("no id for M. Lindqvist; RA: add a line"), refused.err());
    assertFalse(Files.exists(folder.resolve("record.html")));
  }

  @Test
  void what_is_no_list_of_ids_is_said_with_its_line() throws IOException {
    assertTrue(report("R. Adeyemi\n").err().contains("this is none: R. Adeyemi"));
    Run twice = report("P17\tR. Adeyemi\nP18\tR. Adeyemi\n");
    assertTrue(twice.err().contains("two lines for R. Adeyemi"), twice.err());
  }
}
