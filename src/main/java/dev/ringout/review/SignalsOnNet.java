package dev.ringout.review;

import dev.ringout.harness.Point;
import dev.ringout.harness.Wire;
import dev.ringout.source.Severity;
import dev.ringout.units.Text;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * A net that several signal names share: two names, or two nets joined by mistake. A switch contact
 * is a break in the circuit: what is behind it may bear another name.
 */
final class SignalsOnNet implements Check {
  @Override
  public String rule() {
    return "signals-on-net";
  }

  @Override
  public String about() {
    return "one net has one signal name";
  }

  @Override
  public void run(Paper paper, Findings findings) {
    findings.looked();
    Map<Integer, TreeSet<String>> byNet = new LinkedHashMap<>();
    Map<Integer, Point> first = new HashMap<>();
    List<Wire> wires = paper.harness().wires();
    for (int i = 0; i < wires.size(); i++) {
      Wire wire = wires.get(i);
      if (!wire.signal().isEmpty()) {
        int net = paper.wiredNetOf(i);
        byNet
            .computeIfAbsent(net, key -> new TreeSet<>(String.CASE_INSENSITIVE_ORDER))
            .add(wire.signal());
        first.putIfAbsent(net, wire.from());
      }
    }
    byNet.forEach(
        (net, signals) -> {
          Point point = first.get(net);
          if (signals.size() > 1 && point != null) {
            findings.say(
                Severity.WARNING,
                point,
                Text.of(
                    "one net has %d names: %s",
                    signals.size(), signals.stream().limit(5).collect(Collectors.joining(", "))),
                COMMON);
          }
        });
  }
}
