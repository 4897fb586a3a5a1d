package dev.ringout.review;

import dev.ringout.harness.Point;
import dev.ringout.source.Severity;
import dev.ringout.standards.ContactSizes.ContactSize;
import dev.ringout.units.Text;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Cavities with neither a wire nor a spare contact. */
final class UnusedCavities implements Check {
  @Override
  public String rule() {
    return "unused-cavities";
  }

  @Override
  public String about() {
    return "every cavity without a wire is filled or listed";
  }

  @Override
  public void run(Paper paper, Findings findings) {
    for (Map.Entry<String, Set<Point>> item : paper.pointsOf().entrySet()) {
      Optional<Insert> insert = paper.insert(item.getKey());
      if (insert.isEmpty()) {
        continue;
      }
      findings.looked();
      Set<String> used = used(paper, item.getValue(), insert.get());
      if (insert.get().contacts() > used.size()) {
        say(paper, item.getKey(), insert.get(), used, findings);
      }
    }
    findings.notRun(Lack.INSERT_ARRANGEMENTS);
  }

  /** The cavities that a wire or the sheet Pins names. */
  private static Set<String> used(Paper paper, Set<Point> points, Insert insert) {
    Set<String> used =
        points.stream()
            .filter(point -> !paper.wiresAt(point).isEmpty() || paper.pin(point).isPresent())
            .map(Point::pin)
            .collect(Collectors.toCollection(HashSet::new));
    used.remove(Point.SHELL);
    if (!insert.labels().isEmpty()) {
      used.retainAll(insert.labels());
    }
    return used;
  }

  private static void say(
      Paper paper, String ref, Insert insert, Set<String> used, Findings findings) {
    int open = insert.contacts() - used.size();
    List<String> names =
        insert.labels().stream().filter(label -> !used.contains(label)).limit(8).toList();
    String plug =
        insert.onlySize().flatMap(paper::contactSize).map(ContactSize::sealingPlug).orElse("");
    findings.say(
        Severity.NOTE,
        ref,
        Text.of(
            "%d of %d cavities of %s are not listed%s: fill each with a contact%s",
            open,
            insert.contacts(),
            ref,
            names.isEmpty()
                ? ""
                : " (" + String.join(", ", names) + (open > names.size() ? " …" : "") + ")",
            plug.isEmpty() ? " and a sealing plug" : " and a plug " + plug),
        "SAE AS50881 (from memory); " + insert.citation());
  }
}
