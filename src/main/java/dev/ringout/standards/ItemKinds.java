package dev.ringout.standards;

import dev.ringout.harness.Harness;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;

/** What kind of item each designator stands for. */
public final class ItemKinds {
  private final Map<String, String> listed = new HashMap<>();
  private final Map<String, String> meanings = new HashMap<>();
  private final Map<String, String> known = new HashMap<>();

  private ItemKinds() {}

  /** The kinds that a harness lists, and for the others those of their class letters. */
  public static ItemKinds of(Harness harness, Tables tables) {
    ItemKinds kinds = new ItemKinds();
    harness.items().forEach(item -> kinds.listed.put(key(item.ref()), item.kind()));
    tables
        .rows("designators")
        .forEach(row -> kinds.meanings.put(row.get("letters"), row.get("meaning")));
    return kinds;
  }

  private static String key(String ref) {
    return ref.toUpperCase(Locale.ROOT);
  }

  /** What kind of item it is, in lower case: as listed, else by its class letters; or empty. */
  public String kind(String ref) {
    return known.computeIfAbsent(
        ref,
        one -> {
          String kind = listed.getOrDefault(key(one), "");
          return (kind.isEmpty() ? meanings.getOrDefault(classOf(one), "") : kind)
              .toLowerCase(Locale.ROOT);
        });
  }

  /** The letters of a designator: {@code TB} of {@code 1A2TB3}. */
  private static String classOf(String ref) {
    return key(ref).replaceFirst("\\d+[A-Z]?$", "").replaceFirst("^.*\\d", "");
  }

  /** Half a connector. */
  public boolean isConnector(String ref) {
    String kind = kind(ref);
    return kind.contains("connector") || kind.contains("plug") || kind.contains("receptacle");
  }

  /** A strip, board or stud, on whose terminals lugs are stacked. */
  public boolean isTerminal(String ref) {
    String kind = kind(ref);
    return kind.contains("terminal") || kind.contains("stud") || kind.contains("strip");
  }

  /** A permanent joint of wires. */
  public boolean isSplice(String ref) {
    return kind(ref).contains("splice");
  }
}
