package dev.ringout.readings;

import dev.ringout.harness.Point;
import java.util.List;
import java.util.stream.Collectors;

/** What one probe touched. */
public sealed interface Side {

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
    public String toString() {
      return "REST";
    }
  }
}
