package dev.ringout.door;

import dev.ringout.Ringout;
import dev.ringout.check.CheckResult;
import dev.ringout.jobs.Answer;
import dev.ringout.jobs.CheckJob;
import dev.ringout.jobs.UnitRequest;
import dev.ringout.jobs.WrongRequest;
import dev.ringout.words.FaultSentences;
import dev.ringout.words.ProblemText;
import java.nio.file.Path;
import java.util.List;

/** The main job from another program; docs/how-to/use-from-java.md shows it. */
final class ProveAUnit {
  private ProveAUnit() {}

  public static void main(String[] args) throws WrongRequest {
    UnitRequest unit = UnitRequest.of(Path.of(args[0]), List.of(Path.of(args[1])));
    Answer<CheckResult> answer = Ringout.onFiles().check(CheckJob.Request.of(unit));
    System.out.print(ProblemText.write(answer.problems()));
    answer.result().ifPresent(ProveAUnit::show);
  }

  private static void show(CheckResult result) {
    System.out.println(result.verdict());
    result.diagnosis().faults().forEach(fault -> System.out.println(FaultSentences.summary(fault)));
    System.out.println(result.coverage().unproven().size() + " not proven");
  }
}
