package dev.ringout.review;

import dev.ringout.harness.Link;
import dev.ringout.harness.Part;
import dev.ringout.harness.Point;
import dev.ringout.harness.Switch;
import dev.ringout.source.Severity;
import dev.ringout.units.Text;
import java.util.HashSet;
import java.util.Set;
import java.util.TreeSet;

/** Points of switches and parts that no wire reaches. */
final class LonePoint implements Check {
  @Override
  public String rule() {
    return "lone-point";
  }

  @Override
  public String about() {
    return "what a switch or a part needs is wired";
  }

  @Override
  public void run(Paper paper, Findings findings) {
    findings.looked();
    Set<Point> seen = new TreeSet<>();
    for (Part part : paper.harness().parts()) {
      seen.add(part.from());
      seen.add(part.to());
    }
    for (Switch one : paper.harness().switches()) {
      for (Switch.Contact contact : one.contacts()) {
        seen.add(contact.from());
        seen.add(contact.to());
      }
    }
    Set<Point> linked = new HashSet<>();
    for (Link link : paper.harness().links()) {
      linked.add(link.from());
      linked.add(link.to());
    }
    for (Point point : seen) {
      if (paper.wiresAt(point).isEmpty() && !linked.contains(point)) {
        findings.say(
            Severity.WARNING,
            point,
            Text.of(
                "%s belongs to a %s, and no wire goes there",
                point, paper.kind(point.ref()).isEmpty() ? "part" : paper.kind(point.ref())),
            COMMON);
      }
    }
  }
}
