package dev.ringout.words;

import dev.ringout.diagnose.Fault;
import dev.ringout.diagnose.SlipFact;
import dev.ringout.units.Text;
import java.util.List;
import java.util.stream.Collectors;

/** Faults as sentences that a mechanic acts on. */
public final class FaultSentences {
  private static final int MOST_AGAINST = 2;

  private FaultSentences() {}

  /** The kind as every output names it. */
  public static String kind(Fault fault) {
    return fault.match(new FaultKind());
  }

  /** What is wrong and where. */
  public static String summary(Fault fault) {
    return fault.match(new FaultSummary());
  }

  /** What to look at before anything is moved. */
  public static String advice(Fault fault) {
    return fault.match(new FaultAdvice());
  }

  /** One slip in words. */
  public static String slip(SlipFact fact) {
    return SlipSentences.of(fact);
  }

  /** An alternative explanation in words. */
  public static String slips(List<SlipFact> slips) {
    return slips.stream().map(SlipSentences::of).collect(Collectors.joining("; "));
  }

  /** What it is not, and what speaks against that. */
  public static String runnerUp(Fault.RunnerUp runnerUp) {
    List<String> against =
        runnerUp.against().stream()
            .map(judged -> judged.reading().subject() + " " + judged.reading().measured().text())
            .toList();
    return Text.of(
        "%s; against it: %s", slips(runnerUp.slips()), Text.first(against, MOST_AGAINST));
  }
}
