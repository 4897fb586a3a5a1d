package dev.ringout.imports.kbl;

import dev.ringout.harness.Point;
import dev.ringout.imports.list.KblOddity;
import dev.ringout.imports.list.SkipReason;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/**
 * Items that share a name. Variants of one place, each of modules of its own, are one item; two
 * things of one unit are not, and which is meant can't be told from the name.
 */
final class SharedNames {
  private final Map<String, List<Holder>> byName = new LinkedHashMap<>();
  private final Map<Holder, Set<Element>> modulesOf = new HashMap<>();
  private final Set<String> unclear = new HashSet<>();

  SharedNames(List<Draft> drafts, Modules modules, KblXml.Content content, Findings findings) {
    for (Draft draft : drafts) {
      Set<Element> of = modules.ofConnection(draft.connection(), content);
      for (Contact contact : draft.contacts()) {
        Holder holder = contact.holder();
        List<Holder> same = byName.computeIfAbsent(holder.key(), key -> new ArrayList<>());
        if (!same.contains(holder)) {
          same.add(holder);
        }
        modulesOf.computeIfAbsent(holder, one -> new LinkedHashSet<>()).addAll(of);
      }
    }
    byName.forEach(
        (name, same) -> {
          if (same.size() > 1) {
            if (!modules.anyChosen() && areVariants(same)) {
              sayVariants(same, findings);
            } else {
              unclear.add(name);
            }
          }
        });
  }

  private static void sayVariants(List<Holder> same, Findings findings) {
    for (Holder other : same.subList(1, same.size())) {
      findings.warning(
          other.occurrence(),
          new KblOddity.VariantsOfOneName(
              other.name(), other.occurrence().id(), same.get(0).occurrence().id()));
    }
  }

  /** Whether each has modules of its own. */
  private boolean areVariants(List<Holder> same) {
    Set<Element> seen = new HashSet<>();
    for (Holder holder : same) {
      Set<Element> modules = modulesOf.getOrDefault(holder, Set.of());
      if (modules.isEmpty() || modules.stream().anyMatch(seen::contains)) {
        return false;
      }
      seen.addAll(modules);
    }
    return true;
  }

  /** Refuses a wire to an item that shares its name with another of the unit. */
  void check(Draft draft) throws NotRead {
    for (Contact contact : draft.contacts()) {
      Holder holder = contact.holder();
      if (unclear.contains(holder.key())) {
        List<Holder> same = byName.getOrDefault(holder.key(), List.of(holder));
        Element other = same.get(same.get(0).equals(holder) ? 1 : 0).occurrence();
        throw new NotRead(
            SkipReason.POINT_NOT_CLEAR,
            holder.occurrence().line(),
            new KblOddity.ItemsOfOneName(holder.name(), holder.occurrence().id(), other.id()));
      }
    }
  }

  /** A point with its item spelt as the first of that name is. */
  Point spelt(Point point) {
    List<Holder> same = byName.getOrDefault(point.ref().toUpperCase(Locale.ROOT), List.of());
    return same.isEmpty() ? point : new Point(same.get(0).name(), point.pin());
  }
}
