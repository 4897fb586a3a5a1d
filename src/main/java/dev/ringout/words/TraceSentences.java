package dev.ringout.words;

import dev.ringout.circuit.Conductor;
import dev.ringout.circuit.Expected;
import dev.ringout.circuit.InsulationLimits.InsulationLimit;
import dev.ringout.circuit.JoinLimits.Basis;
import dev.ringout.circuit.JoinLimits.JoinLimit;
import dev.ringout.harness.Part;
import dev.ringout.harness.SwitchState;
import dev.ringout.trace.Trace.Between;
import dev.ringout.units.Numbers;
import dev.ringout.units.Ohms;
import dev.ringout.units.OhmsRange;
import dev.ringout.units.Text;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** What a net is, and what a meter should read on it, in words. */
public final class TraceSentences {
  private static final int MOST_NAMES = 8;

  private TraceSentences() {}

  /** What a meter should read between two points. */
  public static String expectation(Between between) {
    return between.expected().match(new Expectation(between));
  }

  private record Expectation(Between between) implements Expected.Cases<String> {
    @Override
    public String joined(Expected.Joined expected) {
      return "Joined: a meter should read " + ofJoin(between.limit());
    }

    @Override
    public String apart(Expected.Apart expected) {
      return "Not joined: a meter should read open.";
    }

    @Override
    public String throughParts(Expected.ThroughParts through) {
      String parts =
          between.parts().stream().map(Part::label).distinct().collect(Collectors.joining(", "));
      if (Double.isInfinite(through.lowOhms())) {
        return Text.of("Not joined; the %s blocks with the positive lead here.", parts);
      }
      return through.mayBeOpen()
          ? Text.of("Not joined; through the %s any value but a short.", parts)
          : Text.of(
              "Not joined; through the %s a meter should read %s.",
              parts, new OhmsRange(through.lowOhms(), through.highOhms()).text());
    }
  }

  private static String ofJoin(JoinLimit limit) {
    boolean given = limit.basis() == Basis.GIVEN;
    if (limit.expected().isKnown()) {
      return Text.of(
          "%s, about %s%s.",
          limit.expected().text(),
          Ohms.text(limit.expected().middleOhms()),
          given ? Text.of(" (limit %s)", Ohms.text(limit.ohms())) : "");
    }
    return Text.of(
        "at most %s, the %s limit (%s).",
        Ohms.text(limit.ohms()), given ? "given" : "fixed", why(limit.basis()));
  }

  private static String why(Basis basis) {
    return switch (basis) {
      case LINKS_ALONE -> "only links are on the way";
      case OTHER_METAL -> "a wire on the way is of a metal without a published value";
      default -> "a wire on the way has no gauge or no length";
    };
  }

  /** In which positions of the switches two points would be joined. */
  public static String joinedIn(List<SwitchState> states) {
    return "Joined with "
        + states.stream()
            .map(state -> state.isNormal() ? "every switch in its normal position" : "" + state)
            .collect(Collectors.joining(", or with "))
        + ".";
  }

  /** A wire with what is said of it, or what else joins two points. */
  public static String conductor(Conductor conductor) {
    return conductor
        .asWire()
        .map(Sentences::wire)
        .orElseGet(() -> Sentences.capital(conductor.label()));
  }

  /** That a net holds without some conductors. */
  public static String loops(List<Conductor> loops) {
    return Text.first(loops.stream().map(Conductor::label).toList(), MOST_NAMES)
        + ": the net holds without, and a beep proves nothing";
  }

  /** What a net's insulation must bear. */
  public static String insulation(InsulationLimit limit) {
    return Text.of(
        "At least %s at %s V%s.",
        Ohms.text(limit.minOhms()),
        Numbers.plain(limit.volts()),
        limit.own() ? ", this net's own limit" : "");
  }

  /** What is to be done with parts before insulation is tested; absent where none matters. */
  public static Optional<String> partsInTheWay(InsulationLimit limit) {
    if (!limit.sensitive().isEmpty()) {
      return Optional.of(
          Text.of(
              "Disconnect %s first, or test at no more than %s V.",
              names(limit.sensitive()), Numbers.plain(limit.leastVolts())));
    }
    return limit.across().isEmpty()
        ? Optional.empty()
        : Optional.of(
            Text.of(
                "%s would be read instead: disconnect it, or tie both its ends to one side.",
                Sentences.capital(names(limit.across()))));
  }

  private static String names(List<Part> parts) {
    return Text.first(parts.stream().map(Part::label).distinct().toList(), MOST_NAMES);
  }
}
