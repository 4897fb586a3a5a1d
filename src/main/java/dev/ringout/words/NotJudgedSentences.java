package dev.ringout.words;

import dev.ringout.compare.Judged;
import dev.ringout.compare.NotJudged;
import dev.ringout.harness.Part;
import dev.ringout.readings.Reading;
import dev.ringout.units.Numbers;
import dev.ringout.units.Ohms;
import dev.ringout.units.Text;
import java.util.List;
import java.util.stream.Collectors;

/** Why each kind of reading that proves nothing does not, and what would. */
public final class NotJudgedSentences implements NotJudged.Cases<String> {

  /** Sentences need nothing but what they are made of. */
  public NotJudgedSentences() {
    // Nothing is kept.
  }

  /** Why a reading was not judged; empty where it was. */
  public static String why(Judged judged) {
    return judged.why().map(reason -> reason.match(new NotJudgedSentences())).orElse("");
  }

  @Override
  public String beyondRange(NotJudged.BeyondRange reason) {
    return Text.of(
        "%s is beyond the range of %s that the sheet Job gives",
        reason.measured().text(), Ohms.text(reason.rangeOhms()));
  }

  @Override
  public String belowZero(NotJudged.BelowZero reason) {
    return Text.of(
        "%s is below zero, which no resistance can be: there may be voltage on the circuit; treat it"
            + " as live until you have proved it dead; or the leads were nulled too far",
        reason.measured().text());
  }

  @Override
  public String takenBack(NotJudged.TakenBack reason) {
    return Text.of(
        "\"%s\": it does not count, and earlier readings of the same points do not either; read"
            + " it again",
        reason.measured().text());
  }

  @Override
  public String lessThanLeads(NotJudged.LessThanLeads reason) {
    return Text.of(
        "%s is less than the leads alone read, %s: were they nulled, or is there voltage on the"
            + " circuit?",
        reason.measured().text(), Ohms.text(reason.leadOhms()));
  }

  @Override
  public String wordForJoin(NotJudged.WordForJoin reason) {
    return Text.of(
        "\"%s\" is not a value; the limit is %s (\"words\" on the sheet Limits says where a word is"
            + " enough)",
        reason.measured().text(), Ohms.text(reason.limitOhms()));
  }

  @Override
  public String mayBeAboveLimit(NotJudged.MayBeAboveLimit reason) {
    return Text.of(
        "\"%s\" may still be above the limit of %s",
        reason.measured().text(), Ohms.text(reason.limitOhms()));
  }

  @Override
  public String mayBeWithinLimit(NotJudged.MayBeWithinLimit reason) {
    return Text.of(
        "\"%s\" says nothing about the limit of %s",
        reason.measured().text(), Ohms.text(reason.limitOhms()));
  }

  @Override
  public String tooCoarse(NotJudged.TooCoarse reason) {
    return Text.of(
        "%s may be up to %s: too coarse to tell",
        Ohms.text(reason.ohms()), Ohms.text(reason.mostOhms()));
  }

  @Override
  public String wordForValue(NotJudged.WordForValue reason) {
    return Text.of(
        "\"%s\" is not a value (\"words\" on the sheet Limits says where a word is enough)",
        reason.measured().text());
  }

  @Override
  public String rangeNotStated(NotJudged.RangeNotStated reason) {
    return "OL says only \"above the range\", and the job sheet gives no \"insulation range\"";
  }

  @Override
  public String rangeTooLow(NotJudged.RangeTooLow reason) {
    return provesNothing(
        "OL on a " + Ohms.text(reason.rangeOhms()) + " range", reason.leastOhms(), reason.test());
  }

  @Override
  public String moreThanTooLittle(NotJudged.MoreThanTooLittle reason) {
    return provesNothing(reason.measured().text(), reason.leastOhms(), reason.test());
  }

  private static String provesNothing(String read, double leastOhms, Reading.Kind test) {
    return Text.of(
        "%s proves nothing about a %s limit%s",
        read, Ohms.text(leastOhms), test == Reading.Kind.CONTINUITY ? " for \"not joined\"" : "");
  }

  @Override
  public String noValueOfPart(NotJudged.NoValueOfPart reason) {
    return Text.of(
        "\"%s\" is not a value of the %s", reason.measured().text(), names(reason.parts()));
  }

  @Override
  public String mayBeThePart(NotJudged.MayBeThePart reason) {
    return Text.of(
        "the %s alone may read as little: this shows no wire; lift one end of it and read again",
        names(reason.parts()));
  }

  @Override
  public String nothingAboutPart(NotJudged.NothingAboutPart reason) {
    return Text.of("%s says nothing about the %s", reason.measured().text(), names(reason.parts()));
  }

  @Override
  public String oneNet(NotJudged.OneNet reason) {
    return "both sides are one net: no insulation lies between them";
  }

  @Override
  public String partsBetween(NotJudged.PartsBetween reason) {
    return Text.of(
        "the %s lies between the two sides: disconnect it, or tie both its ends to one side",
        names(reason.parts()));
  }

  @Override
  public String voltsNotStated(NotJudged.VoltsNotStated reason) {
    return "the test volts are not given, in its row or as \"insulation volts\" on the sheet Job";
  }

  @Override
  public String voltsTooLow(NotJudged.VoltsTooLow reason) {
    return Text.of(
        "taken at %s V; the limit asks for %s V",
        Numbers.plain(reason.volts()), Numbers.plain(reason.leastVolts()));
  }

  @Override
  public String insulationMayBeEnough(NotJudged.InsulationMayBeEnough reason) {
    return Text.of("\"%s\" may be above the limit", reason.measured().text());
  }

  @Override
  public String beepForInsulation(NotJudged.BeepForInsulation reason) {
    return "a beep is not an insulation reading";
  }

  @Override
  public String diodeNotOpened(NotJudged.DiodeNotOpened reason) {
    return "neither way conducts: the diode is missing, or this meter does not open a diode;"
        + " use its diode range";
  }

  private static String names(List<Part> parts) {
    return parts.stream().map(Part::label).distinct().collect(Collectors.joining(", "));
  }
}
