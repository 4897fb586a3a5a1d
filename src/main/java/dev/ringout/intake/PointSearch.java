package dev.ringout.intake;

import dev.ringout.cells.Blanks;
import dev.ringout.cells.LikelyMeant;
import dev.ringout.cells.Names;
import dev.ringout.cells.Understood;
import dev.ringout.harness.Harness;
import dev.ringout.harness.NaturalOrder;
import dev.ringout.harness.Point;
import dev.ringout.harness.SwitchState;
import dev.ringout.harness.Wire;
import dev.ringout.readings.Side;
import dev.ringout.units.Text;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Finds the point that a person at a bench means: {@code J3-7}, {@code j3 7}, {@code J3 pin 7}, a
 * wire by its number ({@code wire 12} is W012), or a signal by its name.
 */
public final class PointSearch {
  private static final Pattern BETWEEN =
      Pattern.compile(
          "\\s*(?:\\b(?:pin|cavity|terminal|contact|no\\.?)\\b|#|\\s)\\s*",
          Pattern.CASE_INSENSITIVE);

  private static final int MOST_PINS = 12;

  private final Harness harness;
  private final HarnessPoints points;
  private final Set<Point> all;

  /** A search among the points of a harness. */
  public PointSearch(Harness harness) {
    this.harness = harness;
    this.points = new HarnessPoints(harness);
    this.all = new LinkedHashSet<>(harness.points());
  }

  /** What was found, or why nothing was. */
  public sealed interface Result {
    /** What is made of it, whichever it is. */
    <T> T match(Function<Found, T> found, Function<NotFound, T> notFound);

    /** The point, where one was found. */
    default Optional<Found> found() {
      return match(Optional::of, notFound -> Optional.empty());
    }

    /** Why there is none, where none was found. */
    default Optional<NotFound> notFound() {
      return match(found -> Optional.empty(), Optional::of);
    }
  }

  /**
   * A point.
   *
   * @param as how it was understood: as a point, a wire or a signal
   */
  public record Found(Point point, String as) implements Result {
    @Override
    public <T> T match(Function<Found, T> found, Function<NotFound, T> notFound) {
      return found.apply(this);
    }
  }

  /**
   * Nothing, or too much.
   *
   * @param maybe what was probably meant, or empty
   */
  public record NotFound(String text, String maybe) implements Result {
    @Override
    public <T> T match(Function<Found, T> found, Function<NotFound, T> notFound) {
      return notFound.apply(this);
    }
  }

  /** Finds what a text means. */
  public Result find(String text) {
    String meant = Blanks.strip(text);
    Optional<Point> point = point(meant);
    if (point.isPresent()) {
      return new Found(point.get(), "point " + point.get() + twin(point.get()));
    }
    List<Wire> wires = new WireSearch(harness).find(meant);
    if (wires.size() == 1) {
      return new Found(wires.get(0).from(), "wire " + wires.get(0).name());
    }
    if (wires.size() > 1) {
      return new NotFound(WireSearch.several(meant, wires), wires.get(0).name());
    }
    for (Wire wire : harness.wires()) {
      if (!wire.signal().isEmpty() && Names.key(wire.signal()).equals(Names.key(meant))) {
        return new Found(wire.from(), "signal " + wire.signal());
      }
    }
    return notFound(meant, "is not a point, wire or signal of this harness");
  }

  /**
   * Finds the point that a text names by itself: not by a wire that ends there, nor by a signal.
   */
  public Result findPoint(String text) {
    String meant = Blanks.strip(text);
    Optional<Point> point = point(meant);
    return point.isPresent()
        ? new Found(point.get(), "point " + point.get() + twin(point.get()))
        : notFound(meant, "is not a point of this harness");
  }

  /** The point that differs in the case of its pin alone: easily taken for this one. */
  private String twin(Point point) {
    return all.stream()
        .filter(other -> !other.equals(point))
        .filter(other -> other.toString().equalsIgnoreCase(point.toString()))
        .map(other -> " (not " + other + ")")
        .findFirst()
        .orElse("");
  }

  /** The state of the switches as written on a test sheet. */
  public Understood<SwitchState> state(String text) {
    return points.state(text);
  }

  private Optional<Point> point(String text) {
    for (String written : spellings(text)) {
      Optional<Side.Points> side = points.side(written, "").value();
      if (side.isPresent() && side.get().points().size() == 1) {
        return Optional.of(side.get().points().get(0));
      }
    }
    // The pin in the other case, where only one of the two exists.
    List<Point> alike = new ArrayList<>();
    for (String written : spellings(text)) {
      for (Point point : all) {
        if (point.toString().equalsIgnoreCase(written) && !alike.contains(point)) {
          alike.add(point);
        }
      }
    }
    return alike.size() == 1 ? Optional.of(alike.get(0)) : Optional.empty();
  }

  private static List<String> spellings(String text) {
    String dashed = BETWEEN.matcher(text).replaceAll("-").replaceAll("-+", "-");
    Matcher zeros = Pattern.compile("(.+-)0+(\\d+)").matcher(dashed);
    return zeros.matches()
        ? List.of(text, dashed, zeros.group(1) + zeros.group(2))
        : List.of(text, dashed);
  }

  private NotFound notFound(String text, String why) {
    String dashed = spellings(text).get(1);
    List<String> candidates = new ArrayList<>(all.stream().map(Point::toString).toList());
    harness.wires().forEach(wire -> candidates.add(wire.name()));
    harness.wires().stream()
        .map(Wire::signal)
        .filter(signal -> !signal.isEmpty())
        .distinct()
        .forEach(candidates::add);
    List<String> pins =
        all.stream()
            .filter(point -> point.ref().equalsIgnoreCase(text))
            .map(Point::toString)
            .toList();
    if (!pins.isEmpty()) {
      return new NotFound(
          "\"" + text + "\" is an item; which of its " + pins.size() + " points?", pins.get(0));
    }
    return new NotFound(
        "\"" + text + "\" " + why + pinsOfItem(dashed), LikelyMeant.nearest(dashed, candidates));
  }

  /** Where the item is known, its pins say more than a name that is near. */
  private String pinsOfItem(String dashed) {
    String ref = dashed.replaceFirst("[-:./].*$", "");
    List<String> pins =
        all.stream()
            .filter(point -> point.ref().equalsIgnoreCase(ref))
            .map(Point::pin)
            .sorted(NaturalOrder.INSTANCE)
            .toList();
    return pins.isEmpty()
        ? ""
        : "; " + ref.toUpperCase(Locale.ROOT) + " has the pins " + Text.first(pins, MOST_PINS);
  }
}
