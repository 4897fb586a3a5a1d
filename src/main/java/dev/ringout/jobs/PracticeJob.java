package dev.ringout.jobs;

import dev.ringout.harness.Harness;
import dev.ringout.harness.Point;
import dev.ringout.harness.SwitchState;
import dev.ringout.meter.MeterAddress;
import dev.ringout.meter.Ticks;
import dev.ringout.meter.link.Channels;
import dev.ringout.meter.link.SystemTicks;
import dev.ringout.meter.practice.PracticeChannel;
import dev.ringout.meter.practice.PracticeHands;
import dev.ringout.meter.practice.PracticeInstrument;
import dev.ringout.meter.practice.PracticeProbes;
import dev.ringout.meter.practice.PracticeServer;
import dev.ringout.meter.practice.PracticeUnit;
import dev.ringout.readings.Side;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** Serves a practice meter on this machine's own network. */
public final class PracticeJob {
  /** Joints of a few cables, where no list is given. */
  private static final List<Double> USUAL_PAIRS = List.of(0.023, 0.31, 4.7, 120.0, 2200.0);

  private PracticeJob() {}

  /**
   * What is asked.
   *
   * @param port of plain commands; HiSLIP is on the next; 0 for any that are free
   * @param list the unit under the probes; some joints where there is none
   * @param slips so many slips of the hand are planted in it
   * @param seed chooses them
   */
  public record Request(
      int port, Optional<Path> list, int slips, long seed, Optional<Path> ownTables) {}

  /**
   * A meter that is served until it is closed.
   *
   * @param slips what was done to the unit
   */
  public record Running(PracticeServer server, PracticeHands hands, List<String> slips)
      implements AutoCloseable {
    /** The addresses at which it answers. */
    public List<String> addresses() {
      return List.of(
          new MeterAddress.Socket("127.0.0.1", server.rawPort()).text(),
          new MeterAddress.Hislip("127.0.0.1", "hislip0", server.hislipPort()).text());
    }

    @Override
    public void close() throws IOException {
      hands.close();
      server.close();
    }
  }

  /**
   * Serves it.
   *
   * @throws WrongRequest where the tables can't be used
   * @throws IOException where the port can't be had
   */
  public static Answer<Running> run(Request request, Inputs inputs)
      throws WrongRequest, IOException {
    if (request.list().isEmpty()) {
      return Answer.of(serve(request, Optional.empty()), inputs);
    }
    Optional<Harness> harness = inputs.soundHarness(request.list().get());
    if (harness.isEmpty()) {
      return Answer.refused(inputs);
    }
    PracticeUnit unit =
        PracticeUnit.of(
            harness.get(),
            OwnTables.over(request.ownTables(), inputs),
            request.seed(),
            request.slips());
    return Answer.of(serve(request, Optional.of(unit)), inputs);
  }

  private static Running serve(Request request, Optional<PracticeUnit> unit) throws IOException {
    PracticeProbes probes = new PracticeProbes(new SystemTicks(), request.seed());
    PracticeInstrument instrument =
        new PracticeInstrument(probes, (from, to) -> unit.flatMap(one -> between(one, from, to)));
    int next = request.port() == 0 ? 0 : request.port() + 1;
    PracticeServer server = new PracticeServer(instrument, request.port(), next);
    List<Double> pairs = unit.map(PracticeJob::wires).orElse(USUAL_PAIRS);
    return new Running(
        server,
        new PracticeHands(probes, pairs.isEmpty() ? USUAL_PAIRS : pairs),
        unit.map(PracticeUnit::slips).orElse(List.of()));
  }

  private static List<Double> wires(PracticeUnit unit) {
    return unit.wires().stream()
        .limit(50)
        .map(wire -> between(unit, wire.from(), wire.to()))
        .toList();
  }

  private static Optional<Double> between(PracticeUnit unit, String from, String to) {
    Optional<Point> one = point(unit, from);
    Optional<Point> other = point(unit, to);
    return one.isPresent() && other.isPresent()
        ? Optional.of(between(unit, one.get(), other.get()))
        : Optional.empty();
  }

  private static double between(PracticeUnit unit, Point from, Point to) {
    return unit.ohms(
        new Side.Points(List.of(from)), new Side.Points(List.of(to)), SwitchState.normal());
  }

  private static Optional<Point> point(PracticeUnit unit, String name) {
    return unit.points().stream()
        .filter(point -> point.toString().equalsIgnoreCase(name))
        .findFirst();
  }

  /** Links to real meters, and to a practice meter under the address {@code practice}. */
  public static Channels channels(Ticks ticks) {
    Channels real = Channels.real();
    PracticeProbes probes = new PracticeProbes(ticks, 1);
    return (address, profile, transcript) -> {
      if (!address.equals(new MeterAddress.Practice())) {
        return real.open(address, profile, transcript);
      }
      PracticeHands hands = new PracticeHands(probes, USUAL_PAIRS);
      PracticeInstrument instrument =
          new PracticeInstrument(probes, (from, to) -> Optional.empty());
      return new PracticeChannel(instrument, transcript, hands::close);
    };
  }
}
