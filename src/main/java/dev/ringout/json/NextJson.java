package dev.ringout.json;

import dev.ringout.circuit.Circuit;
import dev.ringout.diagnose.NextReading;
import dev.ringout.diagnose.NextReason;
import dev.ringout.words.FaultSentences;
import dev.ringout.words.NextSentences;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;

/** A reading to take next, with why it is worth making as a code, its facts and its sentence. */
public final class NextJson {
  private NextJson() {}

  public static Map<String, Object> of(Circuit circuit, NextReading next) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("kind", next.kind().name().toLowerCase(Locale.ROOT));
    json.put("from", next.from());
    json.put("to", next.to());
    json.put("state", next.state().toString());
    json.put("why", why(circuit, next));
    if (!next.answers().isEmpty()) {
      json.put("answers", next.answers().stream().map(NextJson::answer).toList());
    }
    return json;
  }

  private static Map<String, Object> why(Circuit circuit, NextReading next) {
    Map<String, Object> json = next.why().match(new Why(circuit));
    json.put("text", NextSentences.why(circuit, next));
    return json;
  }

  private static Map<String, Object> answer(NextReading.Answer answer) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("reads", NextSentences.reads(answer));
    json.put("odds", FaultJson.rounded(answer.odds()));
    json.put("means", answer.meanings().stream().map(FaultSentences::slips).toList());
    return json;
  }

  private record Why(Circuit circuit) implements NextReason.Cases<Map<String, Object>> {
    private static Map<String, Object> code(String code) {
      Map<String, Object> json = new LinkedHashMap<>();
      json.put("code", code);
      return json;
    }

    private static Map<String, Object> code(String code, String name, Object fact) {
      Map<String, Object> json = code(code);
      json.put(name, fact);
      return json;
    }

    @Override
    public Map<String, Object> tellsApart(NextReason.TellsApart reason) {
      return code("tells-apart");
    }

    @Override
    public Map<String, Object> acrossTheOpen(NextReason.AcrossTheOpen reason) {
      return code("across-the-open", "conductor", reason.conductor().label());
    }

    @Override
    public Map<String, Object> atTheseVeryPoints(NextReason.AtTheseVeryPoints reason) {
      return code("at-these-very-points");
    }

    @Override
    public Map<String, Object> rowOnceMore(NextReason.RowOnceMore reason) {
      return code("row-once-more", "reading", reason.row().toString());
    }

    @Override
    public Map<String, Object> aloneShowsIt(NextReason.AloneShowsIt reason) {
      return code("alone-shows-it");
    }

    @Override
    public Map<String, Object> leakOfTheTwo(NextReason.LeakOfTheTwo reason) {
      return code("leak-of-the-two");
    }

    @Override
    public Map<String, Object> notMeasured(NextReason.NotMeasured reason) {
      return code("not-measured");
    }

    @Override
    public Map<String, Object> notJoined(NextReason.NotJoined reason) {
      return code("not-joined");
    }

    @Override
    public Map<String, Object> notThrough(NextReason.NotThrough reason) {
      return code("not-through", "conductor", reason.conductor().label());
    }

    @Override
    public Map<String, Object> owed(NextReason.Owed reason) {
      return code("owed", "unproven", UnprovenJson.of(circuit, reason.unproven()));
    }
  }
}
