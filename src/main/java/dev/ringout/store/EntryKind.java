package dev.ringout.store;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** What happened in a session. */
public enum EntryKind {
  /** Something odd about a file as a whole, told when it was brought in. */
  REMARK(Part.SHEETS),
  /** A sheet begins: its name, and what stands around its cells. */
  SHEET(Part.SHEETS),
  /** A row that is a reading. */
  READING(Part.ROWS),
  /** A row of a reading that was not made, and why not. */
  SKIPPED(Part.ROWS),
  /** A row in which somebody accepts a reading out of limits, and why. */
  OVERRIDE(Part.ROWS),
  /** A row of the job: who, when, with what, at which temperature. */
  CONDITIONS(Part.ROWS),
  /** Any other row of a sheet: headings, blank steps, what was opened. */
  ROW(Part.ROWS),
  /** What the list was called that the unit is made to: see {@link HarnessFile#names()}. */
  LIST(Part.SHEETS),
  /** A reading was taken back: see {@link TakenBack}. */
  TAKEN_BACK(Part.AFTERWARDS),
  /** Somebody's words about the unit. */
  NOTE(Part.AFTERWARDS),
  /** A picture of a defect: see {@link Photo}. */
  PHOTO(Part.AFTERWARDS),
  /** An end of a wire was made, or looked at by a second person: see {@link Tick}. */
  TICK(Part.AFTERWARDS),
  /** Somebody signed: see {@link Signature}. */
  SIGNATURE(Part.END),
  /** What was shown at the end, with the program that showed it. */
  VERDICT(Part.END);

  /** Where it belongs. */
  private enum Part {
    SHEETS,
    ROWS,
    AFTERWARDS,
    END
  }

  private final Part part;

  EntryKind(Part part) {
    this.part = part;
  }

  /** Whether it is a row of a sheet. */
  public boolean isRow() {
    return part == Part.ROWS;
  }

  /** Whether a session may end with it. */
  boolean mayEnd() {
    return part == Part.END;
  }

  /** As it is kept. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** Of a word as it is kept; absent where a later program kept another. */
  public static Optional<EntryKind> of(String word) {
    return Arrays.stream(values()).filter(kind -> kind.word().equals(word)).findFirst();
  }
}
