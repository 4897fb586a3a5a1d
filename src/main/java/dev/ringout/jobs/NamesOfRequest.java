package dev.ringout.jobs;

import dev.ringout.cells.LikelyMeant;
import dev.ringout.harness.Harness;
import dev.ringout.harness.NaturalOrder;
import dev.ringout.harness.Point;
import dev.ringout.harness.Wire;
import dev.ringout.intake.WireSearch;
import dev.ringout.jobs.WrongRequest.Part;
import dev.ringout.units.Text;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** Items and wires that a request names, as people say them, as the harness spells them. */
final class NamesOfRequest {
  private static final int MOST_ITEMS = 12;

  private final Harness harness;

  NamesOfRequest(Harness harness) {
    this.harness = harness;
  }

  Set<String> items(Part part, List<String> words) throws WrongRequest {
    if (words.isEmpty()) {
      // A list may have a hundred thousand points, and mostly nothing is named.
      return Set.of();
    }
    Set<String> known = sorted(harness.points().stream().map(Point::ref).toList());
    Set<String> found = new LinkedHashSet<>();
    for (String word : words) {
      Optional<String> match =
          known.stream().filter(name -> name.equalsIgnoreCase(word.strip())).findFirst();
      if (match.isEmpty()) {
        throw noSuch(
            part,
            "item",
            word,
            known,
            "its items are " + Text.first(List.copyOf(known), MOST_ITEMS));
      }
      found.add(match.get());
    }
    return found;
  }

  Set<String> wires(Part part, List<String> words) throws WrongRequest {
    Set<String> found = new LinkedHashSet<>();
    for (String word : words) {
      found.add(wire(part, word).name());
    }
    return found;
  }

  /** The one wire that is meant. */
  Wire wire(Part part, String word) throws WrongRequest {
    List<Wire> found = new WireSearch(harness).find(word);
    if (found.isEmpty()) {
      throw noWire(part, word.strip());
    }
    if (found.stream().map(Wire::name).distinct().count() > 1) {
      throw new WrongRequest(part, WireSearch.several(word.strip(), found));
    }
    return found.get(0);
  }

  /** A name of no wire; or of one together with a colour that it does not have. */
  WrongRequest noWire(Part part, String word) {
    String name = word.replaceFirst("\\s+\\S+$", "");
    List<Wire> named = name.equals(word) ? List.of() : new WireSearch(harness).find(name);
    if (named.size() == 1 && !named.get(0).colour().isEmpty()) {
      return new WrongRequest(
          part, "the harness has no wire " + word + "; " + name + " is " + named.get(0).colour());
    }
    NavigableSet<String> known = sorted(harness.wires().stream().map(Wire::name).toList());
    String all = known.isEmpty() ? "" : "its wires are " + known.first() + " to " + known.last();
    return noSuch(part, "wire", word, known, all);
  }

  private static NavigableSet<String> sorted(Collection<String> names) {
    return names.stream()
        .collect(Collectors.toCollection(() -> new TreeSet<>(NaturalOrder.INSTANCE)));
  }

  /** A name that is none, with the nearest that is one, or with what there is. */
  private static WrongRequest noSuch(
      Part part, String kind, String word, Set<String> known, String all) {
    String nearest = LikelyMeant.nearest(word.strip(), known);
    String hint = nearest.isEmpty() ? all : "maybe " + nearest;
    return new WrongRequest(
        part,
        "the harness has no " + kind + " " + word.strip() + (hint.isEmpty() ? "" : "; " + hint));
  }
}
