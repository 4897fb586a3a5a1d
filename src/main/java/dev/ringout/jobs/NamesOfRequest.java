package dev.ringout.jobs;

import dev.ringout.cells.LikelyMeant;
import dev.ringout.harness.Harness;
import dev.ringout.jobs.WrongRequest.Part;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** Items and wires that a request names, in whichever case, as the harness spells them. */
final class NamesOfRequest {
  private final Harness harness;

  NamesOfRequest(Harness harness) {
    this.harness = harness;
  }

  Set<String> items(Part part, List<String> words) throws WrongRequest {
    Set<String> known = new TreeSet<>();
    harness.points().forEach(point -> known.add(point.ref()));
    return find(part, words, known);
  }

  Set<String> wires(Part part, List<String> words) throws WrongRequest {
    Set<String> known = new TreeSet<>();
    harness.wires().forEach(wire -> known.add(wire.name()));
    return find(part, words, known);
  }

  private static Set<String> find(Part part, List<String> words, Set<String> known)
      throws WrongRequest {
    Set<String> found = new LinkedHashSet<>();
    for (String word : words) {
      Optional<String> match =
          known.stream().filter(name -> name.equalsIgnoreCase(word.strip())).findFirst();
      if (match.isEmpty()) {
        throw WrongRequest.noSuch(part, word.strip(), LikelyMeant.nearest(word.strip(), known));
      }
      found.add(match.get());
    }
    return found;
  }
}
