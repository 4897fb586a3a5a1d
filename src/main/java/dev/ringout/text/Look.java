package dev.ringout.text;

/**
 * How a page looks where it is read.
 *
 * @param colour whether colours add to the words
 * @param width signs in a line
 */
public record Look(boolean colour, int width) {
  /** In files, and wherever nobody knows how wide a line may be. */
  public static final Look PLAIN = new Look(false, 80);

  private static final int LEAST = 60;
  private static final int MOST = 120;

  /** Narrower no table fits, and wider no eye finds the next line. */
  public Look {
    width = Math.max(LEAST, Math.min(MOST, width));
  }
}
