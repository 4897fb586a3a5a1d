package dev.ringout.review;

import dev.ringout.harness.Point;
import dev.ringout.units.Text;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Pins that the insert arrangement does not have. */
final class NoSuchPin implements Check {
  @Override
  public String rule() {
    return "no-such-pin";
  }

  @Override
  public String about() {
    return "every pin used exists in the insert";
  }

  @Override
  public void run(Paper paper, Findings findings) {
    for (Map.Entry<String, Set<Point>> item : paper.pointsOf().entrySet()) {
      Optional<Insert> insert = paper.insert(item.getKey());
      if (insert.isEmpty()) {
        continue;
      }
      findings.looked();
      for (Point point : item.getValue()) {
        if (!exists(insert.get(), point.pin())) {
          findings.say(
              Findings.breach(insert.get().fromMemory()),
              point,
              Text.of(
                  "insert %s has no contact %s (%s)",
                  insert.get().arrangement(), point.pin(), contacts(insert.get())),
              insert.get().citation());
        }
      }
    }
    findings.notRun(Lack.INSERT_ARRANGEMENTS);
  }

  private static boolean exists(Insert insert, String pin) {
    if (pin.equals(Point.SHELL) || insert.labels().contains(pin)) {
      return true;
    }
    boolean number = pin.matches("\\d+");
    return insert.labels().isEmpty() && (!number || Integer.parseInt(pin) <= insert.contacts());
  }

  private static String contacts(Insert insert) {
    List<String> labels = List.copyOf(insert.labels());
    return labels.isEmpty()
        ? insert.contacts() + " contacts"
        : Text.of(
            "%d contacts, %s to %s",
            insert.contacts(), labels.get(0), labels.get(labels.size() - 1));
  }
}
