package dev.ringout.benchmarks.weaken;

import dev.ringout.benchmarks.weaken.Evidence.Rework;
import dev.ringout.benchmarks.weaken.Unit.Component;
import dev.ringout.benchmarks.weaken.Unit.Demand;
import dev.ringout.benchmarks.weaken.Unit.Joint;
import dev.ringout.benchmarks.weaken.Unit.JointKind;
import dev.ringout.benchmarks.weaken.Unit.PartKind;
import dev.ringout.benchmarks.weaken.Unit.State;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** Every single fault that a good set of readings of a unit must rule out. */
final class Faults {
  /** A little below the limit: what fails, but only just. */
  private static final double JUST_BELOW = 0.99;

  private final Unit unit;
  private final List<Fault> faults = new ArrayList<>();

  private Faults(Unit unit) {
    this.unit = unit;
  }

  static List<Fault> of(Unit unit) {
    Faults faults = new Faults(unit);
    faults.joints();
    faults.pairs();
    faults.parts();
    return List.copyOf(faults.faults);
  }

  private void joints() {
    for (int joint = 0; joint < unit.joints().size(); joint++) {
      Joint one = unit.joints().get(joint);
      if (one.kind() == JointKind.WIRE || Harness.isOnlyWay(unit, joint)) {
        faults.add(new Fault.JointOpen(joint));
      }
      if (one.kind() == JointKind.CONTACT) {
        contact(joint, one);
      }
    }
  }

  private void contact(int joint, Joint contact) {
    faults.add(new Fault.ContactOpen(joint));
    for (String position : unit.positions()) {
      int[] nets = unit.nets(new State(position, Set.of()));
      if (nets[contact.from()] != nets[contact.to()]) {
        faults.add(new Fault.ContactStuck(joint, position));
      }
    }
  }

  /** Between two pieces of different nets; a piece is what no switch takes apart. */
  private void pairs() {
    int[] pieces = unit.pieces();
    int[] nets = unit.nets(State.NORMAL);
    int[] groups = unit.partGroups();
    int[] all = Arrays.stream(pieces).distinct().toArray();
    for (int one : all) {
      for (int other : all) {
        if (one < other && nets[one] != nets[other]) {
          faults.add(new Fault.StrayJoin(one, other, 0));
          // Through a part nothing but a hard short can be told from the part.
          if (groups[one] != groups[other]) {
            faults.add(new Fault.StrayJoin(one, other, JUST_BELOW * Demand.OPEN_MIN_OHMS));
            if (unit.demand().insulationTest()) {
              double ohms = JUST_BELOW * unit.demand().insulationMinOhms();
              faults.add(new Fault.Leak(one, other, ohms));
            }
          }
        }
      }
    }
  }

  private void parts() {
    for (int part = 0; part < unit.parts().size(); part++) {
      Component one = unit.parts().get(part);
      faults.add(new Fault.PartShorted(part));
      if (one.ohms().isPresent() || one.kind() == PartKind.DIODE) {
        faults.add(new Fault.PartMissing(part));
      }
      if (one.kind() == PartKind.DIODE) {
        faults.add(new Fault.DiodeReversed(part));
      }
    }
  }

  /** Whether a rework may have made a fault: where it is was touched. */
  static boolean mayBeFrom(Unit unit, Fault fault, Rework rework) {
    Set<String> items = rework.items();
    if (fault instanceof Fault.JointOpen open) {
      return touches(unit, unit.joints().get(open.joint()), rework);
    }
    if (fault instanceof Fault.ContactOpen open) {
      return touches(unit, unit.joints().get(open.joint()), rework);
    }
    if (fault instanceof Fault.ContactStuck stuck) {
      return touches(unit, unit.joints().get(stuck.joint()), rework);
    }
    if (fault instanceof Fault.StrayJoin made) {
      return isAt(unit, made.from(), items) && isAt(unit, made.to(), items);
    }
    if (fault instanceof Fault.Leak made) {
      return isAt(unit, made.from(), items) && isAt(unit, made.to(), items);
    }
    int part =
        fault instanceof Fault.PartMissing missing
            ? missing.part()
            : fault instanceof Fault.PartShorted shorted
                ? shorted.part()
                : ((Fault.DiodeReversed) fault).part();
    return items.contains(unit.parts().get(part).ref());
  }

  private static boolean touches(Unit unit, Joint joint, Rework rework) {
    return rework.wires().contains(joint.name())
        || unit.itemsOf(joint).stream().anyMatch(rework.items()::contains);
  }

  /** Whether a piece has a point at one of the items. */
  private static boolean isAt(Unit unit, int piece, Set<String> items) {
    int[] pieces = unit.pieces();
    for (int point = 0; point < pieces.length; point++) {
      if (pieces[point] == pieces[piece] && items.contains(unit.itemOf(point))) {
        return true;
      }
    }
    return false;
  }

  /** A fault in words. */
  static String text(Unit unit, Fault fault) {
    if (fault instanceof Fault.JointOpen open) {
      Joint joint = unit.joints().get(open.joint());
      return joint.kind().name().toLowerCase(Locale.ROOT)
          + " "
          + joint.name()
          + " "
          + between(unit, joint.from(), joint.to())
          + " open";
    }
    if (fault instanceof Fault.StrayJoin made) {
      return "short of " + made.ohms() + " Ω, " + between(unit, made.from(), made.to());
    }
    if (fault instanceof Fault.Leak made) {
      return "leak of " + made.ohms() / 1e6 + " MΩ, " + between(unit, made.from(), made.to());
    }
    if (fault instanceof Fault.ContactOpen open) {
      Joint joint = unit.joints().get(open.joint());
      return "contact " + between(unit, joint.from(), joint.to()) + " never closes";
    }
    if (fault instanceof Fault.ContactStuck stuck) {
      Joint joint = unit.joints().get(stuck.joint());
      return "contact "
          + between(unit, joint.from(), joint.to())
          + " closed at "
          + stuck.position();
    }
    if (fault instanceof Fault.PartMissing missing) {
      return unit.parts().get(missing.part()).ref() + " missing";
    }
    if (fault instanceof Fault.PartShorted shorted) {
      return unit.parts().get(shorted.part()).ref() + " shorted";
    }
    return unit.parts().get(((Fault.DiodeReversed) fault).part()).ref() + " reversed";
  }

  private static String between(Unit unit, int one, int other) {
    return unit.points().get(one) + " to " + unit.points().get(other);
  }
}
