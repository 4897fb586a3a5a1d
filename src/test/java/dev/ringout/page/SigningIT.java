package dev.ringout.page;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.support.Run;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;

/** Who stands for a record, and by which key. */
class SigningIT {
  @RegisterExtension static final InBrowser BROWSER = new InBrowser();

  @TempDir private Path folder;

  private static void sign(Tab tab, String name, String passphrase) {
    tab.fill("Name", name);
    tab.choose("As", "Inspector");
    tab.fill("Key file on the bench", "inspector.key");
    tab.fill("Its passphrase", passphrase);
    tab.press("Sign this record");
  }

  @Test
  void an_inspector_signs_with_a_key_and_the_tester_can_not() throws Exception {
    Path keys = Files.createDirectories(folder.resolve("keys"));
    Path pass = Files.writeString(folder.resolve("pass"), "swing bridge\n");
    Run made = Run.of("report", "--new-key", keys.resolve("inspector.key"), "--passphrase", pass);
    assertEquals(0, made.code(), made.err());
    try (BenchWithPage bench = BenchWithPage.typed(folder, BenchWithPage.lamps(folder))) {
      Mechanic mechanic = new Mechanic(BROWSER.open(bench.ticket()));
      mechanic.begins("0470", "R. Adeyemi");
      mechanic.types("0.07");
      mechanic.ends();
      Tab tab = mechanic.tab;
      tab.press("Record");
      tab.waitForText("#main", "Nobody has signed");
      sign(tab, "R. Adeyemi", "swing bridge");
      tab.waitForText("#banners", "can't sign as its inspector");
      sign(tab, "M. Lindqvist", "swing");
      tab.waitForText("#banners", "passphrase");
      assertTrue(tab.page().contains("Nobody has signed"));
      Files.setPosixFilePermissions(
          keys.resolve("inspector.key"), PosixFilePermissions.fromString("rw-r--r--"));
      sign(tab, "M. Lindqvist", "swing bridge");
      tab.waitForText("#main", "M. Lindqvist: signed as inspector");
      tab.waitForText("#banners", "others can read inspector.key too");
      assertTrue(bench.said("units", "0470").out().contains("signed by M. Lindqvist as inspector"));
      Path file = folder.resolve("record.html");
      bench.said("report", "unit:0470", "-o", file);
      assertArrayEquals(
          Files.readAllBytes(file),
          tab.fetched(
              tab.script("return document.querySelector('a[href$=\".html\"]').getAttribute('href')")
                  .toString()));
      assertEquals(0, bench.said("store", "check").code());
    }
  }
}
