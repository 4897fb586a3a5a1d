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

  static PinName of(String text) {
    int end = 0;
    while (end < text.length() && " (,".indexOf(text.charAt(end)) < 0) {
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
