package dev.ringout.record;

import dev.ringout.diagnose.Fault;
import dev.ringout.harness.Point;
import dev.ringout.record.RecordBlock.Heading;
import dev.ringout.record.RecordBlock.Picture;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/** The charts, each where there is something to draw. */
final class ToLookAt {
  private static final int MOST_ITEMS = 60;

  private ToLookAt() {}

  static List<RecordBlock> of(TestRecord record) {
    List<RecordBlock> blocks = new ArrayList<>(List.of(new Heading(2, "To look at")));
    if (record.map().places().size() <= MOST_ITEMS) {
      blocks.add(
          new Picture(
              UnitMapPicture.of(record.map(), faultsAt(record)),
              "The unit: items, how many wires run between them, broken lines for halves that are"
                  + " plugged together, and in black the numbers of the faults at each. Not to"
                  + " scale, not as it lies."));
    }
    JoinsChart.of(record.result())
        .map(
            svg ->
                new Picture(
                    svg,
                    "Joins: each reading as a share of its limit, by the item of its first probe;"
                        + " rings pass, black lozenges fail; beyond the scale at its end. The worst"
                        + " items first."))
        .ifPresent(blocks::add);
    InsulationChart.of(record.result())
        .map(
            svg ->
                new Picture(
                    svg,
                    "Insulation, the lowest first, on a logarithmic scale: rings pass, black"
                        + " lozenges fail, > is above the meter's range; the short thick line is the"
                        + " limit."))
        .ifPresent(blocks::add);
    return blocks;
  }

  /** Items with the numbers of the faults at each. */
  private static Map<String, String> faultsAt(TestRecord record) {
    Map<String, Set<String>> faultsAt = new TreeMap<>();
    int number = 0;
    for (Fault fault : record.result().diagnosis().faults()) {
      number++;
      for (Point point : fault.points()) {
        faultsAt.computeIfAbsent(point.ref(), ref -> new LinkedHashSet<>()).add("" + number);
      }
    }
    Map<String, String> marks = new TreeMap<>();
    faultsAt.forEach((ref, numbers) -> marks.put(ref, String.join(",", numbers)));
    return marks;
  }
}
