package dev.ringout.benchmarks;

import dev.ringout.support.MetersThroughProxy;
import dev.ringout.support.MetersThroughProxy.Outcome;
import dev.ringout.support.UnrulyProxy.Habit;
import dev.ringout.units.Text;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;

/** The table of lines that do to packets what lines do: what came of each pair that was read. */
public final class UnrulyLines {
  private UnrulyLines() {}

  /** {@code UnrulyLines PAIRS SEED}. */
  public static void main(String[] args) throws IOException {
    int pairs = Integer.parseInt(args[0]);
    long seed = Long.parseLong(args[1]);
    PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
    out.println("| line | by | pairs | read | said that it can't | wrong | slowest |");
    out.println("| --- | --- | --- | --- | --- | --- | --- |");
    int wrong = 0;
    for (Habit habit : Habit.values()) {
      Outcome raw = MetersThroughProxy.raw(habit, pairs, seed);
      out.println(row(habit, "plain", pairs, raw));
      Outcome hislip = MetersThroughProxy.hislip(habit, pairs, seed);
      out.println(row(habit, "HiSLIP", pairs, hislip));
      wrong += raw.wrong() + hislip.wrong();
    }
    System.exit(wrong == 0 ? 0 : 1);
  }

  private static String row(Habit habit, String by, int pairs, Outcome outcome) {
    return Text.of(
        "| %s | %s | %d | %d | %d | %d | %d ms |",
        habit, by, pairs, outcome.read(), outcome.said(), outcome.wrong(), outcome.slowestMillis());
  }
}
