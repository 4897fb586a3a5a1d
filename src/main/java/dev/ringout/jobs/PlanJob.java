package dev.ringout.jobs;

import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.JoinLimits;
import dev.ringout.compare.Comparison;
import dev.ringout.jobs.WrongRequest.Part;
import dev.ringout.plan.PlanOptions;
import dev.ringout.plan.PlanOptions.Isolation;
import dev.ringout.plan.Planner;
import dev.ringout.plan.TestPlan;
import dev.ringout.readings.Job;
import dev.ringout.readings.JobTemplate;
import dev.ringout.readings.ReadingSet;
import dev.ringout.standards.HandMovements;
import dev.ringout.standards.Tables;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The test sheet with the fewest steps that prove a unit, or what its readings leave open. */
public final class PlanJob {
  private PlanJob() {}

  /**
   * What is asked.
   *
   * @param unit its readings are those already taken: only what they do not prove is planned
   * @param isolation how nets are held apart
   * @param insulation whether insulation is tested
   * @param byConnector connector after connector, rather than by the least movement
   * @param only the nets of these items; of all where there are none
   * @param job what the station carries into every test: a file, or a station of the store
   */
  public record Request(
      UnitRequest unit,
      Isolation isolation,
      boolean insulation,
      boolean byConnector,
      List<String> only,
      Optional<Path> job) {
    /** What is given can't be changed afterwards. */
    public Request {
      only = List.copyOf(only);
    }

    /** The plan that proves all of a unit. */
    public static Request whole(UnitRequest unit) {
      return new Request(
          unit, PlanOptions.ALL.isolation(), true, false, List.of(), Optional.empty());
    }
  }

  /**
   * Plans the steps.
   *
   * @throws WrongRequest where the request names what the list does not have
   */
  public static Answer<TestPlan> run(Request request, Inputs inputs) throws WrongRequest {
    Optional<UnitAtHand> read = UnitAtHand.read(request.unit(), inputs);
    JobTemplate job = request.job().map(inputs::jobTemplate).orElse(JobTemplate.NONE);
    if (read.isEmpty() || inputs.problems().hasErrors()) {
      return Answer.refused(inputs);
    }
    return WrongRequest.answer(() -> planned(request, read.get(), job), inputs);
  }

  private static TestPlan planned(Request request, UnitAtHand unit, JobTemplate job)
      throws WrongRequest {
    Tables tables = OwnTables.over(request.unit().ownTables());
    Circuit circuit = Circuit.of(unit.harness());
    JoinLimits limits = JoinLimits.of(circuit, tables);
    Optional<Comparison> taken =
        request.unit().readings().isEmpty()
            ? Optional.empty()
            : Optional.of(Comparison.of(circuit, limits, unit.readings()));
    PlanOptions options =
        new PlanOptions(
            request.isolation(),
            request.insulation(),
            request.byConnector(),
            new NamesOfRequest(unit.harness()).items(Part.ONLY, request.only()),
            unit.wires(),
            unit.items(),
            taken,
            unit.readings().reworksBefore(),
            carried(request, unit.readings(), job));
    return Planner.plan(circuit, limits, new HandMovements(tables), options);
  }

  /**
   * What stands on the sheet Job before anything is written: what the station carries; else, in a
   * retest, what the tests before were made with; and which unit it is, where that is known. Who
   * reads, when, and in which air is written at each test anew.
   */
  private static JobTemplate carried(Request request, ReadingSet readings, JobTemplate job) {
    Map<String, String> rows = new LinkedHashMap<>(job.rows());
    for (Job before : readings.jobs()) {
      for (String name : JobTemplate.OF_EQUIPMENT) {
        String value = before.value(name);
        if (job.value(name).isEmpty() && !value.isEmpty() && !isWithoutItsUnit(name, value)) {
          rows.put(name, value);
        }
      }
    }
    String serial =
        request
            .unit()
            .said()
            .serialNumber()
            .or(() -> InputName.unit(request.unit().list()).map(InputName.Unit::serial))
            .orElse(readings.serialNumber());
    if (!serial.isEmpty()) {
      rows.put(JobTemplate.SERIAL, serial);
    }
    return new JobTemplate(rows);
  }

  /** Its unit stood in a cell beside it: bare it would be another value. */
  private static boolean isWithoutItsUnit(String name, String value) {
    return JobTemplate.WITH_UNIT.contains(name) && value.matches("[\\d.,\\s]*");
  }
}
