package dev.ringout.cli;

/**
 * Where Java begins. It needs nothing but Java: where a library is missing or damaged, as on a
 * stick that was pulled out too early, Java itself would end with 1, which is the code for faults.
 */
public final class Start {
  private Start() {}

  /** Runs a command and ends the process with its exit code. */
  public static void main(String[] args) {
    try {
      Main.main(args);
    } catch (LinkageError e) {
      System.err.println(
          "ringout: a part of the program is missing or damaged; copy it anew (" + e + ")");
      System.exit(ExitCode.DEFECT);
    }
  }
}
