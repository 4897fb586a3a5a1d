package dev.ringout.intake;

import dev.ringout.cells.GaugeCell;
import dev.ringout.cells.LengthCell;
import dev.ringout.cells.LikelyMeant;
import dev.ringout.cells.Names;
import dev.ringout.cells.OhmsCell;
import dev.ringout.cells.PlainNumber;
import dev.ringout.harness.Harness;
import dev.ringout.readings.Measured;
import dev.ringout.support.ReadUnit;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;

/**
 * What people write into cells, for a fuzzer that is guided by coverage ({@code
 * src/bench/guided-fuzz.sh}): points, states, gauges, lengths, readings, found wires. What must
 * hold: nothing is thrown, and every value is a finite number.
 */
public final class ParserFuzz {
  private static final Harness UNIT =
      ReadUnit.of(Path.of("harness-samples/swing-bridge/junction-box"));
  private static final PointSearch SEARCH = new PointSearch(UNIT);

  private ParserFuzz() {}

  /** One text, and what stands in the cell beside it. */
  public static void fuzzerTestOneInput(byte[] bytes) {
    String all = new String(bytes, StandardCharsets.UTF_8);
    int half = all.indexOf('\n');
    String text = half < 0 ? all : all.substring(0, half);
    String beside = half < 0 ? "" : all.substring(half + 1);
    GaugeCell.gauge(text, beside);
    LengthCell.length(text, beside)
        .value()
        .ifPresent(length -> holdFinite(length.metres(), "length"));
    if (OhmsCell.unit(beside).isPresent()) {
      OhmsCell.reading(text, beside).value().ifPresent(ParserFuzz::holdFinite);
    }
    OhmsCell.ohms(text, "").value().ifPresent(ohms -> holdFinite(ohms, "ohms"));
    PlainNumber.of(text).ifPresent(number -> holdFinite(number, "number"));
    HarnessPoints points = new HarnessPoints(UNIT);
    points.side(text, beside);
    points.state(text);
    HarnessPoints.any().side(text, beside);
    HarnessPoints.any().state(text);
    SEARCH.find(text);
    SEARCH.state(text);
    LikelyMeant.asNumber(text);
    Names.key(text);
  }

  private static void holdFinite(Measured measured) {
    if (measured instanceof Measured.Value value) {
      holdFinite(value.ohms(), "reading");
      holdFinite(value.halfDigitOhms(), "last digit");
    } else if (measured instanceof Measured.MoreThan more) {
      holdFinite(more.ohms(), "more than");
    } else if (measured instanceof Measured.LessThan less) {
      holdFinite(less.ohms(), "less than");
    }
  }

  private static void holdFinite(double value, String what) {
    if (!Double.isFinite(value)) {
      throw new IllegalStateException(what + " " + value);
    }
  }
}
