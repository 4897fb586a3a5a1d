package dev.ringout.review;

import dev.ringout.harness.Item;
import dev.ringout.harness.NaturalOrder;
import dev.ringout.harness.Point;
import dev.ringout.harness.Wire;
import dev.ringout.source.Severity;
import dev.ringout.units.Text;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** The two halves of a connector pair. */
final class MatedPins implements Check {
  @Override
  public String rule() {
    return "mated-pins";
  }

  @Override
  public String about() {
    return "mated halves have the same insert, pins and signals";
  }

  @Override
  public void run(Paper paper, Findings findings) {
    Set<String> done = new HashSet<>();
    for (Item item : paper.harness().items()) {
      Optional<Item> mate = item.mates().isEmpty() ? Optional.empty() : paper.item(item.mates());
      if (mate.isEmpty() || done.contains(mate.get().ref() + "\t" + item.ref())) {
        continue;
      }
      findings.looked();
      done.add(item.ref() + "\t" + mate.get().ref());
      compare(paper, item, mate.get(), findings);
    }
    findings.notRun(Lack.MATES);
  }

  private static void compare(Paper paper, Item item, Item mate, Findings findings) {
    String pair = item.ref() + " and " + mate.ref();
    boolean both = !item.arrangement().isEmpty() && !mate.arrangement().isEmpty();
    if (both && !item.arrangement().equalsIgnoreCase(mate.arrangement())) {
      findings.say(
          Severity.ERROR,
          item.ref(),
          Text.of(
              "%s mate, but their inserts are %s and %s",
              pair, item.arrangement(), mate.arrangement()),
          COMMON);
    }
    Set<String> here = wired(paper, item.ref());
    Set<String> there = wired(paper, mate.ref());
    alone(here, there, item, mate, findings);
    alone(there, here, mate, item, findings);
    for (String pin : here) {
      String text = signal(paper, new Point(item.ref(), pin));
      String other = signal(paper, new Point(mate.ref(), pin));
      if (!text.isEmpty() && !other.isEmpty() && !text.equalsIgnoreCase(other)) {
        findings.say(
            Severity.WARNING,
            new Point(item.ref(), pin),
            Text.of(
                "contact %s of %s carries %s on one side and %s on the other",
                pin, pair, text, other),
            COMMON);
      }
    }
  }

  private static void alone(
      Set<String> here, Set<String> there, Item item, Item mate, Findings findings) {
    List<String> alone =
        here.stream().filter(pin -> !there.contains(pin)).sorted(NaturalOrder.INSTANCE).toList();
    if (!alone.isEmpty() && !there.isEmpty()) {
      findings.say(
          Severity.WARNING,
          item.ref(),
          Text.of(
              "%s has wires at %s, its mate %s has none there",
              item.ref(), String.join(", ", alone), mate.ref()),
          COMMON);
    }
  }

  private static Set<String> wired(Paper paper, String ref) {
    Set<String> pins = new TreeSet<>(NaturalOrder.INSTANCE);
    for (Point point : paper.pointsOf().getOrDefault(ref, Set.of())) {
      if (!paper.wiresAt(point).isEmpty() && !point.pin().equals(Point.SHELL)) {
        pins.add(point.pin());
      }
    }
    return pins;
  }

  private static String signal(Paper paper, Point point) {
    return paper.wiresAt(point).stream()
        .map(Wire::signal)
        .filter(signal -> !signal.isEmpty())
        .findFirst()
        .orElse("");
  }
}
