package dev.ringout.diagnose;

import dev.ringout.circuit.Conductor;
import dev.ringout.harness.Wire;
import java.util.List;

/** The wires that a fault is about. */
final class WiresOfFault implements Fault.Cases<List<Wire>> {
  private static List<Wire> of(List<Conductor> conductors) {
    return conductors.stream().flatMap(one -> one.asWire().stream()).toList();
  }

  @Override
  public List<Wire> open(Fault.Open fault) {
    return of(fault.suspects());
  }

  @Override
  public List<Wire> shorted(Fault.Shorted fault) {
    return List.of();
  }

  @Override
  public List<Wire> miswire(Fault.Miswire fault) {
    return fault.moves().stream().map(Move::wire).distinct().toList();
  }

  @Override
  public List<Wire> highResistance(Fault.HighResistance fault) {
    return of(fault.suspects().stream().map(Fault.Suspicion::conductor).toList());
  }

  @Override
  public List<Wire> highWire(Fault.HighWire fault) {
    return List.of(fault.wire());
  }

  @Override
  public List<Wire> unequalWire(Fault.UnequalWire fault) {
    return List.of(fault.wire());
  }

  @Override
  public List<Wire> wrongGauge(Fault.WrongGauge fault) {
    return fault.wires();
  }

  @Override
  public List<Wire> lowInsulation(Fault.LowInsulation fault) {
    return List.of();
  }

  @Override
  public List<Wire> wrongPart(Fault.WrongPart fault) {
    return List.of();
  }

  @Override
  public List<Wire> wrongSwitch(Fault.WrongSwitch fault) {
    return List.of();
  }

  @Override
  public List<Wire> misread(Fault.Misread fault) {
    return List.of();
  }

  @Override
  public List<Wire> slippedRows(Fault.SlippedRows fault) {
    return List.of();
  }

  @Override
  public List<Wire> misscaled(Fault.Misscaled fault) {
    return List.of();
  }

  @Override
  public List<Wire> exchangedRows(Fault.ExchangedRows fault) {
    return List.of();
  }

  @Override
  public List<Wire> leadsNotNulled(Fault.LeadsNotNulled fault) {
    return List.of();
  }

  @Override
  public List<Wire> onPaper(Fault.OnPaper fault) {
    return fault.same().wires();
  }
}
