package dev.ringout.jobs;

import dev.ringout.harness.Harness;
import dev.ringout.intake.OneUnit;
import dev.ringout.jobs.UnitRequest.Said;
import dev.ringout.jobs.WrongRequest.Part;
import dev.ringout.readings.ReadingSet;
import dev.ringout.readings.Rework;
import dev.ringout.source.Problems;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A unit as every job takes it up: its list, and its readings with what was worked on since.
 *
 * @param wires that were touched, as the list spells them
 * @param items that were opened, as the list spells them
 */
record UnitAtHand(Harness harness, ReadingSet readings, Set<String> wires, Set<String> items) {

  /** Reads a unit; absent where its list can't be used, and then its readings were looked at. */
  static Optional<UnitAtHand> read(UnitRequest request, Inputs inputs) throws WrongRequest {
    Optional<Harness> list = inputs.soundHarness(request.list());
    if (list.isEmpty()) {
      inputs.readingsOfAnything(request.readings());
      return Optional.empty();
    }
    Harness harness = list.get();
    ReadingSet readings =
        ofOneUnit(
            harness,
            inputs.readings(request.readings(), harness),
            request.said(),
            inputs.problems());
    NamesOfRequest names = new NamesOfRequest(harness);
    Set<String> wires = names.wires(Part.TOUCHED, request.touched().wires());
    Set<String> items = names.items(Part.OPENED, request.touched().items());
    return Optional.of(
        new UnitAtHand(
            harness,
            request.touched().isNothing()
                ? readings
                : readings.before(Rework.told(harness, wires, items)),
            wires,
            items));
  }

  /** Readings of another unit of the same list; the same unit or another list is a problem. */
  ReadingSet another(Path sheet, Said said, Inputs inputs) {
    ReadingSet other = inputs.readings(List.of(sheet), harness);
    refuseOthers(harness, other, said, inputs.problems());
    OneUnit.reportSame(readings, other, inputs.problems());
    return other;
  }

  private static ReadingSet ofOneUnit(
      Harness harness, ReadingSet readings, Said said, Problems problems) {
    ReadingSet vouched =
        said.serialNumber()
            .map(serial -> OneUnit.vouchedFor(readings, serial, problems))
            .orElse(readings);
    refuseOthers(harness, vouched, said, problems);
    return vouched;
  }

  private static void refuseOthers(
      Harness harness, ReadingSet readings, Said said, Problems problems) {
    OneUnit.report(harness, readings, problems);
    if (!said.anyRevision()) {
      OneUnit.reportOtherRevision(harness, readings, problems);
    }
  }
}
