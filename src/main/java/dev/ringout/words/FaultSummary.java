package dev.ringout.words;

import dev.ringout.circuit.Conductor;
import dev.ringout.compare.Judged;
import dev.ringout.diagnose.Arrangement;
import dev.ringout.diagnose.Fault;
import dev.ringout.diagnose.Fault.Pattern;
import dev.ringout.diagnose.Move;
import dev.ringout.harness.Part;
import dev.ringout.harness.Point;
import dev.ringout.harness.Wire;
import dev.ringout.units.Numbers;
import dev.ringout.units.Ohms;
import dev.ringout.units.Text;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

/** What is wrong and where. */
final class FaultSummary implements Fault.Cases<String> {
  private static final int MOST_SUSPECTS = 6;

  @Override
  public String open(Fault.Open open) {
    if (open.suspects().size() == 1) {
      Conductor suspect = open.suspects().get(0);
      return Text.of(
          "%s is open: %s and %s are not joined.",
          Sentences.capital(suspect.label()), suspect.from(), suspect.to());
    }
    return Text.of(
        "%s and %s are not joined. Open is one of %s.",
        open.points().get(0), open.points().get(1), suspects(open.suspects(), "or"));
  }

  @Override
  public String shorted(Fault.Shorted shorted) {
    return Text.of(
        "%s and %s are joined and should not be%s.",
        shorted.points().get(0),
        shorted.points().get(1),
        shorted.equivalents().stream()
            .map(one -> ", or " + SlipSentences.of(one))
            .collect(Collectors.joining()));
  }

  @Override
  public String miswire(Fault.Miswire miswire) {
    if (miswire.arrangement().isPresent()) {
      return arrangement(miswire, miswire.arrangement().get());
    }
    if (miswire.pattern() == Pattern.SWAP) {
      Move first = miswire.moves().get(0);
      String here = MoveWords.crossedAt(miswire.moves());
      String elsewhere =
          miswire.equivalents().stream()
              .map(MoveWords::crossedAt)
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
    String moved = MoveWords.moves(miswire.moves());
    String elsewhere =
        miswire.equivalents().stream().map(MoveWords::moves).collect(Collectors.joining("; or "));
    return Sentences.capital(moved) + (elsewhere.isEmpty() ? "" : "; or " + elsewhere) + ".";
  }

  @Override
  public String highResistance(Fault.HighResistance high) {
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

  @Override
  public String highWire(Fault.HighWire high) {
    return Text.of(
        "%s reads %s; as listed it would read %s. No reading between its ends tells why: %s.",
        high.wire().name(),
        Ohms.text(high.measuredOhms()),
        high.expected().text(),
        WordList.of(
            high.causes().stream()
                .map(
                    cause ->
                        Text.of(
                            "%s (%s)",
                            FaultSentences.slips(cause.slips()), Sentences.percent(cause.odds())))
                .toList(),
            "or"));
  }

  @Override
  public String unequalWire(Fault.UnequalWire unequal) {
    return Text.of(
        "%s reads %s; %d similar wires %s read %s. It is within the limit of %s, but poorer"
            + " than they are.",
        unequal.wire().name(),
        Ohms.text(unequal.measuredOhms()),
        unequal.fellows(),
        alike(unequal.wire()),
        unequal.fellowsOhms().text(),
        Ohms.text(unequal.limitOhms()));
  }

  @Override
  public String wrongGauge(Fault.WrongGauge wrong) {
    String wires = WordList.of(wrong.wires().stream().map(Wire::name).toList(), "and");
    return Text.of(
        "%s %s %s rather than the %s that is listed (%s): %s reads %s; %s would read %s, %s %s.",
        wires,
        wrong.wires().size() == 1 ? "seems to be" : "seem to be",
        wrong.likely().label(),
        wrong.listed().label(),
        Sentences.percent(wrong.odds()),
        wrong.wires().get(0).name(),
        Ohms.text(wrong.measuredOhms()),
        wrong.listed().label(),
        wrong.expected().text(),
        wrong.likely().label(),
        wrong.expectedOfLikely().text());
  }

  @Override
  public String lowInsulation(Fault.LowInsulation low) {
    String volts =
        low.volts().isPresent() ? " at " + Numbers.plain(low.volts().getAsDouble()) + " V" : "";
    if (low.places().isEmpty()) {
      String what = low.volts().isPresent() ? "insulation" : "a leak";
      return Text.of(
          "%s: %s %s%s.",
          low.points().size() > 2
              ? low.finding().readings().get(0).reading().subject()
              : low.points().stream()
                  .map(Point::toString)
                  .collect(Collectors.joining(low.isOfOneSide() ? " or " : " and ")),
          what,
          low.measuredOhms().isPresent()
              ? (isMost(low) ? "of less than " : "of ") + ohms(low.measuredOhms())
              : "failed, without a value,",
          volts);
    }
    return Text.of(
        "%d of the %d nets read at %s are low (%s%s). Moisture or dirt there is more likely"
            + " than %d damaged wires.",
        low.netsLow(),
        low.netsRead(),
        WordList.of(low.places(), "or"),
        low.measuredOhms().equals(low.highestOhms())
            ? ohms(low.measuredOhms())
            : ohms(low.measuredOhms()) + " to " + ohms(low.highestOhms()),
        volts,
        low.netsLow());
  }

  @Override
  public String wrongPart(Fault.WrongPart fault) {
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

  @Override
  public String wrongSwitch(Fault.WrongSwitch wrong) {
    return Sentences.capital(
            SlipSentences.badSwitch(wrong.which(), wrong.how(), wrong.position(), wrong.points()))
        + ".";
  }

  @Override
  public String misread(Fault.Misread misread) {
    return Text.of(
        "%s was probably read at %s instead of %s.",
        misread.judged().reading().subject(), misread.at(), misread.listed());
  }

  @Override
  public String slippedRows(Fault.SlippedRows slipped) {
    return Text.of(
        "From row %d of the sheet (%s) on, or earlier, each value fits the row %s: a line was"
            + " probably %s. This alone is not a fault of the unit.",
        slipped.first().reading().place().row(),
        slipped.first().reading().subject(),
        slipped.step() > 0 ? "below" : "above",
        slipped.step() > 0 ? "skipped" : "written twice or left blank");
  }

  @Override
  public String misscaled(Fault.Misscaled fault) {
    if (fault.wholeSheet()) {
      return Text.of(
          "%s, nearly all of the sheet, are %s times what the wires should read: mΩ were"
              + " probably written as Ω.",
          Numbers.count(fault.finding().readings().size(), "reading"),
          Numbers.rounded(fault.times(), 3));
    }
    Judged shown = fault.finding().readings().get(0);
    return Text.of(
        "%s is written as %s, which fits with the decimal point in another place: %s.",
        shown.reading().subject(),
        shown.reading().measured().text(),
        fault.times() > 1
            ? Numbers.rounded(fault.times(), 3) + " times too high"
            : Numbers.rounded(1 / fault.times(), 3) + " times too low");
  }

  @Override
  public String exchangedRows(Fault.ExchangedRows fault) {
    return Text.of(
        "Rows %d (%s) and %d (%s) of the sheet probably have each other's values.",
        fault.one().reading().place().row(),
        fault.one().reading().subject(),
        fault.other().reading().place().row(),
        fault.other().reading().subject());
  }

  @Override
  public String leadsNotNulled(Fault.LeadsNotNulled leads) {
    int count = leads.finding().readings().size();
    return Text.of(
        leads.noted()
            ? "%s %s high by no more than the leads may have changed since they were nulled or"
                + " noted, about %s."
            : "%s %s high by the same %s: the leads were probably not nulled.",
        Numbers.count(count, "reading"),
        count == 1 ? "is" : "are",
        Ohms.text(leads.ohms()));
  }

  @Override
  public String onPaper(Fault.OnPaper paper) {
    return Text.of(
        "Probably the list is wrong, not the wiring: %s has this too. %s",
        WordList.of(paper.others(), "and"), paper.same().match(this));
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
            .map(one -> Text.of("%s (%s)", one.conductor().label(), Sentences.percent(one.odds())))
            .toList();
    int more = suspects.size() - named.size();
    return WordList.of(named, "or") + (more > 0 ? Text.of(", or %d more as likely", more) : "");
  }

  private static String range(Fault.WrongPart part) {
    if (Double.isInfinite(part.lowOhms())) {
      return "no conduction this way";
    }
    if (Double.isInfinite(part.highOhms())) {
      boolean isNoShort =
          part.finding().readings().stream()
              .allMatch(judged -> judged.seen().lowOhms() > part.lowOhms());
      if (part.part().kind() == Part.Kind.DIODE && isNoShort) {
        return "about what other diodes read on this meter, which is far less";
      }
      return part.lowOhms() > 0 ? "more than " + Ohms.text(part.lowOhms()) : "no short";
    }
    return Ohms.text(part.lowOhms()) + " to " + Ohms.text(part.highOhms());
  }

  private static String suspects(List<Conductor> suspects, String last) {
    List<String> labels = suspects.stream().map(Conductor::label).toList();
    if (labels.isEmpty()) {
      return "one of the joints between";
    }
    return WordList.of(labels, last);
  }

  private static String arrangement(Fault.Miswire miswire, Arrangement how) {
    List<Move> moves = miswire.moves();
    String item = moves.get(0).from().ref();
    return switch (how) {
      case PLUGS_CROSSED ->
          Text.of(
              "What is listed at %s reads at the same pin of %s, and the reverse: the two"
                  + " plugs, or their labels, are crossed. Do not move a wire.",
              item, moves.get(0).to().ref());
      case MIRRORED ->
          Text.of(
              "The wires at %s sit as if the insert was read from its other face: %s.",
              item, MoveWords.someMoves(moves));
      case MIRRORED_ROW ->
          Text.of(
              "A row of %s was counted from the wrong end: %s.", item, MoveWords.someMoves(moves));
      case ROTATED ->
          Text.of(
              "All wires at %s sit a fixed step round the insert, as if the key was in another"
                  + " place: %s.",
              item, MoveWords.someMoves(moves));
      case SHIFTED -> shift(moves);
      case RING ->
          Text.of(
              "%d ends at %s are in each other's places: %s.",
              moves.size(), item, MoveWords.someMoves(moves));
    };
  }

  private static String shift(List<Move> moves) {
    Move first = moves.get(0);
    Move last = moves.get(moves.size() - 1);
    return Text.of(
        "A run of %d wires is shifted at %s: from %s in %s instead of %s to %s in %s instead of"
            + " %s.",
        moves.size(),
        first.from().ref(),
        first.wire().name(),
        first.to(),
        first.from(),
        last.wire().name(),
        last.to(),
        last.from());
  }

  /** Whether the value named is what a reading was above, and not what it was. */
  private static boolean isLeast(Fault.HighResistance high) {
    return high.finding().readings().stream()
        .map(judged -> judged.reading().measured())
        .flatMap(measured -> measured.moreThan().stream())
        .anyMatch(more -> more.ohms() == high.measuredOhms());
  }

  /** Whether the value named is what a reading was below, and not what it was. */
  private static boolean isMost(Fault.LowInsulation low) {
    return low.finding().readings().stream()
        .map(judged -> judged.reading().measured())
        .flatMap(measured -> measured.lessThan().stream())
        .anyMatch(less -> less.ohms() == low.measuredOhms().orElse(0));
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

  private static String ohms(OptionalDouble ohms) {
    return ohms.isPresent() ? Ohms.text(ohms.getAsDouble()) : "no value";
  }
}
