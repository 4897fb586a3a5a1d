package dev.ringout.text;

import dev.ringout.circuit.Conductor;
import dev.ringout.circuit.Expected;
import dev.ringout.circuit.InsulationLimits.InsulationLimit;
import dev.ringout.circuit.JoinLimits.Basis;
import dev.ringout.circuit.JoinLimits.JoinLimit;
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
import dev.ringout.units.OhmsRange;
import dev.ringout.units.Text;
import dev.ringout.words.Sentences;
import java.util.List;
import java.util.stream.Collectors;

/** A net on one screen: what hangs where, by which wire, and what a meter should read. */
public final class TraceText {
  private static final int MOST_STEPS = 40;
  private static final int MOST_PARTS = 8;
  private static final int DEEPEST_INDENT = 12;
  private static final int POINT_WIDTH = 24;

  private final Trace trace;
  private final Page page;

  private TraceText(Trace trace, boolean colour) {
    this.trace = trace;
    this.page = new Page(colour);
  }

  /**
   * The page.
   *
   * @param asked how each of the points asked for was understood
   */
  public static String write(Trace trace, List<String> asked, boolean colour) {
    TraceText text = new TraceText(trace, colour);
    text.head(asked);
    text.trace.between().ifPresent(text::between);
    text.steps();
    text.around();
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
    page.paragraph("  ", expectation(between));
    for (Conductor conductor : between.way()) {
      page.paragraph("  - ", described(conductor));
    }
    if (!between.joinedIn().isEmpty()) {
      page.paragraph(
          "  ",
          "Joined with "
              + between.joinedIn().stream()
                  .map(Object::toString)
                  .map(state -> state.isEmpty() ? "every switch in its normal position" : state)
                  .collect(Collectors.joining(", or with "))
              + ".");
    }
  }

  private static String expectation(Between between) {
    if (between.expected() instanceof Expected.Joined) {
      return "Joined: a meter should read " + joined(between.limit());
    }
    if (between.expected() instanceof Expected.ThroughParts through) {
      String parts = String.join(", ", between.partNames());
      if (Double.isInfinite(through.lowOhms())) {
        return Text.of("Not joined; the %s blocks with the positive lead here.", parts);
      }
      return through.mayBeOpen()
          ? Text.of("Not joined; through the %s any value but a short.", parts)
          : Text.of(
              "Not joined; through the %s a meter should read %s.",
              parts, new OhmsRange(through.lowOhms(), through.highOhms()).text());
    }
    return "Not joined: a meter should read open.";
  }

  private static String joined(JoinLimit limit) {
    if (limit.expected().isKnown()) {
      String given =
          limit.basis() == Basis.GIVEN ? Text.of(" (limit %s)", Ohms.text(limit.ohms())) : "";
      return Text.of(
          "%s, about %s%s.",
          limit.expected().text(), Ohms.text(limit.expected().middleOhms()), given);
    }
    String why =
        limit.basis() == Basis.LINKS_ALONE
            ? "only links are on the way"
            : "a wire on the way has no gauge or no length";
    return Text.of(
        "at most %s, the %s limit (%s).",
        Ohms.text(limit.ohms()), limit.basis() == Basis.GIVEN ? "given" : "fixed", why);
  }

  private static String described(Conductor conductor) {
    return conductor instanceof Conductor.OfWire wire
        ? Sentences.wire(wire.wire())
        : Sentences.capital(conductor.label());
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
    if (!(step.by() instanceof Conductor.OfWire one)) {
      return step.by().label();
    }
    Wire wire = one.wire();
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
    InsulationLimit insulation = trace.insulation();
    boolean any =
        !trace.loops().isEmpty() || !trace.parts().isEmpty() || !trace.openContacts().isEmpty();
    if (any) {
      page.heading("Also here");
    }
    if (!trace.loops().isEmpty()) {
      page.paragraph(
          "  loop   ",
          some(trace.loops().stream().map(Conductor::label).toList())
              + ": the net holds without, and a beep proves nothing");
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
    page.heading("Insulation against the rest");
    page.paragraph(
        "  ",
        Text.of(
            "At least %s at %s V%s.",
            Ohms.text(insulation.minOhms()),
            Numbers.plain(insulation.volts()),
            insulation.own() ? ", this net's own limit" : ""));
    if (!insulation.sensitive().isEmpty()) {
      page.paragraph(
          "  ! ",
          Text.of(
              "Disconnect %s first, or test at no more than %s V.",
              some(insulation.sensitive().stream().map(Part::label).distinct().toList()),
              Numbers.plain(insulation.leastVolts())));
    } else if (!insulation.across().isEmpty()) {
      page.paragraph(
          "  ! ",
          Text.of(
              "%s would be read instead: disconnect it, or tie both its ends to one side.",
              Sentences.capital(
                  some(insulation.across().stream().map(Part::label).distinct().toList()))));
    }
    page.paragraph(
        "  ! ", "Dead, discharged and locked first; discharge again after. Your procedure stands.");
  }

  private static String some(List<String> names) {
    return Text.first(names, MOST_PARTS);
  }
}
