package dev.ringout.words;

import dev.ringout.diagnose.Fault;

/**
 * The kind of a fault as every output names it: what a mechanic looks for. Several of the program's
 * own kinds share one.
 */
final class FaultKind implements Fault.Cases<String> {
  @Override
  public String open(Fault.Open fault) {
    return "open";
  }

  @Override
  public String shorted(Fault.Shorted fault) {
    return "short";
  }

  @Override
  public String miswire(Fault.Miswire fault) {
    return "miswire";
  }

  @Override
  public String highResistance(Fault.HighResistance fault) {
    return "high-resistance";
  }

  @Override
  public String highWire(Fault.HighWire fault) {
    return "high-resistance";
  }

  @Override
  public String unequalWire(Fault.UnequalWire fault) {
    return "high-resistance";
  }

  @Override
  public String wrongGauge(Fault.WrongGauge fault) {
    return "wrong-gauge";
  }

  @Override
  public String lowInsulation(Fault.LowInsulation fault) {
    return "low-insulation";
  }

  @Override
  public String wrongPart(Fault.WrongPart fault) {
    return "wrong-part";
  }

  @Override
  public String wrongSwitch(Fault.WrongSwitch fault) {
    return "wrong-part";
  }

  @Override
  public String misread(Fault.Misread fault) {
    return "test";
  }

  @Override
  public String slippedRows(Fault.SlippedRows fault) {
    return "test";
  }

  @Override
  public String misscaled(Fault.Misscaled fault) {
    return "test";
  }

  @Override
  public String exchangedRows(Fault.ExchangedRows fault) {
    return "test";
  }

  @Override
  public String leadsNotNulled(Fault.LeadsNotNulled fault) {
    return "test";
  }

  @Override
  public String onPaper(Fault.OnPaper fault) {
    return "paper";
  }
}
