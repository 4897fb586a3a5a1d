package dev.ringout.benchmarks;

import dev.ringout.intake.HarnessReader;
import dev.ringout.sheet.TabularFile;
import dev.ringout.source.Problems;
import java.nio.file.Path;

/** Reads a harness and does nothing with it: what every command pays before its own work. */
public final class ReadOnly {
  private ReadOnly() {}

  /** Argument: a harness file. */
  public static void main(String[] args) throws Exception {
    Problems problems = new Problems();
    try (TabularFile file = TabularFile.open(Path.of(args[0]), "harness", problems)) {
      System.out.println(HarnessReader.read(file, "harness", problems).wires().size() + " wires");
    }
  }
}
