package dev.ringout.page;

import dev.ringout.Ringout;
import dev.ringout.bench.Bench;
import dev.ringout.bench.BenchSetup;
import dev.ringout.bench.BenchState;
import dev.ringout.bench.BenchState.StepState;
import dev.ringout.harness.Point;
import dev.ringout.harness.SwitchState;
import dev.ringout.jobs.Answer;
import dev.ringout.jobs.LedTests.ListAtHand;
import dev.ringout.jobs.StoreAtHand;
import dev.ringout.meter.Ticks;
import dev.ringout.meter.practice.PracticeUnit;
import dev.ringout.readings.Side;
import dev.ringout.standards.Tables;
import java.awt.image.BufferedImage;
import java.awt.image.DataBuffer;
import java.awt.image.IndexColorModel;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import javax.imageio.ImageIO;
import org.openqa.selenium.chrome.ChromeDriver;

/**
 * Takes the pictures of the four screens that the documents show: the sample bridge with one slip
 * in it, the same each time. Arguments: a folder for the pictures.
 */
public final class ScreenPictures {
  private static final Path LIST = Path.of("harness-samples/swing-bridge/junction-box.xlsx");
  private static final int STEPS = 60;
  private static final long SEED = 4;
  private static final int COLOURS = 16;

  private ScreenPictures() {}

  /** The kinds of screens that people have at a bench. */
  private record Size(String name, int width, int height) {}

  private static final List<Size> SIZES =
      List.of(
          new Size("tablet", 820, 1180), new Size("phone", 390, 844), new Size("desk", 1440, 900));

  /** A clock that goes on a second with each look at it. */
  static final class EachLook implements Ticks {
    private Instant now = Instant.parse("2026-11-30T08:00:00Z");

    @Override
    public synchronized Instant now() {
      now = now.plusSeconds(1);
      return now;
    }

    @Override
    public long millis() {
      return 0;
    }
  }

  /** Takes them. */
  public static void main(String[] args) throws Exception {
    Path pictures = Files.createDirectories(Path.of(args[0]));
    Path folder = Files.createTempDirectory("ringout-pictures");
    StoreAtHand store = new StoreAtHand(folder.resolve("units.db").toString(), Map.of());
    Ringout door = Ringout.onFilesAnd(store);
    ListAtHand list =
        door.ledTests()
            .list(LIST)
            .match(
                Answer.Given::value,
                refused -> {
                  throw new IllegalStateException(String.valueOf(refused.problems()));
                });
    BenchSetup setup =
        new BenchSetup(
            store,
            "Bench 1",
            "none",
            Optional.empty(),
            "none",
            Optional.empty(),
            folder,
            false,
            0,
            SEED,
            new EachLook(),
            ZoneOffset.UTC);
    try (BenchPage page =
        BenchPage.open(door, setup, List.of(list), 0, Throwable::printStackTrace)) {
      PracticeUnit unit = PracticeUnit.of(list.harness(), Tables.published(), SEED, 1);
      System.out.println(unit.slips());
      measure(page.bench(), list, unit);
      ChromeDriver browser = InBrowser.start();
      try {
        take(browser, page, pictures);
      } finally {
        browser.quit();
      }
    }
  }

  private static void measure(Bench bench, ListAtHand list, PracticeUnit unit) throws Exception {
    for (String serial : List.of("0416", "0418")) {
      bench.start(
          list,
          serial,
          new Bench.Start("R. Adeyemi", Map.of("temperature", "21 °C"), Set.of(), Set.of(), ""));
      int steps = serial.equals("0418") ? STEPS : 8;
      for (int i = 0; i < steps; i++) {
        BenchState.SessionState session = explained(bench);
        if (session.offer().isPresent()) {
          session = bench.lead(true).session().orElseThrow();
        }
        StepState step = session.step().orElseThrow();
        double ohms = unit.ohms(side(step.from()), side(step.to()), SwitchState.normal());
        bench.typed(
            step.id(),
            Double.isInfinite(ohms) ? "OL" : Math.round(ohms * 1000) / 1000.0 + " ohm",
            "");
      }
    }
  }

  static BenchState.SessionState explained(Bench bench) {
    while (bench.state().session().orElseThrow().found().working()) {
      Tab.pause(5);
    }
    return bench.state().session().orElseThrow();
  }

  private static Side side(BenchState.SideState side) {
    return side.rest()
        ? new Side.Rest()
        : new Side.Points(
            side.points().stream().map(point -> new Point(point.item(), point.pin())).toList());
  }

  private static void take(ChromeDriver browser, BenchPage page, Path pictures) throws Exception {
    browser.executeCdpCommand("Emulation.setTimezoneOverride", Map.of("timezoneId", "UTC"));
    browser.get(page.ticket().toString());
    Tab tab = new Tab(browser);
    tab.waitFor(".run");
    tab.until("explained", () -> !tab.text(".beside").contains("working"));
    String unit = page.bench().state().session().orElseThrow().unit().id();
    Map<String, String> screens = new LinkedHashMap<>();
    screens.put("bench", ".run");
    screens.put("units", ".cards");
    screens.put("unit", ".faces");
    screens.put("record", "#sign");
    for (Size size : SIZES) {
      tab.size(size.width(), size.height());
      for (Map.Entry<String, String> screen : screens.entrySet()) {
        String name = screen.getKey();
        tab.go("#/" + name + (name.equals("unit") || name.equals("record") ? "/" + unit : ""));
        tab.waitFor("html[data-screen=" + name + "] " + screen.getValue());
        tab.until(
            "all is still", () -> tab.script("return document.getAnimations().length;").equals(0L));
        write(tab.picture(), pictures.resolve(name + "-" + size.name() + ".png"));
      }
    }
  }

  /**
   * The colours that are there most, and each other one as the nearest of them: a third as large.
   */
  static void write(byte[] png, Path to) throws IOException {
    BufferedImage whole = ImageIO.read(new ByteArrayInputStream(png));
    Map<Integer, Integer> counts = new HashMap<>();
    for (int rgb :
        whole.getRGB(0, 0, whole.getWidth(), whole.getHeight(), null, 0, whole.getWidth())) {
      counts.merge(rgb & 0xffffff, 1, Integer::sum);
    }
    int[] palette =
        counts.entrySet().stream()
            .sorted(
                Map.Entry.<Integer, Integer>comparingByValue()
                    .reversed()
                    .thenComparing(Map.Entry.comparingByKey()))
            .limit(COLOURS)
            .mapToInt(Map.Entry::getKey)
            .toArray();
    IndexColorModel model =
        new IndexColorModel(4, palette.length, palette, 0, false, -1, DataBuffer.TYPE_BYTE);
    BufferedImage small =
        new BufferedImage(
            whole.getWidth(), whole.getHeight(), BufferedImage.TYPE_BYTE_BINARY, model);
    for (int y = 0; y < whole.getHeight(); y++) {
      for (int x = 0; x < whole.getWidth(); x++) {
        small.setRGB(x, y, whole.getRGB(x, y));
      }
    }
    ImageIO.write(small, "png", to.toFile());
  }
}
