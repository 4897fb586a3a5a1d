package dev.ringout.jobs;

import dev.ringout.check.CheckResult;
import dev.ringout.check.TestDay;
import dev.ringout.check.UnitOfTest;
import dev.ringout.circuit.UnitMap;
import dev.ringout.harness.Waiver;
import dev.ringout.jobs.WrongRequest.Part;
import dev.ringout.record.FailedFirst;
import dev.ringout.record.RecordContent;
import dev.ringout.record.TestRecord;
import dev.ringout.review.Review;
import dev.ringout.seal.Keys;
import dev.ringout.seal.Objection;
import dev.ringout.seal.Seal;
import dev.ringout.seal.TestedUnit;
import dev.ringout.source.Place;
import dev.ringout.standards.CopperWire;
import dev.ringout.standards.Tables;
import dev.ringout.words.ObjectionSentences;
import dev.ringout.work.SleeveText;
import dev.ringout.work.WorkPapers;
import java.io.IOException;
import java.nio.file.Path;
import java.security.KeyPair;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
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
   */
  public record Request(
      UnitRequest unit,
      Optional<Path> waivers,
      Optional<LocalDate> date,
      Optional<Before> before,
      List<String> done,
      Optional<Path> key,
      Path to) {
    /** What is given can't be changed afterwards. */
    public Request {
      done = List.copyOf(done);
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
   */
  public record Before(Path record, boolean sameUnit) {}

  /**
   * A record to write, and what is needed to seal it once it is written.
   *
   * @param content the same for a page, a PDF and a workbook
   */
  public record Result(TestRecord record, RecordContent content, Optional<KeyPair> key, Path to) {

    /** The text of the seal, signed where there is a key. */
    public String seal(String sha256OfWritten) {
      String name = String.valueOf(to.getFileName());
      Seal seal =
          new Seal(
              new Seal.Named(name, sha256OfWritten),
              content.digest(),
              Optional.of(UnitOfTest.of(record.result().harness(), record.result().readings())),
              record.inputs(),
              record.program(),
              record.result().verdict().word(),
              record.earlier(),
              FailedFirst.of(record, name),
              record.notes());
      return key.map(seal::signed).orElseGet(seal::text);
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
      key = Optional.of(keyPair(request.key().get()));
    }
    Optional<Seal> before = Optional.empty();
    if (request.before().isPresent()) {
      before = Optional.of(VerifyJob.unchanged(request.before().get().record()));
    }
    Optional<UnitAtHand> unit = UnitAtHand.read(request.unit(), inputs);
    List<Waiver> waivers = request.waivers().map(inputs::waivers).orElse(List.of());
    if (unit.isEmpty()) {
      return Answer.refused(inputs);
    }
    List<Seal.Earlier> earlier =
        before.map(one -> earlier(one, request, unit.get(), inputs)).orElse(List.of());
    if (inputs.problems().hasErrors()) {
      return Answer.refused(inputs);
    }
    TestRecord record;
    try {
      record = record(request, unit.get(), waivers, before, earlier, inputs);
    } catch (WrongRequest e) {
      throw e.after(inputs);
    }
    return Answer.of(new Result(record, RecordContent.of(record), key, request.to()), inputs);
  }

  private static KeyPair keyPair(Path file) throws WrongRequest {
    try {
      return Keys.pair(file);
    } catch (Keys.Unusable e) {
      throw new WrongRequest(Part.SEAL_KEY, String.valueOf(e.getMessage()));
    }
  }

  /** The records before this one; what keeps it from continuing them is among the problems. */
  private static List<Seal.Earlier> earlier(
      Seal before, Request request, UnitAtHand unit, Inputs inputs) {
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
    List<Seal.Earlier> earlier = new ArrayList<>(before.earlier());
    earlier.add(
        new Seal.Earlier(
            before.record().name(),
            before.record().sha256(),
            before.verdict(),
            continuation.vouchedFor()));
    return List.copyOf(earlier);
  }

  private static TestRecord record(
      Request request,
      UnitAtHand unit,
      List<Waiver> waivers,
      Optional<Seal> before,
      List<Seal.Earlier> earlier,
      Inputs inputs)
      throws WrongRequest, Stopped {
    Tables tables = OwnTables.over(request.unit().ownTables());
    CopperWire copper = CopperWire.published();
    CheckResult result =
        CheckResult.of(
            unit.harness(), unit.readings(), tables, request.date(), inputs.problems().list());
    Optional<LocalDate> day = TestDay.of(unit.readings(), request.date());
    List<String> notes = new ArrayList<>(before.map(Seal::notes).orElse(List.of()));
    notes.addAll(request.done());
    return new TestRecord(
        result,
        Review.of(result.circuit(), tables, copper, waivers, day),
        day,
        digests(request, inputs),
        earlier,
        before.map(Seal::failed).orElse(List.of()),
        notes,
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

  private static List<Seal.Named> digests(Request request, Inputs inputs) throws Stopped {
    List<Path> files = new ArrayList<>(List.of(request.unit().list()));
    files.addAll(request.unit().readings());
    request.waivers().ifPresent(files::add);
    try {
      return inputs.digests(files, VerifyJob.folderOf(request.to()));
    } catch (IOException e) {
      throw Stopped.missing("an input can't be read again: " + e.getMessage());
    }
  }
}
