package dev.ringout.cli;

import dev.ringout.Ringout;
import java.nio.file.Path;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** The first argument of every command that works from a harness file. */
final class HarnessArgument {
  @Parameters(
      index = "0",
      paramLabel = "HARNESS",
      description = "The harness file: .xlsx, .xls, .csv or a folder of .csv; or unit:SERIAL.")
  private Path file = Path.of("");

  @Mixin private StoreOption store = new StoreOption();

  /** The door by which the harness file is read. */
  Ringout door() {
    return store.door();
  }

  /** The option of the store as it was typed, for a command that goes on. */
  String storeTyped() {
    return store.typed();
  }

  Path file() {
    return file;
  }
}
