package dev.ringout.imports.join;

import dev.ringout.imports.list.Draft;
import dev.ringout.imports.list.Finding.Kind;
import dev.ringout.imports.list.Findings;
import dev.ringout.imports.list.Layout;
import dev.ringout.imports.list.SparePin;
import dev.ringout.imports.list.Understanding;
import dev.ringout.units.Text;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** Joins the two rows that bear one wire number, where lists name wires instead of far ends. */
public final class WireEnds {
  private final Understanding list;
  private final Findings findings;
  private final TwoRows twoRows;

  public WireEnds(Understanding list, TwoRows twoRows, Findings findings) {
    this.list = list;
    this.findings = findings;
    this.twoRows = twoRows;
  }

  public void join() {
    for (Map.Entry<String, List<Draft>> wire : list.halves().entrySet()) {
      List<Draft> ends = wire.getValue();
      Draft first = ends.get(0);
      if (ends.size() == 1) {
        findings.warning(
            Kind.ONE_SIDED,
            first.place(),
            Text.of(
                "the wire %s ends at %s; no other pin bears its number",
                wire.getKey(), first.from()));
        list.add(new SparePin(first.from(), "wire " + wire.getKey() + ", other end not listed"));
        continue;
      }
      if (ends.size() > 2) {
        findings.warning(
            Kind.WIRE_TWICE,
            ends.get(2).place(),
            Text.of(
                "the wire number %s stands at %d pins (%s): read as a chain of wires in their order; one wire has two ends",
                wire.getKey(),
                ends.size(),
                ends.stream().map(end -> end.from().toString()).collect(Collectors.joining(", "))));
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
