package dev.ringout.readings;

import java.util.Collections;
import java.util.LinkedHashMap;
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

  /** What is given can't be changed afterwards. */
  public JobTemplate {
    rows = Collections.unmodifiableMap(new LinkedHashMap<>(rows));
  }

  /** The value of a row; empty where it is to be written at the bench. */
  public String value(String name) {
    return rows.getOrDefault(name, "");
  }
}
