package dev.ringout.json;

import dev.ringout.circuit.Circuit;
import dev.ringout.compare.MissingWire;
import dev.ringout.compare.Unproven;
import dev.ringout.words.UnprovenSentences;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What is not proven, each kind with its facts, and why as an object beside them. */
final class UnprovenJson implements Unproven.Cases<Map<String, Object>> {
  private final Circuit circuit;

  private UnprovenJson(Circuit circuit) {
    this.circuit = circuit;
  }

  static Map<String, Object> of(Circuit circuit, Unproven unproven) {
    Map<String, Object> json = unproven.match(new UnprovenJson(circuit));
    json.put("why", why(circuit, unproven));
    return json;
  }

  /** Why it is not, with what its entry does not say already. */
  static Map<String, Object> why(Circuit circuit, Unproven unproven) {
    return unproven.match(new Why(circuit)).said(UnprovenSentences.why(circuit, unproven));
  }

  private static Map<String, Object> kind(String kind) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("kind", kind);
    return json;
  }

  private Map<String, Object> kind(String kind, int from, int to) {
    Map<String, Object> json = kind(kind);
    json.put("points", List.of(circuit.point(from).toString(), circuit.point(to).toString()));
    return json;
  }

  @Override
  public Map<String, Object> join(Unproven.Join gap) {
    return kind("join", gap.from(), gap.to());
  }

  @Override
  public Map<String, Object> isolation(Unproven.Isolation gap) {
    Map<String, Object> json = kind("isolation", gap.point(), gap.other());
    json.put("nets", gap.others());
    return json;
  }

  @Override
  public Map<String, Object> insulation(Unproven.Insulation gap) {
    Map<String, Object> json = kind("insulation", gap.point(), gap.other());
    json.put("nets", gap.others());
    json.put("volts", gap.level().volts());
    json.put("minOhms", gap.level().ohms());
    return json;
  }

  @Override
  public Map<String, Object> ofWire(Unproven.OfWire gap) {
    Map<String, Object> json = kind("wire");
    json.put("wire", circuit.conductors().get(gap.conductor()).label());
    return json;
  }

  @Override
  public Map<String, Object> contact(Unproven.Contact gap) {
    Map<String, Object> json =
        kind("switch", circuit.from(gap.conductor()), circuit.to(gap.conductor()));
    json.put("position", gap.position());
    return json;
  }

  @Override
  public Map<String, Object> pastContacts(Unproven.PastContacts gap) {
    return kind("switch", gap.one(), gap.other());
  }

  @Override
  public Map<String, Object> ofPart(Unproven.OfPart gap) {
    return kind("part", circuit.fromOfPart(gap.part()), circuit.toOfPart(gap.part()));
  }

  private record Why(Circuit circuit) implements Unproven.Cases<Reason>, MissingWire.Cases<Reason> {
    @Override
    public Reason join(Unproven.Join gap) {
      return Reason.of("not-joined");
    }

    @Override
    public Reason isolation(Unproven.Isolation gap) {
      return Reason.of("not-held-apart").with("waitsForJoins", gap.waitsForJoins());
    }

    @Override
    public Reason insulation(Unproven.Insulation gap) {
      return Reason.of("insulation-not-shown").with("waitsForJoins", gap.waitsForJoins());
    }

    @Override
    public Reason ofWire(Unproven.OfWire gap) {
      return gap.missing().match(this);
    }

    @Override
    public Reason contact(Unproven.Contact gap) {
      return Reason.of(gap.closed() ? "not-seen-closed" : "not-seen-open")
          .with("position", gap.position());
    }

    @Override
    public Reason pastContacts(Unproven.PastContacts gap) {
      return Reason.of("past-contacts").with("state", gap.state().toString());
    }

    @Override
    public Reason ofPart(Unproven.OfPart gap) {
      return Reason.of("no-good-reading")
          .with("part", circuit.part(gap.part()).label())
          .with("read", gap.read())
          .with("state", gap.state().toString());
    }

    @Override
    public Reason notRead(MissingWire.NotRead reason) {
      return Reason.of("not-read");
    }

    @Override
    public Reason inParallel(MissingWire.InParallel reason) {
      return Reason.of("in-parallel").with("with", conductor(reason.other()));
    }

    @Override
    public Reason inLoop(MissingWire.InLoop reason) {
      return Reason.of("in-loop");
    }

    @Override
    public Reason eitherSide(MissingWire.EitherSide reason) {
      Reason either =
          Reason.of("either-side")
              .with("with", circuit.point(reason.other()).toString())
              .with("state", reason.shows().state().toString());
      return reason.exchangedWith().isPresent()
          ? either.with("exchangedWith", conductor(reason.exchangedWith().getAsInt()))
          : either;
    }

    private String conductor(int number) {
      return circuit.conductors().get(number).label();
    }
  }
}
