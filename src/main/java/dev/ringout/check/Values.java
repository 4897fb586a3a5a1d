package dev.ringout.check;

import dev.ringout.circuit.Expected.Joined;
import dev.ringout.compare.Comparison;
import dev.ringout.compare.Judged;
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
 * @param fixedLimit how many were held against the fixed limit for want of a computed one
 * @param low the low ones that no fault accounts for
 */
public record Values(Map<ValueVerdict, Long> counts, long fixedLimit, List<Judged> low) {

  static Values of(Comparison comparison, Diagnosis diagnosis) {
    Map<ValueVerdict, Long> counts = new EnumMap<>(ValueVerdict.class);
    long fixed = 0;
    Set<Judged> shown = new LinkedHashSet<>();
    for (Fault fault : diagnosis.faults()) {
      shown.addAll(fault.finding().readings());
    }
    for (Judged judged : comparison.inForce()) {
      if (judged.expected() instanceof Joined
          && judged.reading().kind() == Reading.Kind.CONTINUITY
          && judged.reading().measured().made()) {
        counts.merge(judged.value(), 1L, Long::sum);
        fixed += judged.limit().basis().isFixed() ? 1 : 0;
      }
    }
    List<Judged> low =
        comparison.inForce().stream()
            .filter(judged -> judged.value() == ValueVerdict.LOW && !shown.contains(judged))
            .toList();
    return new Values(Map.copyOf(counts), fixed, low);
  }

  /** How many joins have a verdict. */
  public long count(ValueVerdict verdict) {
    return counts.getOrDefault(verdict, 0L);
  }
}
