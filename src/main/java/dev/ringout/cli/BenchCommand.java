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
import dev.ringout.pictures.TerminalCode;
import dev.ringout.serve.ShopCertificate;
import dev.ringout.serve.ShopDoor;
import dev.ringout.serve.Stay;
import dev.ringout.store.StoreTrouble;
import dev.ringout.words.MeterWords;
import java.io.IOException;
import java.net.URI;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

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

  @Spec private CommandSpec spec = CommandSpec.create();

  @Parameters(
      index = "0",
      arity = "0..1",
      paramLabel = "HARNESS",
      description = "A list that new units can be made to, or unit:SERIAL.")
  private Optional<Path> harness = Optional.empty();

  @Option(
      names = "--station",
      paramLabel = "NAME",
      description =
          "The name of this bench (bench where not given). On a server each bench needs one of its"
              + " own: it leads tests by it.")
  private Optional<String> station = Optional.empty();

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

  @Option(
      names = "--listen",
      paramLabel = "HOST[:PORT]",
      description =
          "Serve the page to the shop's network instead, by TLS and to people who sign in (see"
              + " ringout people), at this name or address of this machine; port 8443 where not"
              + " given.")
  private Optional<String> listen = Optional.empty();

  @Option(
      names = "--certificate",
      paramLabel = "FILE",
      description =
          "With --listen: the shop's certificate with its key (PKCS #12). Else one is made at the"
              + " first start, and its fingerprint shown.")
  private Optional<Path> certificate = Optional.empty();

  @Option(
      names = "--passphrase",
      paramLabel = "FILE",
      description = "With --certificate: its passphrase is the first line of FILE.")
  private Optional<Path> passphrase = Optional.empty();

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
    if (listen.isPresent() && (practice || port != 0)) {
      output.err().println("ringout: --listen goes without --practice and --port");
      return ExitCode.USAGE;
    }
    if (certificate.isPresent() != passphrase.isPresent()
        || (certificate.isPresent() && listen.isEmpty())) {
      output.err().println("ringout: --listen, --certificate and --passphrase go together");
      return ExitCode.USAGE;
    }
    if (station.isEmpty() && !practice && at.store().isOnServer()) {
      output.err().println("ringout: say --station: benches on one server are told by their names");
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
            station.orElse("bench"),
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
    Ringout door = Ringout.onFilesAnd(store);
    try {
      requireItsVersion(door);
      return listen.isPresent() ? serveShop(door, lists, setup) : serveHere(door, lists, setup);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return ExitCode.DONE;
    } catch (StoreTrouble e) {
      return Trouble.say(output, store.shown(), e);
    } catch (ShopCertificate.Unusable e) {
      output.err().println("ringout: " + e.text());
      return ExitCode.NOT_UNDERSTOOD;
    } catch (MeterTrouble e) {
      output.err().println("ringout: " + MeterWords.failure(e.failure()));
      return ExitCode.NOT_UNDERSTOOD;
    } catch (IOException e) {
      output.err().println("ringout: the page can't be served: " + e.getMessage());
      return ExitCode.CANNOT_WRITE;
    }
  }

  /** A store that can't be reached may come back; one of another version does not. */
  private static void requireItsVersion(Ringout door) throws StoreTrouble {
    try {
      door.people().people();
    } catch (StoreTrouble e) {
      if (e.reason() == StoreTrouble.Reason.NOT_UNDERSTOOD) {
        throw e;
      }
    }
  }

  private int serveHere(Ringout door, List<ListAtHand> lists, BenchSetup setup)
      throws MeterTrouble, IOException, InterruptedException {
    try (BenchPage page = BenchPage.open(door, setup, lists, port, this::tellDefect)) {
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
    }
  }

  private int serveShop(Ringout door, List<ListAtHand> lists, BenchSetup setup)
      throws MeterTrouble,
          IOException,
          StoreTrouble,
          ShopCertificate.Unusable,
          InterruptedException {
    Listening at = Listening.of(listen.orElseThrow());
    if (!door.people().people().canSignIn()) {
      output.err().println("ringout: nobody can sign in yet");
      output
          .err()
          .println("The first is an administrator: ringout people add NAME --role administrator");
      return ExitCode.MISSING_INPUT;
    }
    ShopCertificate known = certificate(setup.data(), at);
    if (!known.isValidAt(setup.ticks().now())) {
      output.err().println("ringout: the certificate is valid until " + day(known));
      return ExitCode.NOT_UNDERSTOOD;
    }
    ShopDoor shop =
        new ShopDoor(
            at.address(), at.port(), at.name(), known.tls(), Stay.USUAL, setup.ticks()::millis);
    try (BenchPage page = BenchPage.openToShop(door, setup, lists, shop, this::tellDefect)) {
      tellWhere(page.home(), known);
      if (!noBrowser) {
        Browser.open(page.home(), output);
      }
      new CountDownLatch(1).await();
      return ExitCode.DONE;
    }
  }

  private ShopCertificate certificate(Path folder, Listening at) throws ShopCertificate.Unusable {
    return certificate.isPresent()
        ? ShopCertificate.read(
            certificate.get(),
            new Passphrase(output, spec.commandLine()).in(passphrase.orElseThrow()).orElse(""))
        : ShopCertificate.in(folder.resolve("tls"), at.name(), at.address());
  }

  private static LocalDate day(ShopCertificate of) {
    return of.until().atZone(ZoneId.systemDefault()).toLocalDate();
  }

  /** What a tablet shows of the certificate is compared with what stands here. */
  private void tellWhere(URI home, ShopCertificate known) {
    String fingerprint = known.fingerprint();
    int half = fingerprint.length() / 2;
    output.out().println("The bench is open to the shop: " + home);
    output.out().println("Fingerprint of its certificate (SHA-256), to compare at each tablet:");
    output.out().println("  " + fingerprint.substring(0, half));
    output.out().println("  " + fingerprint.substring(half + 1));
    output.out().println("Valid until " + day(known) + ". Ctrl-C closes the bench.");
    if (output.terminal()) {
      output.out().print(TerminalCode.of(home + "#SHA-256=" + fingerprint.replace(":", "")));
    }
    output.out().flush();
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
