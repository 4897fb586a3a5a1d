package dev.ringout.jobs;

import dev.ringout.readings.JobTemplate;
import dev.ringout.store.Fields;
import dev.ringout.store.Station;
import dev.ringout.store.Store;
import dev.ringout.store.StoreTrouble;
import dev.ringout.store.StoreTrouble.Reason;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.stream.Collectors;

/** Keeps what a station carries into every test. */
public final class StationJob {
  private static final int LONGEST_NAME = 200;

  private StationJob() {}

  /**
   * What is asked.
   *
   * @param file a sheet Job, or a CSV file that is one
   * @param now when it is kept
   */
  public record Request(String name, Path file, Instant now) {}

  /** What was kept; whether it is another than before. */
  public record Result(String name, JobTemplate job, boolean isNew) {}

  /**
   * Keeps it. What it was before stays in the store.
   *
   * @throws StoreTrouble where the store can't be written
   */
  public static Answer<Result> run(Request request, StoreAtHand store) throws StoreTrouble {
    FileInputs inputs = FileInputs.with(List.of(request.file()), store);
    JobTemplate job = inputs.jobTemplate(request.file());
    if (inputs.problems().hasErrors()) {
      return Answer.refused(inputs);
    }
    if (request.name().isBlank() || request.name().length() > LONGEST_NAME) {
      throw StoreTrouble.of(
          Reason.NOT_UNDERSTOOD, "the name of a station has 1 to " + LONGEST_NAME + " letters");
    }
    String body =
        job.rows().entrySet().stream()
            .map(row -> Fields.line(row.getKey(), row.getValue()))
            .collect(Collectors.joining("\n"));
    if (body.isEmpty()) {
      throw StoreTrouble.of(Reason.NOT_UNDERSTOOD, "a station that carries nothing is none");
    }
    Store.Added added =
        store.openToWrite().keep(new Station(request.name(), request.now().toString(), body));
    return Answer.of(new Result(request.name(), job, added == Store.Added.ADDED), inputs);
  }
}
