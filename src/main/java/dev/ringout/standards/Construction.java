package dev.ringout.standards;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Of which strands a conductor is made, as its type says it: {@code 19/32}, {@code 7x30} (so many
 * strands of that gauge), {@code 16/0.2} (so many of that diameter in millimetres).
 *
 * @param strandAwg the gauge of a strand; 0 where its diameter is given
 * @param strandMillimetres the diameter of a strand; 0 where its gauge is given
 */
record Construction(int strands, int strandAwg, double strandMillimetres) {
  /** Fewer are cores of a cable rather than strands of a conductor. */
  private static final int FEWEST = 7;

  private static final Pattern TEXT =
      Pattern.compile("(?:^|\\s)(\\d{1,4})(?:[/xX×](\\d{2})|/(0[.,]\\d{1,3}))(?:\\s?mm)?(?=$|\\s)");

  /** What a type says; absent where it says nothing of strands. */
  static Optional<Construction> of(String type) {
    Matcher text = TEXT.matcher(type);
    if (!text.find() || Integer.parseInt(text.group(1)) < FEWEST) {
      return Optional.empty();
    }
    int strands = Integer.parseInt(text.group(1));
    String gauge = text.group(2);
    return Optional.of(
        gauge == null
            ? new Construction(strands, 0, Double.parseDouble(text.group(3).replace(',', '.')))
            : new Construction(strands, Integer.parseInt(gauge), 0));
  }

  /** The area of all strands, given that of one by its gauge. */
  double squareMillimetres(double ofOneByGauge) {
    double one = strandAwg > 0 ? ofOneByGauge : Math.PI / 4 * strandMillimetres * strandMillimetres;
    return strands * one;
  }
}
