package dev.ringout.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.jr.ob.JSON;
import dev.ringout.support.Run;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the page around a table says of the list as a whole, as drawing offices write it. */
class HeaderOfAListTest {
  private static final String TABLE =
      """
      Wire,From,From Pin,To,To Pin,Color,Signal
      W1,J1,1,P2,1,RED,LOCK IN
      W2,J1,2,P2,2,BLU,LOCK OUT
      W3,J1,3,P2,3,GRN,RETURN
      """;

  @TempDir Path folder;

  private Path list(String above, String below) throws IOException {
    Path file = folder.resolve("list.csv");
    Files.writeString(file, above + TABLE + below);
    return file;
  }

  /** Facts as {@code title=… @A1}. */
  private static List<String> header(Path list, Object... options) throws IOException {
    Object[] words = new Object[options.length + 3];
    words[0] = "import";
    words[1] = list;
    words[2] = "--json";
    System.arraycopy(options, 0, words, 3, options.length);
    Run run = Run.of(words);
    Map<String, Object> json = JSON.std.mapFrom(run.out());
    List<String> header = new ArrayList<>();
    for (Object one : json.get("header") instanceof List<?> facts ? facts : List.of()) {
      Map<?, ?> fact = (Map<?, ?>) one;
      Object cell = fact.get("cell");
      String where = cell == null ? "" : " @" + String.valueOf(cell).replace("list.csv!", "");
      header.add(fact.get("fact") + "=" + fact.get("value") + where);
    }
    assertEquals(3, json.get("wires") instanceof List<?> wires ? wires.size() : 0, run.out());
    return header;
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      value = {
        "Title: Sluice bridge JB4 | title=Sluice bridge JB4 @A1",
        "Title:,Sluice bridge JB4 | title=Sluice bridge JB4 @B1",
        "Title,,,Sluice bridge JB4 | title=Sluice bridge JB4 @D1",
        "Project: Sluice bridge | title=Sluice bridge @A1",
        "Titel: Klappbrücke | title=Klappbrücke @A1",
        "Drawing No,HSB-2210 | drawing=HSB-2210 @B1",
        "Drawing No. HSB-2210 | drawing=HSB-2210 @A1",
        "DWG #: 4711 | drawing=4711 @A1",
        "Zeichnung-Nr.,4711 | drawing=4711 @B1",
        "Zeichnungs-Nr: 4711 | drawing=4711 @A1",
        "N° de plan : 4711 | drawing=4711 @A1",
        "Rev.,C | revision=C @B1",
        "REV C | revision=C @A1",
        "Rev: - | revision=- @A1",
        "Issue: 2 | revision=2 @A1",
        "Wire list HSB-2210 rev. C | revision=C @A1",
        "Änderungsstand: B | revision=B @A1",
        "Effectivity: 0100 to 0200 | effectivity=0100 to 0200 @A1",
        "Date: 2026-11-25 | date=2026-11-25 @A1",
        "Datum,25.11.2026 | date=25.11.2026 @B1",
        "Legend: see sheet 2 | ''",
        "Rev: see title block | ''",
        "Title block | ''",
        "Part,Title,Author | ''",
        "Part,Rev,Qty | ''",
        "Title,Sluice bridge,Rev,C2 | title=Sluice bridge @B1 revision=C2 @D1",
        "Serial number: to be given | ''",
        "Date: | ''"
      })
  void a_fact_is_read_from_the_page_above(String written, String expected) throws Exception {
    List<String> header = header(list(written + "\n\n", ""));
    assertEquals(expected.equals("''") ? "" : expected, String.join(" ", header));
  }

  @Test
  void labels_stand_above_their_values_too() throws Exception {
    assertEquals(
        List.of("title=Sluice bridge @A2", "drawing=HSB-2210 @C2", "revision=C @D2"),
        header(list("Title,,Drawing No,Rev\nSluice bridge,,HSB-2210,C\n\n", "")));
  }

  @Test
  void one_cell_may_hold_several() throws Exception {
    assertEquals(
        List.of("drawing=HSB-2210 @A1", "revision=C @A1", "date=12:30 2026-11-25 @A1"),
        header(list("Dwg No: HSB-2210  Rev: C; Date: 12:30 2026-11-25\n\n", "")));
  }

  @Test
  void the_title_block_may_stand_below() throws Exception {
    assertEquals(
        List.of("drawing=HSB-2210 @B6", "revision=C @D6"),
        header(list("", "\nDrawing No,HSB-2210,Rev,C\n")));
  }

  @Test
  void of_a_history_of_revisions_the_last_holds() throws Exception {
    assertEquals(
        List.of("revision=C @A4"),
        header(
            list(
                "Rev,Date,Description\nA,2024-01-02,first\nB,2024-05-06,W9 added\nC,2025-02-03,W9 out\n\n",
                "")));
  }

  @Test
  void headings_of_another_table_are_no_labels() throws Exception {
    assertEquals(
        List.of(),
        header(list("Part,Rev,Qty,Title\nHousing,B,2,x\nContact,D,20,y\nClip,A,1,z\n\n", "")));
  }

  @Test
  void the_user_s_word_stands_before_the_page_s() throws Exception {
    assertEquals(
        List.of("title=Bridge 4", "drawing=HSB-2210 @B1", "revision=D"),
        header(
            list("Drawing No,HSB-2210,Rev,C\n\n", ""), "--title", "Bridge 4", "--revision", "D"));
  }

  @Test
  void two_revisions_of_one_list_are_said() throws Exception {
    Run run = Run.of("import", list("Rev: C\n\n", "\nRev: D\n"));
    assertTrue(
        run.err().contains("a second revision, \"D\"; \"C\" is used, or say --revision \"D\""),
        run.err());
  }

  @Test
  void a_cell_of_the_table_is_no_fact_of_the_list() throws Exception {
    Path file = folder.resolve("list.csv");
    Files.writeString(
        file,
        "Wire,From,From Pin,To,To Pin,Signal\nW1,J1,1,P2,1,Rev: C\nW2,J1,2,P2,2,Title: x\nW3,J1,3,P2,3,Date\n");
    assertEquals(List.of(), header(file));
  }

  @Test
  void it_is_shown_and_is_the_header_of_the_harness() throws Exception {
    Path harness = folder.resolve("harness");
    Run run = Run.of("import", list("Title: Sluice bridge\nREV C\n\n", ""), "-o", harness + "/");
    assertEquals(ExitCode.DONE, run.code(), run.err());
    assertTrue(run.out().contains("  title       Sluice bridge (A1)\n"), run.out());
    assertTrue(run.out().contains("  revision    C (A2)\n"), run.out());
    assertEquals(
        List.of("\ufeffName,Value", "title,Sluice bridge", "revision,C", "imported from,list.csv"),
        Files.readAllLines(harness.resolve("header.csv")));
    Run review = Run.of("review", harness);
    assertTrue(review.out().contains("Sluice bridge"), review.out());
    assertFalse(review.err().contains("error"), review.err());
  }
}
