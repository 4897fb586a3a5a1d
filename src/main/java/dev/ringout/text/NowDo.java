package dev.ringout.text;

/**
 * The commands by which a check goes on, ready to be typed.
 *
 * @param rest plans what the readings leave open
 * @param retest plans what is to be read once the faults are mended
 * @param record writes the record to sign
 */
public record NowDo(String rest, String retest, String record) {
  /** Where nobody types a command. */
  public static final NowDo NOTHING = new NowDo("", "", "");
}
