package dev.ringout.imports;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.support.Run;
import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Ends that people write in words, without an item and a pin: common practice, no source. */
class EndsInWordsTest {
  @TempDir Path folder;

  private Run imported(String rows) throws IOException {
    return TypedList.imported(folder, "Wire,From,To,Color\n" + rows);
  }

  @Test
  void a_rail_of_a_supply_is_one_point_however_many_wires_it_has() throws IOException {
    for (String rail : new String[] {"Top (+) rail", "Bottom - rail", "5V Rail", "VCC rail"}) {
      Run run = imported("1,J1-1," + rail + ",RED\n2,J1-2," + rail + ",RED\n3,J1-3,K1-A1,BLK\n");
      assertEquals(0, run.code(), run.err());
      assertTrue(run.err().contains(rail + " is named 2 times without a pin: taken as one"), rail);
    }
  }

  @Test
  void a_rail_that_no_supply_is_told_of_may_carry_several_terminals() throws IOException {
    Run run = imported("1,J1-1,DIN rail,RED\n2,J1-2,DIN rail,RED\n3,J1-3,K1-A1,BLK\n");
    assertTrue(run.err().contains("each wire has a terminal of its own"), run.err());
  }

  @Test
  void a_terminal_that_is_called_by_its_supply_is_one_point() throws IOException {
    Run run = imported("1,J1-1,Supply +5V,RED\n2,J1-2,Supply +5V,RED\n3,J1-3,K1-A1,BLK\n");
    assertTrue(run.err().contains("Supply +5V is named 2 times without a pin: taken as one"));
  }

  /** A lamp has two terminals, whatever it is rated for. */
  @Test
  void a_rating_behind_a_name_is_no_terminal() throws IOException {
    Run run = imported("1,J1-1,Lamp 24V,RED\n2,J1-2,Lamp 24V,BLK\n3,J1-3,K1-A1,BLK\n");
    assertTrue(run.err().contains("each wire has a terminal of its own"), run.err());
  }

  @Test
  void the_value_of_a_part_is_no_letter_that_looks_like_another() throws IOException {
    Run run =
        imported(
            "1,J1-1,330\u03a9 resistor left,RED\n2,J1-2,470 \u00b5F cap +,RED\n3,J1-3,K1-A1,BLK\n");
    assertEquals(0, run.code(), run.err());
    assertFalse(run.err().contains("leaves open"), run.err());
    Run cyrillic = imported("1,J1-1,P2-\u0410,RED\n2,J1-2,P2-B,RED\n3,J1-3,P2-C,BLK\n");
    assertEquals(65, cyrillic.code(), cyrillic.out());
  }

  @Test
  void two_ends_in_words_are_never_read_as_one() throws IOException {
    Run run =
        imported("1,J1-1,VIN board + COM relay,RED\n2,J1-2,GND board,RED\n3,J1-3,K1-A1,BLK\n");
    assertEquals(65, run.code(), run.out());
    assertTrue(run.err().contains("--read-as \"VIN board + COM relay=POINT\""), run.err());
  }
}
