package dev.ringout.json;

import dev.ringout.compare.Judged;
import dev.ringout.compare.NotJudged;
import dev.ringout.harness.Part;
import dev.ringout.readings.Reading;
import dev.ringout.words.NotJudgedSentences;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Why a reading was not judged, each kind with its facts. */
final class NotJudgedJson implements NotJudged.Cases<Reason> {

  /** Absent where it was judged. */
  static Optional<Map<String, Object>> of(Judged judged) {
    return judged.why().map(NotJudgedJson::of);
  }

  static Map<String, Object> of(NotJudged reason) {
    return reason.match(new NotJudgedJson()).said(reason.match(new NotJudgedSentences()));
  }

  @Override
  public Reason beyondRange(NotJudged.BeyondRange reason) {
    return Reason.of("beyond-range")
        .with("value", reason.measured().text())
        .with("rangeOhms", reason.rangeOhms());
  }

  @Override
  public Reason belowZero(NotJudged.BelowZero reason) {
    return Reason.of("below-zero").with("value", reason.measured().text());
  }

  @Override
  public Reason takenBack(NotJudged.TakenBack reason) {
    return Reason.of("taken-back").with("value", reason.measured().text());
  }

  @Override
  public Reason lessThanLeads(NotJudged.LessThanLeads reason) {
    return Reason.of("less-than-leads")
        .with("value", reason.measured().text())
        .with("leadOhms", reason.leadOhms());
  }

  @Override
  public Reason wordForJoin(NotJudged.WordForJoin reason) {
    return Reason.of("word-for-join")
        .with("value", reason.measured().text())
        .with("limitOhms", reason.limitOhms());
  }

  @Override
  public Reason mayBeAboveLimit(NotJudged.MayBeAboveLimit reason) {
    return Reason.of("may-be-above-limit")
        .with("value", reason.measured().text())
        .with("limitOhms", reason.limitOhms());
  }

  @Override
  public Reason mayBeWithinLimit(NotJudged.MayBeWithinLimit reason) {
    return Reason.of("may-be-within-limit")
        .with("value", reason.measured().text())
        .with("limitOhms", reason.limitOhms());
  }

  @Override
  public Reason tooCoarse(NotJudged.TooCoarse reason) {
    return Reason.of("too-coarse").with("ohms", reason.ohms()).with("mostOhms", reason.mostOhms());
  }

  @Override
  public Reason wordForValue(NotJudged.WordForValue reason) {
    return Reason.of("word-for-value").with("value", reason.measured().text());
  }

  @Override
  public Reason rangeNotStated(NotJudged.RangeNotStated reason) {
    return Reason.of("range-not-stated");
  }

  @Override
  public Reason rangeTooLow(NotJudged.RangeTooLow reason) {
    return Reason.of("range-too-low")
        .with("rangeOhms", reason.rangeOhms())
        .with("leastOhms", reason.leastOhms())
        .with("test", test(reason.test()));
  }

  @Override
  public Reason moreThanTooLittle(NotJudged.MoreThanTooLittle reason) {
    return Reason.of("more-than-too-little")
        .with("value", reason.measured().text())
        .with("leastOhms", reason.leastOhms())
        .with("test", test(reason.test()));
  }

  private static String test(Reading.Kind kind) {
    return kind.name().toLowerCase(Locale.ROOT);
  }

  @Override
  public Reason mayBeThePart(NotJudged.MayBeThePart reason) {
    return Reason.of("may-be-the-part")
        .with("value", reason.measured().text())
        .with("parts", labels(reason.parts()));
  }

  @Override
  public Reason noValueOfPart(NotJudged.NoValueOfPart reason) {
    return Reason.of("no-value-of-part")
        .with("value", reason.measured().text())
        .with("parts", labels(reason.parts()));
  }

  @Override
  public Reason nothingAboutPart(NotJudged.NothingAboutPart reason) {
    return Reason.of("nothing-about-part")
        .with("value", reason.measured().text())
        .with("parts", labels(reason.parts()));
  }

  private static List<String> labels(List<Part> parts) {
    return parts.stream().map(Part::label).distinct().toList();
  }

  @Override
  public Reason oneNet(NotJudged.OneNet reason) {
    return Reason.of("one-net");
  }

  @Override
  public Reason partsBetween(NotJudged.PartsBetween reason) {
    return Reason.of("parts-between").with("parts", labels(reason.parts()));
  }

  @Override
  public Reason voltsNotStated(NotJudged.VoltsNotStated reason) {
    return Reason.of("volts-not-stated");
  }

  @Override
  public Reason voltsTooLow(NotJudged.VoltsTooLow reason) {
    return Reason.of("volts-too-low")
        .with("volts", reason.volts())
        .with("leastVolts", reason.leastVolts());
  }

  @Override
  public Reason insulationMayBeEnough(NotJudged.InsulationMayBeEnough reason) {
    return Reason.of("insulation-may-be-enough").with("value", reason.measured().text());
  }

  @Override
  public Reason beepForInsulation(NotJudged.BeepForInsulation reason) {
    return Reason.of("beep-for-insulation");
  }

  @Override
  public Reason diodeNotOpened(NotJudged.DiodeNotOpened reason) {
    return Reason.of("diode-not-opened");
  }
}
