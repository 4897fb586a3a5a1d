package dev.ringout.review;

import dev.ringout.harness.Crimp;
import dev.ringout.harness.Wire;
import dev.ringout.source.Severity;
import dev.ringout.standards.ContactSizes.ContactSize;
import dev.ringout.standards.Tables.Entry;
import dev.ringout.units.Gauge;
import dev.ringout.units.Text;
import java.util.Locale;
import java.util.Optional;

/** The tool, positioner and selector of each crimp that was logged. */
final class CrimpTool implements Check {
  @Override
  public String rule() {
    return "crimp-tool";
  }

  @Override
  public String about() {
    return "tool, positioner and setting belong to the contact and the wire";
  }

  @Override
  public void run(Paper paper, Findings findings) {
    for (Crimp crimp : paper.harness().crimps()) {
      Optional<Wire> wire = paper.wire(crimp.wire());
      if (wire.isEmpty()) {
        findings.say(
            Severity.WARNING,
            crimp.wire(),
            "the crimp log names the wire " + crimp.wire() + ", which is not listed",
            COMMON);
        continue;
      }
      if (!crimp.tool().isEmpty()) {
        findings.looked();
        logged(paper, crimp, wire.get(), findings);
      }
    }
    findings.notRun(Lack.CRIMP_TOOLS);
  }

  private static void logged(Paper paper, Crimp crimp, Wire wire, Findings findings) {
    String tool = crimp.tool().toUpperCase(Locale.ROOT);
    String contact = crimp.contact().toUpperCase(Locale.ROOT);
    String size = paper.contactSize(contact).map(ContactSize::size).orElse("");
    String awg = wire.gauge().flatMap(Gauge::asAwg).map(Gauge.Awg::size).orElse("");
    for (Entry row : paper.crimpTools().rows(contact, size, awg)) {
      boolean fits = row.get("tool").equals(tool);
      if (fits && differ(crimp.setting(), row.get("selector"))) {
        findings.say(
            Findings.breachOf(row),
            wire,
            Text.of(
                "%s, AWG %s, was crimped with %s at selector %s; the table says %s",
                crimp.wire(), awg, tool, crimp.setting(), row.get("selector")),
            row.citation());
      }
      if (fits
          && differ(
              crimp.positioner().toUpperCase(Locale.ROOT),
              row.get("positioner").toUpperCase(Locale.ROOT))) {
        findings.say(
            Findings.breachOf(row),
            wire,
            Text.of(
                "%s: %s in %s takes positioner %s, not %s",
                crimp.wire(), contact, tool, row.get("positioner"), crimp.positioner()),
            row.citation());
      }
    }
  }

  /** Whether both are said, and not the same. */
  private static boolean differ(String logged, String listed) {
    return !logged.isEmpty() && !listed.isEmpty() && !listed.equals(logged);
  }
}
