package dev.ringout.jobs;

import dev.ringout.people.Signers;
import dev.ringout.readings.Noted;
import dev.ringout.readings.UnitHistory;
import dev.ringout.source.Place;
import dev.ringout.store.Entry;
import dev.ringout.store.EntryKind;
import dev.ringout.store.Photo;
import dev.ringout.store.Session;
import dev.ringout.store.Signature;
import dev.ringout.store.Store;
import dev.ringout.store.StoreTrouble;
import dev.ringout.store.TakenBack;
import dev.ringout.store.Tick;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What was said of a unit of a store, in order: two benches may have kept it at one time. */
final class NotedInStore {
  private final Store store;
  private final Map<Session, List<Entry>> tests;
  private final Signers signers;
  private final List<Timed> noted = new ArrayList<>();
  private Instant last = Instant.MIN;

  private record Timed(Instant at, Noted what) {}

  private NotedInStore(Store store, Map<Session, List<Entry>> tests) throws StoreTrouble {
    this.store = store;
    this.tests = tests;
    this.signers = Signers.of(store.people());
  }

  /**
   * What the tests of a unit say of it.
   *
   * @param tests whose chains hold; the bytes of pictures are read from the store once more
   */
  static UnitHistory of(Store store, Map<Session, List<Entry>> tests) throws StoreTrouble {
    NotedInStore all = new NotedInStore(store, tests);
    tests.forEach(all::add);
    return new UnitHistory(
        all.noted.stream().sorted(Comparator.comparing(Timed::at)).map(Timed::what).toList(),
        tests.keySet().stream().filter(Session::isLed).map(Session::file).toList(),
        tests.entrySet().stream()
            .filter(test -> test.getKey().isLed() && !LedTests.isFinished(test.getValue()))
            .map(test -> test.getKey().number())
            .toList());
  }

  /** What gives no time was said right after what stands before it. */
  private void add(Session session, List<Entry> entries) {
    for (Entry entry : entries) {
      Optional<Noted> what = noted(session, entry);
      if (what.isPresent()) {
        last = instant(entry.at()).orElse(last);
        noted.add(new Timed(last, what.get()));
      }
    }
  }

  private static Optional<Instant> instant(String at) {
    try {
      return Optional.of(Instant.parse(at));
    } catch (DateTimeException e) {
      return Optional.empty();
    }
  }

  private Optional<Noted> noted(Session session, Entry entry) {
    String at = entry.at();
    String who = entry.who();
    EntryKind kind = EntryKind.of(entry.kind()).orElse(EntryKind.VERDICT);
    return switch (kind) {
      case NOTE -> Optional.of(new Noted.Words(at, who, entry.body()));
      case TAKEN_BACK ->
          TakenBack.of(entry.body())
              .map(
                  back ->
                      new Noted.ReadingTakenBack(
                          at, who, back.cell(tests).orElse(Place.NOWHERE), back.why()));
      case PHOTO -> Photo.About.of(entry.body()).map(about -> photograph(session, entry, about));
      case TICK -> Tick.of(entry.body()).flatMap(tick -> ticked(at, who, tick));
      case SIGNATURE ->
          Signature.of(entry.body())
              .map(
                  one ->
                      new Noted.Signed(
                          at,
                          who,
                          one.role(),
                          one.fingerprint(),
                          signers.doubt(who, one.role(), one.fingerprint(), one.at()).orElse("")));
      default -> Optional.empty();
    };
  }

  private static Optional<Noted> ticked(String at, String who, Tick tick) {
    return Noted.EndState.of(tick.what().word())
        .map(state -> new Noted.EndTicked(at, who, state, tick.wire(), tick.item(), tick.pin()));
  }

  private Noted photograph(Session session, Entry entry, Photo.About about) {
    return new Noted.Photograph(
        entry.at(),
        entry.who(),
        about.text(),
        about.step(),
        about.type(),
        about.digest(),
        () -> bytes(session.id(), entry.seq(), about.digest()));
  }

  private Optional<byte[]> bytes(String session, int seq, String digest) {
    try {
      return store
          .entry(session, seq)
          .flatMap(entry -> Photo.of(entry.body()))
          .filter(photo -> photo.digest().equals(digest))
          .map(Photo::bytes);
    } catch (StoreTrouble e) {
      return Optional.empty();
    }
  }
}
