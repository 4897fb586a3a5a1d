package dev.ringout.check;

import dev.ringout.circuit.JoinLimits;
import dev.ringout.compare.Comparison;
import dev.ringout.compare.Judged;
import dev.ringout.compare.Outcome;
import dev.ringout.compare.ValueVerdict;
import dev.ringout.diagnose.Diagnosis;
import dev.ringout.diagnose.Fault;
import dev.ringout.readings.Reading;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The values of the joins against what their wires account for.
 *
 * @param counts how many joins that were read have each verdict
 * @param fixedLimit how many were compared with the fixed limit for want of a computed one
 * @param otherMetal how many of these for a wire of a metal without a published value
 * @param unlike the low ones, and the high ones that a limit in the file lets pass, that no fault
 *     accounts for
 * @param cantTell those that the meter is too coarse for
 */
public record Values(
    Map<ValueVerdict, Long> counts,
    long fixedLimit,
    long otherMetal,
    List<Judged> unlike,
    List<Judged> cantTell) {

  static Values of(Comparison comparison, Diagnosis diagnosis) {
    Map<ValueVerdict, Long> counts = new EnumMap<>(ValueVerdict.class);
    long fixed = 0;
    long otherMetal = 0;
    Set<Judged> shown = new LinkedHashSet<>();
    for (Fault fault : diagnosis.faults()) {
      shown.addAll(fault.finding().readings());
    }
    for (Judged judged : comparison.inForce()) {
      if (judged.expected().isJoined()
          && judged.reading().kind() == Reading.Kind.CONTINUITY
          && judged.reading().measured().made()) {
        counts.merge(judged.value(), 1L, Long::sum);
        fixed += judged.limit().basis().isFixed() ? 1 : 0;
        otherMetal += judged.limit().basis() == JoinLimits.Basis.OTHER_METAL ? 1 : 0;
      }
    }
    List<Judged> unlike =
        comparison.inForce().stream()
            .filter(judged -> judged.outcome() == Outcome.CONFORMS)
            .filter(
                judged -> judged.value() == ValueVerdict.LOW || judged.value() == ValueVerdict.HIGH)
            .filter(judged -> !shown.contains(judged))
            .toList();
    List<Judged> cantTell =
        comparison.inForce().stream()
            .filter(judged -> judged.value() == ValueVerdict.CANT_TELL)
            .toList();
    return new Values(Map.copyOf(counts), fixed, otherMetal, unlike, cantTell);
  }

  /** How many joins have a verdict. */
  public long count(ValueVerdict verdict) {
    return counts.getOrDefault(verdict, 0L);
  }
}
