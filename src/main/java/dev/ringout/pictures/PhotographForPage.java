package dev.ringout.pictures;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Base64;
import java.util.Iterator;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.ImageInputStream;
import javax.imageio.stream.MemoryCacheImageInputStream;
import javax.imageio.stream.MemoryCacheImageOutputStream;

/**
 * A photograph as a page shows it: upright, no larger than a page needs, and coded anew, so that
 * nothing else that its file held (places, times, what is no picture) comes with it.
 *
 * @param base64 its bytes (JPEG), as pages hold them (RFC 4648)
 */
public record PhotographForPage(String base64, int width, int height) {
  /** Beyond it nothing is unpacked: a few bytes can claim any size. */
  private static final long MOST_PIXELS = 100_000_000;

  /** JPEG can say no more (ISO/IEC 10918-1); a single row of a PNG could fill the memory. */
  private static final int LONGEST = 65_535;

  /** Of more than these only each second, third … pixel is unpacked. */
  private static final long MOST_PIXELS_UNPACKED = 16_000_000;

  private static final float QUALITY = 0.85f;
  private static final Set<String> FORMATS = Set.of("jpeg", "png");

  /** Why a photograph is not shown. */
  public static final class NotShown extends Exception {
    private static final long serialVersionUID = 1L;

    private NotShown(String why) {
      super(why);
    }
  }

  /**
   * A photograph in JPEG or PNG.
   *
   * @param longSide how many pixels it may have at most on its longer side
   * @throws NotShown where it is none of both, damaged, or larger than any camera's; its message
   *     says why
   */
  public static PhotographForPage of(byte[] bytes, int longSide) throws NotShown {
    try (ImageInputStream in = new MemoryCacheImageInputStream(new ByteArrayInputStream(bytes))) {
      BufferedImage upright = upright(JpegTurn.of(bytes), Pixels.fitting(unpacked(in), longSide));
      return new PhotographForPage(packed(upright), upright.getWidth(), upright.getHeight());
    } catch (IOException | RuntimeException e) {
      // The readers of the JDK throw whatever they stumble over in a damaged file.
      throw new NotShown("it is damaged, or is not a JPEG or PNG");
    }
  }

  private static BufferedImage unpacked(ImageInputStream in) throws IOException, NotShown {
    ImageReader reader = reader(in).orElseThrow(() -> new NotShown("it is not a JPEG or PNG"));
    try {
      reader.setInput(in, true, true);
      long pixels = (long) reader.getWidth(0) * reader.getHeight(0);
      if (pixels > MOST_PIXELS || Math.max(reader.getWidth(0), reader.getHeight(0)) > LONGEST) {
        throw new NotShown(
            "it claims " + reader.getWidth(0) + " by " + reader.getHeight(0) + " pixels");
      }
      int each = (int) Math.ceil(Math.sqrt((double) pixels / MOST_PIXELS_UNPACKED));
      ImageReadParam some = reader.getDefaultReadParam();
      some.setSourceSubsampling(Math.max(1, each), Math.max(1, each), 0, 0);
      return reader.read(0, some);
    } finally {
      reader.dispose();
    }
  }

  private static Optional<ImageReader> reader(ImageInputStream in) throws IOException {
    Iterator<ImageReader> readers = ImageIO.getImageReaders(in);
    while (readers.hasNext()) {
      ImageReader reader = readers.next();
      if (FORMATS.contains(reader.getFormatName().toLowerCase(Locale.ROOT))) {
        return Optional.of(reader);
      }
      reader.dispose();
    }
    return Optional.empty();
  }

  private static BufferedImage upright(JpegTurn turn, BufferedImage lying) {
    if (turn.isNone()) {
      return lying;
    }
    int width = turn.swapsSides() ? lying.getHeight() : lying.getWidth();
    int height = turn.swapsSides() ? lying.getWidth() : lying.getHeight();
    BufferedImage upright = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    for (int y = 0; y < lying.getHeight(); y++) {
      for (int x = 0; x < lying.getWidth(); x++) {
        upright.setRGB(
            turn.x(x, y, lying.getWidth(), lying.getHeight()),
            turn.y(x, y, lying.getWidth(), lying.getHeight()),
            lying.getRGB(x, y));
      }
    }
    return upright;
  }

  private static String packed(BufferedImage picture) throws IOException {
    ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (MemoryCacheImageOutputStream out = new MemoryCacheImageOutputStream(bytes)) {
      ImageWriteParam how = writer.getDefaultWriteParam();
      how.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
      how.setCompressionQuality(QUALITY);
      writer.setOutput(out);
      writer.write(null, new IIOImage(picture, null, null), how);
    } finally {
      writer.dispose();
    }
    return Base64.getEncoder().encodeToString(bytes.toByteArray());
  }
}
