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

  static List<Item> read(SheetsOfHarness sheets) throws UnusableInput {
    Map<String, Item> items = new LinkedHashMap<>();
    sheets.each(
        "Items",
        List.of(
            SheetsOfHarness.REF, KIND, PART, ARRANGEMENT, LOCATION, MATES, SheetsOfHarness.NOTE),
        List.of(SheetsOfHarness.REF),
        entry -> {
          String ref = entry.text(SheetsOfHarness.REF.name());
          if (ref.isEmpty()) {
            entry.error(SheetsOfHarness.REF.name(), "an item without a reference designator", "");
            return;
          }
          Item item = item(entry, sheets.spelling(ref));
          if (items.putIfAbsent(item.ref(), item) != null) {
            entry.error(
                SheetsOfHarness.REF.name(), "the item " + item.ref() + " is listed twice", "");
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
        entry.text(SheetsOfHarness.NOTE.name()),
        entry.place());
  }
}
