package dev.ringout.cli;

import dev.ringout.check.CheckResult;
import dev.ringout.jobs.Answer;
import dev.ringout.jobs.CheckJob;
import dev.ringout.jobs.InputName;
import dev.ringout.jobs.WrongRequest;
import dev.ringout.json.CheckJson;
import dev.ringout.source.OptionNames;
import dev.ringout.text.CheckText;
import dev.ringout.text.Look;
import dev.ringout.text.NowDo;
import dev.ringout.units.ShellWord;
import dev.ringout.units.Text;
import dev.ringout.words.ProblemText;
import dev.ringout.words.Sentences;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
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
  /** Where more wires were worked on, the whole unit is read again. */
  private static final int MOST_WIRES_NAMED = 24;

  private final Output output;

  @Spec private CommandSpec spec = CommandSpec.create();

  @Mixin private HarnessArgument harnessFile = new HarnessArgument();

  @Parameters(
      index = "1..*",
      arity = "0..*",
      paramLabel = "READINGS",
      description =
          "Filled test sheets, or unit:SERIAL; later readings replace earlier ones. None: those of"
              + " the unit whose list is taken.")
  private List<Path> readingsFiles = new ArrayList<>();

  @Mixin private Touched touched = new Touched();

  @Mixin private TablesOption tables = new TablesOption();

  @Mixin private Destination destination = new Destination();

  @Mixin private UnitOptions unit = new UnitOptions();

  @Option(
      names = OptionNames.ALSO,
      paramLabel = "FILE",
      description =
          "Readings of another unit of the same list: a fault that both have is likelier one of the"
              + " paper. May be given more than once.")
  private List<Path> otherUnits = new ArrayList<>();

  @Option(
      names = "--color",
      paramLabel = "WHEN",
      defaultValue = "AUTO",
      description = "Colours: ${COMPLETION-CANDIDATES} (default ${DEFAULT-VALUE}).")
  private When colour = When.AUTO;

  enum When {
    AUTO,
    ALWAYS,
    NEVER
  }

  CheckCommand(Output output) {
    this.output = output;
  }

  @Override
  public Integer call() throws WrongRequest {
    CheckJob.Request request =
        new CheckJob.Request(unit.of(harnessFile.file(), readings(), touched, tables), otherUnits);
    return harnessFile.door().check(request).match(this::show, this::refuse);
  }

  /** Of a unit of the store the list alone means all that was read on it. */
  private List<Path> readings() {
    if (!readingsFiles.isEmpty()) {
      return readingsFiles;
    }
    if (!InputName.isUnit(harnessFile.file())) {
      throw new ParameterException(spec.commandLine(), "Missing required parameter: 'READINGS'");
    }
    return List.of(harnessFile.file());
  }

  private int show(Answer.Given<CheckResult> answer) {
    CheckResult result = answer.value();
    int unread = result.readings().unread().size();
    output.err().print(ProblemText.withoutRows(answer.problems(), unread));
    Look look = new Look(inColour(), destination.look(output).width());
    int written =
        destination.json()
            ? destination.write(output, to -> CheckJson.write(result, to))
            : destination.write(output, CheckText.write(result, look, nowDo(result)));
    if (written != ExitCode.DONE) {
      return written;
    }
    if (destination.isFile() && !destination.json()) {
      output.out().println(Sentences.verdict(result));
    }
    return unread == 0 ? ExitCode.of(result.verdict()) : ExitCode.NOT_UNDERSTOOD;
  }

  /** The commands by which this check goes on. */
  private NowDo nowDo(CheckResult result) {
    Set<String> mended = new LinkedHashSet<>(touched.wires());
    result.diagnosis().faults().forEach(fault -> fault.wires().forEach(w -> mended.add(w.name())));
    return new NowDo(
        plan(touched.typed(), "rest.xlsx"),
        mended.size() > MOST_WIRES_NAMED
            ? "ringout plan " + quoted(harnessFile.file()) + asTyped() + " -o retest.xlsx"
            : plan(Touched.typed(mended, touched.items()), "retest.xlsx"),
        record());
  }

  private String plan(String worked, String sheet) {
    StringBuilder command = new StringBuilder("ringout plan ");
    command.append(quoted(harnessFile.file())).append(worked);
    readings().forEach(file -> command.append(" --after ").append(quoted(file)));
    return command.append(asTyped()).append(" -o ").append(sheet).toString();
  }

  private String record() {
    StringBuilder command = new StringBuilder("ringout report ");
    command.append(quoted(harnessFile.file()));
    readingsFiles.forEach(file -> command.append(" ").append(quoted(file)));
    return command.append(touched.typed()).append(asTyped()).append(" -o record.pdf").toString();
  }

  private String asTyped() {
    return unit.typed() + tables.typed() + harnessFile.storeTyped();
  }

  private static String quoted(Path file) {
    return ShellWord.of(Text.visible(InputName.typed(file)));
  }

  private boolean inColour() {
    return switch (colour) {
      case ALWAYS -> true;
      case NEVER -> false;
      case AUTO -> destination.look(output).colour();
    };
  }

  private int refuse(Answer.Refused<CheckResult> answer) {
    if (destination.json()) {
      output.out().print(CheckJson.write(answer.problems()));
    }
    return output.refuse(answer);
  }
}
