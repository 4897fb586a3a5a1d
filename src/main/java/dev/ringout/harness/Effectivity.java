package dev.ringout.harness;

import java.util.List;

/** For which units a list is good, as its header says it under any of the names in use. */
public final class Effectivity {
  private static final List<String> NAMES =
      List.of("effectivity", "serial numbers", "serial number", "effective for", "valid for");

  private Effectivity() {}

  /** As written, or empty. */
  public static String of(Harness harness) {
    return NAMES.stream()
        .map(name -> harness.headerValue(name).strip())
        .filter(text -> !text.isEmpty())
        .findFirst()
        .orElse("");
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
}
