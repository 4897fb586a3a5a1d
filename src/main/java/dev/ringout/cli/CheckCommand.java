package dev.ringout.cli;

import dev.ringout.check.CheckResult;
import dev.ringout.harness.Harness;
import dev.ringout.readings.ReadingSet;
import dev.ringout.report.CheckJson;
import dev.ringout.report.CheckText;
import dev.ringout.report.ProblemText;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code ringout check}: the main job. */
@Command(
    name = "check",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    description =
        "Compares a harness with what the meter read: what is wrong, where, how sure, what to"
            + " measure next, and what is not yet proven.")
final class CheckCommand implements Callable<Integer> {
  private final Output output;

  @Spec private CommandSpec spec = CommandSpec.create();

  @Parameters(
      index = "0",
      paramLabel = "HARNESS",
      description = "The harness file: .xlsx, .xls, .csv or a folder of .csv.")
  private Path harnessFile = Path.of("");

  @Parameters(
      index = "1..*",
      arity = "1..*",
      paramLabel = "READINGS",
      description = "Filled test sheets; later readings replace earlier ones.")
  private List<Path> readingsFiles = new ArrayList<>();

  @Mixin private OwnTables tables = new OwnTables();

  @Mixin private Destination destination = new Destination();

  @Option(
      names = "--any-revision",
      description = "Accept readings that were taken against another revision of the harness.")
  private boolean anyRevision;

  @Option(
      names = "--color",
      paramLabel = "WHEN",
      defaultValue = "AUTO",
      description = "Colours: ${COMPLETION-CANDIDATES} (default ${DEFAULT-VALUE}).")
  private When color = When.AUTO;

  enum When {
    AUTO,
    ALWAYS,
    NEVER
  }

  CheckCommand(Output output) {
    this.output = output;
  }

  @Override
  public Integer call() {
    List<Path> files = new ArrayList<>(readingsFiles);
    files.add(harnessFile);
    Inputs inputs = new Inputs(files);
    Optional<Harness> harness = inputs.harness(harnessFile);
    if (harness.isEmpty() || inputs.problems().hasErrors()) {
      inputs.findProblems(readingsFiles);
      return refuse(inputs);
    }
    ReadingSet readings = inputs.readings(readingsFiles, harness.get());
    if (!anyRevision) {
      inputs.refuseOtherRevision(harness.get(), readings);
    }
    if (inputs.problems().hasErrors()) {
      return refuse(inputs);
    }
    output.err().print(ProblemText.write(inputs.problems().list()));
    CheckResult result =
        CheckResult.of(harness.get(), readings, tables.read(spec), inputs.problems().list());
    int written =
        destination.write(
            output,
            destination.json() ? CheckJson.write(result) : CheckText.write(result, inColour()));
    if (written != ExitCode.DONE) {
      return written;
    }
    return switch (result.verdict()) {
      case CONFORMS -> ExitCode.DONE;
      case FAULTS -> ExitCode.FAULTS;
      case INCOMPLETE -> ExitCode.INCOMPLETE;
    };
  }

  private boolean inColour() {
    return switch (color) {
      case ALWAYS -> true;
      case NEVER -> false;
      case AUTO -> destination.showsColour(output);
    };
  }

  private int refuse(Inputs inputs) {
    if (destination.json()) {
      output.out().print(CheckJson.write(inputs.problems().list()));
    }
    output.err().print(ProblemText.write(inputs.problems().list()));
    return inputs.exitCode();
  }
}
