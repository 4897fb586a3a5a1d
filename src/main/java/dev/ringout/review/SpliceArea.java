package dev.ringout.review;

import dev.ringout.harness.Item;
import dev.ringout.harness.Point;
import dev.ringout.harness.Wire;
import dev.ringout.standards.CopperWire;
import dev.ringout.standards.Tables.Entry;
import dev.ringout.standards.WireOhms.Areas;
import dev.ringout.units.Gauge;
import dev.ringout.units.Text;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * The sum of the wires in a splice, in circular mils, against its barrel: by the strands that they
 * are made of, or may be.
 */
final class SpliceArea implements Check {
  /** Sizes never meet exactly: a hundredth beyond either end is within. */
  private static final double NEAR = 1.01;

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
      Optional<Areas> sum =
          barrel.isPresent() ? together(paper, entry.getValue()) : Optional.empty();
      if (sum.isEmpty()) {
        continue;
      }
      findings.looked();
      double least = mils(areas(paper, barrel.get().get("finest_awg")).least());
      double most = mils(areas(paper, barrel.get().get("coarsest_awg")).most());
      if (mils(sum.get().most()) < least / NEAR || mils(sum.get().least()) > most * NEAR) {
        findings.say(
            Findings.breachOf(barrel.get()),
            entry.getKey(),
            Text.of(
                "%s joins %s %.0f circular mils; its %s barrel takes %.0f to %.0f",
                ref,
                entry.getValue().size() == 1
                    ? "a wire of"
                    : Text.of("%d wires of together", entry.getValue().size()),
                mils(sum.get().most()),
                barrel.get().get("colour"),
                least,
                most),
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

  /** From the least to the most that the wires have together; absent where one is not known. */
  private static Optional<Areas> together(Paper paper, List<Wire> wires) {
    double least = 0;
    double most = 0;
    for (Wire wire : wires) {
      Optional<Areas> one =
          wire.gauge().flatMap(gauge -> paper.wireOhms().squareMillimetres(gauge, wire.making()));
      if (one.isEmpty()) {
        return Optional.empty();
      }
      least += one.get().least();
      most += one.get().most();
    }
    return Optional.of(new Areas(least, most));
  }

  private static Areas areas(Paper paper, String awg) {
    return paper
        .wireOhms()
        .squareMillimetres(new Gauge.Awg(Integer.parseInt(awg)), "")
        .orElseThrow();
  }

  private static double mils(double squareMillimetres) {
    return squareMillimetres / CopperWire.SQUARE_MILLIMETRES_PER_CIRCULAR_MIL;
  }
}
