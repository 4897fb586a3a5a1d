package dev.ringout.cli;

import dev.ringout.check.CheckResult;
import dev.ringout.check.TestDay;
import dev.ringout.check.UnitOfTest;
import dev.ringout.circuit.UnitMap;
import dev.ringout.harness.Harness;
import dev.ringout.harness.Waiver;
import dev.ringout.print.PdfFile;
import dev.ringout.print.RecordHtml;
import dev.ringout.print.RecordSheets;
import dev.ringout.readings.ReadingSet;
import dev.ringout.record.RecordContent;
import dev.ringout.record.TestRecord;
import dev.ringout.review.Review;
import dev.ringout.seal.Digest;
import dev.ringout.seal.Keys;
import dev.ringout.seal.Seal;
import dev.ringout.seal.TestedUnit;
import dev.ringout.sheet.OutFile;
import dev.ringout.sheet.PrintForm;
import dev.ringout.sheet.PrintForm.PaperSize;
import dev.ringout.source.Place;
import dev.ringout.standards.CopperWire;
import dev.ringout.standards.Tables;
import dev.ringout.words.ProblemText;
import dev.ringout.work.SleeveText;
import dev.ringout.work.WorkPapers;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.KeyPair;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
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
      "With --verify it says whether a record is still what was sealed."
    })
final class ReportCommand implements Callable<Integer> {
  private final Output output;

  @Spec private CommandSpec spec = CommandSpec.create();

  @Parameters(
      index = "0",
      arity = "0..1",
      paramLabel = "HARNESS",
      description = "The harness file.")
  private Optional<Path> harnessFile = Optional.empty();

  @Parameters(
      index = "1..*",
      arity = "0..*",
      paramLabel = "READINGS",
      description = "Filled test sheets; later readings replace earlier ones.")
  private List<Path> readingsFiles = new ArrayList<>();

  @Option(names = "-o", paramLabel = "FILE", description = "The record: .html, .pdf or .xlsx.")
  private Optional<Path> file = Optional.empty();

  @Option(names = "--force", description = "Write over an existing FILE.")
  private boolean force;

  @Option(
      names = "--paper",
      paramLabel = "SIZE",
      description = "What it is printed on: ${COMPLETION-CANDIDATES} (default A4).")
  private PaperSize paper = PaperSize.A4;

  @Option(
      names = "--date",
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
      names = "--continues",
      paramLabel = "FILE",
      description = "The record before this one: its first failing values are kept.")
  private Optional<Path> continues = Optional.empty();

  @Option(
      names = "--same-unit",
      description =
          "With --continues: vouch that it is the same unit and list where the seal of the record"
              + " before does not say so.")
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
      description = "Say whether a record, and what it was made from, are as they were sealed.")
  private Optional<Path> verify = Optional.empty();

  @Option(
      names = "--key",
      paramLabel = "PUB",
      description = "With --verify: the public key that is trusted.")
  private Optional<Path> trusted = Optional.empty();

  @Option(
      names = "--new-key",
      paramLabel = "KEY",
      description = "Make a new key to seal with: KEY, to be kept secret, and KEY.pub.")
  private Optional<Path> newKey = Optional.empty();

  @Mixin private Touched touched = new Touched();

  @Mixin private OwnTables tables = new OwnTables();

  ReportCommand(Output output) {
    this.output = output;
  }

  @Override
  public Integer call() {
    if (newKey.isPresent()) {
      return makeKey(newKey.get());
    }
    if (verify.isPresent()) {
      return new SealCheck(output, spec).verify(verify.get(), trusted);
    }
    if (harnessFile.isEmpty() || readingsFiles.isEmpty() || file.isEmpty()) {
      throw new ParameterException(
          spec.commandLine(), "a record needs HARNESS, READINGS and -o FILE");
    }
    return write(harnessFile.get(), file.get());
  }

  private int makeKey(Path key) {
    KeyPair pair = Keys.create();
    Path open = key.resolveSibling(key.getFileName() + ".pub");
    if (Files.exists(open) && !force) {
      output.err().println("ringout: " + open + " exists; write over it with --force");
      return ExitCode.CANNOT_WRITE;
    }
    int code =
        output.write(
            key,
            beside -> {
              // Made for its owner alone before anything is in it.
              Secret.create(beside);
              Files.writeString(beside, Keys.pem(pair.getPrivate()));
            },
            force);
    if (code == ExitCode.DONE) {
      code = output.write(open, Keys.pem(pair.getPublic()), force);
    }
    if (code == ExitCode.DONE) {
      output
          .out()
          .println(
              "Keep "
                  + key
                  + " secret; give "
                  + open
                  + " to whoever checks. Fingerprint "
                  + Keys.fingerprint(pair.getPublic()));
    }
    return code;
  }

  private int write(Path harnessPath, Path to) {
    String name = String.valueOf(to.getFileName()).toLowerCase(Locale.ROOT);
    if (!name.matches(".*\\.(html|pdf|xlsx)")) {
      throw new ParameterException(
          spec.commandLine(), "-o " + to + ": a record is written as .html, .pdf or .xlsx");
    }
    Path sealFile = SealCheck.sealOf(to);
    for (Path one : List.of(to, sealFile)) {
      if (Files.exists(one) && !force) {
        output.err().println("ringout: " + one + " exists; write over it with --force");
        return ExitCode.CANNOT_WRITE;
      }
    }
    Optional<KeyPair> key = sealKey.map(this::keyPair);
    Optional<Seal> before = Optional.empty();
    if (continues.isPresent()) {
      before = new SealCheck(output, spec).unchanged(continues.get());
      if (before.isEmpty()) {
        return ExitCode.NOT_UNDERSTOOD;
      }
    }
    List<Path> files = new ArrayList<>(List.of(harnessPath));
    files.addAll(readingsFiles);
    waivers.ifPresent(files::add);
    Inputs inputs = new Inputs(files);
    Optional<Harness> harness = inputs.harness(harnessPath);
    List<Waiver> accepted = waivers.map(inputs::waivers).orElse(List.of());
    if (harness.isEmpty() || inputs.problems().hasErrors()) {
      inputs.findProblems(readingsFiles);
      output.err().print(ProblemText.write(inputs.problems().list()));
      return inputs.exitCode();
    }
    ReadingSet readings =
        touched.before(
            inputs.ofOneUnit(harness.get(), inputs.readings(readingsFiles, harness.get()), unit),
            spec,
            harness.get());
    List<Seal.Earlier> earlier =
        before
            .map(one -> earlier(one, harnessPath, harness.get(), readings, inputs))
            .orElse(List.of());
    output.err().print(ProblemText.write(inputs.problems().list()));
    if (inputs.problems().hasErrors()) {
      return inputs.exitCode();
    }
    TestRecord record;
    try {
      record = record(harness.get(), readings, accepted, inputs, files, before, earlier, to);
    } catch (IOException e) {
      output.err().println("ringout: an input can't be read again: " + e.getMessage());
      return ExitCode.MISSING_INPUT;
    }
    RecordContent content = RecordContent.of(record);
    int code = write(to, name, content);
    if (code != ExitCode.DONE) {
      return code;
    }
    return seal(record, content.digest(), to, sealFile, before, key);
  }

  private KeyPair keyPair(Path file) {
    try {
      return Keys.pair(file);
    } catch (Keys.Unusable e) {
      throw new ParameterException(spec.commandLine(), "--seal: " + e.getMessage());
    }
  }

  private int write(Path to, String name, RecordContent record) {
    if (name.endsWith(".html")) {
      return output.write(to, RecordHtml.write(record, paper), force);
    }
    if (name.endsWith(".pdf")) {
      return output.write(
          to, beside -> PdfFile.writeTagged(beside, RecordHtml.forPaper(record, paper)), force);
    }
    PrintForm form = PrintForm.tested(record.title(), paper);
    return output.write(
        to, beside -> OutFile.workbook(beside, RecordSheets.of(record), form), force);
  }

  private int seal(
      TestRecord record,
      String contentDigest,
      Path to,
      Path sealFile,
      Optional<Seal> before,
      Optional<KeyPair> key) {
    String name = String.valueOf(to.getFileName());
    try {
      Seal seal =
          new Seal(
              new Seal.Named(name, Digest.of(to)),
              contentDigest,
              Optional.of(UnitOfTest.of(record.result().harness(), record.result().readings())),
              record.inputs(),
              record.program(),
              record.result().verdict().word(),
              record.earlier(),
              RecordContent.failed(record, name),
              notes(before));
      int code = output.write(sealFile, key.map(seal::signed).orElseGet(seal::text), force);
      if (code != ExitCode.DONE) {
        return code;
      }
    } catch (IOException e) {
      output.err().println("ringout: " + to + " can't be read again: " + e.getMessage());
      return ExitCode.CANNOT_WRITE;
    }
    key.ifPresent(
        one -> output.out().println("Signed by key " + Keys.fingerprint(one.getPublic())));
    return ExitCode.of(record.result().verdict());
  }

  /** The records before this one; what keeps it from continuing them is among the problems. */
  private List<Seal.Earlier> earlier(
      Seal before, Path harnessPath, Harness harness, ReadingSet readings, Inputs inputs) {
    TestedUnit.Continuation continuation =
        UnitOfTest.of(harness, readings)
            .after(before.record().name(), before.unit(), sameUnit, unit.anyRevision());
    for (TestedUnit.Objection one : continuation.objections()) {
      Place ofList = Place.of(inputs.shownName(harnessPath));
      Place place =
          one.about() == TestedUnit.About.LIST
              ? ofList
              : readings.jobs().stream()
                  .findFirst()
                  .map(job -> job.place("serial number"))
                  .orElse(ofList);
      inputs.problems().error(place, one.text());
    }
    List<Seal.Earlier> earlier = new ArrayList<>(before.earlier());
    earlier.add(
        new Seal.Earlier(
            before.record().name(),
            before.record().sha256(),
            before.verdict(),
            continuation.vouchedFor()));
    return List.copyOf(earlier);
  }

  private List<String> notes(Optional<Seal> before) {
    List<String> notes = new ArrayList<>(before.map(Seal::notes).orElse(List.of()));
    notes.addAll(done);
    return notes;
  }

  private TestRecord record(
      Harness harness,
      ReadingSet readings,
      List<Waiver> accepted,
      Inputs inputs,
      List<Path> files,
      Optional<Seal> before,
      List<Seal.Earlier> earlier,
      Path to)
      throws IOException {
    Tables read = tables.read(spec);
    CheckResult result = CheckResult.of(harness, readings, read, date, inputs.problems().list());
    Optional<LocalDate> day = TestDay.of(readings, date);
    Map<String, String> sources = new LinkedHashMap<>();
    for (String table : Tables.names()) {
      sources.put(
          table,
          read.rows(table).stream()
              .map(Tables.Entry::citation)
              .distinct()
              .reduce((one, other) -> one + "; " + other)
              .orElse(""));
    }
    return new TestRecord(
        result,
        Review.of(result.circuit(), read, CopperWire.published(), accepted, day),
        day,
        digests(files, to),
        earlier,
        before.map(Seal::failed).orElse(List.of()),
        notes(before),
        WorkPapers.of(harness, read, CopperWire.published(), Set.of(), new SleeveText("{wire}"))
            .sheets(),
        UnitMap.of(harness),
        sources,
        Version.text());
  }

  /** Each file by its way from the record's folder: so a folder can be moved as a whole. */
  private static List<Seal.Named> digests(List<Path> files, Path to) throws IOException {
    Path folder = SealCheck.folderOf(to);
    List<Seal.Named> digests = new ArrayList<>();
    for (Path file : files) {
      for (Map.Entry<Path, String> one : Digest.ofFileOrFolder(file).entrySet()) {
        Path way = folder.relativize(one.getKey().toAbsolutePath().normalize());
        digests.add(new Seal.Named(way.toString().replace('\\', '/'), one.getValue()));
      }
    }
    return digests;
  }
}
