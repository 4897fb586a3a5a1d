package dev.ringout.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.support.Run;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * A request that names what the list does not have: often the list is not what one thought, and
 * what is odd in it says why. So it is said, and before what is wrong with the request.
 */
class WrongRequestTest {
  private static final String ODD = "unit/notes.csv: the sheet \"notes\" is not read";

  @TempDir Path folder;

  private Path oddList() throws IOException {
    Path list = new SmallUnit(folder).list();
    Files.writeString(list.resolve("notes.csv"), "a,b\n");
    return list;
  }

  /** Runs words in which LIST stands for the list, SHEET for readings of it, NONE for no folder. */
  private List<String> saidBy(String words) throws IOException {
    Path list = oddList();
    Path sheet = new SmallUnit(folder).sheet("sheet");
    List<Object> all = new ArrayList<>();
    for (String word : words.split(" ", -1)) {
      all.add(
          switch (word) {
            case "LIST" -> list;
            case "LATER" -> new SmallUnit(Files.createDirectories(folder.resolve("later"))).list();
            case "SHEET" -> sheet;
            case "NONE" -> folder.resolve("none");
            case "RECORD" -> folder.resolve("record.html");
            default -> word;
          });
    }
    Run run = Run.of(all.toArray());
    assertEquals(ExitCode.USAGE, run.code(), run.err());
    return run.err().lines().toList();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "trace LIST J9-1",
        "trace LIST J1-A --state S1=MADE",
        "found LIST W9 on J1-A",
        "found LIST W1 on J9-1",
        "work LIST --only J9",
        "work LIST --sleeve x",
        "plan LIST --only J9",
        "diff LIST LATER --rename J9=J1",
        "trace LIST J1-A --tables NONE",
        "work LIST --tables NONE",
        "plan LIST --tables NONE",
        "review LIST --tables NONE",
        "diff LIST LATER --tables NONE",
        "check LIST SHEET --tables NONE",
        "report LIST SHEET -o RECORD --tables NONE"
      })
  void what_is_odd_in_the_list_is_said_before_what_is_wrong_with_the_request(String words)
      throws IOException {
    List<String> said = saidBy(words);
    assertTrue(said.get(0).startsWith("note: ") && said.get(0).endsWith(ODD), said.get(0));
    assertTrue(said.get(1).startsWith("ringout: "), said.get(1));
  }

  @Test
  void every_cell_that_is_not_understood_is_named_where_the_tables_are_wrong() throws IOException {
    Path list = oddList();
    Path sheet = new SmallUnit(folder).filled("sheet", "1,J1-A,P1-1,0.3?,Ω\n", "");
    Run run = Run.of("check", list, sheet, "--tables", folder.resolve("none"));
    assertEquals(ExitCode.USAGE, run.code(), run.err());
    assertTrue(run.err().startsWith("error: sheet/continuity.csv!D2 (Reading)"), run.err());
    assertTrue(run.err().contains(ODD), run.err());
  }
}
