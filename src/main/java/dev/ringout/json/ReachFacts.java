package dev.ringout.json;

import dev.ringout.revision.Reach;
import java.util.LinkedHashMap;
import java.util.Map;

/** Why an end gets where it goes or may not: a code, the facts and the sentence. */
final class ReachFacts implements Reach.Cases<Map<String, Object>> {
  private final String sentence;

  ReachFacts(String sentence) {
    this.sentence = sentence;
  }

  private Map<String, Object> why(String code, Map<String, Object> facts) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("code", code);
    json.putAll(facts);
    json.put("text", sentence);
    return json;
  }

  @Override
  public Map<String, Object> staysAtItem(Reach.StaysAtItem why) {
    return why("stays-at-item", Map.of("item", why.item()));
  }

  @Override
  public Map<String, Object> listWantsLess(Reach.ListWantsLess why) {
    Map<String, Object> facts = new LinkedHashMap<>();
    facts.put("metres", why.metres());
    facts.put("wantedMetres", why.wantedMetres());
    return why("list-wants-less", facts);
  }

  @Override
  public Map<String, Object> othersThatWay(Reach.OthersThatWay why) {
    Map<String, Object> facts = new LinkedHashMap<>();
    facts.put("metres", why.metres());
    facts.put("shortestMetres", why.shortestMetres());
    return why("others-that-way", facts);
  }

  @Override
  public Map<String, Object> noLength(Reach.NoLength why) {
    return why("no-length", Map.of());
  }

  @Override
  public Map<String, Object> noOtherThatWay(Reach.NoOtherThatWay why) {
    return why("no-other-that-way", Map.of("metres", why.metres()));
  }
}
