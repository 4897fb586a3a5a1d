package dev.ringout.cli;

import dev.ringout.jobs.Answer;
import dev.ringout.jobs.TraceJob;
import dev.ringout.jobs.WrongRequest;
import dev.ringout.json.TraceJson;
import dev.ringout.text.TraceText;
import dev.ringout.trace.Trace;
import dev.ringout.words.ProblemText;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/**
 * {@code ringout trace}: everything on one net, and what a meter should read between two points.
 */
@Command(
    name = "trace",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    description =
        "Shows everything on the net of a point with the way there, and for two points what a meter"
            + " should read between them.")
final class TraceCommand implements Callable<Integer> {
  private final Output output;

  @Mixin private HarnessArgument harnessFile = new HarnessArgument();

  @Parameters(
      index = "1..*",
      arity = "1..*",
      paramLabel = "POINT",
      description =
          "One point or two: J3-7, \"j3 7\", a wire's number (\"wire 12\") or a signal's name.")
  private List<String> words = new ArrayList<>();

  @Option(
      names = "--state",
      paramLabel = "STATE",
      description = "Positions of the switches, such as \"S1=MADE; S2=OPEN\".")
  private String state = "";

  @Mixin private TablesOption tables = new TablesOption();

  @Mixin private Destination destination = new Destination();

  TraceCommand(Output output) {
    this.output = output;
  }

  @Override
  public Integer call() throws WrongRequest {
    TraceJob.Request request =
        new TraceJob.Request(harnessFile.file(), words, state, tables.folder());
    return harnessFile.door().trace(request).match(this::show, this::refuse);
  }

  private int show(Answer.Given<TraceJob.Result> answer) {
    output.err().print(ProblemText.write(answer.problems()));
    Trace trace = answer.value().trace();
    return destination.write(
        output,
        destination.json()
            ? TraceJson.write(trace, answer.problems())
            : TraceText.write(trace, answer.value().as(), destination.look(output)));
  }

  private int refuse(Answer.Refused<TraceJob.Result> answer) {
    if (destination.json()) {
      output.out().print(TraceJson.write(answer.problems()));
    }
    return output.refuse(answer);
  }
}
