package dev.ringout.review;

import dev.ringout.harness.Point;
import dev.ringout.harness.Wire;
import dev.ringout.source.Severity;
import dev.ringout.units.Text;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** Nets with wires of several gauges. */
final class GaugeChange implements Check {
  @Override
  public String rule() {
    return "gauge-change";
  }

  @Override
  public String about() {
    return "where the gauge changes inside a net";
  }

  @Override
  public void run(Paper paper, Findings findings) {
    findings.looked();
    Map<Integer, Map<String, String>> byNet = new LinkedHashMap<>();
    Map<Integer, Point> first = new HashMap<>();
    List<Wire> wires = paper.harness().wires();
    for (int i = 0; i < wires.size(); i++) {
      Wire wire = wires.get(i);
      if (wire.gauge().isPresent()) {
        int net = paper.netOf(i);
        byNet
            .computeIfAbsent(net, key -> new TreeMap<>())
            .putIfAbsent(wire.gauge().get().label(), wire.name());
        first.putIfAbsent(net, wire.from());
      }
    }
    byNet.forEach(
        (net, gauges) -> {
          Point point = first.get(net);
          if (gauges.size() > 1 && point != null) {
            findings.say(
                Severity.NOTE,
                point,
                Text.of(
                    "the gauge changes inside this net: %s; the breaker must protect the thinnest",
                    gauges.entrySet().stream()
                        .map(one -> one.getKey() + " (" + one.getValue() + ")")
                        .collect(Collectors.joining(", "))),
                COMMON);
          }
        });
  }
}
