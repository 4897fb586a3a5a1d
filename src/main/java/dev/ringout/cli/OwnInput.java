package dev.ringout.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine;
import picocli.CommandLine.ParseResult;

/**
 * Refuses to write a result over a file that the same command reads, whatever it is called there.
 */
final class OwnInput {
  private static final String OUTPUT = "-o";

  /** What an empty word of the command line would name is the folder in which one happens to be. */
  private static final Path NOTHING = Path.of("");

  private OwnInput() {}

  /** Runs a command unless its output is one of its inputs. */
  static int run(ParseResult parsed) {
    ParseResult command = parsed;
    while (command.hasSubcommand()) {
      command = command.subcommand();
    }
    List<Path> inputs = new ArrayList<>();
    List<Path> outputs = new ArrayList<>();
    command
        .matchedArgs()
        .forEach(
            arg -> {
              boolean isOutput =
                  arg instanceof CommandLine.Model.OptionSpec option
                      && List.of(option.names()).contains(OUTPUT);
              collect(arg.getValue(), isOutput ? outputs : inputs);
            });
    if (inputs.contains(NOTHING) || outputs.contains(NOTHING)) {
      throw new CommandLine.ParameterException(
          command.commandSpec().commandLine(), "a file's name is empty");
    }
    for (Path output : outputs) {
      for (Path input : inputs) {
        if (isSame(output, input)) {
          throw new CommandLine.ParameterException(
              command.commandSpec().commandLine(),
              "-o " + output + " is what this command reads; give the result another name");
        }
      }
    }
    try {
      return new CommandLine.RunLast().execute(parsed);
    } finally {
      close(command.commandSpec());
    }
  }

  /** A store that a command has opened is closed with it, whatever came of it. */
  private static void close(CommandLine.Model.CommandSpec command) {
    for (CommandLine.Model.CommandSpec mixin : command.mixins().values()) {
      if (mixin.userObject() instanceof StoreOption store) {
        store.close();
      }
      close(mixin);
    }
  }

  private static void collect(Object value, List<Path> paths) {
    if (value instanceof Path path) {
      paths.add(path);
    } else if (value instanceof TablesFile tables) {
      paths.add(tables.path());
    } else if (value instanceof Optional<?> some) {
      some.ifPresent(one -> collect(one, paths));
    } else if (value instanceof Collection<?> some) {
      some.forEach(one -> collect(one, paths));
    }
  }

  private static boolean isSame(Path output, Path input) {
    try {
      return Files.exists(output) && Files.exists(input) && Files.isSameFile(output, input);
    } catch (IOException e) {
      return false;
    }
  }
}
