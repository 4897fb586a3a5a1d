package dev.ringout.jobs;

import java.net.URLDecoder;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Optional;

/**
 * Names of inputs that are no files: {@code unit:0418} is a unit of the store, its list as well as
 * its readings, {@code station:bench 1} what a station carries along. As a path they have a form
 * that every system takes.
 */
public final class InputName {
  private static final String TYPED = "unit:";
  private static final String KEPT = "unit=";
  private static final String STATION_TYPED = "station:";
  private static final String STATION_KEPT = "station=";

  private InputName() {}

  /**
   * A unit of the store.
   *
   * @param list the digest of its list, where it is known
   */
  record Unit(String serial, Optional<String> list) {}

  /** What was typed, as a path; a file of such a name is given as {@code ./unit:0418}. */
  public static Path parse(String typed) {
    if (typed.startsWith(TYPED)) {
      return ofUnit(typed.substring(TYPED.length()));
    }
    if (typed.startsWith(STATION_TYPED)) {
      return Path.of(STATION_KEPT + encoded(typed.substring(STATION_TYPED.length())));
    }
    boolean isFile = typed.startsWith(KEPT) || typed.startsWith(STATION_KEPT);
    return isFile ? Path.of(".", typed) : Path.of(typed);
  }

  /** A unit of the store. */
  public static Path ofUnit(String serial) {
    return Path.of(KEPT + encoded(serial));
  }

  /** A unit of the store that is made to a list: other lists may have the same serial number. */
  public static Path ofUnit(String serial, String listDigest) {
    return Path.of(KEPT + encoded(serial) + "=" + listDigest);
  }

  private static String encoded(String serial) {
    return URLEncoder.encode(serial, StandardCharsets.UTF_8).replace("*", "%2A");
  }

  /** Whether a path means a unit of the store. */
  public static boolean isUnit(Path named) {
    return unit(named).isPresent();
  }

  /** Whether a path means one unit among those of its list: no other path means the same. */
  static boolean isOneOfItsList(Path named) {
    return unit(named).flatMap(Unit::list).isPresent();
  }

  /** The unit that a path means; absent where it means a file. */
  static Optional<Unit> unit(Path named) {
    String name = named.toString();
    if (!name.startsWith(KEPT)) {
      return Optional.empty();
    }
    String[] parts = name.substring(KEPT.length()).split("=", 2);
    return Optional.of(
        new Unit(
            URLDecoder.decode(parts[0], StandardCharsets.UTF_8),
            parts.length > 1 ? Optional.of(parts[1]) : Optional.empty()));
  }

  /** The serial number of the unit that a path means; empty where it means a file. */
  public static String serial(Path named) {
    return unit(named).map(Unit::serial).orElse("");
  }

  /** The station that a path means; absent where it means a file. */
  static Optional<String> station(Path named) {
    String name = named.toString();
    return name.startsWith(STATION_KEPT)
        ? Optional.of(
            URLDecoder.decode(name.substring(STATION_KEPT.length()), StandardCharsets.UTF_8))
        : Optional.empty();
  }

  /** Whether a path means something of the store. */
  static boolean isKept(Path named) {
    return isUnit(named) || station(named).isPresent();
  }

  /** As it was typed. */
  public static String typed(Path named) {
    if (station(named).isPresent()) {
      return STATION_TYPED + station(named).get();
    }
    return unit(named).map(unit -> TYPED + unit.serial()).orElseGet(named::toString);
  }
}
