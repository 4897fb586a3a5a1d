package dev.ringout.record;

import dev.ringout.check.CheckResult;
import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.Conductor;
import dev.ringout.compare.Judged;
import dev.ringout.compare.Outcome;
import dev.ringout.diagnose.Fault;
import dev.ringout.harness.Point;
import dev.ringout.harness.Wire;
import dev.ringout.pictures.JoinPicture;
import dev.ringout.pictures.JoinPicture.Join;
import dev.ringout.pictures.JoinPicture.Look;
import dev.ringout.readings.Reading;
import dev.ringout.record.RecordBlock.Picture;
import dev.ringout.units.Text;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** The nets of a fault as they are listed, and as they were measured. */
final class FaultNets {
  private static final int POINTS_DRAWN = 30;

  private final CheckResult result;
  private final Circuit circuit;

  FaultNets(CheckResult result) {
    this.result = result;
    this.circuit = result.circuit();
  }

  /** Both side by side; absent where there are no two points to join. */
  Optional<Picture> picture(int number, Fault fault) {
    Set<Integer> nets = new TreeSet<>();
    fault.points().forEach(point -> nets.add(circuit.normal().of(circuit.index(point))));
    Set<Point> points = points(fault, nets);
    if (points.size() < 2) {
      return Optional.empty();
    }
    String title = "Fault " + number;
    return Optional.of(
        new Picture(
            new JoinPicture(points)
                .draw(
                    title,
                    new JoinPicture.Side(title + ", AS LISTED", listed(nets)),
                    new JoinPicture.Side(title + ", AS MEASURED", measured(nets)),
                    "As measured: thin joined; × should join and does not; + joins and should"
                        + " not; ? neither."),
            Text.of("The nets of fault %d as they are listed and as they were measured", number)));
  }

  /** Those of the fault, and of the others of its nets as many as can be told apart. */
  private Set<Point> points(Fault fault, Set<Integer> nets) {
    Set<Point> points = new LinkedHashSet<>(fault.points());
    for (int net : nets) {
      for (int point : circuit.normal().pointsOf(net)) {
        if (points.size() < POINTS_DRAWN) {
          points.add(circuit.point(point));
        }
      }
    }
    return points;
  }

  private List<Join> listed(Set<Integer> nets) {
    List<Join> listed = new ArrayList<>();
    for (int net : nets) {
      for (int conductor : circuit.normal().conductorsOf(net)) {
        Conductor one = circuit.conductors().get(conductor);
        listed.add(
            new Join(one.from(), one.to(), one.asWire().map(Wire::name).orElse(""), Look.THIN));
      }
    }
    return listed;
  }

  private List<Join> measured(Set<Integer> nets) {
    List<Join> measured = new ArrayList<>();
    for (Judged judged : result.comparison().inForce()) {
      if (isWithin(nets, judged) && look(judged) != Look.BROKEN) {
        measured.add(
            new Join(
                circuit.point(judged.probing().from()[0]),
                circuit.point(judged.probing().to()[0]),
                judged.reading().measured().text(),
                look(judged)));
      }
    }
    return measured;
  }

  private boolean isWithin(Set<Integer> nets, Judged judged) {
    return judged.reading().kind() == Reading.Kind.CONTINUITY
        && judged.probing().isPair()
        && nets.contains(circuit.normal().of(judged.probing().from()[0]))
        && nets.contains(circuit.normal().of(judged.probing().to()[0]))
        && judged.reading().state().isNormal();
  }

  private static Look look(Judged judged) {
    return switch (judged.observed()) {
      case JOINED -> judged.outcome() == Outcome.UNEXPECTED_JOIN ? Look.THICK : Look.THIN;
      case APART -> judged.outcome().fails() ? Look.OPEN : Look.BROKEN;
      case RESISTIVE -> Look.POOR;
      case UNKNOWN -> Look.BROKEN;
    };
  }
}
