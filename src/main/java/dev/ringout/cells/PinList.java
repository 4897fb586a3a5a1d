package dev.ringout.cells;

import dev.ringout.harness.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Several pins in one cell: {@code D40,D05} or {@code D42-D53}. */
public final class PinList {
  private static final Pattern RANGE =
      Pattern.compile("([A-Za-z]*)(\\d{1,4})\\s?(?:-|\\.\\.|to|thru)\\s?([A-Za-z]*)(\\d{1,4})");
  private static final int LONGEST_RANGE = 400;

  private PinList() {}

  /** Pins listed in one cell: {@code D40,D05}; one where it is not plain that there are more. */
  public static List<String> listed(String text) {
    if (!hasSeparator(text)) {
      return List.of(text);
    }
    String[] pieces = text.split("\\s*[,;+&]\\s*", -1);
    String shape = shape(pieces[0]);
    for (String piece : pieces) {
      if (shape(piece).isEmpty() || !shape(piece).equals(shape)) {
        return List.of(text);
      }
    }
    return List.of(pieces);
  }

  /** The pins of a range such as {@code D42-D53} or {@code 8..5}, or none where it is no range. */
  public static List<String> range(String text) {
    if (text.length() < 3 || !CellText.hasDigit(text)) {
      return List.of();
    }
    Matcher range = RANGE.matcher(text);
    if (!range.matches()) {
      return List.of();
    }
    boolean alike = range.group(3).isEmpty() || range.group(3).equals(range.group(1));
    int first = Integer.parseInt(range.group(2));
    int last = Integer.parseInt(range.group(4));
    // Two dots part nothing but a range: 8..5 runs down.
    boolean down = last < first && text.contains("..");
    if (!alike
        || last == first
        || (last < first && !down)
        || Math.abs(last - first) > LONGEST_RANGE) {
      return List.of();
    }
    List<String> pins = new ArrayList<>();
    int step = down ? -1 : 1;
    for (int number = first; number != last + step; number += step) {
      String digits = Integer.toString(number);
      String zeros = "0".repeat(Math.max(0, range.group(2).length() - digits.length()));
      pins.add(
          range.group(1) + (first == 0 || range.group(2).startsWith("0") ? zeros : "") + digits);
    }
    return pins;
  }

  /** What a pin looks like: its letters where it has a number, else that it is letters alone. */
  private static String shape(String pin) {
    if (pin.matches("[A-Za-z]{1,2}") || pin.equalsIgnoreCase(Point.SHELL)) {
      return "letters";
    }
    return pin.matches("[A-Za-z]{0,2}\\d{1,3}") ? "#" + pin.replaceAll("\\d", "") : "";
  }

  /** Whether a text may list several points or pins. */
  public static boolean hasSeparator(String text) {
    for (int i = 0; i < text.length(); i++) {
      if ("+,;&\n".indexOf(text.charAt(i)) >= 0) {
        return true;
      }
    }
    return false;
  }
}
