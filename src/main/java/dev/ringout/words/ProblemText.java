package dev.ringout.words;

import dev.ringout.source.Problem;
import dev.ringout.source.Severity;
import dev.ringout.units.Numbers;
import dev.ringout.units.Text;
import java.util.List;

/** Problems in files as lines for standard error: place, heading, what, maybe. */
public final class ProblemText {
  private ProblemText() {}

  /** Every problem, errors first within the order of reading. */
  public static String lines(List<Problem> problems) {
    StringBuilder text = new StringBuilder();
    for (Severity severity : Severity.values()) {
      for (Problem problem : problems) {
        if (problem.severity() == severity) {
          text.append(line(problem)).append('\n');
        }
      }
    }
    return text.toString();
  }

  /**
   * The problems of a check that goes on without some rows.
   *
   * @param unread how many cells of readings can't be understood
   */
  public static String withoutRows(List<Problem> problems, int unread) {
    return lines(problems)
        + (unread == 0
            ? ""
            : Text.of(
                "\nringout: no verdict before %s; the rest was judged.\n",
                unread == 1 ? "this cell is mended" : "these " + unread + " cells are mended"));
  }

  /** The problems, and how many errors kept the files from being judged. */
  public static String write(List<Problem> problems) {
    StringBuilder text = new StringBuilder(lines(problems));
    long errors = problems.stream().filter(problem -> problem.severity() == Severity.ERROR).count();
    if (errors > 0) {
      text.append("\nringout: ")
          .append(Numbers.count(errors, "error"))
          .append(" in the files; nothing was done.\n");
    }
    return text.toString();
  }

  private static String line(Problem problem) {
    String heading = problem.heading().isEmpty() ? "" : " (" + problem.heading() + ")";
    return Text.of(
        "%s: %s%s: %s", problem.severity().word(), problem.place(), heading, problem.sentence());
  }
}
