package dev.ringout.text;

import dev.ringout.jobs.MetersJob;
import dev.ringout.jobs.PracticeJob;
import dev.ringout.jobs.TryMeterJob;
import dev.ringout.meter.MeterReading;
import dev.ringout.meter.Sample;
import dev.ringout.meter.drive.Trial;
import dev.ringout.units.Numbers;
import dev.ringout.units.Ohms;
import dev.ringout.units.Text;
import dev.ringout.words.MeterWords;
import java.util.LinkedHashMap;
import java.util.Map;

/** Meters on a terminal. */
public final class MetersText {
  private MetersText() {}

  /** Ports and profiles. */
  public static String write(MetersJob.Result result, Look look) {
    Page page = new Page(look);
    page.heading("Serial ports");
    result
        .noPorts()
        .ifPresent(trouble -> page.paragraph("  ", MeterWords.failure(trouble.failure())));
    if (result.ports().isEmpty() && result.noPorts().isEmpty()) {
      page.paragraph("  ", "none");
    }
    result.ports().forEach(port -> page.paragraph("  " + port.path() + "  ", port.about()));
    page.heading("Profiles");
    for (MetersJob.Listed listed : result.profiles()) {
      page.paragraph(
          Text.of("  %-22s", listed.profile().name()),
          listed.profile().about() + (listed.own() ? " (your own)" : ""));
    }
    page.blank();
    page.paragraph("", "Try one: ringout meters --try ADDRESS --profile PROFILE");
    return page.toString();
  }

  /** What is to be done while it listens. */
  public static String beforeTrial(int seconds) {
    return Text.of(
        "For %s: lift the probes, then hold them firmly together.%n%n",
        Numbers.count(seconds, "second"));
  }

  /** What was understood. */
  public static String afterTrial(TryMeterJob.Result result, Look look) {
    Page page = new Page(look);
    page.blank();
    page.paragraph("Address   ", result.address());
    result.profile().ifPresent(profile -> page.paragraph("Profile   ", profile.name()));
    result
        .identity()
        .ifPresent(
            identity ->
                page.paragraph(
                    "Meter     ",
                    identity.text().isEmpty()
                        ? "gives no name"
                        : MeterWords.visible(identity.text())));
    result.trial().ifPresent(trial -> seen(page, trial));
    if (result.trial().isPresent()) {
      page.paragraph(
          "Leads     ",
          result.fourWire()
              ? "not needed with four wires"
              : result
                  .leads()
                  .map(leads -> "the job's lead null is " + leads.text())
                  .orElse("not measured lately: hold the probes together and add --leads"));
      page.paragraph("Volts     ", MeterWords.VOLTS_BY_HAND);
    }
    return page.toString();
  }

  private static void seen(Page page, Trial trial) {
    Map<String, Integer> understood = new LinkedHashMap<>();
    for (Sample sample : trial.samples()) {
      understood.merge(
          MeterWords.visible(sample.raw()) + " is " + MeterWords.shown(sample.shown()),
          1,
          Integer::sum);
    }
    page.paragraph("Values    ", Numbers.count(trial.samples().size(), "value"));
    understood.entrySet().stream()
        .limit(6)
        .forEach(
            entry ->
                page.paragraph(
                    "          ",
                    entry.getKey()
                        + (entry.getValue() > 1 ? ", " + entry.getValue() + " times" : "")));
    page.paragraph(
        "Settled   ",
        trial.reading().map(MeterReading::measured).map(one -> one.text()).orElse("nothing"));
    page.paragraph(
        "Settles   ",
        trial.settleMillis().isPresent()
            ? "in " + trial.settleMillis().getAsInt() + " ms after a touch"
            : "not seen: no touch, or it never stood still");
    page.paragraph(
        "Noise     ",
        trial.noiseOhms().isPresent()
            ? "± " + Ohms.text(trial.noiseOhms().getAsDouble())
            : "not seen: it never stood still");
  }

  /** Where a practice meter answers. */
  public static String serving(PracticeJob.Running running, Look look) {
    Page page = new Page(look);
    page.paragraph("", "PRACTICE METER. It does not measure a real unit.");
    running.addresses().forEach(address -> page.paragraph("  ", address));
    if (!running.slips().isEmpty()) {
      page.paragraph("", Numbers.count(running.slips().size(), "slip") + " planted.");
    }
    page.paragraph("", "It answers until it is stopped (Ctrl-C).");
    return page.toString();
  }
}
