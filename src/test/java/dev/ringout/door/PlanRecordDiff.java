package dev.ringout.door;

import dev.ringout.Ringout;
import dev.ringout.jobs.DiffJob;
import dev.ringout.jobs.PlanJob;
import dev.ringout.jobs.RecordJob;
import dev.ringout.jobs.Stopped;
import dev.ringout.jobs.UnitRequest;
import dev.ringout.jobs.WrongRequest;
import dev.ringout.plan.PlanOptions.Isolation;
import dev.ringout.plan.TestPlan;
import dev.ringout.print.PlanSheets;
import dev.ringout.print.RecordHtml;
import dev.ringout.revision.Change;
import dev.ringout.revision.ReworkStep;
import dev.ringout.seal.Digest;
import dev.ringout.sheet.OutFile;
import dev.ringout.sheet.PrintForm.PaperSize;
import dev.ringout.words.ChangeWords;
import dev.ringout.words.DiffWords;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** Plan, record and diff from another program; docs/how-to/use-from-java.md shows it. */
final class PlanRecordDiff {
  private PlanRecordDiff() {}

  public static void main(String[] args) throws WrongRequest, Stopped, IOException {
    Path list = Path.of(args[0]);
    Path readings = Path.of(args[1]);
    Path folder = Path.of(args[2]);
    Ringout ringout = Ringout.onFiles();
    UnitRequest unit = UnitRequest.of(list, List.of(readings));

    // The sheet of what those readings do not prove yet.
    PlanJob.Request rest =
        new PlanJob.Request(unit, Isolation.REST, true, false, List.of(), Optional.empty());
    Optional<TestPlan> plan = ringout.plan(rest).result();
    if (plan.isPresent()) {
      OutFile.workbook(folder.resolve("rest.xlsx"), PlanSheets.of(plan.get()));
    }

    // The record as a page. Nothing is written by a job: the caller writes, and then seals.
    Path to = folder.resolve("record.html");
    Optional<RecordJob.Result> record = ringout.record(RecordJob.Request.of(unit, to)).result();
    if (record.isPresent()) {
      Files.writeString(to, RecordHtml.write(record.get().content(), PaperSize.A4));
      String digest = Digest.of(to);
      Files.writeString(
          folder.resolve("record.html.seal"), record.get().seal(digest, Instant.now()));
    }

    // What another revision asks for.
    DiffJob.Request revisions = DiffJob.Request.of(list, Path.of(args[3]));
    ringout.diff(revisions).result().ifPresent(PlanRecordDiff::tell);
  }

  private static void tell(DiffJob.Result revisions) {
    for (Change change : revisions.paper().difference().changes()) {
      System.out.println(ChangeWords.of(change).sentence());
    }
    for (ReworkStep step : revisions.paper().rework().steps()) {
      System.out.println(step.number() + " " + DiffWords.sentence(step));
    }
  }
}
