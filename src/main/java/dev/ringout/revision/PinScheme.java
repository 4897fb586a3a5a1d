package dev.ringout.revision;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The schemes by which pins are named in a row, and how one follows from another. */
final class PinScheme {
  /** Of the pins that were found again: then the rest follow, and what breaks the row was moved. */
  private static final double IN_STEP_SHARE = 0.6;

  private static final int MOST_PINS = 200;

  private PinScheme() {}

  /**
   * Completes which old pin is which new one. Where nearly all keep step, 1 … 26 with A … Z, every
   * pin follows; a wire that breaks step was moved, which a new name must not hide.
   *
   * @param pins old pin to new, as far as wires tell; completed, or left as it is where no scheme
   *     holds
   * @param olds every old pin
   * @return how many of the pins given keep to what is said now
   */
  static int complete(Map<String, String> pins, List<String> olds) {
    List<List<String>> schemes = schemes();
    int most = 0;
    Map<String, String> best = Map.of();
    for (List<String> from : schemes) {
      for (List<String> to : schemes) {
        Map<Integer, Integer> steps = new HashMap<>();
        pins.forEach(
            (old, now) -> {
              int i = from.indexOf(old);
              int j = to.indexOf(now);
              if (i >= 0 && j >= 0) {
                steps.merge(j - i, 1, Integer::sum);
              }
            });
        for (Map.Entry<Integer, Integer> step : steps.entrySet()) {
          if (step.getValue() > most) {
            most = step.getValue();
            best = inStep(olds, from, to, step.getKey());
          }
        }
      }
    }
    if (most < IN_STEP_SHARE * pins.size()) {
      return pins.size();
    }
    pins.clear();
    pins.putAll(best);
    return most;
  }

  private static Map<String, String> inStep(
      List<String> olds, List<String> from, List<String> to, int step) {
    Map<String, String> pins = new LinkedHashMap<>();
    for (String old : olds) {
      int i = from.indexOf(old);
      if (i >= 0 && i + step >= 0 && i + step < to.size()) {
        pins.put(old, to.get(i + step));
      }
    }
    return pins;
  }

  /** Numbers; all letters; letters without those taken for digits (MIL-DTL-38999 inserts). */
  private static List<List<String>> schemes() {
    List<String> numbers = new ArrayList<>();
    for (int i = 1; i <= MOST_PINS; i++) {
      numbers.add(Integer.toString(i));
    }
    return List.of(
        numbers, letters("", ""), letters("IOQ", ""), letters("IOQ", "lo"), letters("IOQ", "ilo"));
  }

  private static List<String> letters(String capitalsSkipped, String smallSkipped) {
    List<String> letters = new ArrayList<>();
    for (char c = 'A'; c <= 'Z'; c++) {
      if (capitalsSkipped.indexOf(c) < 0) {
        letters.add(Character.toString(c));
      }
    }
    for (char c = 'a'; c <= 'z'; c++) {
      if (smallSkipped.indexOf(c) < 0) {
        letters.add(Character.toString(c));
      }
    }
    return letters;
  }
}
