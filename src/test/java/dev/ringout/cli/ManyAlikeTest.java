package dev.ringout.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.jr.ob.JSON;
import dev.ringout.support.Run;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A person reads three of twenty that are alike, and where the others stand; a program reads all.
 */
class ManyAlikeTest {
  @TempDir Path folder;

  private Path list(int rows, String lengths) throws IOException {
    StringBuilder text = new StringBuilder("Wire,From,From Pin,To,To Pin,Length\n");
    for (int row = 1; row <= rows; row++) {
      text.append(
          "W" + row + ",J1," + row + ",P2," + row + "," + lengths.replace("#", "" + row) + "\n");
    }
    Path file = folder.resolve("list.csv");
    Files.writeString(file, text);
    return file;
  }

  private static List<String> about(Run run, String words) {
    return run.err().lines().filter(line -> line.contains(words)).toList();
  }

  @Test
  void of_many_alike_three_are_told_and_the_others_counted_with_their_cells() throws Exception {
    Run run = Run.of("import", list(22, "long #"));
    assertEquals(
        List.of(
            "warning: list.csv!F2 (Length): \"long 1\" is not a length; write one such as 4 ft, 18 in,"
                + " 250 mm; kept as a note",
            "warning: list.csv!F3 (Length): \"long 2\" is not a length; write one such as 4 ft, 18 in,"
                + " 250 mm; kept as a note",
            "warning: list.csv!F4 (Length): \"long 3\" is not a length; write one such as 4 ft, 18 in,"
                + " 250 mm; kept as a note",
            "warning: list.csv: and 19 more: a length without a unit, or none (F5, F6, F7, F8, F9, F10,"
                + " F11, F12, F13, F14, F15, F16 and 7 more)"),
        about(run, "length"));
  }

  @Test
  void the_same_sentence_is_said_once() throws Exception {
    Run run = Run.of("import", list(15, "long"));
    assertEquals(
        List.of(
            "warning: list.csv!F2 (Length): \"long\" is not a length; write one such as 4 ft, 18 in,"
                + " 250 mm; kept as a note (15 in all: F2, F3, F4, F5, F6, F7, F8, F9, F10, F11, F12,"
                + " F13 and 3 more)"),
        about(run, "length"));
  }

  @Test
  void four_alike_are_told_in_full() throws Exception {
    assertEquals(4, about(Run.of("import", list(4, "long #")), "is not a length").size());
  }

  @Test
  void a_program_is_told_every_one() throws Exception {
    Run run = Run.of("import", list(22, "long #"), "--json");
    Object problems = JSON.std.mapFrom(run.out()).get("problems");
    assertEquals(22, problems instanceof List<?> all ? all.size() : 0);
    assertEquals(4, about(run, "length").size(), "and the person beside it four");
  }

  @Test
  void errors_are_counted_too_and_no_row_is_lost_without_its_number() throws Exception {
    StringBuilder text = new StringBuilder("Wire,From,From Pin,To,To Pin\nW0,J1,99,P2,99\n");
    for (int row = 1; row <= 9; row++) {
      text.append("W" + row + ",J1," + row + ",,\n");
    }
    Path file = folder.resolve("list.csv");
    Files.writeString(file, text);
    Run run = Run.of("import", file);
    assertEquals(ExitCode.NOT_UNDERSTOOD, run.code());
    assertTrue(
        run.err()
            .contains(
                "error: list.csv: and 6 more: a wire without an end (D6, D7, D8, D9, D10, D11)"),
        run.err());
  }
}
