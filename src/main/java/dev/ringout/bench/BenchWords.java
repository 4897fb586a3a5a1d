package dev.ringout.bench;

import dev.ringout.bench.BenchState.Asks;
import dev.ringout.bench.BenchState.Tone;
import dev.ringout.circuit.Expected;
import dev.ringout.compare.Judged;
import dev.ringout.compare.Outcome;
import dev.ringout.compare.ValueVerdict;
import dev.ringout.harness.Point;
import dev.ringout.harness.SwitchState;
import dev.ringout.plan.Step;
import dev.ringout.readings.Measured;
import dev.ringout.readings.Side;
import dev.ringout.units.Numbers;
import dev.ringout.units.Ohms;
import dev.ringout.units.OhmsRange;
import dev.ringout.units.Text;
import dev.ringout.words.NotJudgedSentences;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

/** What is said at a bench: short, for somebody who has a probe in each hand. */
final class BenchWords {
  private static final List<String> DIGITS =
      List.of("zero", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine");
  private static final double MILLIOHMS_IN_OHM = 1000;

  private BenchWords() {}

  /** Ohms in the unit that people say: {@code 18 mΩ}, {@code 2.2 kΩ}. */
  static String ohms(double ohms) {
    return Math.abs(ohms) < 1 && ohms != 0
        ? Numbers.rounded(ohms * MILLIOHMS_IN_OHM, 3) + " mΩ"
        : Ohms.text(ohms);
  }

  private static String between(double low, double high) {
    String least = ohms(low);
    String most = ohms(high);
    String unit = most.substring(most.indexOf(' '));
    String first =
        least.endsWith(unit) ? least.substring(0, least.length() - unit.length()) : least;
    return first + "–" + most;
  }

  /** {@code J1-a} is said "J one, small a": heard, a and A are one. */
  static String spoken(Side side) {
    return side.isRest()
        ? "all others tied together"
        : side.points().stream().map(BenchWords::spoken).collect(Collectors.joining(", with "));
  }

  static String spoken(Point point) {
    return spelled(point.ref(), false) + ", " + pin(point.pin());
  }

  private static String pin(String pin) {
    return pin.equals(Point.SHELL) ? "shell" : spelled(pin, true);
  }

  private static String spelled(String text, boolean tellsCase) {
    List<String> words = new ArrayList<>();
    StringBuilder letters = new StringBuilder();
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c >= '0' && c <= '9') {
        add(words, letters);
        words.add(DIGITS.get(c - '0'));
      } else if (tellsCase && Character.isLetter(c)) {
        words.add((Character.isLowerCase(c) ? "small " : "large ") + c);
      } else if (Character.isLetter(c)) {
        letters.append(c);
      } else {
        add(words, letters);
        sign(c).ifPresent(words::add);
      }
    }
    add(words, letters);
    return String.join(" ", words);
  }

  private static java.util.Optional<String> sign(char c) {
    return switch (c) {
      case '+' -> java.util.Optional.of("plus");
      case '-', '−' -> java.util.Optional.of("minus");
      default -> java.util.Optional.empty();
    };
  }

  private static void add(List<String> words, StringBuilder letters) {
    if (letters.length() > 0) {
      words.add(letters.toString());
      letters.setLength(0);
    }
  }

  /** How several points of a side become one; empty where it is one point. */
  static String howTied(Side side) {
    if (side.isRest()) {
      return "Tie every point that is not in the net of the other side together, every shell too.";
    }
    return side.points().size() > 1 ? "Tie these points together for this step." : "";
  }

  static Asks asks(Expected expected) {
    return expected.match(
        new Expected.Cases<Asks>() {
          @Override
          public Asks joined(Expected.Joined joined) {
            return Asks.JOINED;
          }

          @Override
          public Asks apart(Expected.Apart apart) {
            return Asks.APART;
          }

          @Override
          public Asks throughParts(Expected.ThroughParts parts) {
            return Asks.PART;
          }
        });
  }

  /** What should be read. */
  static String expected(AskedStep step) {
    OhmsRange computed = step.computed();
    if (step.isTakenByItself() && computed.isKnown() && !Double.isInfinite(computed.highOhms())) {
      // Leads that are in every value are in what should be read too.
      OhmsRange leads = step.blank().limit().leads();
      return between(computed.lowOhms() + leads.lowOhms(), computed.highOhms() + leads.highOhms());
    }
    OptionalDouble least = step.leastOhms();
    OptionalDouble most = step.mostOhms();
    if (least.isPresent() && most.isPresent()) {
      return between(least.getAsDouble(), most.getAsDouble());
    }
    if (most.isPresent()) {
      return "≤ " + ohms(most.getAsDouble());
    }
    return least.isPresent() ? "≥ " + ohms(least.getAsDouble()) : "any value";
  }

  /** What that means. */
  static String means(AskedStep step) {
    String volts =
        step.volts().isPresent() ? " at " + Numbers.plain(step.volts().getAsDouble()) + " V" : "";
    return switch (asks(step.expected())) {
      case JOINED -> "These two are joined.";
      case APART ->
          step.isInsulation()
              ? "These two are insulated from each other" + volts + "."
              : "These two are apart: OL, or at least this value.";
      case PART ->
          step.isInsulation()
              ? "Between these two lie parts; insulation" + volts + "."
              : "Between these two lies a part.";
    };
  }

  /** What a step of the plan is for. */
  static List<String> why(Step step) {
    String about = step.ofWhat().isEmpty() ? "" : " " + step.ofWhat();
    return List.of(
        switch (step.purpose()) {
          case JOIN -> "Shows that" + (about.isEmpty() ? " the net" : about) + " is in one piece.";
          case LOOP ->
              "Others go around" + (about.isEmpty() ? " it" : about) + ": this shows it by itself.";
          case CONTACT -> "Shows that the contact" + about + " closes and opens.";
          case PART -> "Shows that the part" + about + " is there, and is as listed.";
          case APART -> "Shows that this net touches no other.";
        });
  }

  /** What was read. */
  static String value(Measured measured) {
    return measured.value().map(value -> ohms(value.ohms())).orElse(measured.text());
  }

  static Tone tone(Judged judged) {
    if (judged.outcome().fails()) {
      return Tone.BAD;
    }
    boolean sure =
        judged.outcome() == Outcome.CONFORMS
            && judged.value() != ValueVerdict.HIGH
            && judged.value() != ValueVerdict.LOW
            && !isOnTheLimit(judged);
    return sure ? Tone.GOOD : Tone.UNSURE;
  }

  /** Whether it is good only because the meter can't tell it from a good one. */
  private static boolean isOnTheLimit(Judged judged) {
    OhmsRange expected = judged.limit().expected();
    if (judged.value() != ValueVerdict.AS_EXPECTED || !expected.isKnown()) {
      return false;
    }
    OhmsRange leads = judged.limit().leads();
    return judged
        .reading()
        .measured()
        .value()
        .filter(
            value ->
                value.ohms() > expected.highOhms() + leads.highOhms()
                    || value.ohms() < expected.lowOhms() + leads.lowOhms())
        .isPresent();
  }

  /** How it was judged, in one sentence. */
  static String says(Judged judged, AskedStep step) {
    String read = value(judged.reading().measured());
    return switch (judged.outcome()) {
      case CONFORMS -> conforms(judged, step);
      case ACCEPTED -> "Out of limits, and accepted by an inspector.";
      case OPEN -> Text.of("OPEN. They should be joined, and %s was read.", read);
      case UNEXPECTED_JOIN -> Text.of("JOINED. They should be apart, and %s was read.", read);
      case RESISTIVE ->
          judged.expected().isApart()
              ? Text.of("LEAK. They should be apart, and %s was read.", read)
              : Text.of(
                  "HIGH. %s was read; at most %s is right.", read, ohms(judged.limit().ohms()));
      case LOW_INSULATION -> Text.of("LOW. %s was read; %s is right.", read, expected(step));
      case PART_VALUE -> Text.of("WRONG VALUE. %s was read; %s is right.", read, expected(step));
      case NOT_TESTED -> "Not measured.";
      case NOT_JUDGED -> "NOT JUDGED: " + NotJudgedSentences.why(judged) + ".";
    };
  }

  private static String conforms(Judged judged, AskedStep step) {
    return switch (judged.value()) {
      case HIGH -> Text.of("Joined, but higher than its wires should have (%s).", expected(step));
      case LOW -> Text.of("Joined, but lower than its wires can have (%s).", expected(step));
      case CANT_TELL -> "Joined. This meter is too coarse to tell how well.";
      case AS_EXPECTED ->
          isOnTheLimit(judged)
              ? Text.of("On the limit: this meter can't tell it from %s.", expected(step))
              : "Good.";
      case NOT_COMPARED ->
          judged.expected().isJoined() && judged.reading().measured().value().isPresent()
              ? Text.of(
                  "Joined: at most %s. The list says too little of its wires to tell more.",
                  ohms(judged.limit().ohms()))
              : "Good.";
    };
  }

  /** Where switches stand, what has to be changed in front. */
  static List<BenchState.Position> positions(SwitchState now, SwitchState before) {
    List<BenchState.Position> positions = new ArrayList<>();
    now.positions()
        .forEach(
            (name, position) ->
                positions.add(
                    new BenchState.Position(
                        position(name, position), !position.equals(before.positions().get(name)))));
    before
        .positions()
        .forEach(
            (name, position) -> {
              if (!now.positions().containsKey(name)) {
                positions.add(new BenchState.Position(back(name, position), true));
              }
            });
    return positions;
  }

  /** The same where nobody knows how they stand. */
  static List<BenchState.Position> allPositions(SwitchState now, boolean hasSwitches) {
    List<BenchState.Position> positions = new ArrayList<>(positions(now, SwitchState.normal()));
    if (hasSwitches) {
      String which = positions.isEmpty() ? "every switch" : "every other switch";
      positions.add(new BenchState.Position("put " + which + " to normal", true));
    }
    return positions;
  }

  private static String position(String name, String position) {
    return position.equals(SwitchState.LIFTED)
        ? "take one end of " + name + " off its point"
        : "put " + name + " to " + position;
  }

  private static String back(String name, String position) {
    return position.equals(SwitchState.LIFTED)
        ? "put " + name + " back on its point"
        : "put " + name + " back to normal";
  }
}
