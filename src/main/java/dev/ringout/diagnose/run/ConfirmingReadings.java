package dev.ringout.diagnose.run;

import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.Conductor;
import dev.ringout.compare.Judged;
import dev.ringout.diagnose.Certainty;
import dev.ringout.diagnose.Fault;
import dev.ringout.diagnose.NextReading;
import dev.ringout.diagnose.NextReading.Purpose;
import dev.ringout.diagnose.NextReason;
import dev.ringout.harness.SwitchState;
import dev.ringout.readings.Reading;
import java.util.List;

/** The readings that confirm a fault, by its kind, or tell more of it. */
final class ConfirmingReadings implements Fault.Cases<List<NextReading>> {
  private static final int MOST_AGAIN = 3;

  private final Circuit circuit;
  private final AskedReadings asked;
  private final PoorJointReading poorJoint;

  ConfirmingReadings(Circuit circuit, AskedReadings asked) {
    this.circuit = circuit;
    this.asked = asked;
    poorJoint = new PoorJointReading(circuit, asked);
  }

  /** A reading that was made, once more. */
  static NextReading again(Judged judged, NextReason why) {
    return new NextReading(
        judged.reading().kind(),
        judged.reading().from().toString(),
        judged.reading().to().toString(),
        judged.reading().state(),
        Purpose.CONFIRM,
        why,
        List.of());
  }

  /** None where it was made or is asked for already. */
  private List<NextReading> unlessMade(NextReading reading) {
    return asked.isNew(reading) ? List.of(reading) : List.of();
  }

  /** A certain open is read across once more before anything is taken apart. */
  @Override
  public List<NextReading> open(Fault.Open fault) {
    if (fault.suspects().size() != 1) {
      return List.of();
    }
    Conductor suspect = fault.suspects().get(0);
    return unlessMade(
        new NextReading(
            Reading.Kind.CONTINUITY,
            suspect.from().toString(),
            suspect.to().toString(),
            SwitchState.normal(),
            Purpose.CONFIRM,
            new NextReason.AcrossTheOpen(suspect),
            List.of()));
  }

  @Override
  public List<NextReading> shorted(Fault.Shorted fault) {
    return List.of();
  }

  @Override
  public List<NextReading> miswire(Fault.Miswire fault) {
    return List.of();
  }

  /** Where the pen may have slipped, the same once more; else halfway. */
  @Override
  public List<NextReading> highResistance(Fault.HighResistance fault) {
    List<NextReading> again = valueOnceMore(fault);
    return again.isEmpty() ? poorJoint.of(fault).map(this::unlessMade).orElse(List.of()) : again;
  }

  /** The value that the pen may have spoilt. */
  private static List<NextReading> valueOnceMore(Fault fault) {
    return fault.finding().alternatives().stream()
        .flatMap(one -> one.slips().stream())
        .flatMap(slip -> slip.ofThePen().stream())
        .limit(1)
        .map(one -> again(one, new NextReason.AloneShowsIt()))
        .toList();
  }

  /** No reading between its ends tells why it is high. */
  @Override
  public List<NextReading> highWire(Fault.HighWire fault) {
    return valueOnceMore(fault);
  }

  @Override
  public List<NextReading> unequalWire(Fault.UnequalWire fault) {
    return List.of();
  }

  @Override
  public List<NextReading> wrongGauge(Fault.WrongGauge fault) {
    return List.of();
  }

  @Override
  public List<NextReading> lowInsulation(Fault.LowInsulation fault) {
    if (!fault.places().isEmpty()
        || fault.finding().certainty() == Certainty.CERTAIN
        || fault.points().size() != 2) {
      return List.of();
    }
    List<NextReading> ofTheTwo =
        fault.isOfOneSide()
            ? List.of()
            : unlessMade(
                new NextReading(
                    Reading.Kind.INSULATION,
                    fault.points().get(0).toString(),
                    fault.points().get(1).toString(),
                    SwitchState.normal(),
                    Purpose.CONFIRM,
                    new NextReason.LeakOfTheTwo(),
                    List.of()));
    List<Judged> readings = fault.finding().readings();
    return ofTheTwo.isEmpty() && readings.size() == 1
        ? List.of(again(readings.get(0), new NextReason.AloneShowsIt()))
        : ofTheTwo;
  }

  /** With a lead of a part lifted that may be good, and a leak beside it. */
  List<NextReading> besideThePart(Fault.WrongPart fault) {
    boolean isDoubtful =
        fault.finding().certainty() != Certainty.CERTAIN
            && fault.finding().alternatives().isEmpty()
            && circuit.isTheOnlyOneOfItsName(fault.part());
    return isDoubtful
        ? unlessMade(
            new NextReading(
                Reading.Kind.CONTINUITY,
                fault.points().get(0).toString(),
                fault.points().get(1).toString(),
                SwitchState.normal().withLifted(fault.part()),
                Purpose.CONFIRM,
                new NextReason.BesideThePart(fault.part()),
                List.of()))
        : List.of();
  }

  @Override
  public List<NextReading> wrongPart(Fault.WrongPart fault) {
    return List.of();
  }

  @Override
  public List<NextReading> wrongSwitch(Fault.WrongSwitch fault) {
    return List.of();
  }

  @Override
  public List<NextReading> misread(Fault.Misread fault) {
    return List.of(again(fault.judged(), new NextReason.AtTheseVeryPoints()));
  }

  @Override
  public List<NextReading> slippedRows(Fault.SlippedRows fault) {
    return rowsOnceMore(fault);
  }

  private static List<NextReading> rowsOnceMore(Fault fault) {
    return fault.finding().readings().stream()
        .limit(MOST_AGAIN)
        .map(one -> again(one, new NextReason.RowOnceMore(one.reading().place())))
        .toList();
  }

  @Override
  public List<NextReading> misscaled(Fault.Misscaled fault) {
    return rowsOnceMore(fault);
  }

  @Override
  public List<NextReading> exchangedRows(Fault.ExchangedRows fault) {
    return rowsOnceMore(fault);
  }

  @Override
  public List<NextReading> leadsNotNulled(Fault.LeadsNotNulled fault) {
    return List.of();
  }

  @Override
  public List<NextReading> onPaper(Fault.OnPaper fault) {
    return List.of();
  }
}
