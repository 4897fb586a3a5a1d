package dev.ringout.intake;

import dev.ringout.cells.Blanks;
import dev.ringout.cells.LikelyMeant;
import dev.ringout.cells.Understood;
import dev.ringout.harness.Harness;
import dev.ringout.harness.Link;
import dev.ringout.harness.Part;
import dev.ringout.harness.Point;
import dev.ringout.harness.Switch;
import dev.ringout.harness.SwitchState;
import dev.ringout.harness.Wire;
import dev.ringout.readings.Side;
import dev.ringout.units.Text;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;

/** Finds the points and states that a test sheet names among those of the harness. */
final class HarnessPoints {
  private static final String SEPARATORS = "-:./";

  private final Map<String, Map<String, Point>> byRef = new HashMap<>();
  private final Map<String, Switch> switches = new HashMap<>();
  private final Map<String, Wire> wires = new HashMap<>();
  private final Optional<WireSearch> wiresSaid;
  private final Map<String, Link> links = new HashMap<>();
  private final Map<String, Part> parts = new HashMap<>();
  private final Map<String, String> items = new HashMap<>();

  /** What sides of readings were understood to be, by their texts; most are asked for often. */
  private final Map<String, Understood<Side.Points>> sides = new HashMap<>();

  private final boolean anyPoint;

  HarnessPoints(Harness harness) {
    this.anyPoint = false;
    this.wiresSaid = Optional.of(new WireSearch(harness));
    for (Point point : harness.pointsAsListed()) {
      byRef.computeIfAbsent(upper(point.ref()), ref -> new HashMap<>()).put(point.pin(), point);
      items.putIfAbsent(upper(point.ref()), point.ref());
    }
    harness.items().forEach(item -> items.putIfAbsent(upper(item.ref()), item.ref()));
    harness.switches().forEach(one -> switches.put(upper(one.ref()), one));
    harness.wires().forEach(wire -> wires.put(upper(wire.name()), wire));
    for (Link link : harness.links()) {
      links.put(upper(link.name()), link);
      Link turned = new Link(link.to(), link.from(), link.note(), link.place());
      links.putIfAbsent(upper(turned.name()), link);
    }
    Map<String, Integer> ofRef = new HashMap<>();
    harness.parts().forEach(part -> ofRef.merge(part.ref(), 1, Integer::sum));
    for (Part part : harness.parts()) {
      parts.put(upper(part.label()), part);
      if (ofRef.getOrDefault(part.ref(), 0) == 1) {
        parts.put(upper(part.ref()), part);
      }
    }
  }

  /** Takes any point and state: for looking through a test sheet whose harness can't be used. */
  private HarnessPoints() {
    this.anyPoint = true;
    this.wiresSaid = Optional.empty();
  }

  static HarnessPoints any() {
    return new HarnessPoints();
  }

  private static String upper(String text) {
    return text.toUpperCase(Locale.ROOT);
  }

  private Optional<Point> find(String ref, String pin) {
    if (anyPoint) {
      return Optional.of(new Point(ref, Point.pinName(pin)));
    }
    return Optional.ofNullable(byRef.getOrDefault(upper(ref), Map.of()).get(Point.pinName(pin)));
  }

  /** One side of a reading: a point, or points joined by {@code +}. */
  Understood<Side.Points> side(String refText, String pinText) {
    String key = pinText.isEmpty() ? refText : refText + '\n' + pinText;
    Understood<Side.Points> known = sides.get(key);
    if (known == null) {
      known = understand(refText, pinText);
      sides.put(key, known);
    }
    return known;
  }

  private Understood<Side.Points> understand(String refText, String pinText) {
    List<Point> points = new ArrayList<>();
    Understood<Point> whole = point(refText, pinText);
    if (whole.value().isPresent()) {
      return Understood.as(new Side.Points(List.of(whole.value().get())));
    }
    boolean pinsAreGrouped = pinText.indexOf('+') > 0;
    String grouped = pinsAreGrouped ? pinText : refText;
    if (grouped.indexOf('+') <= 0) {
      return Understood.not(whole.complaint(), whole.maybe());
    }
    for (String piece : grouped.split("\\+", -1)) {
      String text = Blanks.strip(piece);
      Understood<Point> point = pinsAreGrouped ? point(refText, text) : point(text, "");
      if (point.value().isEmpty()) {
        return Understood.not(point.complaint(), point.maybe());
      }
      if (!points.contains(point.value().get())) {
        points.add(point.value().get());
      }
    }
    return Understood.as(new Side.Points(List.copyOf(points)));
  }

  private Understood<Point> point(String refText, String pinText) {
    if (refText.isEmpty()) {
      return Understood.not("a reading needs a point on each side");
    }
    if (!pinText.isEmpty()) {
      return find(refText, pinText).map(Understood::as).orElseGet(() -> unknown(refText, pinText));
    }
    String lastRef = "";
    String lastPin = "";
    for (int i = refText.length() - 2; i > 0; i--) {
      if (SEPARATORS.indexOf(refText.charAt(i)) < 0) {
        continue;
      }
      String ref = Blanks.strip(refText.substring(0, i));
      String pin = Blanks.strip(refText.substring(i + 1));
      Optional<Point> found = find(ref, pin);
      if (found.isPresent()) {
        return Understood.as(found.get());
      }
      if (lastRef.isEmpty() || byRef.containsKey(upper(ref))) {
        lastRef = ref;
        lastPin = pin;
      }
    }
    return lastRef.isEmpty()
        ? Understood.not("\"" + refText + "\" names no pin; write a point such as J1-A")
        : unknown(lastRef, lastPin);
  }

  private Understood<Point> unknown(String ref, String pin) {
    Map<String, Point> pins = byRef.getOrDefault(upper(ref), Map.of());
    if (pins.isEmpty()) {
      return Understood.not(
          "the harness has no item " + ref, LikelyMeant.nearest(upper(ref), byRef.keySet()));
    }
    String near = LikelyMeant.nearest(pin, new TreeSet<>(pins.keySet()));
    return Understood.not(
        "the harness has no point "
            + ref
            + "-"
            + pin
            + "; a spare cavity is listed on the sheet Pins",
        near.isEmpty() ? "" : String.valueOf(pins.get(near)));
  }

  /** An item, as the harness spells it. */
  Understood<String> item(String text) {
    String listed = anyPoint ? text : items.get(upper(text));
    if (listed != null) {
      return Understood.as(listed);
    }
    Optional<Side.Points> point = side(text, "").value();
    return Understood.not(
        "the harness has no item " + text,
        point.isPresent()
            ? point.get().points().get(0).ref()
            : LikelyMeant.nearest(upper(text), new TreeSet<>(items.values())));
  }

  /** A wire by its name, and the items at its ends. */
  Understood<TouchedWire> wire(String text) {
    if (anyPoint) {
      return Understood.as(new TouchedWire(text, List.of()));
    }
    List<Wire> meant = wiresSaid.stream().flatMap(search -> search.find(text).stream()).toList();
    if (meant.stream().map(Wire::name).distinct().count() == 1) {
      Wire wire = meant.get(meant.size() - 1);
      return Understood.as(
          new TouchedWire(wire.name(), List.of(wire.from().ref(), wire.to().ref())));
    }
    if (!meant.isEmpty()) {
      return Understood.not(WireSearch.several(text, meant), meant.get(0).name());
    }
    return Understood.not(
        "the harness has no wire " + text,
        LikelyMeant.nearest(text, new TreeSet<>(wires.values().stream().map(Wire::name).toList())));
  }

  /**
   * A wire that somebody has touched.
   *
   * @param name as the harness spells it
   * @param ends the items at its ends; none where the harness is not known
   */
  record TouchedWire(String name, List<String> ends) {}

  private static List<String> assignments(String text) {
    return Arrays.stream(text.split("[;,]", -1))
        .map(Blanks::strip)
        .filter(assignment -> !assignment.isEmpty())
        .toList();
  }

  /** Positions of switches that nothing is known of. */
  private static SwitchState asWritten(String text) {
    SortedMap<String, String> positions = new TreeMap<>();
    for (String assignment : assignments(text)) {
      int equals = assignment.indexOf('=');
      if (equals > 0) {
        positions.put(
            Blanks.strip(assignment.substring(0, equals)),
            Blanks.strip(assignment.substring(equals + 1)));
      }
    }
    return new SwitchState(positions);
  }

  /**
   * The state of the switches: {@code S1=AHEAD; S2=OPEN}, and of wires, links and parts with one
   * end off: {@code W12=LIFTED; TB1-4/5=LIFTED; diode CR1=LIFTED}; blank is the normal one.
   */
  Understood<SwitchState> state(String text) {
    SwitchState state = SwitchState.normal();
    if (anyPoint) {
      return Understood.as(asWritten(text));
    }
    SortedSet<String> seen = new TreeSet<>();
    for (String assignment : assignments(text)) {
      int equals = assignment.indexOf('=');
      if (equals <= 0) {
        return Understood.not(
            "\"" + assignment + "\" is not a state; write one such as S1=AHEAD; S2=OPEN");
      }
      String ref = Blanks.strip(assignment.substring(0, equals));
      String position = Blanks.strip(assignment.substring(equals + 1));
      Switch one = switches.get(upper(ref));
      Optional<SwitchState> lifted = lifted(state, ref, position);
      if (one == null && lifted.isPresent()) {
        state = lifted.get();
        continue;
      }
      if (one == null) {
        return Understood.not(
            "the harness has no switch " + ref, LikelyMeant.nearest(upper(ref), switches.keySet()));
      }
      Optional<String> listed =
          one.states().stream().filter(name -> name.equalsIgnoreCase(position)).findFirst();
      if (listed.isEmpty()) {
        return noPosition(one, position);
      }
      if (!seen.add(one.ref())) {
        return Understood.not(one.ref() + " can't be in two positions at once");
      }
      state = state.with(one, listed.get());
    }
    return Understood.as(state);
  }

  /** A state with an end of a wire, link or part off as well, where that is what is said. */
  private Optional<SwitchState> lifted(SwitchState state, String ref, String position) {
    if (!position.equalsIgnoreCase(SwitchState.LIFTED)) {
      return Optional.empty();
    }
    return Optional.ofNullable(wires.get(upper(ref)))
        .map(state::withLifted)
        .or(() -> Optional.ofNullable(links.get(upper(ref))).map(state::withLifted))
        .or(() -> Optional.ofNullable(parts.get(upper(ref))).map(state::withLifted));
  }

  private static Understood<SwitchState> noPosition(Switch one, String position) {
    return Understood.not(
        Text.of(
            "%s has no position %s; it has %s",
            one.ref(), position, String.join(", ", one.states())),
        LikelyMeant.nearest(position, one.states()));
  }
}
