package dev.ringout.cli;

import dev.ringout.check.CheckResult;

/** Exit codes, as the contract fixes them. */
final class ExitCode {
  static final int DONE = 0;
  static final int FAULTS = 1;
  static final int INCOMPLETE = 2;
  static final int USAGE = 64;
  static final int NOT_UNDERSTOOD = 65;
  static final int MISSING_INPUT = 66;
  static final int DEFECT = 70;
  static final int CANNOT_WRITE = 73;

  private ExitCode() {}

  /** The exit code of a verdict on a unit. */
  static int of(CheckResult.Verdict verdict) {
    return switch (verdict) {
      case CONFORMS -> DONE;
      case FAULTS -> FAULTS;
      case INCOMPLETE -> INCOMPLETE;
    };
  }
}
