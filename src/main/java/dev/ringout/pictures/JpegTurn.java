package dev.ringout.pictures;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;

/**
 * How a camera was held: the orientation that a JPEG file states (Exif, JEITA CP-3451, tag 0x0112),
 * one of eight. A picture of which nothing says so is upright.
 */
final class JpegTurn {
  private static final int START = 0xffd8;
  private static final int APP1 = 0xffe1;
  private static final int START_OF_SCAN = 0xffda;
  private static final int ANY_MARKER = 0xff00;
  private static final int EXIF = 0x45786966;
  private static final int EXIF_HEADER = 6;
  private static final int LITTLE = 0x4949;
  private static final int ORIENTATION = 0x0112;
  private static final int UPRIGHT = 1;
  private static final int MOST = 8;
  private static final int FIRST_LYING = 5;

  private final int orientation;

  private JpegTurn(int orientation) {
    this.orientation = orientation;
  }

  static JpegTurn of(byte[] file) {
    try {
      int stated = stated(ByteBuffer.wrap(file));
      return new JpegTurn(stated >= UPRIGHT && stated <= MOST ? stated : UPRIGHT);
    } catch (IndexOutOfBoundsException e) {
      return new JpegTurn(UPRIGHT);
    }
  }

  private static int stated(ByteBuffer file) {
    if (unsigned(file, 0) != START) {
      return UPRIGHT;
    }
    int at = 2;
    while ((unsigned(file, at) & ANY_MARKER) == ANY_MARKER) {
      int marker = unsigned(file, at);
      int length = unsigned(file, at + 2);
      if (marker == APP1 && file.getInt(at + 4) == EXIF) {
        return inDirectory(file, at + 4 + EXIF_HEADER);
      }
      if (marker == START_OF_SCAN || length < 2) {
        return UPRIGHT;
      }
      at += 2 + length;
    }
    return UPRIGHT;
  }

  private static int inDirectory(ByteBuffer file, int start) {
    ByteBuffer exif =
        file.duplicate()
            .order(
                unsigned(file, start) == LITTLE ? ByteOrder.LITTLE_ENDIAN : ByteOrder.BIG_ENDIAN);
    int directory = start + exif.getInt(start + 4);
    int entries = unsigned(exif, directory);
    for (int i = 0; i < entries; i++) {
      int entry = directory + 2 + 12 * i;
      if (unsigned(exif, entry) == ORIENTATION) {
        return unsigned(exif, entry + 8);
      }
    }
    return UPRIGHT;
  }

  private static int unsigned(ByteBuffer bytes, int at) {
    return bytes.getShort(at) & 0xffff;
  }

  boolean isNone() {
    return orientation == UPRIGHT;
  }

  /** Whether width and height change places. */
  boolean swapsSides() {
    return orientation >= FIRST_LYING;
  }

  /** Where a pixel is from the left once the picture stands upright. */
  int x(int x, int y, int width, int height) {
    return switch (orientation) {
      case 2, 3 -> width - 1 - x;
      case 5, 8 -> y;
      case 6, 7 -> height - 1 - y;
      default -> x;
    };
  }

  /** Where a pixel is from the top once the picture stands upright. */
  int y(int x, int y, int width, int height) {
    return switch (orientation) {
      case 3, 4 -> height - 1 - y;
      case 5, 6 -> x;
      case 7, 8 -> width - 1 - x;
      default -> y;
    };
  }
}
