package dev.ringout.cli;

import dev.ringout.jobs.Answer;
import dev.ringout.jobs.DiffJob;
import dev.ringout.jobs.RevisionPaper;
import dev.ringout.jobs.WrongRequest;
import dev.ringout.json.DiffJson;
import dev.ringout.print.DiffSheets;
import dev.ringout.sheet.PrintForm;
import dev.ringout.text.DiffText;
import dev.ringout.units.Numbers;
import dev.ringout.words.DiffWords;
import dev.ringout.words.ProblemText;
import dev.ringout.words.UnitTitle;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code ringout diff}: what changed between two revisions, and what is to be done. */
@Command(
    name = "diff",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    description =
        "Compares two revisions by connections and nets, not rows: what changed, whether it is"
            + " electrically the same, the work in an order that can be done, and what to read"
            + " again.")
final class DiffCommand implements Callable<Integer> {
  private static final int MOST_POINTS_FOR_PAGE = 20_000;

  private final Output output;

  @Spec private CommandSpec spec = CommandSpec.create();

  @Parameters(index = "0", paramLabel = "OLD", description = "The harness file as it was.")
  private Path old = Path.of("");

  @Parameters(index = "1", paramLabel = "NEW", description = "The harness file as it is to be.")
  private Path now = Path.of("");

  @Option(
      names = "--as-built",
      paramLabel = "FILE",
      description =
          "The harness file of this unit as it was found: the work starts from it, and what was"
              + " changed in the field is told.")
  private Optional<Path> asBuilt = Optional.empty();

  @Option(
      names = "--rename",
      paramLabel = "OLD=NEW",
      split = ",",
      description = "An item that has another name, such as J1=J101.")
  private List<String> renames = new ArrayList<>();

  @Option(
      names = "--as-named",
      description = "Look for no other names than those that --rename gives.")
  private boolean asNamed;

  @Mixin private StoreOption store = new StoreOption();

  @Mixin private TablesOption tables = new TablesOption();

  @Mixin private Sheets file = new Sheets();

  DiffCommand(Output output) {
    this.output = output;
  }

  @Override
  public Integer call() throws WrongRequest {
    // A page shows the first readings only; for that a large unit's plan takes too long.
    boolean forPageOnly = file.isPage();
    DiffJob.Request request =
        new DiffJob.Request(
            old,
            now,
            asBuilt,
            renames,
            !asNamed,
            forPageOnly ? OptionalInt.of(MOST_POINTS_FOR_PAGE) : OptionalInt.empty(),
            tables.folder());
    return store.door().diff(request).match(this::show, this::refuse);
  }

  private int show(Answer.Given<DiffJob.Result> answer) {
    output.err().print(ProblemText.write(answer.problems()));
    RevisionPaper paper = answer.value().paper();
    int written =
        file.write(
            output,
            spec,
            PrintForm.wired(UnitTitle.of(answer.value().later()), file.paper()),
            () -> DiffSheets.of(paper),
            written(paper),
            () ->
                file.json()
                    ? DiffJson.write(paper, answer.problems())
                    : DiffText.write(paper, output.look()));
    if (written != ExitCode.DONE) {
      return written;
    }
    return paper.isEmpty() ? ExitCode.DONE : ExitCode.FAULTS;
  }

  private static String written(RevisionPaper paper) {
    return Numbers.count(paper.difference().changes().size(), "change")
        + ", "
        + Numbers.count(paper.retests().size(), "reading")
        + " to take again. "
        + DiffWords.verdict(paper.difference(), paper.header(), paper.fromReadings());
  }

  private int refuse(Answer.Refused<DiffJob.Result> answer) {
    if (file.json()) {
      output.out().print(DiffJson.write(answer.problems()));
    }
    return output.refuse(answer);
  }
}
