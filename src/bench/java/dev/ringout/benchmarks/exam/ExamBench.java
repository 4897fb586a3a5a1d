package dev.ringout.benchmarks.exam;

import dev.ringout.benchmarks.exam.Exam.Question;
import dev.ringout.benchmarks.exam.Exam.Sat;
import dev.ringout.benchmarks.exam.Marker.Claim;
import dev.ringout.benchmarks.exam.Marker.Mark;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The long form of the exam: its table, and the odds that are stated against how often it is so.
 * Arguments: the first seed, how many of each question, the questions (all where none is named),
 * {@code tell} to have each that is not exact told, with its files kept, and {@code once} to make
 * none of the readings that are asked for next.
 *
 * <p>Seeds that leave 2 when divided by 3 are the closed part: they are told by their marks alone.
 */
public final class ExamBench {
  private ExamBench() {}

  /** Runs it. */
  public static void main(String[] args) throws IOException {
    long first = args.length > 0 ? Long.parseLong(args[0]) : 1;
    int units = args.length > 1 ? Integer.parseInt(args[1]) : 20;
    List<String> words = Stream.of(args).skip(2).toList();
    Path folder = Files.createTempDirectory("exam");
    List<Sat> all = new ArrayList<>();
    System.out.println(Marks.HEADING);
    for (Question question : Question.values()) {
      boolean isAsked =
          words.contains(question.name())
              || Stream.of(Question.values()).map(Enum::name).noneMatch(words::contains);
      if (isAsked) {
        List<Sat> sat = new ArrayList<>();
        for (long seed = first; seed < first + units; seed++) {
          if (words.contains(isClosed(seed) ? "open" : "closed")) {
            continue;
          }
          Path own = folder.resolve(question + "-" + seed);
          Optional<Sat> answered =
              words.contains("once")
                  ? Exam.sitOnce(question, seed, own)
                  : Exam.sit(question, seed, own);
          answered.ifPresent(sat::add);
          Optional<Sat> shown = answered.filter(one -> !isClosed(one.seed()));
          if (words.contains("certainty")) {
            shown.filter(one -> one.more() > 2).ifPresent(one -> tellMore(one, own));
          }
          if (words.contains("tell")) {
            shown.ifPresent(one -> tell(one, own));
          }
        }
        System.out.println(
            Marks.row(question.name().toLowerCase(Locale.ROOT).replace('_', ' '), sat));
        all.addAll(sat);
      }
    }
    List<Sat> closed = all.stream().filter(one -> isClosed(one.seed())).toList();
    System.out.println(Marks.row("closed part", closed));
    System.out.println(Marks.row("all", all));
    System.out.println("\nclosed part\n" + Marks.calibration(closed));
    System.out.print("all\n" + Marks.calibration(all));
    System.out.println(Marks.firstCauses(all));
    for (String word : words) {
      if (word.endsWith(".svg")) {
        Files.writeString(Path.of(word), Marks.picture(all));
      }
    }
  }

  private static boolean isClosed(long seed) {
    return seed % 3 == 2;
  }

  private static void tellMore(Sat sat, Path folder) {
    System.out.println(
        "--- " + sat.seed() + " more " + sat.more() + " " + folder + "\n" + sat.told());
  }

  private static void tell(Sat sat, Path folder) {
    boolean falselyCertain =
        sat.marked().claims().stream().anyMatch(one -> one.certain() && !one.holds());
    if (sat.marked().mark() != Mark.EXACT || falselyCertain) {
      System.out.println(
          "--- "
              + sat.question()
              + " "
              + sat.seed()
              + " "
              + sat.marked().mark()
              + (falselyCertain ? " FALSELY CERTAIN" : "")
              + " "
              + folder);
      sat.planted().forEach(edit -> System.out.println("planted " + edit));
      System.out.println(sat.told());
      sat.marked().claims().stream()
          .filter(Claim::certain)
          .filter(one -> !one.holds())
          .forEach(one -> System.out.println("not so: " + one.text()));
    }
  }
}
