package dev.ringout.intake;

import dev.ringout.harness.Item;
import dev.ringout.source.UnusableInput;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The sheet {@code Items}: what is known of connectors, strips and splices. */
final class ItemRows {
  private static final Column KIND = Column.of("Kind");
  private static final Column PART = Column.of("Part");
  private static final Column ARRANGEMENT = Column.of("Arrangement");
  private static final Column LOCATION = Column.of("Location");
  private static final Column MATES = Column.of("Mates");

  private ItemRows() {}

  static List<Item> read(HarnessSheets sheets) throws UnusableInput {
    Map<String, Item> items = new LinkedHashMap<>();
    sheets.each(
        "Items",
        List.of(HarnessSheets.REF, KIND, PART, ARRANGEMENT, LOCATION, MATES, HarnessSheets.NOTE),
        List.of(HarnessSheets.REF),
        entry -> {
          String ref = entry.text(HarnessSheets.REF.name());
          if (ref.isEmpty()) {
            entry.error(HarnessSheets.REF.name(), "an item without a reference designator", "");
            return;
          }
          Item item = item(entry, sheets.spelling(ref));
          if (items.putIfAbsent(item.ref(), item) != null) {
            entry.error(
                HarnessSheets.REF.name(), "the item " + item.ref() + " is listed twice", "");
          }
        });
    return List.copyOf(items.values());
  }

  private static Item item(Entry entry, String ref) {
    return new Item(
        ref,
        entry.text(KIND.name()),
        entry.text(PART.name()),
        entry.text(ARRANGEMENT.name()),
        entry.text(LOCATION.name()),
        entry.text(MATES.name()),
        entry.text(HarnessSheets.NOTE.name()),
        entry.place());
  }
}
