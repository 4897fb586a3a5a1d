package dev.ringout.readings;

import dev.ringout.source.Place;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * The job sheet of one readings file.
 *
 * @param file the readings file, as it is named in every message
 * @param entries name to value, as written
 * @param places the cell of each entry's value
 * @param continuityRangeOhms the top of the meter's range on continuity
 * @param insulationRangeOhms the top of the insulation tester's range
 * @param insulationVolts the volts of every insulation reading that does not say its own
 * @param meter what is said of the meter
 * @param revision the revision the readings were taken against, or empty
 * @param revisionPlace the cell that gives the revision, or the file
 */
public record Job(
    String file,
    Map<String, String> entries,
    Map<String, Place> places,
    OptionalDouble continuityRangeOhms,
    OptionalDouble insulationRangeOhms,
    OptionalDouble insulationVolts,
    Meter meter,
    String revision,
    Place revisionPlace) {
  /** What is given can't be changed afterwards. */
  public Job {
    entries = Collections.unmodifiableMap(new LinkedHashMap<>(entries));
    places = Collections.unmodifiableMap(new LinkedHashMap<>(places));
  }

  private static final List<String> REMARKS = List.of("note", "remark", "remarks");

  /** The row that gives the day of the test, whatever else a sheet calls it. */
  public static final String DATE = "date";

  /**
   * The entry of that name whatever its case, blanks and punctuation, without the blanks around it;
   * or empty.
   */
  public String value(String name) {
    return entries.entrySet().stream()
        .filter(entry -> key(entry.getKey()).equals(key(name)))
        .map(Map.Entry::getValue)
        .findFirst()
        .orElse("")
        .strip();
  }

  /** What the tester says of the test in words of his own, as written. */
  public List<String> remarks() {
    return REMARKS.stream().map(this::value).filter(text -> !text.isEmpty()).toList();
  }

  /** The cell that gives an entry, or the file. */
  public Place place(String name) {
    return places.entrySet().stream()
        .filter(entry -> key(entry.getKey()).equals(key(name)))
        .map(Map.Entry::getValue)
        .findFirst()
        .orElse(Place.of(file));
  }

  private static String key(String name) {
    StringBuilder key = new StringBuilder();
    name.codePoints().filter(Character::isLetterOrDigit).forEach(key::appendCodePoint);
    return key.toString().toLowerCase(Locale.ROOT);
  }

  /** The same with one entry more, which no cell gives. */
  public Job with(String name, String value) {
    Map<String, String> more = new LinkedHashMap<>(entries);
    more.keySet().removeIf(one -> key(one).equals(key(name)));
    more.put(name, value);
    return new Job(
        file,
        Collections.unmodifiableMap(more),
        places,
        continuityRangeOhms,
        insulationRangeOhms,
        insulationVolts,
        meter,
        revision,
        revisionPlace);
  }

  /** The top of the range of the meter that reads so; absent where none is given. */
  public OptionalDouble rangeOhms(Reading.Kind kind) {
    return kind == Reading.Kind.INSULATION ? insulationRangeOhms : continuityRangeOhms;
  }

  /** The unit's serial number; empty where none is stated, or a dash or {@code n/a} is. */
  public String serialNumber() {
    String serial = value("serial number");
    return serial.chars().anyMatch(Character::isDigit) || Person.isNamed(serial) ? serial : "";
  }

  /** Whether a cell stands in this readings file. */
  public boolean holds(Place place) {
    return place.file().equals(file) || place.file().startsWith(file + "/");
  }

  /** The instruments, each by itself: the insulation tester where it has rows of its own. */
  public List<Instrument> instruments() {
    Instrument own =
        new Instrument(
            "insulation",
            value("insulation instrument"),
            value("insulation instrument number"),
            value("insulation calibration due"));
    boolean hasOwn = !(own.name() + own.number() + own.calibrationDue()).isEmpty();
    List<Instrument> instruments = new ArrayList<>();
    instruments.add(
        new Instrument(
            hasOwn ? "continuity" : "continuity and insulation",
            value("instrument"),
            value("instrument number"),
            value("calibration due")));
    if (hasOwn) {
      instruments.add(own);
    }
    return List.copyOf(instruments);
  }
}
