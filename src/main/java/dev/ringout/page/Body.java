package dev.ringout.page;

import dev.ringout.bench.Refused;
import dev.ringout.bench.Refused.Reason;
import dev.ringout.json.BenchJson;
import dev.ringout.serve.Ask;
import java.nio.charset.CharacterCodingException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What a page sent: names with their values. A name that is not there is empty. */
final class Body {
  private static final int LONGEST_TEXT = 4000;

  private final Map<String, Object> fields;

  private Body(Map<String, Object> fields) {
    this.fields = fields;
  }

  static Body of(Ask ask) throws Refused {
    if (ask.size() == 0) {
      return new Body(Map.of());
    }
    try {
      Optional<Map<String, Object>> read = BenchJson.read(ask.utf8());
      return new Body(read.orElseThrow(() -> notUnderstood("What was sent is no JSON object.")));
    } catch (CharacterCodingException e) {
      throw notUnderstood("What was sent is no text in UTF-8.");
    }
  }

  private static Refused notUnderstood(String text) {
    return new Refused(Reason.NOT_UNDERSTOOD, text);
  }

  boolean has(String name) {
    return fields.get(name) != null;
  }

  /** A text; empty where there is none. */
  String text(String name) throws Refused {
    Object value = fields.get(name);
    if (value == null) {
      return "";
    }
    if (value instanceof String text) {
      if (text.length() > LONGEST_TEXT) {
        throw notUnderstood(name + " is too long.");
      }
      return text;
    }
    throw notUnderstood(name + " has to be a text.");
  }

  boolean flag(String name) throws Refused {
    Object value = fields.get(name);
    if (value instanceof Boolean flag) {
      return flag;
    }
    throw notUnderstood(name + " has to be true or false.");
  }

  /** Texts in a row; none where there is no such name. */
  List<String> texts(String name) throws Refused {
    Object value = fields.get(name);
    if (value == null) {
      return List.of();
    }
    if (value instanceof List<?> list && list.stream().allMatch(String.class::isInstance)) {
      return list.stream().map(String.class::cast).toList();
    }
    throw notUnderstood(name + " has to be a list of texts.");
  }

  /** Names with their values, in their order; none where there is no such name. */
  Map<String, String> named(String name) throws Refused {
    Object value = fields.get(name);
    Map<String, String> named = new LinkedHashMap<>();
    if (value == null) {
      return named;
    }
    if (!(value instanceof List<?> list)) {
      throw notUnderstood(name + " has to be a list of names with values.");
    }
    for (Object each : list) {
      if (!(each instanceof Map<?, ?> one)
          || !(one.get("name") instanceof String key)
          || !(one.get("value") instanceof String text)) {
        throw notUnderstood(name + " has to be a list of names with values.");
      }
      named.put(key, text);
    }
    return named;
  }
}
