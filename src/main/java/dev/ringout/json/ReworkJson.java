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

  static Map<String, Object> of(Conceded conceded) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("reading", conceded.judged().reading().place().toString());
    json.put("value", conceded.judged().reading().measured().text());
    json.put("waiver", of(conceded.concession()));
    return json;
  }

  static Map<String, Object> of(IdleConcession idleConcession) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("waiver", of(idleConcession.concession()));
    json.put(
        "why",
        Reason.of(idleConcession.why().name().toLowerCase(Locale.ROOT).replace('_', '-'))
            .said(Sentences.why(idleConcession)));
    return json;
  }

  private static Map<String, Object> of(Concession concession) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("kind", concession.kind().name().toLowerCase(Locale.ROOT));
    json.put("from", concession.from().toString());
    json.put("to", concession.to().toString());
    json.put("state", concession.state().toString());
    json.put("acceptedOhms", concession.acceptedOhms());
    json.put("who", concession.who());
    json.put("why", concession.why());
    json.put("until", concession.untilDay().map(LocalDate::toString).orElse(""));
    json.put("serialNumbers", concession.serials().map(Object::toString).orElse(""));
    json.put("place", concession.place().toString());
    return json;
  }
}
