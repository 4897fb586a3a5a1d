package dev.ringout.words;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.ringout.readings.Reading;
import dev.ringout.readings.ReadingSet;
import dev.ringout.source.Place;
import dev.ringout.support.UnitUnderTest;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Where a mechanic looks a reading up. */
class ReadingPlaceTest {
  private static final Place IN_BOOK = new Place("monday.xlsx", "Continuity", 9, 5);
  private static final Place IN_FOLDER = new Place("monday/continuity.csv", "", 9, 5);

  private final Reading reading;
  private final ReadingPlace ofOne;
  private final ReadingPlace ofSeveral;

  ReadingPlaceTest(@TempDir Path folder) {
    ReadingSet one =
        new UnitUnderTest(folder)
            .wire("W1,J1-A,P2-1")
            .reads("J1-A", "P2-1", "0.05")
            .check()
            .readings();
    reading = one.readings().get(0);
    ofOne = new ReadingPlace(one);
    ofSeveral =
        new ReadingPlace(
            new ReadingSet(
                one.readings(),
                List.of(one.jobs().get(0), one.jobs().get(0)),
                List.of(),
                List.of(),
                List.of()));
  }

  @Test
  void of_one_workbook_the_sheet_and_the_cell_are_enough() {
    assertEquals("Continuity E9", ofOne.cell(IN_BOOK));
  }

  @Test
  void of_one_folder_the_file_within_it_and_the_cell_are_enough() {
    assertEquals("continuity.csv E9", ofOne.cell(IN_FOLDER));
  }

  @Test
  void of_several_files_each_is_named() {
    assertEquals("monday.xlsx!Continuity!E9", ofSeveral.cell(IN_BOOK));
  }

  @Test
  void a_reading_of_a_row_without_a_step_is_named_by_its_cell_alone() {
    assertEquals("", ReadingPlace.step(reading));
    assertEquals("continuity.csv D2", ofOne.of(reading));
  }

  @Test
  void beside_its_kind_a_reading_needs_no_sheet() {
    assertEquals("D2", ofOne.cellOfKind(reading));
  }
}
