package dev.ringout.benchmarks.damage;

import dev.ringout.support.Folders;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;

/**
 * Records with their seals and inputs: whatever is changed, nothing verifies that was not sealed.
 */
final class Seals {
  private final Chance chance;
  private final Path sealed;

  Seals(Chance chance, Path sealed) {
    this.chance = chance;
    this.sealed = sealed;
  }

  /** Seals a first record and its retest in each form. */
  void prepare(Runs runs, Path seeds) throws IOException, InterruptedException {
    Files.createDirectories(sealed);
    Folders.copy(seeds.resolve("csv-harness"), sealed.resolve("list"));
    Folders.copy(seeds.resolve("csv-readings"), sealed.resolve("one"));
    Files.copy(seeds.resolve("office-readings.xlsx"), sealed.resolve("two.xlsx"));
    String key = sealed.resolve("key").toString();
    runs.must(sealed, "report", "--new-key", key);
    for (String form : List.of("html", "pdf", "xlsx")) {
      String first = sealed.resolve("first-" + form + "." + form).toString();
      String next = sealed.resolve("next-" + form + "." + form).toString();
      runs.must(sealed, "report", path("list"), path("one"), "-o", first, "--seal", key);
      runs.must(
          sealed,
          "report",
          path("list"),
          path("two.xlsx"),
          "-o",
          next,
          "--seal",
          key,
          "--continues",
          first);
      Runs.Ran ran = runs.run(sealed, "report", "--verify", next, "--key", key + ".pub");
      if (ran.out().contains("DIFFERS")) {
        throw new IOException("nothing was sealed: " + ran);
      }
    }
  }

  private String path(String name) {
    return sealed.resolve(name).toString();
  }

  void round(Runs runs, Path work) throws IOException, InterruptedException {
    Path folder = work.resolve("sealed");
    Folders.copy(sealed, folder);
    String form = chance.of(List.of("html", "pdf", "xlsx"));
    Path record = folder.resolve("next-" + form + "." + form);
    String[] command = {
      "report", "--verify", record.toString(), "--key", sealed.resolve("key.pub").toString()
    };
    Path victim =
        folder.resolve(
            chance.of(
                List.of(
                    record.getFileName() + ".seal",
                    record.getFileName() + ".seal",
                    record.getFileName().toString(),
                    "first-" + form + "." + form,
                    "first-" + form + "." + form + ".seal",
                    "list/wires.csv",
                    "two.xlsx")));
    byte[] before = Files.readAllBytes(victim);
    byte[] after = victim.toString().endsWith(".seal") ? lines(before) : chance.bytes(before);
    Files.write(victim, after);
    Runs.Ran ran = runs.run(folder, command);
    boolean same = Arrays.equals(before, after);
    if (!same && ran.code() == 0) {
      runs.keep(folder, "verifies though " + victim.getFileName() + " is another", command);
    }
    if (same == ran.out().contains("NOT AS SEALED") && ran.code() < 64) {
      if (same) {
        runs.keep(folder, "does not verify though nothing was changed", command);
      }
    }
    if (chance.oneIn(4)) {
      runs.run(
          folder,
          "report",
          folder.resolve("list").toString(),
          folder.resolve("one").toString(),
          "-o",
          folder.resolve("last.html").toString(),
          "--continues",
          record.toString(),
          "--seal",
          sealed.resolve("key").toString());
    }
  }

  private byte[] lines(byte[] seal) {
    if (chance.oneIn(3)) {
      return chance.bytes(seal);
    }
    List<String> lines =
        new ArrayList<>(List.of(new String(seal, StandardCharsets.UTF_8).split("\n", -1)));
    for (int i = 1 + chance.below(2); i > 0; i--) {
      int at = chance.below(lines.size());
      switch (chance.below(6)) {
        case 0 -> lines.remove(at);
        case 1 -> lines.add(at, lines.get(at));
        case 2 -> Collections.swap(lines, at, chance.below(lines.size()));
        case 3 -> lines.set(at, lines.get(at) + chance.word());
        case 4 -> lines.add(at, chance.word());
        default -> {
          String[] parts = lines.get(at).split("\t", -1);
          parts[chance.below(parts.length)] = chance.word();
          lines.set(at, String.join("\t", parts));
        }
      }
    }
    return String.join("\n", lines).getBytes(StandardCharsets.UTF_8);
  }
}
