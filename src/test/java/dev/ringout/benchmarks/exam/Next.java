package dev.ringout.benchmarks.exam;

import java.util.Arrays;
import java.util.Map;
import java.util.Optional;

/** A reading that the paper asks for. */
final class Next {
  private Next() {}

  /** Its row, nothing read yet; nothing where its points are none of the unit's. */
  static Optional<Row> row(Box listed, Map<String, Object> json) {
    int[] plus = points(listed, Examinee.text(json, "from"));
    String to = Examinee.text(json, "to");
    int[] minus = to.equals("REST") ? new int[0] : points(listed, to);
    boolean isKnown =
        Arrays.stream(plus).allMatch(point -> point >= 0)
            && Arrays.stream(minus).allMatch(point -> point >= 0);
    boolean insulation = Examinee.text(json, "kind").equals("insulation");
    return isKnown
        ? Optional.of(new Row(insulation, plus, minus, Examinee.text(json, "state"), "", ""))
        : Optional.empty();
  }

  private static int[] points(Box listed, String side) {
    return Arrays.stream(side.split("[+ ]", -1))
        .mapToInt(name -> listed.numbers.getOrDefault(name, -1))
        .toArray();
  }
}
