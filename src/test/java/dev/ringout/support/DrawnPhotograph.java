package dev.ringout.support;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.Objects;
import java.util.zip.CRC32;
import javax.imageio.ImageIO;

/** Pictures that a test takes: dark, with a red patch in the upper left corner. */
public final class DrawnPhotograph {
  private DrawnPhotograph() {}

  /** A picture in {@code jpeg} or {@code png}. */
  public static byte[] of(String format, int width, int height) {
    BufferedImage picture = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    Graphics2D pen = picture.createGraphics();
    pen.setColor(new Color(40, 60, 80));
    pen.fillRect(0, 0, width, height);
    pen.setColor(Color.RED);
    pen.fillRect(0, 0, width / 4, height / 4);
    pen.dispose();
    return written(picture, format);
  }

  /** A picture as a file of a format. */
  public static byte[] written(BufferedImage picture, String format) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try {
      ImageIO.write(picture, format, bytes);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return bytes.toByteArray();
  }

  /** The same JPEG with how the camera was held: 1 to 8, as Exif counts. */
  public static byte[] held(byte[] jpeg, int orientation) {
    byte[] words = "Exif\0\0MM\0*".getBytes(StandardCharsets.US_ASCII);
    ByteBuffer held = ByteBuffer.allocate(jpeg.length + 36).put(jpeg, 0, 2);
    held.putShort((short) 0xffe1).putShort((short) 34).put(words).putInt(8).putShort((short) 1);
    held.putShort((short) 0x0112).putShort((short) 3).putInt(1).putShort((short) orientation);
    return held.putShort((short) 0).putInt(0).put(jpeg, 2, jpeg.length - 2).array();
  }

  /** Some dozen bytes that claim to be a PNG of any size. */
  public static byte[] claiming(int width, int height) {
    ByteBuffer head = ByteBuffer.allocate(17);
    head.put("IHDR".getBytes(StandardCharsets.US_ASCII)).putInt(width).putInt(height);
    head.put(new byte[] {8, 2, 0, 0, 0});
    CRC32 check = new CRC32();
    check.update(head.array());
    return ByteBuffer.allocate(33)
        .put(new byte[] {(byte) 0x89, 'P', 'N', 'G', 13, 10, 26, 10})
        .putInt(13)
        .put(head.array())
        .putInt((int) check.getValue())
        .array();
  }

  /** Reads a picture of a page again. */
  public static BufferedImage read(String base64) {
    byte[] bytes = Base64.getDecoder().decode(base64);
    try {
      return Objects.requireNonNull(ImageIO.read(new ByteArrayInputStream(bytes)));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
