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
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code ringout found}: a wire that was found on a point. */
@Command(
    name = "found",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    description =
        "Says where a wire belongs that was found on a point, who belongs there, and what most"
            + " likely happened.")
final class FoundCommand implements Callable<Integer> {
  private static final Pattern ON = Pattern.compile("(?i)\\s*(.+?)\\s+(?:on|at|in)\\s+(.+?)\\s*");

  private final Output output;

  @Spec private CommandSpec spec = CommandSpec.create();

  @Mixin private HarnessArgument harnessFile = new HarnessArgument();

  @Parameters(
      index = "1..*",
      arity = "1..*",
      paramLabel = "WORDS",
      description = "What was found: \"W12 on J3-14\".")
  private List<String> words = new ArrayList<>();

  @Mixin private Destination destination = new Destination();

  FoundCommand(Output output) {
    this.output = output;
  }

  @Override
  public Integer call() throws WrongRequest {
    Matcher matcher = ON.matcher(String.join(" ", words));
    if (!matcher.matches()) {
      throw new ParameterException(
          spec.commandLine(), "say which wire was found where, such as \"W12 on J3-14\"");
    }
    FoundJob.Request request =
        new FoundJob.Request(harnessFile.file(), matcher.group(1), matcher.group(2));
    return harnessFile.door().found(request).match(this::show, this::refuse);
  }

  private int show(Answer.Given<FoundWire> answer) {
    output.err().print(ProblemText.write(answer.problems()));
    return destination.write(
        output,
        destination.json()
            ? FoundJson.write(answer.value(), answer.problems())
            : FoundText.write(answer.value(), destination.showsColour(output)));
  }

  private int refuse(Answer.Refused<FoundWire> answer) {
    if (destination.json()) {
      output.out().print(FoundJson.write(answer.problems()));
    }
    return output.refuse(answer);
  }
}
