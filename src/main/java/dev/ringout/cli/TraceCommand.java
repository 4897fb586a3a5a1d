package dev.ringout.cli;

import dev.ringout.cells.Understood;
import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.JoinLimits;
import dev.ringout.harness.Harness;
import dev.ringout.harness.Point;
import dev.ringout.harness.SwitchState;
import dev.ringout.intake.PointSearch;
import dev.ringout.intake.PointSearch.Found;
import dev.ringout.intake.PointSearch.NotFound;
import dev.ringout.json.TraceJson;
import dev.ringout.standards.CopperWire;
import dev.ringout.standards.WireOhms;
import dev.ringout.text.TraceText;
import dev.ringout.trace.Trace;
import dev.ringout.words.ProblemText;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

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

  @Spec private CommandSpec spec = CommandSpec.create();

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

  @Mixin private OwnTables tables = new OwnTables();

  @Mixin private Destination destination = new Destination();

  TraceCommand(Output output) {
    this.output = output;
  }

  @Override
  public Integer call() {
    Inputs inputs = new Inputs(List.of(harnessFile.file()));
    Optional<Harness> harness = inputs.harness(harnessFile.file());
    if (harness.isEmpty() || inputs.problems().hasErrors()) {
      output.err().print(ProblemText.write(inputs.problems().list()));
      if (destination.json()) {
        output.out().print(TraceJson.write(inputs.problems().list()));
      }
      return inputs.exitCode();
    }
    output.err().print(ProblemText.write(inputs.problems().list()));
    PointSearch search = new PointSearch(harness.get());
    List<Found> asked = points(search);
    Circuit circuit = Circuit.of(harness.get());
    JoinLimits limits =
        new JoinLimits(circuit, WireOhms.of(CopperWire.published(), tables.read(spec)));
    Optional<Point> other = asked.size() > 1 ? Optional.of(asked.get(1).point()) : Optional.empty();
    Trace trace = Trace.of(circuit, limits, asked.get(0).point(), other, positions(search));
    String text =
        destination.json()
            ? TraceJson.write(trace, inputs.problems().list())
            : TraceText.write(
                trace, asked.stream().map(Found::as).toList(), destination.showsColour(output));
    return destination.write(output, text);
  }

  /** All words as one point, or split into two; blanks within a point need no quotes. */
  private List<Found> points(PointSearch search) {
    PointSearch.Result whole = search.find(String.join(" ", words));
    if (whole instanceof Found one) {
      return List.of(one);
    }
    PointSearch.Result wrong = whole;
    for (int split = 1; split < words.size(); split++) {
      PointSearch.Result first = search.find(String.join(" ", words.subList(0, split)));
      PointSearch.Result second = search.find(String.join(" ", words.subList(split, words.size())));
      if (first instanceof Found one && second instanceof Found two) {
        if (one.point().equals(two.point())) {
          throw new ParameterException(
              spec.commandLine(), one.as() + " and " + two.as() + " are the same point");
        }
        return List.of(one, two);
      }
      wrong = first instanceof NotFound ? first : second;
    }
    NotFound not = (NotFound) wrong;
    throw new ParameterException(
        spec.commandLine(), not.text() + (not.maybe().isEmpty() ? "" : "; maybe " + not.maybe()));
  }

  private SwitchState positions(PointSearch search) {
    Understood<SwitchState> understood = search.state(state);
    return understood
        .value()
        .orElseThrow(
            () ->
                new ParameterException(
                    spec.commandLine(),
                    "--state: "
                        + understood.complaint()
                        + (understood.maybe().isEmpty() ? "" : "; maybe " + understood.maybe())));
  }
}
