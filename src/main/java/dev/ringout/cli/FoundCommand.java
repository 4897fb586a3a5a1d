package dev.ringout.cli;

import dev.ringout.jobs.Answer;
import dev.ringout.jobs.FoundJob;
import dev.ringout.jobs.WrongRequest;
import dev.ringout.json.FoundJson;
import dev.ringout.text.FoundText;
import dev.ringout.words.ProblemText;
import dev.ringout.work.FoundWire;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** {@code ringout found}: a wire that was found on a point. */
@Command(
    name = "found",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    description =
        "Says where a wire belongs that was found, who belongs on the point where it was, and what"
            + " most likely happened.")
final class FoundCommand implements Callable<Integer> {
  private final Output output;

  @Mixin private HarnessArgument harnessFile = new HarnessArgument();

  @Parameters(
      index = "1..*",
      arity = "1..*",
      paramLabel = "WORDS",
      description =
          "What was found: \"W12 on J3-14\", w12 j3 14, BLU on J3-14; or the wire alone: W12.")
  private List<String> words = new ArrayList<>();

  @Mixin private Destination destination = new Destination();

  FoundCommand(Output output) {
    this.output = output;
  }

  @Override
  public Integer call() throws WrongRequest {
    FoundJob.Request request = new FoundJob.Request(harnessFile.file(), String.join(" ", words));
    return harnessFile.door().found(request).match(this::show, this::refuse);
  }

  private int show(Answer.Given<FoundWire> answer) {
    output.err().print(ProblemText.write(answer.problems()));
    return destination.write(
        output,
        destination.json()
            ? FoundJson.write(answer.value(), answer.problems())
            : FoundText.write(answer.value(), destination.look(output)));
  }

  private int refuse(Answer.Refused<FoundWire> answer) {
    if (destination.json()) {
      output.out().print(FoundJson.write(answer.problems()));
    }
    return output.refuse(answer);
  }
}
