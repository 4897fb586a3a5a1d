package dev.ringout.imports;

import dev.ringout.imports.list.HeaderFact;
import dev.ringout.imports.list.HeaderFact.Name;
import dev.ringout.imports.list.ListFindings;
import dev.ringout.imports.list.SheetOddity;
import dev.ringout.source.Place;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** What a list says of itself as a whole: once, and the user's word before the page's. */
final class HeaderFacts {
  private HeaderFacts() {}

  /**
   * One value of each fact.
   *
   * @param read from the pages, in their order
   * @param said by the user
   */
  static List<HeaderFact> settle(
      List<HeaderFact> read, Map<String, String> said, ListFindings findings) {
    Map<Name, HeaderFact> facts = new EnumMap<>(Name.class);
    said.forEach(
        (word, value) ->
            Name.of(word)
                .ifPresent(name -> facts.put(name, new HeaderFact(name, value, Place.NOWHERE))));
    for (HeaderFact fact : read) {
      HeaderFact before = facts.putIfAbsent(fact.name(), fact);
      if (before != null && differs(before, fact)) {
        findings.warning(
            fact.place(),
            new SheetOddity.HeaderDiffers(fact.name().word(), before.value(), fact.value()));
      }
    }
    return List.copyOf(new ArrayList<>(facts.values()));
  }

  /** Each sheet may have a title and a date of its own; of one list there is one revision. */
  private static boolean differs(HeaderFact before, HeaderFact fact) {
    boolean ofTheWhole =
        switch (fact.name()) {
          case DRAWING, REVISION, EFFECTIVITY -> true;
          case TITLE, DATE -> false;
        };
    return ofTheWhole
        && !before.place().isNowhere()
        && !before.value().equalsIgnoreCase(fact.value());
  }
}
