package dev.ringout.jobs;

import dev.ringout.check.CheckResult;
import dev.ringout.harness.Harness;
import dev.ringout.harness.NaturalOrder;
import dev.ringout.intake.OneUnit;
import dev.ringout.lot.Lot;
import dev.ringout.lot.LotUnit;
import dev.ringout.readings.Job;
import dev.ringout.readings.ReadingSet;
import dev.ringout.source.Place;
import dev.ringout.source.Problem;
import dev.ringout.source.Severity;
import dev.ringout.standards.Tables;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Many units of one list side by side, each checked as {@link CheckJob} checks it. */
public final class LotJob {
  private final Request request;
  private final Inputs.Source source;
  private final List<Path> named;
  private final Harness harness;
  private final Tables tables;
  private final List<LotUnit> units = new ArrayList<>();
  private final List<Lot.Refused> refused = new ArrayList<>();
  private boolean missing;

  /**
   * What is asked.
   *
   * @param list the harness file
   * @param sheets filled test sheets, or folders of them; those that give one serial number are of
   *     one unit. None: all units of the list that the store keeps
   * @param anyRevision whether readings against another revision of the list are accepted
   * @param ownTables a folder of tables to lay over the published ones
   */
  public record Request(
      Path list, List<Path> sheets, boolean anyRevision, Optional<Path> ownTables) {
    /** What is given can't be changed afterwards. */
    public Request {
      sheets = List.copyOf(sheets);
    }

    /** Sheets against the published tables. */
    public static Request of(Path list, List<Path> sheets) {
      return new Request(list, sheets, false, Optional.empty());
    }
  }

  /**
   * What is answered.
   *
   * @param missing whether a sheet is not there at all
   */
  public record Result(Lot lot, boolean missing) {}

  private LotJob(
      Request request, Inputs.Source source, List<Path> named, Harness harness, Tables tables) {
    this.request = request;
    this.source = source;
    this.named = named;
    this.harness = harness;
    this.tables = tables;
  }

  /**
   * Checks every unit. One that can't be checked is told among the others.
   *
   * @throws WrongRequest where the tables can't be used
   */
  public static Answer<Result> run(Request request, Inputs.Source source) throws WrongRequest {
    List<Path> sheets = new ArrayList<>();
    Inputs inputs = inputs(request, source, sheets);
    Optional<Harness> harness = inputs.soundHarness(request.list());
    if (harness.isEmpty()) {
      inputs.readingsOfAnything(sheets);
      return Answer.refused(inputs);
    }
    if (request.sheets().isEmpty()) {
      sheets.addAll(inputs.siblings());
      if (sheets.isEmpty() && !inputs.problems().hasErrors()) {
        inputs
            .problems()
            .error(
                Place.of(inputs.shownName(request.list())), "the store keeps no unit of this list");
      }
      if (sheets.isEmpty()) {
        return Answer.refused(inputs);
      }
    }
    List<Path> named = new ArrayList<>(List.of(request.list()));
    named.addAll(sheets);
    return WrongRequest.answer(
        () -> {
          Tables tables = OwnTables.over(request.ownTables(), inputs);
          LotJob job = new LotJob(request, source, named, harness.get(), tables);
          job.bySerial(sheets).values().forEach(job::unit);
          return new Result(job.lot(), job.missing);
        },
        inputs);
  }

  /** The inputs, with every sheet of the folders that were named. */
  private static Inputs inputs(Request request, Inputs.Source source, List<Path> sheets) {
    List<Path> given = new ArrayList<>(List.of(request.list()));
    given.addAll(request.sheets());
    Inputs folders = source.apply(given);
    for (Path one : request.sheets()) {
      folders.sheets(one).stream().filter(sheet -> !isSame(sheet, request)).forEach(sheets::add);
    }
    List<Path> named = new ArrayList<>(List.of(request.list()));
    named.addAll(sheets);
    Inputs inputs = source.apply(named);
    folders.problems().list().forEach(inputs.problems()::add);
    return inputs;
  }

  /** A list may lie in the folder of its sheets. */
  private static boolean isSame(Path sheet, Request request) {
    try {
      return Files.exists(sheet)
          && Files.exists(request.list())
          && Files.isSameFile(sheet, request.list());
    } catch (IOException e) {
      // What can't be looked at is told when it is read.
      return false;
    }
  }

  /** The sheets of each unit; a sheet without a serial number is a unit of its own. */
  private Map<String, List<Path>> bySerial(List<Path> sheets) {
    Map<String, List<Path>> units = new LinkedHashMap<>();
    for (Path sheet : sheets) {
      if (InputName.isOneOfItsList(sheet)) {
        units.put("kept " + sheet, List.of(sheet));
        continue;
      }
      Inputs inputs = source.apply(named);
      String serial = inputs.readings(List.of(sheet), harness).serialNumber();
      String unit = serial.isEmpty() ? "file " + sheet : "serial " + OneUnit.keyOf(serial);
      units.computeIfAbsent(unit, key -> new ArrayList<>()).add(sheet);
    }
    return units;
  }

  private void unit(List<Path> sheets) {
    Inputs inputs = source.apply(named);
    ReadingSet readings = inputs.readings(sheets, harness);
    OneUnit.report(harness, readings, inputs.problems());
    if (!request.anyRevision()) {
      OneUnit.reportOtherRevision(harness, readings, inputs.problems());
    }
    List<String> files = sheets.stream().map(inputs::shownName).toList();
    String serial = readings.serialNumber();
    if (serial.isEmpty() && !inputs.problems().hasErrors()) {
      inputs
          .problems()
          .add(
              new Problem(
                  Place.of(files.get(0)),
                  "",
                  Severity.WARNING,
                  "gives no serial number: taken for a unit of its own",
                  ""));
    }
    String name = serial.isEmpty() ? files.get(0) : serial;
    missing |= inputs.isMissing();
    if (CheckJob.hasErrorsBeside(readings.unread(), inputs.problems())) {
      refused.add(new Lot.Refused(name, files, inputs.problems().list()));
    } else {
      CheckResult result = CheckResult.of(harness, readings, tables, inputs.problems().list());
      units.add(LotUnit.of(name, files, result, wasFaulty(result)));
    }
  }

  /** A fault need not be a reading that fails: whether the sheets before the last showed one. */
  private boolean wasFaulty(CheckResult result) {
    ReadingSet readings = result.readings();
    if (result.verdict() != CheckResult.Verdict.CONFORMS
        || result.comparison().replaced().isEmpty()) {
      return false;
    }
    List<Job> jobs = readings.jobs();
    for (int sheets = 1; sheets < jobs.size(); sheets++) {
      CheckResult then =
          CheckResult.of(
              harness, readings.ofJobs(jobs.subList(0, sheets)), tables, result.problems());
      if (then.verdict() == CheckResult.Verdict.FAULTS) {
        return true;
      }
    }
    return false;
  }

  private Lot lot() {
    units.sort(Comparator.comparing(LotUnit::name, NaturalOrder.INSTANCE));
    refused.sort(Comparator.comparing(Lot.Refused::name, NaturalOrder.INSTANCE));
    return Lot.of(harness, units, refused);
  }
}
