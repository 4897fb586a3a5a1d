package dev.ringout.imports.rows;

import java.util.ArrayList;
import java.util.List;

/**
 * A pin as its own connector's list writes it, which is often several names in one cell: {@code
 * J1:1 (RxD, D0)}, {@code D20 Int 4}.
 *
 * @param pin the name that comes first
 * @param names every other name
 */
record PinName(String pin, List<String> names) {

  /** Whether a stroke parts a pin from its name: {@code A2/DQ13}; {@code 1A/1B} is none. */
  private static boolean isNameBehind(String text, int at) {
    return text.charAt(at) == '/'
        && at > 0
        && Character.isDigit(text.charAt(at - 1))
        && at + 2 < text.length()
        && Character.isLetter(text.charAt(at + 1))
        && Character.isLetter(text.charAt(at + 2));
  }

  static PinName of(String text) {
    int end = 0;
    while (end < text.length() && " (,".indexOf(text.charAt(end)) < 0 && !isNameBehind(text, end)) {
      end++;
    }
    String head = text.substring(0, end);
    boolean numbered = head.chars().anyMatch(c -> c >= '0' && c <= '9');
    if (end == text.length() || !numbered) {
      return new PinName(text, List.of());
    }
    List<String> names = new ArrayList<>();
    for (String name : text.substring(end).split("[(),/]", -1)) {
      String clean = name.strip();
      if (!clean.isEmpty()) {
        names.add(clean);
        for (String word : clean.split(" ", -1)) {
          if (!word.equals(clean) && word.chars().anyMatch(c -> c >= '0' && c <= '9')) {
            names.add(word);
          }
        }
      }
    }
    return new PinName(head, List.copyOf(names));
  }
}
