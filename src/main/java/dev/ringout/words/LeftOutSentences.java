package dev.ringout.words;

import dev.ringout.circuit.Circuit;
import dev.ringout.compare.Coverage.Unprovable;
import dev.ringout.plan.LeftOut;
import dev.ringout.units.Text;

/** What each kind of thing is that no step of a plan proves, and why. */
public final class LeftOutSentences implements LeftOut.Cases<String> {
  private static final int MOST_NETS = 4;
  private static final int MOST_PARTS = 3;

  private final Circuit circuit;

  /** In the names of a circuit. */
  public LeftOutSentences(Circuit circuit) {
    this.circuit = circuit;
  }

  @Override
  public String withPartsInPlace(LeftOut.WithPartsInPlace reason) {
    Unprovable unprovable = reason.unprovable();
    String nets =
        Text.first(
            unprovable.points().stream().map(point -> circuit.point(point).toString()).toList(),
            MOST_NETS);
    String parts =
        Text.first(
            unprovable.parts().stream().map(part -> circuit.part(part).label()).distinct().toList(),
            MOST_PARTS);
    return unprovable.insulation()
        ? Text.of("insulation between %s: %s between them", nets, parts)
        : Text.of("%s apart: the list gives no ohms for the %s between them", nets, parts);
  }

  @Override
  public String insulationNotPlanned(LeftOut.InsulationNotPlanned reason) {
    return "insulation, which the list asks for: no test of it is planned here";
  }

  @Override
  public String notShown(LeftOut.NotShown reason) {
    return UnprovenSentences.why(circuit, reason.unproven());
  }
}
