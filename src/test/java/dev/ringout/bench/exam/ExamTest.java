package dev.ringout.bench.exam;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.ringout.bench.exam.Exam.Question;
import dev.ringout.bench.exam.Exam.Sat;
import dev.ringout.bench.exam.Marker.Mark;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A short form of the exam; its long form is {@code src/bench/exam.sh}. */
class ExamTest {
  private static final int SEEDS = 4;

  @Test
  void no_question_of_the_exam_ends_without_an_answer(@TempDir Path folder) {
    List<String> without = new ArrayList<>();
    for (Sat one : sat(folder, Question.values())) {
      if (one.marked().mark() == Mark.CRASH) {
        without.add(one.question() + " " + one.seed() + ": " + one.told());
      }
    }
    assertEquals(List.of(), without);
  }

  private static List<Sat> sat(Path folder, Question... questions) {
    List<Sat> sat = new ArrayList<>();
    for (Question question : questions) {
      for (long seed = 1; seed <= SEEDS; seed++) {
        Exam.sit(question, seed, folder.resolve(question + "-" + seed)).ifPresent(sat::add);
      }
    }
    return sat;
  }
}
