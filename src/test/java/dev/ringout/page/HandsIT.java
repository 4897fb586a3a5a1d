package dev.ringout.page;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.seal.Digest;
import java.awt.image.BufferedImage;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.Keys;

/** What somebody with a probe in each hand does beside reading. */
class HandsIT {
  @RegisterExtension static final InBrowser BROWSER = new InBrowser();

  @TempDir private Path folder;
  private BenchWithPage bench;
  private Mechanic mechanic;
  private Tab tab;

  @BeforeEach
  void begin() throws Exception {
    bench = BenchWithPage.typed(folder, BenchWithPage.lamps(folder), BenchWithPage.motor(folder));
    tab = BROWSER.open(bench.ticket());
    mechanic = new Mechanic(tab);
  }

  @AfterEach
  void end() {
    bench.close();
  }

  private void lamps() {
    mechanic.begins("0420", "R. Adeyemi");
  }

  @Test
  void a_failing_value_is_asked_for_once_more_before_it_is_believed() {
    lamps();
    String first = mechanic.step();
    mechanic.types("o");
    assertEquals(first, mechanic.step());
    tab.waitForText(".expect", "Read once more");
    mechanic.types("0.07");
    assertNotEquals(first, mechanic.step());
    assertTrue(bench.said("check", "unit:0420").out().contains("1 replaced by later ones"));
  }

  @Test
  void a_reading_is_taken_back_with_a_reason_and_asked_for_again() {
    lamps();
    String first = mechanic.step();
    mechanic.types("0.07");
    assertNotEquals(first, mechanic.step());
    tab.keys(Keys.BACK_SPACE);
    tab.waitForText("dialog", "It stays in the record as taken back");
    Tab.pause(Mechanic.LOOKING_MILLIS);
    tab.keys("1");
    tab.until("asked again", () -> first.equals(mechanic.step()));
    tab.waitForText(".last", "Taken back");
    assertTrue(bench.said("units", "0420").out().contains("The probe slipped"));
  }

  /** Found by an attacker: a quick hand at the number pad was taken for a scanner. */
  @Test
  void a_value_that_is_typed_quickly_is_a_value() {
    lamps();
    String first = mechanic.step();
    Tab.pause(Mechanic.LOOKING_MILLIS);
    tab.types("0.07", 70);
    tab.until("kept", () -> !first.equals(mechanic.step()));
    tab.waitForText(".last", "70 mΩ");
  }

  /** Found by an attacker: the first digit stayed, and was taken as the value. */
  @Test
  void of_digits_that_a_scanner_sent_nothing_stays() {
    lamps();
    String first = mechanic.step();
    Tab.pause(Mechanic.LOOKING_MILLIS);
    tab.keys("0");
    tab.scan("031");
    tab.waitForText("#banners", "nothing is taken");
    tab.keys(Keys.PAGE_DOWN);
    tab.waitForText("#banners", "Type first");
    assertEquals(first, mechanic.step());
  }

  /** Found by an attacker: a numbered sleeve that is scanned slowly was kept as so many megohms. */
  @Test
  void digits_that_are_a_name_here_are_asked_about() throws Exception {
    mechanic.begins("600", "R. Adeyemi");
    String first = mechanic.step();
    Tab.pause(Mechanic.LOOKING_MILLIS);
    tab.types("600", 70);
    tab.waitForText("dialog", "The name 600");
    tab.press("Neither");
    assertEquals(first, mechanic.step());
  }

  /** Found by an attacker: the number of a sleeve that no list has was kept as so many ohms. */
  @Test
  void a_number_as_quick_as_a_slow_scanner_s_is_taken_once_it_is_said_to_be_typed() {
    lamps();
    String first = mechanic.step();
    Tab.pause(Mechanic.LOOKING_MILLIS);
    tab.types("31", 70);
    tab.waitForText("#banners", "press Enter once more");
    assertEquals(first, mechanic.step());
    tab.types("57", 70);
    tab.waitForText("#banners", "57 came nearly as fast");
    assertEquals(first, mechanic.step());
    tab.keys(Keys.ENTER);
    tab.waitForText(".last", "57 Ω");
  }

  @Test
  void a_step_is_left_out_with_a_reason_and_stays_a_gap() {
    lamps();
    String first = mechanic.step();
    tab.keys("s");
    tab.waitForText("dialog", "A step that was skipped proves nothing");
    tab.fill("Another reason", "the lid is screwed on");
    tab.keys(Keys.ENTER);
    tab.until("another step", () -> !first.equals(mechanic.step()));
    mechanic.readsAll(BuiltUnit.lamps());
    tab.waitForText(".value", "1 step was skipped");
    mechanic.ends();
    tab.waitForText(".headline", "NOT COMPLETE");
    assertTrue(tab.page().contains("the lid is screwed on"), tab.page());
    assertEquals(2, bench.said("check", "unit:0420").code());
  }

  @Test
  void a_note_and_a_photo_are_kept_and_stand_in_the_history() throws Exception {
    lamps();
    tab.keys("n");
    tab.fill("What you saw", "Insulation nicked at P1-3");
    tab.press("Keep the note");
    tab.until("closed", () -> !tab.isThere("dialog[open]"));
    Path picture = folder.resolve("nick.png");
    ImageIO.write(new BufferedImage(40, 30, BufferedImage.TYPE_INT_RGB), "png", picture.toFile());
    tab.keys("p");
    tab.waitFor("#field-photo");
    tab.upload("field-photo", picture);
    tab.fill("What it shows", "The nick, from above");
    tab.press("Keep the photo");
    tab.waitForText("#banners", "The photo is kept");
    tab.press("Unit");
    tab.waitForText(".history", "Insulation nicked at P1-3");
    String unit = tab.script("return location.hash.split('/')[2];").toString();
    assertArrayEquals(
        Files.readAllBytes(picture),
        tab.fetched("/api/units/" + unit + "/photos/" + Digest.of(Files.readAllBytes(picture))));
  }

  @Test
  void a_point_that_is_typed_or_scanned_is_gone_to() {
    lamps();
    tab.keys("/");
    tab.waitFor("#field-jump");
    tab.keys("P2-1", Keys.ENTER);
    tab.until("there", () -> mechanic.step().contains("P2-1"));
    tab.scan("J1-a");
    tab.until("there", () -> mechanic.step().contains("J1-a"));
    tab.scan("W3");
    tab.until("there", () -> mechanic.step().contains("P1-3"));
    String now = mechanic.step();
    tab.scan("W99");
    tab.waitForText("#banners", "W99");
    assertEquals(now, mechanic.step());
    tab.scan("0420");
    tab.waitForText("h1", "Unit 0420");
  }

  @Test
  void an_insulation_step_takes_nothing_before_its_cautions_are_confirmed() throws Exception {
    tab.waitFor("#field-list");
    tab.choose("Made to", "HSB-2302");
    mechanic.begins("0501", "R. Adeyemi");
    for (int i = 0; i < 20 && !tab.isThere("[data-key=confirm]"); i++) {
      mechanic.reads(BuiltUnit.motor());
    }
    tab.waitForText(".gate", "Discharge capacitors before and after");
    String step = mechanic.step();
    Tab.pause(400);
    tab.keys("5", "5", "0", Keys.SPACE);
    tab.waitForText("#banners", "Confirm first");
    assertEquals(step, mechanic.step());
    tab.keys("c");
    tab.until("confirmed", () -> !tab.isThere("[data-key=confirm]"));
    tab.waitForText(".expect", "500 V, put on at the tester by hand. Discharge after.");
    mechanic.readsAll(BuiltUnit.motor());
    mechanic.ends();
    assertTrue(bench.said("units", "0501").out().contains("confirmed: people clear"));
  }

  @Test
  void the_whole_of_a_test_is_done_by_keys_alone() {
    tabTo("field-serial");
    tab.keys("0421", Keys.ENTER);
    tab.waitFor("#field-tester");
    tabTo("field-tester");
    tab.keys("K. Novak", Keys.ENTER);
    tab.waitFor(".run");
    mechanic.readsAll(BuiltUnit.lamps());
    tabTo("finish");
    tab.keys(Keys.ENTER);
    tab.waitFor("[data-key=finish-now]");
    tabTo("finish-now");
    tab.keys(Keys.ENTER);
    tab.waitForText(".headline", "CONFORMS");
  }

  /** Goes from one to the next until the keyboard stands on it. */
  private void tabTo(String name) {
    for (int i = 0; i < 40; i++) {
      if (tab.script(
              "const one = document.activeElement; return one.id === arguments[0] ||"
                  + " one.dataset.key === arguments[0];",
              name)
          .equals(true)) {
        return;
      }
      tab.keys(Keys.TAB);
    }
    throw new AssertionError("the keyboard never comes to " + name);
  }
}
