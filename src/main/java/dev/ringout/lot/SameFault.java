package dev.ringout.lot;

import dev.ringout.circuit.Conductor;
import dev.ringout.diagnose.Fault;
import dev.ringout.diagnose.Move;
import dev.ringout.harness.Point;
import java.util.List;

/**
 * What makes faults of two units one and the same: not how they were read, but where they are.
 *
 * @param where points in order, or what else tells it from others of its kind
 */
record SameFault(Class<? extends Fault> kind, List<?> where) {
  static SameFault of(Fault fault) {
    return fault.match(new Where());
  }

  private static SameFault at(Fault fault, List<Point> points) {
    return new SameFault(fault.getClass(), points.stream().sorted().distinct().toList());
  }

  private static SameFault at(Fault fault) {
    return at(fault, fault.points());
  }

  private static final class Where implements Fault.Cases<SameFault> {
    /** One broken wire shows at other points where another sheet reads other pairs. */
    @Override
    public SameFault open(Fault.Open fault) {
      return fault.suspects().size() == 1
          ? ends(fault, fault.suspects().get(0))
          : at(fault, fault.points());
    }

    private static SameFault ends(Fault fault, Conductor conductor) {
      return at(fault, List.of(conductor.from(), conductor.to()));
    }

    @Override
    public SameFault shorted(Fault.Shorted fault) {
      return at(fault);
    }

    @Override
    public SameFault miswire(Fault.Miswire fault) {
      return new SameFault(
          fault.getClass(), fault.moves().stream().map(Where::way).sorted().toList());
    }

    private static String way(Move move) {
      return move.wire().name() + ' ' + move.from() + ' ' + move.to();
    }

    @Override
    public SameFault highResistance(Fault.HighResistance fault) {
      return fault.suspects().size() == 1
          ? ends(fault, fault.suspects().get(0).conductor())
          : at(fault);
    }

    @Override
    public SameFault highWire(Fault.HighWire fault) {
      return at(fault);
    }

    @Override
    public SameFault unequalWire(Fault.UnequalWire fault) {
      return at(fault);
    }

    @Override
    public SameFault wrongGauge(Fault.WrongGauge fault) {
      return at(fault);
    }

    @Override
    public SameFault lowInsulation(Fault.LowInsulation fault) {
      return fault.places().isEmpty()
          ? at(fault)
          : new SameFault(fault.getClass(), fault.places().stream().sorted().toList());
    }

    @Override
    public SameFault wrongPart(Fault.WrongPart fault) {
      return at(fault);
    }

    @Override
    public SameFault wrongSwitch(Fault.WrongSwitch fault) {
      return new SameFault(fault.getClass(), List.of(fault.which().ref()));
    }

    @Override
    public SameFault misread(Fault.Misread fault) {
      return at(fault);
    }

    @Override
    public SameFault slippedRows(Fault.SlippedRows fault) {
      return at(fault);
    }

    @Override
    public SameFault misscaled(Fault.Misscaled fault) {
      return at(fault);
    }

    @Override
    public SameFault exchangedRows(Fault.ExchangedRows fault) {
      return at(
          fault,
          List.of(
              fault.one().reading().from().points().stream().findFirst().orElse(NO_POINT),
              fault.other().reading().from().points().stream().findFirst().orElse(NO_POINT)));
    }

    @Override
    public SameFault leadsNotNulled(Fault.LeadsNotNulled fault) {
      return at(fault);
    }

    @Override
    public SameFault onPaper(Fault.OnPaper fault) {
      return of(fault.same());
    }
  }

  private static final Point NO_POINT = new Point("", "");
}
