package dev.ringout.benchmarks.exam;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.benchmarks.exam.Exam.Question;
import dev.ringout.benchmarks.exam.Exam.Sat;
import dev.ringout.benchmarks.exam.Marker.Mark;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A short form of the exam; its long form is {@code src/bench/exam.sh}. */
class ExamTest {
  private static final int SEEDS = 4;

  /** Of a hundred questions; the long form's table is in docs/explanation/diagnosis.md. */
  private static final int LEAST_EXACT = 90;

  @TempDir private static Path folder;
  private static List<Sat> all = List.of();

  @BeforeAll
  static void sit() {
    List<Sat> sat = new ArrayList<>();
    for (Question question : Question.values()) {
      for (long seed = 1; seed <= SEEDS; seed++) {
        Exam.sit(question, seed, folder.resolve(question + "-" + seed)).ifPresent(sat::add);
      }
    }
    all = List.copyOf(sat);
  }

  private static List<String> told(Predicate<Sat> which) {
    return all.stream()
        .filter(which)
        .map(one -> one.question() + " " + one.seed() + ": " + one.told())
        .toList();
  }

  @Test
  void no_question_ends_without_an_answer() {
    assertEquals(List.of(), told(one -> one.marked().mark() == Mark.CRASH));
  }

  @Test
  void a_good_unit_raises_no_alarm_by_whatever_meter() {
    assertEquals(List.of(), told(one -> one.marked().mark() == Mark.ALARM));
  }

  @Test
  void nothing_that_a_reading_shows_is_missed() {
    assertEquals(List.of(), told(one -> one.marked().mark() == Mark.MISSED));
  }

  @Test
  void what_is_called_certain_is_so() {
    assertEquals(
        List.of(),
        told(
            one ->
                one.marked().claims().stream()
                    .anyMatch(claim -> claim.certain() && !claim.holds())));
  }

  @Test
  void nine_of_ten_are_told_as_they_are() {
    long exact = Marks.count(all, Mark.EXACT);
    assertTrue(
        100 * exact >= (long) LEAST_EXACT * all.size(), exact + " of " + all.size() + " exact");
  }
}
