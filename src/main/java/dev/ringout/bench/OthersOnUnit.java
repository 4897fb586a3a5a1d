package dev.ringout.bench;

import dev.ringout.readings.Job;
import dev.ringout.readings.Reading;
import dev.ringout.readings.ReadingSet;
import dev.ringout.readings.TimeOfReading;
import dev.ringout.store.Lease;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Who else works on a unit: each part of its test that is led at another station. */
final class OthersOnUnit {
  private OthersOnUnit() {}

  static List<BenchState.Other> of(LedSession session, String station, List<Lease> leads) {
    ReadingSet readings = session.readings();
    List<BenchState.Other> others = new ArrayList<>();
    for (Job job : readings.jobs()) {
      boolean ofThisTest = session.led().session().holds(job.file());
      if (ofThisTest && !job.value("station").equals(station)) {
        Optional<Reading> last =
            readings.readings().stream()
                .filter(reading -> job.holds(reading.place()))
                .reduce((one, other) -> other);
        others.add(
            new BenchState.Other(
                job.value("station"),
                job.value("operator"),
                last.flatMap(Reading::time).map(TimeOfReading::at).map(Object::toString).orElse(""),
                last.map(Reading::subject).orElse(""),
                now(job, leads)));
      }
    }
    return List.copyOf(others);
  }

  private static BenchState.Leads now(Job job, List<Lease> leads) {
    return BenchState.Leads.of(
        leads.stream()
            .filter(lease -> lease.station().equals(job.value("station")))
            .filter(lease -> lease.who().equals(job.value("operator")))
            .findFirst());
  }
}
