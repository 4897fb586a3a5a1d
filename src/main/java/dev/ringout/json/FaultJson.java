package dev.ringout.json;

import dev.ringout.circuit.Conductor;
import dev.ringout.compare.Judged;
import dev.ringout.diagnose.Fault;
import dev.ringout.diagnose.Move;
import dev.ringout.harness.Point;
import dev.ringout.harness.Wire;
import dev.ringout.units.OhmsRange;
import dev.ringout.words.FaultSentences;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Each kind of fault with its code, its facts and its sentences. */
public final class FaultJson implements Fault.Cases<Map<String, Object>> {
  /** What stands before the certainty and before the points: the shape of a miswire. */
  private static final List<String> SHAPE = List.of("pattern", "arrangement");

  private FaultJson() {}

  public static Map<String, Object> of(Fault fault) {
    Map<String, Object> facts = fault.match(new FaultJson());
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("kind", FaultSentences.kind(fault));
    move("code", facts, json);
    SHAPE.forEach(name -> move(name, facts, json));
    json.put("certainty", fault.finding().certainty().word());
    move("moves", facts, json);
    json.put("points", fault.points().stream().map(Point::toString).toList());
    json.put("wires", fault.wires().stream().map(Wire::name).toList());
    Map<String, Object> equivalents = new LinkedHashMap<>();
    move("equivalents", facts, equivalents);
    json.putAll(facts);
    json.put("readings", places(fault.finding().readings()));
    json.putAll(equivalents);
    if (!fault.finding().alternatives().isEmpty()) {
      json.put("alternatives", alternatives(fault.finding().alternatives()));
    }
    fault.finding().runnerUp().ifPresent(one -> json.put("runnerUp", runnerUp(one)));
    if (fault.finding().story() > 0) {
      json.put("story", fault.finding().story());
    }
    json.put("summary", FaultSentences.summary(fault));
    json.put("advice", FaultSentences.advice(fault));
    return json;
  }

  private static void move(String name, Map<String, Object> from, Map<String, Object> to) {
    Object fact = from.remove(name);
    if (fact != null) {
      to.put(name, fact);
    }
  }

  private static Map<String, Object> code(String code) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("code", code);
    return json;
  }

  @Override
  public Map<String, Object> open(Fault.Open open) {
    Map<String, Object> json = code("open");
    json.put("suspects", open.suspects().stream().map(Conductor::label).toList());
    return json;
  }

  @Override
  public Map<String, Object> shorted(Fault.Shorted shorted) {
    return code("shorted");
  }

  @Override
  public Map<String, Object> miswire(Fault.Miswire miswire) {
    Map<String, Object> json = code("miswire");
    json.put("pattern", miswire.pattern().word());
    miswire.arrangement().ifPresent(how -> json.put("arrangement", how.word()));
    json.put("moves", moves(miswire.moves()));
    json.put(
        "equivalents",
        miswire.equivalents().stream().map(moves -> Map.of("moves", moves(moves))).toList());
    return json;
  }

  @Override
  public Map<String, Object> highResistance(Fault.HighResistance high) {
    Map<String, Object> json = code("high-resistance");
    json.put("suspects", high.suspects().stream().map(one -> one.conductor().label()).toList());
    json.put("odds", high.suspects().stream().map(one -> rounded(one.odds())).toList());
    json.put("expected", ohms("max", high.limitOhms()));
    json.put("measured", ohms("value", high.measuredOhms()));
    return json;
  }

  @Override
  public Map<String, Object> highWire(Fault.HighWire high) {
    Map<String, Object> json = code("high-wire");
    json.put("causes", alternatives(high.causes()));
    json.put("expected", range(high.expected()));
    json.put("measured", ohms("value", high.measuredOhms()));
    return json;
  }

  @Override
  public Map<String, Object> unequalWire(Fault.UnequalWire unequal) {
    Map<String, Object> json = code("unequal-wire");
    json.put("expected", range(unequal.fellowsOhms()));
    json.put("measured", ohms("value", unequal.measuredOhms()));
    json.put("fellows", unequal.fellows());
    return json;
  }

  @Override
  public Map<String, Object> wrongGauge(Fault.WrongGauge wrong) {
    Map<String, Object> json = code("wrong-gauge");
    json.put("listedGauge", wrong.listed().label());
    json.put("likelyGauge", wrong.likely().label());
    json.put("odds", List.of(rounded(wrong.odds())));
    json.put("expected", range(wrong.expected()));
    json.put("expectedOfLikely", range(wrong.expectedOfLikely()));
    json.put("measured", ohms("value", wrong.measuredOhms()));
    return json;
  }

  @Override
  public Map<String, Object> lowInsulation(Fault.LowInsulation low) {
    Map<String, Object> json = code("low-insulation");
    json.put("items", low.places());
    if (low.measuredOhms().isPresent()) {
      json.put("measured", ohms("value", low.measuredOhms().getAsDouble()));
    }
    if (low.volts().isPresent()) {
      json.put("volts", low.volts().getAsDouble());
    }
    return json;
  }

  @Override
  public Map<String, Object> wrongPart(Fault.WrongPart part) {
    Map<String, Object> json = code("wrong-part");
    Map<String, Object> expected = new LinkedHashMap<>();
    expected.put("min", part.lowOhms());
    if (Double.isInfinite(part.lowOhms())) {
      expected.remove("min");
    }
    if (Double.isFinite(part.highOhms())) {
      expected.put("max", part.highOhms());
    }
    expected.put("unit", "ohm");
    json.put("part", part.part().label());
    json.put("how", part.how().word());
    json.put("expected", expected);
    json.put("measured", part.measured());
    return json;
  }

  @Override
  public Map<String, Object> wrongSwitch(Fault.WrongSwitch wrong) {
    Map<String, Object> json = code("wrong-switch");
    json.put("switch", wrong.which().ref());
    json.put("how", wrong.how().word());
    json.put("position", wrong.position());
    return json;
  }

  @Override
  public Map<String, Object> misread(Fault.Misread misread) {
    return code("misread");
  }

  @Override
  public Map<String, Object> slippedRows(Fault.SlippedRows slipped) {
    Map<String, Object> json = code("slipped-rows");
    json.put("rows", slipped.rows());
    json.put("step", slipped.step());
    json.put("firstRow", slipped.first().reading().place().toString());
    return json;
  }

  @Override
  public Map<String, Object> misscaled(Fault.Misscaled fault) {
    Map<String, Object> json = code("misscaled");
    json.put("times", fault.times());
    json.put("wholeSheet", fault.wholeSheet());
    return json;
  }

  @Override
  public Map<String, Object> exchangedRows(Fault.ExchangedRows fault) {
    return code("exchanged-rows");
  }

  @Override
  public Map<String, Object> leadsNotNulled(Fault.LeadsNotNulled leads) {
    Map<String, Object> json = code("leads-not-nulled");
    json.put("measured", ohms("value", leads.ohms()));
    return json;
  }

  @Override
  public Map<String, Object> onPaper(Fault.OnPaper paper) {
    Map<String, Object> json = code("on-paper");
    json.put("also", paper.others());
    json.put("would", FaultSentences.kind(paper.same()));
    return json;
  }

  static List<String> places(List<Judged> readings) {
    return readings.stream().map(judged -> judged.reading().place().toString()).toList();
  }

  static double rounded(double odds) {
    return Math.round(odds * 10_000) / 10_000.0;
  }

  static Map<String, Object> range(OhmsRange range) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("min", range.lowOhms());
    json.put("max", range.highOhms());
    json.put("unit", "ohm");
    return json;
  }

  private static Map<String, Object> ohms(String name, double ohms) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put(name, ohms);
    json.put("unit", "ohm");
    return json;
  }

  private static Map<String, Object> runnerUp(Fault.RunnerUp runnerUp) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("summary", FaultSentences.slips(runnerUp.slips()));
    json.put("slips", SlipJson.of(runnerUp.slips()));
    json.put("against", places(runnerUp.against()));
    return json;
  }

  private static List<Map<String, Object>> alternatives(List<Fault.Alternative> of) {
    List<Map<String, Object>> alternatives = new ArrayList<>();
    for (Fault.Alternative alternative : of) {
      Map<String, Object> json = new LinkedHashMap<>();
      json.put("odds", rounded(alternative.odds()));
      json.put("summary", FaultSentences.slips(alternative.slips()));
      json.put("slips", SlipJson.of(alternative.slips()));
      alternatives.add(json);
    }
    return alternatives;
  }

  static List<Map<String, Object>> moves(List<Move> moves) {
    List<Map<String, Object>> list = new ArrayList<>();
    for (Move move : moves) {
      Map<String, Object> json = new LinkedHashMap<>();
      json.put("wire", move.wire().name());
      json.put("from", move.from().toString());
      json.put("to", move.to().toString());
      list.add(json);
    }
    return list;
  }
}
