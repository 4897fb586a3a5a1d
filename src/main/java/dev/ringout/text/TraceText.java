package dev.ringout.text;

import dev.ringout.circuit.Conductor;
import dev.ringout.harness.Part;
import dev.ringout.harness.Wire;
import dev.ringout.text.Page.Style;
import dev.ringout.trace.Trace;
import dev.ringout.trace.Trace.Between;
import dev.ringout.trace.Trace.OpenContact;
import dev.ringout.trace.Trace.Step;
import dev.ringout.units.Gauge;
import dev.ringout.units.Numbers;
import dev.ringout.units.Ohms;
import dev.ringout.units.Text;
import dev.ringout.words.TraceSentences;
import java.util.List;

/** A net on one screen: what hangs where, by which wire, and what a meter should read. */
public final class TraceText {
  private static final int MOST_STEPS = 40;
  private static final int MOST_PARTS = 8;
  private static final int DEEPEST_INDENT = 12;
  private static final int POINT_WIDTH = 24;

  private final Trace trace;
  private final Page page;

  private TraceText(Trace trace, Look look) {
    this.trace = trace;
    this.page = new Page(look);
  }

  /**
   * The page.
   *
   * @param asked how each of the points asked for was understood
   */
  public static String write(Trace trace, List<String> asked, Look look) {
    TraceText text = new TraceText(trace, look);
    text.head(asked);
    text.trace.between().ifPresent(text::between);
    text.steps();
    text.around();
    text.insulation();
    return text.page.toString();
  }

  private void head(List<String> asked) {
    page.line(page.styled(Style.STRONG, String.join("  to  ", asked)));
    page.paragraph(
        "",
        Text.of(
            "%s%s. %s on its net.",
            trace.start(),
            trace.state().isNormal()
                ? ", every switch in its normal position"
                : ", with " + trace.state(),
            Numbers.count(trace.points(), "point")));
  }

  private void between(Between between) {
    page.heading("Between the two");
    page.paragraph("  ", TraceSentences.expectation(between));
    for (Conductor conductor : between.way()) {
      page.paragraph("  - ", TraceSentences.conductor(conductor));
    }
    if (!between.joinedIn().isEmpty()) {
      page.paragraph("  ", TraceSentences.joinedIn(between.joinedIn()));
    }
  }

  private void steps() {
    page.heading("The way from here");
    for (Step step : trace.steps().subList(0, Math.min(trace.steps().size(), MOST_STEPS))) {
      String point =
          " ".repeat(2 + Math.min(DEEPEST_INDENT, 2 * (step.depth() - 1))) + step.to() + " ";
      String lead = Text.of("%-" + POINT_WIDTH + "s", point);
      String ohms = step.fromStart().isKnown() ? "; " + step.fromStart().text() : "";
      page.paragraph(lead, by(step) + ohms);
    }
    if (trace.steps().size() > MOST_STEPS) {
      page.line(
          "  and "
              + Numbers.count(trace.steps().size() - (long) MOST_STEPS, "point")
              + " more (all of them with --json)");
    }
    if (trace.steps().isEmpty()) {
      page.line("  nothing: no wire, link or closed contact is here");
    }
  }

  private static String by(Step step) {
    return step.by().asWire().map(TraceText::wire).orElseGet(() -> step.by().label());
  }

  private static String wire(Wire wire) {
    StringBuilder text = new StringBuilder(wire.name());
    if (!wire.colour().isEmpty()) {
      text.append(' ').append(wire.colour());
    }
    wire.gauge().map(Gauge::label).ifPresent(gauge -> text.append(", ").append(gauge));
    wire.length()
        .ifPresent(
            length -> text.append(", ").append(Numbers.rounded(length.metres(), 3)).append(" m"));
    if (!wire.signal().isEmpty()) {
      text.append(", ").append(wire.signal());
    }
    return text.toString();
  }

  private void around() {
    if (trace.loops().isEmpty() && trace.parts().isEmpty() && trace.openContacts().isEmpty()) {
      return;
    }
    page.heading("Also here");
    if (!trace.loops().isEmpty()) {
      page.paragraph("  loop   ", TraceSentences.loops(trace.loops()));
    }
    for (Part part : trace.parts().stream().limit(MOST_PARTS).toList()) {
      page.paragraph(
          "  part   ",
          Text.of(
              "%s, %s to %s%s",
              part.label(),
              part.from(),
              part.to(),
              part.ohms().isPresent() ? ", " + Ohms.text(part.ohms().getAsDouble()) : ""));
    }
    if (trace.parts().size() > MOST_PARTS) {
      page.line("         and " + Numbers.count(trace.parts().size() - MOST_PARTS, "more part"));
    }
    for (OpenContact contact : trace.openContacts()) {
      page.paragraph(
          "  switch ",
          Text.of(
              "%s joins %s to %s at %s",
              contact.ref(), contact.here(), contact.there(), contact.position()));
    }
  }

  private void insulation() {
    page.heading("Insulation against the rest");
    page.paragraph("  ", TraceSentences.insulation(trace.insulation()));
    TraceSentences.partsInTheWay(trace.insulation())
        .ifPresent(caution -> page.paragraph("  ! ", caution));
    page.paragraph(
        "  ! ", "Dead, discharged and locked first; discharge again after. Your procedure stands.");
  }
}
