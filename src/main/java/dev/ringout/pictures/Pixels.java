package dev.ringout.pictures;

import java.awt.image.BufferedImage;

/** Pixels made fewer, by whole numbers: the same on every machine. */
final class Pixels {
  private static final int WHITE = 255;

  private Pixels() {}

  /** The picture in red, green and blue on white, its longer side no longer than so many pixels. */
  static BufferedImage fitting(BufferedImage from, int longSide) {
    int longer = Math.max(from.getWidth(), from.getHeight());
    int width = side(from.getWidth(), longer, longSide);
    int height = side(from.getHeight(), longer, longSide);
    BufferedImage to = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    for (int y = 0; y < height; y++) {
      int top = from(y, height, from.getHeight());
      int bottom = Math.max(top + 1, from(y + 1, height, from.getHeight()));
      int[] rows = from.getRGB(0, top, from.getWidth(), bottom - top, null, 0, from.getWidth());
      for (int x = 0; x < width; x++) {
        int left = from(x, width, from.getWidth());
        int right = Math.max(left + 1, from(x + 1, width, from.getWidth()));
        to.setRGB(x, y, mean(rows, from.getWidth(), bottom - top, left, right));
      }
    }
    return to;
  }

  private static int side(int side, int longer, int longSide) {
    return longer <= longSide ? side : Math.max(1, (int) ((long) side * longSide / longer));
  }

  private static int from(int at, int of, int ofBefore) {
    return (int) ((long) at * ofBefore / of);
  }

  private static int mean(int[] rows, int width, int height, int left, int right) {
    long red = 0;
    long green = 0;
    long blue = 0;
    for (int y = 0; y < height; y++) {
      for (int x = left; x < right; x++) {
        int pixel = rows[y * width + x];
        int covers = pixel >>> 24;
        red += onWhite((pixel >> 16) & 0xff, covers);
        green += onWhite((pixel >> 8) & 0xff, covers);
        blue += onWhite(pixel & 0xff, covers);
      }
    }
    long count = (long) height * (right - left);
    return ((int) (red / count) << 16) | ((int) (green / count) << 8) | (int) (blue / count);
  }

  private static int onWhite(int colour, int covers) {
    return (colour * covers + WHITE * (WHITE - covers)) / WHITE;
  }
}
