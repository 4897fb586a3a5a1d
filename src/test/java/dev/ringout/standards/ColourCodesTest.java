package dev.ringout.standards;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ColourCodesTest {
  private final ColourCodes codes = ColourCodes.of(Tables.published());

  /** Source: MIL-STD-681 digits (9 white, 4 yellow, 8 grey), IEC 60757 letters. */
  @ParameterizedTest
  @ValueSource(strings = {"WHT/YEL/GRY", "948", "9-4-8", "WH/YE/GY", "white yellow gray stripe"})
  void a_colour_is_the_same_in_words_short_forms_and_digits(String written) {
    assertEquals(Optional.of(List.of("white", "yellow", "grey")), codes.meaning(written));
  }

  /** Source: IEC 60757: GNYE is green-yellow. */
  @Test
  void green_and_yellow_may_be_one_word() {
    assertEquals(codes.meaning("GRN/YEL"), codes.meaning("GNYE"));
  }

  /** Common practice: the base colour is the one that the stripe is on. */
  @Test
  void a_stripe_may_be_named_before_or_after_its_base() {
    assertEquals(codes.meaning("WHT/GRN"), codes.meaning("white w/ green stripe"));
    assertEquals(codes.meaning("WHT/GRN"), codes.meaning("green stripe on white"));
  }

  @Test
  void a_word_of_no_code_is_never_guessed_at() {
    assertEquals(Optional.empty(), codes.meaning("WHT/BLX"));
    assertEquals(List.of("BLX"), codes.unknownParts("WHT/BLX"));
  }
}
