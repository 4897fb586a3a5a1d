package dev.ringout.store;

import java.util.List;

/**
 * One test of one unit, as a whole.
 *
 * @param id the same for the same sheet of the same unit, wherever it is brought in
 * @param unitKey the digest of the unit's serial number as it is compared
 * @param harness the digest of the list that the unit is made to
 * @param number the how-manieth of the unit, from 1
 * @param started the day of the test, as written; empty where nothing says so
 * @param file the sheet's name, by which its cells are named
 * @param digest of the sheet's bytes; empty where there was none, and it was led at a bench
 * @param program that brought it in
 * @param added when it was brought in
 */
public record Session(
    String id,
    String unitKey,
    String harness,
    int number,
    String station,
    String who,
    String started,
    String file,
    String digest,
    String program,
    String added) {

  /** Whether it was led at a bench, reading by reading; else it is a sheet that was brought in. */
  public boolean isLed() {
    return digest.isEmpty();
  }

  /** Whether a sheet is one of it: its own, or a part of a test that was led. */
  public boolean holds(String sheet) {
    return sheet.equals(file) || sheet.startsWith(file + "/");
  }

  /**
   * The name of a sheet among those of its unit: by it a cell is told from that of another sheet.
   *
   * @param asTyped its name where another has the same one
   */
  public static String nameAmong(List<Session> before, String name, String asTyped) {
    List<String> taken = before.stream().map(Session::file).toList();
    String free = taken.contains(name) ? asTyped : name;
    for (int i = 2; taken.contains(free); i++) {
      free = asTyped + " (" + i + ")";
    }
    return free;
  }

  /** The same under another number and another name, for a unit that has sessions already. */
  Session as(int otherNumber, String otherFile) {
    return new Session(
        id,
        unitKey,
        harness,
        otherNumber,
        station,
        who,
        started,
        otherFile,
        digest,
        program,
        added);
  }
}
