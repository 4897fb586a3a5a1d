package dev.ringout.intake;

import dev.ringout.sheet.Cell;
import dev.ringout.sheet.Sheet;
import dev.ringout.source.Place;
import dev.ringout.source.Problems;
import dev.ringout.source.UnusableInput;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A sheet of names and values: {@code Header}, {@code Limits}, {@code Job}. */
final class Settings {
  static final Column NAME = Column.of("Name");
  static final Column VALUE = Column.of("Value");
  static final Column UNIT = Column.of("Unit");

  private final Map<String, Setting> byKey = new LinkedHashMap<>();

  /**
   * One row.
   *
   * @param name as written
   */
  record Setting(String name, String value, String unit, Entry entry) {
    Place place() {
      return entry.place(VALUE.name());
    }
  }

  static Settings read(Optional<Sheet> sheet, Problems problems) throws UnusableInput {
    Settings settings = new Settings();
    if (sheet.isPresent()) {
      new Table(sheet.get(), List.of(NAME, VALUE, UNIT), List.of(NAME, VALUE), problems)
          .forEach(settings::add);
    }
    return settings;
  }

  private void add(Entry entry) {
    String name = entry.text(NAME.name());
    if (name.isEmpty()) {
      entry.error(NAME.name(), "a value without a name", "");
      return;
    }
    Setting setting = new Setting(name, value(entry), entry.text(UNIT.name()), entry);
    Setting earlier = byKey.putIfAbsent(Names.key(name), setting);
    if (earlier != null && !earlier.value().equals(setting.value())) {
      entry.error(
          VALUE.name(),
          name + " is given twice: \"" + earlier.value() + "\" and \"" + setting.value() + "\"",
          "");
    }
  }

  /** A date is a welcome value here: calibration due, date of test. */
  private static String value(Entry entry) {
    Cell cell = entry.cell(VALUE.name());
    return cell.kind() == Cell.Kind.DATE ? cell.text() : entry.text(VALUE.name());
  }

  Optional<Setting> find(String name) {
    return Optional.ofNullable(byKey.get(Names.key(name)));
  }

  Iterable<Setting> all() {
    return byKey.values();
  }

  /** Name to value, as written. */
  Map<String, String> asMap() {
    Map<String, String> map = new LinkedHashMap<>();
    byKey.values().forEach(setting -> map.put(setting.name(), setting.value()));
    return map;
  }
}
