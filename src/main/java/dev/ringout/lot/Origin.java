package dev.ringout.lot;

import dev.ringout.check.CheckResult;
import dev.ringout.check.TestDay;
import dev.ringout.readings.Instrument;
import dev.ringout.readings.Job;
import java.time.LocalDate;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * Where a unit's readings come from.
 *
 * @param day of the test; absent where none is stated
 * @param by what each factor was; one that is not stated, or not the same in all sheets, is absent
 */
public record Origin(Optional<LocalDate> day, Map<Factor, String> by) {
  /** What is given can't be changed afterwards. */
  public Origin {
    by = Map.copyOf(by);
  }

  /** What may differ from unit to unit though the list is the same. */
  public enum Factor {
    STATION,
    METER,
    PERSON,
    CRIMP_TOOL;

    /** The word used in every output. */
    public String word() {
      return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    private String in(Job job) {
      return switch (this) {
        case STATION -> job.value("station");
        case METER -> meter(job);
        case PERSON -> job.value("operator");
        case CRIMP_TOOL -> job.value("crimp tool");
      };
    }

    private static String meter(Job job) {
      Instrument meter = job.instruments().get(0);
      return meter.number().isEmpty() ? meter.name() : meter.number();
    }
  }

  static Origin of(CheckResult result) {
    Map<Factor, String> by = new EnumMap<>(Factor.class);
    for (Factor factor : Factor.values()) {
      List<String> said =
          result.readings().jobs().stream()
              .map(factor::in)
              .filter(word -> !word.isEmpty())
              .distinct()
              .toList();
      if (said.size() == 1) {
        by.put(factor, said.get(0));
      }
    }
    return new Origin(TestDay.of(result.readings(), Optional.empty()), by);
  }

  /** What a factor was; empty where it is not stated. */
  public String of(Factor factor) {
    return by.getOrDefault(factor, "");
  }
}
