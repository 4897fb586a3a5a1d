package dev.ringout.record;

import dev.ringout.check.CheckResult;
import dev.ringout.check.CheckResult.Verdict;
import dev.ringout.compare.Comparison;
import dev.ringout.compare.Conceded;
import dev.ringout.compare.IdleConcession;
import dev.ringout.compare.Outcome;
import dev.ringout.readings.Job;
import dev.ringout.record.RecordBlock.Heading;
import dev.ringout.record.RecordBlock.NewPage;
import dev.ringout.record.RecordBlock.Pairs;
import dev.ringout.record.RecordBlock.Signatures;
import dev.ringout.record.RecordBlock.Table;
import dev.ringout.record.RecordBlock.Words;
import dev.ringout.review.Review;
import dev.ringout.source.Severity;
import dev.ringout.units.Numbers;
import dev.ringout.units.Text;
import dev.ringout.words.ReadingPlace;
import dev.ringout.words.Sentences;
import dev.ringout.words.UnitTitle;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * What whoever signs must see: verdict, what makes it less than it seems, unit, what was waived.
 */
final class FirstPage {
  private static final List<String> COUNTS =
      List.of(
          "Tested",
          "Passed",
          "Accepted out of limits",
          "Failed",
          "Not tested",
          "Not judged",
          "Waived remarks");

  private FirstPage() {}

  static List<RecordBlock> of(TestRecord record) {
    CheckResult result = record.result();
    List<RecordBlock> blocks = new ArrayList<>();
    blocks.add(new Heading(1, "Test record: " + UnitTitle.of(result.harness())));
    blocks.add(
        new RecordBlock.Verdict(Sentences.verdict(result), result.verdict() == Verdict.CONFORMS));
    doubts(record).forEach(doubt -> blocks.add(new Words(doubt, true)));
    blocks.addAll(waived(record));
    blocks.add(new Pairs(UnitFacts.of(record)));
    blocks.add(
        new Table(
            "Counts",
            COUNTS,
            List.of(counts(record)),
            -1,
            IntStream.range(0, COUNTS.size()).boxed().collect(Collectors.toSet()),
            0));
    blocks.add(new Signatures(List.of("Tester", "Inspector, independent of the tester", "Stamp")));
    blocks.add(new NewPage());
    return blocks;
  }

  /** What makes the verdict less than it seems: on the first page, beside it. */
  private static List<String> doubts(TestRecord record) {
    List<String> doubts = new ArrayList<>();
    record.result().doubts().forEach(doubt -> doubts.add(Sentences.doubt(doubt)));
    for (int test : record.history().underWay()) {
      doubts.add(
          Text.of("Test %d is still under way at a bench: not all of it is read yet.", test));
    }
    long errors = record.review().count(Severity.ERROR);
    if (errors > 0) {
      doubts.add(Text.of("The paper itself has %s: see Remarks.", Numbers.count(errors, "error")));
    }
    for (Job job : record.result().readings().jobs()) {
      job.remarks().forEach(text -> doubts.add(Text.of("On the sheet Job: \"%s\"", text)));
    }
    int notes = record.result().noted().size();
    if (notes > 0) {
      doubts.add(
          Text.of(
              "The tester wrote something beside %s: see the column Note.",
              Numbers.count(notes, "reading")));
    }
    return doubts;
  }

  private static List<String> counts(TestRecord record) {
    Comparison comparison = record.result().comparison();
    long tested =
        comparison.inForce().stream().filter(one -> one.reading().measured().made()).count();
    return List.of(
        "" + tested,
        "" + comparison.with(Outcome.CONFORMS).size(),
        "" + comparison.conceded().size(),
        "" + comparison.failing().size(),
        "" + comparison.with(Outcome.NOT_TESTED).size(),
        "" + comparison.with(Outcome.NOT_JUDGED).size(),
        "" + record.review().waived().size());
  }

  private static List<RecordBlock> waived(TestRecord record) {
    Comparison comparison = record.result().comparison();
    ReadingPlace places = new ReadingPlace(record.result().readings());
    List<RecordBlock> blocks = new ArrayList<>();
    for (Conceded conceded : comparison.conceded()) {
      String cell = places.of(conceded.judged().reading());
      blocks.add(
          new Words(
              Text.of("Accepted out of limits: %s (%s)", Sentences.conceded(conceded), cell),
              true));
    }
    for (IdleConcession idleConcession : comparison.idleConcessions()) {
      blocks.add(
          new Words("A waiver that covers nothing: " + Sentences.idle(idleConcession), false));
    }
    for (Review.Waived waived : record.review().waived()) {
      blocks.add(
          new Words(
              Text.of(
                  "Waived: %s at %s, by %s: %s%s",
                  waived.remark().rule(),
                  waived.remark().subject(),
                  waived.waiver().who(),
                  waived.waiver().why(),
                  waived.waiver().until().isEmpty() ? "" : ", until " + waived.waiver().until()),
              false));
    }
    return blocks;
  }
}
