package dev.ringout.imports;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.support.Run;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Headings in two rows, the places at either end over the strips and terminals there. */
class GroupedHeadingsTest {
  @TempDir Path folder;

  @Test
  void a_place_over_strip_and_terminal_names_one_end() throws IOException {
    Path list =
        Files.writeString(
            folder.resolve("unit.csv"),
            """
            Core,Colour,Bridge hut,,Span pit,
            ,,Strip,Term.,Strip,Term.
            1,BK,XS,1,CT1,1
            2,BK,XS,2,CT1,2
            3,BK,XP,7,CT2,1
            4,BK,XP,8,CT2,2
            """);
    Run run = Run.of("import", list);
    assertEquals(0, run.code(), run.out() + run.err());
    assertTrue(run.out().contains("XP-7") && run.out().contains("CT2-1"), run.out());
  }
}
