package dev.ringout.text;

import dev.ringout.circuit.Circuit;
import dev.ringout.harness.Harness;
import dev.ringout.plan.MultiProbe;
import dev.ringout.plan.Planner;
import dev.ringout.plan.Step;
import dev.ringout.plan.TestPlan;
import dev.ringout.readings.Reading;
import dev.ringout.text.Page.Style;
import dev.ringout.units.Numbers;
import dev.ringout.units.Ohms;
import dev.ringout.units.Text;
import dev.ringout.words.PlanNotes;
import dev.ringout.words.Sentences;
import dev.ringout.words.UnitTitle;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** A plan as a page: what it takes, what to know first, and every step. */
public final class PlanText {
  private static final int FEW = 3;

  private PlanText() {}

  /** The page. */
  public static String write(TestPlan plan, Look look) {
    Page page = new Page(look);
    Harness harness = plan.circuit().harness();
    page.paragraph("", page.styled(Style.STRONG, UnitTitle.of(harness)));
    page.blank();
    page.paragraph("Steps      ", counts(plan));
    page.paragraph(
        "Walk       ",
        Text.of(
            "%.0f movements of the hands; %.0f in the order of the list",
            plan.moves(), plan.movesAsListed()));
    page.paragraph("Proves     ", Sentences.coverage(plan.coverage()));
    page.paragraph(
        "Fixture    ",
        Text.of(
            "%s would do with a probe on every point at once and pairs put in series (Kautz 1974)",
            Numbers.count(MultiProbe.of(plan.circuit()).count(), "reading")));
    page.heading("Read first");
    for (PlanNotes.Note note : PlanNotes.of(plan)) {
      page.paragraph(Text.of("  %-13s ", note.topic()), note.text());
    }
    page.heading("Steps");
    plan.steps().forEach(step -> page.line(line(plan, step)));
    return page.toString();
  }

  private static String counts(TestPlan plan) {
    Map<Step.Purpose, Integer> continuity = new EnumMap<>(Step.Purpose.class);
    int insulation = 0;
    for (Step step : plan.steps()) {
      if (step.kind() == Reading.Kind.INSULATION) {
        insulation++;
      } else {
        continuity.merge(step.purpose(), 1, Integer::sum);
      }
    }
    List<String> words =
        continuity.entrySet().stream()
            .map(entry -> entry.getValue() + " " + word(entry.getKey()))
            .toList();
    return Text.of(
        "%s: %s%s",
        Numbers.count(plan.steps().size(), "reading"),
        String.join(", ", words),
        insulation == 0 ? "" : ", " + insulation + " of insulation");
  }

  private static String word(Step.Purpose purpose) {
    return switch (purpose) {
      case JOIN -> "of joins";
      case LOOP -> "of wires that others go around";
      case CONTACT -> "at switch contacts";
      case PART -> "of parts";
      case APART -> "of nets apart";
    };
  }

  private static String line(TestPlan plan, Step step) {
    String to = step.probing().toRest() ? "REST" : side(plan.circuit(), step.probing().to());
    String state = step.probing().state().isNormal() ? "" : " (" + step.probing().state() + ")";
    return Text.of(
        "  %4d  %-36s  %s",
        step.number(),
        side(plan.circuit(), step.probing().from()) + " to " + to + state,
        limit(step));
  }

  /** The points of a side, or the first of very many: the sheet has them all. */
  private static String side(Circuit circuit, int[] points) {
    return points.length <= FEW
        ? Planner.side(circuit, points)
        : Planner.side(circuit, Arrays.copyOf(points, 1)) + "+" + (points.length - 1) + " more";
  }

  private static String limit(Step step) {
    if (step.kind() == Reading.Kind.INSULATION) {
      return Text.of(
          "%.0f V, at least %s", step.volts().orElse(0), Ohms.text(step.minOhms().orElse(0)));
    }
    if (step.expected().isApart()) {
      return "open";
    }
    if (step.maxOhms().isEmpty()) {
      return "at least " + Ohms.text(step.minOhms().orElse(0));
    }
    String most = Ohms.text(step.maxOhms().getAsDouble());
    return step.minOhms().isPresent()
        ? Ohms.text(step.minOhms().getAsDouble()) + " to " + most
        : "at most " + most;
  }
}
