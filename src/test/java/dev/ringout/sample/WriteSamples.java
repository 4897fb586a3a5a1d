package dev.ringout.sample;

import java.io.IOException;
import java.nio.file.Path;

/** Writes harness-samples/swing-bridge anew. */
public final class WriteSamples {
  private WriteSamples() {}

  /** Writes into the folder given, or into the project's own. */
  public static void main(String[] args) throws IOException {
    write(Path.of(args.length > 0 ? args[0] : "harness-samples/swing-bridge"));
  }

  static void write(Path folder) throws IOException {
    SwingBridge bridge = new SwingBridge();
    both(folder, "junction-box", bridge.harness());
    both(folder, "junction-box-c", new RevisionC(bridge.harness()).paper());
    SampleFiles.writeWorkbook(folder.resolve("paper-errors.xlsx"), new PaperErrors().paper());
    new AsReceived(bridge.harness()).write(folder.resolve("as-received"));
    both(folder, "point-to-point", bridge.faultyReadings());
    both(folder, "point-to-point-clean", bridge.cleanReadings());
    both(folder, "point-to-point-values", bridge.valueReadings());
  }

  private static void both(Path folder, String name, Workbook content) throws IOException {
    SampleFiles.writeFolder(folder.resolve(name), content);
    SampleFiles.writeWorkbook(folder.resolve(name + ".xlsx"), content);
  }
}
