package dev.ringout.cli;

import dev.ringout.standards.Tables;
import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;

/** The option {@code --tables} of every command that goes by the parts tables. */
final class OwnTables {
  @Option(
      names = "--tables",
      paramLabel = "FOLDER",
      description = "Your own parts tables, laid over the published ones.")
  private Optional<Path> folder = Optional.empty();

  Optional<Path> folder() {
    return folder;
  }

  /** The published tables, with the user's laid over them where there are any. */
  Tables read(CommandSpec spec) {
    if (folder.isEmpty()) {
      return Tables.published();
    }
    try {
      return Tables.with(folder.get());
    } catch (Tables.Unusable e) {
      throw new ParameterException(
          spec.commandLine(), "--tables " + folder.get() + ": " + e.getMessage());
    }
  }
}
