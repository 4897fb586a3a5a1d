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

  static void write(CheckResult result, Page page, NowDo nowDo) {
    CheckLast part = new CheckLast(result, page, nowDo);
    if (nowDo.equals(NowDo.NOTHING)) {
      return;
    }
    String command = part.command();
    page.blank()
        .paragraph("", part.verdict() + " " + part.what() + (command.isEmpty() ? "." : ":"));
    if (!command.isEmpty()) {
      commandLines(command, page.width()).forEach(line -> page.line("  " + line));
    }
  }

  private String verdict() {
    return page.styled(CheckHeadline.style(result.verdict()), Sentences.verdict(result));
  }

  /** Cells first: what they say may change all else. */
  private boolean waitsForCells() {
    return !result.readings().unread().isEmpty();
  }

  private String what() {
    if (waitsForCells()) {
      return "Mend the cells that can't be understood, then check again";
    }
    return switch (result.verdict()) {
      case CONFORMS -> "Now write the record";
      case FAULTS -> "Mend; then plan what to read again, naming what else you touched";
      case INCOMPLETE -> whatIsLeft();
    };
  }

  private String whatIsLeft() {
    if (!result.coverage().isComplete()) {
      return "Now plan what is left to read";
    }
    return result.isProven()
        ? "Answer what weakens this verdict, above, then write the record"
        : "Read again what is not tested or not judged, above, then check again";
  }

  /** What to type now; empty where it is the same command once more. */
  private String command() {
    if (waitsForCells()) {
      return "";
    }
    return switch (result.verdict()) {
      case CONFORMS -> nowDo.record();
      case FAULTS -> nowDo.retest();
      case INCOMPLETE -> commandForWhatIsLeft();
    };
  }

  private String commandForWhatIsLeft() {
    if (!result.coverage().isComplete()) {
      return nowDo.rest();
    }
    return result.isProven() ? nowDo.record() : "";
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
