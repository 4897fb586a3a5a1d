package dev.ringout.json;

import dev.ringout.circuit.Circuit;
import dev.ringout.plan.LeftOut;
import dev.ringout.words.LeftOutSentences;
import java.util.Map;

/** What no step of a plan proves, each kind with its facts. */
final class LeftOutJson implements LeftOut.Cases<Reason> {
  private final Circuit circuit;

  LeftOutJson(Circuit circuit) {
    this.circuit = circuit;
  }

  Map<String, Object> of(LeftOut leftOut) {
    return leftOut.match(this).said(leftOut.match(new LeftOutSentences(circuit)));
  }

  @Override
  public Reason withPartsInPlace(LeftOut.WithPartsInPlace reason) {
    return Reason.of("with-parts-in-place")
        .with("unprovable", CoverageJson.unprovable(reason.unprovable(), circuit));
  }

  @Override
  public Reason insulationNotPlanned(LeftOut.InsulationNotPlanned reason) {
    return Reason.of("insulation-not-planned");
  }

  @Override
  public Reason notShown(LeftOut.NotShown reason) {
    return Reason.of("not-shown").with("unproven", UnprovenJson.of(circuit, reason.unproven()));
  }
}
