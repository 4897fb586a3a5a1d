package dev.ringout.json;

import dev.ringout.diagnose.SlipFact;
import dev.ringout.harness.Point;
import dev.ringout.harness.Wire;
import dev.ringout.words.FaultSentences;
import java.util.List;
import java.util.Map;

/** Each kind of slip with its code, its facts and its sentence. */
final class SlipJson implements SlipFact.Cases<Reason> {
  static List<Map<String, Object>> of(List<SlipFact> facts) {
    return facts.stream().map(SlipJson::of).toList();
  }

  private static Map<String, Object> of(SlipFact fact) {
    return fact.match(new SlipJson()).said(FaultSentences.slip(fact));
  }

  private static List<String> points(Point... points) {
    return List.of(points).stream().map(Point::toString).toList();
  }

  @Override
  public Reason opened(SlipFact.Opened fact) {
    return Reason.of("opened").with("conductor", fact.conductor().label());
  }

  @Override
  public Reason misplaced(SlipFact.Misplaced fact) {
    return Reason.of("misplaced").with("moves", FaultJson.moves(fact.moves()));
  }

  @Override
  public Reason bridge(SlipFact.Bridge fact) {
    return Reason.of("bridge").with("points", points(fact.one(), fact.other()));
  }

  @Override
  public Reason misread(SlipFact.Misread fact) {
    return Reason.of("misread")
        .with("reading", fact.judged().reading().place().toString())
        .with("listed", fact.listed().toString())
        .with("at", fact.at().toString());
  }

  @Override
  public Reason exchangedRows(SlipFact.ExchangedRows fact) {
    return Reason.of("exchanged-rows")
        .with(
            "readings",
            List.of(
                fact.one().reading().place().toString(),
                fact.other().reading().place().toString()));
  }

  @Override
  public Reason misscaled(SlipFact.Misscaled fact) {
    return Reason.of("misscaled")
        .with("reading", fact.judged().reading().place().toString())
        .with("times", fact.times());
  }

  @Override
  public Reason poorJoint(SlipFact.PoorJoint fact) {
    return Reason.of("poor-joint").with("conductor", fact.conductor().label());
  }

  @Override
  public Reason otherLength(SlipFact.OtherLength fact) {
    Wire wire = fact.wire();
    return Reason.of("other-length").with("wire", wire.name()).with("metres", fact.metres());
  }

  @Override
  public Reason otherGauge(SlipFact.OtherGauge fact) {
    return Reason.of("other-gauge")
        .with("wire", fact.wire().name())
        .with("gauge", fact.gauge().label());
  }

  @Override
  public Reason badPart(SlipFact.BadPart fact) {
    return Reason.of("bad-part")
        .with("part", fact.part().label())
        .with("how", fact.how().word())
        .with("points", points(fact.from(), fact.to()));
  }

  @Override
  public Reason badSwitch(SlipFact.BadSwitch fact) {
    return Reason.of("bad-switch")
        .with("switch", fact.which().ref())
        .with("how", fact.how().word())
        .with("position", fact.position())
        .with("points", fact.contact().stream().map(Point::toString).toList());
  }
}
