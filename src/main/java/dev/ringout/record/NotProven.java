package dev.ringout.record;

import dev.ringout.check.CheckResult;
import dev.ringout.circuit.Circuit;
import dev.ringout.compare.Judged;
import dev.ringout.compare.Outcome;
import dev.ringout.diagnose.NextReading;
import dev.ringout.record.RecordBlock.Heading;
import dev.ringout.record.RecordBlock.Table;
import dev.ringout.words.BlindSentences;
import dev.ringout.words.NextSentences;
import dev.ringout.words.NotJudgedSentences;
import dev.ringout.words.ReadingPlace;
import dev.ringout.words.Sentences;
import dev.ringout.words.UnprovenSentences;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** What to measure next, what is left unproven, and what no such test can see. */
final class NotProven {
  private static final String NO_STATE = "";

  private NotProven() {}

  static List<RecordBlock> of(TestRecord record) {
    List<RecordBlock> blocks = new ArrayList<>();
    List<List<String>> next = next(record.result());
    if (!next.isEmpty()) {
      blocks.add(new Heading(2, "What to measure next"));
      blocks.add(new Table("Next", List.of("From", "To", "State", "Kind", "Because"), next, -1));
    }
    List<List<String>> unproven = unproven(record.result());
    if (!unproven.isEmpty()) {
      blocks.add(new Heading(2, "What is not proven"));
      blocks.add(
          FilledColumns.of("Not proven", List.of("How", "What", "Where"), unproven, NO_STATE));
    }
    blocks.add(new Heading(2, "What this test can't see"));
    blocks.add(new Table("Not seen", List.of("What"), unseen(record.result()), -1));
    return blocks;
  }

  private static List<List<String>> next(CheckResult result) {
    List<List<String>> rows = new ArrayList<>();
    for (NextReading nextReading : result.diagnosis().next()) {
      rows.add(
          List.of(
              nextReading.from().toString(),
              nextReading.to().toString(),
              nextReading.state().toString(),
              nextReading.kind().name().toLowerCase(Locale.ROOT),
              NextSentences.why(result.circuit(), nextReading)));
    }
    return rows;
  }

  private static List<List<String>> unproven(CheckResult result) {
    ReadingPlace places = new ReadingPlace(result.readings());
    List<List<String>> rows = new ArrayList<>();
    for (Judged judged : result.comparison().with(Outcome.NOT_TESTED)) {
      rows.add(List.of("not tested", judged.reading().subject(), places.of(judged.reading())));
    }
    for (Judged judged : result.comparison().with(Outcome.NOT_JUDGED)) {
      rows.add(
          List.of(
              "not judged",
              judged.reading().subject() + ": " + NotJudgedSentences.why(judged),
              places.of(judged.reading())));
    }
    Circuit circuit = result.circuit();
    result
        .coverage()
        .unproven()
        .forEach(one -> rows.add(List.of("not proven", UnprovenSentences.said(circuit, one), "")));
    return rows;
  }

  private static List<List<String>> unseen(CheckResult result) {
    List<List<String>> rows = new ArrayList<>();
    result
        .coverage()
        .unprovable()
        .forEach(one -> rows.add(List.of(Sentences.unprovable(result.circuit(), one))));
    result.diagnosis().blind().forEach(one -> rows.add(List.of(BlindSentences.of(one))));
    rows.add(
        List.of(
            "No direct current sees twisted pairs split, equal windings exchanged, or wires crossed"
                + " inside one net."));
    return rows;
  }
}
