package dev.ringout.cli;

import java.io.IOException;
import java.lang.ProcessBuilder.Redirect;
import java.util.Optional;
import java.util.concurrent.TimeUnit;

/**
 * The code page of a Windows console. The batch file sets it to UTF-8 and, in its last line, back.
 * When the user interrupts the program, the batch file ends before that line, and it is the program
 * that sets it back, as {@code chcp} does.
 */
final class CodePage {
  /** The number of the code page that the batch file found. */
  private static final String PROPERTY = "ringout.codePage";

  private static final long MOST_SECONDS = 2;

  private final Optional<Thread> setBack;

  private CodePage(Optional<Thread> setBack) {
    this.setBack = setBack;
  }

  /** The code page that is to be set back if the program is interrupted from now on, if any. */
  static CodePage setBackWhenInterrupted() {
    String number = System.getProperty(PROPERTY, "");
    if (!number.matches("\\d{1,5}")) {
      return new CodePage(Optional.empty());
    }
    Thread hook = new Thread(() -> set(number));
    Runtime.getRuntime().addShutdownHook(hook);
    return new CodePage(Optional.of(hook));
  }

  /** The program has come to its end: the batch file does the rest. */
  void leaveToLauncher() {
    try {
      setBack.ifPresent(Runtime.getRuntime()::removeShutdownHook);
    } catch (IllegalStateException e) {
      // Interrupted at the very end: it is being set back.
    }
  }

  private static void set(String number) {
    try {
      new ProcessBuilder("cmd.exe", "/c", "chcp", number)
          .redirectOutput(Redirect.DISCARD)
          .redirectError(Redirect.DISCARD)
          .start()
          .waitFor(MOST_SECONDS, TimeUnit.SECONDS);
    } catch (IOException e) {
      // Then the window keeps UTF-8, which is all that can be done for it.
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }
}
