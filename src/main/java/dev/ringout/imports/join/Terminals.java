package dev.ringout.imports.join;

import dev.ringout.imports.list.End;
import dev.ringout.imports.list.Ends;
import dev.ringout.imports.list.ImportOptions;
import dev.ringout.imports.list.ListFindings;
import dev.ringout.imports.list.WiringOddity;
import dev.ringout.imports.list.Words;
import dev.ringout.source.Place;
import dev.ringout.source.Severity;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Gives a terminal to every end that the list names by its item alone. A splice, stud or post is
 * one point however often it is named, and so, with a warning, is what is called by the supply that
 * it holds: its terminals have one potential. Any other item has a terminal for each wire, and
 * which one is not known.
 */
final class Terminals {
  private final Words words;
  private final ImportOptions options;
  private final ListFindings findings;
  private final Map<String, Integer> uses = new LinkedHashMap<>();
  private final Map<String, Place> firstUse = new HashMap<>();
  private final Map<String, Integer> given = new HashMap<>();
  private final Set<String> withPins = new HashSet<>();

  Terminals(Words words, ImportOptions options, ListFindings findings) {
    this.words = words;
    this.options = options;
    this.findings = findings;
  }

  void look(End end) {
    if (end.hasPin()) {
      withPins.add(end.item());
    } else {
      uses.merge(end.item(), 1, Integer::sum);
      firstUse.putIfAbsent(end.item(), end.place());
    }
  }

  /** The end with a pin: its own, or the next of the item's unnamed terminals. */
  End give(End end) {
    if (end.hasPin()) {
      return end;
    }
    if (isOnePoint(end.item())) {
      return end.with(end.item(), "1");
    }
    int number = given.merge(end.item(), 1, Integer::sum);
    return end.with(end.item(), uses.getOrDefault(end.item(), 1) == 1 ? "?" : "?" + number);
  }

  private boolean isOnePoint(String item) {
    return isJoint(item) || Ends.isNameOfSupply(item);
  }

  private boolean isJoint(String item) {
    return options.isOnePoint(item)
        || words.mentions("joint", item)
        || Ends.isDesignatorOfJoint(item);
  }

  void report() {
    List<String> single =
        uses.keySet().stream().filter(item -> uses.getOrDefault(item, 0) == 1).toList();
    uses.forEach(
        (item, count) -> {
          Place place = firstUse.getOrDefault(item, Place.of(""));
          if (isOnePoint(item)) {
            String mark = item.substring(item.lastIndexOf(' ') + 1);
            if (withPins.contains(mark)) {
              findings.warning(place, new WiringOddity.PinElsewhere(mark));
            } else if (count > 1) {
              // G101 may be a ground, or a generator; a supply may have terminals of its own.
              boolean sure = options.isOnePoint(item) || (isJoint(item) && !item.matches("G\\d+"));
              findings.add(
                  sure ? Severity.NOTE : Severity.WARNING,
                  place,
                  "",
                  new WiringOddity.TakenAsOnePoint(item, count));
            }
          } else if (count > 1) {
            findings.warning(place, new WiringOddity.TerminalForEach(item, count));
          } else if (withPins.contains(item)) {
            findings.warning(place, new WiringOddity.PinElsewhere(item));
          }
        });
    if (!single.isEmpty()) {
      findings.note(
          firstUse.getOrDefault(single.get(0), Place.of("")),
          new WiringOddity.NamedOnceWithoutPin(single.size()));
    }
  }
}
