package dev.ringout.words;

import dev.ringout.harness.PinDetail;
import dev.ringout.harness.Wire;
import dev.ringout.harness.Wiring;
import dev.ringout.units.Numbers;
import dev.ringout.units.Text;
import dev.ringout.work.FoundList;
import dev.ringout.work.OpenQuestion;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** A list built from readings, in words: for a page and as the notes of its wires. */
public final class FoundListWords {
  private FoundListWords() {}

  /** What the readings leave open, or say twice. */
  public static List<String> unsure(FoundList list) {
    return list.unsure().stream().map(one -> one.match(new Questions())).distinct().toList();
  }

  /** What to read next. */
  public static String sentence(FoundList.Next next) {
    return Text.of(
        "%s to REST: not held apart from %s",
        next.point(), Numbers.count(next.openNets(), "other net"));
  }

  /** The list as a unit's wiring: each join is a wire with a note of what shows it. */
  public static Wiring wiring(FoundList list) {
    List<Wire> wires = new ArrayList<>();
    for (FoundList.Net net : list.nets()) {
      for (FoundList.Join join : net.joins()) {
        wires.add(wire("F" + (wires.size() + 1), join, note(net) + " (" + join.place() + ")"));
      }
    }
    List<PinDetail> pins = list.alone().stream().map(FoundListWords::pin).toList();
    return new Wiring(List.copyOf(wires), List.of(), pins, List.of());
  }

  private static String note(FoundList.Net net) {
    if (net.points().size() > 2) {
      return Text.of(
          "inferred: read joined; no meter tells which wires make this net of %d points",
          net.points().size());
    }
    return net.heldApart()
        ? "read joined, and apart from everything else"
        : "inferred: read joined";
  }

  private static Wire wire(String name, FoundList.Join join, String note) {
    return Wire.of(name, join.from(), join.to(), join.place()).noted(note);
  }

  private static PinDetail pin(FoundList.Alone alone) {
    return new PinDetail(
        alone.point(),
        "",
        "",
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        alone.heldApart() ? "joins nothing that was read" : "not read against everything",
        alone.place());
  }

  private static final class Questions implements OpenQuestion.Cases<String> {
    @Override
    public String otherPositionsLeftOut(OpenQuestion.OtherPositionsLeftOut question) {
      return Text.of(
          "%s in another position of a switch %s left out: a list of joins has no switches",
          Numbers.count(question.readings(), "reading"), question.readings() == 1 ? "is" : "are");
    }

    @Override
    public String neitherJoinedNorApart(OpenQuestion.NeitherJoinedNorApart question) {
      return Text.of(
          "%s to %s reads %s: a part, a leak or a poor joint is between them",
          question.from(), question.to(), question.measured().text());
    }

    @Override
    public String contradicted(OpenQuestion.Contradicted question) {
      return Text.of(
          "%s to %s reads %s, but other readings join the two",
          question.from(), question.to(), question.measured().text());
    }
  }
}
