package dev.ringout.cli;

import dev.ringout.jobs.Answer;
import dev.ringout.jobs.PlanJob;
import dev.ringout.jobs.WrongRequest;
import dev.ringout.json.PlanJson;
import dev.ringout.plan.PlanOptions.Isolation;
import dev.ringout.plan.TestPlan;
import dev.ringout.print.PlanSheets;
import dev.ringout.readings.JobTemplate;
import dev.ringout.sheet.PrintForm;
import dev.ringout.text.PlanText;
import dev.ringout.units.Numbers;
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

  @Mixin private TablesOption tables = new TablesOption();

  @Mixin private Sheets file = new Sheets();

  @Option(
      names = "--job",
      paramLabel = "FILE",
      description =
          "What the station carries into every test (procedure, people, instruments): rows of the"
              + " sheet Job, or station:NAME of the store.")
  private Optional<Path> job = Optional.empty();

  PlanCommand(Output output) {
    this.output = output;
  }

  @Override
  public Integer call() throws WrongRequest {
    PlanJob.Request request =
        new PlanJob.Request(
            unit.of(harnessFile.file(), taken, touched, tables),
            isolation,
            !noInsulation,
            byConnector,
            only,
            job);
    return harnessFile.door().plan(request).match(this::show, this::refuse);
  }

  private int show(Answer.Given<TestPlan> answer) {
    output.err().print(ProblemText.write(answer.problems()));
    TestPlan plan = answer.value();
    return file.write(
        output,
        spec,
        PrintForm.tested(UnitTitle.of(plan.circuit().harness()), file.paper())
            .of(plan.options().job().value(JobTemplate.SERIAL)),
        () -> PlanSheets.of(plan),
        plan.steps().isEmpty()
            ? "0 steps: nothing is left to read"
            : Numbers.count(plan.steps().size(), "step"),
        () ->
            file.json()
                ? PlanJson.write(plan, answer.problems())
                : PlanText.write(plan, output.look()));
  }

  private int refuse(Answer.Refused<TestPlan> answer) {
    if (file.json()) {
      output.out().print(PlanJson.write(answer.problems()));
    }
    return output.refuse(answer);
  }
}
