package dev.ringout.bench;

import dev.ringout.jobs.KeptVerdict;
import dev.ringout.jobs.LedTests.UnitAtBench;
import dev.ringout.readings.Rework;
import dev.ringout.store.Entry;
import dev.ringout.store.EntryKind;
import dev.ringout.store.Photo;
import dev.ringout.store.Session;
import dev.ringout.store.Signature;
import dev.ringout.store.TakenBack;
import dev.ringout.store.Tick;
import dev.ringout.units.Numbers;
import dev.ringout.units.Text;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** What happened to a unit, test after test: everything that is kept of it but the readings. */
public final class UnitEvents {
  private final UnitAtBench unit;
  private final List<Event> events = new ArrayList<>();
  private final List<Rework> reworks;

  /**
   * Something that happened.
   *
   * @param kind a word of docs/reference/bench-api.md
   * @param station empty but for a test
   * @param photo the digest of a picture; empty where it is none
   */
  public record Event(
      String kind, String at, String who, String station, String text, String photo) {}

  private UnitEvents(UnitAtBench unit) {
    this.unit = unit;
    this.reworks = unit.readings().reworksOnce();
  }

  /** Of a unit, the earliest first. */
  public static List<Event> of(UnitAtBench unit) {
    UnitEvents history = new UnitEvents(unit);
    unit.tests().forEach(history::test);
    return List.copyOf(history.events);
  }

  private void test(Session session, List<Entry> entries) {
    reworks(session);
    events.add(
        new Event(
            "test",
            session.added(),
            session.who(),
            session.station(),
            Text.of("Test %s: %s", session.number(), outcome(entries)),
            ""));
    ticks(entries).ifPresent(events::add);
    for (Entry entry : entries) {
      later(entry).ifPresent(events::add);
    }
  }

  private static String outcome(List<Entry> entries) {
    long readings = entries.stream().filter(one -> one.is(EntryKind.READING)).count();
    String verdict =
        KeptVerdict.firstIn(entries)
            .flatMap(KeptVerdict::verdict)
            .map(one -> ", " + one.word())
            .orElse("");
    return Numbers.count(readings, "reading") + verdict;
  }

  /** What was done before a test. */
  private void reworks(Session session) {
    for (Rework rework : reworks) {
      if (session.holds(rework.place().file())) {
        events.add(
            new Event(
                "rework", session.added(), session.who(), session.station(), text(rework), ""));
      }
    }
  }

  private static String text(Rework rework) {
    List<String> parts = new ArrayList<>();
    if (!rework.items().isEmpty()) {
      parts.add("opened " + String.join(", ", rework.items()));
    }
    if (!rework.wires().isEmpty()) {
      parts.add("touched " + String.join(", ", rework.wires()));
    }
    String what = "Before it: " + String.join("; ", parts);
    return rework.note().isBlank() ? what : what + ". " + rework.note();
  }

  /** A hundred ticks are one line. */
  private static Optional<Event> ticks(List<Entry> entries) {
    Map<Tick.What, Integer> counts = new EnumMap<>(Tick.What.class);
    Set<String> who = new LinkedHashSet<>();
    String at = "";
    for (Entry entry : entries) {
      Optional<Tick> tick = Tick.in(entry);
      if (tick.isPresent()) {
        counts.merge(tick.get().what(), 1, Integer::sum);
        who.add(entry.who());
        at = entry.at();
      }
    }
    List<String> parts = new ArrayList<>();
    counts.forEach((what, count) -> parts.add(count + " " + what.word()));
    return parts.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Event(
                "ticks", at, String.join(", ", who), "", "Ends: " + String.join(", ", parts), ""));
  }

  private Optional<Event> later(Entry entry) {
    return switch (EntryKind.of(entry.kind()).orElse(EntryKind.VERDICT)) {
      case NOTE -> Optional.of(event("note", entry, entry.body(), ""));
      case SIGNATURE ->
          Signature.of(entry.body()).map(one -> event("signature", entry, signed(one), ""));
      case PHOTO ->
          Photo.About.of(entry.body())
              .map(
                  photo ->
                      event(
                          "photo",
                          entry,
                          photo.text().isEmpty() ? "Photo" : "Photo: " + photo.text(),
                          photo.digest()));
      case TAKEN_BACK ->
          TakenBack.of(entry.body()).map(back -> event("taken-back", entry, text(back), ""));
      default -> Optional.empty();
    };
  }

  private static Event event(String kind, Entry entry, String text, String photo) {
    return new Event(kind, entry.at(), entry.who(), "", text, photo);
  }

  private String signed(Signature signature) {
    return "signed as "
        + signature.role()
        + unit.signers().doubt(signature).map(why -> "; does not count: " + why).orElse("");
  }

  private String text(TakenBack back) {
    String cell = back.cell(unit.tests()).map(one -> " (" + one + ")").orElse("");
    return Text.of("Taken back%s: %s", cell, back.why());
  }
}
