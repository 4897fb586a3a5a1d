package dev.ringout.review;

import dev.ringout.circuit.Circuit;
import dev.ringout.harness.Waiver;
import dev.ringout.source.Severity;
import dev.ringout.standards.CopperWire;
import dev.ringout.standards.Tables;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What the checks of the paper say.
 *
 * @param remarks errors first, then warnings, then notes, each in the order of the checks
 * @param waived what somebody has accepted, with who and why
 * @param notRun checks that lacked their input, with what they lacked
 * @param checks every check with what it looks for
 */
public record Review(
    List<Remark> remarks,
    List<Waived> waived,
    Map<String, Lack> notRun,
    Map<String, String> checks) {

  /** A remark that is accepted. */
  public record Waived(Remark remark, Waiver waiver) {}

  /** Every check, in the order in which they are shown. */
  static List<Check> all() {
    return List.of(
        new HeaderMissing(),
        new RevisionLetter(),
        new CrimpGauge(),
        new ContactCavity(),
        new PinCrowded(),
        new NoSuchPin(),
        new SkippedLetter(),
        new MatedPins(),
        new LugGauge(),
        new LugStud(),
        new LugsPerStud(),
        new SpliceArea(),
        new SolidWire(),
        new InsulationGrommet(),
        new StripLength(),
        new CrimpTool(),
        new CrimpPull(),
        new WireCurrent(),
        new VoltageDrop(),
        new WireVolts(),
        new WireNumberTwice(),
        new SamePointsTwice(),
        new OneEnded(),
        new StripIsland(),
        new SignalsOnNet(),
        new SignalOnNets(),
        new ShieldEnds(),
        new SplitPair(),
        new LonePoint(),
        new LookAlikePins(),
        new ColourCode(),
        new GaugeChange(),
        new UnusedCavities(),
        new CaseTwins(),
        new ItemKind());
  }

  /**
   * Runs every check.
   *
   * @param day the day by which waivers expire; absent: those that expire can't be shown to hold
   */
  public static Review of(
      Circuit circuit,
      Tables tables,
      CopperWire copper,
      List<Waiver> waivers,
      Optional<LocalDate> day) {
    Paper paper = new Paper(circuit, tables, copper);
    List<Remark> remarks = new ArrayList<>();
    Map<String, Lack> notRun = new LinkedHashMap<>();
    Map<String, String> checks = new LinkedHashMap<>();
    for (Check check : all()) {
      Findings findings = new Findings(check.rule());
      check.run(paper, findings);
      remarks.addAll(findings.remarks());
      checks.put(check.rule(), check.about());
      findings.lack().ifPresent(lack -> notRun.put(check.rule(), lack));
    }
    return waive(remarks, waivers, day, notRun, checks);
  }

  private static Review waive(
      List<Remark> remarks,
      List<Waiver> waivers,
      Optional<LocalDate> day,
      Map<String, Lack> notRun,
      Map<String, String> checks) {
    List<Remark> open = new ArrayList<>();
    List<Waived> waived = new ArrayList<>();
    List<Waiver> unused = new ArrayList<>(waivers);
    for (Remark remark : remarks) {
      Waiver accepted = null;
      for (Waiver waiver : waivers) {
        if (covers(waiver, remark)) {
          unused.remove(waiver);
          accepted = holds(waiver, day) ? waiver : accepted;
        }
      }
      if (accepted == null) {
        open.add(remark);
      } else {
        waived.add(new Waived(remark, accepted));
      }
    }
    for (Waiver waiver : waivers) {
      String about =
          "the waiver of " + waiver.rule() + " at " + waiver.subject() + " by " + waiver.who();
      if (unused.contains(waiver)) {
        open.add(waiverRemark(waiver, about + " covers nothing: remove it"));
      } else if (!holds(waiver, day)) {
        open.add(waiverRemark(waiver, about + notInForce(waiver, day)));
      }
    }
    open.sort(Comparator.comparing(Remark::severity));
    return new Review(
        List.copyOf(open),
        List.copyOf(waived),
        Collections.unmodifiableMap(notRun),
        Collections.unmodifiableMap(checks));
  }

  private static String notInForce(Waiver waiver, Optional<LocalDate> day) {
    return day.isPresent()
        ? " expired on " + waiver.until()
        : " holds until " + waiver.until() + ", but the day of the test is not given";
  }

  private static boolean holds(Waiver waiver, Optional<LocalDate> day) {
    return waiver.untilDay().isEmpty() || day.filter(one -> !waiver.isExpired(one)).isPresent();
  }

  private static boolean covers(Waiver waiver, Remark remark) {
    return waiver.rule().equalsIgnoreCase(remark.rule())
        && (waiver.subject().equals(remark.point()) || waiver.subject().equals(remark.wire()));
  }

  private static Remark waiverRemark(Waiver waiver, String text) {
    return new Remark(
        "waiver", Severity.WARNING, waiver.subject(), "", text, waiver.place().toString());
  }

  /** How many remarks are of a severity. */
  public long count(Severity severity) {
    return remarks.stream().filter(remark -> remark.severity() == severity).count();
  }
}
