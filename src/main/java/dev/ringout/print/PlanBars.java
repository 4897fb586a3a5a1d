package dev.ringout.print;

import dev.ringout.harness.Harness;
import dev.ringout.harness.Switch;
import dev.ringout.harness.SwitchState;
import dev.ringout.plan.Step;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;

/** Where on a test sheet something else than a probe has to be moved first. */
final class PlanBars {
  private static final String TIE =
      "Tie all points and shells together: REST, as drawn on the page REST. Take out each net in"
          + " turn.";
  private static final String UNTIE = "Untie REST.";

  private PlanBars() {}

  /**
   * The bars before the rows of some steps: when switches stand otherwise, an end is lifted or put
   * back, or the rest is tied together.
   *
   * @param before the steps of the sheet before: as they leave switches, ends and the rest, so it
   *     stands when these begin
   * @param isLast whether nothing is read after these steps: all is put back then
   */
  static SortedMap<Integer, String> of(
      Harness harness, List<Step> before, List<Step> steps, boolean isLast) {
    SortedMap<Integer, String> bars = new TreeMap<>();
    SwitchState state = SwitchState.normal();
    boolean tied = false;
    if (!before.isEmpty()) {
      Step last = before.get(before.size() - 1);
      state = last.probing().state();
      tied = last.probing().toRest();
    }
    for (int row = 0; row < steps.size(); row++) {
      Step step = steps.get(row);
      List<String> first = new ArrayList<>(moved(harness, state, step.probing().state()));
      if (step.probing().toRest() != tied) {
        first.add(tied ? UNTIE : TIE);
      }
      if (!first.isEmpty()) {
        bars.put(row, String.join("  ", first));
      }
      state = step.probing().state();
      tied = step.probing().toRest();
    }
    if (isLast) {
      List<String> last = moved(harness, state, SwitchState.normal());
      if (tied) {
        last.add(UNTIE);
      }
      if (!last.isEmpty()) {
        bars.put(steps.size(), String.join("  ", last));
      }
    }
    return bars;
  }

  private static List<String> moved(Harness harness, SwitchState was, SwitchState is) {
    List<String> moved = new ArrayList<>();
    TreeSet<String> names = new TreeSet<>(was.positions().keySet());
    names.addAll(is.positions().keySet());
    for (String name : names) {
      String before = was.positions().getOrDefault(name, "");
      String now = is.positions().getOrDefault(name, "");
      if (!before.equals(now)) {
        moved.add(moved(harness, name, before, now));
      }
    }
    return moved;
  }

  private static String moved(Harness harness, String name, String before, String now) {
    if (now.equals(SwitchState.LIFTED)) {
      return "Lift one end of " + name + ".";
    }
    if (before.equals(SwitchState.LIFTED)) {
      return "Put " + name + " back on its point.";
    }
    return now.isEmpty()
        ? "Set " + name + " back to " + normal(harness, name) + "."
        : "Set " + name + " to " + now + ".";
  }

  private static String normal(Harness harness, String name) {
    return harness.switches().stream()
        .filter(one -> one.ref().equals(name))
        .map(Switch::normalState)
        .findFirst()
        .orElse("normal");
  }
}
