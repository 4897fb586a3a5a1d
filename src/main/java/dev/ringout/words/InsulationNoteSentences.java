package dev.ringout.words;

import dev.ringout.check.InsulationNote;
import dev.ringout.harness.Part;
import dev.ringout.units.Numbers;
import dev.ringout.units.Ohms;
import dev.ringout.units.Text;
import java.util.List;
import java.util.stream.Collectors;

/** What each kind of note on the insulation readings says, and what to do about it. */
public final class InsulationNoteSentences implements InsulationNote.Cases<String> {

  /** Sentences need nothing but what they are made of. */
  public InsulationNoteSentences() {
    // Nothing is kept.
  }

  /** Every note in words. */
  public static List<String> of(List<InsulationNote> notes) {
    return notes.stream().map(note -> note.match(new InsulationNoteSentences())).toList();
  }

  @Override
  public String strained(InsulationNote.Strained note) {
    return Text.of(
        "%s was tested at %s V; %s stands only %s V: if it was not disconnected, prove it again.",
        note.reading().reading().subject(),
        Numbers.plain(note.volts()),
        note.parts().stream().map(Part::label).distinct().collect(Collectors.joining(", ")),
        Numbers.plain(note.parts().get(0).maxTestVolts().orElse(0)));
  }

  @Override
  public String warmer(InsulationNote.Warmer note) {
    return Text.of(
        "The readings were taken at %s °C. By a rule of thumb (halves for each 10 °C) the"
            + " lowest, %s, would be %s at 20 °C; it is shown only; no verdict uses it.",
        Numbers.plain(note.celsius()),
        Ohms.text(note.lowestOhms()),
        Ohms.text(note.lowestAtReferenceOhms()));
  }
}
