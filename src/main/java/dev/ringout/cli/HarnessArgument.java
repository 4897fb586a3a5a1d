package dev.ringout.cli;

import java.nio.file.Path;
import picocli.CommandLine.Parameters;

/** The first argument of every command that works from a harness file. */
final class HarnessArgument {
  @Parameters(
      index = "0",
      paramLabel = "HARNESS",
      description = "The harness file: .xlsx, .xls, .csv or a folder of .csv.")
  private Path file = Path.of("");

  Path file() {
    return file;
  }
}
