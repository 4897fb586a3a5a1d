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

  /** How the unit stands: its switches and ends, and whether the rest is tied together. */
  private record Stand(SwitchState state, boolean tied) {
    static final Stand NORMAL = new Stand(SwitchState.normal(), false);

    static Stand in(Step step) {
      return new Stand(step.probing().state(), step.probing().toRest());
    }
  }

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
    List<Stand> stands = new ArrayList<>(steps.stream().map(Stand::in).toList());
    if (isLast) {
      stands.add(Stand.NORMAL);
    }
    Stand was = before.isEmpty() ? Stand.NORMAL : Stand.in(before.get(before.size() - 1));
    for (int row = 0; row < stands.size(); row++) {
      Stand is = stands.get(row);
      List<String> first = moved(harness, was.state(), is.state());
      if (is.tied() != was.tied()) {
        first.add(was.tied() ? UNTIE : TIE);
      }
      if (!first.isEmpty()) {
        bars.put(row, String.join("  ", first));
      }
      was = is;
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
