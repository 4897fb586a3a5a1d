package dev.ringout.bench;

import dev.ringout.bench.BenchState.Leads;
import dev.ringout.check.CheckResult.Verdict;
import dev.ringout.check.Checker;
import dev.ringout.diagnose.Fault;
import dev.ringout.jobs.KeptVerdict;
import dev.ringout.jobs.LedTests;
import dev.ringout.jobs.LedTests.UnitAtBench;
import dev.ringout.jobs.UnitsJob.Listed;
import dev.ringout.readings.Day;
import dev.ringout.readings.Instrument;
import dev.ringout.readings.Job;
import dev.ringout.readings.Reading;
import dev.ringout.readings.TimeOfReading;
import dev.ringout.standards.Tables;
import dev.ringout.store.Lease;
import dev.ringout.store.Session;
import dev.ringout.store.StoreTrouble;
import dev.ringout.store.StoredUnit;
import dev.ringout.words.FaultSentences;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/**
 * The shop as its lead hand sees it: what is under way at which bench, what waits for an inspector,
 * the lots, and the faults of the last seven days. All of it is read from the store, so each bench
 * of the shop shows the same.
 */
public final class ShopFloor {
  private static final int DAYS = 7;
  private static final int MOST_UNDER_WAY = 60;

  /** Of those that conform, the newest: whether an inspector has signed is looked up for each. */
  private static final int MOST_LOOKED_AT = 300;

  /** Each is checked anew, the newest first. */
  private static final int MOST_FAULTY = 60;

  private final LedTests tests;
  private final Map<String, Set<Found>> known = new LinkedHashMap<>();

  /** Of a store. */
  public ShopFloor(LedTests tests) {
    this.tests = tests;
  }

  /**
   * All of it.
   *
   * @param more units whose faults of the week were not looked at, for there are too many
   */
  public record Seen(
      List<UnderWay> underWay,
      List<Waiting> waiting,
      List<Lot> lots,
      List<Often> places,
      List<Often> kinds,
      LocalDate since,
      int more) {
    /** What is given can't be changed afterwards. */
    public Seen {
      underWay = List.copyOf(underWay);
      waiting = List.copyOf(waiting);
      lots = List.copyOf(lots);
      places = List.copyOf(places);
      kinds = List.copyOf(kinds);
    }
  }

  /**
   * A test that is under way at a bench.
   *
   * @param since when the test was begun
   * @param leads whether somebody is at it now
   * @param silentSeconds for how long nothing was heard of the bench
   * @param asked the step that is asked there now; empty where none is, or nobody is at it
   * @param askedSeconds for how long
   * @param last what was read last there, and when; empty where nothing was
   */
  public record UnderWay(
      StoredUnit unit,
      String station,
      String who,
      String since,
      Leads leads,
      long silentSeconds,
      String asked,
      long askedSeconds,
      String last,
      String at,
      int readings,
      List<Meter> meters) {
    /** What is given can't be changed afterwards. */
    public UnderWay {
      meters = List.copyOf(meters);
    }
  }

  /**
   * A meter by its sheet Job.
   *
   * @param due the last day of its calibration, as written; empty where nothing is
   * @param daysLeft until then; less than none where that day is over, absent where it is no day
   */
  public record Meter(String use, String name, String due, Optional<Long> daysLeft) {}

  /** A unit that conforms, and that no inspector has signed since it was last read. */
  public record Waiting(StoredUnit unit, String day, String who) {}

  /** How the units of one list stand. */
  public record Lot(
      String id,
      String title,
      String drawing,
      String revision,
      int conform,
      int faulty,
      int open,
      int led) {}

  /** Something that was found on so many units. */
  public record Often(String what, int units) {}

  /** A fault of a unit: where and of which kind. */
  private record Found(String place, String kind) {}

  /**
   * Looks at all units.
   *
   * @param units as they stood when they were last read
   * @throws StoreTrouble where the store can't be read
   */
  public Seen look(List<Listed> units, LocalDate today) throws StoreTrouble {
    List<Listed> newest = new ArrayList<>(units);
    newest.sort(Comparator.comparing(Listed::started).reversed());
    LocalDate since = today.minusDays(DAYS - 1L);
    List<Listed> faulty = newest.stream().filter(one -> isFaultySince(one, since)).toList();
    Map<String, Integer> places = new TreeMap<>();
    Map<String, Integer> kinds = new TreeMap<>();
    for (Listed one : first(faulty, MOST_FAULTY)) {
      Set<Found> found = found(one);
      found.stream().map(Found::place).distinct().forEach(at -> places.merge(at, 1, Integer::sum));
      found.stream().map(Found::kind).distinct().forEach(at -> kinds.merge(at, 1, Integer::sum));
    }
    return new Seen(
        underWay(newest, today),
        waiting(newest),
        lots(units),
        often(places),
        often(kinds),
        since,
        Math.max(0, faulty.size() - MOST_FAULTY));
  }

  private static <T> List<T> first(List<T> all, int most) {
    return all.subList(0, Math.min(most, all.size()));
  }

  private static Optional<Verdict> verdict(Listed one) {
    return one.asWritten() ? one.verdict().flatMap(KeptVerdict::verdict) : Optional.empty();
  }

  private static boolean is(Listed one, Verdict verdict) {
    return verdict(one).equals(Optional.of(verdict));
  }

  private static boolean isFaultySince(Listed one, LocalDate since) {
    return is(one, Verdict.FAULTS) && day(one).filter(day -> !day.isBefore(since)).isPresent();
  }

  private static Optional<LocalDate> day(Listed one) {
    try {
      return Optional.of(LocalDate.parse(one.started()));
    } catch (DateTimeParseException e) {
      // A sheet that was brought in may say no day, or one of its own form.
      return Optional.empty();
    }
  }

  private List<UnderWay> underWay(List<Listed> newest, LocalDate today) throws StoreTrouble {
    List<Listed> open = newest.stream().filter(one -> one.verdict().isEmpty()).toList();
    List<UnderWay> underWay = new ArrayList<>();
    for (Listed one : first(open, MOST_UNDER_WAY)) {
      tests
          .unit(one.unit())
          .result()
          .ifPresent(unit -> underWay.addAll(underWay(one, unit, today)));
    }
    return underWay;
  }

  /** Each station that is at the unit; where none is, the one that left it last. */
  private static List<UnderWay> underWay(Listed one, UnitAtBench unit, LocalDate today) {
    if (unit.underWay().isEmpty()) {
      return List.of();
    }
    Session test = unit.underWay().get().session();
    // A test begins with its sheet Job: without one it is not there yet.
    Map<String, Job> byStation = new LinkedHashMap<>();
    unit.readings().jobs().stream()
        .filter(job -> test.holds(job.file()))
        .forEach(job -> byStation.put(job.value("station"), job));
    List<UnderWay> all = new ArrayList<>();
    byStation.forEach(
        (station, job) -> {
          List<Reading> taken =
              unit.readings().readings().stream()
                  .filter(reading -> reading(reading, station, unit, test))
                  .toList();
          Optional<Lease> lease =
              unit.leads().stream().filter(held -> held.station().equals(station)).findFirst();
          all.add(underWay(one.unit(), test.added(), job, taken, lease, today));
        });
    List<UnderWay> led = all.stream().filter(at -> at.leads() != Leads.LEFT).toList();
    return led.isEmpty() ? all.subList(Math.max(0, all.size() - 1), all.size()) : led;
  }

  private static boolean reading(Reading reading, String station, UnitAtBench unit, Session test) {
    return unit.readings().jobs().stream()
        .anyMatch(
            job ->
                test.holds(job.file())
                    && job.value("station").equals(station)
                    && job.holds(reading.place()));
  }

  private static UnderWay underWay(
      StoredUnit unit,
      String since,
      Job job,
      List<Reading> taken,
      Optional<Lease> lease,
      LocalDate today) {
    Optional<Reading> last = taken.stream().reduce((earlier, later) -> later);
    return new UnderWay(
        unit,
        job.value("station"),
        lease.map(Lease::who).orElse(job.value("operator")),
        since,
        Leads.of(lease),
        lease.map(Lease::silentSeconds).orElse(0L),
        lease.map(Lease::asked).orElse(""),
        lease.map(Lease::askedSeconds).orElse(0L),
        last.map(Reading::subject).orElse(""),
        last.flatMap(Reading::time).map(TimeOfReading::at).map(Object::toString).orElse(""),
        taken.size(),
        job.instruments().stream().map(one -> meter(one, today)).toList());
  }

  private static Meter meter(Instrument one, LocalDate today) {
    Optional<Long> left =
        Day.of(one.calibrationDue()).map(due -> ChronoUnit.DAYS.between(today, due));
    return new Meter(
        one.use(), (one.name() + " " + one.number()).strip(), one.calibrationDue().strip(), left);
  }

  private List<Waiting> waiting(List<Listed> newest) throws StoreTrouble {
    List<Listed> conforming = newest.stream().filter(one -> is(one, Verdict.CONFORMS)).toList();
    List<Waiting> waiting = new ArrayList<>();
    for (Listed one : first(conforming, MOST_LOOKED_AT)) {
      if (!tests.isInspected(one.unit())) {
        waiting.add(new Waiting(one.unit(), one.started(), one.who()));
      }
    }
    return waiting;
  }

  /** What a unit was found to have: the same as long as nothing is read of it. */
  private synchronized Set<Found> found(Listed one) throws StoreTrouble {
    String as = UnitPage.id(one.unit()) + " " + one.sessions() + " " + one.verdict();
    Set<Found> before = known.get(as);
    if (before != null) {
      return before;
    }
    Set<Found> found = new LinkedHashSet<>();
    Optional<UnitAtBench> unit = tests.unit(one.unit()).result();
    if (unit.isPresent()) {
      Checker checker = Checker.of(unit.get().list().harness(), Tables.published());
      for (Fault fault :
          checker.check(unit.get().readings(), Optional.empty(), List.of()).diagnosis().faults()) {
        String kind = FaultSentences.kind(fault).replace('-', ' ');
        fault.items().forEach(item -> found.add(new Found(item, kind)));
      }
    }
    known.put(as, found);
    return found;
  }

  private static List<Lot> lots(List<Listed> units) {
    Map<String, Lot> lots = new LinkedHashMap<>();
    for (Listed one : units) {
      lots.merge(one.unit().harness(), ofOne(one), ShopFloor::both);
    }
    return List.copyOf(lots.values());
  }

  private static Lot ofOne(Listed one) {
    StoredUnit unit = one.unit();
    boolean led = one.verdict().isEmpty();
    boolean conforms = is(one, Verdict.CONFORMS);
    boolean faulty = is(one, Verdict.FAULTS);
    return new Lot(
        unit.harness(),
        unit.title(),
        unit.drawing(),
        unit.revision(),
        conforms ? 1 : 0,
        faulty ? 1 : 0,
        led || conforms || faulty ? 0 : 1,
        led ? 1 : 0);
  }

  private static Lot both(Lot one, Lot other) {
    return new Lot(
        one.id(),
        one.title(),
        one.drawing(),
        one.revision(),
        one.conform() + other.conform(),
        one.faulty() + other.faulty(),
        one.open() + other.open(),
        one.led() + other.led());
  }

  private static List<Often> often(Map<String, Integer> counted) {
    return counted.entrySet().stream()
        .map(one -> new Often(one.getKey(), one.getValue()))
        .sorted(Comparator.comparingInt(Often::units).reversed())
        .toList();
  }
}
