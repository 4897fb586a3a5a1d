package dev.ringout.harness;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The serial numbers that something is good for, as lists write them: {@code 0100 to 0200}, {@code
 * 0100-0200, 0305}, {@code 0300 and on}, {@code up to 0200}, {@code all}. Numbers are compared by
 * their last digits where what stands before them is the same ({@code HS-0100 to HS-0200}).
 */
public final class SerialNumbers {
  private static final Pattern NUMBER = Pattern.compile("(.*?)(\\d+)");
  private static final Pattern ALL =
      Pattern.compile("all|all units|all serial numbers", Pattern.CASE_INSENSITIVE);
  private static final Pattern ON =
      Pattern.compile(
          "(?:from\\s+)?(\\S+)\\s*(?:and on|and up|and subsequent|and subs\\.?|onwards?|\\+)",
          Pattern.CASE_INSENSITIVE);
  private static final Pattern UP_TO =
      Pattern.compile("(?:up to|through|until)\\s+(\\S+)", Pattern.CASE_INSENSITIVE);
  private static final Pattern RANGE =
      Pattern.compile(
          "(?:from\\s+)?(\\S+?)\\s*(?:\\s+(?:to|thru|through)\\s+|[\u2013\u2014]|\\.\\.|(?<=\\d)\\s*-\\s*(?=\\S*\\d$))\\s*(\\S+)",
          Pattern.CASE_INSENSITIVE);
  private static final Pattern SEVERAL =
      Pattern.compile(
          "\\s*(?:[,;&]|\\band\\b(?!\\s+(?:on|up|subs)))\\s*", Pattern.CASE_INSENSITIVE);
  private static final Pattern LEAD =
      Pattern.compile(
          "^(?:serial numbers?|serials?|s/?n\\.?|nos?\\.|units?)[:\\s]+", Pattern.CASE_INSENSITIVE);

  private final String text;
  private final List<Range> ranges;

  /** From one number to another; a blank end is open. */
  private record Range(String from, String to) {
    boolean covers(String serial) {
      if (from.equals(to)) {
        return order(from, serial).orElse(1) == 0;
      }
      return (from.isEmpty() || order(from, serial).orElse(1) <= 0)
          && (to.isEmpty() || order(serial, to).orElse(1) <= 0);
    }
  }

  private SerialNumbers(String text, List<Range> ranges) {
    this.text = text;
    this.ranges = ranges;
  }

  /** What a cell says; absent where that can't be told. */
  public static Optional<SerialNumbers> of(String text) {
    List<Range> ranges = new ArrayList<>();
    String lead = LEAD.matcher(text.strip()).replaceFirst("");
    for (String piece : SEVERAL.split(lead, -1)) {
      Optional<Range> range = range(LEAD.matcher(piece.strip()).replaceFirst(""));
      if (range.isEmpty()) {
        return Optional.empty();
      }
      ranges.add(range.get());
    }
    return ranges.isEmpty()
        ? Optional.empty()
        : Optional.of(new SerialNumbers(text.strip(), List.copyOf(ranges)));
  }

  private static Optional<Range> range(String piece) {
    if (piece.isEmpty()) {
      // Something was left out: nothing, rather than everything.
      return Optional.empty();
    }
    if (ALL.matcher(piece).matches()) {
      return Optional.of(new Range("", ""));
    }
    Matcher on = ON.matcher(piece);
    if (on.matches()) {
      return ifNumbers(on.group(1), "");
    }
    Matcher upTo = UP_TO.matcher(piece);
    if (upTo.matches()) {
      return ifNumbers("", upTo.group(1));
    }
    Matcher range = RANGE.matcher(piece);
    if (range.matches()) {
      if (isOneNumber(range.group(1), range.group(2))) {
        return Optional.empty();
      }
      return order(range.group(1), range.group(2)).filter(order -> order <= 0).isPresent()
          ? ifNumbers(range.group(1), range.group(2))
          : Optional.empty();
    }
    return ifNumbers(piece, piece);
  }

  /** {@code 22-0418} is no range from 22 on: likelier the 418th unit of a year. */
  private static boolean isOneNumber(String from, String to) {
    return to.startsWith("0") && to.length() != from.length();
  }

  private static Optional<Range> ifNumbers(String from, String to) {
    boolean both = (from.isEmpty() || isNumber(from)) && (to.isEmpty() || isNumber(to));
    return both ? Optional.of(new Range(from, to)) : Optional.empty();
  }

  private static boolean isNumber(String text) {
    return text.indexOf(' ') < 0 && NUMBER.matcher(text).matches();
  }

  /** How two serial numbers stand to each other; absent where they are of different kinds. */
  private static Optional<Integer> order(String one, String other) {
    Matcher left = NUMBER.matcher(one.strip());
    Matcher right = NUMBER.matcher(other.strip());
    if (!left.matches() || !right.matches() || !prefix(left).equals(prefix(right))) {
      return Optional.empty();
    }
    return Optional.of(new BigInteger(left.group(2)).compareTo(new BigInteger(right.group(2))));
  }

  private static String prefix(Matcher number) {
    return number.group(1).toLowerCase(Locale.ROOT);
  }

  /** Whether a serial number is among them. */
  public boolean covers(String serial) {
    return ranges.stream()
        .anyMatch(range -> range.equals(new Range("", "")) || range.covers(serial.strip()));
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof SerialNumbers numbers && numbers.ranges.equals(ranges);
  }

  @Override
  public int hashCode() {
    return ranges.hashCode();
  }

  /** As written. */
  @Override
  public String toString() {
    return text;
  }
}
