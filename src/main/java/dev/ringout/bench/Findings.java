package dev.ringout.bench;

import dev.ringout.bench.BenchState.FaultState;
import dev.ringout.check.CheckResult;
import dev.ringout.compare.Judged;
import dev.ringout.compare.Outcome;
import dev.ringout.diagnose.Fault;
import dev.ringout.diagnose.Fault.Alternative;
import dev.ringout.units.Text;
import dev.ringout.words.FaultSentences;
import dev.ringout.words.NotJudgedSentences;
import dev.ringout.words.Sentences;
import dev.ringout.words.UnprovenSentences;
import java.util.ArrayList;
import java.util.List;

/** What is wrong with a unit and what is open, in words. */
final class Findings {
  private static final int MOST_READINGS = 6;
  private static final int MOST_OTHERS = 3;
  private static final int MOST_OPEN = 20;
  private static final double LEAST_ODDS_SHOWN = 0.015;

  private Findings() {}

  static List<FaultState> faults(CheckResult result) {
    List<FaultState> faults = new ArrayList<>();
    for (Fault fault : result.diagnosis().faults()) {
      faults.add(
          new FaultState(
              Sentences.capital(FaultSentences.kind(fault).replace('-', ' ')),
              fault.finding().certainty().word(),
              FaultSentences.summary(fault),
              FaultSentences.advice(fault),
              readings(fault.finding().readings()),
              others(fault)));
    }
    List<Judged> unexplained = result.diagnosis().unexplained();
    if (!unexplained.isEmpty()) {
      faults.add(
          new FaultState(
              "Not explained",
              "",
              "These readings fail, and nothing here explains them.",
              "",
              readings(unexplained),
              List.of()));
    }
    return faults;
  }

  private static List<String> readings(List<Judged> judged) {
    List<String> shown = new ArrayList<>();
    judged.stream()
        .limit(MOST_READINGS)
        .forEach(
            one ->
                shown.add(
                    one.reading().subject() + ": " + BenchWords.value(one.reading().measured())));
    if (judged.size() > MOST_READINGS) {
      shown.add("and " + (judged.size() - MOST_READINGS) + " more");
    }
    return shown;
  }

  private static List<String> others(Fault fault) {
    return fault.finding().alternatives().stream()
        .filter(one -> one.odds() >= LEAST_ODDS_SHOWN)
        .limit(MOST_OTHERS)
        .map(Findings::other)
        .toList();
  }

  private static String other(Alternative one) {
    return Text.of("%s (%s)", FaultSentences.slips(one.slips()), Sentences.percent(one.odds()));
  }

  /** What keeps a unit from conforming beside faults: about the test first, then what is left. */
  static BenchState.Open open(CheckResult result) {
    List<String> all = new ArrayList<>();
    result.doubts().forEach(doubt -> all.add(Sentences.doubt(doubt)));
    for (Judged judged : result.comparison().with(Outcome.NOT_TESTED)) {
      String note = judged.reading().note();
      all.add(
          "Not measured: "
              + judged.reading().subject()
              + (note.isEmpty() ? "" : " (" + note + ")"));
    }
    for (Judged judged : result.comparison().with(Outcome.NOT_JUDGED)) {
      all.add("Not judged: " + judged.reading().subject() + ", " + NotJudgedSentences.why(judged));
    }
    result
        .coverage()
        .unproven()
        .forEach(one -> all.add("Not proven: " + UnprovenSentences.said(result.circuit(), one)));
    return new BenchState.Open(
        all.subList(0, Math.min(MOST_OPEN, all.size())), Math.max(0, all.size() - MOST_OPEN));
  }
}
