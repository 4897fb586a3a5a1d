package dev.ringout.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import dev.ringout.support.Installed;
import java.io.File;
import java.net.URI;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.logging.Level;
import java.util.logging.Logger;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.extension.AfterEachCallback;
import org.junit.jupiter.api.extension.BeforeAllCallback;
import org.junit.jupiter.api.extension.BeforeEachCallback;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.junit.jupiter.api.extension.ExtensionContext.Namespace;
import org.openqa.selenium.WindowType;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.logging.LogEntry;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.logging.LoggingPreferences;

/**
 * Debian's Chromium with no network but this machine, one for all tests of a run; where there is
 * none they are skipped. After each test no page may have run, loaded or asked for what it must
 * not.
 */
final class InBrowser implements BeforeAllCallback, BeforeEachCallback, AfterEachCallback {
  private static final String DRIVER = "/usr/bin/chromedriver";
  private static final String BROWSER = "/usr/bin/chromium";
  private static final Pattern ADDRESS = Pattern.compile("\"url\":\"([^\"]*)\"");

  private Optional<ChromeDriver> driver = Optional.empty();
  private String first = "";

  /** A browser that ends with the run. */
  private record Shared(ChromeDriver driver) implements AutoCloseable {
    @Override
    public void close() {
      driver.quit();
    }
  }

  static {
    // It knows no list of the protocol of this browser, and says so; nothing here asks by one.
    Logger.getLogger("org.openqa.selenium").setLevel(Level.SEVERE);
  }

  /** A browser of its own. */
  static ChromeDriver start() {
    LoggingPreferences logs = new LoggingPreferences();
    logs.enable(LogType.BROWSER, Level.ALL);
    logs.enable(LogType.PERFORMANCE, Level.ALL);
    ChromeOptions options = new ChromeOptions();
    options.setBinary(BROWSER);
    // A bench of a shop makes its certificate itself: ShopTest looks at it.
    options.setAcceptInsecureCerts(true);
    options.setCapability("goog:loggingPrefs", logs);
    options.addArguments(
        "--headless",
        "--no-sandbox",
        "--no-first-run",
        "--disable-dev-shm-usage",
        "--disable-background-networking",
        "--disable-component-update",
        "--disable-extensions",
        "--mute-audio",
        "--host-resolver-rules=MAP * ~NOTFOUND , EXCLUDE 127.0.0.1");
    return new ChromeDriver(
        new ChromeDriverService.Builder().usingDriverExecutable(new File(DRIVER)).build(), options);
  }

  @Override
  public void beforeAll(ExtensionContext context) {
    assumeTrue(
        Installed.isThere(DRIVER, "--version") && Installed.isThere(BROWSER, "--version"),
        "chromium and chromium-driver are not installed");
    Shared shared =
        context
            .getRoot()
            .getStore(Namespace.create(InBrowser.class))
            .getOrComputeIfAbsent(Shared.class, key -> new Shared(start()), Shared.class);
    driver = Optional.of(shared.driver());
    first = shared.driver().getWindowHandle();
  }

  private ChromeDriver driver() {
    return driver.orElseThrow();
  }

  @Override
  public void beforeEach(ExtensionContext context) {
    driver().manage().logs().get(LogType.BROWSER);
    driver().manage().logs().get(LogType.PERFORMANCE);
  }

  /** A tab that is let in by an address. */
  Tab open(URI ticket) {
    driver().switchTo().newWindow(WindowType.TAB);
    Tab tab = new Tab(driver());
    tab.size(1440, 900);
    driver().get(ticket.toString());
    tab.waitFor("#main h1");
    return tab;
  }

  @Override
  public void afterEach(ExtensionContext context) {
    List<String> told = console(driver());
    Set<String> foreign = foreign(driver());
    for (String handle : driver().getWindowHandles()) {
      driver().switchTo().window(handle);
      if (!handle.equals(first)) {
        driver().close();
      }
    }
    driver().switchTo().window(first);
    driver().executeCdpCommand("Network.clearBrowserCookies", Map.of());
    assertEquals(List.of(), told, "the browser's console");
    assertEquals(Set.of(), foreign, "asked for on other machines");
  }

  /**
   * What a browser complains of; that an answer was refused or did not come, and that nothing
   * sounds before the first touch, is no mistake.
   */
  static List<String> console(ChromeDriver driver) {
    List<String> told = new ArrayList<>();
    for (LogEntry entry : driver.manage().logs().get(LogType.BROWSER)) {
      String message = entry.getMessage();
      boolean usual =
          message.contains("Failed to load resource") || message.contains("AudioContext");
      if (!usual) {
        told.add(message);
      }
    }
    return told;
  }

  private static Set<String> foreign(ChromeDriver driver) {
    Set<String> foreign = new LinkedHashSet<>();
    for (LogEntry entry : driver.manage().logs().get(LogType.PERFORMANCE)) {
      String message = entry.getMessage();
      if (message.contains("\"Network.requestWillBeSent\"")) {
        Matcher address = ADDRESS.matcher(message);
        while (address.find()) {
          if (!address
              .group(1)
              .matches("(https?://127\\.0\\.0\\.1:.*|data:.*|blob:.*|chrome.*|about:.*|)")) {
            foreign.add(address.group(1));
          }
        }
      }
    }
    return foreign;
  }
}
