package dev.ringout.intake;

import dev.ringout.cells.Names;
import dev.ringout.cells.OhmsCell;
import dev.ringout.cells.TimeCell;
import dev.ringout.cells.Understood;
import dev.ringout.cells.VoltsCell;
import dev.ringout.harness.Harness;
import dev.ringout.harness.SwitchState;
import dev.ringout.readings.Concession;
import dev.ringout.readings.Job;
import dev.ringout.readings.Measured;
import dev.ringout.readings.Reading;
import dev.ringout.readings.ReadingSet;
import dev.ringout.readings.Rework;
import dev.ringout.readings.Side;
import dev.ringout.readings.TimeOfReading;
import dev.ringout.sheet.Sheet;
import dev.ringout.sheet.SheetBar;
import dev.ringout.sheet.TabularFile;
import dev.ringout.source.Place;
import dev.ringout.source.Problem;
import dev.ringout.source.Problems;
import dev.ringout.source.Severity;
import dev.ringout.source.UnusableInput;
import dev.ringout.units.Text;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Reads filled test sheets against the harness that they were made for. */
public final class ReadingsReader {
  private static final Column STATE = Column.of("State");
  private static final Column VOLTS = Column.withUnit("Volts");
  private static final Column SECONDS = Column.withUnit("Seconds");
  private static final Column READING = Column.withUnit("Reading");
  private static final Column REVERSE = Column.withUnit("Reverse");
  private static final Column UNIT = Column.of("Unit");
  private static final Column TIME = Column.of("Time");
  private static final Column BY = Column.of("By");
  private static final Column NOTE = Column.of("Note");

  /** How a value came in, and what the meter said word for word: written at the bench. */
  private static final Column ENTERED = Column.of("Entered");

  private static final Column METER_TEXT = Column.of("Meter Text");

  private static final List<Column> COLUMNS =
      List.of(
          RowSides.STEP,
          RowSides.FROM_PIN,
          RowSides.FROM,
          RowSides.TO_PIN,
          RowSides.TO,
          STATE,
          VOLTS,
          SECONDS,
          READING,
          REVERSE,
          UNIT,
          TIME,
          BY,
          NOTE,
          ENTERED,
          METER_TEXT);
  private static final List<Column> REQUIRED = List.of(RowSides.FROM, RowSides.TO, READING);

  private static final Pattern IN_SECONDS =
      Pattern.compile("s|sec\\.?|secs|seconds?", Pattern.CASE_INSENSITIVE);
  private static final Pattern SECONDS_AT_END =
      Pattern.compile("\\s*(s|sec|secs|seconds?)\\.?$", Pattern.CASE_INSENSITIVE);

  /** What a planned sheet says besides is for people. */
  private static final List<String> SHEETS =
      List.of(
          "Continuity", "Insulation", "Job", "Rework", "Waivers", "Read first", "REST", "Calls");

  private final Problems problems;
  private final HarnessPoints points;
  private final RowSides sides;
  private final List<Reading> readings = new ArrayList<>();
  private final List<Job> jobs = new ArrayList<>();
  private final List<Rework> reworks = new ArrayList<>();
  private final List<Concession> concessions = new ArrayList<>();
  private final List<Problem> unread = new ArrayList<>();
  private final Map<String, Understood<SwitchState>> states = new HashMap<>();
  private final Map<String, String> texts = new HashMap<>();

  /** A reader of test sheets for one harness. */
  public ReadingsReader(Harness harness, Problems problems) {
    this(new HarnessPoints(harness), problems);
  }

  private ReadingsReader(HarnessPoints points, Problems problems) {
    this.problems = problems;
    this.points = points;
    this.sides = new RowSides(points);
  }

  /** Whether a sheet of that name is one of those that a test sheet is made of. */
  public static boolean isSheetName(String name) {
    return SHEETS.stream().anyMatch(sheet -> Names.key(sheet).equals(Names.key(name)));
  }

  /**
   * A reader for test sheets whose harness can't be used: finds the problems in the sheets' own
   * cells all the same. Its readings must not be judged; they may be taken as what was found.
   */
  public static ReadingsReader forProblemsOnly(Problems problems) {
    return new ReadingsReader(HarnessPoints.any(), problems);
  }

  /**
   * Reads one file and adds its readings to those read before.
   *
   * @param shownName the file's name in every message
   * @throws UnusableInput where the file as a whole is missing or no table
   */
  public void read(TabularFile file, String shownName) throws UnusableInput {
    SheetsByName sheets =
        new SheetsByName(file, SHEETS, "Continuity", ReadingsReader::refusal, problems);
    Settings settings = JobRows.read(sheets.find("Job"), problems);
    Job job = job(settings, shownName);
    Optional<Sheet> continuity = sheets.find("Continuity");
    Optional<Sheet> insulation = sheets.find("Insulation");
    Optional<Sheet> rework = sheets.find("Rework");
    Optional<Sheet> waivers = sheets.find("Waivers");
    boolean holdsReadings = continuity.isPresent() || insulation.isPresent();
    if (!holdsReadings && rework.isEmpty() && waivers.isEmpty()) {
      sheets.reportMissing("Continuity or Insulation", shownName, problems);
    }
    if (holdsReadings || !settings.asMap().isEmpty()) {
      jobs.add(job);
    }
    if (continuity.isPresent()) {
      rows(continuity.get(), Reading.Kind.CONTINUITY, job, job.continuityRangeOhms());
    }
    if (insulation.isPresent()) {
      rows(insulation.get(), Reading.Kind.INSULATION, job, job.insulationRangeOhms());
    }
    if (rework.isPresent()) {
      reworks.addAll(ReworkRows.read(rework.get(), points, problems));
    }
    if (waivers.isPresent()) {
      concessions.addAll(ConcessionRows.read(waivers.get(), points, problems));
    }
  }

  /**
   * A retest that somebody has put on a sheet of its own speaks against the unit as any other: a
   * sheet is one of readings where one of its first rows holds their headings.
   */
  private static String refusal(Sheet sheet) throws UnusableInput {
    return holdsReadings(sheet)
        ? "holds readings and is not read; name it Continuity or Insulation, or give it as a file"
            + " of its own"
        : "";
  }

  /** Whether one of the first rows of a sheet holds the headings of readings. */
  public static boolean holdsReadings(Sheet sheet) throws UnusableInput {
    return SheetsByName.isHeaded(sheet, REQUIRED);
  }

  /** Everything read so far. */
  public ReadingSet readings() {
    return new ReadingSet(
        List.copyOf(readings),
        List.copyOf(jobs),
        List.copyOf(reworks),
        List.copyOf(concessions),
        List.copyOf(unread));
  }

  private static Job job(Settings settings, String shownName) {
    Optional<Settings.Setting> revision = settings.find("revision");
    return new Job(
        shownName,
        settings.asMap(),
        settings.places(),
        settings.ohms("continuity range"),
        settings.ohms("insulation range"),
        settings.volts("insulation volts"),
        MeterRows.read(settings),
        revision.map(Settings.Setting::value).orElse(""),
        revision.map(Settings.Setting::place).orElse(Place.of(shownName)));
  }

  private void rows(Sheet sheet, Reading.Kind kind, Job job, OptionalDouble range)
      throws UnusableInput {
    Values values = new Values(kind, range);
    OwnColumns own = new OwnColumns();
    HiddenReadings hidden = new HiddenReadings(List.of(READING, REVERSE));
    Table table =
        new Table(sheet, COLUMNS, REQUIRED, problems)
            .unless(WhichFile::insteadOfReadings)
            .naming(RowSides::subject, this::keepUnread);
    table.forEach(
        entry -> {
          int unreadBefore = unread.size();
          own.row(entry);
          hidden.row(entry);
          row(entry, kind, job, values, unreadBefore);
        });
    own.report(table, problems);
    hidden.report(table, problems);
    pinned(table);
  }

  /** What a spreadsheet's comment says may speak against the value in its cell. */
  private void pinned(Table table) {
    table
        .surroundings()
        .comments()
        .forEach(
            (spot, text) ->
                problems.warning(
                    table.placeOf(spot.row(), spot.column()),
                    "a comment is pinned to this cell and is not read: \""
                        + Text.visibleInOneLine(text)
                        + "\""));
  }

  /** One bad cell does not stop the rest: its row is left out, and known to be. */
  private void keepUnread(Problem problem) {
    if (problem.severity() == Severity.ERROR) {
      unread.add(problem);
    }
  }

  private void row(Entry entry, Reading.Kind kind, Job job, Values values, int unreadBefore) {
    String step = entry.text(RowSides.STEP.name());
    if (SheetBar.is(step)) {
      bar(entry);
      return;
    }
    if (entry.hasOnly(RowSides.STEP.name())) {
      entry.error(
          RowSides.STEP.name(),
          "nothing else stands in this row; a value belongs in the column Reading, beside its points",
          "");
      return;
    }
    String by = shared(entry.text(BY.name()));
    String note = shared(note(entry));
    Optional<Side> from = sides.from(entry);
    Optional<Side> to = sides.to(entry);
    Optional<SwitchState> state =
        entry.take(STATE.name(), states.computeIfAbsent(entry.text(STATE.name()), points::state));
    Optional<Measured> measured = values.of(entry, READING);
    Optional<Measured> reverse = reverse(entry, kind, values);
    OptionalDouble volts = volts(entry);
    OptionalDouble seconds = seconds(entry);
    Optional<TimeOfReading> time = time(entry);
    if (from.isEmpty() || to.isEmpty() || state.isEmpty() || measured.isEmpty()) {
      return;
    }
    if (!RowSides.areApart(entry, from.get(), to.get()) || unread.size() > unreadBefore) {
      return;
    }
    Reading reading =
        new Reading(
            kind,
            step,
            from.get(),
            to.get(),
            state.get(),
            measured.get(),
            job.meter(),
            volts,
            seconds,
            time,
            by,
            note,
            entry.place(READING.name()));
    readings.add(reading);
    reverse.ifPresent(one -> readings.add(reading.reversed(one, entry.place(REVERSE.name()))));
  }

  /** A reading that somebody wrote into a bar is not left out in silence. */
  private static void bar(Entry entry) {
    String why = "this row says what to do next and is not read; use another row";
    for (Column column : COLUMNS) {
      if (!column.equals(RowSides.STEP) && !entry.text(column.name()).isEmpty()) {
        entry.error(column.name(), why, "");
      }
    }
    entry.forEachUnknown((column, text) -> entry.error(column, why));
  }

  /** What was written beside the value; of one from a meter, how it came in and its own text. */
  private static String note(Entry entry) {
    String said = entry.text(METER_TEXT.name());
    return Stream.of(
            entry.text(NOTE.name()),
            entry.text(ENTERED.name()),
            said.isEmpty() ? "" : "the meter said \"" + said + "\"")
        .filter(text -> !text.isEmpty())
        .collect(Collectors.joining("; "));
  }

  private static Optional<Measured> reverse(Entry entry, Reading.Kind kind, Values values) {
    String text = entry.asTyped(REVERSE.name());
    if (text.isEmpty()) {
      return Optional.empty();
    }
    if (kind == Reading.Kind.INSULATION) {
      entry.error(
          REVERSE.name(),
          "an insulation reading has no reverse; give \"" + text + "\" a row of its own",
          "");
      return Optional.empty();
    }
    return values.of(entry, REVERSE);
  }

  private String shared(String text) {
    return text.isEmpty() ? "" : texts.computeIfAbsent(text, same -> same);
  }

  /** The values of one sheet. What one text means is found out once: most are written often. */
  private static final class Values {
    private static final int MOST_KNOWN = 10_000;

    private final Reading.Kind kind;
    private final OptionalDouble rangeOhms;

    /** By their units, then by their texts. */
    private final Map<String, Map<String, Measured>> known = new HashMap<>();

    private int count;

    Values(Reading.Kind kind, OptionalDouble rangeOhms) {
      this.kind = kind;
      this.rangeOhms = rangeOhms;
    }

    /** The value of a cell; what is none is reported there. */
    Optional<Measured> of(Entry entry, Column column) {
      String text = entry.text(column.name());
      String ownUnit = entry.text(UNIT.name());
      String unit = ownUnit.isEmpty() ? entry.headingUnit(column.name()) : ownUnit;
      Map<String, Measured> ofUnit = known.computeIfAbsent(unit, one -> new HashMap<>());
      Measured before = ofUnit.get(text);
      if (before != null) {
        return Optional.of(before);
      }
      if (OhmsCell.unit(unit).isEmpty()) {
        entry.error(
            (ownUnit.isEmpty() ? column : UNIT).name(),
            "\"" + unit + "\" is not a unit of resistance; write one such as mΩ, Ω, kΩ, MΩ",
            "");
        return Optional.empty();
      }
      return understood(entry, column, text, unit)
          .map(
              measured -> {
                if (isWord(measured) || (!measured.isBelowZero() && count++ < MOST_KNOWN)) {
                  ofUnit.put(text, measured);
                }
                return measured;
              });
    }

    private Optional<Measured> understood(Entry entry, Column column, String text, String unit) {
      boolean insulation = kind == Reading.Kind.INSULATION;
      Optional<Measured> measured =
          entry.take(
              column.name(), OhmsCell.reading(text, unit.isEmpty() && insulation ? "MΩ" : unit));
      if (measured.filter(Measured::isBelowZero).isPresent()) {
        entry.warning(
            column.name(),
            text
                + " is below zero and proves nothing: is there voltage on the circuit? Take it for"
                + " live until it is shown dead; else null the leads, and read again",
            "");
      }
      return measured.map(one -> one.within(rangeOhms));
    }

    /** There are few ways to write one, however many rows do. */
    private static boolean isWord(Measured measured) {
      return measured.isOverRange() || measured.isWord();
    }
  }

  private static OptionalDouble volts(Entry entry) {
    String text = entry.text(VOLTS.name());
    return text.isEmpty()
        ? OptionalDouble.empty()
        : entry
            .take(VOLTS.name(), VoltsCell.volts(text, entry.headingUnit(VOLTS.name())))
            .map(OptionalDouble::of)
            .orElse(OptionalDouble.empty());
  }

  private static OptionalDouble seconds(Entry entry) {
    String text = entry.text(SECONDS.name());
    if (text.isEmpty()) {
      return OptionalDouble.empty();
    }
    String unit = entry.headingUnit(SECONDS.name());
    if (!unit.isEmpty() && !IN_SECONDS.matcher(unit).matches()) {
      entry.error(SECONDS.name(), "\"" + unit + "\" is not seconds", "");
      return OptionalDouble.empty();
    }
    OptionalDouble seconds = entry.number(SECONDS_AT_END.matcher(text).replaceFirst(""), SECONDS);
    if (seconds.isPresent() && seconds.getAsDouble() < 0) {
      entry.error(SECONDS.name(), "\"" + text + "\" is not a time: it is below 0", "");
      return OptionalDouble.empty();
    }
    return seconds;
  }

  private static Optional<TimeOfReading> time(Entry entry) {
    String text = entry.timeText(TIME);
    if (OhmsCell.isNotTested(text)) {
      return Optional.empty();
    }
    Optional<TimeOfReading> time = TimeCell.time(text);
    if (time.isEmpty()) {
      // Which of two readings stands would be a guess.
      entry.error(
          TIME.name(),
          "\"" + text + "\" is not a time that can be read (" + TimeCell.SUCH_AS + ")",
          "");
    }
    return time;
  }
}
