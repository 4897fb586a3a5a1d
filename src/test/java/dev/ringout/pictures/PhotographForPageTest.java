package dev.ringout.pictures;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.pictures.PhotographForPage.NotShown;
import dev.ringout.support.DrawnPhotograph;
import java.awt.Color;
import java.awt.image.BufferedImage;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Photographs from a bench, whoever sent their bytes. */
class PhotographForPageTest {
  private static boolean isRed(BufferedImage picture, boolean right, boolean low) {
    Color colour =
        new Color(
            picture.getRGB(right ? picture.getWidth() - 5 : 5, low ? picture.getHeight() - 5 : 5));
    return colour.getRed() > 200 && colour.getBlue() < 60;
  }

  @ParameterizedTest
  @ValueSource(strings = {"jpeg", "png"})
  void a_large_photograph_becomes_as_large_as_a_page_needs(String format) throws NotShown {
    PhotographForPage page = PhotographForPage.of(DrawnPhotograph.of(format, 4000, 3000), 1600);
    BufferedImage shown = DrawnPhotograph.read(page.base64());
    assertEquals(1600, page.width());
    assertEquals(1200, page.height());
    assertEquals(1600, shown.getWidth());
    assertTrue(isRed(shown, false, false), "the same picture");
    assertFalse(isRed(shown, true, true));
  }

  @Test
  void a_small_one_stays_as_large_as_it_is() throws NotShown {
    PhotographForPage page = PhotographForPage.of(DrawnPhotograph.of("png", 321, 40), 1600);
    assertEquals(321, page.width());
    assertEquals(40, page.height());
  }

  /** Of what is larger than any page every second pixel is enough to begin with. */
  @Test
  void one_of_a_very_large_camera_is_shown_too() throws NotShown {
    PhotographForPage page = PhotographForPage.of(DrawnPhotograph.of("jpeg", 7000, 5000), 1000);
    assertEquals(1000, page.width());
    assertTrue(isRed(DrawnPhotograph.read(page.base64()), false, false));
  }

  /** The red corner is where it was for who held the camera. */
  @ParameterizedTest
  @CsvSource({
    "1,false,false,false",
    "2,true,false,false",
    "3,true,true,false",
    "4,false,true,false",
    "5,false,false,true",
    "6,true,false,true",
    "7,true,true,true",
    "8,false,true,true"
  })
  void it_stands_upright_however_the_camera_was_held(
      int orientation, boolean right, boolean low, boolean turned) throws NotShown {
    byte[] held = DrawnPhotograph.held(DrawnPhotograph.of("jpeg", 120, 80), orientation);
    PhotographForPage page = PhotographForPage.of(held, 1600);
    assertEquals(turned ? 80 : 120, page.width());
    assertTrue(isRed(DrawnPhotograph.read(page.base64()), right, low));
  }

  @Test
  void what_is_transparent_is_white_paper() throws NotShown {
    BufferedImage clear = new BufferedImage(20, 20, BufferedImage.TYPE_INT_ARGB);
    PhotographForPage page = PhotographForPage.of(DrawnPhotograph.written(clear, "png"), 1600);
    assertEquals(Color.WHITE, new Color(DrawnPhotograph.read(page.base64()).getRGB(10, 10)));
  }

  @Test
  void nothing_but_the_picture_comes_with_it() throws NotShown {
    byte[] jpeg = DrawnPhotograph.of("jpeg", 60, 40);
    byte[] more = Arrays.copyOf(jpeg, jpeg.length + 9);
    byte[] words = "<script> ".getBytes(StandardCharsets.US_ASCII);
    System.arraycopy(words, 0, more, jpeg.length, words.length);
    assertEquals(PhotographForPage.of(jpeg, 1600), PhotographForPage.of(more, 1600));
  }

  @ParameterizedTest
  @CsvSource({"60000,60000", "65536,1", "10001,10000"})
  void a_few_bytes_that_claim_any_size_are_not_unpacked(int width, int height) {
    byte[] bomb = DrawnPhotograph.claiming(width, height);
    NotShown why = assertThrows(NotShown.class, () -> PhotographForPage.of(bomb, 1600));
    assertEquals("it claims " + width + " by " + height + " pixels", why.getMessage());
  }

  @Test
  void what_is_no_picture_is_not_shown() {
    byte[] words = "GIF89a or RIFF....WEBP".getBytes(StandardCharsets.US_ASCII);
    byte[] gif = DrawnPhotograph.of("gif", 30, 20);
    byte[] cut = Arrays.copyOf(DrawnPhotograph.of("png", 300, 200), 60);
    for (byte[] bytes : new byte[][] {new byte[0], words, gif, cut}) {
      assertThrows(NotShown.class, () -> PhotographForPage.of(bytes, 1600));
    }
  }
}
