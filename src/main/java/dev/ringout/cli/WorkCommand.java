package dev.ringout.cli;

import dev.ringout.jobs.Answer;
import dev.ringout.jobs.InputName;
import dev.ringout.jobs.WorkJob;
import dev.ringout.jobs.WrongRequest;
import dev.ringout.json.WorkJson;
import dev.ringout.print.WorkSheets;
import dev.ringout.sheet.BarCode;
import dev.ringout.sheet.PrintForm;
import dev.ringout.text.WorkText;
import dev.ringout.units.Numbers;
import dev.ringout.words.ProblemText;
import dev.ringout.words.UnitTitle;
import dev.ringout.work.WorkPapers;
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
      defaultValue = "wire",
      description =
          "What is on a sleeve: wire, wire-end, both-ends, far-end, signal or terminals, or a text"
              + " of your own with {wire}, {signal}, {cable}, {here}, {here.ref}, {here.pin},"
              + " {here.number}, {there} and so on (default ${DEFAULT-VALUE}).")
  private String sleeve = "wire";

  @Option(
      names = "--code",
      paramLabel = "CODE",
      description = "The sleeves' texts as bar codes too: ${COMPLETION-CANDIDATES}.")
  private Optional<BarCode> code = Optional.empty();

  @Mixin private TablesOption tables = new TablesOption();

  @Mixin private Sheets file = new Sheets();

  WorkCommand(Output output) {
    this.output = output;
  }

  @Override
  public Integer call() throws WrongRequest {
    WorkJob.Request request =
        new WorkJob.Request(harnessFile.file(), only, sleeve, tables.folder());
    return harnessFile.door().work(request).match(this::show, this::refuse);
  }

  private int show(Answer.Given<WorkPapers> answer) {
    output.err().print(ProblemText.write(answer.problems()));
    WorkPapers papers = answer.value();
    return file.write(
        output,
        spec,
        PrintForm.wired(UnitTitle.of(papers.harness()), file.paper())
            .of(InputName.serial(harnessFile.file())),
        () -> WorkSheets.of(papers, code),
        Numbers.count(papers.sheets().size(), "item")
            + ", "
            + Numbers.count(papers.cuts().size(), "wire"),
        () ->
            file.json()
                ? WorkJson.write(papers, answer.problems())
                : WorkText.write(papers, output.look()));
  }

  private int refuse(Answer.Refused<WorkPapers> answer) {
    if (file.json()) {
      output.out().print(WorkJson.write(answer.problems()));
    }
    return output.refuse(answer);
  }
}
