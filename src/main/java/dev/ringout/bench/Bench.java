package dev.ringout.bench;

import dev.ringout.bench.BenchState.Tone;
import dev.ringout.bench.Refused.Reason;
import dev.ringout.check.CheckResult;
import dev.ringout.check.Checker;
import dev.ringout.harness.Harness;
import dev.ringout.jobs.LedSheets;
import dev.ringout.jobs.LedTests;
import dev.ringout.jobs.LedTests.Led;
import dev.ringout.jobs.LedTests.ListAtHand;
import dev.ringout.jobs.LedTests.UnitAtBench;
import dev.ringout.meter.MeterReading;
import dev.ringout.meter.MeterTrouble;
import dev.ringout.meter.Settling;
import dev.ringout.readings.Job;
import dev.ringout.readings.Person;
import dev.ringout.readings.ReadingSet;
import dev.ringout.readings.Rework;
import dev.ringout.source.Problem;
import dev.ringout.standards.Tables;
import dev.ringout.store.Entry;
import dev.ringout.store.EntryKind;
import dev.ringout.store.Head;
import dev.ringout.store.Lease;
import dev.ringout.store.Photo;
import dev.ringout.store.StoreTrouble;
import dev.ringout.store.StoredUnit;
import dev.ringout.store.Tick;
import dev.ringout.units.Text;
import dev.ringout.work.WorkPapers;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * A bench: one station with its meters, and the one test that is led at it. Several pages may look
 * at it; what each asks is done one after the other, and whatever it answers is in the store.
 */
public final class Bench implements AutoCloseable {
  private static final long OTHERS_MILLIS = 700;

  /** So a sign of life comes about every ten seconds: three in the time of a lease. */
  private static final int LOOKS_BETWEEN_SIGNS = 14;

  private static final long LEADS_MILLIS = 20_000;
  private static final long MOST_EXPLAIN_MILLIS = 3000;

  private static final Set<String> SAID_BY_BENCH =
      Set.of("serial number", "date", "revision", "drawing", "operator", "tester", "station");

  private static final Pattern VOLTS = Pattern.compile("(\\d{1,5}(?:\\.\\d{1,2})?)\\s*[vV]?");

  /**
   * A clock whose battery is empty begins long before it: a calibration that ran out would pass.
   */
  private static final LocalDate FIRST_DAY = LocalDate.of(2026, 11, 1);

  private static final int LONGEST_SERIAL = 60;

  /** What the serial numbers of practice units begin with. */
  private static final String PRACTICE = "PRACTICE";

  private final BenchSetup setup;
  private final Listener listener;
  private final LedTests tests;
  private final Behind behind;
  private final BenchMeters meters;
  private Optional<LedSession> session = Optional.empty();
  private Optional<StoredUnit> unit = Optional.empty();
  private Optional<Checker> explainer = Optional.empty();
  private List<BenchState.Other> others = List.of();
  private Map<String, String> conditions = new LinkedHashMap<>();
  private String tester = "";
  private String meterOfPart = "";
  private boolean waitsToExplain;
  private volatile long explainMillis;
  private long version;
  private int looks;

  /** Who is told what happens; is called by several threads, and must not wait. */
  public interface Listener {
    /** Anything changed. */
    void state(BenchState state);

    /** What the meter shows now. */
    void live(String text, Settling.Stage stage);

    /** A value was judged, and is in the store. */
    void tone(Tone tone);

    /** The program made a mistake behind the page. */
    void defect(Throwable cause);
  }

  /**
   * Opens a bench.
   *
   * @throws MeterTrouble where a meter's address or profile is none
   */
  public static Bench open(BenchSetup setup, Listener listener) throws MeterTrouble {
    Bench bench = new Bench(setup, listener);
    bench.behind.every(OTHERS_MILLIS, bench::lookForOthers);
    return bench;
  }

  private Bench(BenchSetup setup, Listener listener) throws MeterTrouble {
    this.setup = setup;
    this.listener = listener;
    this.tests = new LedTests(setup.store());
    this.behind = new Behind(listener::defect);
    // A meter may have something to say before the bench is made.
    synchronized (this) {
      this.meters = new BenchMeters(setup, new Hearer());
    }
  }

  /** The tests of its store. */
  public LedTests tests() {
    return tests;
  }

  /** How it was set up. */
  public BenchSetup setup() {
    return setup;
  }

  /** The unit on the bench; absent where there is none. */
  public synchronized Optional<StoredUnit> unit() {
    return unit;
  }

  /** What was done to the practice unit, for who asks afterwards. */
  public synchronized List<String> slips() {
    return meters.slips();
  }

  private Instant now() {
    return setup.ticks().now();
  }

  /**
   * What is asked to begin or go on with.
   *
   * @param word why the test is taken over from a bench of which nothing is heard any more; blank
   *     where there is none
   */
  public record Start(
      String tester,
      Map<String, String> conditions,
      Set<String> opened,
      Set<String> touched,
      String why,
      String word) {
    /** Of a test that nobody else left in the middle. */
    public Start(
        String tester,
        Map<String, String> conditions,
        Set<String> opened,
        Set<String> touched,
        String why) {
      this(tester, conditions, opened, touched, why, "");
    }

    /** What is given can't be changed afterwards. */
    public Start {
      conditions = Map.copyOf(conditions);
      opened = Set.copyOf(opened);
      touched = Set.copyOf(touched);
    }
  }

  /**
   * Begins a test of a unit of which nothing was read yet, or goes on with it.
   *
   * @throws Refused where nobody is named, the list can't be used, or the store can't be written
   */
  public synchronized BenchState start(ListAtHand list, String serial, Start start) throws Refused {
    String plain = Text.visibleInOneLine(serial).strip();
    String name = setup.practice() ? practiceSerial(plain) : plain;
    boolean named = plain.codePoints().anyMatch(Character::isLetterOrDigit);
    if (!named || plain.length() > LONGEST_SERIAL) {
      throw new Refused(Reason.NOT_UNDERSTOOD, "Say which unit it is: its serial number.");
    }
    requireItsOwnKind(name);
    try {
      Optional<StoredUnit> known = tests.find(name, list.file().digest());
      if (known.isEmpty() && tests.withOtherFile(list, name).isPresent()) {
        throw new Refused(
            Reason.NOT_UNDERSTOOD,
            "Unit "
                + name
                + " is kept with another file of the same list: choose it among the units, or give"
                + " this list a revision of its own.");
      }
      return known.isPresent() ? start(known.get(), start) : begin(list, name, start);
    } catch (StoreTrouble e) {
      throw Refused.by(e);
    }
  }

  /** Whether a unit is simulated: its serial number says so. */
  public static boolean isPractice(StoredUnit unit) {
    return unit.serial().startsWith(PRACTICE);
  }

  private static String practiceSerial(String serial) {
    String bare = serial.strip();
    return bare.startsWith(PRACTICE) ? bare : (PRACTICE + " " + bare).strip();
  }

  /**
   * Goes on with a unit: with the test that is under way, or with a new one.
   *
   * @throws Refused where nobody is named, the unit can't be used, or the store can't be written
   */
  public synchronized BenchState start(StoredUnit known, Start start) throws Refused {
    requireItsOwnKind(known.serial());
    try {
      UnitAtBench all = Refused.given(tests.unit(known));
      Optional<Led> underWay = all.underWay();
      boolean retest = !start.opened().isEmpty() || !start.touched().isEmpty();
      if (underWay.isEmpty() || retest) {
        return begin(all.list(), known.serial(), start);
      }
      take(start);
      List<Lease> silent =
          all.leads().stream()
              .filter(lease -> lease.isSilent() && !lease.station().equals(setup.station()))
              .toList();
      return join(all.list(), underWay.get(), silent, takenOver(silent, start.word()));
    } catch (StoreTrouble e) {
      throw Refused.by(e);
    }
  }

  /** What the bench says itself is not said otherwise beside it. */
  private static void requireOwn(Map<String, String> given) throws Refused {
    for (Map.Entry<String, String> one : given.entrySet()) {
      String name = one.getKey().toLowerCase(Locale.ROOT).strip();
      if (SAID_BY_BENCH.contains(name) && !one.getValue().isBlank()) {
        throw new Refused(
            Reason.NOT_UNDERSTOOD,
            one.getKey()
                + " comes from the unit, its list and the person who tests: it is not typed here.");
      }
    }
  }

  private void take(Start start) throws Refused {
    requireOwn(start.conditions());
    if (!start.why().isBlank() && start.opened().isEmpty() && start.touched().isEmpty()) {
      throw new Refused(
          Reason.NOT_UNDERSTOOD,
          "Say which items were opened or which wires were touched: what was done there is asked"
              + " for again.");
    }
    if (!Person.isNamed(start.tester())) {
      throw new Refused(Reason.NOT_UNDERSTOOD, "Say who holds the probes.");
    }
    tester = Text.visibleInOneLine(start.tester()).strip();
    conditions = new LinkedHashMap<>();
    try {
      conditions.putAll(tests.station(setup.station()).rows());
    } catch (StoreTrouble e) {
      throw Refused.by(e);
    }
    conditions.putAll(start.conditions());
    conditions.values().removeIf(String::isBlank);
  }

  private BenchState begin(ListAtHand list, String serial, Start start)
      throws Refused, StoreTrouble {
    take(start);
    LocalDate today = now().atZone(setup.zone()).toLocalDate();
    if (today.isBefore(FIRST_DAY)) {
      throw new Refused(
          Reason.NOT_UNDERSTOOD,
          "The clock of this machine says " + today + ", before this program was made: set it.");
    }
    String day = today.toString();
    List<Rework> reworks = reworks(list, serial, start);
    List<Entry.Draft> undone = undone(list, serial, start);
    String meter = meters.name();
    LedSheets sheets = new LedSheets("/1", job(list.harness(), serial, day), reworks);
    requireReadable(sheets, list.harness());
    Led led =
        tests.start(
            list,
            serial,
            new LedTests.Start(setup.station(), tester, day, setup.station() + " " + day, now()),
            parts -> sheets.opening(LedSession.at(now()), tester));
    BenchState state = led(list, led, sheets, "/1", meter);
    if (undone.isEmpty()) {
      return state;
    }
    led().keep(undone);
    return changed();
  }

  /** The ends of wires that were touched are no longer those that somebody ticked. */
  private List<Entry.Draft> undone(ListAtHand list, String serial, Start start)
      throws Refused, StoreTrouble {
    Optional<StoredUnit> known = tests.find(serial, list.file().digest());
    if (known.isEmpty() || start.touched().isEmpty()) {
      return List.of();
    }
    Set<String> wires = new LinkedHashSet<>();
    for (String wire : start.touched()) {
      wires.add(Named.wire(list.harness(), wire));
    }
    return EndTicks.undoneBy(wires, Refused.given(tests.unit(known.get())).tests().values())
        .stream()
        .map(tick -> new Entry.Draft(EntryKind.TICK, LedSession.at(now()), tester, tick.body()))
        .toList();
  }

  private void requireReadable(LedSheets sheets, Harness harness) throws Refused {
    List<Problem> errors = sheets.errors(setup.station(), harness);
    if (!errors.isEmpty()) {
      throw new Refused(Reason.NOT_UNDERSTOOD, errors);
    }
  }

  /**
   * A simulated value is not a value of a real unit, nor the other way.
   *
   * @throws Refused where a unit is not of this bench's kind
   */
  public void requireItsOwnKind(String serial) throws Refused {
    if (setup.practice() != serial.startsWith(PRACTICE)) {
      throw new Refused(
          Reason.NOT_UNDERSTOOD,
          setup.practice()
              ? "This bench is for practice: " + serial + " is a real unit."
              : serial + " is a practice unit: open it with --practice.");
    }
  }

  /**
   * What was opened before, and now, as a sheet that is filled in after it tells of it: whatever is
   * read from here on is read after all of that.
   */
  private List<Rework> reworks(ListAtHand list, String serial, Start start)
      throws Refused, StoreTrouble {
    Optional<StoredUnit> known = tests.find(serial, list.file().digest());
    ReadingSet before =
        known.isEmpty()
            ? new ReadingSet(List.of(), List.of())
            : Refused.given(tests.unit(known.get())).readings();
    return start.opened().isEmpty() && start.touched().isEmpty()
        ? before.reworksBefore()
        : before.before(told(list, start)).reworksBefore();
  }

  private static Rework told(ListAtHand list, Start start) throws Refused {
    Set<String> wires = new LinkedHashSet<>();
    for (String wire : start.touched()) {
      wires.add(Named.wire(list.harness(), wire));
    }
    Set<String> items = new LinkedHashSet<>();
    for (String item : start.opened()) {
      items.add(Named.item(list.harness(), item));
    }
    Rework told = Rework.told(list.harness(), wires, items);
    return new Rework(
        "",
        "",
        Optional.empty(),
        told.items(),
        told.wires(),
        start.why().strip(),
        false,
        told.place());
  }

  /**
   * The word with which a test is taken over, for the unit's history.
   *
   * @throws Refused where there is none: somebody may still hold probes there
   */
  private List<Entry.Draft> takenOver(List<Lease> silent, String word) throws Refused {
    if (silent.isEmpty()) {
      return List.of();
    }
    String from =
        silent.stream()
            .map(lease -> lease.station() + " (" + lease.who() + ")")
            .collect(Collectors.joining(", "));
    if (word.isBlank()) {
      throw new Refused(
          Reason.NOT_ALLOWED,
          "Nothing is heard any more of "
              + from
              + ", where this test was led. Look there first; then say why you take it over.");
    }
    return List.of(
        new Entry.Draft(
            EntryKind.NOTE,
            LedSession.at(now()),
            tester,
            setup.station() + " took the test over from " + from + ": " + word.strip()));
  }

  private BenchState join(ListAtHand list, Led underWay, List<Lease> over, List<Entry.Draft> word)
      throws Refused, StoreTrouble {
    String meter = meters.name();
    Map<String, String> job =
        job(list.harness(), underWay.unit().serial(), underWay.session().started());
    List<Rework> reworks = Refused.given(tests.unit(underWay.unit())).readings().reworksBefore();
    requireReadable(new LedSheets("/1", job, reworks), list.harness());
    int[] part = new int[1];
    LedSheets[] sheets = new LedSheets[1];
    Led here =
        underWay.lease().isPresent() ? underWay : tests.lead(underWay, setup.station(), tester);
    Led led =
        tests.join(
            here,
            over,
            parts -> {
              part[0] = parts + 1;
              sheets[0] = new LedSheets("/" + part[0], job, reworks);
              List<Entry.Draft> drafts = new ArrayList<>(word);
              drafts.addAll(sheets[0].opening(LedSession.at(now()), tester));
              return drafts;
            });
    return led(list, led, sheets[0], "/" + part[0], meter);
  }

  /** A part of a test begins, whose sheet Job is of that meter. */
  private BenchState led(ListAtHand list, Led led, LedSheets sheets, String within, String meter)
      throws Refused, StoreTrouble {
    UnitAtBench now = Refused.given(tests.unit(led.unit()));
    if (unit.filter(led.unit()::equals).isEmpty()) {
      meters.lay(list.harness(), led.unit().serial());
    }
    unit = Optional.of(led.unit());
    meterOfPart = meter;
    Optional<LedSession> before =
        session.filter(one -> one.led().session().id().equals(led.session().id()));
    if (before.isEmpty()) {
      giveBack();
      explainer = Optional.of(Checker.of(list.harness(), Tables.published()));
    }
    // What hangs on the list alone is worked out once for all parts of a test.
    Checker checker =
        before
            .map(LedSession::checker)
            .orElseGet(() -> Checker.of(list.harness(), Tables.published()));
    List<LedSession.Taken> takenHere = before.map(LedSession::taken).orElse(List.of());
    session =
        Optional.of(
            new LedSession(
                tests,
                list,
                checker,
                led,
                sheets,
                within,
                now.readings(),
                takenHere,
                setup.zone()));
    others = List.of();
    explain(true);
    return changed();
  }

  /** Another may go on with the test at once; where that can't be told, after its time. */
  private void giveBack() {
    try {
      if (session.isPresent()) {
        tests.giveBack(session.get().led());
      }
    } catch (StoreTrouble e) {
      // It runs out by itself.
    }
  }

  /** What stands on the sheet Job of a part. */
  private Map<String, String> job(Harness harness, String serial, String day) {
    Map<String, String> job = new LinkedHashMap<>();
    job.put("serial number", serial);
    job.put(Job.DATE, day);
    put(job, "revision", harness.headerValue("revision"));
    put(job, "drawing", harness.headerValue("drawing"));
    job.put("operator", tester);
    job.put("station", setup.station());
    conditions.forEach((name, value) -> job.putIfAbsent(name, value));
    meters.describe(job);
    return job;
  }

  private static void put(Map<String, String> job, String name, String value) {
    if (!value.isEmpty()) {
      job.put(name, value);
    }
  }

  /** Whoever goes on with the test does not measure the leads any more. */
  private LedSession goingOn() throws Refused {
    LedSession led = led();
    meters.gaveUpLeads();
    return led;
  }

  private LedSession led() throws Refused {
    return session.orElseThrow(
        () -> new Refused(Reason.MISSING, "No unit is on this bench: choose one."));
  }

  /**
   * Takes what was read off and typed.
   *
   * @param volts at which an insulation tester was read; blank where they are those of the step
   * @throws Refused where it can't be understood, or is for another step; nothing was kept
   */
  public synchronized BenchState typed(String step, String text, String volts) throws Refused {
    if (text.isBlank()) {
      throw new Refused(Reason.NOT_UNDERSTOOD, "Type what the meter shows, or OL.");
    }
    AskedStep asked = goingOn().asked(step);
    if (!volts.isBlank() && !asked.isInsulation()) {
      throw new Refused(Reason.NOT_UNDERSTOOD, "This step has no test volts.");
    }
    return take(step, MeterValue.typed(text.strip(), testVolts(volts)));
  }

  private static OptionalDouble testVolts(String text) throws Refused {
    Matcher volts = VOLTS.matcher(text.strip());
    if (text.isBlank()) {
      return OptionalDouble.empty();
    }
    if (!volts.matches() || Double.parseDouble(volts.group(1)) <= 0) {
      throw new Refused(
          Reason.NOT_UNDERSTOOD, "Type the test volts as the tester shows them, such as 250 V.");
    }
    return OptionalDouble.of(Double.parseDouble(volts.group(1)));
  }

  /** What is read stands on a sheet Job of the meter that read it. */
  private void requirePartOfMeter() throws Refused {
    String now = meters.name();
    if (now.equals(meterOfPart)) {
      return;
    }
    if (!meterOfPart.isEmpty()) {
      conditions.keySet().removeIf(name -> BenchMeters.isOfMeter(name, false));
    }
    anotherPart();
  }

  private synchronized BenchState take(String step, MeterValue value) throws Refused {
    requirePartOfMeter();
    LedSession led = led();
    LedSession.Taken one = led.take(step, value, tester, now());
    Tone tone = led.tone(one);
    meters.tell("");
    listener.tone(tone);
    explain(tone != Tone.GOOD);
    return changed();
  }

  /**
   * Takes by a key what the meter shows from now on.
   *
   * @throws Refused where there is no meter, or another step is asked
   */
  public synchronized BenchState key(String step) throws Refused {
    AskedStep asked = goingOn().asked(step);
    if (led().mustConfirm(asked)) {
      throw new Refused(Reason.MEANWHILE, "Not kept: confirm the cautions of this step first.");
    }
    meters.key(asked, step);
    return state();
  }

  /** Takes a reading back. */
  public synchronized BenchState back(String reading, String why) throws Refused {
    goingOn().back(reading, why, tester, now());
    explain(true);
    return changed();
  }

  /** Leaves a step out. */
  public synchronized BenchState skip(String step, String why) throws Refused {
    goingOn().skip(step, why, tester, now());
    explain(false);
    return changed();
  }

  /** Goes on at an item, a wire or a point. */
  public synchronized BenchState jump(String to) throws Refused {
    if (to.isBlank() || !goingOn().jump(Named.place(led().harness(), to.strip()))) {
      throw new Refused(Reason.MISSING, "No step is about " + to.strip() + ".");
    }
    return changed();
  }

  /** Whether something that may be a value is the name of an item, a wire or a point here. */
  public synchronized boolean isName(String text) {
    return session.filter(one -> Named.isName(one.harness(), text)).isPresent();
  }

  /** Follows the readings that tell explanations apart, or the plan. */
  public synchronized BenchState lead(boolean follow) throws Refused {
    goingOn().choose(follow);
    return changed();
  }

  /** The cautions of a step were read and done. */
  public synchronized BenchState confirm(String step) throws Refused {
    if (!led().mustConfirm(led().asked(step))) {
      return state();
    }
    led().note("confirmed: people clear, electronics disconnected, unit dead", tester, now());
    led().confirm();
    return changed();
  }

  /** Keeps somebody's words. */
  public synchronized BenchState note(String text) throws Refused {
    led().note(text, tester, now());
    return changed();
  }

  /**
   * Keeps a tick on the wiring sheet of a unit, in the test that is under way; where there is none
   * one begins.
   *
   * @param papers of the unit's list
   * @throws Refused where there is no such end, who checks is who made it, or it can't be written
   */
  public synchronized BenchState tick(StoredUnit of, WorkPapers papers, Tick tick, String who)
      throws Refused {
    requireItsOwnKind(of.serial());
    try {
      UnitAtBench all = Refused.given(tests.unit(of));
      EndTicks.of(papers, all.tests().values()).require(tick, who);
      Entry.Draft draft =
          new Entry.Draft(EntryKind.TICK, LedSession.at(now()), who.strip(), tick.body());
      if (session.isPresent() && unit.filter(of::equals).isPresent()) {
        led().keep(List.of(draft));
      } else {
        Led led = all.underWay().isPresent() ? all.underWay().get() : begunToWire(all, who);
        // Who ticks an end leads nothing.
        tests.giveBack(tests.append(led, List.of(draft)));
      }
      return changed();
    } catch (StoreTrouble e) {
      throw Refused.by(e);
    }
  }

  /** A unit is wired before it is tested: its first test begins with that. */
  private Led begunToWire(UnitAtBench all, String who) throws StoreTrouble {
    String day = now().atZone(setup.zone()).toLocalDate().toString();
    Map<String, String> job = new LinkedHashMap<>();
    job.put("serial number", all.unit().serial());
    job.put("station", setup.station());
    LedSheets sheets = new LedSheets("/1", job, List.of());
    return tests.start(
        all.list(),
        all.unit().serial(),
        new LedTests.Start(setup.station(), who.strip(), day, setup.station() + " " + day, now()),
        parts -> sheets.opening(LedSession.at(now()), who.strip()));
  }

  /** Keeps a picture. */
  public synchronized BenchState photo(String type, String text, byte[] bytes) throws Refused {
    String step = led().now().map(AskedStep::id).orElse("");
    led().photo(new Photo(type, text.strip(), step, bytes), tester, now());
    return changed();
  }

  /**
   * Measures the leads, held together.
   *
   * @throws Refused where no meter is linked
   */
  public synchronized BenchState leadsTogether() throws Refused {
    meters.measureLeads();
    behind.after("leads", LEADS_MILLIS, this::leadsNotMeasured);
    return changed();
  }

  /** Another meter: what was typed of the one before is not said of it. */
  public synchronized BenchState otherMeter(
      boolean insulation, String address, Optional<String> profile) throws Refused {
    meters.change(insulation, address, profile);
    conditions.keySet().removeIf(name -> BenchMeters.isOfMeter(name, insulation));
    return session.isPresent() ? anotherPart() : changed();
  }

  /** What has changed of the conditions: what comes next stands under a sheet Job of its own. */
  public synchronized BenchState conditions(Map<String, String> changes) throws Refused {
    led();
    requireOwn(changes);
    Map<String, String> before = new LinkedHashMap<>(conditions);
    changes.forEach(
        (name, value) -> {
          if (value.isBlank()) {
            conditions.remove(name);
          } else {
            conditions.put(name, value.strip());
          }
        });
    try {
      return anotherPart();
    } catch (Refused e) {
      conditions = before;
      throw e;
    }
  }

  private BenchState anotherPart() throws Refused {
    LedSession led = led();
    try {
      return join(led.list(), led.led(), List.of(), List.of());
    } catch (StoreTrouble e) {
      throw Refused.by(e);
    }
  }

  /** Leaves the unit as it is, to be gone on with. */
  public synchronized BenchState leave() {
    meters.gaveUpLeads();
    giveBack();
    try {
      tests.settle();
    } catch (StoreTrouble e) {
      // All is kept; it stands in the log beside the file until that is closed.
    }
    session = Optional.empty();
    unit = Optional.empty();
    explainer = Optional.empty();
    return changed();
  }

  /**
   * Ends the test with its verdict.
   *
   * @throws Refused where it can't be written
   */
  public synchronized BenchState finish() throws Refused {
    LedSession led = led();
    led.reload();
    CheckResult shown = led.checker().check(led.readings(), Optional.empty(), List.of());
    led.finish(shown, tester, now());
    return leave();
  }

  /** The bench as it is now. */
  public synchronized BenchState state() {
    return new StateOfBench(this).state();
  }

  private synchronized BenchState changed() {
    version++;
    session.ifPresent(LedSession::shown);
    wantOfMeters();
    BenchState state = state();
    listener.state(state);
    return state;
  }

  /** The meter waits for the step that is asked, and for no other. */
  private void wantOfMeters() {
    Optional<AskedStep> asked =
        session
            .filter(led -> !led.isToChoose())
            .flatMap(LedSession::now)
            .filter(step -> !session.orElseThrow().mustConfirm(step));
    meters.want(asked, session.map(LedSession::asked).orElse(""));
  }

  /** What failed is explained at once; what is good when there is time, for it costs the next. */
  private synchronized void explain(boolean atOnce) {
    if (!atOnce && waitsToExplain) {
      return;
    }
    waitsToExplain = true;
    long millis = atOnce ? 0 : Math.min(MOST_EXPLAIN_MILLIS, 3 * explainMillis);
    behind.after("explain", millis, this::explainNow);
  }

  private void explainNow() {
    Optional<LedSession.Work> work;
    Optional<Checker> checker;
    LedSession of;
    synchronized (this) {
      // What is read from now on is not among these readings.
      waitsToExplain = false;
      if (session.isEmpty()) {
        return;
      }
      of = session.get();
      work = of.work();
      checker = explainer;
    }
    if (work.isEmpty() || checker.isEmpty()) {
      return;
    }
    long start = setup.ticks().millis();
    LedSession.Explained explained;
    // One after the other: what one checker works out it keeps.
    synchronized (checker.get()) {
      explained =
          LedSession.Explained.of(
              checker.get().check(work.get().readings(), Optional.empty(), List.of()));
    }
    explainMillis = setup.ticks().millis() - start;
    synchronized (this) {
      if (session.filter(one -> one == of).isPresent()) {
        of.explained(work.get(), explained);
        changed();
      }
    }
  }

  /** Looks at once what became of the unit on the bench from elsewhere. */
  public void lookForOthers() {
    Optional<LedSession> of;
    Optional<Led> led;
    boolean signOfLife;
    String asked;
    synchronized (this) {
      of = session;
      asked = of.map(Bench::asked).orElse("");
      led = of.map(LedSession::led);
      looks++;
      signOfLife = looks % LOOKS_BETWEEN_SIGNS == 0;
    }
    if (led.isEmpty()) {
      return;
    }
    try {
      // A store that does not answer keeps nobody else from the bench.
      Seen seen = look(led.get(), signOfLife, asked);
      synchronized (this) {
        if (session.equals(of)) {
          seen(of.get(), seen);
        }
      }
    } catch (StoreTrouble e) {
      synchronized (this) {
        if (session.equals(of) && of.get().halt(e)) {
          listener.tone(Tone.UNSURE);
          changed();
        }
      }
    } catch (Refused e) {
      // What can't be read now is read at the next look; what can't be written is told there.
    }
  }

  /**
   * What the store says of a test.
   *
   * @param end where it ends now
   */
  private record Seen(Head end, List<Lease> leads) {}

  /** The step that is asked, for whoever looks over the shop; nothing where there is a choice. */
  private static String asked(LedSession led) {
    return led.isToChoose() ? "" : led.now().map(AskedStep::subject).orElse("");
  }

  private Seen look(Led led, boolean signOfLife, String asked) throws StoreTrouble {
    List<Lease> leads = tests.leases(led);
    boolean isToldThere =
        leads.stream()
            .anyMatch(
                one ->
                    one.asked().equals(asked)
                        && led.lease()
                            .filter(
                                lease ->
                                    lease.station().equals(one.station())
                                        && lease.fence() == one.fence())
                            .isPresent());
    if (signOfLife || !isToldThere) {
      tests.goOn(led, asked);
    }
    return new Seen(tests.end(led).orElseThrow(StoreTrouble::torn), leads);
  }

  private void seen(LedSession of, Seen seen) throws Refused, StoreTrouble {
    boolean went = of.answered();
    boolean grew = of.lookForOthers(seen.end());
    List<BenchState.Other> now = OthersOnUnit.of(of, setup.station(), seen.leads());
    if (grew) {
      explain(false);
    }
    if (grew || went || !now.equals(others)) {
      others = now;
      changed();
    }
  }

  /** Hears both meters. */
  private final class Hearer implements MeterDesk.Hearer {
    @Override
    public void live(String text, Settling.Stage stage) {
      listener.live(text, stage);
    }

    @Override
    public void taken(String what, MeterReading reading) {
      try {
        if (what.equals(BenchMeters.LEADS)) {
          leadsMeasured(reading);
        } else {
          take(what, MeterValue.of(reading));
        }
      } catch (Refused e) {
        synchronized (Bench.this) {
          meters.tell(e.problems().get(0).text());
          listener.tone(Tone.UNSURE);
          Bench.this.changed();
        }
      }
    }

    @Override
    public void changedAfterKey(String what) {
      synchronized (Bench.this) {
        meters.tell(
            "Not kept: the value now is not the one that was shown when the key was pressed. Hold"
                + " the probes, and press again.");
        listener.tone(Tone.UNSURE);
        Bench.this.changed();
      }
    }

    @Override
    public void changed() {
      behind.later(Bench.this::changed);
    }

    @Override
    public void defect(Throwable cause) {
      listener.defect(cause);
    }
  }

  private synchronized void leadsNotMeasured() {
    if (meters.gaveUpLeads()) {
      meters.tell("The leads were not measured: hold the two probes together, and try again.");
      changed();
    }
  }

  private synchronized void leadsMeasured(MeterReading reading) throws Refused {
    meters.leadsMeasured(reading);
    listener.tone(Tone.GOOD);
    if (session.isPresent()) {
      anotherPart();
    } else {
      changed();
    }
  }

  @Override
  public void close() {
    synchronized (this) {
      meters.close();
      giveBack();
    }
    behind.close();
    setup.store().close();
  }

  // What the state is made of.

  long version() {
    return version;
  }

  String tester() {
    return tester;
  }

  BenchMeters meters() {
    return meters;
  }

  Optional<LedSession> session() {
    return session;
  }

  List<BenchState.Other> others() {
    return others;
  }
}
