package dev.ringout.cli;

import dev.ringout.cells.LikelyMeant;
import dev.ringout.harness.Harness;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;

/** Items and wires that an option names, in whichever case, as the harness spells them. */
final class Named {
  private final CommandSpec spec;
  private final Harness harness;

  Named(CommandSpec spec, Harness harness) {
    this.spec = spec;
    this.harness = harness;
  }

  Set<String> items(String option, List<String> words) {
    Set<String> known = new TreeSet<>();
    harness.points().forEach(point -> known.add(point.ref()));
    return find(option, words, known);
  }

  Set<String> wires(String option, List<String> words) {
    Set<String> known = new TreeSet<>();
    harness.wires().forEach(wire -> known.add(wire.name()));
    return find(option, words, known);
  }

  private Set<String> find(String option, List<String> words, Set<String> known) {
    Set<String> found = new LinkedHashSet<>();
    for (String word : words) {
      Optional<String> match =
          known.stream().filter(name -> name.equalsIgnoreCase(word.strip())).findFirst();
      if (match.isEmpty()) {
        String maybe = LikelyMeant.nearest(word.strip(), known);
        throw new ParameterException(
            spec.commandLine(),
            option
                + ": the harness has no "
                + word.strip()
                + (maybe.isEmpty() ? "" : "; maybe " + maybe));
      }
      found.add(match.get());
    }
    return found;
  }
}
