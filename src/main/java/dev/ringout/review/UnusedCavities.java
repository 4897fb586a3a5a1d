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
    return "every cavity without a wire is accounted for";
  }

  @Override
  public void run(Paper paper, Findings findings) {
    for (Map.Entry<String, Set<Point>> item : paper.pointsOf().entrySet()) {
      Optional<Insert> insert = paper.insert(item.getKey());
      if (insert.isEmpty()) {
        continue;
      }
      findings.looked();
      Set<String> used =
          item.getValue().stream()
              .filter(point -> !paper.wiresAt(point).isEmpty() || paper.pin(point).isPresent())
              .map(Point::pin)
              .collect(Collectors.toCollection(HashSet::new));
      used.remove(Point.SHELL);
      if (!insert.get().labels().isEmpty()) {
        used.retainAll(insert.get().labels());
      }
      int open = insert.get().contacts() - used.size();
      if (open > 0) {
        List<String> names =
            insert.get().labels().stream().filter(label -> !used.contains(label)).limit(8).toList();
        String plug =
            insert
                .get()
                .onlySize()
                .flatMap(paper::contactSize)
                .map(ContactSize::sealingPlug)
                .orElse("");
        findings.say(
            Severity.NOTE,
            item.getKey(),
            Text.of(
                "%d of %d cavities of %s are not listed%s: fill each with a contact%s",
                open,
                insert.get().contacts(),
                item.getKey(),
                names.isEmpty()
                    ? ""
                    : " (" + String.join(", ", names) + (open > names.size() ? " …" : "") + ")",
                plug.isEmpty() ? " and a sealing plug" : " and a plug " + plug),
            "SAE AS50881 (from memory); " + insert.get().citation());
      }
    }
    findings.notRun(Lack.INSERT_ARRANGEMENTS);
  }
}
