package dev.ringout.jobs;

import dev.ringout.cells.Understood;
import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.JoinLimits;
import dev.ringout.harness.Harness;
import dev.ringout.harness.Point;
import dev.ringout.harness.SwitchState;
import dev.ringout.intake.PointSearch;
import dev.ringout.intake.PointSearch.Found;
import dev.ringout.jobs.WrongRequest.Part;
import dev.ringout.trace.Trace;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** Everything on one net, and what a meter should read between two points. */
public final class TraceJob {
  private TraceJob() {}

  /**
   * What is asked.
   *
   * @param words one point or two, each a name, a wire's number or a signal; blanks may be in them
   * @param state positions of the switches, or nothing
   */
  public record Request(Path list, List<String> words, String state, Optional<Path> ownTables) {
    /** What is given can't be changed afterwards. */
    public Request {
      words = List.copyOf(words);
    }
  }

  /**
   * A trace.
   *
   * @param as what each word was understood as
   */
  public record Result(Trace trace, List<String> as) {}

  /**
   * Follows a net.
   *
   * @throws WrongRequest where a point or a position is none of the list's
   */
  public static Answer<Result> run(Request request, Inputs inputs) throws WrongRequest {
    Optional<Harness> harness = inputs.soundHarness(request.list());
    if (harness.isEmpty()) {
      return Answer.refused(inputs);
    }
    return WrongRequest.answer(() -> traced(request, harness.get()), inputs);
  }

  private static Result traced(Request request, Harness harness) throws WrongRequest {
    PointSearch search = new PointSearch(harness);
    List<Found> asked = points(request.words(), search);
    Circuit circuit = Circuit.of(harness);
    JoinLimits limits = JoinLimits.of(circuit, OwnTables.over(request.ownTables()));
    Optional<Point> other = asked.size() > 1 ? Optional.of(asked.get(1).point()) : Optional.empty();
    Trace trace =
        Trace.of(circuit, limits, asked.get(0).point(), other, state(request.state(), search));
    return new Result(trace, asked.stream().map(Found::as).toList());
  }

  /** All words as one point, or split into two; blanks within a point need no quotes. */
  private static List<Found> points(List<String> words, PointSearch search) throws WrongRequest {
    PointSearch.Result whole = search.find(String.join(" ", words));
    if (whole.found().isPresent()) {
      return List.of(whole.found().get());
    }
    PointSearch.Result wrong = whole;
    for (int split = 1; split < words.size(); split++) {
      PointSearch.Result first = search.find(String.join(" ", words.subList(0, split)));
      PointSearch.Result second = search.find(String.join(" ", words.subList(split, words.size())));
      if (first.found().isPresent() && second.found().isPresent()) {
        return differing(first.found().get(), second.found().get());
      }
      wrong = first.notFound().isPresent() ? first : second;
    }
    throw Points.wrong(wrong);
  }

  private static List<Found> differing(Found found, Found two) throws WrongRequest {
    if (found.point().equals(two.point())) {
      throw new WrongRequest(Part.POINT, found.as() + " and " + two.as() + " are the same point");
    }
    return List.of(found, two);
  }

  private static SwitchState state(String words, PointSearch search) throws WrongRequest {
    Understood<SwitchState> understood = search.state(words);
    if (understood.value().isEmpty()) {
      throw new WrongRequest(
          Part.STATE,
          understood.complaint()
              + (understood.maybe().isEmpty() ? "" : "; maybe " + understood.maybe()));
    }
    return understood.value().get();
  }
}
