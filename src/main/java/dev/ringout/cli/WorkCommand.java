package dev.ringout.cli;

import dev.ringout.harness.Harness;
import dev.ringout.report.PlanSheets;
import dev.ringout.report.ProblemText;
import dev.ringout.report.WorkJson;
import dev.ringout.report.WorkSheets;
import dev.ringout.report.WorkText;
import dev.ringout.standards.CopperWire;
import dev.ringout.work.WorkPapers;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** {@code ringout work}: the papers from which a unit is wired. */
@Command(
    name = "work",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    description =
        "Writes the papers from which the unit is wired: a sheet for each item in the order of its"
            + " cavities, the cut list, the kit, and the texts of the sleeves.")
final class WorkCommand implements Callable<Integer> {
  private final Output output;

  @Spec private CommandSpec spec = CommandSpec.create();

  @Mixin private HarnessArgument harnessFile = new HarnessArgument();

  @Option(
      names = "--only",
      paramLabel = "ITEM",
      split = ",",
      description = "Only these items, and the wires that end there.")
  private List<String> only = new ArrayList<>();

  @Option(
      names = "--sleeve",
      paramLabel = "TEXT",
      defaultValue = "{wire}",
      description =
          "What is on a sleeve: {wire}, {here}, {there} and {signal} stand for what they name"
              + " (default ${DEFAULT-VALUE}).")
  private String sleeve = "{wire}";

  @Mixin private OwnTables tables = new OwnTables();

  @Option(names = "--json", description = "One JSON document on standard output.")
  private boolean json;

  @Option(
      names = "-o",
      paramLabel = "PAPERS",
      description = "Write the papers: .xlsx, .html, .pdf, or a folder of .csv.")
  private Optional<Path> file = Optional.empty();

  @Option(names = "--force", description = "Write over existing PAPERS.")
  private boolean force;

  WorkCommand(Output output) {
    this.output = output;
  }

  @Override
  public Integer call() {
    Inputs inputs = new Inputs(List.of(harnessFile.file()));
    Optional<Harness> harness = inputs.harness(harnessFile.file());
    output.err().print(ProblemText.write(inputs.problems().list()));
    if (harness.isEmpty() || inputs.problems().hasErrors()) {
      if (json) {
        output.out().print(WorkJson.write(inputs.problems().list()));
      }
      return inputs.exitCode();
    }
    WorkPapers papers =
        WorkPapers.of(
            harness.get(),
            tables.read(spec),
            CopperWire.published(),
            new Named(spec, harness.get()).items("--only", only),
            sleeve);
    int written =
        file.isPresent()
            ? Sheets.write(
                output,
                spec,
                file.get(),
                PlanSheets.title(harness.get()),
                WorkSheets.of(papers),
                force)
            : ExitCode.DONE;
    if (written != ExitCode.DONE) {
      return written;
    }
    output
        .out()
        .print(
            json
                ? WorkJson.write(papers, inputs.problems().list())
                : WorkText.write(papers, file.isEmpty(), output.showsColour()));
    return ExitCode.DONE;
  }
}
