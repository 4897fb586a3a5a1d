package dev.ringout.cli;

import dev.ringout.jobs.Answer;
import dev.ringout.jobs.AsFoundJob;
import dev.ringout.json.FoundListJson;
import dev.ringout.print.HarnessSheets;
import dev.ringout.sheet.OutSheet;
import dev.ringout.text.FoundListText;
import dev.ringout.units.Numbers;
import dev.ringout.words.FoundListWords;
import dev.ringout.words.ProblemText;
import dev.ringout.work.FoundList;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code ringout asfound}: a wire list from the readings of a unit for which there is none. */
@Command(
    name = "asfound",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    description =
        "Builds a wire list from an unknown unit's readings: joins only where they were read, marked"
            + " as inferred; says what is not sure and what to read next.")
final class AsFoundCommand implements Callable<Integer> {
  private final Output output;

  @Spec private CommandSpec spec = CommandSpec.create();

  @Parameters(arity = "1..*", paramLabel = "READINGS", description = "Filled test sheets.")
  private List<Path> readingsFiles = new ArrayList<>();

  @Option(names = "--json", description = "One JSON document on standard output.")
  private boolean json;

  @Option(
      names = "-o",
      converter = TablesFile.Typed.class,
      paramLabel = "HARNESS",
      description = "Write the list as a harness file: .xlsx, or HARNESS/ for a folder of .csv.")
  private Optional<TablesFile> file = Optional.empty();

  @Mixin private StoreOption store = new StoreOption();

  @Option(names = "--force", description = "Write over an existing HARNESS.")
  private boolean force;

  AsFoundCommand(Output output) {
    this.output = output;
  }

  @Override
  public Integer call() {
    return store
        .door()
        .asFound(new AsFoundJob.Request(readingsFiles))
        .match(this::show, this::refuse);
  }

  private int show(Answer.Given<FoundList> answer) {
    output.err().print(ProblemText.write(answer.problems()));
    FoundList list = answer.value();
    int written = file.isPresent() ? write(file.get(), list) : ExitCode.DONE;
    if (written != ExitCode.DONE) {
      return written;
    }
    output
        .out()
        .print(
            json
                ? FoundListJson.write(list, answer.problems())
                : FoundListText.write(list, output.look()));
    if (!json) {
      file.ifPresent(to -> output.written(to.path(), Numbers.count(list.nets().size(), "net")));
    }
    return ExitCode.DONE;
  }

  private int refuse(Answer.Refused<FoundList> answer) {
    if (json) {
      output.out().print(FoundListJson.write(answer.problems()));
    }
    return output.refuse(answer);
  }

  private int write(TablesFile to, FoundList list) {
    if (list.nets().isEmpty()) {
      output.err().println("ringout: no two points were read joined, so nothing is written");
      return ExitCode.NOT_UNDERSTOOD;
    }
    List<OutSheet> sheets =
        HarnessSheets.of(
            FoundListWords.wiring(list),
            Map.of(FoundList.HEADER, "inferred from readings; no drawing"));
    return Sheets.writeHarness(output, spec, to, sheets, force);
  }
}
