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
    return next.why().match(new Why(circuit)).said(NextSentences.why(circuit, next));
  }

  private static Map<String, Object> answer(NextReading.Answer answer) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("reads", NextSentences.reads(answer));
    json.put("odds", FaultJson.rounded(answer.odds()));
    json.put("means", answer.meanings().stream().map(FaultSentences::slips).toList());
    return json;
  }

  private record Why(Circuit circuit) implements NextReason.Cases<Reason> {
    @Override
    public Reason tellsApart(NextReason.TellsApart reason) {
      return Reason.of("tells-apart");
    }

    @Override
    public Reason acrossTheOpen(NextReason.AcrossTheOpen reason) {
      return Reason.of("across-the-open").with("conductor", reason.conductor().label());
    }

    @Override
    public Reason atTheseVeryPoints(NextReason.AtTheseVeryPoints reason) {
      return Reason.of("at-these-very-points");
    }

    @Override
    public Reason rowOnceMore(NextReason.RowOnceMore reason) {
      return Reason.of("row-once-more").with("reading", reason.row().toString());
    }

    @Override
    public Reason aloneShowsIt(NextReason.AloneShowsIt reason) {
      return Reason.of("alone-shows-it");
    }

    @Override
    public Reason leakOfTheTwo(NextReason.LeakOfTheTwo reason) {
      return Reason.of("leak-of-the-two");
    }

    @Override
    public Reason besideThePart(NextReason.BesideThePart reason) {
      return Reason.of("beside-the-part");
    }

    @Override
    public Reason notMeasured(NextReason.NotMeasured reason) {
      return Reason.of("not-measured");
    }

    @Override
    public Reason notJoined(NextReason.NotJoined reason) {
      return Reason.of("not-joined");
    }

    @Override
    public Reason notThrough(NextReason.NotThrough reason) {
      return Reason.of("not-through").with("conductor", reason.conductor().label());
    }

    @Override
    public Reason owed(NextReason.Owed reason) {
      return Reason.of("owed").with("unproven", UnprovenJson.of(circuit, reason.unproven()));
    }
  }
}
