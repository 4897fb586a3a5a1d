package dev.ringout.benchmarks.exam;

import com.fasterxml.jackson.jr.ob.JSON;
import dev.ringout.cli.Main;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;

/** The program, by its command alone. */
final class Examinee {
  /**
   * What came back.
   *
   * @param document empty where none came
   */
  record Paper(int code, Map<String, Object> document, String err, double seconds) {
    boolean isUsable() {
      return code <= 2 && !document.isEmpty();
    }

    List<Map<String, Object>> list(String name) {
      return Examinee.list(document, name);
    }
  }

  private Examinee() {}

  static Paper check(Path list, Path sheet) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    long from = System.nanoTime();
    int code =
        Main.run(
            new PrintStream(out, true, StandardCharsets.UTF_8),
            new PrintStream(err, true, StandardCharsets.UTF_8),
            false,
            "check",
            "--json",
            list.toString(),
            sheet.toString());
    double seconds = (System.nanoTime() - from) / 1e9;
    return new Paper(code, parsed(out), err.toString(StandardCharsets.UTF_8), seconds);
  }

  private static Map<String, Object> parsed(ByteArrayOutputStream out) {
    try {
      return JSON.std.mapFrom(out.toString(StandardCharsets.UTF_8));
    } catch (IOException e) {
      return Map.of();
    }
  }

  @SuppressWarnings("unchecked")
  static List<Map<String, Object>> list(Map<String, Object> of, String name) {
    return of.get(name) instanceof List<?> all ? (List<Map<String, Object>>) all : List.of();
  }

  @SuppressWarnings("unchecked")
  static List<String> texts(Map<String, Object> of, String name) {
    return of.get(name) instanceof List<?> all ? (List<String>) all : List.of();
  }

  static List<Double> numbers(Map<String, Object> of, String name) {
    return of.get(name) instanceof List<?> all
        ? all.stream().map(one -> ((Number) one).doubleValue()).toList()
        : List.of();
  }

  static String text(Map<String, Object> of, String name) {
    Object value = of.get(name);
    return value == null ? "" : value.toString();
  }

  static double number(Map<String, Object> of, String name) {
    return of.get(name) instanceof Number number ? number.doubleValue() : 0;
  }
}
