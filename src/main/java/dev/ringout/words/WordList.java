package dev.ringout.words;

import java.util.List;

/** Words one after the other as one says them. */
final class WordList {
  private WordList() {}

  /** The words with another before the last, such as "and". */
  static String of(List<String> words, String last) {
    if (words.size() == 1) {
      return words.get(0);
    }
    return String.join(", ", words.subList(0, words.size() - 1))
        + " "
        + last
        + " "
        + words.get(words.size() - 1);
  }
}
