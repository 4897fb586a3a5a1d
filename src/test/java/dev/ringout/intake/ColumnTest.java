package dev.ringout.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Headings of the contract's sheets as people write them. */
class ColumnTest {
  @ParameterizedTest
  @CsvSource({"Length (ft),ft", "Length mm,mm", "length [m],m", "LENGTH,''", "Lengthwise,''"})
  void a_heading_may_end_in_a_unit(String heading, String unit) {
    assertEquals(unit, Column.withUnit("Length").unitIn(heading));
  }

  @ParameterizedTest
  @ValueSource(strings = {"From Pin", "from pin", "FROM-PIN", "FromPin", "From  Pin:"})
  void headings_match_without_regard_to_case_spaces_and_punctuation(String heading) {
    assertTrue(Column.of("From Pin").matches(heading));
  }
}
