package dev.ringout.review;

import dev.ringout.harness.Item;
import dev.ringout.standards.Tables.Entry;
import dev.ringout.standards.Tables.Origin;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/**
 * An insert arrangement.
 *
 * @param layout contact counts by size: {@code 8x20+4x16}
 * @param labels the contacts' names; empty where the tables do not have them
 * @param fromMemory whether the published arrangement is from memory
 */
record Insert(
    String arrangement,
    int contacts,
    String layout,
    Set<String> labels,
    String citation,
    boolean fromMemory) {

  /** The arrangement that an item names; absent where it is unknown or has two meanings. */
  static Optional<Insert> of(Item item, Paper paper) {
    String named = item.arrangement().toUpperCase(Locale.ROOT).strip();
    if (named.isEmpty()) {
      return Optional.empty();
    }
    List<Entry> fits =
        paper.rows("insert-arrangements").stream()
            .filter(row -> fits(named, row.get("arrangement"), row.get("family")))
            .toList();
    if (fits.size() != 1) {
      return Optional.empty();
    }
    Entry row = fits.get(0);
    int contacts = Integer.parseInt(row.get("contacts"));
    return Optional.of(
        new Insert(
            row.get("arrangement"),
            contacts,
            row.get("layout"),
            labels(row, contacts, paper),
            row.citation(),
            row.origin() == Origin.PUBLISHED && row.isFromMemory()));
  }

  /** Whether "17-26", "17-26PN", "D38999 17-26" or "5015 20-7" is this arrangement. */
  private static boolean fits(String named, String arrangement, String family) {
    String[] words = named.replaceFirst("(-\\d+)\\s*[PS][NA-EWXYZ]?$", "$1").split("[\\s,;]+", -1);
    if (!words[words.length - 1].equals(arrangement.toUpperCase(Locale.ROOT))) {
      return false;
    }
    return words.length == 1 || named.contains(family.split(" ", 2)[0]);
  }

  private static Set<String> labels(Entry row, int contacts, Paper paper) {
    Set<String> labels = new LinkedHashSet<>();
    if (row.get("arrangement").endsWith("-35")) {
      for (int number = 1; number <= contacts; number++) {
        labels.add(Integer.toString(number));
      }
      return labels;
    }
    if (row.get("family").equals("38999")) {
      paper.rows("insert-labels").stream()
          .filter(one -> one.get("arrangement").equals(row.get("arrangement")))
          .findFirst()
          .ifPresent(one -> labels.addAll(List.of(one.get("labels").split(" ", -1))));
    }
    return labels;
  }

  /** The contact size, where all contacts are of one. */
  Optional<String> onlySize() {
    return layout.contains("+") || layout.contains(" ")
        ? Optional.empty()
        : Optional.of(layout.substring(layout.indexOf('x') + 1));
  }
}
