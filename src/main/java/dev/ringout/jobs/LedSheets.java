package dev.ringout.jobs;

import dev.ringout.harness.Harness;
import dev.ringout.intake.OneUnit;
import dev.ringout.intake.ReadingsReader;
import dev.ringout.readings.Reading;
import dev.ringout.readings.ReadingSet;
import dev.ringout.readings.Rework;
import dev.ringout.source.Problem;
import dev.ringout.source.Problems;
import dev.ringout.source.Severity;
import dev.ringout.source.UnusableInput;
import dev.ringout.store.Entry;
import dev.ringout.store.EntryKind;
import dev.ringout.store.KeptSheets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The sheets of one part of a led test, as they grow: what a person would have filled in by hand,
 * row by row. What is judged at once and what is read again from the store years later are made of
 * the same rows by the same reader.
 *
 * <p>Not for use by several threads at once.
 */
public final class LedSheets {
  private static final String JOB = "Job";
  private static final String REWORK = "Rework";
  private static final List<String> HEADINGS =
      List.of(
          "Step",
          "From",
          "To",
          "State",
          "Volts",
          "Seconds",
          "Reading",
          "Time",
          "By",
          "Note",
          "Entered",
          "Meter Text");

  private final String within;
  private final Map<String, String> job;
  private final List<Rework> reworks;
  private final Map<Reading.Kind, Integer> lastRow = new LinkedHashMap<>();
  private String sheet = "";

  /**
   * The sheets of a part.
   *
   * @param within what tells it from the other parts of its test, such as {@code /2}
   * @param job names and values of the sheet Job
   * @param reworks what was opened and touched before
   */
  public LedSheets(String within, Map<String, String> job, List<Rework> reworks) {
    this.within = within;
    this.job = new LinkedHashMap<>(job);
    this.reworks = List.copyOf(reworks);
  }

  /**
   * One row.
   *
   * @param from as the list names it; several points tied together with plus signs between
   * @param to the same, or {@code REST}
   * @param value as it is to be read, with its unit
   * @param time as a sheet has it
   * @param entered how it came in
   * @param meterText what the meter said, word for word; empty where it was typed
   */
  public record Row(
      Reading.Kind kind,
      String step,
      String from,
      String to,
      String state,
      String volts,
      String value,
      String time,
      String by,
      String note,
      String entered,
      String meterText) {
    private List<String> cells() {
      return List.of(step, from, to, state, volts, "", value, time, by, note, entered, meterText);
    }
  }

  /** What stands on the sheet Job. */
  public Map<String, String> job() {
    return Collections.unmodifiableMap(job);
  }

  /** The part's beginning: what stands on every sheet before the first reading. */
  public List<Entry.Draft> opening(String at, String who) {
    List<Entry.Draft> drafts = conditions(at, who);
    drafts.addAll(reworks());
    for (Reading.Kind kind : Reading.Kind.values()) {
      drafts.add(KeptSheets.begin(name(kind), within));
      drafts.add(heading(HEADINGS));
      lastRow.put(kind, 1);
      sheet = name(kind);
    }
    return drafts;
  }

  private List<Entry.Draft> conditions(String at, String who) {
    List<Entry.Draft> drafts = new ArrayList<>();
    drafts.add(KeptSheets.begin(JOB, within));
    drafts.add(heading(List.of("Name", "Value")));
    int row = 1;
    for (Map.Entry<String, String> one : job.entrySet()) {
      String body = KeptSheets.row(++row, List.of(one.getKey(), one.getValue()));
      drafts.add(new Entry.Draft(EntryKind.CONDITIONS, at, who, body));
    }
    return drafts;
  }

  private List<Entry.Draft> reworks() {
    if (reworks.isEmpty()) {
      return List.of();
    }
    List<Entry.Draft> drafts = new ArrayList<>();
    drafts.add(KeptSheets.begin(REWORK, within));
    drafts.add(heading(List.of("No", "Time", "Items", "Wires", "Readings", "Note")));
    int row = 1;
    for (Rework one : reworks) {
      List<String> cells =
          List.of(
              one.number(),
              one.timeText(),
              String.join(", ", one.items()),
              String.join(", ", one.wires()),
              "after",
              one.note());
      drafts.add(new Entry.Draft(EntryKind.ROW, "", "", KeptSheets.row(++row, cells)));
    }
    return drafts;
  }

  private static Entry.Draft heading(List<String> names) {
    return new Entry.Draft(EntryKind.ROW, "", "", KeptSheets.row(1, names));
  }

  /** A row as what happened; where it stands on another sheet than the last, that goes on first. */
  public List<Entry.Draft> drafts(Row row, EntryKind kind, String at) {
    List<Entry.Draft> drafts = new ArrayList<>();
    if (!sheet.equals(name(row.kind()))) {
      drafts.add(KeptSheets.begin(name(row.kind()), within));
    }
    drafts.add(draft(row, kind, at));
    return drafts;
  }

  private Entry.Draft draft(Row row, EntryKind kind, String at) {
    return new Entry.Draft(kind, at, row.by(), KeptSheets.row(next(row.kind()), row.cells()));
  }

  /** Another part went on meanwhile: the next row says first on which sheet it stands. */
  public void interrupted() {
    sheet = "";
  }

  /** The row was kept: what comes next stands below it. */
  public void kept(Row row) {
    sheet = name(row.kind());
    lastRow.put(row.kind(), next(row.kind()));
  }

  /** Rows up to there are kept: one of this part may have been without anybody being told. */
  public void reach(Reading.Kind kind, int row) {
    lastRow.merge(kind, row, Math::max);
  }

  private int next(Reading.Kind kind) {
    return lastRow.getOrDefault(kind, 1) + 1;
  }

  /**
   * The row as it will be read from the store; nothing where it can't be understood.
   *
   * @param file the name of the test's file
   */
  public ReadingSet read(Row row, String file, Harness harness, Problems problems) {
    List<Entry.Draft> drafts = conditions("", "");
    drafts.add(KeptSheets.begin(name(row.kind()), within));
    drafts.add(heading(HEADINGS));
    drafts.add(draft(row, EntryKind.READING, ""));
    return read(drafts, file, harness, problems);
  }

  private ReadingSet read(
      List<Entry.Draft> drafts, String file, Harness harness, Problems problems) {
    List<Entry> entries = new ArrayList<>();
    for (Entry.Draft draft : drafts) {
      entries.add(
          new Entry(
              entries.size() + 1,
              draft.at(),
              draft.who(),
              draft.kind().word(),
              draft.body(),
              "",
              ""));
    }
    ReadingsReader reader = new ReadingsReader(harness, problems);
    try (KeptSheets sheets = KeptSheets.of(entries, file, Map.of(), problems)) {
      reader.read(sheets, file + within);
    } catch (UnusableInput e) {
      problems.error(e.place(), e.text());
    }
    return reader.readings();
  }

  /**
   * What is wrong with the part before anything is read: with it in the store, no reading of the
   * unit could be understood any more.
   *
   * @param file the name of the test's file
   */
  public List<Problem> errors(String file, Harness harness) {
    Problems problems = new Problems();
    ReadingSet readings = read(opening("", ""), file, harness, problems);
    OneUnit.report(harness, readings, problems);
    OneUnit.reportOtherRevision(harness, readings, problems);
    return problems.list().stream().filter(one -> one.severity() == Severity.ERROR).toList();
  }

  private static String name(Reading.Kind kind) {
    return kind == Reading.Kind.CONTINUITY ? "Continuity" : "Insulation";
  }
}
