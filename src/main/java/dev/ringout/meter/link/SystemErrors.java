package dev.ringout.meter.link;

import dev.ringout.meter.Failure;

/** What the numbers mean with which a system refuses a port. */
final class SystemErrors {
  // errno of Linux and macOS; of Windows ERROR_FILE_NOT_FOUND, ERROR_ACCESS_DENIED.
  private static final int NO_SUCH_FILE = 2;
  private static final int DENIED_ON_WINDOWS = 5;
  private static final int AGAIN = 11;
  private static final int DENIED = 13;
  private static final int BUSY = 16;
  private static final int IS_A_FOLDER = 21;
  private static final int NO_TERMINAL = 25;
  private static final int AGAIN_ON_MACOS = 35;

  private SystemErrors() {}

  static Failure failure(String shown, int error, boolean isThere) {
    return switch (error) {
      case AGAIN, BUSY, AGAIN_ON_MACOS -> new Failure.InUse(shown);
      case DENIED_ON_WINDOWS ->
          isWindows()
              ? new Failure.InUse(shown)
              : new Failure.NotFound(shown, "the device does not answer");
      case DENIED ->
          new Failure.NotFound(shown, "permission denied: you may not use serial ports here");
      case NO_SUCH_FILE ->
          // The library says so too of a port that this very program has open.
          isThere ? new Failure.InUse(shown) : new Failure.NotFound(shown, "there is no such port");
      case IS_A_FOLDER, NO_TERMINAL -> new Failure.NotFound(shown, "it is not a serial port");
      default -> new Failure.NotFound(shown, "error " + error + " of the system");
    };
  }

  private static boolean isWindows() {
    return System.getProperty("os.name", "").startsWith("Windows");
  }
}
