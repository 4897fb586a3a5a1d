package dev.ringout.launcher;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** What a program that was started on its own said. */
record Ran(int code, String out, String err) {
  /** Starts it in a folder and waits for its end. */
  static Ran in(Path folder, Map<String, String> environment, List<?> words)
      throws IOException, InterruptedException {
    List<String> command = new ArrayList<>();
    for (Object word : words) {
      command.add(word.toString());
    }
    Path out = Files.createTempFile("ringout-out", "");
    Path err = Files.createTempFile("ringout-err", "");
    try {
      ProcessBuilder builder =
          new ProcessBuilder(command)
              .directory(folder.toFile())
              .redirectOutput(out.toFile())
              .redirectError(err.toFile());
      builder.environment().putAll(environment);
      int code = builder.start().waitFor();
      return new Ran(code, Files.readString(out), Files.readString(err));
    } finally {
      Files.delete(out);
      Files.delete(err);
    }
  }
}
