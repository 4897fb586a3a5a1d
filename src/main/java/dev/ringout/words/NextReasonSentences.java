package dev.ringout.words;

import dev.ringout.circuit.Circuit;
import dev.ringout.diagnose.NextReason;
import dev.ringout.units.Text;

/** Why each kind of next reading is worth making. */
final class NextReasonSentences implements NextReason.Cases<String> {
  private final Circuit circuit;

  NextReasonSentences(Circuit circuit) {
    this.circuit = circuit;
  }

  @Override
  public String tellsApart(NextReason.TellsApart reason) {
    return "tells what it is";
  }

  @Override
  public String acrossTheOpen(NextReason.AcrossTheOpen reason) {
    return Text.of("straight across %s, to confirm that it is open", reason.conductor().label());
  }

  @Override
  public String atTheseVeryPoints(NextReason.AtTheseVeryPoints reason) {
    return "once more, at these very points";
  }

  @Override
  public String rowOnceMore(NextReason.RowOnceMore reason) {
    return Text.of("row %d once more", reason.row().row());
  }

  @Override
  public String aloneShowsIt(NextReason.AloneShowsIt reason) {
    return "once more, before anything is touched: this reading alone shows it";
  }

  @Override
  public String leakOfTheTwo(NextReason.LeakOfTheTwo reason) {
    return "between the two alone: low here, the leak is theirs";
  }

  @Override
  public String notMeasured(NextReason.NotMeasured reason) {
    return "on the sheet, not measured";
  }

  @Override
  public String notJoined(NextReason.NotJoined reason) {
    return "no reading joins the two";
  }

  @Override
  public String notThrough(NextReason.NotThrough reason) {
    return "no good reading goes through " + reason.conductor().label();
  }

  @Override
  public String owed(NextReason.Owed reason) {
    return UnprovenSentences.why(circuit, reason.unproven());
  }
}
