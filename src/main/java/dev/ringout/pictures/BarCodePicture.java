package dev.ringout.pictures;

import com.google.zxing.BarcodeFormat;
import com.google.zxing.EncodeHintType;
import com.google.zxing.WriterException;
import com.google.zxing.common.BitMatrix;
import com.google.zxing.oned.Code128Writer;
import com.google.zxing.qrcode.QRCodeWriter;
import dev.ringout.sheet.BarCode;
import dev.ringout.units.Text;
import java.util.Map;

/** A text as a bar code (SVG). */
public final class BarCodePicture {
  private static final double HEIGHT_MM = 11;
  private static final double MODULE_MM = 0.33;

  private BarCodePicture() {}

  /** The code; empty for a text that the code can't hold. */
  public static String of(String text, BarCode code) {
    boolean ascii = text.chars().allMatch(c -> c >= ' ' && c <= '~');
    if (text.isEmpty() || (code == BarCode.CODE128 && (!ascii || text.length() > 80))) {
      return "";
    }
    try {
      Map<EncodeHintType, ?> hints =
          Map.of(EncodeHintType.MARGIN, 0, EncodeHintType.CHARACTER_SET, "UTF-8");
      BitMatrix bits =
          code == BarCode.QR
              ? new QRCodeWriter().encode(text, BarcodeFormat.QR_CODE, 0, 0, hints)
              : new Code128Writer()
                  .encode(text, BarcodeFormat.CODE_128, 0, 1, Map.of(EncodeHintType.MARGIN, 0));
      return svg(bits, code == BarCode.QR ? 1 : HEIGHT_MM / MODULE_MM, code);
    } catch (WriterException e) {
      return "";
    }
  }

  /** Runs of dark modules as bars; a code's quiet zone is the white of the cell around it. */
  private static String svg(BitMatrix bits, double rowModules, BarCode code) {
    StringBuilder path = new StringBuilder();
    for (int y = 0; y < bits.getHeight(); y++) {
      int start = -1;
      for (int x = 0; x <= bits.getWidth(); x++) {
        boolean dark = x < bits.getWidth() && bits.get(x, y);
        if (dark && start < 0) {
          start = x;
        } else if (!dark && start >= 0) {
          path.append(Text.of("M%d %dh%dv%.2fh-%dz", start, y, x - start, rowModules, x - start));
          start = -1;
        }
      }
    }
    double width = bits.getWidth();
    double height = bits.getHeight() * rowModules;
    double module = code == BarCode.QR ? HEIGHT_MM / height : MODULE_MM;
    return Text.of(
        "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"%.2fmm\" height=\"%.2fmm\""
            + " viewBox=\"0 0 %.2f %.2f\" shape-rendering=\"crispEdges\"><path fill=\"#000\""
            + " d=\"%s\"/></svg>",
        width * module, height * module, width, height, path);
  }
}
