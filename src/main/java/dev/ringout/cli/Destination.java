package dev.ringout.cli;

import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Option;

/** The options of every command that prints a page: as JSON, or into a file. */
final class Destination {
  @Option(names = "--json", description = "One JSON document on standard output.")
  private boolean json;

  @Option(names = "-o", paramLabel = "FILE", description = "Write to FILE instead.")
  private Optional<Path> file = Optional.empty();

  @Option(names = "--force", description = "Write over an existing FILE.")
  private boolean force;

  boolean json() {
    return json;
  }

  /** Whether colours are shown unless asked for: not in a file. */
  boolean showsColour(Output output) {
    return output.showsColour() && file.isEmpty();
  }

  /** Writes a page; gives the exit code. */
  int write(Output output, String text) {
    if (file.isPresent()) {
      return output.write(file.get(), text, force);
    }
    output.out().print(text);
    return ExitCode.DONE;
  }
}
