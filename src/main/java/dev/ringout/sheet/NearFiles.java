package dev.ringout.sheet;

import dev.ringout.units.Text;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/** What lies in a folder under a name like that of a file which does not. */
final class NearFiles {
  /** In a folder of more than that nobody looks for a name. */
  private static final int MOST_FILES = 2_000;

  private static final int MOST_NAMED = 3;

  private NearFiles() {}

  /** That there is no such file, in which folder, and what lies there instead. */
  static String noSuch(Path path) {
    Path whole = path.toAbsolutePath().normalize();
    Path folder = whole.getParent();
    if (folder == null) {
      return "there is no such file";
    }
    if (!Files.isDirectory(folder)) {
      return "there is no such file: no folder " + Text.visible("" + folder);
    }
    List<String> near = near(folder, String.valueOf(whole.getFileName()));
    return "there is no such file in "
        + Text.visible("" + folder)
        + (near.isEmpty() ? "" : "; maybe " + Text.visible(String.join(", ", near)));
  }

  private static List<String> near(Path folder, String name) {
    List<String> names = new ArrayList<>();
    try (Stream<Path> files = Files.list(folder)) {
      files.limit(MOST_FILES).forEach(file -> names.add(String.valueOf(file.getFileName())));
    } catch (IOException e) {
      // Who may not look into a folder is not told what lies there.
      return List.of();
    }
    String stem = stem(name);
    int most = Math.max(2, stem.length() / 3);
    return names.stream()
        .filter(one -> !one.startsWith("."))
        .filter(one -> slips(stem(one), stem) <= most)
        .sorted(
            Comparator.<String>comparingInt(one -> slips(stem(one), stem))
                .thenComparing(Comparator.naturalOrder()))
        .limit(MOST_NAMED)
        .toList();
  }

  /** A name without its ending: often that alone is wrong. */
  private static String stem(String name) {
    return name.toLowerCase(Locale.ROOT).replaceFirst("\\.[^.]*$", "");
  }

  /** How many signs must be changed, added or left out (V. I. Levenshtein, 1966). */
  private static int slips(String one, String other) {
    int[] before = new int[other.length() + 1];
    for (int j = 0; j < before.length; j++) {
      before[j] = j;
    }
    for (int i = 1; i <= one.length(); i++) {
      int[] now = new int[before.length];
      now[0] = i;
      for (int j = 1; j < now.length; j++) {
        int same = before[j - 1] + (one.charAt(i - 1) == other.charAt(j - 1) ? 0 : 1);
        now[j] = Math.min(same, Math.min(before[j], now[j - 1]) + 1);
      }
      before = now;
    }
    return before[other.length()];
  }
}
