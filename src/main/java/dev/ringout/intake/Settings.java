package dev.ringout.intake;

import dev.ringout.cells.Blanks;
import dev.ringout.cells.LengthCell;
import dev.ringout.cells.Names;
import dev.ringout.cells.OhmsCell;
import dev.ringout.cells.VoltsCell;
import dev.ringout.sheet.Cell;
import dev.ringout.sheet.Sheet;
import dev.ringout.source.Place;
import dev.ringout.source.Problems;
import dev.ringout.source.UnusableInput;
import dev.ringout.units.Length;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;

/** A sheet of names and values: {@code Header}, {@code Limits}, {@code Job}. */
final class Settings {
  static final Column NAME = Column.of("Name");
  static final Column VALUE = Column.of("Value");
  static final Column UNIT = Column.of("Unit");
  static final Column NET = Column.of("Net");

  private final UnaryOperator<String> nameOf;
  private final Map<String, Setting> byKey = new LinkedHashMap<>();
  private final List<Setting> ofNets = new ArrayList<>();

  /**
   * One row.
   *
   * @param name as written, or what stands for it
   */
  record Setting(String name, String value, String unit, Entry entry) {
    Place place() {
      return entry.place(VALUE.name());
    }
  }

  static Settings read(Optional<Sheet> sheet, Problems problems) throws UnusableInput {
    Settings settings = new Settings(UnaryOperator.identity());
    if (sheet.isPresent()) {
      new Table(sheet.get(), List.of(NAME, VALUE, UNIT, NET), List.of(NAME, VALUE), problems)
          .forEach(settings::add);
    }
    return settings;
  }

  /**
   * The settings of a sheet that has no nets.
   *
   * @param nameOf the name that stands for the one written
   */
  static Settings readNamed(Optional<Sheet> sheet, UnaryOperator<String> nameOf, Problems problems)
      throws UnusableInput {
    Settings settings = new Settings(nameOf);
    if (sheet.isPresent()) {
      new Table(sheet.get(), List.of(NAME, VALUE, UNIT), List.of(NAME, VALUE), problems)
          .forEach(settings::add);
    }
    return settings;
  }

  private Settings(UnaryOperator<String> nameOf) {
    this.nameOf = nameOf;
  }

  private void add(Entry entry) {
    String name = nameOf.apply(entry.text(NAME.name()));
    if (name.isEmpty()) {
      entry.error(NAME.name(), "a value without a name", "");
      return;
    }
    Setting setting = new Setting(name, value(entry), entry.text(UNIT.name()), entry);
    if (!entry.text(NET.name()).isEmpty()) {
      ofNets.add(setting);
      return;
    }
    Setting earlier = byKey.putIfAbsent(Names.key(name), setting);
    if (earlier != null && earlier.value().isEmpty()) {
      // A printed form's blank row and the filled one below it.
      byKey.put(Names.key(name), setting);
      return;
    }
    if (earlier != null && !setting.value().isEmpty() && !earlier.value().equals(setting.value())) {
      entry.error(
          VALUE.name(),
          name + " is given twice: \"" + earlier.value() + "\" and \"" + setting.value() + "\"",
          "");
    }
  }

  /** A date is a welcome value here: calibration due, date of test. */
  private static String value(Entry entry) {
    Cell cell = entry.cell(VALUE.name());
    return cell.kind() == Cell.Stored.DATE ? cell.text() : entry.text(VALUE.name());
  }

  Optional<Setting> find(String name) {
    return Optional.ofNullable(byKey.get(Names.key(name)));
  }

  /** The rows that name a net. */
  List<Setting> ofNets() {
    return ofNets;
  }

  Iterable<Setting> all() {
    return byKey.values();
  }

  /** A resistance with its unit; absent where it is not given or can't be understood. */
  OptionalDouble ohms(String name) {
    return find(name).map(Settings::ohms).orElse(OptionalDouble.empty());
  }

  /** A row's resistance with its unit; absent where it can't be understood. */
  static OptionalDouble ohms(Setting setting) {
    String name = setting.name();
    if (setting.value().isEmpty()) {
      return OptionalDouble.empty();
    }
    Entry entry = setting.entry();
    boolean bare = setting.value().matches("[+-]?[\\d.,]+(?:[eE][+-]?\\d+)?");
    if (bare && setting.unit().isEmpty()) {
      entry.error(VALUE.name(), "\"" + name + "\" needs its unit, such as mΩ, Ω, kΩ, MΩ", "");
      return OptionalDouble.empty();
    }
    if (OhmsCell.unit(setting.unit()).isEmpty()) {
      entry.error(UNIT.name(), "\"" + setting.unit() + "\" is not a unit of resistance", "");
      return OptionalDouble.empty();
    }
    Double ohms =
        entry.take(VALUE.name(), OhmsCell.ohms(setting.value(), setting.unit())).orElse(null);
    if (ohms == null) {
      return OptionalDouble.empty();
    }
    if (ohms < 0) {
      entry.error(VALUE.name(), "\"" + name + "\" can't be negative", "");
      return OptionalDouble.empty();
    }
    return OptionalDouble.of(ohms);
  }

  /** Volts above 0; absent where they are not given or can't be understood. */
  OptionalDouble volts(String name) {
    return find(name).map(Settings::volts).orElse(OptionalDouble.empty());
  }

  /** A row's volts above 0. */
  static OptionalDouble volts(Setting setting) {
    if (setting.value().isEmpty()) {
      return OptionalDouble.empty();
    }
    Double volts =
        setting
            .entry()
            .take(VALUE.name(), VoltsCell.volts(setting.value(), setting.unit()))
            .orElse(null);
    return volts == null ? OptionalDouble.empty() : OptionalDouble.of(volts);
  }

  /**
   * A number in the first of some units, all of which mean the same; absent where it is not given
   * or can't be understood.
   */
  OptionalDouble number(String name, String... units) {
    return find(name).map(one -> number(one, units)).orElse(OptionalDouble.empty());
  }

  /** A row's number in the first of some units. */
  static OptionalDouble number(Setting setting, String... units) {
    String name = setting.name();
    if (setting.value().isEmpty()) {
      return OptionalDouble.empty();
    }
    String value = setting.value();
    String unit = setting.unit();
    int end = 0;
    while (end < value.length() && "+-.,0123456789".indexOf(value.charAt(end)) >= 0) {
      end++;
    }
    String written = Blanks.strip(value.substring(end));
    String given = written.isEmpty() ? unit : written;
    boolean unitFits =
        given.isEmpty()
            || Arrays.stream(units)
                .anyMatch(
                    one -> one.toLowerCase(Locale.ROOT).equals(given.toLowerCase(Locale.ROOT)));
    if (!unitFits) {
      setting.entry().error(UNIT.name(), "\"" + name + "\" is given in " + units[0] + " here", "");
      return OptionalDouble.empty();
    }
    try {
      return OptionalDouble.of(Double.parseDouble(value.substring(0, end).replace(',', '.')));
    } catch (NumberFormatException e) {
      setting.entry().error(VALUE.name(), "\"" + value + "\" is not a number of " + units[0], "");
      return OptionalDouble.empty();
    }
  }

  /** A length with its unit; nothing where it is not given or can't be understood. */
  Length length(String name) {
    return find(name)
        .filter(setting -> !setting.value().isEmpty())
        .flatMap(
            setting ->
                setting
                    .entry()
                    .take(VALUE.name(), LengthCell.length(setting.value(), setting.unit())))
        .orElse(new Length(0));
  }

  /** Name to the cell of its value. */
  Map<String, Place> places() {
    Map<String, Place> map = new LinkedHashMap<>();
    byKey.values().forEach(setting -> map.put(setting.name(), setting.place()));
    return map;
  }

  /** Name to value, as written. */
  Map<String, String> asMap() {
    Map<String, String> map = new LinkedHashMap<>();
    byKey.values().forEach(setting -> map.put(setting.name(), setting.value()));
    return map;
  }
}
