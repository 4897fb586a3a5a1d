package dev.ringout.record;

import dev.ringout.check.CheckResult;
import dev.ringout.compare.Judged;
import dev.ringout.compare.Replaced;
import dev.ringout.record.RecordBlock.Heading;
import dev.ringout.record.RecordBlock.Table;
import dev.ringout.record.RecordBlock.Words;
import dev.ringout.seal.Seal;
import dev.ringout.words.ReadingPlace;
import dev.ringout.words.RecordLimits;
import dev.ringout.words.Sentences;
import java.util.ArrayList;
import java.util.List;

/** What came before: rework between readings, readings taken again, and earlier records. */
final class History {
  private History() {}

  static List<RecordBlock> of(TestRecord record) {
    List<RecordBlock> blocks = new ArrayList<>(reworks(record.result()));
    blocks.addAll(takenAgain(record.result()));
    blocks.addAll(earlierRecords(record));
    return blocks;
  }

  /** What was opened between the readings, and which of them are older than that. */
  private static List<RecordBlock> reworks(CheckResult result) {
    List<RecordBlock> blocks = new ArrayList<>();
    if (result.readings().reworks().isEmpty()) {
      return blocks;
    }
    blocks.add(new Heading(2, "Opened and touched between the readings"));
    result
        .readings()
        .reworksOnce()
        .forEach(rework -> blocks.add(new Words(Sentences.rework(rework), false)));
    List<Judged> overtaken = result.comparison().overtaken();
    if (!overtaken.isEmpty()) {
      blocks.add(new Words("Taken before, where it was opened: these no longer count.", false));
      blocks.add(new ReadingTable(result).of("Overtaken", overtaken));
    }
    return blocks;
  }

  private static List<RecordBlock> takenAgain(CheckResult result) {
    ReadingPlace places = new ReadingPlace(result.readings());
    List<List<String>> rows = new ArrayList<>();
    for (Replaced replaced : result.comparison().replaced()) {
      rows.add(
          List.of(
              replaced.later().reading().subject(),
              replaced.earlier().reading().measured().text(),
              places.of(replaced.earlier().reading()),
              replaced.later().reading().measured().text(),
              places.of(replaced.later().reading())));
    }
    return rows.isEmpty()
        ? List.of()
        : List.of(
            new Heading(2, "Readings that were taken again"),
            new Table(
                "Again",
                List.of("Between", "First", "Cell", "Last, which stands", "Cell"),
                rows,
                -1));
  }

  private static List<RecordBlock> earlierRecords(TestRecord record) {
    List<RecordBlock> blocks = new ArrayList<>();
    if (record.earlier().isEmpty() && record.notes().isEmpty()) {
      return blocks;
    }
    blocks.add(new Heading(2, "Records before this one"));
    List<List<String>> before = new ArrayList<>();
    record.earlier().forEach(one -> before.add(List.of(one.name(), one.verdict(), one.sha256())));
    blocks.add(new Table("Before", List.of("Record", "Verdict", "SHA-256"), before, -1));
    record.earlier().stream()
        .filter(Seal.Earlier::vouchedFor)
        .map(one -> "Unit of the record before: vouched for (" + one.name() + ")")
        .forEach(words -> blocks.add(new Words(words, true)));
    record.notes().forEach(note -> blocks.add(new Words("Done between: " + note, false)));
    List<List<String>> failed = new ArrayList<>();
    for (Seal.Failed one : record.failedBefore()) {
      failed.add(
          List.of(
              one.subject(), one.kind(), one.value(), one.inRecord(), now(record.result(), one)));
    }
    blocks.add(
        new Table(
            "Failed first",
            List.of("Between", "Kind", "First value that failed", "In record", "Now"),
            failed,
            -1));
    return blocks;
  }

  private static String now(CheckResult result, Seal.Failed failed) {
    return result.comparison().inForce().stream()
        .filter(one -> ReadingTable.kind(one).equals(failed.kind()))
        .filter(one -> one.reading().subject().equals(failed.subject()))
        .findFirst()
        .map(one -> one.reading().measured().text() + ", " + RecordLimits.words(one.outcome()))
        .orElse("not read in this record");
  }
}
