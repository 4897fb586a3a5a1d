package dev.ringout.imports.join;

import dev.ringout.harness.PinDetail;
import dev.ringout.harness.Point;
import dev.ringout.imports.list.ListFindings;
import dev.ringout.imports.list.WiringOddity;
import dev.ringout.source.Place;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;

/** The points that are listed beside the wires, each with its notes in one. */
final class SparePoints {
  private final Set<Point> wired;
  private final Map<Point, String> notes = new LinkedHashMap<>();
  private final Map<Point, Place> where = new HashMap<>();
  private final Set<Point> twice = new TreeSet<>();

  private final Predicate<String> saysNothing;

  /**
   * Points that have a wire need no note of a spare one, but they keep their names.
   *
   * @param saysNothing whether a note only says that there is no wire
   */
  SparePoints(Set<Point> wired, Predicate<String> saysNothing) {
    this.wired = wired;
    this.saysNothing = saysNothing;
  }

  void add(Point point, Place place, String note) {
    where.putIfAbsent(point, place);
    boolean spare = !wired.contains(point);
    if (!spare && saysNothing.test(note)) {
      return;
    }
    String before = notes.putIfAbsent(point, note);
    if (before != null && !before.equals(note)) {
      if (spare) {
        twice.add(point);
      }
      notes.put(point, before.isEmpty() ? note : note.isEmpty() ? before : before + " / " + note);
    }
  }

  /** Names that a list has for a point beside its own. */
  void alsoNamed(Point point, List<String> names) {
    notes.merge(
        point,
        "also " + String.join(", ", new LinkedHashSet<>(names)),
        (one, other) -> one.isEmpty() ? other : one + "; " + other);
  }

  /** Says which points are listed more than once. */
  void report(ListFindings findings) {
    twice.forEach(
        point ->
            findings.note(
                where.getOrDefault(point, Place.of("")),
                new WiringOddity.ListedWithoutWire(point.toString())));
  }

  List<PinDetail> details() {
    List<PinDetail> details = new ArrayList<>();
    notes.forEach(
        (point, note) ->
            details.add(
                new PinDetail(
                    point,
                    "",
                    "",
                    OptionalDouble.empty(),
                    OptionalDouble.empty(),
                    note,
                    where.getOrDefault(point, Place.of("")))));
    return List.copyOf(details);
  }
}
