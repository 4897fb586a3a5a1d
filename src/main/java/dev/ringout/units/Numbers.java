package dev.ringout.units;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** Numbers as text, the same in every locale. */
public final class Numbers {
  private Numbers() {}

  /**
   * The shortest plain text of a number: {@code 7}, {@code 0.75}, never {@code 7.0} or {@code 7E5}.
   */
  public static String plain(double number) {
    BigDecimal exact = BigDecimal.valueOf(number).stripTrailingZeros();
    return exact.scale() < 0 ? exact.setScale(0).toPlainString() : exact.toPlainString();
  }

  /** A number rounded to so many significant digits, in plain text. */
  public static String rounded(double number, int digits) {
    BigDecimal value =
        BigDecimal.valueOf(number).round(new MathContext(digits, RoundingMode.HALF_UP));
    return plain(value.doubleValue());
  }

  /** {@code 1 net}, {@code 2 nets}; a plural other than -s is given whole. */
  public static String count(long number, String singular) {
    return number + " " + (number == 1 ? singular : singular + "s");
  }
}
