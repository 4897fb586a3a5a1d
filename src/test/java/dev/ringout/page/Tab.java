package dev.ringout.page;

import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Base64;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.BooleanSupplier;
import org.openqa.selenium.By;
import org.openqa.selenium.ElementNotInteractableException;
import org.openqa.selenium.StaleElementReferenceException;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.interactions.Actions;

/** A tab as a mechanic has it: what is seen in it, and keys, touches and scans. */
final class Tab {
  private static final Duration PATIENCE = Duration.ofSeconds(8);
  private static final int LOOK_MILLIS = 15;

  /** Longer than what the page takes for one scan. */
  private static final int BETWEEN_KEYS_MILLIS = 60;

  private final ChromeDriver driver;
  private final String handle;

  Tab(ChromeDriver driver) {
    this.driver = driver;
    this.handle = driver.getWindowHandle();
  }

  /** This tab in front, where several are open. */
  Tab front() {
    driver.switchTo().window(handle);
    return this;
  }

  /** How large the page is seen. */
  void size(int width, int height) {
    driver.executeCdpCommand(
        "Emulation.setDeviceMetricsOverride",
        Map.of("width", width, "height", height, "deviceScaleFactor", 1, "mobile", false));
  }

  /** What the device asks for: a look, and more contrast. */
  void look(String scheme, String contrast) {
    driver.executeCdpCommand(
        "Emulation.setEmulatedMedia",
        Map.of(
            "features",
            List.of(
                Map.of("name", "prefers-color-scheme", "value", scheme),
                Map.of("name", "prefers-contrast", "value", contrast))));
  }

  // What is seen.

  Object script(String script, Object... arguments) {
    return Objects.requireNonNullElse(driver.executeScript(script, arguments), "");
  }

  /** What a script answers when it is done. */
  Object answered(String script, Object... arguments) {
    return Objects.requireNonNullElse(driver.executeAsyncScript(script, arguments), "");
  }

  /** The text of the first that fits, as it is seen; empty where there is none. */
  String text(String selector) {
    return script(
            "const one = document.querySelector(arguments[0]);"
                + "return one ? (one.value ?? one.innerText).replace(/\\s+/g, ' ').trim() : '';",
            selector)
        .toString();
  }

  boolean isThere(String selector) {
    return !driver.findElements(By.cssSelector(selector)).isEmpty();
  }

  /** All that is read on the page. */
  String page() {
    return text("body");
  }

  void waitFor(String selector) {
    until(selector, () -> isThere(selector));
  }

  void waitForText(String selector, String part) {
    until(selector + " says " + part, () -> text(selector).contains(part));
  }

  /** Waits until something is so. */
  void until(String what, BooleanSupplier so) {
    long end = System.nanoTime() + PATIENCE.toNanos();
    while (!so.getAsBoolean()) {
      if (System.nanoTime() > end) {
        throw new AssertionError("never: " + what + "; the page says: " + page());
      }
      pause(LOOK_MILLIS);
    }
  }

  static void pause(int millis) {
    try {
      Thread.sleep(millis);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new AssertionError(e);
    }
  }

  // What is done.

  /** Touches a button or a link by what stands on it. */
  void press(String label) {
    String script =
        "const open = document.querySelector('dialog[open]') ?? document;"
            + "const named = [...open.querySelectorAll('button, a, summary, label')]"
            + " .filter((one) => one.checkVisibility()).map((one) => [one,"
            + " (one.getAttribute('aria-label') ?? one.innerText).replace(/\\s+/g, ' ').trim()]);"
            + "return (named.find(([, name]) => name === arguments[0])"
            + " ?? named.find(([, name]) => name.startsWith(arguments[0])))?.[0];";
    until("touched: " + label, () -> script(script, label) instanceof WebElement one && touch(one));
  }

  /** A screen is made anew under the finger now and then: then the finger comes down once more. */
  private static boolean touch(WebElement one) {
    try {
      one.click();
      return true;
    } catch (StaleElementReferenceException | ElementNotInteractableException e) {
      return false;
    }
  }

  /** Writes into a field, by its label. */
  void fill(String label, String text) {
    until(
        "written: " + label,
        () -> {
          try {
            WebElement field = field(label);
            field.clear();
            field.sendKeys(text);
            return text.equals(field(label).getDomProperty("value"));
          } catch (StaleElementReferenceException | ElementNotInteractableException e) {
            return false;
          }
        });
  }

  /** Chooses in a list, or ticks. */
  void choose(String label, String part) {
    field(label).sendKeys(part);
  }

  void upload(String fieldId, Path file) {
    driver.findElement(By.id(fieldId)).sendKeys(file.toAbsolutePath().toString());
  }

  private WebElement field(String label) {
    List<Object> found = new ArrayList<>();
    String script =
        "const open = document.querySelector('dialog[open]') ?? document;"
            + "const label = [...open.querySelectorAll('label')].find((one) =>"
            + " one.innerText.trim().startsWith(arguments[0]));"
            + "return label?.control;";
    until(
        "a field " + label,
        () -> script(script, label) instanceof WebElement one && found.add(one));
    return (WebElement) found.get(0);
  }

  /** Keys one after another, as a person presses them. */
  void keys(CharSequence... keys) {
    for (CharSequence key : keys) {
      new Actions(driver).sendKeys(key).perform();
      pause(BETWEEN_KEYS_MILLIS);
    }
  }

  /**
   * Keys of a quick hand, with Enter behind them: the browser's own times count, not this test's.
   */
  void types(String text, int betweenMillis) {
    script(
        "let at = performance.now(); const main = document.activeElement;"
            + "for (const key of [...arguments[0], 'Enter']) {"
            + " const event = new KeyboardEvent('keydown', { key, bubbles: true, cancelable: true });"
            + " Object.defineProperty(event, 'timeStamp', { value: at }); at += arguments[1];"
            + " main.dispatchEvent(event); }",
        text,
        betweenMillis);
  }

  /** What a scanner types: all at once, with Enter behind it. */
  void scan(String text) {
    script(
        "for (const key of [...arguments[0], 'Enter']) document.activeElement.dispatchEvent("
            + "new KeyboardEvent('keydown', { key, bubbles: true, cancelable: true }));",
        text);
  }

  void reload() {
    driver.navigate().refresh();
    waitFor("#main h1");
  }

  void go(String hash) {
    script("location.hash = arguments[0]", hash);
  }

  /** What lies at an address, asked for by the page itself. */
  byte[] fetched(String address) {
    Object text =
        answered(
            "const done = arguments[arguments.length - 1];"
                + "fetch(arguments[0]).then((answer) => answer.blob()).then((blob) => {"
                + " const reader = new FileReader();"
                + " reader.onload = () => done(reader.result.split(',')[1] ?? '');"
                + " reader.readAsDataURL(blob); }, (e) => done(String(e)));",
            address);
    return Base64.getDecoder().decode(String.valueOf(text));
  }

  /** Where links lead, by what stands on them. */
  Map<String, String> links(String selector) {
    Map<String, String> links = new LinkedHashMap<>();
    Object all =
        script(
            "return [...document.querySelectorAll(arguments[0])]"
                + ".map((one) => [one.innerText, one.getAttribute('href')]);",
            selector);
    for (Object one : (List<?>) all) {
      links.put(String.valueOf(((List<?>) one).get(0)), String.valueOf(((List<?>) one).get(1)));
    }
    return links;
  }

  List<String> texts(String selector) {
    Object all =
        script(
            "return [...document.querySelectorAll(arguments[0])]"
                + ".map((one) => one.innerText.replace(/\\s+/g, ' ').trim());",
            selector);
    return ((List<?>) all).stream().map(String::valueOf).toList();
  }

  byte[] picture() {
    return Base64.getDecoder()
        .decode(
            String.valueOf(
                driver
                    .executeCdpCommand("Page.captureScreenshot", Map.of("format", "png"))
                    .get("data")));
  }

  ChromeDriver driver() {
    return driver;
  }
}
