package dev.ringout.revision;

import dev.ringout.harness.Link;
import dev.ringout.harness.Point;
import dev.ringout.harness.Wire;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/** A unit while it is reworked: where every end of every wire is, step after step. */
final class Bench {
  private final List<Ends> wires = new ArrayList<>();
  private final List<Link> links;

  /** Where the ends of a wire are; an end that hangs free is absent. */
  static final class Ends {
    private Optional<Point> from = Optional.empty();
    private Optional<Point> to = Optional.empty();

    /** Where the end was that now hangs free, by the end. */
    private Optional<Point> fromWas = Optional.empty();

    Optional<Point> from() {
      return from;
    }

    Optional<Point> to() {
      return to;
    }
  }

  Bench(Difference difference, ReworkOrder rework) {
    for (Wire wire : difference.before().wires()) {
      Ends ends = new Ends();
      ends.from = Optional.of(wire.from());
      ends.to = Optional.of(wire.to());
      wires.add(ends);
    }
    rework.cut().forEach(wire -> wires.add(new Ends()));
    links = new ArrayList<>(difference.before().links());
  }

  List<Ends> wires() {
    return wires;
  }

  List<Link> links() {
    return links;
  }

  /** Forgets what lies between other points, but for the places of the wires. */
  void keepOnly(Predicate<Point> points) {
    wires.stream()
        .filter(ends -> ends.from.isPresent() && !points.test(ends.from.get()))
        .forEach(
            ends -> {
              ends.from = Optional.empty();
              ends.to = Optional.empty();
            });
    links.removeIf(link -> !points.test(link.from()));
  }

  /** Does one step. */
  void step(ReworkStep step) {
    step.match(new Doing()).run();
  }

  /** What each kind of step does to the unit. */
  private final class Doing implements ReworkStep.Cases<Runnable> {
    @Override
    public Runnable disconnect(ReworkStep.Disconnect step) {
      return () -> takeOff(wires.get(step.which()), step.at());
    }

    @Override
    public Runnable connect(ReworkStep.Connect step) {
      return () -> putOn(wires.get(step.which()), step);
    }

    @Override
    public Runnable pull(ReworkStep.Pull step) {
      return Doing::bothEndsAreOffAlready;
    }

    @Override
    public Runnable stow(ReworkStep.Stow step) {
      return Doing::bothEndsAreOffAlready;
    }

    @Override
    public Runnable takeJumperOff(ReworkStep.TakeJumperOff step) {
      return () -> links.remove(step.jumper());
    }

    @Override
    public Runnable fitJumper(ReworkStep.FitJumper step) {
      return () -> links.add(step.jumper());
    }

    private static void bothEndsAreOffAlready() {}
  }

  private static void takeOff(Ends ends, Point at) {
    if (ends.from.equals(Optional.of(at))) {
      ends.from = Optional.empty();
      ends.fromWas = Optional.of(at);
    } else {
      ends.to = Optional.empty();
    }
  }

  private static void putOn(Ends ends, ReworkStep.Connect step) {
    boolean isFrom =
        ends.from.isEmpty() && (step.from().isEmpty() || step.from().equals(ends.fromWas));
    if (isFrom) {
      ends.from = Optional.of(step.at());
    } else {
      ends.to = Optional.of(step.at());
    }
  }
}
