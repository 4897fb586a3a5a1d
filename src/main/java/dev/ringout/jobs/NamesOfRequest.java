package dev.ringout.jobs;

import dev.ringout.cells.LikelyMeant;
import dev.ringout.harness.Harness;
import dev.ringout.harness.Point;
import dev.ringout.harness.Wire;
import dev.ringout.jobs.WrongRequest.Part;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Items and wires that a request names, in whichever case, as the harness spells them. */
final class NamesOfRequest {
  private final Harness harness;

  NamesOfRequest(Harness harness) {
    this.harness = harness;
  }

  Set<String> items(Part part, List<String> words) throws WrongRequest {
    // A list may have a hundred thousand points, and mostly nothing is named.
    return words.isEmpty()
        ? Set.of()
        : find(part, words, harness.points().stream().map(Point::ref));
  }

  Set<String> wires(Part part, List<String> words) throws WrongRequest {
    return words.isEmpty() ? Set.of() : find(part, words, harness.wires().stream().map(Wire::name));
  }

  private static Set<String> find(Part part, List<String> words, Stream<String> names)
      throws WrongRequest {
    Set<String> known = names.collect(Collectors.toCollection(TreeSet::new));
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
