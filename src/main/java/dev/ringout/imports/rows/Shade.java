package dev.ringout.imports.rows;

/**
 * A colour as people see it. The bounds between the names: common practice, no source.
 *
 * @param chroma how far from grey, of 255
 * @param hue in degrees, red at 0
 */
record Shade(int lightest, int chroma, double hue) {
  private static final int STRONG = 0x80;
  private static final int GREYISH = 0x28;
  private static final int REDDISH = 0x30;
  private static final int DARK = 0x40;

  /** A colour by its six hexadecimal digits. */
  static Shade of(String digits) {
    int mixture = Integer.parseInt(digits, 16);
    int red = (mixture >> 16) & 0xff;
    int green = (mixture >> 8) & 0xff;
    int blue = mixture & 0xff;
    int most = Math.max(red, Math.max(green, blue));
    int chroma = most - Math.min(red, Math.min(green, blue));
    double hue = 0;
    if (chroma > 0) {
      double sixth =
          most == red
              ? (green - blue) / (double) chroma
              : most == green
                  ? 2 + (blue - red) / (double) chroma
                  : 4 + (red - green) / (double) chroma;
      hue = (sixth * 60 + 360) % 360;
    }
    return new Shade(most, chroma, hue);
  }

  /**
   * Whether it stands out; pale fills make a table easier to read and mean nothing, but for a pale
   * red, by which lists take rows out.
   */
  boolean isStrong() {
    return chroma >= STRONG || (chroma >= REDDISH && name().equals("red"));
  }

  /** What a legend would call it. */
  String name() {
    if (chroma < GREYISH) {
      return lightest < DARK ? "black" : "grey";
    }
    if (hue < 18 || hue >= 345) {
      return "red";
    }
    return hue < 45
        ? "orange"
        : hue < 70
            ? "yellow"
            : hue < 165 ? "green" : hue < 260 ? "blue" : hue < 300 ? "violet" : "pink";
  }
}
