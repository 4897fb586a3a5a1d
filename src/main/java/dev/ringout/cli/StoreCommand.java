package dev.ringout.cli;

import dev.ringout.jobs.AddJob;
import dev.ringout.jobs.Answer;
import dev.ringout.jobs.LaterJob;
import dev.ringout.jobs.StationJob;
import dev.ringout.jobs.StoreAtHand;
import dev.ringout.jobs.StoreCare;
import dev.ringout.jobs.WrongRequest;
import dev.ringout.json.StoreJson;
import dev.ringout.seal.KeyFile;
import dev.ringout.source.Problem;
import dev.ringout.source.Severity;
import dev.ringout.store.StoreState;
import dev.ringout.store.StoreTrouble;
import dev.ringout.text.StoreText;
import dev.ringout.words.ProblemText;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code ringout store}: what a store needs besides units and readings. */
@Command(
    name = "store",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    description =
        "Keeps units and what was read on them: makes a store, brings filled sheets in, looks"
            + " whether all is as it was written, copies it.")
final class StoreCommand implements Runnable {
  private static final String JSON = "--json";
  private static final String UNIT = "UNIT";
  private static final String UNIT_SAYS = "A unit of the store, unit:SERIAL.";
  private static final String WHO = "--who";
  private static final String NAME = "NAME";
  private static final String JSON_SAYS = "One JSON document on standard output.";

  private final Output output;

  @Spec private CommandSpec spec = CommandSpec.create();

  StoreCommand(Output output) {
    this.output = output;
  }

  @Override
  public void run() {
    throw new ParameterException(
        spec.commandLine(),
        "what to do with the store? add, note, take-back, sign, station, check, backup, copy or"
            + " migrate");
  }

  private int trouble(String shown, StoreTrouble e) {
    return Trouble.say(output, shown, e);
  }

  @Command(
      name = "add",
      mixinStandardHelpOptions = true,
      description =
          "Brings filled test sheets in, each as a whole or not at all; the same sheet twice adds"
              + " nothing.")
  int add(
      @Parameters(paramLabel = "HARNESS", description = "The harness file, or unit:SERIAL.")
          Path harness,
      @Parameters(
              arity = "1..*",
              paramLabel = "READINGS",
              description = "Filled test sheets, or folders of them.")
          List<Path> sheets,
      @Option(names = JSON, description = JSON_SAYS) boolean json,
      @Mixin StoreOption at) {
    Answer<AddJob.Result> answer =
        at.door().add(new AddJob.Request(harness, sheets, Instant.now()));
    return answer.match(
        given -> added(given, json, at),
        refused -> {
          if (json) {
            output.out().print(StoreJson.refused(refused.problems()));
          }
          return output.refuse(refused);
        });
  }

  private int added(Answer.Given<AddJob.Result> answer, boolean json, StoreOption at) {
    AddJob.Result result = answer.value();
    List<Problem> problems = new ArrayList<>(answer.problems());
    result.sheets().forEach(sheet -> problems.addAll(sheet.problems()));
    output.err().print(ProblemText.withoutRows(problems, 0));
    output
        .out()
        .print(json ? StoreJson.added(result, problems) : StoreText.added(result, output.look()));
    if (result.stopped().isPresent()) {
      return trouble(at.store().shown(), result.stopped().get());
    }
    boolean refused =
        result.sheets().stream().anyMatch(sheet -> sheet.state() == AddJob.State.REFUSED)
            || problems.stream().anyMatch(one -> one.severity() == Severity.ERROR);
    return refused ? ExitCode.NOT_UNDERSTOOD : ExitCode.DONE;
  }

  @Command(
      name = "station",
      mixinStandardHelpOptions = true,
      description =
          "Keeps what a station carries into every test, for plan --job station:NAME; what it was"
              + " before stays.")
  int station(
      @Parameters(paramLabel = "NAME", description = "The station.") String name,
      @Parameters(
              paramLabel = "FILE",
              description = "Rows of the sheet Job: a .csv of Name and Value, or a workbook.")
          Path file,
      @Mixin StoreOption at) {
    try {
      return at.door()
          .station(new StationJob.Request(name, file, Instant.now()))
          .match(
              given -> {
                output.err().print(ProblemText.withoutRows(given.problems(), 0));
                output.out().print(StoreText.station(given.value(), output.look()));
                return ExitCode.DONE;
              },
              output::refuse);
    } catch (StoreTrouble e) {
      return trouble(at.store().shown(), e);
    }
  }

  @Command(
      name = "note",
      mixinStandardHelpOptions = true,
      description = "Keeps somebody's words about a unit.")
  int note(
      @Parameters(paramLabel = UNIT, description = UNIT_SAYS) Path unit,
      @Parameters(paramLabel = "TEXT", description = "The words.") String text,
      @Option(names = WHO, required = true, paramLabel = NAME, description = "Who says it.")
          String who,
      @Mixin StoreOption at)
      throws WrongRequest {
    return later(unit, who, new LaterJob.What.Note(text), at);
  }

  @Command(
      name = "take-back",
      mixinStandardHelpOptions = true,
      description =
          "Takes back readings that were mistakes. They stay in the store and no longer count,"
              + " nor does what was read of the same points before: read them again.")
  int takeBack(
      @Parameters(index = "0", paramLabel = UNIT, description = UNIT_SAYS) Path unit,
      @Parameters(
              index = "1..*",
              arity = "1..*",
              paramLabel = "CELL",
              description = "Where check says that it stands, such as \"Continuity G14\".")
          List<String> cells,
      @Option(names = "--why", required = true, paramLabel = "TEXT", description = "Why.")
          String why,
      @Option(names = WHO, required = true, paramLabel = NAME, description = "Who says so.")
          String who,
      @Mixin StoreOption at)
      throws WrongRequest {
    return later(unit, who, new LaterJob.What.TakeBack(cells, why), at);
  }

  @Command(
      name = "sign",
      mixinStandardHelpOptions = true,
      description = "Signs all that was read of a unit so far, with the verdict on it.")
  int sign(
      @Parameters(paramLabel = UNIT, description = UNIT_SAYS) Path unit,
      @Option(
              names = "--key",
              required = true,
              paramLabel = "KEY",
              description = "The private key (Ed25519, PEM) that report --new-key makes.")
          Path key,
      @Option(
              names = "--passphrase",
              paramLabel = "FILE",
              description =
                  "The passphrase of KEY is the first line of FILE; else a terminal is asked.")
          Optional<Path> passphrase,
      @Option(
              names = "--role",
              required = true,
              paramLabel = "ROLE",
              description = "As what: tester, inspector, engineer or lead.")
          LaterJob.Role role,
      @Option(names = WHO, required = true, paramLabel = NAME, description = "Who signs.")
          String who,
      @Mixin StoreOption at)
      throws WrongRequest {
    KeyFile file = new Passphrase(output, spec.commandLine()).keyFile(key, passphrase);
    return later(unit, who, new LaterJob.What.Sign(role, file), at);
  }

  private int later(Path unit, String who, LaterJob.What what, StoreOption at) throws WrongRequest {
    try {
      return at.door()
          .later(new LaterJob.Request(unit, who, what, Instant.now()))
          .match(
              given -> {
                output.err().print(ProblemText.withoutRows(given.problems(), 0));
                output.out().print(StoreText.later(given.value(), output.look()));
                return ExitCode.DONE;
              },
              output::refuse);
    } catch (StoreTrouble e) {
      return trouble(at.store().shown(), e);
    }
  }

  @Command(
      name = "check",
      mixinStandardHelpOptions = true,
      description = "Reads all of it and looks whether everything is as it was written.")
  int check(@Option(names = JSON, description = JSON_SAYS) boolean json, @Mixin StoreOption at) {
    try {
      StoreState state = at.door().store().check();
      output
          .out()
          .print(
              json
                  ? StoreJson.state(state)
                  : StoreText.state(at.store().shown(), state, output.look()));
      return state.findings().isEmpty() ? ExitCode.DONE : ExitCode.FAULTS;
    } catch (StoreTrouble e) {
      if (json) {
        output.out().print(StoreJson.refused(at.store().shown(), e.text()));
      }
      return trouble(at.store().shown(), e);
    }
  }

  @Command(
      name = "backup",
      mixinStandardHelpOptions = true,
      description =
          "Copies all of it into a new file, which is a store itself, and looks through it; with"
              + " --unit one unit, to be archived.")
  int backup(
      @Parameters(
              converter = PathOfResult.class,
              paramLabel = "FILE",
              description = "The new file; it must not exist.")
          Path file,
      @Option(
              names = "--unit",
              paramLabel = UNIT,
              description = "This unit alone (unit:SERIAL), with its list and all its tests.")
          Optional<Path> unit,
      @Mixin StoreOption at) {
    if (Files.exists(file)) {
      output.err().println("ringout: " + file + " exists; a backup never replaces a file");
      return ExitCode.CANNOT_WRITE;
    }
    try {
      if (unit.isPresent()) {
        return archived(at.door().store().archive(unit.get(), file, System.getenv()), file);
      }
      return copied(at.door().store().backUp(file, System.getenv()));
    } catch (StoreTrouble e) {
      return trouble(at.store().shown() + " to " + file, e);
    }
  }

  @Command(
      name = "copy",
      mixinStandardHelpOptions = true,
      description =
          "Copies everything that TO does not have yet, from file to server or back, and compares"
              + " both.")
  int copy(
      @Parameters(paramLabel = "FROM", description = "A store.") String from,
      @Parameters(paramLabel = "TO", description = "Another; a file that is not there is made.")
          String to,
      @Option(
              names = "--people",
              description =
                  "Takes also what FROM decided of people and keys since; else TO, where it has"
                      + " people, keeps to its own.")
          boolean people) {
    StoreAtHand store = new StoreAtHand(from, System.getenv());
    try {
      return copied(new StoreCare(store).copyTo(to, System.getenv(), people, Instant.now()));
    } catch (StoreTrouble e) {
      return trouble(store.shown() + " to " + new StoreAtHand(to, System.getenv()).shown(), e);
    }
  }

  private int archived(StoreCare.Copied copied, Path file) {
    if (Files.exists(file)) {
      output.out().print(StoreText.archived(file.toString(), copied.to(), output.look()));
      return ExitCode.DONE;
    }
    output.out().print(StoreText.copied(copied, output.look()));
    return ExitCode.FAULTS;
  }

  private int copied(StoreCare.Copied copied) {
    output.out().print(StoreText.copied(copied, output.look()));
    return copied.isDone() ? ExitCode.DONE : ExitCode.FAULTS;
  }

  @Command(
      name = "migrate",
      mixinStandardHelpOptions = true,
      description =
          "Makes a store where there is none, or takes one of an earlier version along. On a server"
              + " this is for the owner of the tables.")
  int migrate(
      @Option(
              names = "--role",
              paramLabel = "ROLE",
              description = "A role of the server that may read and add from then on, and no more.")
          Optional<String> role,
      @Mixin StoreOption at) {
    try {
      at.door().store().migrate(role);
      output.out().println(at.store().shown() + " is ready.");
      return ExitCode.DONE;
    } catch (StoreTrouble e) {
      return trouble(at.store().shown(), e);
    }
  }
}
