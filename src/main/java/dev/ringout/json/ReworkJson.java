package dev.ringout.json;

import dev.ringout.compare.Conceded;
import dev.ringout.compare.IdleConcession;
import dev.ringout.readings.Concession;
import dev.ringout.readings.Rework;
import dev.ringout.words.Sentences;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** What was opened, and what is accepted out of limits, as parts of a JSON document. */
final class ReworkJson {
  private ReworkJson() {}

  static Map<String, Object> of(Rework rework) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("number", rework.number());
    json.put("time", rework.timeText());
    json.put("items", List.copyOf(rework.items()));
    json.put("wires", List.copyOf(rework.wires()));
    json.put("note", rework.note());
    return json;
  }

  static Map<String, Object> of(Conceded one) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("reading", one.judged().reading().place().toString());
    json.put("value", one.judged().reading().measured().text());
    json.put("waiver", of(one.concession()));
    return json;
  }

  static Map<String, Object> of(IdleConcession one) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("waiver", of(one.concession()));
    json.put(
        "why",
        Reason.of(one.why().name().toLowerCase(Locale.ROOT).replace('_', '-'))
            .said(Sentences.why(one)));
    return json;
  }

  private static Map<String, Object> of(Concession one) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("kind", one.kind().name().toLowerCase(Locale.ROOT));
    json.put("from", one.from().toString());
    json.put("to", one.to().toString());
    json.put("state", one.state().toString());
    json.put("acceptedOhms", one.acceptedOhms());
    json.put("who", one.who());
    json.put("why", one.why());
    json.put("until", one.untilDay().map(LocalDate::toString).orElse(""));
    json.put("serialNumbers", one.serials().map(Object::toString).orElse(""));
    json.put("place", one.place().toString());
    return json;
  }
}
