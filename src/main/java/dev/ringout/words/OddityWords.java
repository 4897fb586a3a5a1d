package dev.ringout.words;

/**
 * An oddity in words.
 *
 * @param text what was found
 * @param meant what was probably meant, or empty
 */
record OddityWords(String text, String meant) {

  static OddityWords of(String text) {
    return new OddityWords(text, "");
  }

  static OddityWords of(String text, String meant) {
    return new OddityWords(text, meant);
  }
}
