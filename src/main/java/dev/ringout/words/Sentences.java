package dev.ringout.words;

import dev.ringout.check.CheckResult;
import dev.ringout.check.Doubt;
import dev.ringout.circuit.Circuit;
import dev.ringout.compare.Conceded;
import dev.ringout.compare.Coverage;
import dev.ringout.compare.Coverage.Unprovable;
import dev.ringout.compare.IdleConcession;
import dev.ringout.compare.Judged;
import dev.ringout.harness.Wire;
import dev.ringout.readings.Reading;
import dev.ringout.readings.Rework;
import dev.ringout.units.Gauge;
import dev.ringout.units.Numbers;
import dev.ringout.units.Ohms;
import dev.ringout.units.Text;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Facts as sentences that a mechanic acts on. */
public final class Sentences {
  private static final int MOST_NAMED = 6;

  private Sentences() {}

  /** A share of the odds. */
  public static String percent(double odds) {
    long percent = Math.round(odds * 100);
    return percent < 1 ? "less than 1 %" : percent + " %";
  }

  /** What is proven of what there is. */
  public static String coverage(Coverage coverage) {
    List<String> parts =
        new ArrayList<>(
            List.of(
                "joins " + tally(coverage.joins()),
                "pairs of nets apart " + tally(coverage.isolation()),
                "insulated " + tally(coverage.insulation()),
                "wires " + tally(coverage.wires())));
    if (coverage.switches().needed() > 0) {
      parts.add("switch contacts " + tally(coverage.switches()));
    }
    if (coverage.parts().needed() > 0) {
      parts.add("parts " + tally(coverage.parts()));
    }
    return String.join(", ", parts);
  }

  private static String tally(Coverage.Tally tally) {
    return tally.equals(Coverage.Tally.NONE)
        ? "not asked for"
        : tally.proven() + " of " + tally.needed();
  }

  /** A wire as one finds it: number, colour, gauge, ends. */
  public static String wire(Wire wire) {
    StringBuilder text = new StringBuilder(wire.name());
    if (!wire.colour().isEmpty()) {
      text.append(' ').append(wire.colour());
    }
    wire.gauge().map(Gauge::label).ifPresent(gauge -> text.append(", ").append(gauge));
    text.append(", ").append(wire.from()).append(" to ").append(wire.to());
    if (!wire.signal().isEmpty()) {
      text.append(", ").append(wire.signal());
    }
    return text.toString();
  }

  public static String capital(String text) {
    return text.isEmpty()
        ? text
        : text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
  }

  /** The verdict on a unit, as it stands above everything else. */
  public static String verdict(CheckResult result) {
    return plainVerdict(result)
        + (result.harness().limits().demands().insulationTest()
            ? ""
            : " NO INSULATION TEST: the list asks for none.");
  }

  private static String plainVerdict(CheckResult result) {
    int faults = result.diagnosis().faults().size();
    return switch (result.verdict()) {
      case CONFORMS -> conforms(result);
      case FAULTS ->
          faults == 0
              ? "FAULTS: readings fail, without an explanation."
              : "FAULTS: " + faults + ".";
      case INCOMPLETE -> incomplete(result);
    };
  }

  private static String conforms(CheckResult result) {
    int conceded = result.comparison().conceded().size();
    return conceded == 0
        ? "CONFORMS. Everything on the list is proven."
        : Text.of(
            "CONFORMS BY WAIVER. %s out of limits, accepted by an inspector's word; everything else"
                + " on the list is proven.",
            Numbers.count(conceded, "reading"));
  }

  private static String incomplete(CheckResult result) {
    int unread = result.readings().unread().size();
    if (unread > 0) {
      return Text.of(
          "NOT COMPLETE. No fault seen, but %s can't be understood.",
          Numbers.count(unread, "cell"));
    }
    return result.isProven()
        ? Text.of(
            "NOT COMPLETE. Every value is good; the verdict waits for %s about the test.",
            Numbers.count(result.waitsFor(), "answer"))
        : "NOT COMPLETE. No fault seen, but not everything is proven.";
  }

  /** What makes the verdict less than it seems, and whether it waits for that. */
  public static String doubt(Doubt.Raised raised) {
    return raised.doubt().match(new DoubtSentences())
        + (raised.withholds() ? " The verdict waits for this." : "");
  }

  /** What is known of several things, in one line. */
  public static String named(String... parts) {
    return Stream.of(parts).filter(part -> !part.isEmpty()).collect(Collectors.joining(", "));
  }

  /** What was opened and touched. */
  public static String rework(Rework rework) {
    return named(
        rework.timeText(),
        rework.items().isEmpty() ? "" : "opened " + String.join(" ", rework.items()),
        rework.wires().isEmpty() ? "" : "touched " + String.join(" ", rework.wires()),
        rework.note());
  }

  /** A reading out of limits that is accepted, and by whose word. */
  public static String conceded(Conceded conceded) {
    return Text.of(
        "%s reads %s; accepted %s %s by %s: %s%s",
        conceded.judged().reading().subject(),
        conceded.judged().reading().measured().text(),
        isLow(conceded.judged()) ? "down to" : "up to",
        Ohms.text(conceded.concession().acceptedOhms()),
        conceded.concession().who(),
        conceded.concession().why(),
        conceded.concession().untilDay().map(day -> ", until " + day).orElse(""));
  }

  private static boolean isLow(Judged judged) {
    return judged.reading().kind() == Reading.Kind.INSULATION || judged.expected().isApart();
  }

  /** An inspector's word that covers nothing, and why. */
  public static String idle(IdleConcession idleConcession) {
    return Text.of(
        "%s to %s, %s: %s",
        idleConcession.concession().from(),
        idleConcession.concession().to(),
        idleConcession.concession().kind().name().toLowerCase(Locale.ROOT),
        why(idleConcession));
  }

  /** Why an inspector's word covers nothing. */
  public static String why(IdleConcession idleConcession) {
    return switch (idleConcession.why()) {
      case NO_SUCH_READING -> "no such reading is out of limits";
      case NOT_SO_FAR -> "the reading is further out, or shows no value";
      case EXPIRED -> "its last day is over, or the day of the test is not stated";
      case OTHER_UNIT -> "it is for other serial numbers, or this unit's is not stated";
      case BY_THE_TESTER -> "the tester can't accept his own reading";
      case TESTER_NOT_STATED -> "who took the reading is not stated: it may be who accepts it";
    };
  }

  /** Nets between which parts lie that a meter reads instead. */
  public static String unprovable(Circuit circuit, Unprovable unprovable) {
    String points =
        Text.first(
            unprovable.points().stream().map(point -> circuit.point(point).toString()).toList(),
            MOST_NAMED);
    String parts =
        Text.first(
            unprovable.parts().stream().map(part -> circuit.part(part).label()).distinct().toList(),
            MOST_NAMED);
    return unprovable.insulation()
        ? Text.of("the insulation between the nets of %s: through %s", points, parts)
        : Text.of(
            "that the nets of %s are apart: no ohms are listed for %s, and a poor join might"
                + " read as it does",
            points, parts);
  }
}
