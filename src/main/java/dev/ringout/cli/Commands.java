package dev.ringout.cli;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import picocli.CommandLine;

/** Makes the commands, each with where its output goes. */
final class Commands {
  private final Map<String, Supplier<?>> byName = new LinkedHashMap<>();

  Commands(Output output) {
    byName.put("asfound", () -> new AsFoundCommand(output));
    byName.put("bench", () -> new BenchCommand(output));
    byName.put("check", () -> new CheckCommand(output));
    byName.put("diff", () -> new DiffCommand(output));
    byName.put("found", () -> new FoundCommand(output));
    byName.put("import", () -> new ImportCommand(output));
    byName.put("lot", () -> new LotCommand(output));
    byName.put("meters", () -> new MetersCommand(output));
    byName.put("people", () -> new PeopleCommand(output));
    byName.put("plan", () -> new PlanCommand(output));
    byName.put("report", () -> new ReportCommand(output));
    byName.put("review", () -> new ReviewCommand(output));
    byName.put("store", () -> new StoreCommand(output));
    byName.put("trace", () -> new TraceCommand(output));
    byName.put("units", () -> new UnitsCommand(output));
    byName.put("work", () -> new WorkCommand(output));
  }

  /** {@code help check} is {@code check --help}; what is no command is told to be none. */
  String[] forHelp(String... words) {
    if (words.length == 0 || !words[0].equals("help")) {
      return words;
    }
    List<String> asked = new ArrayList<>(Arrays.asList(words).subList(1, words.length));
    if (asked.isEmpty() || byName.containsKey(asked.get(0))) {
      asked.add("--help");
    }
    return asked.toArray(String[]::new);
  }

  /**
   * Adds the one command that is asked for, or all where none is: what a command understands is
   * read from its annotations, which for all of them takes a tenth of a short run.
   */
  void addTo(CommandLine root, String... words) {
    String asked = words.length == 0 ? "" : words[0];
    byName.forEach(
        (name, command) -> {
          if (name.equals(asked) || !byName.containsKey(asked)) {
            root.addSubcommand(command.get());
          }
        });
  }
}
