package dev.ringout.imports.join;

import dev.ringout.imports.list.Draft;
import dev.ringout.imports.list.Layout;
import dev.ringout.imports.list.ListFindings;
import dev.ringout.imports.list.SparePin;
import dev.ringout.imports.list.Understanding;
import dev.ringout.imports.list.WiringOddity;
import java.util.List;
import java.util.Map;

/** Joins the two rows that bear one wire number, where lists name wires instead of far ends. */
public final class WireEnds {
  private final Understanding list;
  private final ListFindings findings;
  private final TwoRows twoRows;

  /** Ends of wires are taken from the list, and the wires put there. */
  public WireEnds(Understanding list, TwoRows twoRows, ListFindings findings) {
    this.list = list;
    this.findings = findings;
    this.twoRows = twoRows;
  }

  /** Puts a wire into the list for each two ends of one number. */
  public void join() {
    for (Map.Entry<String, List<Draft>> wire : list.halves().entrySet()) {
      List<Draft> ends = wire.getValue();
      Draft first = ends.get(0);
      if (ends.size() == 1) {
        findings.warning(
            first.place(), new WiringOddity.NumberAtOnePin(wire.getKey(), first.from().toString()));
        StringBuilder note = new StringBuilder("wire " + wire.getKey() + ", other end not listed");
        first.texts().values().forEach(value -> note.append("; ").append(value.text()));
        first.notes().values().forEach(text -> note.append("; ").append(text));
        list.add(new SparePin(first.from(), note.toString()));
        continue;
      }
      if (ends.size() > 2) {
        findings.warning(
            ends.get(2).place(),
            new WiringOddity.NumberAtSeveralPins(
                wire.getKey(), ends.stream().map(end -> end.from().toString()).toList()));
      }
      for (int i = 0; i + 1 < ends.size(); i++) {
        join(ends.get(i), ends.get(i + 1), i);
      }
    }
  }

  private void join(Draft one, Draft other, int number) {
    Draft both = twoRows.merge(one, other);
    list.add(
        new Draft(
            Draft.numbered(one.name(), number),
            one.from(),
            other.from(),
            List.of(),
            both.texts(),
            both.notes(),
            one.place(),
            Layout.WIRE_ENDS));
  }
}
