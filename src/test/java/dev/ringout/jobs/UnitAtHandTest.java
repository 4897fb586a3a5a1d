package dev.ringout.jobs;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.jobs.UnitRequest.Said;
import dev.ringout.jobs.UnitRequest.Touched;
import dev.ringout.source.Problem;
import dev.ringout.source.Severity;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Readings are of one unit and of one revision of its list, or somebody says so. */
class UnitAtHandTest {
  @TempDir Path folder;

  private BoxOfTwoWires box;

  @BeforeEach
  void files() {
    box = new BoxOfTwoWires(folder);
  }

  private List<String> errors(Said said, Path... readings) throws Exception {
    UnitRequest request = UnitRequest.of(box.list(), List.of(readings)).with(said);
    FileInputs inputs = new FileInputs(request.named());
    assertTrue(UnitAtHand.read(request, inputs).isPresent(), "the list can be used");
    return inputs.problems().list().stream()
        .filter(problem -> problem.severity() == Severity.ERROR)
        .map(Problem::text)
        .toList();
  }

  private static Said serial(String serial) {
    return new Said(Optional.of(serial), false);
  }

  private Path monday() throws IOException {
    return box.readings("monday", "serial number,0418", "revision,B");
  }

  @Test
  void readings_of_one_unit_go_together() throws Exception {
    Path tuesday = box.readings("tuesday", "serial number,418", "revision,B");
    assertEquals(List.of(), errors(Said.NOTHING, monday(), tuesday), "zeros before do not count");
  }

  @Test
  void readings_of_two_units_are_not_put_together() throws Exception {
    List<String> errors =
        errors(Said.NOTHING, monday(), box.readings("tuesday", "serial number,0419", "revision,B"));
    assertEquals(2, errors.size(), errors.toString());
    assertTrue(errors.get(0).startsWith("the readings are of unit 0418"), errors.get(0));
  }

  @Test
  void readings_of_no_unit_go_with_those_of_one_where_somebody_vouches() throws Exception {
    Path tuesday = box.readings("tuesday", "revision,B");
    assertTrue(errors(Said.NOTHING, monday(), tuesday).get(0).startsWith("gives no serial number"));
    assertEquals(List.of(), errors(serial("0418"), monday(), tuesday));
  }

  @Test
  void nobody_can_vouch_that_a_unit_is_another() throws Exception {
    assertEquals(
        List.of("the readings are of unit 0418, --serial says 0419"),
        errors(serial("0419"), monday()));
  }

  @Test
  void readings_against_another_revision_are_refused_unless_somebody_accepts_them()
      throws Exception {
    Path older = box.readings("older", "serial number,0418", "revision,A");
    List<String> errors = errors(Said.NOTHING, older);
    assertEquals(1, errors.size(), errors.toString());
    assertTrue(
        errors
            .get(0)
            .startsWith(
                "the readings were taken against revision A, the harness file is revision B"),
        errors.get(0));
    assertEquals(List.of(), errors(new Said(Optional.empty(), true), older));
  }

  @Test
  void what_was_touched_since_is_told_after_all_readings_in_the_list_s_own_spelling()
      throws Exception {
    UnitRequest request =
        UnitRequest.of(box.list(), List.of(monday()))
            .with(new Touched(List.of("w1"), List.of("p1")));
    UnitAtHand unit = UnitAtHand.read(request, new FileInputs(request.named())).orElseThrow();
    assertEquals(Set.of("W1"), unit.wires());
    assertEquals(Set.of("P1"), unit.items());
    assertEquals(1, unit.readings().reworks().size());
  }

  @Test
  void the_same_unit_is_no_other_one() throws Exception {
    Path again = box.readings("again", "serial number,0418", "revision,B");
    UnitRequest request = UnitRequest.of(box.list(), List.of(monday()));
    FileInputs inputs = new FileInputs(request.named());
    UnitAtHand unit = UnitAtHand.read(request, inputs).orElseThrow();
    unit.another(again, Said.NOTHING, inputs);
    assertTrue(
        inputs.problems().list().stream()
            .anyMatch(problem -> problem.text().contains("--also is for another one")),
        inputs.problems().list().toString());
  }
}
