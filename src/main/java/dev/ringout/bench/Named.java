package dev.ringout.bench;

import dev.ringout.bench.Refused.Reason;
import dev.ringout.harness.Harness;
import dev.ringout.harness.Point;
import dev.ringout.harness.Wire;
import java.util.List;
import java.util.Optional;

/** Names as somebody types or scans them, as the list spells them. */
final class Named {
  private static final String SEPARATORS = "-:. /";

  private Named() {}

  static String wire(Harness harness, String typed) throws Refused {
    return like(harness.wires().stream().map(Wire::name).toList(), typed)
        .orElseThrow(() -> new Refused(Reason.MISSING, "The list has no wire " + typed + "."));
  }

  static String item(Harness harness, String typed) throws Refused {
    return like(harness.points().stream().map(Point::ref).distinct().toList(), typed)
        .orElseThrow(() -> new Refused(Reason.MISSING, "The list has no item " + typed + "."));
  }

  /** An item, a wire or a point; as typed where it is none of them. */
  static String place(Harness harness, String typed) {
    return found(harness, typed).orElse(typed);
  }

  /** Whether it is an item, a wire or a point. */
  static boolean isName(Harness harness, String typed) {
    return found(harness, typed).isPresent();
  }

  private static Optional<String> found(Harness harness, String typed) {
    return harness.points().stream()
        .filter(point -> isCalled(point, typed.strip()))
        .map(Point::toString)
        .findFirst()
        .or(() -> like(harness.points().stream().map(Point::ref).distinct().toList(), typed))
        .or(() -> like(harness.wires().stream().map(Wire::name).toList(), typed));
  }

  /** J1-a and J1-A are two points; what stands between item and pin does not matter. */
  private static boolean isCalled(Point point, String typed) {
    int ref = point.ref().length();
    return typed.length() == ref + 1 + point.pin().length()
        && typed.regionMatches(true, 0, point.ref(), 0, ref)
        && SEPARATORS.indexOf(typed.charAt(ref)) >= 0
        && typed.endsWith(point.pin());
  }

  /** The same, or the only one that differs in case alone. */
  private static Optional<String> like(List<String> names, String typed) {
    String bare = typed.strip();
    if (names.contains(bare)) {
      return Optional.of(bare);
    }
    List<String> alike = names.stream().filter(name -> name.equalsIgnoreCase(bare)).toList();
    return alike.size() == 1 ? Optional.of(alike.get(0)) : Optional.empty();
  }
}
