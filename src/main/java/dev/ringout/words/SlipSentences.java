package dev.ringout.words;

import dev.ringout.diagnose.Move;
import dev.ringout.diagnose.SlipFact;
import dev.ringout.diagnose.SwitchFault;
import dev.ringout.harness.Point;
import dev.ringout.harness.Switch;
import dev.ringout.units.Numbers;
import dev.ringout.units.Text;
import java.util.List;

/** A slip as one says it: what a hand or a tool did. */
final class SlipSentences implements SlipFact.Cases<String> {
  static String of(SlipFact fact) {
    return fact.match(new SlipSentences());
  }

  @Override
  public String opened(SlipFact.Opened fact) {
    return fact.conductor().label() + " is open";
  }

  @Override
  public String misplaced(SlipFact.Misplaced fact) {
    List<Move> moves = fact.moves();
    return MoveWords.areCrossed(moves)
        ? Text.of(
            "%s and %s are crossed at %s",
            moves.get(0).wire().name(), moves.get(1).wire().name(), MoveWords.crossedAt(moves))
        : MoveWords.someMoves(moves);
  }

  @Override
  public String bridge(SlipFact.Bridge fact) {
    return fact.one() + " and " + fact.other() + " are joined";
  }

  @Override
  public String misread(SlipFact.Misread fact) {
    return Text.of(
        "%s was read at a neighbouring pin, such as %s instead of %s",
        fact.judged().reading().subject(), fact.at(), fact.listed());
  }

  @Override
  public String exchangedRows(SlipFact.ExchangedRows fact) {
    return Text.of(
        "rows %d and %d of the sheet have each other's values",
        fact.one().reading().place().row(), fact.other().reading().place().row());
  }

  @Override
  public String misscaled(SlipFact.Misscaled fact) {
    return Text.of(
        "%s is written %s times too %s",
        fact.judged().reading().subject(),
        Numbers.plain(Math.max(fact.times(), 1 / fact.times())),
        fact.times() > 1 ? "high" : "low");
  }

  @Override
  public String poorJoint(SlipFact.PoorJoint fact) {
    return "a poor joint of " + fact.conductor().label();
  }

  @Override
  public String otherLength(SlipFact.OtherLength fact) {
    return Text.of("%s is %s m long", fact.wire().name(), Numbers.rounded(fact.metres(), 2));
  }

  @Override
  public String otherGauge(SlipFact.OtherGauge fact) {
    return Text.of("%s is %s", fact.wire().name(), fact.gauge().label());
  }

  @Override
  public String badPart(SlipFact.BadPart bad) {
    String label = "the " + bad.part().label();
    return switch (bad.how()) {
      case MISSING -> label + " is missing or open";
      case REVERSED -> label + " is reversed";
      case OTHER_VALUE -> label + " is not as listed";
      case OTHER_POINTS -> Text.of("%s lies across %s and %s", label, bad.from(), bad.to());
    };
  }

  @Override
  public String badSwitch(SlipFact.BadSwitch fact) {
    return badSwitch(fact.which(), fact.how(), fact.position(), fact.contact());
  }

  static String badSwitch(Switch which, SwitchFault how, String position, List<Point> contact) {
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
}
