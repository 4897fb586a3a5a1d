package dev.ringout.pictures;

import com.google.zxing.BarcodeFormat;
import com.google.zxing.EncodeHintType;
import com.google.zxing.WriterException;
import com.google.zxing.common.BitMatrix;
import com.google.zxing.qrcode.QRCodeWriter;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import java.util.Map;

/** A text as a QR code on a terminal: two modules of a column in one sign. */
public final class TerminalCode {
  /** So many light modules belong around a code (ISO/IEC 18004, 5.3.8; from memory). */
  private static final int QUIET = 4;

  /** Black on white however the terminal's own colours are. */
  private static final String COLOURS = "\u001b[30;107m";

  private static final String PLAIN = "\u001b[0m";

  private TerminalCode() {}

  /** The code, line by line; empty for a text that no code holds. */
  public static String of(String text) {
    try {
      BitMatrix bits =
          new QRCodeWriter()
              .encode(
                  text,
                  BarcodeFormat.QR_CODE,
                  0,
                  0,
                  Map.of(
                      EncodeHintType.MARGIN,
                      QUIET,
                      EncodeHintType.ERROR_CORRECTION,
                      ErrorCorrectionLevel.L));
      StringBuilder lines = new StringBuilder();
      for (int y = 0; y < bits.getHeight(); y += 2) {
        lines.append(COLOURS);
        for (int x = 0; x < bits.getWidth(); x++) {
          lines.append(sign(bits.get(x, y), y + 1 < bits.getHeight() && bits.get(x, y + 1)));
        }
        lines.append(PLAIN).append('\n');
      }
      return lines.toString();
    } catch (WriterException e) {
      return "";
    }
  }

  private static char sign(boolean upper, boolean lower) {
    if (upper) {
      return lower ? '█' : '▀';
    }
    return lower ? '▄' : ' ';
  }
}
