package dev.ringout.jobs;

import dev.ringout.readings.ReadingSet;
import dev.ringout.work.FoundList;
import java.nio.file.Path;
import java.util.List;

/** A wire list from the readings of a unit for which there is none. */
public final class AsFoundJob {
  private AsFoundJob() {}

  /** What is asked. */
  public record Request(List<Path> readings) {
    /** What is given can't be changed afterwards. */
    public Request {
      readings = List.copyOf(readings);
    }
  }

  /** Builds the list. */
  public static Answer<FoundList> run(Request request, Inputs inputs) {
    ReadingSet readings = inputs.readingsOfAnything(request.readings());
    return inputs.problems().hasErrors()
        ? Answer.refused(inputs)
        : Answer.of(FoundList.of(readings), inputs);
  }
}
