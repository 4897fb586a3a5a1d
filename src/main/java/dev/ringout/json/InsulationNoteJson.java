package dev.ringout.json;

import dev.ringout.check.InsulationNote;
import dev.ringout.harness.Part;
import dev.ringout.words.InsulationNoteSentences;
import java.util.Map;

/** Notes on the insulation readings, each kind with its facts. */
final class InsulationNoteJson implements InsulationNote.Cases<Reason> {
  static Map<String, Object> of(InsulationNote note) {
    return note.match(new InsulationNoteJson()).said(note.match(new InsulationNoteSentences()));
  }

  @Override
  public Reason strained(InsulationNote.Strained note) {
    return Reason.of("strained")
        .with("reading", note.reading().reading().place().toString())
        .with("volts", note.volts())
        .with("parts", note.parts().stream().map(Part::label).distinct().toList())
        .with("bearsVolts", note.parts().get(0).maxTestVolts().orElse(0));
  }

  @Override
  public Reason warmer(InsulationNote.Warmer note) {
    return Reason.of("warmer")
        .with("celsius", note.celsius())
        .with("lowestOhms", note.lowestOhms())
        .with("lowestAt20Ohms", note.lowestAtReferenceOhms());
  }
}
