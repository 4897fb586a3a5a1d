package dev.ringout.jobs;

import dev.ringout.circuit.Circuit;
import dev.ringout.harness.Harness;
import dev.ringout.harness.Wire;
import dev.ringout.intake.PointSearch;
import dev.ringout.jobs.WrongRequest.Part;
import dev.ringout.work.FoundWire;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** Where a wire belongs that was found on a point. */
public final class FoundJob {
  private FoundJob() {}

  /**
   * What is asked.
   *
   * @param wire by its name, in whichever case
   * @param point as somebody says it
   */
  public record Request(Path list, String wire, String point) {}

  /**
   * Says where it belongs.
   *
   * @throws WrongRequest where the list has no such wire or point
   */
  public static Answer<FoundWire> run(Request request, Inputs inputs) throws WrongRequest {
    Optional<Harness> list = inputs.soundHarness(request.list());
    if (list.isEmpty()) {
      return Answer.refused(inputs);
    }
    return WrongRequest.answer(() -> found(request, list.get()), inputs);
  }

  private static FoundWire found(Request request, Harness harness) throws WrongRequest {
    String name =
        new NamesOfRequest(harness).wires(Part.WIRE, List.of(request.wire())).iterator().next();
    Wire wire =
        harness.wires().stream().filter(one -> one.name().equals(name)).findFirst().orElseThrow();
    PointSearch.Found point = Points.find(new PointSearch(harness), request.point());
    return FoundWire.of(Circuit.of(harness), wire, point.point());
  }
}
