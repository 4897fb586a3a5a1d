package dev.ringout.record;

import dev.ringout.harness.Limits;
import dev.ringout.readings.Job;
import dev.ringout.record.RecordBlock.Heading;
import dev.ringout.record.RecordBlock.Table;
import dev.ringout.units.Numbers;
import dev.ringout.units.Ohms;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** What the readings were compared with, and where each value comes from. */
final class LimitsUsed {
  private static final String LIST = "the list";
  private static final String PRACTICE = "usual: common practice, no source";

  private final Limits used;
  private final Limits usual;
  private final List<List<String>> rows = new ArrayList<>();

  private LimitsUsed(Limits used) {
    this.used = used;
    this.usual = Limits.usual(used.switchContactOhms());
  }

  static List<RecordBlock> of(TestRecord record) {
    LimitsUsed limits = new LimitsUsed(record.result().harness().limits());
    limits.write(record.result().readings().jobs());
    return List.of(
        new Heading(2, "Limits used"),
        new Table("Limits", List.of("Limit", "Value", "From"), limits.rows, -1));
  }

  private void write(List<Job> jobs) {
    OptionalDouble given = used.closedMaxOhms();
    add(
        "joined, at most",
        given.isPresent()
            ? Ohms.text(given.getAsDouble())
            : "computed for each way from gauge and length; else "
                + Ohms.text(used.fixedClosedMaxOhms()),
        given.isPresent() ? LIST : PRACTICE);
    add(
        "apart, at least",
        Ohms.text(used.openMinOhms()),
        of(used.openMinOhms(), usual.openMinOhms()));
    add(
        "tolerance on what is computed",
        Numbers.plain(used.tolerancePercent()) + " %",
        of(used.tolerancePercent(), usual.tolerancePercent()));
    add(
        "one crimp and mated contact",
        Ohms.said(used.contactOhms()),
        of(used.contactOhms(), usual.contactOhms()));
    add(
        "one closed switch contact",
        Ohms.said(used.switchContactOhms()),
        "the list, or the table switch-contacts");
    temperature(jobs);
    leads(jobs);
    if (used.demands().insulationTest()) {
      add(
          "insulation, at least",
          Ohms.text(used.insulationMinOhms()),
          used.insulationMinOhms() == usual.insulationMinOhms()
              ? "usual: US Army SB 740-91-01"
              : LIST);
      add(
          "insulation volts",
          Numbers.plain(used.insulationVolts()) + " V",
          used.insulationVolts() == usual.insulationVolts()
              ? "usual: MIL-DTL-24558B; MIL-STD-202H method 302, condition B"
              : LIST);
    } else {
      add("insulation", "not tested", LIST);
    }
  }

  private void temperature(List<Job> jobs) {
    List<String> stated =
        jobs.stream()
            .flatMap(job -> job.meter().celsius().stream().boxed())
            .distinct()
            .map(celsius -> Numbers.plain(celsius) + " °C")
            .toList();
    add(
        "temperature of the wires",
        stated.isEmpty() ? Numbers.plain(used.celsius()) + " °C" : String.join("; ", stated),
        stated.isEmpty() ? of(used.celsius(), usual.celsius()) : "the sheet Job");
  }

  private void leads(List<Job> jobs) {
    List<String> stated =
        jobs.stream()
            .flatMap(job -> job.meter().leadOhms().stream().boxed())
            .distinct()
            .map(Ohms::said)
            .toList();
    add(
        "leads still in the readings",
        stated.isEmpty() ? Ohms.said(used.meterOhms()) : String.join("; ", stated),
        stated.isEmpty() ? of(used.meterOhms(), usual.meterOhms()) : "the sheet Job");
  }

  private static String of(double value, double usual) {
    return value == usual ? PRACTICE : LIST;
  }

  private void add(String limit, String value, String from) {
    rows.add(List.of(limit, value, from));
  }
}
