package dev.ringout.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.cli.Main;
import dev.ringout.support.Run;
import java.io.BufferedReader;
import java.io.File;
import java.io.IOException;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.WebDriverException;
import org.openqa.selenium.chrome.ChromeDriver;

/** The program and the browser are killed in the middle of a test. */
class CrashIT {
  @RegisterExtension static final InBrowser BROWSER = new InBrowser();

  @TempDir private Path folder;

  /** The program, as it is started from a command line. */
  private record Program(Process process, URI ticket) implements AutoCloseable {
    void kill() {
      process.destroyForcibly().onExit().join();
    }

    @Override
    public void close() {
      kill();
    }
  }

  private Program start(Path list) throws IOException {
    String classes =
        System.getProperty("surefire.test.class.path", System.getProperty("java.class.path"));
    Process process =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-cp",
                classes,
                Main.class.getName(),
                "bench",
                list.toString(),
                "--no-browser",
                "--store",
                store().toString())
            .redirectError(new File(folder.toFile(), "err.txt"))
            .start();
    BufferedReader out = process.inputReader(StandardCharsets.UTF_8);
    String line = String.valueOf(out.readLine());
    assertTrue(line.startsWith("The bench is open: "), line);
    return new Program(process, URI.create(line.substring(line.indexOf("http")).strip()));
  }

  private Path store() {
    return folder.resolve("units.db");
  }

  @Test
  void after_the_program_was_killed_it_goes_on_at_the_same_step_and_nothing_is_kept_twice()
      throws Exception {
    Path lamps = BenchWithPage.lamps(folder);
    String step;
    try (Program program = start(lamps)) {
      Mechanic mechanic = new Mechanic(BROWSER.open(program.ticket()));
      mechanic.begins("0440", "R. Adeyemi");
      mechanic.types("0.07");
      mechanic.types("0.07");
      mechanic.types("o");
      step = mechanic.step();
      program.kill();
      Tab tab = mechanic.tab;
      tab.waitForText("#banners", "No connection to the program");
      tab.keys("0", ".", "0", "7", " ");
      Tab.pause(Mechanic.LOOKING_MILLIS);
      assertEquals(step, mechanic.step());
    }
    assertTrue(check().contains("Readings 3 continuity"), check());
    try (Program program = start(lamps)) {
      Mechanic mechanic = new Mechanic(BROWSER.open(program.ticket()));
      mechanic.goesOn("0440", "K. Novak");
      assertEquals(step, mechanic.step());
      mechanic.tab.waitForText(".expect", "Read once more");
      mechanic.types("0.07");
    }
    assertEquals(0, Run.of("store", "check", "--store", store()).code());
  }

  @Test
  void after_the_browser_was_killed_another_goes_on_at_the_same_step() throws Exception {
    try (BenchWithPage bench = BenchWithPage.typed(folder, BenchWithPage.lamps(folder))) {
      ChromeDriver killed = InBrowser.start();
      Mechanic first = new Mechanic(new Tab(killed));
      killed.get(bench.ticket().toString());
      first.begins("0441", "R. Adeyemi");
      first.types("0.07");
      String step = first.step();
      kill(killed);
      Mechanic mechanic = new Mechanic(BROWSER.open(bench.ticket()));
      assertEquals(step, mechanic.step());
      mechanic.types("0.07");
      String check = bench.said("check", "unit:0441").out();
      assertTrue(check.contains("2 continuity"), check);
    }
  }

  private String check() {
    return Run.of("check", "unit:0440", "--store", store()).out();
  }

  private static void kill(ChromeDriver browser) {
    Object process = browser.getCapabilities().getCapability("goog:processID");
    assertTrue(
        ProcessHandle.of(Long.parseLong(String.valueOf(process))).orElseThrow().destroyForcibly());
    try {
      browser.quit();
    } catch (WebDriverException e) {
      // It can't say goodbye any more; its driver ends all the same.
    }
  }
}
