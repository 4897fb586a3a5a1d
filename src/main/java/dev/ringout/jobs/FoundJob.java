package dev.ringout.jobs;

import dev.ringout.circuit.Circuit;
import dev.ringout.harness.Harness;
import dev.ringout.harness.Point;
import dev.ringout.harness.Wire;
import dev.ringout.intake.PointSearch;
import dev.ringout.intake.WireSearch;
import dev.ringout.jobs.WrongRequest.Part;
import dev.ringout.work.FoundWire;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Where a wire belongs that was found, and who belongs on the point where it was. */
public final class FoundJob {
  private static final Pattern ON = Pattern.compile("(?i)(.+?)\\s+(?:on|at|in)\\s+(.+)");

  private FoundJob() {}

  /**
   * What is asked.
   *
   * @param words what was found, as somebody says it: {@code W043 on J2-18}, {@code w43 j2 18}, or
   *     the wire alone
   */
  public record Request(Path list, String words) {}

  /**
   * Says where it belongs.
   *
   * @throws WrongRequest where the list has no such wire or point
   */
  public static Answer<FoundWire> run(Request request, Inputs inputs) throws WrongRequest {
    Optional<Harness> list = inputs.soundHarness(request.list());
    if (list.isEmpty()) {
      return Answer.refused(inputs);
    }
    return WrongRequest.answer(() -> found(request.words().strip(), list.get()), inputs);
  }

  private static FoundWire found(String words, Harness harness) throws WrongRequest {
    PointSearch points = new PointSearch(harness);
    WireSearch wires = new WireSearch(harness);
    NamesOfRequest names = new NamesOfRequest(harness);
    Matcher on = ON.matcher(words);
    if (on.matches()) {
      return on(harness, on.group(1), place(points, on.group(2)));
    }
    if (!wires.find(words).isEmpty()) {
      return FoundWire.somewhere(names.wire(Part.WIRE, words));
    }
    List<String> each = List.of(words.split("\\s+", -1));
    for (int split = 1; split < each.size(); split++) {
      String wire = String.join(" ", each.subList(0, split));
      Optional<PointSearch.Found> point =
          points.findPoint(String.join(" ", each.subList(split, each.size()))).found();
      if (point.isPresent() && !wires.find(wire).isEmpty()) {
        return on(harness, wire, point.get().point());
      }
    }
    Optional<PointSearch.Found> point = points.findPoint(words).found();
    if (point.isPresent()) {
      throw new WrongRequest(
          Part.WIRE,
          "which wire was found on " + point.get().point() + "? Such as \"W12 on J3-14\"");
    }
    List<String> pins = pinsAlone(harness, each);
    if (!pins.isEmpty()) {
      throw new WrongRequest(
          Part.POINT, "of which item is that pin? Maybe \"" + String.join("\", \"", pins) + "\"");
    }
    throw names.noWire(Part.WIRE, words);
  }

  /** A pin without its item may be one of either item to which the wire goes. */
  private static List<String> pinsAlone(Harness harness, List<String> words) {
    PointSearch points = new PointSearch(harness);
    String last = words.get(words.size() - 1);
    List<Wire> wires =
        new WireSearch(harness).find(String.join(" ", words.subList(0, words.size() - 1)));
    return wires.stream()
        .limit(1)
        .flatMap(
            wire ->
                Stream.of(wire.from(), wire.to())
                    .flatMap(end -> points.findPoint(end.ref() + "-" + last).found().stream())
                    .map(found -> wire.name() + " on " + found.point())
                    .distinct())
        .toList();
  }

  /** A wire is found on a point; another wire, or a signal, is no place. */
  private static Point place(PointSearch points, String words) throws WrongRequest {
    PointSearch.Result place = points.findPoint(words);
    if (place.found().isEmpty()) {
      throw Points.wrong(place);
    }
    return place.found().get().point();
  }

  /** A colour alone is one of the wires of the item where it was found. */
  private static FoundWire on(Harness harness, String words, Point point) throws WrongRequest {
    WireSearch wires = new WireSearch(harness);
    String ofItem = words + " " + point.ref();
    boolean isColour = wires.find(words).isEmpty() && !wires.find(ofItem).isEmpty();
    String meant = isColour ? ofItem : words;
    Wire wire = new NamesOfRequest(harness).wire(Part.WIRE, meant);
    return FoundWire.of(Circuit.of(harness), wire, point);
  }
}
