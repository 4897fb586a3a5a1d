package dev.ringout.review;

import dev.ringout.harness.Crimp;
import dev.ringout.harness.Wire;
import dev.ringout.source.Severity;
import dev.ringout.standards.Tables.Entry;
import dev.ringout.units.Gauge;
import dev.ringout.units.Numbers;
import dev.ringout.units.Text;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Pull-test samples against the standard that the log names. */
final class CrimpPull implements Check {
  @Override
  public String rule() {
    return "crimp-pull";
  }

  @Override
  public String about() {
    return "pull-test samples hold; after a bad one, which crimps are in doubt";
  }

  @Override
  public void run(Paper paper, Findings findings) {
    List<Crimp> crimps = paper.harness().crimps();
    for (int i = 0; i < crimps.size(); i++) {
      if (crimps.get(i).pullNewtons().isPresent()) {
        sample(paper, crimps, i, crimps.get(i).pullNewtons().getAsDouble(), findings);
      }
    }
    findings.notRun(Lack.CRIMP_PULLS);
  }

  private static void sample(
      Paper paper, List<Crimp> crimps, int number, double newtons, Findings findings) {
    Crimp crimp = crimps.get(number);
    if (crimp.standard().isEmpty()) {
      findings.say(
          Severity.WARNING,
          crimp.wire(),
          "the pull of "
              + crimp.wire()
              + " names no standard, and the standards differ by more than half",
          COMMON);
      return;
    }
    Optional<Gauge> gauge = paper.wire(crimp.wire()).flatMap(Wire::gauge);
    Optional<Entry> least = gauge.flatMap(one -> least(paper, crimp.standard(), one));
    if (least.isEmpty()) {
      findings.say(
          Severity.WARNING,
          crimp.wire(),
          Text.of(
              "%s has no minimum pull for %s; there are %s",
              crimp.standard(),
              gauge.map(Gauge::label).orElse("a wire without a gauge"),
              standards(paper)),
          COMMON);
      return;
    }
    findings.looked();
    if (newtons < least.get().number("newtons")) {
      String at = gauge.map(Gauge::label).orElse("") + doubt(paper, crimps, number);
      findings.say(
          Findings.breachOf(least.get()),
          crimp.wire(),
          cameOff(crimp, newtons, least.get(), at),
          least.get().citation());
    }
  }

  private static String cameOff(Crimp crimp, double newtons, Entry least, String at) {
    return Text.of(
        "the sample %s came off at %s N; %s asks for %s N at %s",
        crimp.wire(), Numbers.rounded(newtons, 3), least.get("standard"), least.get("newtons"), at);
  }

  private static Optional<Entry> least(Paper paper, String standard, Gauge gauge) {
    return gauge
        .asAwg()
        .flatMap(
            awg ->
                paper.rows("crimp-pull").stream()
                    .filter(row -> row.get("standard").equalsIgnoreCase(standard))
                    .filter(row -> row.get("awg").equals(awg.size()))
                    .findFirst());
  }

  private static String standards(Paper paper) {
    return paper.rows("crimp-pull").stream()
        .map(row -> row.get("standard"))
        .distinct()
        .collect(Collectors.joining(", "));
  }

  /** Every crimp of the same tool since its last good sample. */
  private static String doubt(Paper paper, List<Crimp> crimps, int failed) {
    List<String> doubtful = new ArrayList<>();
    for (int i = failed - 1; i >= 0; i--) {
      Crimp crimp = crimps.get(i);
      if (!crimp.tool().equals(crimps.get(failed).tool())) {
        continue;
      }
      Optional<Gauge> gauge = paper.wire(crimp.wire()).flatMap(Wire::gauge);
      Optional<Entry> least = gauge.flatMap(one -> least(paper, crimp.standard(), one));
      if (crimp.pullNewtons().isPresent()
          && least.isPresent()
          && crimp.pullNewtons().getAsDouble() >= least.get().number("newtons")) {
        break;
      }
      doubtful.add(0, crimp.wire());
    }
    return doubtful.isEmpty()
        ? ""
        : "; in doubt since the last good sample: " + String.join(", ", doubtful);
  }
}
