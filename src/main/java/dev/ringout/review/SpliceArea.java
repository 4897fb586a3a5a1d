package dev.ringout.review;

import dev.ringout.harness.Item;
import dev.ringout.harness.Point;
import dev.ringout.harness.Wire;
import dev.ringout.source.Severity;
import dev.ringout.standards.Tables.Entry;
import dev.ringout.units.Gauge;
import dev.ringout.units.Text;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** The sum of the wires in a splice, in circular mils, against its barrel. */
final class SpliceArea implements Check {
  @Override
  public String rule() {
    return "splice-area";
  }

  @Override
  public String about() {
    return "a splice barrel is filled by its wires";
  }

  @Override
  public void run(Paper paper, Findings findings) {
    for (Map.Entry<Point, List<Wire>> entry : paper.wiresAt().entrySet()) {
      String ref = entry.getKey().ref();
      Optional<Entry> barrel =
          paper.kind(ref).contains("splice") ? barrel(paper, ref) : Optional.empty();
      double sum = 0;
      boolean known = barrel.isPresent();
      for (Wire wire : entry.getValue()) {
        OptionalDouble one =
            wire.gauge().isPresent()
                ? paper.circularMils(wire.gauge().get())
                : OptionalDouble.empty();
        known &= one.isPresent();
        sum += one.orElse(0);
      }
      if (!known) {
        continue;
      }
      findings.looked();
      double least = mils(paper, barrel.get().get("finest_awg"));
      double most = mils(paper, barrel.get().get("coarsest_awg"));
      if (sum < 0.99 * least || sum > 1.01 * most) {
        findings.say(
            Severity.ERROR,
            entry.getKey(),
            Text.of(
                "%s joins %d wires of together %.0f circular mils; its %s barrel takes %.0f to %.0f",
                ref, entry.getValue().size(), sum, barrel.get().get("colour"), least, most),
            barrel.get().citation());
      }
    }
    findings.notRun(Lack.SPLICE_BARRELS);
  }

  private static Optional<Entry> barrel(Paper paper, String ref) {
    String part = paper.item(ref).map(Item::part).orElse("").toLowerCase(Locale.ROOT);
    return paper.rows("lugs").stream()
        .filter(row -> part.matches(".*\\b" + row.get("colour") + "\\b.*"))
        .findFirst();
  }

  private static double mils(Paper paper, String awg) {
    return paper.circularMils(new Gauge.Awg(Integer.parseInt(awg))).orElseThrow();
  }
}
