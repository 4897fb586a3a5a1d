package dev.ringout.bench;

import dev.ringout.bench.BenchState.FaultState;
import dev.ringout.bench.BenchState.Open;
import dev.ringout.check.CheckResult;
import dev.ringout.circuit.Circuit;
import dev.ringout.compare.Coverage;
import dev.ringout.compare.Coverage.Tally;
import dev.ringout.compare.Judged;
import dev.ringout.compare.Unproven;
import dev.ringout.harness.Point;
import dev.ringout.store.StoredUnit;
import dev.ringout.words.Sentences;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * One unit as it stands.
 *
 * @param headline the verdict in one line
 * @param verdict in one word
 */
public record UnitPage(
    String headline,
    String verdict,
    long shown,
    long demanded,
    List<FaultState> faults,
    Open open,
    List<Proof> proof,
    List<Cavity> cavities) {
  private static final int LETTERS_OF_LIST = 16;

  /** What is given can't be changed afterwards. */
  public UnitPage {
    faults = List.copyOf(faults);
    proof = List.copyOf(proof);
    cavities = List.copyOf(cavities);
  }

  /** One kind of requirement. */
  public record Proof(String what, long shown, long demanded) {}

  /** How a cavity stands: {@code proven}, {@code failing}, {@code unproven}, {@code unused}. */
  public record Cavity(String item, String pin, String state) {}

  /** By which a unit is asked for: its key, and the beginning of its list's digest. */
  public static String id(StoredUnit unit) {
    return unit.key() + "." + unit.harness().substring(0, LETTERS_OF_LIST);
  }

  /** As all its readings show it. */
  public static UnitPage of(CheckResult result) {
    Coverage coverage = result.coverage();
    List<Proof> proof = new ArrayList<>();
    add(proof, "joins", coverage.joins());
    add(proof, "wires that others go around", coverage.wires());
    add(proof, "nets apart", coverage.isolation());
    add(proof, "insulation", coverage.insulation());
    add(proof, "switch contacts", coverage.switches());
    add(proof, "parts", coverage.parts());
    return new UnitPage(
        Sentences.verdict(result),
        result.verdict().word(),
        proof.stream().mapToLong(Proof::shown).sum(),
        proof.stream().mapToLong(Proof::demanded).sum(),
        Findings.faults(result),
        Findings.open(result),
        proof,
        cavities(result));
  }

  private static void add(List<Proof> proof, String what, Tally tally) {
    if (tally.needed() > 0) {
      proof.add(new Proof(what, tally.proven(), tally.needed()));
    }
  }

  private static List<Cavity> cavities(CheckResult result) {
    Circuit circuit = result.circuit();
    Set<Integer> failing = new HashSet<>();
    for (Judged judged : result.comparison().failing()) {
      judged.probing().points().forEach(failing::add);
    }
    result
        .diagnosis()
        .faults()
        .forEach(
            fault ->
                fault.points().stream()
                    .filter(circuit.harness().points()::contains)
                    .forEach(point -> failing.add(circuit.index(point))));
    Set<Integer> unproven = new HashSet<>();
    UnprovenPoints points = new UnprovenPoints(circuit);
    for (Unproven one : result.coverage().unproven()) {
      unproven.addAll(one.match(points));
    }
    Map<Integer, Integer> sizes = new HashMap<>();
    for (int point = 0; point < circuit.size(); point++) {
      sizes.merge(circuit.normal().of(point), 1, Integer::sum);
    }
    List<Cavity> cavities = new ArrayList<>();
    for (Point point : circuit.harness().points()) {
      int number = circuit.index(point);
      cavities.add(
          new Cavity(
              point.ref(),
              point.pin(),
              failing.contains(number)
                  ? "failing"
                  : unproven.contains(number)
                      ? "unproven"
                      : sizes.getOrDefault(circuit.normal().of(number), 1) == 1
                          ? "unused"
                          : "proven"));
    }
    return cavities;
  }
}
