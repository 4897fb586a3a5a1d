package dev.ringout.readings;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What a station carries into every test: procedure, people, instruments, the air around. It is
 * typed once and stands in every sheet that is planned with it.
 *
 * @param rows of the sheet Job, in their order, by the names that are read
 */
public record JobTemplate(Map<String, String> rows) {
  /** Nothing is carried along. */
  public static final JobTemplate NONE = new JobTemplate(Map.of());

  /** The row that says which unit it is: of a plan for one unit, never of a station. */
  public static final String SERIAL = "serial number";

  /** Rows that say what is read with: the same in a retest, where nobody writes otherwise. */
  public static final List<String> OF_EQUIPMENT =
      List.of(
          "procedure",
          "instrument",
          "instrument number",
          "calibration due",
          "continuity range",
          "meter accuracy",
          "meter resolution",
          "insulation instrument",
          "insulation instrument number",
          "insulation calibration due",
          "insulation range",
          "location");

  /** Those of them that are values with a unit. */
  public static final List<String> WITH_UNIT =
      List.of("continuity range", "meter accuracy", "meter resolution", "insulation range");

  /** What is given can't be changed afterwards. */
  public JobTemplate {
    rows = Collections.unmodifiableMap(new LinkedHashMap<>(rows));
  }

  /** The value of a row; empty where it is to be written at the bench. */
  public String value(String name) {
    return rows.getOrDefault(name, "");
  }
}
