package dev.ringout.sample;

import dev.ringout.check.CheckResult;
import dev.ringout.text.CheckText;
import dev.ringout.text.Look;
import dev.ringout.text.NowDo;
import java.util.Locale;
import java.util.Set;

/** The parts of a check's report that the diagnosis makes, without what is of the paper alone. */
public final class Told {
  private static final Set<String> PARTS =
      Set.of(
          "FIRST OF ALL",
          "JOINED, BUT NOT AS EXPECTED FROM THE WIRES",
          "WHAT IS WRONG",
          "FAILING READINGS WITHOUT AN EXPLANATION",
          "READINGS THAT CAN'T ALL BE TRUE",
          "WHAT TO MEASURE NEXT",
          "WHAT THESE READINGS CAN'T SEE");

  private Told() {}

  /** What a person would read of a check's result. */
  public static String of(CheckResult result) {
    StringBuilder told = new StringBuilder();
    boolean wanted = false;
    for (String line : CheckText.write(result, Look.PLAIN, NowDo.NOTHING).lines().toList()) {
      boolean isHeading = !line.isBlank() && line.equals(line.toUpperCase(Locale.ROOT));
      if (isHeading && line.charAt(0) > ' ') {
        wanted = PARTS.contains(line);
      }
      if (wanted && !line.isEmpty()) {
        told.append(line).append('\n');
      }
    }
    return told.toString();
  }
}
