package dev.ringout.json;

import java.util.LinkedHashMap;
import java.util.Map;

/** Facts by their names, in their order. */
final class OddityFacts {
  private final Map<String, Object> facts = new LinkedHashMap<>();

  private OddityFacts() {}

  static OddityFacts none() {
    return new OddityFacts();
  }

  /** The facts of a kind, its code first. */
  static OddityFacts of(String code) {
    return none().with("code", code);
  }

  OddityFacts with(String name, Object fact) {
    facts.put(name, fact);
    return this;
  }

  Map<String, Object> map() {
    return facts;
  }
}
