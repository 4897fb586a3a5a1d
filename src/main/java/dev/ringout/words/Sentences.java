package dev.ringout.words;

import dev.ringout.check.CheckResult;
import dev.ringout.check.Doubt;
import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.Conductor;
import dev.ringout.circuit.Expected.Joined;
import dev.ringout.circuit.Expected.ThroughParts;
import dev.ringout.compare.Conceded;
import dev.ringout.compare.Coverage;
import dev.ringout.compare.Coverage.Unprovable;
import dev.ringout.compare.IdleConcession;
import dev.ringout.compare.Judged;
import dev.ringout.diagnose.Arrangement;
import dev.ringout.diagnose.Fault;
import dev.ringout.diagnose.Fault.HighResistance;
import dev.ringout.diagnose.Fault.LowInsulation;
import dev.ringout.diagnose.Fault.Miswire;
import dev.ringout.diagnose.Fault.Open;
import dev.ringout.diagnose.Fault.Pattern;
import dev.ringout.diagnose.Fault.Shorted;
import dev.ringout.diagnose.Fault.UnequalWire;
import dev.ringout.diagnose.Fault.WrongGauge;
import dev.ringout.diagnose.Fault.WrongPart;
import dev.ringout.diagnose.Fault.WrongSwitch;
import dev.ringout.diagnose.Move;
import dev.ringout.diagnose.NextReading;
import dev.ringout.diagnose.NextReading.Answer;
import dev.ringout.diagnose.SlipFact;
import dev.ringout.diagnose.SwitchFault;
import dev.ringout.harness.Part;
import dev.ringout.harness.Point;
import dev.ringout.harness.Switch;
import dev.ringout.harness.Wire;
import dev.ringout.readings.Measured;
import dev.ringout.readings.Reading;
import dev.ringout.readings.Rework;
import dev.ringout.standards.LookAlikes;
import dev.ringout.units.Gauge;
import dev.ringout.units.Numbers;
import dev.ringout.units.Ohms;
import dev.ringout.units.OhmsRange;
import dev.ringout.units.Text;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Facts as sentences that a mechanic acts on. */
public final class Sentences {
  private static final int MOST_NAMED = 6;

  private static final String LOOK_AT_THE_RUN =
      "Look at the first cavity of the run, and whether a spare was counted, before moving anything.";

  private static final int MOST_SUSPECTS = 6;
  private static final int MOST_MEANINGS = 2;
  private static final int MOST_MOVES = 6;
  private static final int MOST_AGAINST = 2;

  private Sentences() {}

  /** The kind as machine-readable output names it. */
  public static String kind(Fault fault) {
    if (fault instanceof Open) {
      return "open";
    }
    if (fault instanceof Shorted) {
      return "short";
    }
    if (fault instanceof Miswire) {
      return "miswire";
    }
    if (fault instanceof HighResistance || fault instanceof UnequalWire) {
      return "high-resistance";
    }
    if (fault instanceof WrongGauge) {
      return "wrong-gauge";
    }
    if (fault instanceof Fault.OfTheTest) {
      return "test";
    }
    if (fault instanceof Fault.OnPaper) {
      return "paper";
    }
    return fault instanceof LowInsulation ? "low-insulation" : "wrong-part";
  }

  /** What is wrong and where. */
  public static String summary(Fault fault) {
    if (fault instanceof Open open) {
      return open(open);
    }
    if (fault instanceof Shorted shorted) {
      return Text.of(
          "%s and %s are joined and should not be%s.",
          shorted.points().get(0),
          shorted.points().get(1),
          shorted.equivalents().stream()
              .map(one -> ", or " + slip(one))
              .collect(Collectors.joining()));
    }
    if (fault instanceof Miswire miswire) {
      return miswire(miswire);
    }
    if (fault instanceof HighResistance high) {
      return Text.of(
          "%s to %s reads %s%s; at most %s is expected. %s is at %s.",
          high.points().get(0),
          high.points().get(1),
          isLeast(high) ? "more than " : "",
          Ohms.text(high.measuredOhms()),
          Ohms.text(high.limitOhms()),
          high.suspects().stream().anyMatch(Fault.Suspicion::inLoop)
              ? "A poor joint, or an open one,"
              : "The poor joint",
          poorJoints(high.suspects()));
    }
    if (fault instanceof UnequalWire unequal) {
      return Text.of(
          "%s reads %s; its %d fellows %s read %s. It is within the limit of %s, yet poorer than they are.",
          unequal.wire().name(),
          Ohms.text(unequal.measuredOhms()),
          unequal.fellows(),
          alike(unequal.wire()),
          unequal.fellowsOhms().text(),
          Ohms.text(unequal.limitOhms()));
    }
    if (fault instanceof WrongGauge wrong) {
      return wrongGauge(wrong);
    }
    if (fault instanceof LowInsulation low) {
      return lowInsulation(low);
    }
    if (fault instanceof WrongSwitch wrong) {
      return capital(badSwitch(wrong.which(), wrong.how(), wrong.position(), wrong.points())) + ".";
    }
    if (fault instanceof Fault.Misread misread) {
      return Text.of(
          "%s seems to have been read at %s instead of %s.",
          misread.judged().reading().subject(), misread.at(), misread.listed());
    }
    if (fault instanceof Fault.SlippedRows slipped) {
      return slippedRows(slipped);
    }
    if (fault instanceof Fault.LeadsNotNulled leads) {
      return Text.of(
          "%s are high by the same %s: the meter's leads seem not to have been nulled.",
          Numbers.count(leads.finding().readings().size(), "reading"), Ohms.text(leads.ohms()));
    }
    if (fault instanceof Fault.OnPaper paper) {
      return Text.of(
          "The list seems to be wrong and not the wiring: %s too has this. %s",
          list(paper.others(), "and"), summary(paper.same()));
    }
    return wrongPart((WrongPart) fault);
  }

  private static String slippedRows(Fault.SlippedRows slipped) {
    return Text.of(
        "From row %d of the sheet (%s) at the latest each value fits the row %s: a line seems to"
            + " have been %s. Nothing is wrong there with the unit, as far as that tells.",
        slipped.first().reading().place().row(),
        slipped.first().reading().subject(),
        slipped.step() > 0 ? "below" : "above",
        slipped.step() > 0 ? "skipped" : "written twice or left blank");
  }

  private static String wrongPart(WrongPart fault) {
    Part part = fault.part();
    String where = Text.of("The %s (%s to %s)", part.label(), part.from(), part.to());
    String reads = Text.of("reads %s; expected %s", fault.measured(), range(fault));
    return switch (fault.how()) {
      case MISSING -> Text.of("%s is missing or open: %s.", where, reads);
      case REVERSED ->
          Text.of(
              "%s is reversed: it conducts from %s to %s.", where, part.cathode(), part.anode());
      case OTHER_VALUE -> Text.of("%s %s.", where, reads);
      case OTHER_POINTS ->
          Text.of("%s lies across %s and %s.", where, fault.points().get(0), fault.points().get(1));
    };
  }

  private static String poorJoints(List<Fault.Suspicion> suspects) {
    if (suspects.isEmpty()) {
      return "one of the joints between";
    }
    if (suspects.size() == 1) {
      return suspects.get(0).conductor().label();
    }
    List<String> named =
        suspects.stream()
            .limit(MOST_SUSPECTS)
            .map(one -> Text.of("%s (%s)", one.conductor().label(), percent(one.odds())))
            .toList();
    int more = suspects.size() - named.size();
    return list(named, "or") + (more > 0 ? Text.of(", or %d more as likely", more) : "");
  }

  private static String wrongGauge(WrongGauge wrong) {
    String wires = list(wrong.wires().stream().map(Wire::name).toList(), "and");
    return Text.of(
        "%s %s %s rather than the %s that is listed (%s): %s reads %s; %s would read %s, %s %s.",
        wires,
        wrong.wires().size() == 1 ? "seems to be" : "seem to be",
        wrong.likely().label(),
        wrong.listed().label(),
        percent(wrong.odds()),
        wrong.wires().get(0).name(),
        Ohms.text(wrong.measuredOhms()),
        wrong.listed().label(),
        wrong.expected().text(),
        wrong.likely().label(),
        wrong.expectedOfLikely().text());
  }

  /** A share of the odds. */
  public static String percent(double odds) {
    long percent = Math.round(odds * 100);
    return percent < 1 ? "less than 1 %" : percent + " %";
  }

  private static String range(WrongPart part) {
    if (Double.isInfinite(part.lowOhms())) {
      return "no conduction this way";
    }
    if (Double.isInfinite(part.highOhms())) {
      return part.lowOhms() > 0 ? "more than " + Ohms.text(part.lowOhms()) : "no short";
    }
    return Ohms.text(part.lowOhms()) + " to " + Ohms.text(part.highOhms());
  }

  private static String open(Open open) {
    if (open.suspects().size() == 1) {
      Conductor suspect = open.suspects().get(0);
      return Text.of(
          "%s is open: %s and %s are not joined.",
          capital(suspect.label()), suspect.from(), suspect.to());
    }
    return Text.of(
        "%s and %s are not joined. Open is one of %s.",
        open.points().get(0), open.points().get(1), suspects(open.suspects(), "or"));
  }

  private static String suspects(List<Conductor> suspects, String last) {
    List<String> labels = suspects.stream().map(Conductor::label).toList();
    if (labels.isEmpty()) {
      return "one of the joints between";
    }
    return list(labels, last);
  }

  private static String list(List<String> words, String last) {
    if (words.size() == 1) {
      return words.get(0);
    }
    return String.join(", ", words.subList(0, words.size() - 1))
        + " "
        + last
        + " "
        + words.get(words.size() - 1);
  }

  private static String miswire(Miswire miswire) {
    if (miswire.arrangement().isPresent()) {
      return arrangement(miswire, miswire.arrangement().get());
    }
    if (miswire.pattern() == Pattern.SWAP) {
      Move first = miswire.moves().get(0);
      String here = crossedAt(miswire.moves());
      String elsewhere =
          miswire.equivalents().stream()
              .map(Sentences::crossedAt)
              .collect(Collectors.joining(", or "));
      return Text.of(
          "%s and %s are crossed, at %s%s.",
          first.wire().name(),
          miswire.moves().get(1).wire().name(),
          here,
          elsewhere.isEmpty() ? "" : " or at " + elsewhere);
    }
    if (miswire.pattern() == Pattern.SHIFT) {
      return shift(miswire.moves());
    }
    String moved = moves(miswire.moves());
    String elsewhere =
        miswire.equivalents().stream().map(Sentences::moves).collect(Collectors.joining("; or "));
    return capital(moved) + (elsewhere.isEmpty() ? "" : "; or " + elsewhere) + ".";
  }

  private static String arrangement(Miswire miswire, Arrangement how) {
    List<Move> moves = miswire.moves();
    String item = moves.get(0).from().ref();
    return switch (how) {
      case PLUGS_CROSSED ->
          Text.of(
              "What is listed at %s answers at the same pin of %s, and the reverse: the two plugs, or"
                  + " their labels, are crossed. There is no wire to move.",
              item, moves.get(0).to().ref());
      case MIRRORED ->
          Text.of(
              "The wires at %s sit as seen from the other face of its insert: %s.",
              item, someMoves(moves));
      case MIRRORED_ROW ->
          Text.of("A row of %s is counted from its wrong end: %s.", item, someMoves(moves));
      case ROTATED ->
          Text.of(
              "All wires at %s sit a fixed step round its insert, as with another key: %s.",
              item, someMoves(moves));
      case SHIFTED -> shift(moves);
      case RING ->
          Text.of(
              "%d ends at %s are in each other's places: %s.",
              moves.size(), item, someMoves(moves));
    };
  }

  private static String someMoves(List<Move> moves) {
    int more = moves.size() - MOST_MOVES;
    return moves(moves.subList(0, Math.min(moves.size(), MOST_MOVES)))
        + (more > 0 ? Text.of(", and so on for %d more", more) : "");
  }

  private static String shift(List<Move> moves) {
    Move first = moves.get(0);
    Move last = moves.get(moves.size() - 1);
    return Text.of(
        "A run of %d wires is shifted at %s: from %s in %s instead of %s to %s in %s instead of %s.",
        moves.size(),
        first.from().ref(),
        first.wire().name(),
        first.to(),
        first.from(),
        last.wire().name(),
        last.to(),
        last.from());
  }

  private static boolean areCrossed(List<Move> moves) {
    return moves.size() == 2
        && moves.get(0).from().equals(moves.get(1).to())
        && moves.get(0).to().equals(moves.get(1).from());
  }

  private static String crossedAt(List<Move> moves) {
    Move first = moves.get(0);
    return Text.of("%s (%s and %s)", first.from().ref(), first.from().pin(), first.to().pin());
  }

  private static String moves(List<Move> moves) {
    return moves.stream()
        .map(
            move ->
                Text.of("%s sits in %s instead of %s", move.wire().name(), move.to(), move.from()))
        .collect(Collectors.joining(", "));
  }

  /** Whether the value named is what a reading was above, and not what it was. */
  private static boolean isLeast(HighResistance high) {
    return high.finding().readings().stream()
        .map(judged -> judged.reading().measured())
        .anyMatch(
            measured ->
                measured instanceof Measured.MoreThan more && more.ohms() == high.measuredOhms());
  }

  /** Whether the value named is what a reading was below, and not what it was. */
  private static boolean isMost(LowInsulation low) {
    return low.finding().readings().stream()
        .map(judged -> judged.reading().measured())
        .anyMatch(
            measured ->
                measured instanceof Measured.LessThan less
                    && less.ohms() == low.measuredOhms().orElse(0));
  }

  /** What makes other wires fellows of one. */
  private static String alike(Wire wire) {
    if (wire.length().isPresent()) {
      return "of the same gauge and length";
    }
    return wire.cable().isEmpty()
        ? "from " + wire.from().ref() + " to " + wire.to().ref()
        : "in cable " + wire.cable();
  }

  private static String lowInsulation(LowInsulation low) {
    String volts =
        low.volts().isPresent() ? " at " + Numbers.plain(low.volts().getAsDouble()) + " V" : "";
    if (low.places().isEmpty()) {
      String what = low.volts().isPresent() ? "insulation" : "a leak";
      return Text.of(
          "%s: %s %s%s.",
          low.points().size() > 2
              ? low.finding().readings().get(0).reading().subject()
              : low.points().stream().map(Point::toString).collect(Collectors.joining(" and ")),
          what,
          low.measuredOhms().isPresent()
              ? (isMost(low) ? "of less than " : "of ") + ohms(low.measuredOhms())
              : "failed, without a value,",
          volts);
    }
    return Text.of(
        "%d of the %d nets read at %s are low (%s%s). Moisture or dirt there is likelier than %d damaged wires.",
        low.netsLow(),
        low.netsRead(),
        list(low.places(), "or"),
        low.measuredOhms().equals(low.highestOhms())
            ? ohms(low.measuredOhms())
            : ohms(low.measuredOhms()) + " to " + ohms(low.highestOhms()),
        volts,
        low.netsLow());
  }

  private static String ohms(OptionalDouble ohms) {
    return ohms.isPresent() ? Ohms.text(ohms.getAsDouble()) : "no value";
  }

  /** What to look at before anything is moved. */
  public static String advice(Fault fault) {
    if (fault instanceof Open open) {
      return open.suspects().get(0).isWire()
          ? "Look for a contact that is not home or a bad crimp at both ends; tug the wire gently."
          : "Look whether it is there and tight.";
    }
    if (fault instanceof Miswire miswire) {
      return lookAlikes(miswire) + advice(miswire);
    }
    if (fault instanceof Shorted shorted) {
      return (shorted.equivalents().isEmpty()
              ? ""
              : "Read that contact by itself in both positions. ")
          + "Unmate connectors one by one until it clears; look for whiskers, bent pins and jumpers.";
    }
    if (fault instanceof WrongGauge) {
      return "Read the print on the wire, or measure over a bare strand end; where it is as listed, read each joint by itself and measure the length.";
    }
    if (fault instanceof HighResistance || fault instanceof UnequalWire) {
      return "Null the leads, read again while flexing the wire, then each joint by itself.";
    }
    if (fault instanceof LowInsulation low) {
      return low.places().isEmpty()
          ? "Discharge, clean, and repeat; then part the net to find the place."
          : "Discharge, unmate, dry and clean it, and repeat the readings before touching a wire.";
    }
    if (fault instanceof WrongSwitch wrong) {
      return wrong.how() == SwitchFault.STUCK
          ? "Look whether the actuator reaches it; then read the contact by itself in both positions."
          : "Read the contacts at the switch in both positions before moving a wire.";
    }
    if (fault instanceof Fault.SlippedRows slipped) {
      return Text.of(
          "Read row %d, the rows before and after it, and the rest of the sheet again. Do not rewire"
              + " anything.",
          slipped.first().reading().place().row());
    }
    if (fault instanceof Fault.LeadsNotNulled) {
      return "Hold the leads together, null the meter or note what it shows as \"lead null\" on the"
          + " sheet Job, and read again.";
    }
    if (fault instanceof Fault.OnPaper) {
      return "Raise a query with whoever keeps the list. Do not rewire before it is answered.";
    }
    if (fault instanceof Fault.OfTheTest) {
      return "Read it again at the points that the sheet names, flexing the wire, before anything is touched.";
    }
    return "Read it by itself, with one end lifted, before replacing it.";
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

  /** Why a reading is worth making. */
  public static String why(Circuit circuit, NextReading next) {
    return next.why().match(new NextReasonSentences(circuit));
  }

  /** What a reading would show, in a word or as a value. */
  public static String reads(Answer answer) {
    if (answer.poorly()) {
      return "high";
    }
    if (answer.shows() instanceof ThroughParts parts) {
      return Double.isInfinite(parts.highOhms())
          ? "a part's value"
          : new OhmsRange(parts.lowOhms(), parts.highOhms()).text();
    }
    return answer.shows() instanceof Joined ? "joined" : "OL";
  }

  /** What an answer would mean. */
  public static String answer(Answer answer) {
    int more = answer.meanings().size() - MOST_MEANINGS;
    return Text.of(
        "%s (%s): %s%s",
        reads(answer),
        percent(answer.odds()),
        answer.meanings().stream()
            .limit(MOST_MEANINGS)
            .map(Sentences::slips)
            .collect(Collectors.joining("; or ")),
        more > 0 ? Text.of("; or %s", Numbers.count(more, "less likely explanation")) : "");
  }

  private static String advice(Miswire miswire) {
    if (miswire.arrangement().isPresent()) {
      return switch (miswire.arrangement().get()) {
        case PLUGS_CROSSED ->
            "Look at the labels and keys of both plugs and of what they mate with; leave the wires"
                + " alone.";
        case MIRRORED, MIRRORED_ROW ->
            "Look which side the drawing shows, the mating face or the wire side, before moving"
                + " anything.";
        case ROTATED -> "Look at the key and at pin 1 of the insert before moving anything.";
        case SHIFTED -> LOOK_AT_THE_RUN;
        case RING ->
            "One hand has likely loaded them from the wrong rows: read the sleeves there before"
                + " moving anything.";
      };
    }
    if (miswire.pattern() == Pattern.SHIFT) {
      return LOOK_AT_THE_RUN;
    }
    if (miswire.pattern() == Pattern.SWAP) {
      return miswire.equivalents().isEmpty()
          ? "Read the sleeves there before moving anything."
          : "Ohms can't tell which end: read the sleeves at both ends, or read from a break in"
              + " between, before moving anything.";
    }
    return "Look at that cavity and its neighbours, and read the sleeve, before moving anything.";
  }

  /**
   * Pins that are taken for each other: then the list or the sleeve was misread. One such pair
   * among many ends that one mistake put elsewhere is chance.
   */
  private static String lookAlikes(Miswire miswire) {
    return Stream.concat(Stream.of(miswire.moves()), miswire.equivalents().stream())
        .map(Sentences::lookAlikes)
        .filter(said -> !said.isEmpty())
        .findFirst()
        .orElse("");
  }

  private static String lookAlikes(List<Move> moves) {
    LookAlikes lookAlikes = LookAlikes.published();
    List<Move> alike =
        moves.stream()
            .filter(move -> lookAlikes.areAlike(move.from().pin(), move.to().pin()))
            .toList();
    if (alike.isEmpty() || 2 * alike.size() < moves.size()) {
      return "";
    }
    return Text.of(
        "%s and %s are easily taken for each other: read the list again. ",
        alike.get(0).from().pin(), alike.get(0).to().pin());
  }

  /** What it is not, and what speaks against that. */
  public static String runnerUp(Fault.RunnerUp runnerUp) {
    List<String> against =
        runnerUp.against().stream()
            .map(judged -> judged.reading().subject() + " " + judged.reading().measured().text())
            .toList();
    return Text.of(
        "%s; against it: %s", slips(runnerUp.slips()), Text.first(against, MOST_AGAINST));
  }

  /** An alternative explanation in words. */
  public static String slips(List<SlipFact> slips) {
    return slips.stream().map(Sentences::slip).collect(Collectors.joining("; "));
  }

  private static String slip(SlipFact slip) {
    if (slip instanceof SlipFact.Opened opened) {
      return opened.conductor().label() + " is open";
    }
    if (slip instanceof SlipFact.Misplaced misplaced) {
      List<Move> moves = misplaced.moves();
      return areCrossed(moves)
          ? Text.of(
              "%s and %s are crossed at %s",
              moves.get(0).wire().name(), moves.get(1).wire().name(), crossedAt(moves))
          : someMoves(moves);
    }
    if (slip instanceof SlipFact.Bridge bridge) {
      return bridge.one() + " and " + bridge.other() + " are joined";
    }
    if (slip instanceof SlipFact.PoorJoint poor) {
      return "a poor joint of " + poor.conductor().label();
    }
    if (slip instanceof SlipFact.Misread misread) {
      return Text.of(
          "%s was read at a neighbouring pin, such as %s instead of %s",
          misread.judged().reading().subject(), misread.at(), misread.listed());
    }
    if (slip instanceof SlipFact.OtherLength other) {
      return Text.of("%s is %s m long", other.wire().name(), Numbers.rounded(other.metres(), 2));
    }
    if (slip instanceof SlipFact.BadPart bad) {
      return badPart(bad);
    }
    SlipFact.BadSwitch bad = (SlipFact.BadSwitch) slip;
    return badSwitch(bad.which(), bad.how(), bad.position(), bad.contact());
  }

  private static String badPart(SlipFact.BadPart bad) {
    String label = "the " + bad.part().label();
    return switch (bad.how()) {
      case MISSING -> label + " is missing or open";
      case REVERSED -> label + " is reversed";
      case OTHER_VALUE -> label + " is not as listed";
      case OTHER_POINTS -> Text.of("%s lies across %s and %s", label, bad.from(), bad.to());
    };
  }

  private static String badSwitch(
      Switch which, SwitchFault how, String position, List<Point> contact) {
    return switch (how) {
      case STUCK -> Text.of("%s stays as at %s in every position", which.ref(), position);
      case WELDED ->
          Text.of(
              "the contact %s to %s of %s never opens",
              contact.get(0), contact.get(1), which.ref());
      case OTHER_WAY ->
          Text.of("%s is wired to its other contact, or works the other way round", which.ref());
    };
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

  /** The wires that a fault is about. */
  public static List<Wire> wires(Fault fault) {
    if (fault instanceof Miswire miswire) {
      return miswire.moves().stream().map(Move::wire).distinct().toList();
    }
    if (fault instanceof Open open) {
      return wiresOf(open.suspects());
    }
    if (fault instanceof UnequalWire unequal) {
      return List.of(unequal.wire());
    }
    if (fault instanceof WrongGauge wrong) {
      return wrong.wires();
    }
    if (fault instanceof Fault.OnPaper paper) {
      return wires(paper.same());
    }
    return fault instanceof HighResistance high
        ? wiresOf(high.suspects().stream().map(Fault.Suspicion::conductor).toList())
        : List.of();
  }

  private static List<Wire> wiresOf(List<Conductor> conductors) {
    return conductors.stream().flatMap(conductor -> conductor.asWire().stream()).toList();
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
              ? "FAULTS: readings fail, and nothing here explains them."
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
  public static String conceded(Conceded one) {
    return Text.of(
        "%s reads %s; accepted %s %s by %s: %s%s",
        one.judged().reading().subject(),
        one.judged().reading().measured().text(),
        isLow(one.judged()) ? "down to" : "up to",
        Ohms.text(one.concession().acceptedOhms()),
        one.concession().who(),
        one.concession().why(),
        one.concession().untilDay().map(day -> ", until " + day).orElse(""));
  }

  private static boolean isLow(Judged judged) {
    return judged.reading().kind() == Reading.Kind.INSULATION || judged.expected().isApart();
  }

  /** An inspector's word that covers nothing, and why. */
  public static String idle(IdleConcession one) {
    return Text.of(
        "%s to %s, %s: %s",
        one.concession().from(),
        one.concession().to(),
        one.concession().kind().name().toLowerCase(Locale.ROOT),
        why(one));
  }

  /** Why an inspector's word covers nothing. */
  public static String why(IdleConcession one) {
    return switch (one.why()) {
      case NO_SUCH_READING -> "no such reading is out of limits";
      case NOT_SO_FAR -> "the reading is further out, or shows no value";
      case EXPIRED -> "its last day is over, or the day of the test is not stated";
      case OTHER_UNIT -> "it is for other serial numbers, or this unit's is not stated";
      case BY_THE_TESTER -> "the tester can't accept his own reading";
      case TESTER_NOT_STATED -> "who took the reading is not stated: it may be who accepts it";
    };
  }

  /** Nets between which parts lie that a meter reads instead. */
  public static String unprovable(Circuit circuit, Unprovable one) {
    String points =
        Text.first(
            one.points().stream().map(point -> circuit.point(point).toString()).toList(),
            MOST_NAMED);
    String parts =
        Text.first(
            one.parts().stream().map(part -> circuit.part(part).label()).distinct().toList(),
            MOST_NAMED);
    return one.insulation()
        ? Text.of("the insulation between the nets of %s: through %s", points, parts)
        : Text.of(
            "that the nets of %s are apart: no ohms are listed for %s, and a poor join might read as"
                + " it does",
            points, parts);
  }
}
