package dev.ringout.pictures;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.LuminanceSource;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.common.GlobalHistogramBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A code on a terminal is read as any other: here by the library's own reader. */
class TerminalCodeTest {
  private static final String TEXT =
      "https://bench1.shop:8443/#SHA-256="
          + "4E8C8400F0A8B326BD686E487ACBB1D86CE3534F02CD149A76D3154AC7683EA9";

  private static final int PIXELS = 4;

  /** What somebody with a camera sees: dark where a sign is drawn, on white. */
  private static LuminanceSource seen(List<String> lines) {
    int width = lines.get(0).length() * PIXELS;
    int height = 2 * lines.size() * PIXELS;
    int[] pixels = new int[width * height];
    Arrays.fill(pixels, 0xffffff);
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        char sign = lines.get(y / PIXELS / 2).charAt(x / PIXELS);
        boolean upper = y / PIXELS % 2 == 0;
        if (sign == '█' || sign == (upper ? '▀' : '▄')) {
          pixels[y * width + x] = 0;
        }
      }
    }
    return new RGBLuminanceSource(width, height, pixels);
  }

  @Test
  void a_camera_reads_address_and_fingerprint_back() throws Exception {
    String code = TerminalCode.of(TEXT);
    assertTrue(code.lines().allMatch(line -> line.startsWith("\u001b[30;107m")), "black on white");
    List<String> lines =
        code.lines().map(line -> line.replaceAll("\u001b\\[[0-9;]*m", "")).toList();
    assertTrue(lines.get(0).length() <= 80, "in a line of a terminal");
    BinaryBitmap picture = new BinaryBitmap(new GlobalHistogramBinarizer(seen(lines)));
    assertEquals(TEXT, new QRCodeReader().decode(picture).getText());
  }
}
