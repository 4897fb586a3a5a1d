package dev.ringout.cli;

import dev.ringout.check.CheckResult;
import dev.ringout.harness.Harness;
import dev.ringout.json.CheckJson;
import dev.ringout.readings.ReadingSet;
import dev.ringout.standards.Tables;
import dev.ringout.text.CheckText;
import dev.ringout.units.Text;
import dev.ringout.words.ProblemText;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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
  private final Output output;

  @Spec private CommandSpec spec = CommandSpec.create();

  @Mixin private HarnessArgument harnessFile = new HarnessArgument();

  @Parameters(
      index = "1..*",
      arity = "1..*",
      paramLabel = "READINGS",
      description = "Filled test sheets; later readings replace earlier ones.")
  private List<Path> readingsFiles = new ArrayList<>();

  @Mixin private Touched touched = new Touched();

  @Mixin private OwnTables tables = new OwnTables();

  @Mixin private Destination destination = new Destination();

  @Mixin private UnitOptions unit = new UnitOptions();

  @Option(
      names = "--also",
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
  public Integer call() {
    for (Path file : otherUnits) {
      if (readingsFiles.contains(file)) {
        throw new ParameterException(
            spec.commandLine(), "--also " + file + " is among this unit's own readings");
      }
    }
    List<Path> files = new ArrayList<>(readingsFiles);
    files.add(harnessFile.file());
    files.addAll(otherUnits);
    Inputs inputs = new Inputs(files);
    Optional<Harness> harness = inputs.harness(harnessFile.file());
    if (harness.isEmpty() || inputs.problems().hasErrors()) {
      inputs.findProblems(readingsFiles);
      otherUnits.forEach(file -> inputs.findProblems(List.of(file)));
      return refuse(inputs);
    }
    ReadingSet readings =
        touched.before(
            inputs.ofOneUnit(harness.get(), inputs.readings(readingsFiles, harness.get()), unit),
            spec,
            harness.get());
    Map<String, ReadingSet> others = new LinkedHashMap<>();
    for (Path file : otherUnits) {
      ReadingSet other = inputs.readings(List.of(file), harness.get());
      others.put(file.toString(), inputs.ofAnotherUnit(harness.get(), readings, other, unit));
    }
    // A cell that can't be understood stops the verdict, and not what the other cells say.
    if (inputs.hasErrorsBeside(readings.unread())) {
      return refuse(inputs);
    }
    output.err().print(ProblemText.withoutRows(inputs.problems().list(), readings.unread().size()));
    Tables parts = tables.read(spec);
    Map<String, CheckResult> checked = new LinkedHashMap<>();
    others.forEach(
        (file, other) -> checked.put(file, CheckResult.of(harness.get(), other, parts, List.of())));
    CheckResult result =
        CheckResult.of(harness.get(), readings, parts, inputs.problems().list())
            .heldAgainst(checked);
    int written =
        destination.json()
            ? destination.write(output, to -> CheckJson.write(result, to))
            : destination.write(output, CheckText.write(result, inColour(), planOfTheRest()));
    if (written != ExitCode.DONE) {
      return written;
    }
    return readings.unread().isEmpty() ? ExitCode.of(result.verdict()) : ExitCode.NOT_UNDERSTOOD;
  }

  /** The command that plans what these readings leave open. */
  private String planOfTheRest() {
    StringBuilder command = new StringBuilder("ringout plan ");
    command.append(quoted(harnessFile.file())).append(touched.typed());
    for (Path file : readingsFiles) {
      command.append(" --after ").append(quoted(file));
    }
    return command.append(" -o rest.xlsx").toString();
  }

  private static String quoted(Path file) {
    String text = Text.visible(file.toString());
    return text.matches("[\\w./\\\\:-]+") ? text : "\"" + text + "\"";
  }

  private boolean inColour() {
    return switch (colour) {
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
