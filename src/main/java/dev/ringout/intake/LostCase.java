package dev.ringout.intake;

import dev.ringout.harness.Harness;
import dev.ringout.harness.Link;
import dev.ringout.harness.Point;
import dev.ringout.harness.Wire;
import dev.ringout.readings.Reading;
import dev.ringout.readings.ReadingSet;
import dev.ringout.readings.Side;
import dev.ringout.source.Place;
import dev.ringout.source.Problems;
import dev.ringout.units.Text;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Finds a pin whose case was lost between the list and the test sheet: the harness has {@code J2-A}
 * and {@code J2-a}, the sheet has {@code J2-A} on two rows, one of them with the far end of {@code
 * J2-a}, and {@code J2-a} on none. Which row means which can't be told from the file.
 */
public final class LostCase {
  private LostCase() {}

  /** Reports every pin whose twin has vanished from the readings. */
  public static void report(Harness harness, ReadingSet readings, Problems problems) {
    Map<String, List<Point>> twins = twins(harness);
    if (twins.isEmpty()) {
      return;
    }
    Map<Point, List<Reading>> readingsAt = readingsAt(readings);
    Map<Point, Set<Point>> farEnds = farEnds(harness, twins);
    for (List<Point> pair : twins.values()) {
      for (Point point : pair) {
        for (Point twin : pair) {
          if (!twin.equals(point) && !readingsAt.containsKey(twin)) {
            reportIfLost(point, twin, readingsAt, farEnds, problems);
          }
        }
      }
    }
  }

  private static void reportIfLost(
      Point point,
      Point twin,
      Map<Point, List<Reading>> readingsAt,
      Map<Point, Set<Point>> farEnds,
      Problems problems) {
    List<Reading> own = readingsAt.getOrDefault(point, List.of());
    List<Reading> twins =
        own.stream()
            .filter(reading -> touchesAny(reading, farEnds.getOrDefault(twin, Set.of())))
            .toList();
    if (twins.isEmpty() || own.size() < 2) {
      return;
    }
    String places =
        own.stream().map(Reading::place).map(Place::toString).collect(Collectors.joining(", "));
    problems.error(
        twins.get(0).place(),
        Text.of(
            "%s is used on %d rows and %s, which the harness has too, on none: a capital and a small letter were mixed up (%s). The file does not show on which row",
            point, own.size(), twin, places));
  }

  private static boolean touchesAny(Reading reading, Set<Point> points) {
    return reading.from().points().stream().anyMatch(points::contains)
        || reading.to().points().stream().anyMatch(points::contains);
  }

  private static Map<String, List<Point>> twins(Harness harness) {
    Map<String, List<Point>> byFoldedName = new HashMap<>();
    for (Point point : harness.points()) {
      byFoldedName
          .computeIfAbsent(point.toString().toUpperCase(Locale.ROOT), name -> new ArrayList<>())
          .add(point);
    }
    byFoldedName.values().removeIf(points -> points.size() < 2);
    return byFoldedName;
  }

  private static Map<Point, List<Reading>> readingsAt(ReadingSet readings) {
    Map<Point, List<Reading>> at = new HashMap<>();
    for (Reading reading : readings.readings()) {
      for (Side side : List.of(reading.from(), reading.to())) {
        for (Point point : side.points()) {
          at.computeIfAbsent(point, key -> new ArrayList<>()).add(reading);
        }
      }
    }
    return at;
  }

  private static Map<Point, Set<Point>> farEnds(Harness harness, Map<String, List<Point>> twins) {
    Set<Point> wanted = new HashSet<>();
    twins.values().forEach(wanted::addAll);
    Map<Point, Set<Point>> farEnds = new HashMap<>();
    for (Wire wire : harness.wires()) {
      note(wire.from(), wire.to(), wanted, farEnds);
    }
    for (Link link : harness.links()) {
      note(link.from(), link.to(), wanted, farEnds);
    }
    return farEnds;
  }

  private static void note(
      Point from, Point to, Set<Point> wanted, Map<Point, Set<Point>> farEnds) {
    if (wanted.contains(from)) {
      farEnds.computeIfAbsent(from, key -> new HashSet<>()).add(to);
    }
    if (wanted.contains(to)) {
      farEnds.computeIfAbsent(to, key -> new HashSet<>()).add(from);
    }
  }
}
