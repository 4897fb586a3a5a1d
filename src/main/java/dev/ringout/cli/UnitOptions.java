package dev.ringout.cli;

import dev.ringout.jobs.UnitRequest;
import dev.ringout.source.OptionNames;
import dev.ringout.units.ShellWord;
import dev.ringout.units.Text;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** What the command line says of the unit that was read. */
final class UnitOptions {
  @Spec(Spec.Target.MIXEE)
  private CommandSpec spec = CommandSpec.create();

  private Optional<String> serial = Optional.empty();

  @Option(
      names = OptionNames.ANY_REVISION,
      description = "Accept readings that were taken against another revision of the harness.")
  private boolean anyRevision;

  @Option(
      names = OptionNames.SERIAL,
      paramLabel = "NUMBER",
      description = "The unit's serial number, for readings files that give none.")
  void serial(Optional<String> number) {
    if (number.filter(String::isBlank).isPresent()) {
      throw new ParameterException(spec.commandLine(), OptionNames.SERIAL + " needs a number");
    }
    serial = number.map(String::strip);
  }

  /** As it was typed. */
  String typed() {
    return (anyRevision ? " " + OptionNames.ANY_REVISION : "")
        + serial
            .map(number -> " " + OptionNames.SERIAL + " " + ShellWord.of(Text.visible(number)))
            .orElse("");
  }

  /** The unit of a request. */
  UnitRequest of(Path list, List<Path> readings, Touched touched, TablesOption tables) {
    return new UnitRequest(
        list,
        readings,
        new UnitRequest.Said(serial, anyRevision),
        touched.asked(),
        tables.folder());
  }
}
