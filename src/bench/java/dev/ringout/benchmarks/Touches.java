package dev.ringout.benchmarks;

import dev.ringout.support.SimulatedTouches;
import dev.ringout.support.SimulatedTouches.Hand;
import dev.ringout.support.SimulatedTouches.Kind;
import dev.ringout.support.SimulatedTouches.Outcome;
import dev.ringout.units.Text;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/** The table of simulated touches: what was taken wrongly, and how long it took. */
public final class Touches {
  private Touches() {}

  /** {@code Touches COUNT SEED}. */
  public static void main(String[] args) {
    int count = Integer.parseInt(args[0]);
    long seed = Long.parseLong(args[1]);
    List<Kind> kinds = SimulatedTouches.kinds();
    int each = Math.max(1, count / (kinds.size() * Hand.values().length));
    PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
    out.println("| meter | hand | touches | wrong | twice | missed | delay, middle | of 95 % |");
    out.println("| --- | --- | --- | --- | --- | --- | --- | --- |");
    int wrong = 0;
    List<Long> delays = new ArrayList<>();
    for (Kind kind : kinds) {
      for (Hand hand : Hand.values()) {
        Outcome outcome = SimulatedTouches.run(kind, hand, each, seed++);
        wrong += outcome.wrong().size() + outcome.twice();
        delays.addAll(outcome.delays());
        outcome.wrong().stream().limit(3).forEach(System.err::println);
        out.println(row(kind, hand, outcome));
      }
    }
    delays.sort(null);
    out.println(
        Text.of(
            "%d touches, %d wrong, delay in the middle %d ms, of 95 %% at most %d ms.",
            each * kinds.size() * Hand.values().length,
            wrong,
            delays.get(delays.size() / 2),
            delays.get(delays.size() * 95 / 100)));
    System.exit(wrong == 0 ? 0 : 1);
  }

  private static String row(Kind kind, Hand hand, Outcome outcome) {
    boolean none = outcome.delays().isEmpty();
    return Text.of(
        "| %s | %s | %d | %d | %d | %d | %s | %s |",
        kind.name(),
        hand,
        outcome.touches(),
        outcome.wrong().size(),
        outcome.twice(),
        outcome.missed(),
        none ? "" : outcome.median() + " ms",
        none ? "" : outcome.percentile(95) + " ms");
  }
}
