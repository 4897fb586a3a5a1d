package dev.ringout.cli;

import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.JoinLimits;
import dev.ringout.compare.Comparison;
import dev.ringout.harness.Harness;
import dev.ringout.json.PlanJson;
import dev.ringout.plan.PlanOptions;
import dev.ringout.plan.PlanOptions.Isolation;
import dev.ringout.plan.Planner;
import dev.ringout.plan.TestPlan;
import dev.ringout.print.PlanSheets;
import dev.ringout.readings.ReadingSet;
import dev.ringout.sheet.PrintForm;
import dev.ringout.standards.HandMovements;
import dev.ringout.standards.Tables;
import dev.ringout.text.PlanText;
import dev.ringout.words.ProblemText;
import dev.ringout.words.UnitTitle;
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

/** {@code ringout plan}: the test sheet with the fewest steps that prove a unit. */
@Command(
    name = "plan",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    description =
        "Writes the test sheet to fill in: the fewest steps that prove the unit, in an order that"
            + " is quick to walk, with limits and cautions. Filled in, check reads it.")
final class PlanCommand implements Callable<Integer> {
  private final Output output;

  @Spec private CommandSpec spec = CommandSpec.create();

  @Mixin private HarnessArgument harnessFile = new HarnessArgument();

  @Option(
      names = "--apart",
      paramLabel = "HOW",
      defaultValue = "REST",
      description =
          "How nets are held apart: ${COMPLETION-CANDIDATES} (default ${DEFAULT-VALUE}): each against"
              + " the rest tied together; half against half, with a shorting fixture; pins next to"
              + " each other only; or by the insulation test alone.")
  private Isolation isolation = Isolation.REST;

  @Option(names = "--no-insulation", description = "No insulation test.")
  private boolean noInsulation;

  @Option(
      names = "--by-connector",
      description = "Connector after connector, rather than by the least movement.")
  private boolean byConnector;

  @Option(
      names = "--only",
      paramLabel = "ITEM",
      split = ",",
      description = "Only the nets of these items.")
  private List<String> only = new ArrayList<>();

  @Mixin private Touched touched = new Touched();

  @Option(
      names = "--after",
      paramLabel = "FILE",
      description = "Readings already taken: only what they do not prove is planned.")
  private List<Path> taken = new ArrayList<>();

  @Mixin private UnitOptions unit = new UnitOptions();

  @Mixin private OwnTables tables = new OwnTables();

  @Mixin private Sheets file = new Sheets();

  PlanCommand(Output output) {
    this.output = output;
  }

  @Override
  public Integer call() {
    List<Path> files = new ArrayList<>(taken);
    files.add(harnessFile.file());
    Inputs inputs = new Inputs(files);
    Optional<Harness> harness = inputs.harness(harnessFile.file());
    if (harness.isEmpty() || inputs.problems().hasErrors()) {
      inputs.findProblems(taken);
      return refuse(inputs);
    }
    ReadingSet readings =
        touched.before(
            inputs.ofOneUnit(harness.get(), inputs.readings(taken, harness.get()), unit),
            spec,
            harness.get());
    if (inputs.problems().hasErrors()) {
      return refuse(inputs);
    }
    output.err().print(ProblemText.write(inputs.problems().list()));
    Tables own = tables.read(spec);
    Circuit circuit = Circuit.of(harness.get());
    JoinLimits limits = JoinLimits.of(circuit, own);
    Optional<Comparison> after =
        taken.isEmpty() ? Optional.empty() : Optional.of(Comparison.of(circuit, limits, readings));
    Named named = new Named(spec, harness.get());
    PlanOptions options =
        new PlanOptions(
            isolation,
            !noInsulation,
            byConnector,
            named.items("--only", only),
            touched.wires(spec, harness.get()),
            touched.items(spec, harness.get()),
            after,
            readings.reworksBefore());
    TestPlan plan = Planner.plan(circuit, limits, new HandMovements(own), options);
    return file.write(
        output,
        spec,
        PrintForm.tested(UnitTitle.of(harness.get()), file.paper()),
        () -> PlanSheets.of(plan),
        () ->
            file.json()
                ? PlanJson.write(plan, inputs.problems().list())
                : PlanText.write(plan, !file.asked(), output.showsColour()));
  }

  private int refuse(Inputs inputs) {
    if (file.json()) {
      output.out().print(PlanJson.write(inputs.problems().list()));
    }
    output.err().print(ProblemText.write(inputs.problems().list()));
    return inputs.exitCode();
  }
}
