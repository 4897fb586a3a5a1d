package dev.ringout.cli;

import dev.ringout.store.StoreTrouble;

/** What a store can't do, said to the user. */
final class Trouble {
  private Trouble() {}

  /** Says it; gives the exit code. */
  static int say(Output output, String shown, StoreTrouble trouble) {
    output.err().println("ringout: " + shown + ": " + trouble.text());
    return switch (trouble.reason()) {
      case MISSING, DENIED -> ExitCode.MISSING_INPUT;
      case NOT_UNDERSTOOD -> ExitCode.NOT_UNDERSTOOD;
      case NOT_WRITTEN, TAKEN_OVER, KEPT_BEFORE -> ExitCode.CANNOT_WRITE;
    };
  }
}
