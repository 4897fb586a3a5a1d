package dev.ringout.revision;

import dev.ringout.harness.Harness;
import dev.ringout.harness.Item;
import dev.ringout.harness.Link;
import dev.ringout.harness.Load;
import dev.ringout.harness.NetLimit;
import dev.ringout.harness.Part;
import dev.ringout.harness.PinDetail;
import dev.ringout.harness.Point;
import dev.ringout.harness.Switch;
import dev.ringout.harness.Wire;
import java.util.HashMap;
import java.util.Map;

/** The names that a revision uses for what an earlier one calls by others. */
final class Renaming {
  private final Map<String, String> refs = new HashMap<>();
  private final Map<Point, String> pins = new HashMap<>();

  void item(String oldRef, String newRef) {
    refs.put(oldRef, newRef);
  }

  void pin(Point old, String newPin) {
    pins.put(old, newPin);
  }

  String ref(String oldRef) {
    return refs.getOrDefault(oldRef, oldRef);
  }

  Point point(Point old) {
    String pin = pins.getOrDefault(old, old.pin());
    String ref = ref(old.ref());
    return ref.equals(old.ref()) && pin.equals(old.pin()) ? old : new Point(ref, pin);
  }

  /** A wire that was named by its points is named by their new names. */
  Wire wire(Wire old) {
    Wire moved = old.between(point(old.from()), point(old.to()));
    return isUnnamed(old) ? moved.named(moved.from() + ">" + moved.to()) : moved;
  }

  /** Whether the list gives a wire no name of its own. */
  static boolean isUnnamed(Wire wire) {
    // Most names have no such sign, and need not be compared.
    return wire.name().indexOf('>') >= 0 && wire.name().equals(wire.from() + ">" + wire.to());
  }

  /** The earlier revision by the names of the later. */
  Harness harness(Harness old) {
    return old.toBuilder()
        .wires(old.wires().stream().map(this::wire).toList())
        .items(old.items().stream().map(this::item).toList())
        .pins(old.pins().stream().map(this::pin).toList())
        .links(old.links().stream().map(this::link).toList())
        .switches(old.switches().stream().map(this::switchOf).toList())
        .parts(old.parts().stream().map(this::part).toList())
        .loads(old.loads().stream().map(this::load).toList())
        .netLimits(old.netLimits().stream().map(this::netLimit).toList())
        .build();
  }

  private NetLimit netLimit(NetLimit old) {
    return new NetLimit(
        point(old.point()), old.insulationMinOhms(), old.insulationVolts(), old.place());
  }

  private Item item(Item old) {
    return new Item(
        ref(old.ref()),
        old.kind(),
        old.part(),
        old.arrangement(),
        old.location(),
        ref(old.mates()),
        old.note(),
        old.place());
  }

  private PinDetail pin(PinDetail old) {
    return new PinDetail(
        point(old.point()),
        old.size(),
        old.contact(),
        old.xMillimetres(),
        old.yMillimetres(),
        old.note(),
        old.place());
  }

  private Link link(Link old) {
    return new Link(point(old.from()), point(old.to()), old.note(), old.place());
  }

  private Switch switchOf(Switch old) {
    return new Switch(
        ref(old.ref()),
        old.states(),
        old.contacts().stream()
            .map(
                one ->
                    new Switch.Contact(
                        ref(one.ref()),
                        one.state(),
                        point(one.from()),
                        point(one.to()),
                        one.place()))
            .toList());
  }

  private Part part(Part old) {
    return new Part(
        ref(old.ref()),
        point(old.from()),
        point(old.to()),
        old.kind(),
        old.ohms(),
        old.tolerancePercent(),
        old.maxTestVolts(),
        old.note(),
        old.place());
  }

  private Load load(Load old) {
    return new Load(
        old.name(),
        point(old.from()),
        point(old.to()),
        old.amps(),
        old.volts(),
        old.allowedDropVolts(),
        old.wireCelsius(),
        old.intermittent(),
        old.place());
  }
}
