package dev.ringout.cli;

import dev.ringout.harness.Harness;
import dev.ringout.readings.ReadingSet;
import dev.ringout.readings.Rework;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;

/** What was opened and touched since readings were taken, as it is told on the command line. */
final class Touched {
  @Option(
      names = "--touched",
      paramLabel = "WIRE",
      split = ",",
      description =
          "These wires were worked on: they, every wire of each connector opened for them, and what"
              + " is beside them, are to be read again.")
  private List<String> wires = new ArrayList<>();

  @Option(
      names = "--opened",
      paramLabel = "ITEM",
      split = ",",
      description = "These items were opened: what is at them is to be read again.")
  private List<String> items = new ArrayList<>();

  boolean isGiven() {
    return !wires.isEmpty() || !items.isEmpty();
  }

  Set<String> wires(CommandSpec spec, Harness harness) {
    return new Named(spec, harness).wires("--touched", wires);
  }

  Set<String> items(CommandSpec spec, Harness harness) {
    return new Named(spec, harness).items("--opened", items);
  }

  /** The rework; absent where nothing is told of. */
  Optional<Rework> rework(CommandSpec spec, Harness harness) {
    return isGiven()
        ? Optional.of(Rework.told(harness, wires(spec, harness), items(spec, harness)))
        : Optional.empty();
  }

  /** Readings that were taken before it. */
  ReadingSet before(ReadingSet readings, CommandSpec spec, Harness harness) {
    return rework(spec, harness).map(readings::before).orElse(readings);
  }

  /** As it was typed. */
  String typed() {
    return (wires.isEmpty() ? "" : " --touched " + String.join(",", wires))
        + (items.isEmpty() ? "" : " --opened " + String.join(",", items));
  }
}
