package dev.ringout.cli;

import dev.ringout.jobs.Answer;
import dev.ringout.jobs.LotJob;
import dev.ringout.jobs.WrongRequest;
import dev.ringout.json.LotJson;
import dev.ringout.lot.Lot;
import dev.ringout.print.LotSheets;
import dev.ringout.sheet.PrintForm;
import dev.ringout.source.OptionNames;
import dev.ringout.source.Problem;
import dev.ringout.text.LotText;
import dev.ringout.words.LotWords;
import dev.ringout.words.ProblemText;
import dev.ringout.words.UnitTitle;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code ringout lot}: many units of one list side by side. */
@Command(
    name = "lot",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    description =
        "Puts many units of one list side by side: verdicts, what fails where, what several share,"
            + " and the joins that stand out from their siblings though they pass.")
final class LotCommand implements Callable<Integer> {
  private final Output output;

  @Spec private CommandSpec spec = CommandSpec.create();

  @Mixin private HarnessArgument harnessFile = new HarnessArgument();

  @Parameters(
      index = "1..*",
      arity = "0..*",
      paramLabel = "READINGS",
      description =
          "Filled test sheets, or folders of them; those with one serial number are of one unit."
              + " None: all units of the list that the store keeps.")
  private List<Path> sheets = new ArrayList<>();

  @Option(
      names = OptionNames.ANY_REVISION,
      description = "Accept readings that were taken against another revision of the harness.")
  private boolean anyRevision;

  @Mixin private TablesOption tables = new TablesOption();

  @Mixin private Sheets file = new Sheets();

  LotCommand(Output output) {
    this.output = output;
  }

  @Override
  public Integer call() throws WrongRequest {
    LotJob.Request request =
        new LotJob.Request(harnessFile.file(), sheets, anyRevision, tables.folder());
    return harnessFile.door().lot(request).match(this::show, this::refuse);
  }

  private int show(Answer.Given<LotJob.Result> answer) {
    Lot lot = answer.value().lot();
    output.err().print(ProblemText.withoutRows(problems(answer), 0));
    int written =
        file.write(
            output,
            spec,
            PrintForm.lot(UnitTitle.of(lot.harness()), file.paper()),
            () -> LotSheets.of(lot),
            LotWords.verdict(lot),
            () -> file.json() ? json(answer) : LotText.write(lot, output.look()));
    if (written != ExitCode.DONE) {
      return written;
    }
    boolean understood =
        lot.refused().isEmpty() && lot.units().stream().allMatch(unit -> unit.unread() == 0);
    return understood
        ? ExitCode.of(lot.verdict())
        : answer.value().missing() ? ExitCode.MISSING_INPUT : ExitCode.NOT_UNDERSTOOD;
  }

  private static List<Problem> problems(Answer.Given<LotJob.Result> answer) {
    List<Problem> problems = new ArrayList<>(answer.problems());
    answer.value().lot().units().forEach(unit -> problems.addAll(unit.problems()));
    answer.value().lot().refused().forEach(unit -> problems.addAll(unit.problems()));
    return problems;
  }

  private static String json(Answer.Given<LotJob.Result> answer) {
    try {
      StringWriter to = new StringWriter();
      LotJson.write(answer.value(), answer.problems(), to);
      return to.toString();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private int refuse(Answer.Refused<LotJob.Result> answer) {
    if (file.json()) {
      output.out().print(LotJson.write(answer.problems()));
    }
    return output.refuse(answer);
  }
}
