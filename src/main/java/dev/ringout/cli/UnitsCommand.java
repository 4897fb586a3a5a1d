package dev.ringout.cli;

import dev.ringout.jobs.UnitsJob;
import dev.ringout.json.UnitsJson;
import dev.ringout.store.StoreTrouble;
import dev.ringout.text.UnitsText;
import dev.ringout.words.ProblemText;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** {@code ringout units}: the units of the store, or one's history. */
@Command(
    name = "units",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    description =
        "Lists the units of the store with how each stood when it was last read, or tells one unit's"
            + " history.")
final class UnitsCommand implements Callable<Integer> {
  private final Output output;

  @Parameters(
      index = "0",
      arity = "0..1",
      paramLabel = "SERIAL",
      description = "The serial number of one unit.")
  private Optional<String> serial = Optional.empty();

  @Mixin private StoreOption at = new StoreOption();

  @Mixin private Destination destination = new Destination();

  UnitsCommand(Output output) {
    this.output = output;
  }

  @Override
  public Integer call() {
    try {
      UnitsJob.Result result = at.door().units(new UnitsJob.Request(serial));
      result
          .histories()
          .forEach(one -> output.err().print(ProblemText.withoutRows(one.problems(), 0)));
      int written =
          destination.write(
              output,
              destination.json()
                  ? UnitsJson.write(result)
                  : UnitsText.write(result, at.typed(), destination.look(output)));
      return written == ExitCode.DONE && !result.isAsWritten() ? ExitCode.NOT_UNDERSTOOD : written;
    } catch (StoreTrouble e) {
      if (destination.json()) {
        output.out().print(UnitsJson.refused(at.store().shown(), e.text()));
      }
      return Trouble.say(output, at.store().shown(), e);
    }
  }
}
