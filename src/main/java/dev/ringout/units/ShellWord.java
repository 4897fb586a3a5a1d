package dev.ringout.units;

/** A word of a command that is shown to be typed or copied: a shell makes nothing else of it. */
public final class ShellWord {
  private ShellWord() {}

  /** The word, quoted where it must be. */
  public static String of(String text) {
    if (text.matches("[\\p{L}\\p{N}_./\\\\:=,+@-]+")) {
      return text;
    }
    // Inside double quotes a shell still looks for these.
    return text.chars().anyMatch(c -> "$`\"!\\".indexOf(c) >= 0)
        ? "'" + text.replace("'", "'\\''") + "'"
        : "\"" + text + "\"";
  }
}
