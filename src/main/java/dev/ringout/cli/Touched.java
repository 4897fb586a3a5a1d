package dev.ringout.cli;

import dev.ringout.jobs.UnitRequest;
import dev.ringout.source.OptionNames;
import dev.ringout.units.ShellWord;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import picocli.CommandLine.Option;

/** What was opened and touched since readings were taken, as it is told on the command line. */
final class Touched {
  @Option(
      names = OptionNames.TOUCHED,
      paramLabel = "WIRE",
      split = ",",
      description =
          "These wires were worked on: they, every wire of each connector opened for them, and what"
              + " is beside them, are to be read again.")
  private List<String> wires = new ArrayList<>();

  @Option(
      names = OptionNames.OPENED,
      paramLabel = "ITEM",
      split = ",",
      description = "These items were opened: what is at them is to be read again.")
  private List<String> items = new ArrayList<>();

  UnitRequest.Touched asked() {
    return new UnitRequest.Touched(wires, items);
  }

  List<String> wires() {
    return wires;
  }

  List<String> items() {
    return items;
  }

  /** As it was typed. */
  String typed() {
    return typed(wires, items);
  }

  /** As it would be typed. */
  static String typed(Collection<String> wires, Collection<String> items) {
    return (wires.isEmpty() ? "" : " --touched " + ShellWord.of(String.join(",", wires)))
        + (items.isEmpty() ? "" : " --opened " + ShellWord.of(String.join(",", items)));
  }
}
