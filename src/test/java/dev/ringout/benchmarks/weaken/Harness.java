package dev.ringout.benchmarks.weaken;

import dev.ringout.benchmarks.weaken.Unit.Component;
import dev.ringout.benchmarks.weaken.Unit.Demand;
import dev.ringout.benchmarks.weaken.Unit.Joint;
import dev.ringout.benchmarks.weaken.Unit.JointKind;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/** A unit's list as a folder of sheets. */
final class Harness {
  private Harness() {}

  static Folder of(Unit unit) {
    Folder folder = new Folder();
    Table wires = Table.of("Wire", "From", "From Pin", "To", "To Pin", "Gauge", "Length");
    Table links = Table.of("Ref", "Pin", "To Pin");
    Table switches = Table.of("Ref", "State", "Pin", "To Pin");
    Set<Integer> named = new TreeSet<>();
    for (Joint joint : unit.joints()) {
      String from = unit.pinOf(joint.from());
      String to = unit.pinOf(joint.to());
      named.add(joint.from());
      named.add(joint.to());
      switch (joint.kind()) {
        case WIRE ->
            wires.row(
                joint.name(),
                unit.itemOf(joint.from()),
                from,
                unit.itemOf(joint.to()),
                to,
                joint.metres().isPresent() ? "AWG " + joint.gauge() : "",
                joint.metres().isPresent() ? joint.metres().getAsDouble() + " m" : "");
        case LINK -> links.row(unit.itemOf(joint.from()), from, to);
        case CONTACT -> switches.row(Unit.SWITCH, joint.position(), from, to);
      }
    }
    Table parts = Table.of("Ref", "Pin", "To Pin", "Kind", "Ohms", "Tolerance %");
    for (Component part : unit.parts()) {
      named.add(part.from());
      named.add(part.to());
      parts.row(
          part.ref(),
          unit.pinOf(part.from()),
          unit.pinOf(part.to()),
          part.kind().word(),
          part.ohms().isPresent() ? part.ohms().getAsDouble() + " Ω" : "",
          part.tolerancePercent().isPresent() ? "" + part.tolerancePercent().getAsDouble() : "");
    }
    Table pins = Table.of("Ref", "Pin");
    for (int point = 0; point < unit.points().size(); point++) {
      if (!named.contains(point)) {
        pins.row(unit.itemOf(point), unit.pinOf(point));
      }
    }
    unit.positions().stream()
        .filter(position -> unit.joints().stream().noneMatch(j -> j.position().equals(position)))
        .forEach(position -> switches.row(Unit.SWITCH, position, "", ""));
    if (unit.positions().size() > 1) {
      // The first listed position is the normal one.
      switches.rows.sort((one, other) -> Integer.compare(place(unit, one), place(unit, other)));
    }
    folder.sheets.put("wires", wires);
    putIfAny(folder, "links", links);
    putIfAny(folder, "switches", switches);
    putIfAny(folder, "parts", parts);
    putIfAny(folder, "pins", pins);
    putIfAny(folder, "limits", limits(unit.demand()));
    putIfAny(folder, "header", header(unit));
    return folder;
  }

  private static int place(Unit unit, List<String> row) {
    return unit.positions().indexOf(row.get(1));
  }

  private static void putIfAny(Folder folder, String name, Table table) {
    if (!table.rows.isEmpty()) {
      folder.sheets.put(name, table);
    }
  }

  private static Table limits(Demand demand) {
    Table limits = Table.of("Name", "Value");
    if (!demand.insulationTest()) {
      limits.row("insulation test", "none");
    }
    if (demand.wordsProveJoins()) {
      limits.row("words", "joins");
    }
    if (demand.calibration()) {
      limits.row("calibration", "required");
    }
    if (demand.serialNumber()) {
      limits.row("serial number", "required");
    }
    if (demand.inspector()) {
      limits.row("independent inspector", "required");
    }
    limits.row("insulation min", demand.insulationMinOhms() / 1e6 + " MΩ");
    limits.row("insulation volts", (int) demand.insulationVolts() + " V");
    return limits;
  }

  private static Table header(Unit unit) {
    Table header = Table.of("Name", "Value").row("title", "Sluice unit " + unit.name());
    header.put("revision", unit.demand().revision());
    return header.put("effectivity", unit.demand().effectivity());
  }

  /** Whether a joint is the only way between its points, by the list. */
  static boolean isOnlyWay(Unit unit, int joint) {
    Joint one = unit.joints().get(joint);
    int[] nets = unit.nets(new Unit.State("", Set.of(joint)));
    return one.kind() != JointKind.CONTACT && nets[one.from()] != nets[one.to()];
  }
}
