package dev.ringout.jobs;

import dev.ringout.circuit.Circuit;
import dev.ringout.harness.Harness;
import dev.ringout.harness.Waiver;
import dev.ringout.review.Review;
import dev.ringout.standards.CopperWire;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** Is the paper right? */
public final class ReviewJob {
  private ReviewJob() {}

  /**
   * What is asked.
   *
   * @param waivers what is accepted
   * @param today the day by which waivers expire
   */
  public record Request(
      Path list, Optional<Path> waivers, LocalDate today, Optional<Path> ownTables) {}

  /** A list with what is to be remarked of it. */
  public record Result(Harness harness, Review review) {}

  /**
   * Looks through the paper.
   *
   * @throws WrongRequest where the tables can't be used
   */
  public static Answer<Result> run(Request request, Inputs inputs) throws WrongRequest {
    Optional<Harness> harness = inputs.harness(request.list());
    List<Waiver> waivers = request.waivers().map(inputs::waivers).orElse(List.of());
    if (harness.isEmpty() || inputs.problems().hasErrors()) {
      return Answer.refused(inputs);
    }
    return WrongRequest.answer(() -> reviewed(request, harness.get(), waivers), inputs);
  }

  private static Result reviewed(Request request, Harness harness, List<Waiver> waivers)
      throws WrongRequest {
    Review review =
        Review.of(
            Circuit.of(harness),
            OwnTables.over(request.ownTables()),
            CopperWire.published(),
            waivers,
            Optional.of(request.today()));
    return new Result(harness, review);
  }
}
