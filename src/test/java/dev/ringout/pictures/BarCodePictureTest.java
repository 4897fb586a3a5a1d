package dev.ringout.pictures;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.MultiFormatReader;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.common.HybridBinarizer;
import dev.ringout.sheet.BarCode;
import java.util.Arrays;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** A drawn code is read back from its drawing by the library's reader. */
class BarCodePictureTest {
  private static final Pattern BAR = Pattern.compile("M(\\d+) (\\d+)h(\\d+)v([0-9.]+)h");
  private static final int PIXELS = 6;
  private static final int QUIET = 12;

  private static String read(String svg) throws Exception {
    Matcher box = Pattern.compile("viewBox=\"0 0 ([0-9.]+) ([0-9.]+)\"").matcher(svg);
    box.find();
    int width = ((int) Double.parseDouble(box.group(1)) + 2 * QUIET) * PIXELS;
    int height = ((int) Double.parseDouble(box.group(2)) + 2 * QUIET) * PIXELS;
    int[] picture = new int[width * height];
    Arrays.fill(picture, 0xffffff);
    Matcher bar = BAR.matcher(svg);
    while (bar.find()) {
      int left = (Integer.parseInt(bar.group(1)) + QUIET) * PIXELS;
      int top = (Integer.parseInt(bar.group(2)) + QUIET) * PIXELS;
      int across = Integer.parseInt(bar.group(3)) * PIXELS;
      int down = (int) (Double.parseDouble(bar.group(4)) * PIXELS);
      for (int y = top; y < top + down; y++) {
        Arrays.fill(picture, y * width + left, y * width + left + across, 0);
      }
    }
    return new MultiFormatReader()
        .decode(
            new BinaryBitmap(new HybridBinarizer(new RGBLuminanceSource(width, height, picture))))
        .getText();
  }

  @Test
  void what_is_drawn_is_what_a_scanner_reads() throws Exception {
    for (String text : new String[] {"W001 J1-A", "2A-401-7B", "J1-a/TB1-12"}) {
      assertEquals(text, read(BarCodePicture.of(text, BarCode.CODE128)));
      assertEquals(text, read(BarCodePicture.of(text, BarCode.QR)));
    }
    assertEquals("24 V µ Ω", read(BarCodePicture.of("24 V µ Ω", BarCode.QR)));
  }

  @Test
  void a_text_that_code_128_cannot_hold_stands_without_a_code() {
    assertEquals("", BarCodePicture.of("µ", BarCode.CODE128));
    assertEquals("", BarCodePicture.of("", BarCode.QR));
  }
}
