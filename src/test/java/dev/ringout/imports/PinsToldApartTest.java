package dev.ringout.imports;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.support.Run;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What stands behind a pin's first word may be another name of it, or tell two pins apart. */
class PinsToldApartTest {
  @TempDir Path folder;

  private Run imported(String text, String... options) throws IOException {
    return TypedList.imported(folder, text, options);
  }

  @Test
  void plus_and_minus_of_a_supply_are_two_pins_of_a_net_list() throws IOException {
    Run run =
        imported(
            """
            net,ref,pin
            24V_RAW,PS1,24V +
            24V_RAW,S1,COM
            24V_SW,S1,NO
            24V_SW,K1,A1
            0V,PS1,24V -
            0V,K1,A2
            """,
            "-o",
            folder.resolve("out").toString() + "/");
    assertEquals(0, run.code(), run.err());
    String links = Files.readString(folder.resolve("out/links.csv"));
    assertTrue(links.contains("PS1,24V +,S1,COM"), links);
    assertTrue(links.contains("PS1,24V -,K1,A2"), links);
  }

  @Test
  void an_input_and_an_output_of_the_same_volts_are_two_pins_at_an_end() throws IOException {
    Run run =
        imported(
            """
            From,Pin,To,Pin
            X1,1,PS1,12V (IN)
            X1,2,PS1,12V (OUT)
            """);
    assertEquals(0, run.code(), run.err());
    assertTrue(
        run.out().contains("PS1-12V (IN)") && run.out().contains("PS1-12V (OUT)"), run.out());
  }

  @Test
  void a_function_behind_a_pin_s_number_is_another_name_of_it() throws IOException {
    Run run =
        imported(
            """
            From,Pin,To,Pin
            X1,1,A1,D2 (lamp)
            X1,2,A1,D3 (horn)
            """);
    assertEquals(0, run.code(), run.err());
    assertTrue(run.out().matches("(?s).*X1-1\\s+A1-D2\\s.*"), run.out());
    assertFalse(run.out().contains("D2 (lamp)"), run.out());
  }

  @Test
  void an_is_the_far_end_beside_von() throws IOException {
    Run run =
        imported(
            """
            Nr;Ader;Farbe;von;an
            W1;+24 V;rot;X1:1;K1:A1
            W2;0 V;blau;X1:2;K1:A2
            """);
    assertEquals(0, run.code(), run.err());
    assertTrue(run.out().matches("(?s).*X1-2\\s+K1-A2.*"), run.out());
  }
}
