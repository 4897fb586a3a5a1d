package dev.ringout.sheet;

import dev.ringout.source.UnusableInput;
import dev.ringout.source.UnusableInput.Reason;

/** Why a workbook can't be read, as the user is told. */
final class BrokenWorkbook {
  private BrokenWorkbook() {}

  /** Damage shows itself as many kinds of exception; to the user they are one. */
  static UnusableInput refused(String shownName, Exception e) {
    if (e instanceof ZipParts.Bomb) {
      return new UnusableInput(
          shownName,
          Reason.NOT_UNDERSTOOD,
          "unpacks to far more than a wire list would (a zip bomb?); not read");
    }
    String why = String.valueOf(e.getMessage());
    return new UnusableInput(
        shownName,
        Reason.NOT_UNDERSTOOD,
        "is a damaged workbook: " + why.lines().findFirst().orElse("").strip());
  }
}
