package dev.ringout.cli;

import dev.ringout.jobs.Answer;
import dev.ringout.jobs.InputName;
import dev.ringout.jobs.RecordJob;
import dev.ringout.jobs.Stopped;
import dev.ringout.jobs.VerifyJob;
import dev.ringout.jobs.WrongRequest;
import dev.ringout.print.RecordFile;
import dev.ringout.seal.Digest;
import dev.ringout.seal.KeyFile;
import dev.ringout.seal.Keys;
import dev.ringout.seal.SealFinding;
import dev.ringout.seal.SealFinding.State;
import dev.ringout.sheet.PrintForm.PaperSize;
import dev.ringout.source.OptionNames;
import dev.ringout.source.OwnerOnly;
import dev.ringout.units.Text;
import dev.ringout.words.ProblemText;
import dev.ringout.words.SealSentences;
import dev.ringout.words.Sentences;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.KeyPair;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code ringout report}: the record to sign. */
@Command(
    name = "report",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    description = {
      "Writes the record to sign: verdict, faults with pictures, every reading with its limit, what"
          + " is not proven, and what it was made from. Beside it stands FILE.seal, with digests"
          + " of all of it.",
      "With --verify it says whether a record is unchanged since it was sealed."
    })
final class ReportCommand implements Callable<Integer> {
  private final Output output;

  @Spec private CommandSpec spec = CommandSpec.create();

  @Parameters(
      index = "0",
      arity = "0..1",
      paramLabel = "HARNESS",
      description = "The harness file, or unit:SERIAL.")
  private Optional<Path> harnessFile = Optional.empty();

  @Parameters(
      index = "1..*",
      arity = "0..*",
      paramLabel = "READINGS",
      description =
          "Filled test sheets, or unit:SERIAL; later readings replace earlier ones. None: those of"
              + " the unit whose list is taken.")
  private List<Path> readingsFiles = new ArrayList<>();

  @Option(
      names = "-o",
      converter = PathOfResult.class,
      paramLabel = "FILE",
      description = "The record: .html, .pdf or .xlsx.")
  private Optional<Path> file = Optional.empty();

  @Option(names = "--force", description = "Write over an existing FILE.")
  private boolean force;

  @Option(
      names = "--paper",
      paramLabel = "SIZE",
      description = "What it is printed on: ${COMPLETION-CANDIDATES} (default A4).")
  private PaperSize paper = PaperSize.A4;

  @Option(
      names = OptionNames.DATE,
      paramLabel = "DAY",
      description =
          "The day of the test, such as 2027-03-31; else the last day that the readings give.")
  private Optional<LocalDate> date = Optional.empty();

  @Option(
      names = "--waivers",
      paramLabel = "FILE",
      description = "What is accepted of the paper: Rule, Subject, Who, Why, Until.")
  private Optional<Path> waivers = Optional.empty();

  @Option(
      names = "--seal",
      paramLabel = "KEY",
      description = "Sign the record with this Ed25519 key (PEM); its public half is KEY.pub.")
  private Optional<Path> sealKey = Optional.empty();

  @Option(
      names = "--ids",
      paramLabel = "FILE",
      description =
          "People stand in the record by the ids of FILE: on each line an id, a tab and a name.")
  private Optional<Path> ids = Optional.empty();

  @Option(
      names = "--continues",
      paramLabel = "FILE",
      description = "The record before this one: its first failing values are kept.")
  private Optional<Path> continues = Optional.empty();

  @Option(
      names = OptionNames.SAME_UNIT,
      description =
          "With --continues: say that it is the same unit and list, where the seal of the"
              + " record before does not say so; the record will show it.")
  private boolean sameUnit;

  @Option(
      names = "--done",
      paramLabel = "TEXT",
      description = "What was done since that record. May be given more than once.")
  private List<String> done = new ArrayList<>();

  @Mixin private UnitOptions unit = new UnitOptions();

  @Option(
      names = "--verify",
      paramLabel = "FILE",
      description =
          "Say whether a record, and the files it was made from, are unchanged since"
              + " they were sealed.")
  private Optional<Path> verify = Optional.empty();

  @Option(
      names = "--key",
      paramLabel = "PUB",
      description =
          "With --verify and --continues: a public key that is trusted. May be given more than"
              + " once.")
  private List<Path> trusted = new ArrayList<>();

  @Option(
      names = "--keys",
      paramLabel = "LIST",
      description =
          "With --verify: the shop's list of keys, as \"ringout people keys\" writes it: whose each"
              + " is, and from when to when.")
  private Optional<Path> keyList = Optional.empty();

  @Option(
      names = OptionNames.INPUTS,
      paramLabel = "FOLDER",
      description =
          "With --verify: a folder to look in for input files that are not beside the record.")
  private Optional<Path> inputs = Optional.empty();

  @Option(
      names = "--new-key",
      paramLabel = "KEY",
      description = "Make a new key to seal with: KEY, to be kept secret, and KEY.pub.")
  private Optional<Path> newKey = Optional.empty();

  @Option(
      names = "--passphrase",
      paramLabel = "FILE",
      description =
          "The passphrase of KEY is the first line of FILE; else a terminal is asked for it.")
  private Optional<Path> passphrase = Optional.empty();

  @Mixin private StoreOption store = new StoreOption();

  @Mixin private Touched touched = new Touched();

  @Mixin private TablesOption tables = new TablesOption();

  ReportCommand(Output output) {
    this.output = output;
  }

  @Override
  public Integer call() throws WrongRequest, Stopped {
    if (newKey.isPresent()) {
      return makeKey(newKey.get());
    }
    if (verify.isPresent()) {
      return verify(verify.get());
    }
    List<Path> readings = readings();
    if (harnessFile.isEmpty() || readings.isEmpty() || file.isEmpty()) {
      throw new ParameterException(
          spec.commandLine(), "a record needs HARNESS, READINGS and -o FILE");
    }
    return write(harnessFile.get(), readings, file.get());
  }

  /** Of a unit of the store the list alone means all that was read on it. */
  private List<Path> readings() {
    return readingsFiles.isEmpty()
        ? harnessFile.filter(InputName::isUnit).stream().toList()
        : readingsFiles;
  }

  private int makeKey(Path key) {
    Passphrase asked = new Passphrase(output, spec.commandLine());
    KeyPair pair = Keys.create();
    Path open = key.resolveSibling(key.getFileName() + ".pub");
    Optional<String> secret =
        passphrase.isPresent() ? asked.in(passphrase.get()) : asked.ofNew(key);
    String closed;
    try {
      closed =
          secret.isPresent()
              ? Keys.pem(pair.getPrivate(), secret.get())
              : Keys.pem(pair.getPrivate());
    } catch (Keys.Unusable e) {
      throw asked.wrong(String.valueOf(e.getMessage()));
    }
    int code =
        output.write(
            List.of(
                ResultFile.file(key, ascii(closed), OwnerOnly.file()),
                ResultFile.file(open, ascii(Keys.pem(pair.getPublic())))),
            force);
    if (code == ExitCode.DONE) {
      output
          .out()
          .println(
              Text.visible(
                  "Keep "
                      + key
                      + " secret; give "
                      + open
                      + " to whoever checks. Fingerprint "
                      + Keys.fingerprint(pair.getPublic())));
    }
    return code;
  }

  private static Output.Content ascii(String text) {
    return out -> out.write(text.getBytes(StandardCharsets.US_ASCII));
  }

  private Optional<KeyFile> keyToSealWith() {
    if (sealKey.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new Passphrase(output, spec.commandLine()).keyFile(sealKey.get(), passphrase));
  }

  private int write(Path harnessPath, List<Path> readings, Path to) throws WrongRequest, Stopped {
    RecordFile form =
        RecordFile.named(String.valueOf(to.getFileName()))
            .orElseThrow(
                () ->
                    new ParameterException(
                        spec.commandLine(),
                        "-o " + to + ": a record is written as .html, .pdf or .xlsx"));
    Path sealFile = VerifyJob.sealOf(to);
    for (Path path : List.of(to, sealFile)) {
      if (Files.exists(path) && !force) {
        output.err().println("ringout: " + path + " exists; write over it with --force");
        return ExitCode.CANNOT_WRITE;
      }
    }
    RecordJob.Request request =
        new RecordJob.Request(
            unit.of(harnessPath, readings, touched, tables),
            waivers,
            date,
            continues.map(one -> new RecordJob.Before(one, sameUnit, trusted)),
            done,
            keyToSealWith(),
            to,
            ids);
    return store
        .door()
        .record(request)
        .match(answer -> write(to, form, sealFile, answer), output::refuse);
  }

  private int write(
      Path to, RecordFile form, Path sealFile, Answer.Given<RecordJob.Result> answer) {
    output.err().print(ProblemText.write(answer.problems()));
    RecordJob.Result result = answer.value();
    Instant now = Instant.now();
    List<String> digest = new ArrayList<>();
    ResultFile record =
        ResultFile.file(
            to,
            out -> {
              // Sealed is what was written, whatever lies there afterwards.
              Digest.OfWritten written = new Digest.OfWritten(out);
              form.write(written, result.content(), paper);
              written.flush();
              digest.add(written.sha256());
            });
    ResultFile seal =
        ResultFile.file(
            sealFile,
            out -> out.write(result.seal(digest.get(0), now).getBytes(StandardCharsets.UTF_8)));
    int code = output.write(List.of(record, seal), force);
    if (code != ExitCode.DONE) {
      return code;
    }
    output.written(to, "sealed in " + sealFile.getFileName());
    result
        .key()
        .ifPresent(
            one -> output.out().println("Signed by key " + Keys.fingerprint(one.getPublic())));
    output.out().println(Sentences.verdict(result.record().result()));
    return ExitCode.of(result.record().result().verdict());
  }

  private int verify(Path record) throws WrongRequest, Stopped {
    VerifyJob.Result result =
        store.door().verify(new VerifyJob.Request(record, trusted, keyList, inputs));
    for (SealFinding sealFinding : result.findings()) {
      output
          .out()
          .println(
              Text.of(
                  "%-11s %s",
                  SealSentences.state(sealFinding.state()), SealSentences.sentence(sealFinding)));
    }
    boolean differs = result.has(State.DIFFERS);
    boolean open = result.has(State.NOT_SHOWN);
    output.out().println();
    output.out().println(SealSentences.verdict(differs, open));
    return differs ? ExitCode.FAULTS : open ? ExitCode.INCOMPLETE : ExitCode.DONE;
  }
}
