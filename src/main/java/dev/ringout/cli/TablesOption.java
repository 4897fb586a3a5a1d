package dev.ringout.cli;

import dev.ringout.units.ShellWord;
import dev.ringout.units.Text;
import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Option;

/** The option {@code --tables} of every command that goes by the parts tables. */
final class TablesOption {
  @Option(
      names = "--tables",
      paramLabel = "FOLDER",
      description = "Your own parts tables, laid over the published ones.")
  private Optional<Path> folder = Optional.empty();

  /** As it was typed. */
  String typed() {
    return folder.map(one -> " --tables " + ShellWord.of(Text.visible("" + one))).orElse("");
  }

  Optional<Path> folder() {
    return folder;
  }
}
