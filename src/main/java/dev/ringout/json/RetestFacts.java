package dev.ringout.json;

import dev.ringout.revision.RetestReason;
import java.util.LinkedHashMap;
import java.util.Map;

/** Why a reading is to be taken again: a code, the facts and the sentence. */
final class RetestFacts implements RetestReason.Cases<Map<String, Object>> {
  private final String sentence;

  RetestFacts(String sentence) {
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
  public Map<String, Object> wiresTouched(RetestReason.WiresTouched why) {
    return why("wires-touched", Map.of("wires", why.wires()));
  }

  @Override
  public Map<String, Object> itemsOpened(RetestReason.ItemsOpened why) {
    Map<String, Object> facts = new LinkedHashMap<>();
    facts.put("items", why.items());
    facts.put("isolation", why.isolation());
    return why("items-opened", facts);
  }

  @Override
  public Map<String, Object> besideTheWork(RetestReason.BesideTheWork why) {
    return why("beside-the-work", Map.of("isolation", why.isolation()));
  }
}
