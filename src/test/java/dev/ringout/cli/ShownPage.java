package dev.ringout.cli;

import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/** A page as a browser without a window shows it; a test that asks for one is skipped without. */
final class ShownPage {
  private static final String ANSWER = "ANSWER[";
  private static final String END = "]</pre>";

  private ShownPage() {}

  private static Optional<String> browser() {
    return Stream.of("/usr/bin/chromium", "/usr/bin/chromium-browser", "/usr/bin/google-chrome")
        .filter(path -> Files.isExecutable(Path.of(path)))
        .findFirst();
  }

  /** What a script hands to {@code answer} once it has looked at a page of its own folder. */
  static String answer(Path page, int width) throws IOException, InterruptedException {
    assumeTrue(browser().isPresent(), "no browser");
    List<String> command = new ArrayList<>(List.of(browser().orElseThrow()));
    command.addAll(
        List.of(
            "--headless",
            "--no-sandbox",
            "--disable-gpu",
            "--disable-background-networking",
            "--no-first-run",
            "--allow-file-access-from-files",
            "--user-data-dir=" + page.resolveSibling("profile"),
            "--window-size=" + width + ",900",
            "--virtual-time-budget=20000",
            "--dump-dom",
            page.toUri().toString()));
    Path shown = page.resolveSibling("shown.html");
    Process process =
        new ProcessBuilder(command)
            .redirectOutput(shown.toFile())
            .redirectError(ProcessBuilder.Redirect.DISCARD)
            .start();
    assertTrue(process.waitFor(120, TimeUnit.SECONDS));
    String text = Files.readString(shown, StandardCharsets.UTF_8);
    int start = text.indexOf(ANSWER);
    assertTrue(start >= 0, text.substring(0, Math.min(500, text.length())));
    return text.substring(start + ANSWER.length(), text.indexOf(END, start));
  }

  /** A script that runs when the page is there, and may call {@code answer} at once or later. */
  static String script(String javascript) {
    return "<script>function answer(a) { document.body.innerHTML = '<pre>"
        + ANSWER
        + "' + a + '"
        + END
        + "'; }\nwindow.addEventListener('load', function () {"
        + javascript
        + "});</script>";
  }
}
