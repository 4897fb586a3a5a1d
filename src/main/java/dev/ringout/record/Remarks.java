package dev.ringout.record;

import dev.ringout.record.RecordBlock.Heading;
import dev.ringout.record.RecordBlock.Table;
import dev.ringout.record.RecordBlock.Words;
import dev.ringout.review.Remark;
import dev.ringout.review.Review;
import dev.ringout.source.Severity;
import dev.ringout.units.Text;
import dev.ringout.words.InsulationNoteSentences;
import java.util.ArrayList;
import java.util.List;

/** What is wrong on the paper, with what somebody accepted of it, and notes on the insulation. */
final class Remarks {
  private Remarks() {}

  static List<RecordBlock> of(TestRecord record) {
    List<RecordBlock> blocks = new ArrayList<>();
    List<List<String>> rows = rows(record.review());
    if (!rows.isEmpty()) {
      blocks.add(new Heading(2, "Remarks"));
      blocks.add(
          new Table("Remarks", List.of("Severity", "Rule", "At", "What", "Source"), rows, -1));
    }
    InsulationNoteSentences.of(record.result().insulationNotes())
        .forEach(note -> blocks.add(new Words(note, true)));
    return blocks;
  }

  private static List<List<String>> rows(Review review) {
    List<List<String>> rows = new ArrayList<>();
    for (Remark remark : review.remarks()) {
      if (remark.severity() != Severity.NOTE) {
        rows.add(row(remark.severity().word(), remark, remark.text()));
      }
    }
    for (Review.Waived waived : review.waived()) {
      String text =
          Text.of(
              "%s. Accepted by %s: %s",
              waived.remark().text(), waived.waiver().who(), waived.waiver().why());
      rows.add(row("waived", waived.remark(), text));
    }
    return rows;
  }

  private static List<String> row(String severity, Remark remark, String text) {
    return List.of(severity, remark.rule(), remark.subject(), text, remark.source());
  }
}
