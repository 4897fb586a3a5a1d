package dev.ringout.review;

import dev.ringout.harness.Item;
import dev.ringout.standards.Tables.Entry;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * An insert arrangement.
 *
 * @param family the connectors that have it: {@code 38999}, {@code 5015}
 * @param layout contact counts by size: {@code 8x20+4x16}
 * @param labels the contacts' names; empty where the tables do not have them
 * @param fromMemory whether the published arrangement is from memory
 */
record Insert(
    String arrangement,
    String family,
    int contacts,
    String layout,
    Set<String> labels,
    String citation,
    boolean fromMemory) {
  private static final String FAMILY_5015 = "5015";
  private static final Pattern PART_5015 = Pattern.compile("5015|50151|\\b(?:MS|M|AN)3[14]\\d\\d");
  private static final Pattern PART_38999 = Pattern.compile("38999|\\bMS27\\d\\d\\d");

  /** The arrangement that an item names; absent where it is unknown or has two meanings. */
  static Optional<Insert> of(Item item, Paper paper) {
    String named = item.arrangement().toUpperCase(Locale.ROOT).strip();
    if (named.isEmpty()) {
      return Optional.empty();
    }
    List<Entry> coded =
        paper.rows("insert-arrangements").stream()
            .filter(row -> fits(named, row.get("arrangement"), row.get("family")))
            .toList();
    List<Entry> ofPart = coded.stream().filter(row -> isOfPart(row, item.part())).toList();
    List<Entry> fits = coded.size() > 1 ? ofPart : coded;
    if (fits.size() != 1) {
      return Optional.empty();
    }
    Entry row = fits.get(0);
    int contacts = Integer.parseInt(row.get("contacts"));
    return Optional.of(
        new Insert(
            row.get("arrangement"),
            row.get("family"),
            contacts,
            row.get("layout"),
            labels(row, contacts, paper),
            row.citation(),
            row.isPublishedFromMemory()));
  }

  /** Whether "17-26", "17-26PN", "D38999 17-26" or "5015 20-7" is this arrangement. */
  private static boolean fits(String named, String arrangement, String family) {
    String[] words = named.replaceFirst("(-\\d+)\\s*[PS][NA-EWXYZ]?$", "$1").split("[\\s,;]+", -1);
    if (!words[words.length - 1].equals(arrangement.toUpperCase(Locale.ROOT))) {
      return false;
    }
    return words.length == 1 || named.contains(family.split(" ", 2)[0]);
  }

  /** Whether a part number is of the family of an arrangement whose code two families have. */
  private static boolean isOfPart(Entry row, String part) {
    Pattern parts = row.get("family").equals(FAMILY_5015) ? PART_5015 : PART_38999;
    return parts.matcher(part.toUpperCase(Locale.ROOT)).find();
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

  /** The size of crimp contact, where all contacts are of one: those of MIL-DTL-5015 are others. */
  Optional<String> onlySize() {
    return layout.contains("+") || layout.contains(" ") || family.equals(FAMILY_5015)
        ? Optional.empty()
        : Optional.of(layout.substring(layout.indexOf('x') + 1));
  }
}
