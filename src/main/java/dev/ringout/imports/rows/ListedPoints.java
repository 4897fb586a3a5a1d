package dev.ringout.imports.rows;

import dev.ringout.imports.list.Ends;
import dev.ringout.imports.list.ListColumn;
import dev.ringout.imports.list.ListTable;
import dev.ringout.imports.list.Role;
import dev.ringout.sheet.Row;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Points that a table lists with their item and their pin in two columns: {@code LAMP1 | GND}. The
 * same two words in one cell elsewhere, {@code LAMP1 GND}, are this point and no item of that name.
 */
final class ListedPoints {
  private final ListTable table;
  private final Map<String, Set<String>> pins = new HashMap<>();
  private boolean gathered;

  ListedPoints(ListTable table) {
    this.table = table;
  }

  private void gather() {
    add(Role.ITEM, Role.PIN);
    add(Role.FROM, Role.FROM_PIN);
    add(Role.TO, Role.TO_PIN);
    gathered = true;
  }

  private void add(Role item, Role pin) {
    Optional<ListColumn> items = table.column(item);
    Optional<ListColumn> own = table.column(pin);
    if (items.isEmpty() || own.isEmpty()) {
      return;
    }
    String name = "";
    for (Row row : table.body()) {
      String text = items.get().textIn(row);
      name = text.isEmpty() ? name : text;
      String one = own.get().textIn(row);
      if (!name.isEmpty() && !one.isEmpty()) {
        pins.computeIfAbsent(name, key -> new HashSet<>()).add(one);
      }
    }
  }

  /** The point that a text names, where the table lists it. */
  Optional<Ends.Text> of(String text) {
    if (!gathered && text.indexOf(' ') > 0) {
      gather();
    }
    for (int at = text.indexOf(' '); at > 0; at = text.indexOf(' ', at + 1)) {
      String item = text.substring(0, at);
      String pin = text.substring(at + 1);
      if (pins.getOrDefault(item, Set.of()).contains(pin)) {
        return Optional.of(new Ends.Text(item, pin));
      }
    }
    return Optional.empty();
  }
}
