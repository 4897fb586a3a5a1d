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
import dev.ringout.units.Text;
import dev.ringout.words.LimitWords;
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

  /** What a line has beside its points: number, blanks, and most limits. */
  private static final int BESIDE_POINTS = 26;

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
    steps(plan, page);
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

  /** The limits in a column of their own, as near as the points of most steps let them be. */
  private static void steps(TestPlan plan, Page page) {
    int longest = page.width() - BESIDE_POINTS;
    int wide =
        plan.steps().stream()
            .mapToInt(step -> points(plan, step).length())
            .filter(length -> length <= longest)
            .max()
            .orElse(0);
    for (Step step : plan.steps()) {
      String points = points(plan, step);
      page.paragraph(
          Text.of("  %4d  ", step.number()),
          points + " ".repeat(Math.max(0, wide - points.length())) + "  " + limit(step));
    }
  }

  private static String points(TestPlan plan, Step step) {
    String to = step.probing().toRest() ? "REST" : side(plan.circuit(), step.probing().to());
    String state = step.probing().state().isNormal() ? "" : " (" + step.probing().state() + ")";
    return side(plan.circuit(), step.probing().from()) + " to " + to + state;
  }

  /** The points of a side, or the first of very many: the sheet has them all. */
  private static String side(Circuit circuit, int[] points) {
    return points.length <= FEW
        ? Planner.side(circuit, points)
        : Planner.side(circuit, Arrays.copyOf(points, 1)) + "+" + (points.length - 1) + " more";
  }

  private static String limit(Step step) {
    String limit =
        step.expected().isApart() && step.kind() == Reading.Kind.CONTINUITY
            ? "open"
            : LimitWords.of(step.minOhms(), step.maxOhms());
    return (step.volts().isPresent()
            ? Text.of("%.0f V, %s", step.volts().getAsDouble(), limit)
            : limit)
        .replace(' ', Page.UNBROKEN);
  }
}
