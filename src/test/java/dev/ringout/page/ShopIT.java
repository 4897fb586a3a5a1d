package dev.ringout.page;

import static dev.ringout.page.ShopWithPage.ADMINISTRATOR;
import static dev.ringout.page.ShopWithPage.INSPECTOR;
import static dev.ringout.page.ShopWithPage.LEAD;
import static dev.ringout.page.ShopWithPage.PASSPHRASE;
import static dev.ringout.page.ShopWithPage.TESTER;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.Keys;

/** Whoever comes with a tablet signs in, and sees what is his to do. */
class ShopIT {
  @RegisterExtension static final InBrowser BROWSER = new InBrowser();

  @TempDir private Path folder;

  private static void signIn(Tab tab, String name) {
    tab.waitFor("#field-sign-in-pass");
    tab.fill("Name", name);
    tab.fill("Passphrase", PASSPHRASE);
    tab.press("Sign in");
    tab.waitFor("nav");
  }

  private static void signOut(Tab tab) {
    tab.press("Set up");
    tab.press("Sign out");
    tab.waitFor("#field-sign-in-pass");
  }

  private static Mechanic begun(Tab tab, String serial) {
    tab.go("#/units");
    tab.waitFor("#field-serial");
    tab.fill("Serial number", serial);
    tab.press("Test a new unit");
    tab.waitForText("#main", "holds the probes");
    tab.press("Start");
    tab.waitFor(".run");
    return new Mechanic(tab);
  }

  @Test
  void a_test_is_led_in_the_name_of_who_signed_in_and_another_looks_on() throws Exception {
    try (ShopWithPage shop = new ShopWithPage(folder, BenchWithPage.lamps(folder))) {
      Tab tab = BROWSER.open(shop.home());
      tab.fill("Name", TESTER);
      tab.fill("Passphrase", "not my passphrase");
      tab.press("Sign in");
      tab.waitForText("#banners", "The name or the passphrase is not right.");
      signIn(tab, TESTER);
      Mechanic mechanic = begun(tab, "0480");
      assertTrue(tab.text(".station").contains(TESTER), tab.text(".station"));
      mechanic.types("0.05");
      signOut(tab);
      assertFalse(tab.page().contains("0480"), "nothing of the shop is left on the tablet");

      signIn(tab, INSPECTOR);
      tab.waitForText("#main", "0480");
      assertFalse(tab.isThere("#new-unit"), "an inspector begins no test");
      assertFalse(tab.isThere("#new-list"), "nor hands a list in");
    }
  }

  @Test
  void who_looks_on_is_told_whose_test_it_is_and_may_take_it_over() throws Exception {
    try (ShopWithPage shop = new ShopWithPage(folder, BenchWithPage.lamps(folder))) {
      Tab tab = BROWSER.open(shop.home());
      signIn(tab, TESTER);
      begun(tab, "0481");
      shop.signedIn(TESTER);
      // The same browser with another person: the one before is in with another tablet still.
      tab.driver().manage().deleteAllCookies();
      tab.reload();
      signIn(tab, LEAD);
      tab.go("#/bench");
      tab.waitForText("#main", TESTER + " leads this test.");
      tab.press("Take it over");
      tab.waitForText("#main", "Ask first");
      tab.press("Go on");
      tab.waitFor(".run");
      tab.waitForText(".station", LEAD);
      assertFalse(tab.page().contains("leads this test"));
    }
  }

  @Test
  void an_administrator_lets_people_in_and_withdraws_them() throws Exception {
    try (ShopWithPage shop = new ShopWithPage(folder)) {
      Tab tab = BROWSER.open(shop.home());
      signIn(tab, ADMINISTRATOR);
      tab.go("#/people");
      tab.waitFor(".people");
      tab.fill("Name, in full", "Hanna Weiss");
      tab.script("document.querySelector('[data-key=person-roles-tester]').click()");
      tab.fill("First passphrase", PASSPHRASE);
      tab.press("Let this person sign in");
      tab.waitForText("#banners", "Hanna Weiss can sign in.");
      tab.waitForText(".people", "Hanna Weiss");
      tab.press("Withdraw Hanna Weiss");
      tab.fill("Why", "left the shop");
      tab.press("Withdraw");
      tab.waitForText(".people", "withdrawn: left the shop");
      tab.press("Withdraw " + ADMINISTRATOR);
      tab.fill("Why", "tired");
      tab.press("Withdraw");
      tab.waitForText("#banners", "the last administrator");
    }
  }

  @Test
  void the_screens_of_a_shop_keep_the_rules_in_every_look_and_size() throws Exception {
    List<String> wrong = new ArrayList<>();
    try (ShopWithPage shop = new ShopWithPage(folder, BenchWithPage.lamps(folder))) {
      Tab tab = BROWSER.open(shop.home());
      look(tab, "sign-in", wrong);
      signIn(tab, ADMINISTRATOR);
      tab.go("#/people");
      tab.waitFor(".people");
      look(tab, "people", wrong);
      tab.press("Set up");
      look(tab, "signed-in", wrong);
      tab.keys(Keys.ESCAPE);
      signOut(tab);
      signIn(tab, TESTER);
      begun(tab, "0482");
      tab.driver().manage().deleteAllCookies();
      tab.reload();
      signIn(tab, LEAD);
      tab.go("#/bench");
      tab.waitForText("#main", TESTER + " leads this test.");
      look(tab, "looking-on", wrong);
      tab.press("Take it over");
      tab.waitForText("#main", "Ask first");
      look(tab, "taking-over", wrong);
      tab.press("Go on");
      Mechanic lead = new Mechanic(tab);
      tab.waitFor(".run");
      lead.types("o");
      lead.types("o");
      lead.ends();
      tab.go("#/shop");
      tab.waitFor(".bars");
      look(tab, "shop", wrong);
    }
    assertEquals(List.of(), wrong);
  }

  private static void look(Tab tab, String name, List<String> wrong) throws IOException {
    for (String scheme : List.of("light", "dark")) {
      for (int[] size : new int[][] {{390, 844}, {1440, 900}}) {
        tab.look(scheme, "no-preference");
        tab.size(size[0], size[1]);
        String where = name + ", " + scheme + ", " + size[0] + ": ";
        Axe.violations(tab).forEach(one -> wrong.add(where + one));
        if (!tab.isThere("dialog[open]")) {
          // What lies under a dialog is out of reach, and is looked at by itself.
          ((List<?>) tab.script(LooksIT.WRONG, 24)).forEach(one -> wrong.add(where + one));
        }
        String pictures = System.getProperty("ringout.pictures", "");
        if (!pictures.isEmpty()) {
          Files.write(
              Path.of(pictures, name + "-" + scheme + "-" + size[0] + ".png"), tab.picture());
        }
      }
    }
  }
}
