package dev.ringout.cli;

import dev.ringout.jobs.Answer;
import dev.ringout.jobs.ReviewJob;
import dev.ringout.jobs.WrongRequest;
import dev.ringout.json.ReviewJson;
import dev.ringout.review.Review;
import dev.ringout.source.Severity;
import dev.ringout.text.Look;
import dev.ringout.text.ReviewText;
import dev.ringout.words.ProblemText;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code ringout review}: is the paper right? */
@Command(
    name = "review",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    description =
        "Checks the paper before a wire is cut: pins that the insert does not have, contacts, lugs"
            + " and splices that do not suit their wires, currents, drops, names. Every remark names"
            + " its source.")
final class ReviewCommand implements Callable<Integer> {
  private final Output output;

  @Mixin private HarnessArgument harnessFile = new HarnessArgument();

  @Mixin private Destination destination = new Destination();

  @Mixin private TablesOption tables = new TablesOption();

  @Option(
      names = "--waivers",
      paramLabel = "FILE",
      description = "What is accepted: Rule, Subject, Who, Why, Until.")
  private Optional<Path> waivers = Optional.empty();

  @Option(
      names = "--today",
      paramLabel = "DAY",
      description = "The day by which waivers expire, such as 2027-03-31; else today.")
  private Optional<LocalDate> today = Optional.empty();

  ReviewCommand(Output output) {
    this.output = output;
  }

  @Override
  public Integer call() throws WrongRequest {
    LocalDate day = today.orElseGet(() -> LocalDate.now(ZoneId.systemDefault()));
    ReviewJob.Request request =
        new ReviewJob.Request(harnessFile.file(), waivers, day, tables.folder());
    return harnessFile.door().review(request).match(this::show, this::refuse);
  }

  private int show(Answer.Given<ReviewJob.Result> answer) {
    output.err().print(ProblemText.write(answer.problems()));
    Review review = answer.value().review();
    Look look = destination.look(output);
    String text =
        destination.json()
            ? ReviewJson.write(review, answer.problems())
            : ReviewText.write(answer.value().harness(), review, look);
    int written = destination.write(output, text);
    if (written != ExitCode.DONE) {
      return written;
    }
    return review.count(Severity.ERROR) > 0 ? ExitCode.FAULTS : ExitCode.DONE;
  }

  private int refuse(Answer.Refused<ReviewJob.Result> answer) {
    if (destination.json()) {
      output.out().print(ReviewJson.write(answer.problems()));
    }
    return output.refuse(answer);
  }
}
