package dev.ringout.imports.rows;

import dev.ringout.imports.list.ListColumn;
import dev.ringout.imports.list.ListTable;
import dev.ringout.imports.list.Role;
import dev.ringout.sheet.Row;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * The names of a table's pins, where what stands behind the first word is another name of the pin
 * in one list and tells two pins apart in another: {@code 5V +} and {@code 5V -} are two.
 */
final class PinHeads {
  /** What is supplied, and no pin's number: {@code 5V}, {@code 3V3}, {@code 3.3V}. */
  private static final Pattern SUPPLY = Pattern.compile("(?i)[+-]?\\d{1,3}(?:[.,]\\d{1,2})?V\\d?");

  /** {@code CH1 A}: a sign behind a name; behind a number it is what the pin does. */
  private static final Pattern NAME = Pattern.compile("\\p{L}.*");

  private final ListTable table;
  private final Map<Integer, Map<String, List<Set<String>>>> rests = new HashMap<>();

  PinHeads(ListTable table) {
    this.table = table;
  }

  /** A pin of a column with its other names. */
  PinName of(ListColumn column, String text) {
    PinName name = PinName.of(text);
    if (name.pin().length() == text.length()) {
      return name;
    }
    boolean supply = SUPPLY.matcher(name.pin()).matches();
    boolean apart =
        rests
            .computeIfAbsent(column.index(), index -> restsOf(column))
            .getOrDefault(name.pin(), List.of())
            .stream()
            .anyMatch(
                own ->
                    own.size() > 1
                        && (supply
                            || (NAME.matcher(name.pin()).matches()
                                && own.stream().allMatch(rest -> rest.length() == 1))));
    return apart ? new PinName(text, List.of()) : name;
  }

  /** What stands behind each first word, of every item by itself. */
  private Map<String, List<Set<String>>> restsOf(ListColumn column) {
    Optional<ListColumn> items = table.column(itemBeside(column.role()));
    Map<String, Map<String, Set<String>>> own = new HashMap<>();
    String item = "";
    for (Row row : table.body()) {
      String named = items.map(one -> one.textIn(row)).orElse("");
      item = named.isEmpty() ? item : named;
      String text = column.textIn(row);
      PinName name = PinName.of(text);
      if (name.pin().length() < text.length()) {
        String rest = text.substring(name.pin().length()).replaceAll("[\\s(),/]+", "");
        own.computeIfAbsent(name.pin(), key -> new HashMap<>())
            .computeIfAbsent(item, key -> new HashSet<>())
            .add(rest);
      }
    }
    Map<String, List<Set<String>>> rests = new HashMap<>();
    own.forEach((head, byItem) -> rests.put(head, List.copyOf(byItem.values())));
    return rests;
  }

  private static Role itemBeside(Role pin) {
    return switch (pin) {
      case FROM_PIN -> Role.FROM;
      case TO_PIN -> Role.TO;
      case FAR_PIN -> Role.FAR;
      default -> Role.ITEM;
    };
  }
}
