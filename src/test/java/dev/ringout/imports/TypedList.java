package dev.ringout.imports;

import dev.ringout.support.Run;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** A list that is typed in a test, imported as a user would. */
final class TypedList {
  private TypedList() {}

  /** Of the file {@code unit.csv} in a folder. */
  static Run imported(Path folder, String text, String... options) throws IOException {
    List<Object> words =
        new ArrayList<>(List.of("import", Files.writeString(folder.resolve("unit.csv"), text)));
    words.addAll(List.of(options));
    return Run.of(words.toArray());
  }
}
