package dev.ringout.benchmarks.faults;

import dev.ringout.benchmarks.faults.Rig.Component;
import dev.ringout.benchmarks.faults.Rig.Joint;
import dev.ringout.benchmarks.faults.Rig.JointKind;
import dev.ringout.benchmarks.faults.Rig.Leak;
import dev.ringout.circuit.Conductor;
import dev.ringout.diagnose.Fault;
import dev.ringout.diagnose.Move;
import dev.ringout.diagnose.PartFault;
import dev.ringout.diagnose.SlipFact;
import dev.ringout.diagnose.SwitchFault;
import dev.ringout.harness.Part;
import dev.ringout.harness.Point;
import dev.ringout.harness.Switch;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Consumer;
import java.util.stream.Collectors;

/**
 * Judges a diagnosis by physics: with the reported faults applied, the unit on paper must be to
 * every meter what the broken one is.
 */
final class Referee {
  private static final int MOST_COMBINATIONS = 5000;

  private final Rig paper;
  private final List<Object> truth;

  Referee(Rig paper, Rig broken) {
    this.paper = paper;
    this.truth = broken.fingerprint();
  }

  /** What an explanation does to a unit. */
  private interface Effect extends Consumer<Rig> {}

  /** Whether the faults as they are reported make the broken unit. */
  boolean isExact(List<Fault> faults) {
    return reported(faults).fingerprint().equals(truth);
  }

  /** The unit on paper with the faults as they are reported. */
  Rig reported(List<Fault> faults) {
    Rig rig = paper.copy();
    options(faults).forEach(options -> options.get(0).forEach(effect -> effect.accept(rig)));
    return rig;
  }

  /** Whether some choice among the alternatives makes the broken unit. */
  boolean isAmongAlternatives(List<Fault> faults) {
    List<List<List<Effect>>> options = options(faults);
    long combinations = 1;
    for (List<List<Effect>> one : options) {
      combinations = Math.min(MOST_COMBINATIONS, combinations * one.size());
    }
    for (long number = 0; number < combinations; number++) {
      Rig rig = paper.copy();
      long rest = number;
      for (List<List<Effect>> one : options) {
        one.get((int) (rest % one.size())).forEach(effect -> effect.accept(rig));
        rest /= one.size();
      }
      if (rig.fingerprint().equals(truth)) {
        return true;
      }
    }
    return false;
  }

  /** For each story what may have happened, the likeliest first. */
  private List<List<List<Effect>>> options(List<Fault> faults) {
    Map<Integer, List<Fault>> stories = new LinkedHashMap<>();
    int alone = -1;
    for (Fault fault : faults) {
      int story = fault.finding().story() == 0 ? alone-- : fault.finding().story();
      stories.computeIfAbsent(story, key -> new ArrayList<>()).add(fault);
    }
    List<List<List<Effect>>> all = new ArrayList<>();
    for (List<Fault> story : stories.values()) {
      List<List<Effect>> options = new ArrayList<>();
      options.add(new ArrayList<>());
      for (Fault fault : story) {
        List<List<Effect>> longer = new ArrayList<>();
        for (Effect effect : effects(fault)) {
          for (List<Effect> before : options) {
            List<Effect> more = new ArrayList<>(before);
            more.add(effect);
            longer.add(more);
          }
        }
        options = longer.size() > MOST_COMBINATIONS ? longer.subList(0, MOST_COMBINATIONS) : longer;
      }
      for (Fault fault : story) {
        for (Fault.Alternative alternative : fault.finding().alternatives()) {
          options.add(alternative.slips().stream().map(Referee::effect).toList());
        }
      }
      all.add(options);
    }
    return all;
  }

  private static List<Effect> effects(Fault fault) {
    return fault.match(new EffectsOfFault());
  }

  private static Effect effect(SlipFact slip) {
    return slip.match(new EffectOfSlip());
  }

  /** What each kind of fault may have done to a unit. */
  private static final class EffectsOfFault implements Fault.Cases<List<Effect>> {
    /** The unit itself is sound. */
    private static final List<Effect> NONE = List.of(rig -> {});

    private static List<Effect> notPlanted(Fault fault) {
      return List.of(rig -> rig.poor.add("no such fault was planted: " + fault));
    }

    @Override
    public List<Effect> open(Fault.Open fault) {
      return fault.suspects().stream().map(one -> opened(one)).toList();
    }

    @Override
    public List<Effect> shorted(Fault.Shorted fault) {
      return List.of(bridge(fault.points().get(0), fault.points().get(1)));
    }

    @Override
    public List<Effect> miswire(Fault.Miswire fault) {
      return List.of(moved(fault.moves()));
    }

    @Override
    public List<Effect> highResistance(Fault.HighResistance fault) {
      return fault.suspects().stream().map(one -> poor(one.conductor())).toList();
    }

    /** Of what may make one wire too high poor joints are planted. */
    @Override
    public List<Effect> highWire(Fault.HighWire fault) {
      return List.of(poor(new Conductor.OfWire(fault.wire())));
    }

    @Override
    public List<Effect> unequalWire(Fault.UnequalWire fault) {
      return notPlanted(fault);
    }

    @Override
    public List<Effect> wrongGauge(Fault.WrongGauge fault) {
      return notPlanted(fault);
    }

    @Override
    public List<Effect> lowInsulation(Fault.LowInsulation fault) {
      return List.of(leaking(fault));
    }

    @Override
    public List<Effect> wrongPart(Fault.WrongPart fault) {
      return List.of(part(fault.part(), fault.how(), fault.points()));
    }

    @Override
    public List<Effect> wrongSwitch(Fault.WrongSwitch fault) {
      return List.of(switched(fault.which(), fault.how(), fault.position(), fault.points()));
    }

    @Override
    public List<Effect> misread(Fault.Misread fault) {
      return NONE;
    }

    @Override
    public List<Effect> slippedRows(Fault.SlippedRows fault) {
      return NONE;
    }

    @Override
    public List<Effect> misscaled(Fault.Misscaled fault) {
      return NONE;
    }

    @Override
    public List<Effect> exchangedRows(Fault.ExchangedRows fault) {
      return NONE;
    }

    @Override
    public List<Effect> leadsNotNulled(Fault.LeadsNotNulled fault) {
      return NONE;
    }

    @Override
    public List<Effect> onPaper(Fault.OnPaper fault) {
      return effects(fault.same());
    }
  }

  /** What each kind of slip did to a unit. */
  private static final class EffectOfSlip implements SlipFact.Cases<Effect> {
    @Override
    public Effect opened(SlipFact.Opened fact) {
      return Referee.opened(fact.conductor());
    }

    @Override
    public Effect misplaced(SlipFact.Misplaced fact) {
      return moved(fact.moves());
    }

    @Override
    public Effect bridge(SlipFact.Bridge fact) {
      return Referee.bridge(fact.one(), fact.other());
    }

    @Override
    public Effect misread(SlipFact.Misread fact) {
      return rig -> {};
    }

    @Override
    public Effect exchangedRows(SlipFact.ExchangedRows fact) {
      return rig -> {};
    }

    @Override
    public Effect misscaled(SlipFact.Misscaled fact) {
      return rig -> {};
    }

    @Override
    public Effect poorJoint(SlipFact.PoorJoint fact) {
      return poor(fact.conductor());
    }

    @Override
    public Effect otherLength(SlipFact.OtherLength fact) {
      return rig -> {};
    }

    @Override
    public Effect otherGauge(SlipFact.OtherGauge fact) {
      return rig -> {};
    }

    @Override
    public Effect badPart(SlipFact.BadPart fact) {
      return part(fact.part(), fact.how(), List.of(fact.from(), fact.to()));
    }

    @Override
    public Effect badSwitch(SlipFact.BadSwitch fact) {
      return switched(fact.which(), fact.how(), fact.position(), fact.contact());
    }
  }

  private static Effect change(Consumer<Rig> change) {
    return rig -> {
      change.accept(rig);
      rig.changed();
    };
  }

  private static int index(Rig rig, Point point) {
    return rig.point(point.ref() + "-" + point.pin());
  }

  private static Joint joint(Rig rig, Conductor conductor) {
    if (conductor instanceof Conductor.OfWire wire) {
      return rig.joint(wire.wire().name());
    }
    int from = index(rig, conductor.from());
    int to = index(rig, conductor.to());
    return rig.joints.stream()
        .filter(one -> one.kind != JointKind.WIRE && one.ends[0] == from && one.ends[1] == to)
        .findFirst()
        .orElseThrow();
  }

  private static Effect opened(Conductor conductor) {
    return change(rig -> rig.joints.remove(joint(rig, conductor)));
  }

  private static Effect poor(Conductor conductor) {
    return change(rig -> rig.poor.add(joint(rig, conductor).name));
  }

  private static Effect bridge(Point one, Point other) {
    return change(
        rig ->
            rig.joints.add(
                new Joint(
                    "reported",
                    JointKind.BRIDGE,
                    index(rig, one),
                    index(rig, other),
                    0.01,
                    "",
                    "")));
  }

  private static Effect moved(List<Move> moves) {
    return change(
        rig -> {
          for (Move move : moves) {
            Joint wire = rig.joint(move.wire().name());
            int side = move.wire().from().equals(move.from()) ? 0 : 1;
            wire.ends[side] = index(rig, move.to());
          }
        });
  }

  private static Effect leaking(Fault.LowInsulation low) {
    return change(
        rig -> {
          if (!low.places().isEmpty()) {
            rig.wet.add(
                low.points().stream().map(point -> index(rig, point)).collect(Collectors.toSet()));
          } else if (low.points().size() == 2) {
            rig.leaks.add(
                new Leak(
                    index(rig, low.points().get(0)), index(rig, low.points().get(1)), 1e6, ""));
          } else {
            rig.poor.add("a leak to nowhere");
          }
        });
  }

  private static Effect part(Part part, PartFault how, List<Point> points) {
    return change(
        rig -> {
          Component one =
              rig.parts.stream().filter(p -> p.name.equals(part.ref())).findFirst().orElseThrow();
          switch (how) {
            case MISSING -> one.ohms = Double.POSITIVE_INFINITY;
            case OTHER_VALUE -> rig.otherValue.add(one.name);
            case REVERSED, OTHER_POINTS -> {
              one.ends[0] = index(rig, points.get(0));
              one.ends[1] = index(rig, points.get(1));
            }
          }
        });
  }

  private static Effect switched(
      Switch which, SwitchFault how, String position, List<Point> points) {
    return change(
        rig -> {
          Set<Integer> welded = new TreeSet<>();
          points.forEach(point -> welded.add(index(rig, point)));
          for (Joint joint : rig.joints) {
            if (!joint.ofSwitch.equals(which.ref())) {
              continue;
            }
            switch (how) {
              case STUCK -> joint.position = joint.position.equals(position) ? "ALWAYS" : "NEVER";
              case OTHER_WAY ->
                  joint.position = joint.position.equals("AHEAD") ? "ASTERN" : "AHEAD";
              case WELDED -> {
                if (welded.contains(joint.ends[0]) && welded.contains(joint.ends[1])) {
                  joint.position = "ALWAYS";
                }
              }
            }
          }
        });
  }
}
