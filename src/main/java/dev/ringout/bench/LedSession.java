package dev.ringout.bench;

import dev.ringout.bench.BenchState.Tone;
import dev.ringout.bench.Refused.Reason;
import dev.ringout.check.CheckResult;
import dev.ringout.check.Checker;
import dev.ringout.compare.Comparison;
import dev.ringout.compare.DiodePairs;
import dev.ringout.compare.Judge;
import dev.ringout.compare.Judged;
import dev.ringout.diagnose.NextReading;
import dev.ringout.harness.Harness;
import dev.ringout.harness.SwitchState;
import dev.ringout.jobs.LedSheets;
import dev.ringout.jobs.LedTests;
import dev.ringout.jobs.LedTests.Led;
import dev.ringout.plan.PlanOptions;
import dev.ringout.plan.Planner;
import dev.ringout.plan.TestPlan;
import dev.ringout.readings.Job;
import dev.ringout.readings.JobTemplate;
import dev.ringout.readings.Reading;
import dev.ringout.readings.ReadingSet;
import dev.ringout.readings.Rework;
import dev.ringout.source.Place;
import dev.ringout.source.Problem;
import dev.ringout.source.Problems;
import dev.ringout.source.Severity;
import dev.ringout.standards.HandMovements;
import dev.ringout.standards.Tables;
import dev.ringout.store.Entry;
import dev.ringout.store.EntryKind;
import dev.ringout.store.Head;
import dev.ringout.store.Photo;
import dev.ringout.store.StoreTrouble;
import dev.ringout.store.Stores;
import dev.ringout.store.TakenBack;
import dev.ringout.units.Numbers;
import dev.ringout.words.NextSentences;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Supplier;

/**
 * One test of one unit as it is led here. Whatever it says was taken is in the store.
 *
 * <p>Not for use by several threads at once.
 */
final class LedSession {
  private static final DateTimeFormatter SHEET_TIME =
      DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm:ss", Locale.ROOT);

  /** The column of the value among those of a led sheet. */
  private static final String VALUE_COLUMN = "G";

  private static final int LETTERS_OF_TEST = 8;

  /** Rows that were taken within a second are a second apart: that is no other clock. */
  private static final Duration AS_BEFORE = Duration.ofSeconds(20);

  private final LedTests tests;
  private final LedTests.ListAtHand list;
  private final Checker checker;
  private final LedSheets sheets;
  private final String within;
  private final ZoneId zone;
  private final Judge judge;

  /** At which volts insulation is tested, where the sheet Job says so for all of it. */
  private final OptionalDouble voltsOfJob;

  /** The last readings through parts, by their steps. */
  private final Map<String, Judged> throughParts = new LinkedHashMap<>();

  private final StepOrder order = new StepOrder();
  private final List<Taken> taken = new ArrayList<>();
  private final Pace pace = new Pace();
  private Led led;

  /** Where the test ended when all of it was read: beyond it another bench went on. */
  private Head read;

  private ReadingSet readings;
  private LastTime lastTime;
  private Explained explained = Explained.NOTHING;
  private long readingsVersion;
  private long resultOf = -1;
  private boolean confirmed;
  private boolean offered;
  private String itemOfFailure = "";
  private Optional<AskedStep> before = Optional.empty();
  private Optional<AskedStep> shownStep = Optional.empty();
  private String shownAs = "";

  /** Each of them is where the test ends, if that was kept before the store fell silent. */
  private final List<Head> sent = new ArrayList<>();

  /** Why the store can't be asked now. */
  private String silent = "";

  /** Who leads here by now. */
  private String takenOver = "";

  /** How the switches stand, as far as was asked here; absent until anything was. */
  private Optional<SwitchState> switches = Optional.empty();

  /**
   * A value that was taken here.
   *
   * @param seq of its entry
   * @param verdict its own judgement, or where that is worse the one of the same diode the other
   *     way
   * @param isFirstOfTwo whether it is judged together with one that is not read yet
   */
  record Taken(
      int seq,
      AskedStep step,
      Judged judged,
      Judged verdict,
      boolean isFirstOfTwo,
      MeterValue value,
      String at,
      boolean counts) {
    Taken back() {
      return new Taken(seq, step, judged, verdict, isFirstOfTwo, value, at, false);
    }
  }

  /**
   * A session.
   *
   * @param sheets of its own part, whose beginning is kept already
   * @param within the name of that part behind the test's
   * @param takenHere what was taken on this bench in parts of the test before
   */
  LedSession(
      LedTests tests,
      LedTests.ListAtHand list,
      Checker checker,
      Led led,
      LedSheets sheets,
      String within,
      ReadingSet readings,
      List<Taken> takenHere,
      ZoneId zone) {
    this.tests = tests;
    this.list = list;
    this.checker = checker;
    this.led = led;
    this.sheets = sheets;
    this.within = within;
    this.zone = zone;
    this.read = led.end();
    this.taken.addAll(takenHere);
    this.readings = readings;
    this.lastTime = new LastTime(readings);
    List<Job> jobs =
        readings.jobs().stream().filter(job -> job.file().equals(file() + within)).toList();
    this.judge = Judge.of(checker.circuit(), checker.limits(), jobs);
    this.voltsOfJob =
        jobs.stream().findFirst().map(Job::insulationVolts).orElse(OptionalDouble.empty());
    plan(true);
    replay();
  }

  private String file() {
    return led.session().file();
  }

  Led led() {
    return led;
  }

  LedTests.ListAtHand list() {
    return list;
  }

  Harness harness() {
    return list.harness();
  }

  StepOrder order() {
    return order;
  }

  LedSheets sheets() {
    return sheets;
  }

  Checker checker() {
    return checker;
  }

  List<Taken> taken() {
    return List.copyOf(taken);
  }

  Pace pace() {
    return pace;
  }

  private boolean isOfThisTest(Place place) {
    return led.session().holds(place.file());
  }

  /**
   * Plans what is not proven.
   *
   * @param fromTheStart by what was read before this test alone, so that it is the same plan after
   *     each start; else by all that was read
   */
  private void plan(boolean fromTheStart) {
    ReadingSet known = fromTheStart ? earlier() : readings;
    Set<String> wires = new LinkedHashSet<>();
    Set<String> items = new LinkedHashSet<>();
    if (fromTheStart) {
      for (Rework rework : readings.reworks()) {
        if (isOfThisTest(rework.place())) {
          wires.addAll(rework.wires());
          items.addAll(rework.items());
        }
      }
    }
    Optional<Comparison> after =
        known.readings().isEmpty()
            ? Optional.empty()
            : Optional.of(Comparison.of(checker.circuit(), checker.limits(), known));
    order.plan(steps(wires, items, after));
  }

  private List<AskedStep> steps(Set<String> wires, Set<String> items, Optional<Comparison> after) {
    TestPlan plan =
        Planner.plan(
            checker.circuit(),
            checker.limits(),
            new HandMovements(Tables.published()),
            new PlanOptions(
                PlanOptions.ALL.isolation(),
                true,
                false,
                Set.of(),
                wires,
                items,
                after,
                List.of(),
                JobTemplate.NONE));
    return plan.steps().stream()
        .map(step -> AskedStep.of(checker.circuit(), step, judge, BenchWords.why(step)))
        .toList();
  }

  /**
   * Goes on at an item, a wire or a point: at what is left there, else at what was read there, else
   * at what the whole unit would be asked for.
   *
   * @return whether there is any step there
   */
  boolean jump(String name) {
    if (order.jump(name)) {
      return true;
    }
    Optional<AskedStep> step =
        steps(Set.of(), Set.of(), Optional.empty()).stream()
            .filter(one -> one.isAbout(name))
            .findFirst();
    step.ifPresent(order::again);
    return step.isPresent();
  }

  private ReadingSet earlier() {
    return new ReadingSet(
        readings.readings().stream().filter(one -> !isOfThisTest(one.place())).toList(),
        readings.jobs().stream().filter(job -> !isOfThisTest(Place.of(job.file()))).toList(),
        readings.reworks(),
        readings.concessions(),
        List.of());
  }

  /** What was read in this test before: here, or at another bench. */
  private void replay() {
    order.forgetReadings();
    throughParts.clear();
    for (Reading reading : readings.readings()) {
      if (isOfThisTest(reading.place())) {
        order.read(judged(reading));
        otherWay(reading).ifPresent(order::judgedAnew);
        if (!reading.measured().made()) {
          order.skip(AskedStep.id(reading));
        }
      }
    }
    readingsVersion++;
  }

  /** By itself, and what leads through a diode together with what was read the other way. */
  private Judged judged(Reading reading) {
    Judged alone = judge.judge(reading);
    if (alone.expected().throughParts().isEmpty()) {
      return alone;
    }
    throughParts.put(AskedStep.id(reading), alone);
    return together(AskedStep.id(reading)).orElse(alone);
  }

  /** The last reading of the same points with the leads exchanged, judged with this one. */
  private Optional<Judged> otherWay(Reading reading) {
    return together(AskedStep.id(reading.reversed(reading.measured(), reading.place())));
  }

  private Optional<Judged> together(String id) {
    Judged alone = throughParts.get(id);
    return alone == null
        ? Optional.empty()
        : DiodePairs.judge(checker.circuit(), List.copyOf(throughParts.values())).stream()
            .filter(alone::equals)
            .findFirst();
  }

  private static boolean isWorse(Judged one, Judged other) {
    return other.outcome().passes() && !one.outcome().passes();
  }

  Optional<AskedStep> now() {
    return order.now();
  }

  /** The step before, by which is known what stays and which switches have to be changed. */
  Optional<AskedStep> before() {
    return before;
  }

  /** A step is shown: its switches may stand as it asks from now on, read or not. */
  void shown() {
    Optional<AskedStep> now = order.now();
    String asked = asked();
    if (!asked.equals(shownAs)) {
      switches = shownStep.map(AskedStep::state);
      shownStep = now;
      shownAs = asked;
    }
  }

  /** What has to be done at the switches for a step; at the first of each start all are named. */
  List<BenchState.Position> positions(AskedStep step) {
    return switches.isPresent()
        ? BenchWords.positions(step.state(), switches.get())
        : BenchWords.allPositions(step.state(), !harness().switches().isEmpty());
  }

  /** Whether cautions have to be confirmed before the step. */
  boolean mustConfirm(AskedStep step) {
    return step.isInsulation() && !confirmed;
  }

  void confirm() {
    confirmed = true;
  }

  /** By which the step that is asked now is answered; empty where none is. */
  String asked() {
    return now().map(this::asked).orElse("");
  }

  /** Every unit and every test has such a step: what answers one of them answers no other. */
  String asked(AskedStep step) {
    return named(order.asked(step));
  }

  /** A name that no other test has. */
  String named(Object what) {
    return led.session().id().substring(0, LETTERS_OF_TEST) + "|" + what;
  }

  /**
   * The step that is asked now, where it is the one that is answered.
   *
   * @throws Refused where another is asked by now
   */
  AskedStep asked(String id) throws Refused {
    Optional<AskedStep> now = now();
    if (now.isEmpty() || !asked(now.get()).equals(id)) {
      throw new Refused(Reason.MEANWHILE, "Not kept: the bench asks for another step now.");
    }
    return now.get();
  }

  /**
   * Takes a value for a step: it is in the store when this returns.
   *
   * @throws Refused where it can't be understood, belongs to another step, or can't be written;
   *     then nothing was kept
   */
  Taken take(String id, MeterValue value, String who, Instant now) throws Refused {
    AskedStep step = asked(id);
    if (mustConfirm(step)) {
      throw new Refused(Reason.MEANWHILE, "Not kept: confirm the cautions of this step first.");
    }
    LedSheets.Row first = row(step, value, who, now, "");
    Reading asFirst = understood(first, value);
    KeptRow kept = keepRow(EntryKind.READING, () -> row(step, value, who, now, ""), now);
    Reading reading = kept.row().equals(first) ? asFirst : understood(kept.row(), value);
    sheets.kept(kept.row());
    Judged judged = judged(reading);
    Optional<Judged> otherWay = otherWay(reading);
    Judged verdict = otherWay.filter(other -> isWorse(other, judged)).orElse(judged);
    Taken one =
        new Taken(
            led.end().seq(),
            step,
            judged,
            verdict,
            order.isReverseLeft(step),
            value,
            at(now),
            true);
    taken.add(one);
    noteFailure(step, verdict);
    if (!kept.counted()) {
      add(reading);
      order.read(judged);
      otherWay.ifPresent(order::judgedAnew);
    }
    before = Optional.of(step);
    pace.step(now);
    return one;
  }

  /**
   * A row as it will be read from the store.
   *
   * @throws Refused where it can't be understood, or is no value
   */
  private Reading understood(LedSheets.Row row, MeterValue value) throws Refused {
    Problems problems = new Problems();
    ReadingSet read = sheets.read(row, file(), harness(), problems);
    List<Problem> errors =
        problems.list().stream().filter(one -> one.severity() == Severity.ERROR).toList();
    if (!errors.isEmpty()) {
      throw new Refused(Reason.NOT_UNDERSTOOD, errors);
    }
    Reading reading = read.readings().get(0);
    if (!reading.measured().made() || reading.measured().isTakenBack()) {
      throw new Refused(Reason.NOT_UNDERSTOOD, "\"" + value.raw() + "\" is not a value.");
    }
    return reading;
  }

  private void noteFailure(AskedStep step, Judged judged) {
    if (judged.outcome().fails()) {
      itemOfFailure = step.item();
      offered = false;
    }
  }

  private void add(Reading reading) {
    reading.time().ifPresent(lastTime::read);
    List<Reading> all = new ArrayList<>(readings.readings());
    all.add(reading);
    readings =
        new ReadingSet(
            all, readings.jobs(), readings.reworks(), readings.concessions(), readings.unread());
    readingsVersion++;
  }

  private LedSheets.Row row(
      AskedStep step, MeterValue value, String who, Instant now, String note) {
    LocalDateTime clock = now.atZone(zone).toLocalDateTime().truncatedTo(ChronoUnit.SECONDS);
    LocalDateTime time = lastTime.next(clock);
    return new LedSheets.Row(
        step.kind(),
        step.number() == 0 ? "" : Integer.toString(step.number()),
        step.from().toString(),
        step.to().toString(),
        step.state().toString(),
        volts(volts(step, value)),
        value.cell(),
        SHEET_TIME.format(time),
        who,
        Duration.between(clock, time).compareTo(AS_BEFORE) <= 0
            ? note
            : joined(note, "by the clock of this bench " + SHEET_TIME.format(clock)),
        value.cell().isEmpty() ? "" : value.entered(),
        value.isTyped() ? "" : value.raw());
  }

  /** What the tester or whoever reads it says; else the sheet Job; else what was asked for. */
  private OptionalDouble volts(AskedStep step, MeterValue value) {
    if (value.volts().isPresent()) {
      return value.volts();
    }
    return step.isInsulation() && voltsOfJob.isPresent() ? voltsOfJob : step.volts();
  }

  private static String joined(String note, String more) {
    return note.isEmpty() ? more : note + "; " + more;
  }

  private static String volts(OptionalDouble volts) {
    return volts.isPresent() ? Numbers.plain(volts.getAsDouble()) + " V" : "";
  }

  static String at(Instant now) {
    return now.truncatedTo(ChronoUnit.MILLIS).toString();
  }

  /** Keeps what happened: it is in the store when this returns. */
  void keep(List<Entry.Draft> drafts) throws Refused {
    keep(end -> drafts);
  }

  /**
   * Keeps what happened.
   *
   * @return whether another bench had gone on before it; then all of it was read anew
   */
  private boolean keep(LedTests.Made made) throws Refused {
    boolean[] others = new boolean[1];
    List<Head> sentBefore = List.copyOf(sent);
    List<Head> sending = new ArrayList<>();
    try {
      led =
          tests.append(
              led,
              end -> {
                requireNotKept(sentBefore);
                others[0] = !end.equals(read);
                List<Entry.Draft> drafts = made.after(end);
                sending.add(Stores.endAfter(led.session(), end, drafts));
                return drafts;
              });
    } catch (StoreTrouble e) {
      if (e.reason() == StoreTrouble.Reason.MISSING) {
        sent.addAll(sending);
      }
      throw notKept(e);
    }
    sent.clear();
    answered();
    read = led.end();
    if (others[0]) {
      sheets.interrupted();
      reload();
    }
    return others[0];
  }

  /** What was sent before the store fell silent may be in it: then it is not sent again. */
  private void requireNotKept(List<Head> before) throws StoreTrouble {
    if (isAnyKept(before)) {
      throw StoreTrouble.of(StoreTrouble.Reason.KEPT_BEFORE, "has it already");
    }
  }

  private boolean isAnyKept(List<Head> sentBefore) throws StoreTrouble {
    for (Head one : sentBefore) {
      if (tests.holds(led, one)) {
        return true;
      }
    }
    return false;
  }

  private Refused notKept(StoreTrouble e) {
    if (e.reason() == StoreTrouble.Reason.KEPT_BEFORE) {
      return new Refused(
          Reason.MEANWHILE, "What was sent before is kept after all: look which step is asked.");
    }
    halt(e);
    if (!takenOver.isEmpty()) {
      return new Refused(Reason.NOT_WRITTEN, takenOver);
    }
    return e.reason() == StoreTrouble.Reason.MISSING || isLast()
        ? new Refused(Reason.NOT_WRITTEN, "Not kept: the store " + e.text())
        : new Refused(
            Reason.MISSING,
            "Not kept: another test of this unit was begun at another bench. Leave this one, and"
                + " go on with that from the unit's page.");
  }

  /**
   * Nothing can be kept from now on: the store does not answer, or somebody else leads here.
   *
   * @return whether that is new
   */
  boolean halt(StoreTrouble e) {
    String before = trouble();
    if (e.reason() == StoreTrouble.Reason.TAKEN_OVER) {
      takenOver =
          "Nothing is kept here any more: the store "
              + e.text()
              + ". What was typed last was not kept: note it. Leave the unit, and look where it is.";
    } else {
      silent = "Nothing can be kept now: the store " + e.text() + ". What you type stays here.";
    }
    return !trouble().equals(before);
  }

  /**
   * The store answers.
   *
   * @return whether it did not before
   */
  boolean answered() {
    boolean before = !silent.isEmpty();
    silent = "";
    return before;
  }

  /** Why nothing can be kept now; empty where it can. */
  String trouble() {
    return takenOver.isEmpty() ? silent : takenOver;
  }

  private boolean isLast() {
    try {
      return tests.isLast(led);
    } catch (StoreTrouble e) {
      return true;
    }
  }

  /**
   * A row that was kept.
   *
   * @param counted whether it is among all readings already
   */
  private record KeptRow(LedSheets.Row row, boolean counted) {}

  /** Keeps a row, made anew where another bench was quicker: it comes after what that one read. */
  private KeptRow keepRow(EntryKind kind, Supplier<LedSheets.Row> made, Instant now)
      throws Refused {
    LedSheets.Row[] row = new LedSheets.Row[1];
    boolean counted =
        keep(
            end -> {
              if (!end.equals(read)) {
                lastTime = new LastTime(tests.readings(led.unit(), harness(), new Problems()));
                sheets.interrupted();
              }
              row[0] = made.get();
              return sheets.drafts(row[0], kind, at(now));
            });
    return new KeptRow(row[0], counted);
  }

  /** What others have read of the unit meanwhile. */
  void reload() throws Refused {
    Problems problems = new Problems();
    try {
      readings = tests.readings(led.unit(), harness(), problems);
    } catch (StoreTrouble e) {
      throw Refused.by(e);
    }
    if (problems.hasErrors()) {
      throw new Refused(Reason.NOT_WRITTEN, problems.list());
    }
    lastTime = new LastTime(readings);
    Set<Place> back = new HashSet<>();
    for (Reading reading : readings.readings()) {
      if (reading.place().file().equals(file() + within)) {
        sheets.reach(reading.kind(), reading.place().row());
      }
      if (reading.measured().isTakenBack()) {
        back.add(reading.place());
      }
    }
    taken.replaceAll(one -> back.contains(one.judged().reading().place()) ? one.back() : one);
    replay();
  }

  /**
   * Whether another bench went on with the test, or what was sent from here was kept without an
   * answer; then its readings count here from now on.
   *
   * @param end where the test ends now
   */
  boolean lookForOthers(Head end) throws Refused, StoreTrouble {
    if (end.seq() <= led.end().seq()) {
      return false;
    }
    if (isAnyKept(sent)) {
      sent.clear();
    }
    led = led.at(end);
    reload();
    sheets.interrupted();
    read = led.end();
    return true;
  }

  /**
   * Takes a reading back: it stays, and counts no more.
   *
   * @throws Refused where there is no such reading, or it can't be written
   */
  void back(String id, String why, String who, Instant now) throws Refused {
    int index = -1;
    for (int i = 0; i < taken.size(); i++) {
      index = named(taken.get(i).seq()).equals(id) ? i : index;
    }
    if (index < 0 || !taken.get(index).counts()) {
      throw new Refused(Reason.MISSING, "There is no such reading to take back.");
    }
    if (why.isBlank()) {
      throw new Refused(Reason.NOT_UNDERSTOOD, "Say why it is taken back.");
    }
    Taken one = taken.get(index);
    TakenBack entry =
        new TakenBack(led.session().id(), one.seq(), List.of(VALUE_COLUMN), why.strip());
    keep(List.of(new Entry.Draft(EntryKind.TAKEN_BACK, at(now), who, entry.body())));
    reload();
    order.takenBack(one.step().id());
    order.pin(one.step());
  }

  /**
   * Leaves a step out. It stays a gap.
   *
   * @throws Refused where another is asked by now, or it can't be written
   */
  void skip(String id, String why, String who, Instant now) throws Refused {
    AskedStep step = asked(id);
    if (why.isBlank()) {
      throw new Refused(Reason.NOT_UNDERSTOOD, "Say why it is left out.");
    }
    KeptRow kept =
        keepRow(
            EntryKind.SKIPPED,
            () -> row(step, MeterValue.typed(""), who, now, "skipped: " + why.strip()),
            now);
    sheets.kept(kept.row());
    order.skip(step.id());
    reload();
  }

  void note(String text, String who, Instant now) throws Refused {
    if (text.isBlank()) {
      throw new Refused(Reason.NOT_UNDERSTOOD, "There is nothing to keep.");
    }
    keep(List.of(new Entry.Draft(EntryKind.NOTE, at(now), who, text.strip())));
  }

  void photo(Photo photo, String who, Instant now) throws Refused {
    keep(List.of(new Entry.Draft(EntryKind.PHOTO, at(now), who, photo.body())));
  }

  /** Ends the test with what all of it shows now. */
  void finish(CheckResult shown, String who, Instant now) throws Refused {
    keep(List.of(LedTests.verdict(shown, at(now), who)));
  }

  /** What is to be worked out anew; absent where nothing was read since. */
  Optional<Work> work() {
    return resultOf == readingsVersion
        ? Optional.empty()
        : Optional.of(new Work(readingsVersion, readings));
  }

  /** Readings to be explained. */
  record Work(long version, ReadingSet readings) {}

  /** What readings show, and that in words. */
  record Explained(
      Optional<CheckResult> shown, List<BenchState.FaultState> faults, BenchState.Open open) {
    static final Explained NOTHING =
        new Explained(Optional.empty(), List.of(), new BenchState.Open(List.of(), 0));

    static Explained of(CheckResult result) {
      return new Explained(Optional.of(result), Findings.faults(result), Findings.open(result));
    }

    private CheckResult result() {
      return shown.orElseThrow();
    }
  }

  boolean isWorking() {
    return resultOf != readingsVersion && !readings.readings().isEmpty();
  }

  Explained explained() {
    return explained;
  }

  ReadingSet readings() {
    return readings;
  }

  /** What all readings up to then show; what they leave open is planned once nothing is asked. */
  void explained(Work work, Explained by) {
    if (work.version() <= resultOf) {
      // What was read later is explained already.
      return;
    }
    CheckResult shown = by.result();
    explained = by;
    resultOf = work.version();
    order.telling(telling(shown));
    if (resultOf == readingsVersion && order.now().isEmpty() && !shown.coverage().isComplete()) {
      plan(false);
    }
  }

  private List<AskedStep> telling(CheckResult shown) {
    List<AskedStep> steps = new ArrayList<>();
    for (NextReading next : shown.diagnosis().next()) {
      if (next.purpose() == NextReading.Purpose.TELL_APART
          || next.purpose() == NextReading.Purpose.CONFIRM) {
        blank(next)
            .ifPresent(
                judged ->
                    steps.add(
                        AskedStep.telling(
                            judged, harness().limits().openMinOhms(), why(shown, next))));
      }
    }
    return steps;
  }

  private static List<String> why(CheckResult shown, NextReading next) {
    List<String> why = new ArrayList<>();
    why.add(NextSentences.why(shown.circuit(), next));
    next.answers().forEach(answer -> why.add(NextSentences.answer(answer)));
    return why;
  }

  /** Its row as it would be read. */
  private Optional<Judged> blank(NextReading next) {
    LedSheets.Row row =
        new LedSheets.Row(
            next.kind(),
            "",
            next.from(),
            next.to(),
            next.state().toString(),
            "",
            "",
            "",
            "",
            "",
            "",
            "");
    return sheets.read(row, file(), harness(), new Problems()).readings().stream()
        .findFirst()
        .map(judge::judge);
  }

  /** Whether to go on along the plan or to follow the fault: asked once at the end of an item. */
  boolean isToChoose() {
    Optional<AskedStep> now = now();
    boolean ended =
        !itemOfFailure.isEmpty()
            && now.map(step -> !step.item().equals(itemOfFailure)).orElse(true);
    return ended && !offered && order.tellingLeft() > 0 && !isWorking();
  }

  void choose(boolean follow) {
    offered = true;
    itemOfFailure = "";
    order.follow(follow);
  }

  Tone tone(Taken one) {
    return BenchWords.tone(one.verdict());
  }
}
