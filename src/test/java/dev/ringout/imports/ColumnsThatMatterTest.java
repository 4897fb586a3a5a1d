package dev.ringout.imports;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.support.Run;
import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A column that may be a part of the answer, and that a way to read the table leaves out. */
class ColumnsThatMatterTest {
  @TempDir Path folder;

  private Run imported(String text) throws IOException {
    return TypedList.imported(folder, text);
  }

  private void assertAsked(String text) throws IOException {
    Run run = imported(text);
    assertEquals(65, run.code(), run.out());
    assertTrue(run.err().contains("not certain"), run.err());
  }

  @Test
  void a_strip_between_a_far_item_and_its_pin_is_never_passed_over() throws IOException {
    assertAsked(
        """
        Fus.,A,Alimentato da,Utenza,Morsetto utenza,mm²
        1,10,Batteria BS +,Pompa acqua,+,1.5
        2,10,Batteria BS +,Luci,L,1.5
        3,15,Batteria BS +,Argano,12V,4
        4,5,Batteria BS +,Pannello,1,0.75
        """);
  }

  @Test
  void pins_under_a_heading_that_says_what_they_change_to_are_no_far_ends() throws IOException {
    assertAsked(
        """
        Item,Define,Pin,Type,Detail,Desk Nano,Change TO Mega
        1,RUN1,3,OUT,lamp 1,Desk Nano,5
        2,RUN2,5,OUT,lamp 2,Desk Nano,6
        3,RUN3,6,OUT,lamp 3,Desk Nano,7
        4,RUN4,9,OUT,lamp 4,Desk Nano,8
        """);
  }

  @Test
  void what_a_pin_is_for_is_no_terminal_that_it_goes_to() throws IOException {
    assertAsked(
        """
        Sensor,Pin,I/O,Requirement
        Lock switch,1,Input,
        Gate switch,2,Input,Interrupt
        Lamp,6,Output,PWM
        Horn,7,Output,
        Wind vane,A0,Input,Analog
        Wind speed,A1,Input,Analog
        """);
  }

  @Test
  void pins_without_a_heading_beside_an_end_are_seen_among_dashes_too() throws IOException {
    assertAsked(
        """
        Wire,From,From pin,,To,To pin
        101,J1,3,3,P2,5
        102,J1,5,5,P2,6
        103,J1,6,6,P2,7
        104,J1,9,-,P2,8
        105,J1,10,-,P2,9
        """);
  }

  @Test
  void a_ground_with_a_mark_of_its_own_is_one_point_and_no_terminal_of_another_item()
      throws IOException {
    Run run =
        imported(
            """
            Repère fil,Départ,Borne,Arrivée,Borne
            101,X1,1,Masse M2,
            102,X1,2,Masse M2,
            103,X1,3,M2,U
            104,X1,4,M2,V
            """);
    assertEquals(0, run.code(), run.err());
    assertTrue(run.out().contains("Masse M2-1"), run.out());
  }
}
