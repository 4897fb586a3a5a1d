package dev.ringout.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.Keys;

/** How the screens look: to who sees badly, wears gloves, or has a small tablet. */
class LooksIT {
  @RegisterExtension static final InBrowser BROWSER = new InBrowser();

  private static final List<int[]> SIZES =
      List.of(
          new int[] {820, 1180},
          new int[] {390, 844},
          new int[] {1440, 900},
          new int[] {1920, 1080});

  /** Whatever is cut off at the side, is too small for a glove, or lies on something else. */
  static final String WRONG =
      """
      const wrong = [];
      const wide = document.documentElement.scrollWidth - innerWidth;
      if (wide > 0) wrong.push(`the page is ${wide} px too wide`);
      const shown = (one) => one.checkVisibility({ visibilityProperty: true })
        && !one.closest('.unseen, details:not([open]) > :not(summary)');
      const named = (one) => one.getAttribute('aria-label') || one.innerText || one.id || one.className;
      const all = [...document.querySelectorAll('button, a[href], input, select, textarea, summary')]
        .filter(shown).filter((one) => !one.matches('.skip, .unseen-file, [readonly]'));
      const boxes = all.map((one) => [one, one.getBoundingClientRect()]);
      const least = arguments[0];
      for (const [one, box] of boxes) {
        if (box.height < least || box.width < least)
          wrong.push(`${named(one)} is ${Math.round(box.width)} x ${Math.round(box.height)}`);
      }
      boxes.forEach(([one, a], at) => boxes.slice(at + 1).forEach(([other, b]) => {
        const over = Math.min(a.right, b.right) - Math.max(a.left, b.left) > 1
          && Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top) > 1;
        if (over && !one.contains(other) && !other.contains(one))
          wrong.push(`${named(one)} lies on ${named(other)}`);
      }));
      for (const one of document.querySelectorAll('button, .name, .should, .now, .switches, h1, .stage, .headline')) {
        if (shown(one) && one.scrollWidth > one.clientWidth + 1 && getComputedStyle(one).display !== 'inline')
          wrong.push(`${named(one)} is cut`);
      }
      return wrong.map((one) => one.replace(/\\s+/g, ' '));
      """;

  private static final String OUT_OF_VIEW =
      """
      return ['.run', '.points', '.value', '.take', '.back'].filter((one) => {
        const box = document.querySelector(one)?.getBoundingClientRect();
        return !box || box.top < -1 || box.bottom > innerHeight + 1 || box.left < -1 || box.right > innerWidth + 1;
      }).map((one) => one + ' ' + JSON.stringify(document.querySelector(one)?.getBoundingClientRect()));
      """;

  @TempDir private Path folder;

  /** A bench with a unit at which something failed, and the addresses of its screens. */
  private Map<String, String> screens(Mechanic mechanic) {
    mechanic.begins("0450", "R. Adeyemi");
    mechanic.reads(BuiltUnit.lamps());
    mechanic.types("o");
    mechanic.types("o");
    String unit =
        String.valueOf(
            mechanic.tab.script(
                "return document.querySelector('[data-key=tab-unit]').getAttribute('href').split('/')[2]"));
    Map<String, String> screens = new LinkedHashMap<>();
    screens.put("bench", "#/bench");
    screens.put("units", "#/units");
    screens.put("unit", "#/unit/" + unit);
    screens.put("record", "#/record/" + unit);
    screens.put("ticks", "#/unit/" + unit + "/ticks");
    screens.put("readings", "#/unit/" + unit + "/readings");
    return screens;
  }

  private static void show(Tab tab, String name, String hash) {
    tab.go(hash);
    String screen = Set.of("ticks", "readings").contains(name) ? "unit" : name;
    tab.waitFor("html[data-screen='" + screen + "']");
    tab.waitFor(
        Map.of(
                "bench", ".run",
                "units", ".cards",
                "unit", ".faces",
                "record", "#sign",
                "ticks", "ol.ticks",
                "readings", "ol.readings")
            .getOrDefault(name, "h1"));
  }

  @Test
  void every_screen_keeps_the_rules_of_accessibility_in_every_look() throws Exception {
    List<String> wrong = new ArrayList<>();
    try (BenchWithPage bench = BenchWithPage.typed(folder, BenchWithPage.lamps(folder))) {
      Mechanic mechanic = new Mechanic(BROWSER.open(bench.ticket()));
      Map<String, String> screens = screens(mechanic);
      for (String[] look :
          new String[][] {
            {"light", "no-preference"},
            {"dark", "no-preference"},
            {"light", "more"},
            {"dark", "more"}
          }) {
        mechanic.tab.look(look[0], look[1]);
        screens.forEach(
            (name, hash) -> {
              show(mechanic.tab, name, hash);
              Axe.violations(mechanic.tab)
                  .forEach(one -> wrong.add(name + ", " + String.join(" ", look) + ": " + one));
            });
      }
    }
    assertEquals(List.of(), wrong);
  }

  @Test
  void on_every_size_of_screen_nothing_is_cut_or_lies_on_something_else() throws Exception {
    List<String> wrong = new ArrayList<>();
    try (BenchWithPage bench = BenchWithPage.typed(folder, BenchWithPage.lamps(folder))) {
      Mechanic mechanic = new Mechanic(BROWSER.open(bench.ticket()));
      Tab tab = mechanic.tab;
      Map<String, String> screens = screens(mechanic);
      for (int[] size : SIZES) {
        tab.size(size[0], size[1]);
        screens.forEach(
            (name, hash) -> {
              show(tab, name, hash);
              Tab.pause(150);
              List<Object> found =
                  new ArrayList<>((List<?>) tab.script(WRONG, name.equals("bench") ? 60 : 24));
              if (name.equals("bench")) {
                found.addAll((List<?>) tab.script(OUT_OF_VIEW));
              }
              found.forEach(one -> wrong.add(name + ", " + size[0] + " x " + size[1] + ": " + one));
            });
      }
    }
    assertEquals(List.of(), wrong);
  }

  @Test
  void the_keyboard_comes_to_the_step_first_and_goes_on_in_reading_order() throws Exception {
    try (BenchWithPage bench = BenchWithPage.typed(folder, BenchWithPage.lamps(folder))) {
      Mechanic mechanic = new Mechanic(BROWSER.open(bench.ticket()));
      mechanic.begins("0451", "R. Adeyemi");
      Tab tab = mechanic.tab;
      tab.reload();
      tab.waitFor(".run");
      tab.keys(Keys.TAB);
      assertEquals("To the step", tab.script("return document.activeElement.innerText"));
      tab.keys(Keys.ENTER);
      assertEquals("main", tab.script("return document.activeElement.id"));
      assertEquals(
          List.of(),
          tab.script(
              "return [...document.querySelectorAll('[tabindex]')]"
                  + ".filter((one) => one.tabIndex > 0).map((one) => one.outerHTML)"));
      assertTrue(
          tab.text("#announce").contains("J one, large A to P one, one. Should read"),
          tab.text("#announce"));
    }
  }
}
