package dev.ringout.words;

import dev.ringout.check.Doubt;
import dev.ringout.compare.LeadResistance;
import dev.ringout.readings.Instrument;
import dev.ringout.source.OptionNames;
import dev.ringout.source.Problem;
import dev.ringout.source.Severity;
import dev.ringout.units.Ohms;
import dev.ringout.units.Text;
import java.util.Locale;

/** Each kind of doubt as a sentence that says what to do about it. */
public final class DoubtSentences implements Doubt.Cases<String> {

  /** Sentences need nothing but what they are made of. */
  public DoubtSentences() {
    // Nothing is kept.
  }

  @Override
  public String leadsNotNulled(Doubt.LeadsNotNulled doubt) {
    return leads(doubt.leads()) + ".";
  }

  /** The doubt about the leads as a line beside those about the files. */
  public static Problem problem(Doubt.LeadsNotNulled doubt) {
    return new Problem(
        doubt.leads().first(), "Reading", Severity.WARNING, leads(doubt.leads()), "");
  }

  private static String leads(LeadResistance.AllOff leads) {
    return Text.of(
        leads.above()
            ? "%d of %d readings across wires are higher than copper and contacts explain, the"
                + " least by %s; were the leads nulled? If not, state what they read together as"
                + " \"lead null\" on the sheet Job"
            : "%d of %d readings across wires are lower than copper can be, the least by %s;"
                + " were the leads nulled too far, or are the lengths not those of the wires?",
        leads.off(),
        leads.compared(),
        Ohms.text(leads.leastOhms()));
  }

  @Override
  public String calibrationExpired(Doubt.CalibrationExpired doubt) {
    return Text.of(
        "Calibration of %s expired on %s; the test was on %s.",
        named(doubt.instrument()), doubt.dueDay(), doubt.testDay());
  }

  @Override
  public String calibrationNotStated(Doubt.CalibrationNotStated doubt) {
    return Text.of(
        "There is no calibration date for %s (%s): write it on the sheet Job, such as 2027-03-31.",
        named(doubt.instrument()), doubt.file());
  }

  @Override
  public String calibrationNotADay(Doubt.CalibrationNotADay doubt) {
    return Text.of(
        "The calibration date \"%s\" of %s is not a date; write it like 2027-03-31.",
        doubt.text(), named(doubt.instrument()));
  }

  @Override
  public String testDayNotStated(Doubt.TestDayNotStated doubt) {
    String said = Text.of("The date of the test is not stated in %s", doubt.file());
    return doubt
        .instrument()
        .map(
            one ->
                Text.of(
                    "%s, so nobody knows whether %s, due %s, was in calibration: write it as"
                        + " \"date\" on the sheet Job.",
                    said, named(one), one.calibrationDue()))
        .orElse(said + ": write it as \"date\" on the sheet Job.");
  }

  @Override
  public String testDayNotADay(Doubt.TestDayNotADay doubt) {
    return Text.of(
        "The date of the test \"%s\" (%s) is not a date; write it like 2027-03-31.",
        doubt.text(), doubt.place());
  }

  @Override
  public String serialNumberNotStated(Doubt.SerialNumberNotStated doubt) {
    return "There is no serial number, so nobody knows which unit was tested: write it as"
        + " \"serial number\" on the sheet Job, or give "
        + OptionNames.SERIAL
        + ".";
  }

  @Override
  public String notEffective(Doubt.NotEffective doubt) {
    return Text.of(
        "The list is not for unit %s: it is effective for %s.",
        doubt.serial(), doubt.effectivity());
  }

  @Override
  public String effectivityNotUnderstood(Doubt.EffectivityNotUnderstood doubt) {
    return Text.of(
        "The effectivity \"%s\" can't be understood: write it on the sheet Header"
            + " such as 0100 to 0200; 0305; 0300 and on; or all.",
        doubt.text());
  }

  @Override
  public String testerIsInspector(Doubt.TesterIsInspector doubt) {
    return Text.of(
        "Tester and inspector are the same person, %s: the inspection is not independent.",
        doubt.name());
  }

  @Override
  public String noInspector(Doubt.NoInspector doubt) {
    return Text.of(
        "No inspector is named in %s; the list asks for one who is not the tester.", doubt.file());
  }

  @Override
  public String noTester(Doubt.NoTester doubt) {
    return Text.of(
        "No operator is named in %s, so nobody knows whether the inspector is another person.",
        doubt.file());
  }

  @Override
  public String beyondRange(Doubt.BeyondRange doubt) {
    return Text.of(
        "%s beyond the range that the job sheet gives for the instrument (%s, %s), the first at"
            + " %s.",
        doubt.count() == 1 ? "1 reading is" : doubt.count() + " readings are",
        doubt.kind().name().toLowerCase(Locale.ROOT),
        Ohms.text(doubt.rangeOhms()),
        doubt.first());
  }

  @Override
  public String withinADigit(Doubt.WithinADigit doubt) {
    return Text.of(
        "%s above the limit by less than a digit of the meter, the first at %s: write the meter's"
            + " accuracy and resolution on the sheet Job.",
        doubt.count() == 1 ? "1 join reads" : doubt.count() + " joins read", doubt.first());
  }

  private static String named(Instrument instrument) {
    String name = Sentences.named(instrument.name(), instrument.number());
    return name.isEmpty() ? "the instrument for " + instrument.use() : name;
  }
}
