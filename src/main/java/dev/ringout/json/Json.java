package dev.ringout.json;

import com.fasterxml.jackson.jr.ob.JSON;
import dev.ringout.review.Remark;
import dev.ringout.source.Place;
import dev.ringout.source.Problem;
import dev.ringout.source.Severity;
import java.io.FilterWriter;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** JSON text, indented, in the order in which it was put together. */
public final class Json {
  private Json() {}

  public static String text(Map<String, Object> document) {
    try {
      return JSON.std.with(JSON.Feature.PRETTY_PRINT_OUTPUT).asString(document) + "\n";
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * Writes a document piece by piece: what it holds as an {@link Iterable} is never held at once.
   */
  static void write(Map<String, Object> document, Writer to) throws IOException {
    JSON.std
        .with(JSON.Feature.PRETTY_PRINT_OUTPUT, JSON.Feature.WRITE_NULL_PROPERTIES)
        .write(document, new StaysOpen(to));
    to.write("\n");
  }

  /** The library closes what it wrote to, and the last line is still to come. */
  private static final class StaysOpen extends FilterWriter {
    StaysOpen(Writer to) {
      super(to);
    }

    @Override
    public void close() {}
  }

  /** A document of which nothing is left to say but what was wrong in the inputs. */
  static String refused(String format, List<Problem> problems) {
    return text(object("format", format, "problems", problems(problems)));
  }

  /** The same where the store can't be used. */
  static String refused(String format, String store, String why) {
    return refused(format, List.of(new Problem(Place.of(store), "", Severity.ERROR, why, "")));
  }

  /** An object of two. */
  static Map<String, Object> object(String name, Object value, String other, Object otherValue) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put(name, value);
    json.put(other, otherValue);
    return json;
  }

  @SuppressWarnings("NullAway") // JSON has null for a number that is not there.
  static Object orNull(OptionalDouble number) {
    return number.isPresent() ? number.getAsDouble() : null;
  }

  @SuppressWarnings("NullAway") // JSON has null for what is not there.
  static Object orNull(Optional<?> one) {
    return one.isPresent() ? one.get() : null;
  }

  public static List<Map<String, Object>> problems(List<Problem> problems) {
    return problems.stream().map(Json::problem).toList();
  }

  static List<Map<String, Object>> remarks(List<Remark> remarks) {
    return remarks.stream().map(Json::remark).toList();
  }

  static Map<String, Object> remark(Remark remark) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("rule", remark.rule());
    json.put("severity", remark.severity().word());
    json.put("point", remark.point());
    json.put("wire", remark.wire());
    json.put("text", remark.text());
    json.put("source", remark.source());
    return json;
  }

  static Map<String, Object> problem(Problem problem) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("file", problem.place().file());
    json.put("sheet", problem.place().sheet());
    json.put("cell", problem.place().cell());
    json.put("heading", problem.heading());
    json.put("severity", problem.severity().word());
    json.put("text", problem.text());
    if (!problem.maybe().isEmpty()) {
      json.put("maybe", problem.maybe());
    }
    return json;
  }
}
