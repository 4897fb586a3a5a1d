package dev.ringout.review;

import dev.ringout.harness.Point;
import dev.ringout.harness.Wire;
import dev.ringout.source.Severity;
import dev.ringout.standards.ContactSizes.ContactSize;
import dev.ringout.units.Numbers;
import dev.ringout.units.Text;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

/** Several wires in one contact. */
final class PinCrowded implements Check {
  @Override
  public String rule() {
    return "pin-crowded";
  }

  @Override
  public String about() {
    return "a contact holds no more wire than it takes";
  }

  @Override
  public void run(Paper paper, Findings findings) {
    findings.looked();
    paper
        .wiresAt()
        .forEach(
            (point, wires) -> {
              if (wires.size() > 1
                  && paper.isConnector(point.ref())
                  && !point.pin().equals(Point.SHELL)) {
                crowded(paper, point, wires, findings);
              }
            });
  }

  private static void crowded(Paper paper, Point point, List<Wire> wires, Findings findings) {
    Optional<ContactSize> contact =
        paper.contact(
            wires.get(0), wires.get(0).from().equals(point) ? Wire.End.FROM : Wire.End.TO);
    double area = 0;
    boolean known = contact.isPresent();
    for (Wire wire : wires) {
      OptionalDouble one =
          wire.gauge().isPresent()
              ? paper.copper().squareMillimetres(wire.gauge().get())
              : OptionalDouble.empty();
      known &= one.isPresent();
      area += one.orElse(0);
    }
    String names = wires.stream().map(Wire::name).collect(Collectors.joining(", "));
    boolean tooMuch =
        known
            && area
                > 1.01
                    * paper
                        .copper()
                        .squareMillimetres(contact.get().coarsest())
                        .orElse(Double.MAX_VALUE);
    findings.say(
        tooMuch ? Findings.breach(contact.get().fromMemory()) : Severity.WARNING,
        point,
        tooMuch
            ? Text.of(
                "%s holds %s, together %s mm²: more than a size %s contact takes (AWG %s)",
                point,
                names,
                Numbers.rounded(area, 3),
                contact.get().size(),
                contact.get().coarsest().size())
            : Text.of(
                "%s holds %d wires (%s): one crimp takes one wire unless the drawing says otherwise",
                point, wires.size(), names),
        tooMuch ? contact.get().citation() : COMMON);
  }
}
