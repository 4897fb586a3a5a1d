package dev.ringout.text;

import dev.ringout.check.CheckResult;
import dev.ringout.compare.Comparison;
import dev.ringout.compare.Judged;
import dev.ringout.readings.Reading;
import dev.ringout.readings.ReadingSet;
import dev.ringout.units.Text;

/** How many readings there are of each kind, and what they leave out, in one line. */
final class ReadingCounts {
  private ReadingCounts() {}

  static String of(CheckResult result) {
    return counts(result.comparison())
        + withoutVolts(result.readings())
        + withoutRange(result.comparison());
  }

  private static String counts(Comparison comparison) {
    String kinds =
        Text.of(
            "%d continuity, %d insulation",
            comparison.made(Reading.Kind.CONTINUITY), comparison.made(Reading.Kind.INSULATION));
    int replaced = comparison.replaced().size();
    long words = comparison.unquantified();
    return kinds
        + (replaced > 0 ? Text.of(", %d replaced by later ones", replaced) : "")
        + (words > 0 ? Text.of(", %d with a word and no value", words) : "");
  }

  private static String withoutVolts(ReadingSet readings) {
    long without =
        readings.readings().stream()
            .filter(reading -> reading.kind() == Reading.Kind.INSULATION)
            .filter(reading -> reading.measured().made() && reading.volts().isEmpty())
            .count();
    boolean sheetGives =
        readings.jobs().stream().anyMatch(job -> job.insulationVolts().isPresent());
    return without == 0
        ? ""
        : Text.of(
            "; %d of insulation without volts in their row%s",
            without, sheetGives ? ", which the sheet Job gives for all" : ": not judged");
  }

  private static String withoutRange(Comparison comparison) {
    boolean unknown =
        comparison.inForce().stream()
            .map(Judged::reading)
            .filter(reading -> reading.kind() == Reading.Kind.CONTINUITY)
            .anyMatch(reading -> reading.measured().isAboveUnknownRange());
    return unknown ? "; OL counts as open, since no \"continuity range\" is given" : "";
  }
}
