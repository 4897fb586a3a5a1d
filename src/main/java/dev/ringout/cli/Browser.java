package dev.ringout.cli;

import java.io.IOException;
import java.net.URI;
import java.util.List;
import java.util.Locale;

/** Opens a page the way the system does. */
final class Browser {
  private Browser() {}

  /** Opens it; where that can't be done it is said, for the address is printed anyway. */
  static void open(URI page, Output output) {
    String system = System.getProperty("os.name", "").toLowerCase(Locale.ROOT);
    List<String> command =
        system.startsWith("windows")
            ? List.of("rundll32", "url.dll,FileProtocolHandler", page.toString())
            : system.startsWith("mac")
                ? List.of("open", page.toString())
                : List.of("xdg-open", page.toString());
    try {
      new ProcessBuilder(command)
          .redirectOutput(ProcessBuilder.Redirect.DISCARD)
          .redirectError(ProcessBuilder.Redirect.DISCARD)
          .start();
    } catch (IOException e) {
      output.out().println("Open it in a browser: none was found here (" + command.get(0) + ").");
    }
  }
}
