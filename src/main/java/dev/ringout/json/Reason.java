package dev.ringout.json;

import java.util.LinkedHashMap;
import java.util.Map;

/** A reason as an object: its code, its facts by name, and the sentence that a page has for it. */
final class Reason {
  private final Map<String, Object> json = new LinkedHashMap<>();

  private Reason(String code) {
    json.put("code", code);
  }

  static Reason of(String code) {
    return new Reason(code);
  }

  /** With one fact more. */
  Reason with(String name, Object fact) {
    json.put(name, fact);
    return this;
  }

  /** The whole object. */
  Map<String, Object> said(String text) {
    json.put("text", text);
    return json;
  }
}
