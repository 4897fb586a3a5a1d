package dev.ringout.words;

import dev.ringout.diagnose.Fault;
import dev.ringout.diagnose.Fault.Pattern;
import dev.ringout.diagnose.Move;
import dev.ringout.diagnose.SwitchFault;
import dev.ringout.standards.LookAlikes;
import dev.ringout.units.Text;
import java.util.List;
import java.util.stream.Stream;

/** What to look at before anything is moved. */
final class FaultAdvice implements Fault.Cases<String> {
  private static final String LOOK_AT_THE_RUN =
      "Look at the first cavity of the run, and whether a spare was counted, before moving"
          + " anything.";

  private static final String READ_EACH_JOINT =
      "Null the leads, read again while flexing the wire, then each joint by itself.";

  @Override
  public String open(Fault.Open open) {
    return open.suspects().get(0).isWire()
        ? "Look for a contact that is not home or a bad crimp at both ends; tug the wire gently."
        : "Look whether it is fitted and tight.";
  }

  @Override
  public String shorted(Fault.Shorted shorted) {
    return (shorted.equivalents().isEmpty()
            ? ""
            : "Read that contact by itself in both positions. ")
        + "Unmate connectors one by one until it clears; look for whiskers, bent pins and jumpers.";
  }

  @Override
  public String miswire(Fault.Miswire miswire) {
    return lookAlikes(miswire) + where(miswire);
  }

  @Override
  public String highResistance(Fault.HighResistance high) {
    return READ_EACH_JOINT;
  }

  @Override
  public String highWire(Fault.HighWire high) {
    return "Read the print on the wire, look at the crimps at both ends, and measure its length.";
  }

  @Override
  public String unequalWire(Fault.UnequalWire unequal) {
    return READ_EACH_JOINT;
  }

  @Override
  public String wrongGauge(Fault.WrongGauge wrong) {
    return "Read the print on the wire, or measure over a bare strand end; where it is as"
        + " listed, read each joint by itself and measure the length.";
  }

  @Override
  public String lowInsulation(Fault.LowInsulation low) {
    return low.places().isEmpty()
        ? "Discharge, clean, and repeat; then part the net to find the place."
        : "Discharge, unmate, dry and clean it, and repeat the readings before touching a wire.";
  }

  @Override
  public String wrongPart(Fault.WrongPart wrong) {
    return "Read it by itself, with one end lifted, before replacing it.";
  }

  @Override
  public String wrongSwitch(Fault.WrongSwitch wrong) {
    return wrong.how() == SwitchFault.STUCK
        ? "Look whether the actuator reaches it; then read the contact by itself in both positions."
        : "Read the contacts at the switch in both positions before moving a wire.";
  }

  @Override
  public String misread(Fault.Misread misread) {
    return "Read it again at the points that the sheet names, flexing the wire, before anything"
        + " is touched.";
  }

  @Override
  public String slippedRows(Fault.SlippedRows slipped) {
    return Text.of(
        "Read row %d, the rows before and after it, and the rest of the sheet again. Do not rewire"
            + " anything.",
        slipped.first().reading().place().row());
  }

  @Override
  public String misscaled(Fault.Misscaled fault) {
    return fault.wholeSheet()
        ? "Put the unit right in the column Unit, once a few readings have confirmed it. Do not"
            + " rewire anything."
        : "Read there once more, with the unit that the meter shows.";
  }

  @Override
  public String exchangedRows(Fault.ExchangedRows fault) {
    return "Read both rows again. Do not rewire anything.";
  }

  @Override
  public String leadsNotNulled(Fault.LeadsNotNulled leads) {
    return "Hold the leads together, null the meter or note what it shows as \"lead null\" on the"
        + " sheet Job, and read again.";
  }

  @Override
  public String onPaper(Fault.OnPaper paper) {
    return "Ask whoever keeps the list. Do not rewire before you have the answer.";
  }

  private static String where(Fault.Miswire miswire) {
    if (miswire.arrangement().isPresent()) {
      return switch (miswire.arrangement().get()) {
        case PLUGS_CROSSED ->
            "Look at the labels and keys of both plugs and of what they mate with; leave the wires"
                + " alone.";
        case MIRRORED, MIRRORED_ROW ->
            "Look which side the drawing shows, the mating face or the wire side, before moving"
                + " anything.";
        case ROTATED -> "Look at the key and at pin 1 of the insert before moving anything.";
        case SHIFTED -> LOOK_AT_THE_RUN;
        case RING ->
            "They were probably loaded from the wrong rows: read the sleeves there before"
                + " moving anything.";
      };
    }
    if (miswire.pattern() == Pattern.SHIFT) {
      return LOOK_AT_THE_RUN;
    }
    if (miswire.pattern() == Pattern.SWAP) {
      return miswire.equivalents().isEmpty()
          ? "Read the sleeves there before moving anything."
          : "Ohms can't tell which end: read the sleeves at both ends, or read from a break in"
              + " between, before moving anything.";
    }
    return "Look at that cavity and its neighbours, and read the sleeve, before moving anything.";
  }

  /**
   * Pins that are taken for each other: then the list or the sleeve was misread. One such pair
   * among many ends that one mistake put elsewhere is chance.
   */
  private static String lookAlikes(Fault.Miswire miswire) {
    return Stream.concat(Stream.of(miswire.moves()), miswire.equivalents().stream())
        .map(FaultAdvice::lookAlikes)
        .filter(said -> !said.isEmpty())
        .findFirst()
        .orElse("");
  }

  private static String lookAlikes(List<Move> moves) {
    LookAlikes lookAlikes = LookAlikes.published();
    List<Move> alike =
        moves.stream()
            .filter(move -> lookAlikes.areAlike(move.from().pin(), move.to().pin()))
            .toList();
    if (alike.isEmpty() || 2 * alike.size() < moves.size()) {
      return "";
    }
    return Text.of(
        "%s and %s look alike: read the list again. ",
        alike.get(0).from().pin(), alike.get(0).to().pin());
  }
}
