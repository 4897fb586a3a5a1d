package dev.ringout.check;

import dev.ringout.check.Doubt.BeyondRange;
import dev.ringout.check.Doubt.CalibrationExpired;
import dev.ringout.check.Doubt.CalibrationNotADay;
import dev.ringout.check.Doubt.CalibrationNotStated;
import dev.ringout.check.Doubt.EffectivityNotUnderstood;
import dev.ringout.check.Doubt.LeadsNotNulled;
import dev.ringout.check.Doubt.NoInspector;
import dev.ringout.check.Doubt.NoTester;
import dev.ringout.check.Doubt.NotEffective;
import dev.ringout.check.Doubt.Raised;
import dev.ringout.check.Doubt.SerialNumberNotStated;
import dev.ringout.check.Doubt.TestDayNotADay;
import dev.ringout.check.Doubt.TestDayNotStated;
import dev.ringout.check.Doubt.TesterIsInspector;
import dev.ringout.check.Doubt.WithinADigit;
import dev.ringout.compare.Comparison;
import dev.ringout.compare.Judged;
import dev.ringout.compare.LeadResistance;
import dev.ringout.harness.Demands;
import dev.ringout.harness.Demands.Calibration;
import dev.ringout.harness.Effectivity;
import dev.ringout.harness.Harness;
import dev.ringout.harness.SerialNumbers;
import dev.ringout.readings.Day;
import dev.ringout.readings.Instrument;
import dev.ringout.readings.Job;
import dev.ringout.readings.Jobs;
import dev.ringout.readings.Meter;
import dev.ringout.readings.Person;
import dev.ringout.readings.Reading;
import dev.ringout.readings.ReadingSet;
import dev.ringout.source.Place;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;

/** Finds what makes a verdict less than its values alone. */
final class Doubts {
  private final Harness harness;
  private final Demands demands;
  private final List<Job> jobs;
  private final TestDay days;

  /** Of the files whose readings stand: one that is replaced as a whole proves nothing. */
  private final Map<String, Use> uses = new LinkedHashMap<>();

  private final Set<Raised> raised = new LinkedHashSet<>();

  /** What a file's readings that stand say of instruments and people. */
  private static final class Use {
    private final Job job;
    private final Set<Reading.Kind> kinds = EnumSet.noneOf(Reading.Kind.class);
    private final Set<String> readers = new LinkedHashSet<>();
    private final Map<Reading.Kind, BeyondRange> beyond = new EnumMap<>(Reading.Kind.class);

    Use(Job job) {
      this.job = job;
    }
  }

  private Doubts(Harness harness, ReadingSet readings, Optional<LocalDate> statedDay) {
    this.harness = harness;
    this.demands = harness.limits().demands();
    this.jobs = readings.jobs();
    this.days = TestDay.byFile(readings, statedDay);
  }

  /**
   * Every doubt, those for which the verdict waits first.
   *
   * @param statedDay the day of the test as whoever writes the record gives it
   */
  static List<Raised> of(
      Harness harness, ReadingSet readings, Comparison comparison, Optional<LocalDate> statedDay) {
    Doubts doubts = new Doubts(harness, readings, statedDay);
    LeadResistance.doubt(comparison)
        .ifPresent(leads -> doubts.raise(new LeadsNotNulled(leads), false));
    doubts.use(comparison);
    doubts.unit();
    doubts.calibration();
    doubts.people();
    doubts.ranges();
    doubts.digits(comparison);
    return Stream.concat(
            doubts.raised.stream().filter(Raised::withholds),
            doubts.raised.stream().filter(one -> !one.withholds()))
        .toList();
  }

  private void raise(Doubt doubt, boolean withholds) {
    raised.add(new Raised(doubt, withholds));
  }

  /** The benefit of the doubt is given to a value, and told. */
  private void digits(Comparison comparison) {
    List<Judged> within = comparison.inForce().stream().filter(Judged::joinsWithinADigit).toList();
    if (!within.isEmpty()) {
      raise(new WithinADigit(within.size(), within.get(0).reading().place()), false);
    }
  }

  private void use(Comparison comparison) {
    Jobs byPlace = new Jobs(jobs);
    for (Judged judged : comparison.inForce()) {
      Reading reading = judged.reading();
      if (!reading.measured().made()) {
        continue;
      }
      Job job = byPlace.of(reading.place()).orElseGet(() -> silent(reading.place()));
      Use use = uses.computeIfAbsent(job.file(), one -> new Use(job));
      use.kinds.add(reading.kind());
      use.readers.add(reading.by());
      OptionalDouble range = job.rangeOhms(reading.kind());
      if (range.isPresent()
          && reading
              .measured()
              .value()
              .filter(value -> value.ohms() > range.getAsDouble())
              .isPresent()) {
        use.beyond.merge(
            reading.kind(),
            new BeyondRange(reading.kind(), 1, reading.place(), range.getAsDouble()),
            (first, more) ->
                new BeyondRange(first.kind(), first.count() + 1, first.first(), first.rangeOhms()));
      }
    }
  }

  /** Readings without a job sheet are those of one that says nothing. */
  private static Job silent(Place place) {
    return new Job(
        place.file(),
        Collections.emptyMap(),
        Collections.emptyMap(),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        Meter.UNKNOWN,
        "",
        Place.of(place.file()));
  }

  private void unit() {
    List<String> serials =
        jobs.stream().map(Job::serialNumber).filter(one -> !one.isEmpty()).distinct().toList();
    boolean matters = demands.serialNumber();
    String text = Effectivity.of(harness);
    if (!text.isEmpty()) {
      Optional<SerialNumbers> effective = SerialNumbers.of(text);
      if (effective.isEmpty()) {
        raise(new EffectivityNotUnderstood(text), true);
      }
      // A list for every unit is for one without a number too.
      matters |= effective.isEmpty() || !effective.get().covers("");
      for (String serial : serials) {
        if (effective.isPresent() && !effective.get().covers(serial)) {
          raise(new NotEffective(serial, text), true);
        }
      }
    }
    if (serials.isEmpty()
        || uses.values().stream().anyMatch(use -> use.job.serialNumber().isEmpty())) {
      raise(new SerialNumberNotStated(), matters);
    }
  }

  private void calibration() {
    boolean named =
        jobs.stream()
            .flatMap(job -> job.instruments().stream())
            .anyMatch(instrument -> !instrument.calibrationDue().isBlank());
    boolean waits =
        demands.calibration() == Calibration.REQUIRED
            || (demands.calibration() == Calibration.ONCE_NAMED && named);
    uses.forEach(
        (file, use) -> {
          Job job = use.job;
          boolean dateIsADay = dateIsADay(job, waits || demands.testDay());
          Optional<LocalDate> day = days.of(job);
          boolean missed = false;
          for (Instrument instrument : job.instruments()) {
            if (use.kinds.stream().anyMatch(kind -> isUsedFor(instrument, kind))) {
              Optional<LocalDate> due = due(job, instrument, waits);
              if (due.isPresent() && day.isEmpty() && dateIsADay) {
                missed = true;
                raise(
                    new TestDayNotStated(file, Optional.of(instrument)),
                    waits || demands.testDay());
              } else if (due.isPresent() && day.isPresent() && day.get().isAfter(due.get())) {
                raise(new CalibrationExpired(instrument, due.get(), day.get()), waits);
              }
            }
          }
          if (day.isEmpty() && dateIsADay && !missed) {
            raise(new TestDayNotStated(file, Optional.empty()), demands.testDay());
          }
        });
  }

  private static boolean isUsedFor(Instrument instrument, Reading.Kind kind) {
    return instrument.use().contains(kind.name().toLowerCase(Locale.ROOT));
  }

  private boolean dateIsADay(Job job, boolean waits) {
    String written = job.value(Job.DATE);
    boolean readable = written.isEmpty() || Day.of(written).isPresent();
    if (!readable) {
      raise(new TestDayNotADay(job.place(Job.DATE), written), waits);
    }
    return readable;
  }

  private Optional<LocalDate> due(Job job, Instrument instrument, boolean waits) {
    String text = instrument.calibrationDue();
    if (text.isBlank()) {
      raise(new CalibrationNotStated(job.file(), instrument), waits);
      return Optional.empty();
    }
    Optional<LocalDate> due = Day.of(text);
    if (due.isEmpty()) {
      raise(new CalibrationNotADay(instrument, text.strip()), waits);
    }
    return due;
  }

  private void people() {
    boolean waits = demands.independentInspector();
    uses.forEach(
        (file, use) -> {
          Job job = use.job;
          String inspector = job.value("inspector");
          List<String> testers = new ArrayList<>(use.readers);
          testers.add(job.value("operator"));
          testers.removeIf(tester -> !Person.isNamed(tester));
          if (testers.stream().anyMatch(tester -> Person.isSame(tester, inspector))) {
            raise(new TesterIsInspector(inspector), waits);
          } else if (waits && !Person.isNamed(inspector)) {
            raise(new NoInspector(file), true);
          } else if (waits && testers.isEmpty()) {
            raise(new NoTester(file), true);
          }
        });
  }

  private void ranges() {
    uses.values().forEach(use -> use.beyond.values().forEach(one -> raise(one, false)));
  }
}
