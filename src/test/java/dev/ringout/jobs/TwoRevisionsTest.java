package dev.ringout.jobs;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.harness.Harness;
import dev.ringout.harness.Point;
import dev.ringout.revision.Change;
import dev.ringout.revision.NetChange;
import dev.ringout.revision.RetestReason;
import dev.ringout.revision.Unsure;
import dev.ringout.standards.Tables;
import dev.ringout.support.ReadUnit;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Two revisions as facts, with no command line about. */
class TwoRevisionsTest {
  @TempDir Path folder;

  private Harness list(String name, String wires, String... sheets) throws IOException {
    Path unit = Files.createDirectories(folder.resolve(name));
    Files.writeString(unit.resolve("wires.csv"), "Wire,From,To\n" + wires);
    for (int i = 0; i < sheets.length; i += 2) {
      Files.writeString(unit.resolve(sheets[i] + ".csv"), sheets[i + 1]);
    }
    return ReadUnit.of(unit);
  }

  private static TwoRevisions.Lists request(
      Harness earlier, Harness later, Optional<Harness> built) {
    return new TwoRevisions.Lists(
        earlier, later, built, Map.of(), Map.of(), true, Tables.published(), OptionalInt.empty());
  }

  private static RevisionPaper paper(Harness earlier, Harness later) {
    return TwoRevisions.run(request(earlier, later, Optional.empty()));
  }

  @Test
  void the_work_starts_from_the_unit_s_own_list_and_field_changes_are_told_apart()
      throws IOException {
    Harness earlier = list("a", "W1,J1-A,P2-1\nW2,J1-B,P2-2\nW3,J1-C,P2-3\n");
    Harness built = list("built", "W3,J1-C,P2-3\nW1,J1-A,P2-4\nW2,J1-B,P2-5\n");
    Harness later = list("b", "W1,J1-A,P2-4\nW2,J1-B,P2-2\nW3,J1-C,P2-6\n");
    RevisionPaper paper = TwoRevisions.run(request(earlier, later, Optional.of(built)));
    RevisionPaper.FieldChanges field = paper.field().orElseThrow();
    assertEquals(List.of("W1", "W2"), moved(field.changes()));
    assertEquals(List.of("W1"), moved(field.done()), "it is where the later list wants it");
    assertEquals(List.of("W2"), moved(field.undone()), "the later list wants it as it was");
    assertEquals(List.of("W2", "W3"), moved(paper.difference().changes()));
  }

  @Test
  void a_wire_that_the_field_moved_somewhere_else_is_not_where_the_later_list_wants_it()
      throws IOException {
    Harness earlier = list("a", "W1,J1-A,P2-1\nW2,J1-B,P2-2\n");
    Harness built = list("built", "W1,J1-A,P2-4\nW2,J1-B,P2-2\n");
    Harness later = list("b", "W1,J1-A,P2-9\nW2,J1-B,P2-2\n");
    RevisionPaper.FieldChanges field =
        TwoRevisions.run(request(earlier, later, Optional.of(built))).field().orElseThrow();
    assertEquals(List.of("W1"), moved(field.changes()));
    assertEquals(List.of(), field.done(), "it sits at P2-4 and is to go to P2-9");
    assertEquals(List.of("W1"), moved(field.undone()));
  }

  private static List<String> moved(List<Change> changes) {
    return changes.stream()
        .map(change -> ((Change.Moved) change).before().name())
        .sorted()
        .toList();
  }

  @Test
  void a_list_built_from_readings_is_compared_by_its_nets_alone() throws IOException {
    Harness drawing = list("a", "W1,J1-A,P2-1\nW2,J1-B,P2-2\n");
    Harness found =
        list(
            "found",
            "F1,J1-A,P2-2\n",
            "pins",
            "Ref,Pin\nJ1,B\nP2,1\n",
            "header",
            "Name,Value\nas found,inferred from readings\n");
    RevisionPaper paper = paper(drawing, found);
    assertTrue(paper.fromReadings());
    assertEquals(List.of(), paper.difference().changes());
    assertEquals(List.of(), paper.rework().steps());
    assertEquals(
        List.of(NetChange.Kind.REARRANGED),
        paper.difference().nets().stream().map(NetChange::kind).toList());
    RevisionPaper asBuilt = TwoRevisions.run(request(drawing, drawing, Optional.of(found)));
    assertTrue(asBuilt.isEmpty(), "the work starts from the drawing");
    assertEquals(1, asBuilt.field().orElseThrow().nets().size());
  }

  @Test
  void readings_to_take_again_say_which_wire_was_touched_or_which_item_opened() throws IOException {
    RevisionPaper paper =
        paper(list("a", "W1,J1-A,P2-1\nW2,J1-B,P2-2\n"), list("b", "W1,J1-A,P2-3\nW2,J1-B,P2-2\n"));
    Map<RetestReason, Long> reasons =
        paper.retests().stream().collect(Collectors.groupingBy(Retest::why, Collectors.counting()));
    assertTrue(reasons.containsKey(new RetestReason.WiresTouched(List.of("W1"))), "" + reasons);
    assertTrue(
        reasons.containsKey(new RetestReason.ItemsOpened(List.of("P2"), false)), "" + reasons);
    assertTrue(
        reasons.containsKey(new RetestReason.ItemsOpened(List.of("P2"), true)), "" + reasons);
  }

  @Test
  void a_page_does_without_the_plan_of_more_points_than_it_asks_for() throws IOException {
    Harness earlier = list("a", "W1,J1-A,P2-1\n");
    Harness later = list("b", "W1,J1-A,P2-3\n");
    TwoRevisions.Lists all = request(earlier, later, Optional.empty());
    TwoRevisions.Lists few =
        new TwoRevisions.Lists(
            earlier,
            later,
            Optional.empty(),
            Map.of(),
            Map.of(),
            true,
            Tables.published(),
            OptionalInt.of(0));
    assertTrue(!TwoRevisions.run(all).retests().isEmpty());
    assertEquals(List.of(), TwoRevisions.run(few).retests());
  }

  @Test
  void a_rename_that_is_said_counts_and_is_marked_so() throws IOException {
    Harness earlier = list("a", "W1,J1-A,P2-1\n");
    Harness later = list("b", "W1,J9-A,P2-1\n");
    RevisionPaper paper =
        TwoRevisions.run(
            new TwoRevisions.Lists(
                earlier,
                later,
                Optional.empty(),
                Map.of("J1", "J9"),
                Map.of("J1", "J9"),
                true,
                Tables.published(),
                OptionalInt.empty()));
    assertEquals(List.of(), paper.difference().changes());
    assertTrue(paper.difference().renames().get(0).asTold());
    assertEquals(
        List.of(new Point("J9", "A"), new Point("P2", "1")),
        List.copyOf(paper.difference().before().points()));
  }

  @Test
  void two_drawings_and_one_letter_on_two_lists_are_doubtful() throws IOException {
    Harness earlier = list("a", "W1,J1-A,P2-1\n", "header", "Name,Value\ndrawing,D1\nrevision,B\n");
    Harness later = list("b", "W1,J1-A,P2-2\n", "header", "Name,Value\ndrawing,D2\nrevision,B\n");
    assertEquals(
        List.of(new Unsure.TwoDrawings("D1", "D2"), new Unsure.OneLetterTwice("B")),
        paper(earlier, later).unsure());
    assertEquals(List.of(), paper(earlier, earlier).unsure(), "the same list is no second one");
  }
}
