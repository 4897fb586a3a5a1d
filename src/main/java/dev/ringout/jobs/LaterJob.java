package dev.ringout.jobs;

import dev.ringout.check.CheckResult;
import dev.ringout.harness.Harness;
import dev.ringout.jobs.WrongRequest.Part;
import dev.ringout.people.Signers;
import dev.ringout.readings.Jobs;
import dev.ringout.readings.Person;
import dev.ringout.readings.Reading;
import dev.ringout.readings.ReadingSet;
import dev.ringout.seal.KeyFile;
import dev.ringout.seal.Keys;
import dev.ringout.source.Place;
import dev.ringout.standards.Tables;
import dev.ringout.store.Entry;
import dev.ringout.store.EntryKind;
import dev.ringout.store.Head;
import dev.ringout.store.KeptSheets;
import dev.ringout.store.Session;
import dev.ringout.store.Signature;
import dev.ringout.store.Store;
import dev.ringout.store.StoreTrouble;
import dev.ringout.store.StoredUnit;
import dev.ringout.store.Stores;
import dev.ringout.store.TakenBack;
import dev.ringout.units.Text;
import java.nio.file.Path;
import java.security.KeyPair;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;

/**
 * What is said of a unit after its sheets were brought in. It is added to its last test, whichever
 * it is about, with the verdict as it is then: nothing that was kept before is changed.
 */
public final class LaterJob {
  private final Request request;
  private final StoreAtHand store;
  private final Store open;
  private final StoredUnit unit;
  private final List<Session> sessions;
  private final Path whole;
  private final FileInputs inputs;

  /**
   * What is asked.
   *
   * @param unit a unit of the store
   * @param who says it
   * @param now when
   */
  public record Request(Path unit, String who, What what, Instant now) {}

  /** What is said. */
  public sealed interface What {
    /** What is made of it, by its kind. */
    <T> T match(Cases<T> cases);

    /** The words of a note. */
    default Optional<String> words() {
      return Optional.empty();
    }

    /** The cells that are taken back. */
    default List<String> cells() {
      return List.of();
    }

    /** Why they are; empty where nothing is taken back. */
    default String why() {
      return "";
    }

    /** As what and with which key it is signed. */
    default Optional<Sign> signed() {
      return Optional.empty();
    }

    /** Somebody's words. */
    record Note(String text) implements What {
      @Override
      public <T> T match(Cases<T> cases) {
        return cases.note(this);
      }

      @Override
      public Optional<String> words() {
        return Optional.of(text);
      }
    }

    /**
     * Readings that were none.
     *
     * @param cells as every page names them: {@code sheet.xlsx!Continuity!G14}
     */
    record TakeBack(List<String> cells, String why) implements What {
      /** What is given can't be changed afterwards. */
      public TakeBack {
        cells = List.copyOf(cells);
      }

      @Override
      public <T> T match(Cases<T> cases) {
        return cases.takeBack(this);
      }
    }

    /** A signature under all that was read so far. */
    record Sign(Role role, KeyFile key) implements What {
      @Override
      public <T> T match(Cases<T> cases) {
        return cases.sign(this);
      }

      @Override
      public Optional<Sign> signed() {
        return Optional.of(this);
      }
    }

    /** One answer for each kind. */
    interface Cases<T> {
      /** See {@link Note}. */
      T note(Note what);

      /** See {@link TakeBack}. */
      T takeBack(TakeBack what);

      /** See {@link Sign}. */
      T sign(Sign what);
    }
  }

  /** As what somebody signs. */
  public enum Role {
    TESTER,
    INSPECTOR,
    ENGINEER,
    LEAD;

    /** As it is kept and shown. */
    public String word() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  /**
   * What became of it.
   *
   * @param verdict on the unit with it
   */
  public record Result(StoredUnit unit, What what, KeptVerdict verdict) {}

  private LaterJob(Request request, StoreAtHand store, Store open, StoredUnit unit)
      throws StoreTrouble {
    this.request = request;
    this.store = store;
    this.open = open;
    this.unit = unit;
    this.sessions = open.sessions(unit);
    this.whole = InputName.ofUnit(unit.serial(), unit.harness());
    this.inputs = FileInputs.with(List.of(whole), store);
  }

  /**
   * Adds it.
   *
   * @throws StoreTrouble where the store can't be used, has no such unit, or was added to meanwhile
   * @throws WrongRequest where a cell holds no reading of the unit, or nobody is named
   */
  public static Answer<Result> run(Request request, StoreAtHand store)
      throws StoreTrouble, WrongRequest {
    if (!Person.isNamed(request.who())) {
      throw new WrongRequest(Part.WHO, "\"" + request.who() + "\" names nobody");
    }
    if (!Text.visibleInOneLine(request.who()).equals(request.who())) {
      throw new WrongRequest(Part.WHO, "a name has no signs that nobody sees");
    }
    boolean says = request.what().words().map(words -> !words.isBlank()).orElse(true);
    if (!says || (!request.what().cells().isEmpty() && request.what().why().isBlank())) {
      throw new WrongRequest(Part.CELL, "nothing is said");
    }
    InputName.Unit named =
        InputName.unit(request.unit())
            .orElseThrow(
                () ->
                    StoreTrouble.of(
                        StoreTrouble.Reason.MISSING,
                        request.unit() + " is not a unit of a store: unit:SERIAL"));
    StoredUnit unit = new FromStore(store).unit(named, Optional.empty());
    return new LaterJob(request, store, store.openToWrite(), unit).added();
  }

  private Answer<Result> added() throws StoreTrouble, WrongRequest {
    if (sessions.isEmpty()) {
      throw StoreTrouble.torn();
    }
    Session last = sessions.get(sessions.size() - 1);
    Head end = open.head(last.id()).orElseThrow(StoreTrouble::torn);
    if (request.what().signed().isPresent() && !isFinished(last)) {
      throw new WrongRequest(
          Part.CELL, "test " + last.number() + " is still under way at a bench: end it, then sign");
    }
    Optional<Harness> list = inputs.soundHarness(whole);
    ReadingSet readings =
        list.map(harness -> inputs.readings(List.of(whole), harness))
            .orElse(new ReadingSet(List.of(), List.of()));
    if (list.isEmpty() || inputs.problems().hasErrors()) {
      return Answer.refused(inputs);
    }
    List<TakenBack> back = takenBack(readings);
    KeptVerdict verdict =
        back.isEmpty() ? verdict(list.get(), readings, inputs) : verdictWithout(back, list.get());
    open.append(last, end, drafts(last, end, readings, back, verdict));
    return Answer.of(new Result(unit, request.what(), verdict), inputs);
  }

  private boolean isFinished(Session last) throws StoreTrouble {
    return !last.isLed() || LedTests.isFinished(open.entries(last));
  }

  private static KeptVerdict verdict(Harness harness, ReadingSet readings, FileInputs inputs) {
    return KeptVerdict.of(
        CheckResult.of(harness, readings, Tables.published(), inputs.problems().list()));
  }

  /** As it will be once these are taken back. */
  private KeptVerdict verdictWithout(List<TakenBack> back, Harness harness) {
    FileInputs then = FileInputs.with(List.of(whole), store, back);
    then.soundHarness(whole);
    return verdict(harness, then.readings(List.of(whole), harness), then);
  }

  private Entry.Draft draft(EntryKind kind, String body) {
    return new Entry.Draft(kind, at(), request.who(), body);
  }

  private String at() {
    return request.now().truncatedTo(ChronoUnit.SECONDS).toString();
  }

  private List<Entry.Draft> drafts(
      Session last, Head end, ReadingSet readings, List<TakenBack> back, KeptVerdict verdict)
      throws WrongRequest, StoreTrouble {
    Entry.Draft shown = draft(EntryKind.VERDICT, verdict.body());
    List<Entry.Draft> drafts = new ArrayList<>();
    for (TakenBack one : back) {
      drafts.add(draft(EntryKind.TAKEN_BACK, one.body()));
    }
    request.what().words().ifPresent(text -> drafts.add(draft(EntryKind.NOTE, text)));
    // The verdict ends a test that is led: what is said while it is under way ends nothing.
    if (isFinished(last)) {
      drafts.add(shown);
    }
    Optional<What.Sign> sign = request.what().signed();
    if (sign.isPresent()) {
      // Whoever signs signs the verdict that he was shown: it stands before.
      String previous = Stores.endAfter(last, end, drafts).hash();
      drafts.add(draft(EntryKind.SIGNATURE, signature(sign.get(), readings, previous).body()));
    }
    return drafts;
  }

  private Signature signature(What.Sign sign, ReadingSet readings, String previous)
      throws WrongRequest, StoreTrouble {
    if (sign.role() == Role.INSPECTOR) {
      requireAnother(readings);
    } else if (sign.role() == Role.TESTER) {
      requireOneOf(readings);
    }
    Map<String, String> tests = new LinkedHashMap<>();
    for (Session before : sessions.subList(0, sessions.size() - 1)) {
      tests.put(before.id(), open.head(before.id()).orElseThrow(StoreTrouble::torn).hash());
    }
    KeyPair pair = SigningKey.read(sign.key(), inputs);
    Optional<String> refused =
        Signers.of(open.people())
            .refused(
                request.who(),
                sign.role().word(),
                Keys.fingerprint(pair.getPublic()),
                request.now());
    if (refused.isPresent()) {
      throw new WrongRequest(Part.WHO, refused.get());
    }
    return Signature.of(
        request.who(),
        at(),
        sign.role().word(),
        tests,
        previous,
        pair.getPublic(),
        pair.getPrivate());
  }

  /** Nobody inspects what he measured himself, and who measured must be known for that. */
  private void requireAnother(ReadingSet readings) throws WrongRequest {
    Jobs jobs = new Jobs(readings.jobs());
    for (Reading reading : readings.readings()) {
      String operator = jobs.operator(reading);
      String tester = Person.isNamed(reading.by()) ? reading.by() : operator;
      if (reading.measured().made() && !Person.isNamed(tester)) {
        throw new WrongRequest(
            Part.WHO,
            "who took the reading in " + reading.place() + " is not stated: nobody can inspect it");
      }
      if (Person.isSame(tester, request.who()) || Person.isSame(operator, request.who())) {
        throw new WrongRequest(
            Part.WHO,
            request.who() + " took readings of this unit, and can't sign as its inspector");
      }
    }
  }

  /** Who measured signs as tester; where nobody is stated, whoever says so. */
  private void requireOneOf(ReadingSet readings) throws WrongRequest {
    Jobs jobs = new Jobs(readings.jobs());
    boolean anybody = false;
    for (Reading reading : readings.readings()) {
      for (String one : List.of(reading.by(), jobs.operator(reading))) {
        if (Person.isSame(one, request.who())) {
          return;
        }
        anybody |= Person.isNamed(one);
      }
    }
    if (anybody) {
      throw new WrongRequest(
          Part.WHO, request.who() + " took no reading of this unit, and can't sign as its tester");
    }
  }

  private List<TakenBack> takenBack(ReadingSet readings) throws WrongRequest, StoreTrouble {
    Map<Place, TakenBack> back = new LinkedHashMap<>();
    for (String cell : request.what().cells()) {
      Place row = named(cell, readings).place().wholeRow();
      back.put(row, takenBack(row, readings));
    }
    return List.copyOf(back.values());
  }

  /** The reading of a cell that is named as a page names it, which leaves out what is plain. */
  private static Reading named(String cell, ReadingSet readings) throws WrongRequest {
    List<Reading> made = readings.readings().stream().filter(one -> one.measured().made()).toList();
    List<Reading> whole =
        made.stream().filter(one -> one.place().toString().equals(cell.strip())).toList();
    List<Reading> meant =
        whole.size() == 1
            ? whole
            : made.stream()
                .filter(one -> (" " + words(one.place().toString())).endsWith(" " + words(cell)))
                .toList();
    if (meant.isEmpty()) {
      String such =
          made.isEmpty()
              ? ""
              : "; a cell is named as check names it, such as " + made.get(0).place();
      throw new WrongRequest(Part.CELL, "nothing was read of this unit in " + cell + such);
    }
    if (meant.size() > 1) {
      throw new WrongRequest(
          Part.CELL,
          cell
              + " may be "
              + meant.get(0).place()
              + " or "
              + meant.get(1).place()
              + ": name its file");
    }
    return meant.get(0);
  }

  private static String words(String cell) {
    return cell.toLowerCase(Locale.ROOT).replaceAll("[!\\s]+", " ").strip();
  }

  /** A row with both of its values: they were read with the same probes in the same places. */
  private TakenBack takenBack(Place row, ReadingSet readings) throws WrongRequest, StoreTrouble {
    TreeSet<Integer> columns = new TreeSet<>();
    for (Reading one : readings.readings()) {
      Place cell = one.place();
      if (cell.wholeRow().equals(row) && one.measured().made()) {
        if (one.measured().isTakenBack()) {
          throw new WrongRequest(Part.CELL, cell + " is taken back already");
        }
        columns.add(cell.column());
      }
    }
    for (Session session : sessions) {
      Optional<Entry> entry = KeptSheets.entryOf(open.entries(session), session.file(), row);
      if (entry.isPresent()) {
        List<String> letters = columns.stream().map(Place::columnLetters).toList();
        return new TakenBack(session.id(), entry.get().seq(), letters, request.what().why());
      }
    }
    throw new WrongRequest(Part.CELL, row + " is in none of its sheets");
  }
}
