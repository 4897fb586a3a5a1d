package dev.ringout.jobs;

import dev.ringout.check.CheckResult;
import dev.ringout.check.TestDay;
import dev.ringout.check.UnitOfTest;
import dev.ringout.circuit.UnitMap;
import dev.ringout.harness.Waiver;
import dev.ringout.jobs.WrongRequest.Part;
import dev.ringout.record.FailedFirst;
import dev.ringout.record.NamesByIds;
import dev.ringout.record.RecordContent;
import dev.ringout.record.TestRecord;
import dev.ringout.review.Review;
import dev.ringout.seal.KeptInput;
import dev.ringout.seal.KeyFile;
import dev.ringout.seal.Objection;
import dev.ringout.seal.Seal;
import dev.ringout.seal.TestedUnit;
import dev.ringout.source.OptionNames;
import dev.ringout.source.Place;
import dev.ringout.standards.CopperWire;
import dev.ringout.standards.Tables;
import dev.ringout.words.ObjectionSentences;
import dev.ringout.work.SleeveText;
import dev.ringout.work.WorkPapers;
import java.nio.file.Path;
import java.security.KeyPair;
import java.security.PublicKey;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The record to sign, and its seal. */
public final class RecordJob {
  private RecordJob() {}

  /**
   * What is asked.
   *
   * @param waivers what is accepted of the paper
   * @param date the day of the test; else the last that the readings give
   * @param before the record before this one
   * @param done what was done since that record
   * @param key the private key to seal with
   * @param to the file that the record is to be: inputs are named from its folder
   * @param ids a list of ids, by which people are to stand in the record
   */
  public record Request(
      UnitRequest unit,
      Optional<Path> waivers,
      Optional<LocalDate> date,
      Optional<Before> before,
      List<String> done,
      Optional<KeyFile> key,
      Path to,
      Optional<Path> ids) {
    /** What is given can't be changed afterwards. */
    public Request {
      done = List.copyOf(done);
    }

    /** A record in which people stand by their names. */
    public Request(
        UnitRequest unit,
        Optional<Path> waivers,
        Optional<LocalDate> date,
        Optional<Before> before,
        List<String> done,
        Optional<KeyFile> key,
        Path to) {
      this(unit, waivers, date, before, done, key, to, Optional.empty());
    }

    /** A first record of a unit, not signed by a key. */
    public static Request of(UnitRequest unit, Path to) {
      return new Request(
          unit,
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          List.of(),
          Optional.empty(),
          to);
    }
  }

  /**
   * A record that another continues.
   *
   * @param sameUnit whether somebody vouches that it is of the same unit and list, where its seal
   *     does not say so
   * @param trusted public keys whose signatures of it count, beside that of the key to seal with
   */
  public record Before(Path record, boolean sameUnit, List<Path> trusted) {
    /** What is given can't be changed afterwards. */
    public Before {
      trusted = List.copyOf(trusted);
    }

    /** A record for which nobody vouches, signed by nobody or with the key of this one. */
    public static Before of(Path record) {
      return new Before(record, false, List.of());
    }
  }

  /**
   * A record to write, and what is needed to seal it once it is written.
   *
   * @param content the same for a page, a PDF and a workbook
   * @param names of people that stand in it as ids
   * @param folders of which every table was an input, by their ways from the record's folder
   * @param said what was said of the unit beside the files
   */
  public record Result(
      TestRecord record,
      RecordContent content,
      NamesByIds names,
      List<String> folders,
      List<Seal.Said> said,
      Optional<KeyPair> key,
      Path to) {
    /** What is given can't be changed afterwards. */
    public Result {
      folders = List.copyOf(folders);
      said = List.copyOf(said);
    }

    /**
     * The text of the seal, signed where there is a key.
     *
     * @param now when it is signed
     */
    public String seal(String sha256OfWritten, Instant now) {
      String name = String.valueOf(to.getFileName());
      Seal seal =
          new Seal(
              new Seal.Named(name, sha256OfWritten),
              content.digest(),
              Optional.of(UnitOfTest.of(record.result().harness(), record.result().readings())),
              record.inputs(),
              folders,
              record.kept(),
              said,
              record.program(),
              record.result().verdict().word(),
              record.earlier(),
              FailedFirst.of(record, name),
              record.notes().stream().map(names::in).toList());
      return key.map(pair -> seal.signed(pair, now)).orElseGet(seal::text);
    }
  }

  /**
   * Makes a record.
   *
   * @throws WrongRequest where the request names what the list does not have, or no key
   * @throws Stopped where the record before is not as it was sealed, or an input vanished
   */
  public static Answer<Result> run(Request request, Inputs inputs) throws WrongRequest, Stopped {
    Optional<KeyPair> key = Optional.empty();
    if (request.key().isPresent()) {
      key = Optional.of(SigningKey.read(request.key().get(), inputs));
    }
    Optional<SealFile> before = Optional.empty();
    if (request.before().isPresent()) {
      before = Optional.of(before(request.before().get(), key, request.to()));
    }
    Optional<UnitAtHand> unit = UnitAtHand.read(request.unit(), inputs);
    List<Waiver> waivers = request.waivers().map(inputs::waivers).orElse(List.of());
    if (unit.isEmpty()) {
      return Answer.refused(inputs);
    }
    List<Integer> underWay = inputs.history(request.unit().readings()).underWay();
    if (key.isPresent() && !underWay.isEmpty()) {
      throw new WrongRequest(
              Part.SEAL_KEY,
              "test " + underWay.get(0) + " is still under way at a bench: end it, then sign")
          .after(inputs);
    }
    List<Seal.Earlier> earlier =
        before.map(one -> earlier(one, request, unit.get(), inputs)).orElse(List.of());
    if (inputs.problems().hasErrors()) {
      return Answer.refused(inputs);
    }
    TestRecord record;
    NamesByIds names = NamesByIds.NONE;
    try {
      record = record(request, unit.get(), waivers, before.map(SealFile::seal), earlier, inputs);
      if (request.ids().isPresent()) {
        names = IdsOfPeople.read(request.ids().get(), record);
      }
    } catch (WrongRequest e) {
      throw e.after(inputs);
    }
    return Answer.of(
        new Result(
            record,
            RecordContent.of(record, names),
            names,
            sealed(request, inputs).folders(),
            said(request),
            key,
            request.to()),
        inputs);
  }

  /**
   * The record before, as it may be continued: it, and all that this record tells of what was
   * before, is signed with it.
   */
  private static SealFile before(Before before, Optional<KeyPair> key, Path to)
      throws WrongRequest, Stopped {
    List<PublicKey> known =
        new ArrayList<>(KnownKeys.read(before.trusted(), Optional.empty()).given());
    key.map(KeyPair::getPublic).ifPresent(known::add);
    SealFile file = SealFile.toContinue(before.record(), known);
    String name = String.valueOf(to.getFileName());
    if (file.isNamed(name)) {
      throw Stopped.notUnderstood(
          before.record()
              + " or a record before it is called "
              + name
              + " too; they are to lie beside each other, so give this one another name");
    }
    return file;
  }

  /** The records before this one; what keeps it from continuing them is among the problems. */
  private static List<Seal.Earlier> earlier(
      SealFile sealed, Request request, UnitAtHand unit, Inputs inputs) {
    Seal before = sealed.seal();
    TestedUnit.Continuation continuation =
        UnitOfTest.of(unit.harness(), unit.readings())
            .after(
                before.record().name(),
                before.unit(),
                request.before().map(Before::sameUnit).orElse(false),
                request.unit().said().anyRevision());
    Place ofList = Place.of(inputs.shownName(request.unit().list()));
    Place ofUnit =
        unit.readings().jobs().stream()
            .findFirst()
            .map(job -> job.place("serial number"))
            .orElse(ofList);
    for (Objection objection : continuation.objections()) {
      inputs
          .problems()
          .error(
              objection.about() == Objection.About.LIST ? ofList : ofUnit,
              ObjectionSentences.of(objection));
    }
    refuseLess(before, ofUnit, request, inputs);
    warnOfForks(sealed, request, inputs);
    List<Seal.Earlier> earlier = new ArrayList<>(before.earlier());
    earlier.add(
        new Seal.Earlier(
            before.record().name(),
            before.record().sha256(),
            before.verdict(),
            sealed.sha256(),
            continuation.vouchedFor()));
    return List.copyOf(earlier);
  }

  /** What was read of a unit of the store before is there still, or this is another store. */
  private static void refuseLess(Seal before, Place ofUnit, Request request, Inputs inputs) {
    List<KeptInput.Test> now =
        sealed(request, inputs).kept().stream().flatMap(one -> one.asTest().stream()).toList();
    for (KeptInput kept : before.kept()) {
      Optional<KeptInput.Test> test = kept.asTest();
      if (test.isPresent()
          && !now.isEmpty()
          && now.stream().noneMatch(one -> one.holds(test.get()))) {
        inputs
            .problems()
            .error(
                ofUnit,
                before.record().name()
                    + " was made from test "
                    + test.get().number()
                    + ", "
                    + test.get().sheet()
                    + ", and that is not all among these readings: is it another store?");
      }
    }
  }

  /** Of two retests of one record each would tell less than all. */
  private static void warnOfForks(SealFile before, Request request, Inputs inputs) {
    String to = String.valueOf(request.to().getFileName());
    Set<Path> folders = new LinkedHashSet<>();
    folders.add(VerifyJob.folderOf(request.to()));
    request.before().map(Before::record).map(VerifyJob::folderOf).ifPresent(folders::add);
    for (Path folder : folders) {
      for (String other : Chain.alreadyContinuing(folder, before, to)) {
        inputs
            .problems()
            .warning(
                Place.of(before.seal().record().name()),
                "is continued already by "
                    + other
                    + ": a record that goes on from "
                    + before.seal().record().name()
                    + " too makes two histories of one unit");
      }
    }
  }

  private static TestRecord record(
      Request request,
      UnitAtHand unit,
      List<Waiver> waivers,
      Optional<Seal> before,
      List<Seal.Earlier> earlier,
      Inputs inputs)
      throws WrongRequest {
    Tables tables = OwnTables.over(request.unit().ownTables(), inputs);
    CopperWire copper = CopperWire.published();
    CheckResult result =
        CheckResult.of(
            unit.harness(), unit.readings(), tables, request.date(), inputs.problems().list());
    Optional<LocalDate> day = TestDay.of(unit.readings(), request.date());
    List<String> notes = new ArrayList<>(before.map(Seal::notes).orElse(List.of()));
    notes.addAll(request.done());
    Inputs.Sealed sealed = sealed(request, inputs);
    return new TestRecord(
        result,
        Review.of(result.circuit(), tables, copper, waivers, day),
        day,
        sealed.files(),
        sealed.kept(),
        earlier,
        before.map(Seal::failed).orElse(List.of()),
        notes,
        inputs.history(request.unit().readings()),
        WorkPapers.of(unit.harness(), tables, copper, Set.of(), new SleeveText("{wire}")).sheets(),
        UnitMap.of(unit.harness()),
        sources(tables),
        Program.text());
  }

  private static Map<String, String> sources(Tables tables) {
    Map<String, String> sources = new LinkedHashMap<>();
    for (String table : Tables.names()) {
      sources.put(
          table,
          tables.rows(table).stream()
              .map(Tables.Entry::citation)
              .distinct()
              .reduce((one, other) -> one + "; " + other)
              .orElse(""));
    }
    return sources;
  }

  private static Inputs.Sealed sealed(Request request, Inputs inputs) {
    List<Path> files = new ArrayList<>(request.unit().named());
    request.waivers().ifPresent(files::add);
    request.unit().ownTables().ifPresent(files::add);
    return inputs.sealed(files, VerifyJob.folderOf(request.to()));
  }

  /** What was said beside the files, as far as the verdict may rest on it. */
  private static List<Seal.Said> said(Request request) {
    List<Seal.Said> said = new ArrayList<>();
    request.unit().said().serialNumber().ifPresent(one -> say(said, OptionNames.SERIAL, one));
    if (request.unit().said().anyRevision()) {
      say(said, OptionNames.ANY_REVISION, "");
    }
    request.unit().touched().wires().forEach(one -> say(said, OptionNames.TOUCHED, one));
    request.unit().touched().items().forEach(one -> say(said, OptionNames.OPENED, one));
    request.date().ifPresent(one -> say(said, OptionNames.DATE, one.toString()));
    if (request.before().filter(Before::sameUnit).isPresent()) {
      say(said, OptionNames.SAME_UNIT, "");
    }
    return List.copyOf(said);
  }

  private static void say(List<Seal.Said> said, String option, String value) {
    said.add(new Seal.Said(option, value));
  }
}
