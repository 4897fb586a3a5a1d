package dev.ringout.page;

import dev.ringout.bench.Bench;
import dev.ringout.bench.BenchSetup;
import dev.ringout.bench.BenchState;
import dev.ringout.bench.BenchState.StepState;
import dev.ringout.jobs.LedTests.ListAtHand;
import dev.ringout.jobs.StoreAtHand;
import dev.ringout.meter.Settling;
import dev.ringout.meter.Ticks;
import dev.ringout.units.Text;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneOffset;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.openqa.selenium.chrome.ChromeDriver;

/**
 * Takes the pictures of the lead hand's screens: three benches at work on cables of the bridge's
 * gates. Arguments: a folder for the pictures; {@code light} or {@code dark}; which screens, of
 * {@code shop}, {@code lot} and {@code keys}.
 */
public final class ShopPictures {
  private static final int WIRES = 9;

  /** The kinds of screens that people have. */
  private record Size(String name, int width, int height) {}

  private static final List<Size> SIZES =
      List.of(
          new Size("tablet", 820, 1180), new Size("phone", 390, 844), new Size("desk", 1440, 900));

  private ShopPictures() {}

  private static Path cable(Path list) throws IOException {
    Files.createDirectories(list);
    StringBuilder wires = new StringBuilder("Wire,From,To,Gauge,Length (m)\n");
    for (int i = 1; i <= WIRES; i++) {
      wires.append(Text.of("W%1$d,J7-%1$d,TB2-%1$d,20,2%n", i));
    }
    Files.writeString(list.resolve("wires.csv"), wires.toString());
    Files.writeString(
        list.resolve("header.csv"), "Name,Value\ntitle,Gate cable\ndrawing,HSB-2214\nrevision,A\n");
    Files.writeString(list.resolve("limits.csv"), "Name,Value,Unit\ninsulation test,none,\n");
    return list;
  }

  /** Takes them. */
  public static void main(String[] args) throws Exception {
    Path pictures = Files.createDirectories(Path.of(args[0]));
    Path folder = Files.createTempDirectory("ringout-pictures");
    Ticks ticks = new ScreenPictures.EachLook();
    Path cable = cable(folder.resolve("gate-cable"));
    try (ShopWithPage shop = new ShopWithPage(folder, ticks, cable)) {
      ListAtHand list = BenchWithPage.list(shop.door, cable);
      Bench first = shop.page.bench();
      test(first, list, "0731", ShopWithPage.TESTER, "J7-4");
      test(first, list, "0732", ShopWithPage.TESTER, "");
      test(first, list, "0733", ShopWithPage.TESTER, "J7-4");
      test(first, list, "0734", ShopWithPage.TESTER, "J7-8");
      test(first, list, "0735", ShopWithPage.TESTER, "");
      begin(first, list, "0736", ShopWithPage.TESTER, "2027-06-30");
      read(first, "", 5);
      try (Bench second = bench(folder, ticks, "Bench 2");
          Bench third = bench(folder, ticks, "Bench 3")) {
        begin(second, list, "0737", ShopWithPage.SECOND_TESTER, "2026-11-20");
        read(second, "", 2);
        begin(third, list, "0738", ShopWithPage.LEAD, "2026-12-08");
        for (Bench one : List.of(first, second, third)) {
          one.lookForOthers();
        }
        ChromeDriver browser = InBrowser.start();
        try {
          take(browser, shop, pictures, List.of(args).subList(1, args.length));
        } finally {
          browser.quit();
        }
      }
    }
  }

  private static Bench bench(Path folder, Ticks ticks, String name) throws Exception {
    return Bench.open(
        new BenchSetup(
            new StoreAtHand(folder.resolve("units.db").toString(), Map.of()),
            name,
            "none",
            Optional.empty(),
            "none",
            Optional.empty(),
            folder,
            false,
            0,
            1,
            ticks,
            ZoneOffset.UTC),
        new Unheard());
  }

  /** Nobody looks at its page. */
  private static final class Unheard implements Bench.Listener {
    @Override
    public void state(BenchState state) {}

    @Override
    public void live(String text, Settling.Stage stage) {}

    @Override
    public void tone(BenchState.Tone tone) {}

    @Override
    public void defect(Throwable cause) {
      cause.printStackTrace();
    }
  }

  private static void begin(
      Bench bench, ListAtHand list, String serial, String tester, String calibrationDue)
      throws Exception {
    Map<String, String> conditions =
        Map.of("instrument", "ohmmeter", "calibration due", calibrationDue);
    bench.start(list, serial, new Bench.Start(tester, conditions, Set.of(), Set.of(), ""));
  }

  private static void test(
      Bench bench, ListAtHand list, String serial, String tester, String brokenAt)
      throws Exception {
    begin(bench, list, serial, tester, "2027-06-30");
    read(bench, brokenAt, Integer.MAX_VALUE);
    bench.finish();
  }

  private static void read(Bench bench, String brokenAt, int steps) throws Exception {
    for (int i = 0; i < steps; i++) {
      BenchState.SessionState session = ScreenPictures.explained(bench);
      if (session.offer().isPresent()) {
        session = bench.lead(true).session().orElseThrow();
      }
      if (session.step().isEmpty()) {
        return;
      }
      StepState step = session.step().get();
      boolean broken = step.from().text().equals(brokenAt) || step.to().text().equals(brokenAt);
      boolean joined = step.asks() == BenchState.Asks.JOINED && !broken;
      bench.typed(step.id(), joined ? Text.of("0.07%d", step.number() % 4) : "OL", "");
    }
  }

  private static void take(
      ChromeDriver browser, ShopWithPage shop, Path pictures, List<String> schemeAndScreens)
      throws Exception {
    browser.executeCdpCommand("Emulation.setTimezoneOverride", Map.of("timezoneId", "UTC"));
    browser.get(shop.home().toString());
    Tab tab = new Tab(browser);
    tab.look(schemeAndScreens.get(0), "no-preference");
    tab.waitFor("#field-sign-in-pass");
    tab.fill("Name", ShopWithPage.LEAD);
    tab.fill("Passphrase", ShopWithPage.PASSPHRASE);
    tab.press("Sign in");
    tab.waitFor("nav");
    tab.go("#/shop");
    tab.waitFor(".bars");
    Map<String, String> screens = new LinkedHashMap<>();
    screens.put("shop", "#/shop");
    screens.put(
        "lot",
        String.valueOf(tab.script("return document.querySelector('a[data-key^=lot-]').hash;")));
    screens.put("keys", "#/record/" + shop.signedIn(ShopWithPage.LEAD).unit("0732"));
    screens.keySet().retainAll(schemeAndScreens);
    for (Map.Entry<String, String> screen : screens.entrySet()) {
      tab.go(screen.getValue());
      tab.waitFor(screen.getKey().equals("keys") ? "#own-keys" : ".bars");
      if (screen.getKey().equals("keys")) {
        tab.press("Make a key");
        tab.script("document.getElementById('own-keys').scrollIntoView();");
      }
      for (Size size : SIZES) {
        tab.size(size.width(), size.height());
        if (screen.getKey().equals("keys")) {
          tab.script("document.getElementById('own-keys').scrollIntoView();");
        }
        tab.until(
            "all is still", () -> tab.script("return document.getAnimations().length;").equals(0L));
        ScreenPictures.write(
            tab.picture(), pictures.resolve(screen.getKey() + "-" + size.name() + ".png"));
      }
    }
  }
}
