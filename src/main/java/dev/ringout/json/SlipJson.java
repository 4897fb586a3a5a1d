package dev.ringout.json;

import dev.ringout.diagnose.SlipFact;
import dev.ringout.harness.Point;
import dev.ringout.harness.Wire;
import dev.ringout.words.FaultSentences;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Each kind of slip with its code, its facts and its sentence. */
final class SlipJson implements SlipFact.Cases<Map<String, Object>> {
  static List<Map<String, Object>> of(List<SlipFact> facts) {
    return facts.stream().map(SlipJson::of).toList();
  }

  private static Map<String, Object> of(SlipFact fact) {
    Map<String, Object> json = fact.match(new SlipJson());
    json.put("text", FaultSentences.slip(fact));
    return json;
  }

  private static Map<String, Object> code(String code, String name, Object fact) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("code", code);
    json.put(name, fact);
    return json;
  }

  private static List<String> points(Point... points) {
    return List.of(points).stream().map(Point::toString).toList();
  }

  @Override
  public Map<String, Object> opened(SlipFact.Opened fact) {
    return code("opened", "conductor", fact.conductor().label());
  }

  @Override
  public Map<String, Object> misplaced(SlipFact.Misplaced fact) {
    return code("misplaced", "moves", FaultJson.moves(fact.moves()));
  }

  @Override
  public Map<String, Object> bridge(SlipFact.Bridge fact) {
    return code("bridge", "points", points(fact.one(), fact.other()));
  }

  @Override
  public Map<String, Object> misread(SlipFact.Misread fact) {
    Map<String, Object> json =
        code("misread", "reading", fact.judged().reading().place().toString());
    json.put("listed", fact.listed().toString());
    json.put("at", fact.at().toString());
    return json;
  }

  @Override
  public Map<String, Object> poorJoint(SlipFact.PoorJoint fact) {
    return code("poor-joint", "conductor", fact.conductor().label());
  }

  @Override
  public Map<String, Object> otherLength(SlipFact.OtherLength fact) {
    Wire wire = fact.wire();
    Map<String, Object> json = code("other-length", "wire", wire.name());
    json.put("metres", fact.metres());
    return json;
  }

  @Override
  public Map<String, Object> badPart(SlipFact.BadPart fact) {
    Map<String, Object> json = code("bad-part", "part", fact.part().label());
    json.put("how", fact.how().word());
    json.put("points", points(fact.from(), fact.to()));
    return json;
  }

  @Override
  public Map<String, Object> badSwitch(SlipFact.BadSwitch fact) {
    Map<String, Object> json = code("bad-switch", "switch", fact.which().ref());
    json.put("how", fact.how().word());
    json.put("position", fact.position());
    json.put("points", fact.contact().stream().map(Point::toString).toList());
    return json;
  }
}
