package dev.ringout.text;

import dev.ringout.check.CheckResult;
import dev.ringout.words.Sentences;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The verdict once more, where a long page ends and the eye is, and what to do now. */
final class CheckLast {
  /** A word, quoted or not, with the option before it whose value it is. */
  private static final Pattern PIECE =
      Pattern.compile(
          "(?: -{1,2}[a-z-]+(?= [^-]))? ?(?:\\\\.|[^ \"'\\\\]++|\"[^\"]*+\"|'[^']*+')++");

  private final CheckResult result;
  private final Page page;
  private final NowDo nowDo;

  private CheckLast(CheckResult result, Page page, NowDo nowDo) {
    this.result = result;
    this.page = page;
    this.nowDo = nowDo;
  }

  /**
   * What to do now.
   *
   * @param command what to type for it; empty where it is the same command once more
   */
  private record Next(String what, String command) {}

  static void write(CheckResult result, Page page, NowDo nowDo) {
    if (nowDo.equals(NowDo.NOTHING)) {
      return;
    }
    CheckLast part = new CheckLast(result, page, nowDo);
    Next next = part.next();
    boolean isTyped = !next.command().isEmpty();
    page.blank().paragraph("", part.verdict() + " " + next.what() + (isTyped ? ":" : "."));
    if (isTyped) {
      commandLines(next.command(), page.width()).forEach(line -> page.line("  " + line));
    }
  }

  private String verdict() {
    return page.styled(CheckHeadline.style(result.verdict()), Sentences.verdict(result));
  }

  /** Cells first: what they say may change all else. */
  private Next next() {
    if (!result.readings().unread().isEmpty()) {
      return new Next("Mend the cells that can't be understood, then check again", "");
    }
    return switch (result.verdict()) {
      case CONFORMS -> new Next("Now write the record", nowDo.record());
      case FAULTS ->
          new Next(
              "Mend; then plan what to read again, naming what else you touched", nowDo.retest());
      case INCOMPLETE -> whatIsLeft();
    };
  }

  private Next whatIsLeft() {
    if (!result.coverage().isComplete()) {
      return new Next("Now plan what is left to read", nowDo.rest());
    }
    return result.isProven()
        ? new Next("Answer what weakens this verdict, above, then write the record", nowDo.record())
        : new Next("Read again what is not tested or not judged, above, then check again", "");
  }

  /** A command in lines that a shell takes for one, broken between its words. */
  private static List<String> commandLines(String command, int width) {
    int most = width - "  ".length() - " \\".length();
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    Matcher pieces = PIECE.matcher(command);
    while (pieces.find()) {
      if (line.length() > 0 && line.length() + pieces.group().length() > most) {
        lines.add(line + " \\");
        line = new StringBuilder(" ");
      }
      line.append(pieces.group());
    }
    lines.add(line.toString());
    return lines;
  }
}
