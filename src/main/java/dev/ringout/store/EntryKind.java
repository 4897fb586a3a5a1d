package dev.ringout.store;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** What happened in a session. */
public enum EntryKind {
  /** Something odd about a file as a whole, told when it was brought in. */
  REMARK,
  /** A sheet begins: its name, and what stands around its cells. */
  SHEET,
  /** A row that is a reading. */
  READING,
  /** Any other row of a sheet: headings, the job, what was opened, what is accepted. */
  ROW,
  /** What was shown at the end, with the program that showed it. */
  VERDICT;

  /** As it is kept. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  static Optional<EntryKind> of(String word) {
    return Arrays.stream(values()).filter(kind -> kind.word().equals(word)).findFirst();
  }
}
