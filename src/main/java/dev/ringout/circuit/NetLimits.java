package dev.ringout.circuit;

import dev.ringout.harness.NetLimit;
import dev.ringout.harness.Point;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.ToIntFunction;

/** The limits that single nets have of their own. */
public final class NetLimits {
  private NetLimits() {}

  /** For each net that has limits of its own the strictest, whichever of its points they name. */
  public static Map<Integer, NetLimit> strictest(
      List<NetLimit> limits, ToIntFunction<Point> netOf) {
    Map<Integer, NetLimit> strictest = new LinkedHashMap<>();
    for (NetLimit netLimit : limits) {
      strictest.merge(
          netOf.applyAsInt(netLimit.point()),
          netLimit,
          (first, other) ->
              new NetLimit(
                  first.point(),
                  most(first.insulationMinOhms(), other.insulationMinOhms()),
                  most(first.insulationVolts(), other.insulationVolts()),
                  first.place()));
    }
    return strictest;
  }

  private static OptionalDouble most(OptionalDouble one, OptionalDouble other) {
    if (one.isEmpty() || other.isEmpty()) {
      return one.isEmpty() ? other : one;
    }
    return OptionalDouble.of(Math.max(one.getAsDouble(), other.getAsDouble()));
  }

  /** The lesser of two, or the one that is there. */
  public static OptionalDouble least(OptionalDouble one, OptionalDouble other) {
    if (one.isEmpty() || other.isEmpty()) {
      return one.isEmpty() ? other : one;
    }
    return OptionalDouble.of(Math.min(one.getAsDouble(), other.getAsDouble()));
  }
}
