package dev.ringout.harness;

import java.util.List;
import java.util.Locale;

/** For which units a list is good, as its header says it under any of the names in use. */
public final class Effectivity {
  private static final List<String> NAMES =
      List.of("effectivity", "serialnumbers", "serialnumber", "effectivefor", "validfor");

  private Effectivity() {}

  /** As written, or empty. */
  public static String of(Harness harness) {
    for (String name : NAMES) {
      for (var entry : harness.header().entrySet()) {
        if (key(entry.getKey()).equals(name) && !entry.getValue().isBlank()) {
          return entry.getValue().strip();
        }
      }
    }
    return "";
  }

  /** Whether two effectivities are for the same units, however they are written. */
  public static boolean same(String one, String other) {
    var numbers = SerialNumbers.of(one);
    var others = SerialNumbers.of(other);
    if (numbers.isPresent() && others.isPresent()) {
      return numbers.equals(others);
    }
    return one.strip().equalsIgnoreCase(other.strip());
  }

  private static String key(String text) {
    return text.toLowerCase(Locale.ROOT).replaceAll("[\\s\\p{Punct}]+", "");
  }
}
