package dev.ringout.benchmarks.faults;

import dev.ringout.benchmarks.faults.Rig.Component;
import dev.ringout.benchmarks.faults.Rig.Joint;
import dev.ringout.benchmarks.faults.Rig.JointKind;
import dev.ringout.benchmarks.faults.Rig.Leak;
import dev.ringout.benchmarks.faults.Sheet.Step;
import dev.ringout.compare.Judged;
import dev.ringout.units.Ohms;
import dev.ringout.units.Text;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What is wrong with a unit or its sheet, and the readings that fail: what goes into a diagnosis,
 * for whoever reads what comes out.
 */
final class Planted {
  private static final int MOST_WRITTEN_WRONG = 6;
  private static final int MOST_FAILING = 20;

  private final Trial trial;
  private final Rig paper;
  private final Rig bench;
  private final List<String> lines = new ArrayList<>();

  private Planted(Trial trial) {
    this.trial = trial;
    this.paper = trial.paper();
    this.bench = trial.bench();
  }

  /** In lines of two paragraphs: the unit, the sheet. */
  static String of(Trial trial) {
    Planted planted = new Planted(trial);
    planted.lines.add("PLANTED");
    planted.paper.joints.forEach(planted::joint);
    planted.bridges();
    planted.parts();
    planted.leaks();
    planted.writtenWrong();
    if (planted.lines.size() == 1) {
      planted.lines.add("  nothing");
    }
    planted.failing();
    return String.join("\n", planted.lines) + "\n";
  }

  private void say(String text, Object... parts) {
    lines.add("  " + Text.of(text, parts));
  }

  private static String between(Rig rig, int[] ends) {
    return rig.points.get(ends[0]) + " to " + rig.points.get(ends[1]);
  }

  private void joint(Joint listed) {
    Optional<Joint> real =
        bench.joints.stream().filter(one -> one.name.equals(listed.name)).findFirst();
    String name = listed.name + ", " + between(paper, listed.ends);
    if (real.isEmpty()) {
      say("%s: open", name);
    } else if (!Arrays.equals(real.get().ends, listed.ends)) {
      say("%s: sits %s", name, between(bench, real.get().ends));
    } else if (!real.get().position.equals(listed.position)) {
      say("%s: closed at %s instead of %s", name, real.get().position, listed.position);
    } else if (real.get().ohms != listed.ohms) {
      say("%s: %s more", name, Ohms.text(real.get().ohms - listed.ohms));
    }
  }

  private void bridges() {
    for (Joint joint : bench.joints) {
      if (joint.kind == JointKind.BRIDGE) {
        say("%s: joined", between(bench, joint.ends));
      }
    }
  }

  private void parts() {
    for (Component listed : paper.parts) {
      Component real =
          bench.parts.stream()
              .filter(one -> one.name.equals(listed.name))
              .findFirst()
              .orElseThrow();
      String name = listed.name + ", " + between(paper, listed.ends);
      if (Double.isInfinite(real.ohms) && Double.isFinite(listed.ohms)) {
        say("%s: missing", name);
      } else if (!Arrays.equals(real.ends, listed.ends)) {
        say("%s: reversed", name);
      } else if (real.ohms != listed.ohms) {
        say("%s: %s instead of %s", name, Ohms.text(real.ohms), Ohms.text(listed.ohms));
      }
    }
  }

  private void leaks() {
    for (Leak leak : bench.leaks) {
      String ends = between(bench, new int[] {leak.from(), leak.to()});
      say("%s: leaks, %s%s", ends, Ohms.text(leak.ohms()), leak.item().isEmpty() ? "" : ", wet");
    }
  }

  /** Where the sheet does not say what the meter showed. */
  private void writtenWrong() {
    int wrong = 0;
    for (Map.Entry<Step, Double> entry : trial.sheet().steps.entrySet()) {
      double shown = trial.sheet().measure(entry.getKey(), bench);
      if (Double.compare(shown, entry.getValue()) != 0) {
        wrong++;
        if (wrong <= MOST_WRITTEN_WRONG) {
          say(
              "%s: %s is written, %s was shown",
              subject(entry.getKey()), value(entry.getValue()), value(shown));
        }
      }
    }
    if (wrong > MOST_WRITTEN_WRONG) {
      say("and %d more that are not what was shown", wrong - MOST_WRITTEN_WRONG);
    }
  }

  private String subject(Step step) {
    return paper.points.get(step.from())
        + " to "
        + (step.to() == Sheet.REST ? "REST" : paper.points.get(step.to()))
        + (step.state().isEmpty() ? "" : " " + step.state());
  }

  private static String value(double ohms) {
    if (Double.isNaN(ohms)) {
      return "nothing";
    }
    return Double.isInfinite(ohms) ? "OL" : Ohms.text(ohms);
  }

  private void failing() {
    List<Judged> failing = trial.check().comparison().failing();
    lines.add(Text.of("FAILS: %d of %d READINGS", failing.size(), trial.sheet().steps.size()));
    for (Judged judged : failing.stream().limit(MOST_FAILING).toList()) {
      say(
          "%-26s %-9s %s",
          judged.reading().subject(),
          judged.reading().measured().text(),
          judged.outcome().name().toLowerCase(java.util.Locale.ROOT).replace('_', ' '));
    }
    if (failing.size() > MOST_FAILING) {
      say("and %d more", failing.size() - MOST_FAILING);
    }
  }
}
