package dev.ringout.serve;

import java.nio.charset.StandardCharsets;
import java.util.regex.Pattern;

/**
 * Something that every page is told.
 *
 * @param latest whether one that was not sent yet may be left out for a newer one of its name
 */
public record Event(String name, String data, boolean latest) {
  private static final Pattern NAME = Pattern.compile("[a-z]+(-[a-z]+)*");
  private static final Pattern LINE_END = Pattern.compile("\r\n|\r|\n");

  /** An event with a name that can stand in a stream. */
  public Event {
    if (!NAME.matcher(name).matches()) {
      throw new IllegalArgumentException("no name of an event: " + name);
    }
  }

  /** Every page gets this one. */
  public static Event each(String name, String data) {
    return new Event(name, data, false);
  }

  /** Of this name a page needs the newest alone. */
  public static Event latest(String name, String data) {
    return new Event(name, data, true);
  }

  byte[] bytes() {
    StringBuilder text = new StringBuilder("event: ").append(name).append('\n');
    for (String line : LINE_END.split(data, -1)) {
      text.append("data: ").append(line).append('\n');
    }
    return text.append('\n').toString().getBytes(StandardCharsets.UTF_8);
  }
}
