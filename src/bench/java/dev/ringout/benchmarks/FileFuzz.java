package dev.ringout.benchmarks;

import dev.ringout.support.Run;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Collections;
import java.util.Set;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;

/**
 * Whole files, for a fuzzer that is guided by coverage ({@code src/bench/guided-fuzz.sh}). The
 * first byte says what the others are: a list in any layout, the wires of a unit, a test sheet, or
 * the XML of a workbook's sheet, texts, styles or plan. What must hold: an exit code of the
 * contract's list.
 */
public final class FileFuzz {
  private static final Set<Integer> CODES = Set.of(0, 1, 2, 64, 65, 66, 73);
  private static final Path SAMPLE = Path.of("harness-samples/swing-bridge");
  private static final String[] PARTS = {
    "xl/worksheets/sheet2.xml", "xl/sharedStrings.xml", "xl/styles.xml", "xl/workbook.xml"
  };
  private static final Path FOLDER = folder();

  private FileFuzz() {}

  private static Path folder() {
    try {
      return Files.createTempDirectory("guided");
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
  }

  /** A byte that says what the rest is. */
  public static void fuzzerTestOneInput(byte[] bytes) throws IOException {
    if (bytes.length < 2) {
      return;
    }
    byte[] rest = Arrays.copyOfRange(bytes, 1, bytes.length);
    int kind = Math.floorMod(bytes[0] - '0', 3 + PARTS.length);
    if (kind == 0) {
      hold(rest, Run.of("import", write("list.csv", rest)));
    } else if (kind == 1) {
      Path unit = Files.createDirectories(FOLDER.resolve("unit"));
      Files.write(unit.resolve("wires.csv"), rest);
      hold(rest, Run.of("plan", unit));
    } else if (kind == 2) {
      hold(rest, Run.of("check", SAMPLE.resolve("junction-box"), write("continuity.csv", rest)));
    } else {
      hold(rest, Run.of("review", workbook(PARTS[kind - 3], rest)));
    }
  }

  private static Path write(String name, byte[] bytes) throws IOException {
    return Files.write(FOLDER.resolve(name), bytes);
  }

  private static Path workbook(String part, byte[] bytes) throws IOException {
    ByteArrayOutputStream file = new ByteArrayOutputStream();
    try (ZipFile sample = new ZipFile(SAMPLE.resolve("junction-box.xlsx").toFile());
        ZipOutputStream zip = new ZipOutputStream(file)) {
      for (ZipEntry entry : Collections.list(sample.entries())) {
        zip.putNextEntry(new ZipEntry(entry.getName()));
        zip.write(
            entry.getName().equals(part) ? bytes : sample.getInputStream(entry).readAllBytes());
      }
    }
    return write("unit.xlsx", file.toByteArray());
  }

  private static void hold(byte[] input, Run run) {
    if (!CODES.contains(run.code())) {
      throw new IllegalStateException(
          "code " + run.code() + " of " + input.length + " bytes: " + run.err());
    }
  }
}
