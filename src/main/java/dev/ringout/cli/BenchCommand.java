package dev.ringout.cli;

import dev.ringout.Ringout;
import dev.ringout.bench.BenchSetup;
import dev.ringout.jobs.Answer;
import dev.ringout.jobs.LedTests.ListAtHand;
import dev.ringout.jobs.StoreAtHand;
import dev.ringout.meter.MeterTrouble;
import dev.ringout.meter.link.SystemTicks;
import dev.ringout.page.BenchPage;
import dev.ringout.page.PracticeList;
import dev.ringout.words.MeterWords;
import java.io.IOException;
import java.net.URI;
import java.nio.file.Path;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code ringout bench}: the page that leads through a test, reading by reading. */
@Command(
    name = "bench",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    description =
        "Opens the bench page on this machine, and the browser with it: a test is led reading by"
            + " reading, each judged and stored at once.")
final class BenchCommand implements Callable<Integer> {
  private final Output output;

  @Parameters(
      index = "0",
      arity = "0..1",
      paramLabel = "HARNESS",
      description = "A list that new units can be made to, or unit:SERIAL.")
  private Optional<Path> harness = Optional.empty();

  @Option(
      names = "--station",
      paramLabel = "NAME",
      description = "The name of this bench (bench where not given).")
  private String station = "bench";

  @Option(
      names = "--meter",
      paramLabel = "ADDRESS",
      description =
          "The meter: HOST:PORT, TCPIP::HOST::hislip0::INSTR, /dev/ttyUSB0, COM3; none where its"
              + " values are typed (where not given).")
  private Optional<String> meter = Optional.empty();

  @Option(
      names = "--profile",
      paramLabel = "PROFILE",
      description = "How the meter is spoken to: see ringout meters.")
  private Optional<String> profile = Optional.empty();

  @Option(
      names = "--insulation-meter",
      paramLabel = "ADDRESS",
      description =
          "The insulation tester. Its test volts are switched on by hand: ringout never does.")
  private String insulationMeter = "none";

  @Option(
      names = "--insulation-profile",
      paramLabel = "PROFILE",
      description = "How the insulation tester is spoken to.")
  private Optional<String> insulationProfile = Optional.empty();

  @Option(
      names = "--port",
      paramLabel = "PORT",
      description = "Serve the page there; any free port where not given.")
  private int port;

  @Option(names = "--no-browser", description = "Only print the address.")
  private boolean noBrowser;

  @Option(
      names = "--practice",
      description =
          "Practise on a simulated unit, wrong on purpose, with a simulated meter, in a store"
              + " of its own. Without HARNESS on the sample bridge.")
  private boolean practice;

  @Option(
      names = "--slips",
      paramLabel = "N",
      description = "With --practice: plant N slips of the hand in a unit (1 where not given).")
  private int slips = 1;

  @Option(
      names = "--seed",
      paramLabel = "N",
      description = "With --practice: chooses the mistakes; the same number gives the same ones.")
  private long seed = 3;

  @Mixin private StoreOption at = new StoreOption();

  BenchCommand(Output output) {
    this.output = output;
  }

  @Override
  public Integer call() {
    if (port < 0 || port > 65_535) {
      output.err().println("ringout: " + port + " is not a port; write one from 1 to 65535");
      return ExitCode.USAGE;
    }
    if (practice && meter.isPresent()) {
      output.err().println("ringout: --practice has a meter of its own; leave out --meter");
      return ExitCode.USAGE;
    }
    try {
      Path folder = practice ? at.folder().resolve("practice") : at.folder();
      StoreAtHand store = practice ? at.practiceStore(folder) : at.store();
      Optional<Path> list = harness;
      if (list.isEmpty() && practice) {
        list = Optional.of(PracticeList.in(folder));
      }
      return list.isPresent()
          ? withList(list.get(), store, folder)
          : serve(List.of(), store, folder);
    } catch (IOException e) {
      output.err().println("ringout: " + e.getMessage());
      return ExitCode.CANNOT_WRITE;
    }
  }

  private int withList(Path list, StoreAtHand store, Path folder) {
    return Ringout.onFilesAnd(store)
        .ledTests()
        .list(list)
        .match(
            (Answer.Given<ListAtHand> given) -> served(given.value(), store, folder),
            output::refuse);
  }

  private int served(ListAtHand list, StoreAtHand store, Path folder) {
    return serve(List.of(list), store, folder);
  }

  private int serve(List<ListAtHand> lists, StoreAtHand store, Path folder) {
    BenchSetup setup =
        new BenchSetup(
            store,
            station,
            practice ? "practice" : meter.orElse("none"),
            profile,
            insulationMeter,
            insulationProfile,
            folder,
            practice,
            slips,
            seed,
            new SystemTicks(),
            ZoneId.systemDefault());
    try (BenchPage page =
        BenchPage.open(Ringout.onFilesAnd(store), setup, lists, port, this::tellDefect)) {
      URI ticket = page.ticket();
      output.out().println("The bench is open: " + ticket);
      output
          .out()
          .println(
              "The address lets one browser in. Enter makes another; Ctrl-C closes the bench.");
      output.out().flush();
      if (!noBrowser) {
        Browser.open(ticket, output);
      }
      letOthersIn(page);
      new CountDownLatch(1).await();
      return ExitCode.DONE;
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return ExitCode.DONE;
    } catch (MeterTrouble e) {
      output.err().println("ringout: " + MeterWords.failure(e.failure()));
      return ExitCode.NOT_UNDERSTOOD;
    } catch (IOException e) {
      output.err().println("ringout: the page can't be served: " + e.getMessage());
      return ExitCode.CANNOT_WRITE;
    }
  }

  /** A browser that has lost its cookie, or another one: who sits at the terminal lets it in. */
  private void letOthersIn(BenchPage page) {
    Thread keys =
        new Thread(
            () -> {
              try {
                int key = System.in.read();
                while (key >= 0) {
                  if (key == '\n') {
                    output.out().println("Another address: " + page.ticket());
                    output.out().flush();
                  }
                  key = System.in.read();
                }
              } catch (IOException e) {
                // No terminal: the first browser can make an address too.
              }
            },
            "terminal");
    keys.setDaemon(true);
    keys.start();
  }

  private void tellDefect(Throwable cause) {
    Main.defect(cause, output.err());
  }
}
