package dev.ringout.cli;

import dev.ringout.Ringout;
import dev.ringout.jobs.Answer;
import dev.ringout.jobs.MetersJob;
import dev.ringout.jobs.PracticeJob;
import dev.ringout.jobs.TryMeterJob;
import dev.ringout.jobs.WrongRequest;
import dev.ringout.json.MetersJson;
import dev.ringout.meter.Failure;
import dev.ringout.meter.MeterProfileText;
import dev.ringout.meter.MeterTrouble;
import dev.ringout.text.MetersText;
import dev.ringout.words.MeterWords;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code ringout meters}: ports and profiles; tries a meter; runs a practice meter. */
@Command(
    name = "meters",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    description =
        "Lists serial ports and the profiles by which meters are spoken to; tries a meter and shows"
            + " every line; runs a practice meter.")
final class MetersCommand implements Callable<Integer> {
  private static final int MOST_SECONDS = 600;

  private final Output output;

  @Parameters(
      index = "0",
      arity = "0..1",
      paramLabel = "HARNESS",
      description = "With --practice: the list of the unit under the probes; or unit:SERIAL.")
  private Optional<Path> harness = Optional.empty();

  @Option(
      names = "--try",
      paramLabel = "ADDRESS",
      description =
          "Talk to the meter at ADDRESS: HOST:PORT, TCPIP::HOST::hislip0::INSTR, /dev/ttyUSB0,"
              + " COM3 or practice. With -o its profile is written, with what was measured.")
  private Optional<String> address = Optional.empty();

  @Option(
      names = "--profile",
      paramLabel = "PROFILE",
      description = "With --try: a profile's name or file.")
  private Optional<String> profile = Optional.empty();

  @Option(names = "--four-wire", description = "With --try: over four wires.")
  private boolean fourWire;

  @Option(
      names = "--seconds",
      paramLabel = "N",
      description = "With --try: for so many seconds (3 if not given).")
  private int seconds = 3;

  @Option(
      names = "--leads",
      description =
          "With --try: the probes are held together; what settles is kept as this meter's lead"
              + " null.")
  private boolean leads;

  @Option(
      names = "--practice",
      paramLabel = "PORT",
      description =
          "Run a practice meter for this machine: plain commands on PORT, HiSLIP on the next.")
  private Optional<Integer> practice = Optional.empty();

  @Option(
      names = "--slips",
      paramLabel = "N",
      description = "With --practice: put N mistakes of the hand into the unit.")
  private int slips;

  @Option(
      names = "--seed",
      paramLabel = "N",
      description = "With --practice: chooses the mistakes; the same number gives the same ones.")
  private long seed = 1;

  @Spec private CommandSpec spec = CommandSpec.create();

  @Mixin private StoreOption at = new StoreOption();

  @Mixin private TablesOption tables = new TablesOption();

  @Mixin private Destination destination = new Destination();

  MetersCommand(Output output) {
    this.output = output;
  }

  @Override
  public Integer call() throws WrongRequest {
    Optional<String> wrong = wrong();
    if (wrong.isPresent()) {
      throw new ParameterException(spec.commandLine(), wrong.get());
    }
    if (practice.isPresent()) {
      return serve(practice.get());
    }
    return address.isPresent() ? tryOut(address.get()) : list();
  }

  /** What is asked for, and belongs to something else that is not. */
  private Optional<String> wrong() {
    boolean tries = address.isPresent();
    boolean serves = practice.isPresent();
    if (tries && serves) {
      return Optional.of("--try and --practice are two different things: one at a time");
    }
    if (!tries && (leads || fourWire || profile.isPresent())) {
      return Optional.of("--leads, --four-wire and --profile say how to --try a meter: which?");
    }
    if (!serves && (harness.isPresent() || slips != 0)) {
      return Optional.of("a list and --slips are for --practice: at which port?");
    }
    return seconds < 1 || seconds > MOST_SECONDS
        ? Optional.of("--seconds " + seconds + ": expected 1 to " + MOST_SECONDS)
        : Optional.empty();
  }

  private int list() {
    try {
      MetersJob.Result result = Ringout.onFiles().meters(new MetersJob.Request(at.folder()));
      return destination.write(
          output,
          destination.json()
              ? MetersJson.write(result)
              : MetersText.write(result, destination.look(output)));
    } catch (MeterTrouble e) {
      if (destination.json()) {
        output.out().print(MetersJson.refused(e));
      }
      return trouble(e);
    }
  }

  private int trouble(MeterTrouble trouble) {
    output.err().println("ringout: " + MeterWords.failure(trouble.failure()));
    return code(trouble.failure());
  }

  private static int code(Failure failure) {
    return switch (MeterWords.code(failure)) {
      case "no-address",
          "no-profile",
          "garbage",
          "unasked",
          "queued",
          "too-long",
          "half-line",
          "other-quantity",
          "set-otherwise",
          "no-value",
          "no-volts",
          "not-together" ->
          ExitCode.NOT_UNDERSTOOD;
      case "not-kept" -> ExitCode.CANNOT_WRITE;
      default -> ExitCode.MISSING_INPUT;
    };
  }

  private int tryOut(String to) {
    boolean json = destination.json();
    if (!json) {
      output.out().print(MetersText.beforeTrial(seconds));
    }
    TryMeterJob.Result result =
        Ringout.onFiles()
            .tryMeter(
                new TryMeterJob.Request(
                    to,
                    profile,
                    at.folder(),
                    fourWire,
                    seconds,
                    leads,
                    line -> {
                      if (!json) {
                        output.out().println(MeterWords.exchange(line));
                        output.out().flush();
                      }
                    }));
    output
        .out()
        .print(json ? MetersJson.write(result) : MetersText.afterTrial(result, output.look()));
    if (result.trouble().isPresent()) {
      return trouble(result.trouble().get());
    }
    return destination.isFile() ? keep(result) : ExitCode.DONE;
  }

  private int keep(TryMeterJob.Result result) {
    return destination.write(
        output,
        MeterProfileText.write(
            result.trial().orElseThrow().kept(destination.name(), result.profile().orElseThrow())));
  }

  private int serve(int port) throws WrongRequest {
    if (port < 0 || port > 65534) {
      output.err().println("ringout: " + port + " is not a port; write one from 1 to 65534");
      return ExitCode.USAGE;
    }
    try {
      return at.door()
          .practice(new PracticeJob.Request(port, harness, slips, seed, tables.folder()))
          .match(this::untilStopped, output::refuse);
    } catch (IOException e) {
      output.err().println("ringout: port " + port + " can't be had: " + e.getMessage());
      return ExitCode.CANNOT_WRITE;
    }
  }

  private int untilStopped(Answer.Given<PracticeJob.Running> answer) {
    at.close();
    try (PracticeJob.Running running = answer.value()) {
      output.out().print(MetersText.serving(running, output.look()));
      output.out().flush();
      new CountDownLatch(1).await();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    } catch (IOException e) {
      output.err().println("ringout: " + e.getMessage());
    }
    return ExitCode.DONE;
  }
}
