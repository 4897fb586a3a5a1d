package dev.ringout.readings;

import dev.ringout.harness.Point;
import java.util.List;
import java.util.stream.Collectors;

/** What one probe touched. */
public sealed interface Side {

  /** The points that it touched; of the rest, none. */
  List<Point> points();

  /** Whether it was every point that is not in the net of the other side. */
  default boolean isRest() {
    return false;
  }

  /** One point, or several tied together with jumpers while the reading was taken. */
  record Points(List<Point> points) implements Side {
    @Override
    public String toString() {
      return points.size() == 1
          ? points.get(0).toString()
          : points.stream().map(Point::toString).collect(Collectors.joining("+"));
    }
  }

  /** Every point of the harness that is not in the net of the other side, joined together. */
  record Rest() implements Side {
    @Override
    public List<Point> points() {
      return List.of();
    }

    @Override
    public boolean isRest() {
      return true;
    }

    @Override
    public String toString() {
      return "REST";
    }
  }
}
