package dev.ringout;

import dev.ringout.check.CheckResult;
import dev.ringout.jobs.AddJob;
import dev.ringout.jobs.Answer;
import dev.ringout.jobs.AsFoundJob;
import dev.ringout.jobs.CheckJob;
import dev.ringout.jobs.DiffJob;
import dev.ringout.jobs.FileInputs;
import dev.ringout.jobs.FoundJob;
import dev.ringout.jobs.ImportJob;
import dev.ringout.jobs.Inputs;
import dev.ringout.jobs.LaterJob;
import dev.ringout.jobs.LedTests;
import dev.ringout.jobs.LotJob;
import dev.ringout.jobs.MetersJob;
import dev.ringout.jobs.PeopleJob;
import dev.ringout.jobs.PlanJob;
import dev.ringout.jobs.PracticeJob;
import dev.ringout.jobs.Program;
import dev.ringout.jobs.RecordJob;
import dev.ringout.jobs.ReviewJob;
import dev.ringout.jobs.StationJob;
import dev.ringout.jobs.Stopped;
import dev.ringout.jobs.StoreAtHand;
import dev.ringout.jobs.StoreCare;
import dev.ringout.jobs.TraceJob;
import dev.ringout.jobs.TryMeterJob;
import dev.ringout.jobs.UnitsJob;
import dev.ringout.jobs.VerifyJob;
import dev.ringout.jobs.WorkJob;
import dev.ringout.jobs.WrongRequest;
import dev.ringout.meter.MeterTrouble;
import dev.ringout.plan.TestPlan;
import dev.ringout.store.StoreTrouble;
import dev.ringout.work.FoundList;
import dev.ringout.work.FoundWire;
import dev.ringout.work.WorkPapers;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * The library's door: what the commands do, for another program. A request goes in; the answer is a
 * result made of facts, or a refusal that says everything that is wrong in the inputs.
 *
 * <p>Nothing is kept between two calls, and several threads may use one door. See
 * docs/how-to/use-from-java.md.
 */
public final class Ringout {
  private final Inputs.Source source;
  private final StoreAtHand store;

  private Ringout(Inputs.Source source, StoreAtHand store) {
    this.source = source;
    this.store = store;
  }

  /** A door whose inputs are files. */
  public static Ringout onFiles() {
    return on(FileInputs::new);
  }

  /** A door whose inputs come from elsewhere. */
  public static Ringout on(Inputs.Source source) {
    return new Ringout(source, new StoreAtHand("", Map.of()));
  }

  /** A door whose inputs are files, and units of a store where they are named. */
  public static Ringout onFilesAnd(StoreAtHand store) {
    return new Ringout(named -> FileInputs.with(named, store), store);
  }

  /** The program's name and version. */
  public static String version() {
    return Program.text();
  }

  /**
   * Holds a unit's readings against its list.
   *
   * @throws WrongRequest where the request names what the list does not have
   */
  public Answer<CheckResult> check(CheckJob.Request request) throws WrongRequest {
    List<Path> named = request.unit().named();
    named.addAll(request.others());
    return CheckJob.run(request, source.apply(named));
  }

  /** Brings filled test sheets into the store, each as a whole or not at all. */
  public Answer<AddJob.Result> add(AddJob.Request request) {
    return AddJob.run(request, store);
  }

  /**
   * Adds to a unit of the store what is said of it afterwards: a note, what was taken back, a
   * signature.
   *
   * @throws StoreTrouble where the store can't be used, or has no such unit
   * @throws WrongRequest where a cell holds no reading of the unit, or nobody may sign so
   */
  public Answer<LaterJob.Result> later(LaterJob.Request request) throws StoreTrouble, WrongRequest {
    return LaterJob.run(request, store);
  }

  /**
   * Lists the units of the store, or tells the history of one.
   *
   * @throws StoreTrouble where the store can't be used, or has no such unit
   */
  public UnitsJob.Result units(UnitsJob.Request request) throws StoreTrouble {
    return UnitsJob.run(request, store);
  }

  /**
   * Keeps what a station carries into every test.
   *
   * @throws StoreTrouble where the store can't be written
   */
  public Answer<StationJob.Result> station(StationJob.Request request) throws StoreTrouble {
    return StationJob.run(request, store);
  }

  /** Tests that are led at a bench, entry by entry. */
  public LedTests ledTests() {
    return new LedTests(store);
  }

  /** The people of the shop: who may sign in, and who does. */
  public PeopleJob people() {
    return new PeopleJob(store);
  }

  /** Makes the store, looks through it, copies it. */
  public StoreCare store() {
    return new StoreCare(store);
  }

  /**
   * Lists the ports of this machine and the profiles of meters.
   *
   * @throws MeterTrouble where a profile can't be read
   */
  public MetersJob.Result meters(MetersJob.Request request) throws MeterTrouble {
    return MetersJob.run(request);
  }

  /** Talks to a meter for some seconds and tells all of it. */
  public TryMeterJob.Result tryMeter(TryMeterJob.Request request) {
    return TryMeterJob.run(request);
  }

  /**
   * Serves a practice meter on this machine's own network.
   *
   * @throws WrongRequest where the tables can't be used
   * @throws IOException where the port can't be had
   */
  public Answer<PracticeJob.Running> practice(PracticeJob.Request request)
      throws WrongRequest, IOException {
    return PracticeJob.run(request, source.apply(request.list().stream().toList()));
  }

  /**
   * Puts many units of one list side by side.
   *
   * @throws WrongRequest where the tables can't be used
   */
  public Answer<LotJob.Result> lot(LotJob.Request request) throws WrongRequest {
    return LotJob.run(request, source);
  }

  /**
   * Plans the steps that prove a unit, or what its readings leave open.
   *
   * @throws WrongRequest where the request names what the list does not have
   */
  public Answer<TestPlan> plan(PlanJob.Request request) throws WrongRequest {
    List<Path> named = request.unit().named();
    request.job().ifPresent(named::add);
    return PlanJob.run(request, source.apply(named));
  }

  /**
   * Makes the papers from which a unit is wired.
   *
   * @throws WrongRequest where the request names what the list or the schemes do not have
   */
  public Answer<WorkPapers> work(WorkJob.Request request) throws WrongRequest {
    return WorkJob.run(request, source.apply(List.of(request.list())));
  }

  /**
   * Looks through the paper before a wire is cut.
   *
   * @throws WrongRequest where the tables can't be used
   */
  public Answer<ReviewJob.Result> review(ReviewJob.Request request) throws WrongRequest {
    List<Path> named = new ArrayList<>(List.of(request.list()));
    request.waivers().ifPresent(named::add);
    return ReviewJob.run(request, source.apply(named));
  }

  /**
   * Follows a net.
   *
   * @throws WrongRequest where a point or a position is none of the list's
   */
  public Answer<TraceJob.Result> trace(TraceJob.Request request) throws WrongRequest {
    return TraceJob.run(request, source.apply(List.of(request.list())));
  }

  /**
   * Compares two revisions.
   *
   * @throws WrongRequest where the request names what the lists do not have
   */
  public Answer<DiffJob.Result> diff(DiffJob.Request request) throws WrongRequest {
    return DiffJob.run(request, source.apply(request.named()));
  }

  /**
   * Says where a wire belongs that was found on a point.
   *
   * @throws WrongRequest where the list has no such wire or point
   */
  public Answer<FoundWire> found(FoundJob.Request request) throws WrongRequest {
    return FoundJob.run(request, source.apply(List.of(request.list())));
  }

  /** Reads a wire list as somebody else laid it out. */
  public Answer<ImportJob.Result> importList(ImportJob.Request request) {
    return ImportJob.run(request, source.apply(List.of(request.list())));
  }

  /** Builds a wire list from the readings of a unit for which there is none. */
  public Answer<FoundList> asFound(AsFoundJob.Request request) {
    return AsFoundJob.run(request, source.apply(request.readings()));
  }

  /**
   * Makes the record to sign. It is written by whoever asked, and then sealed by its digest.
   *
   * @throws WrongRequest where the request names what the list does not have, or no key
   * @throws Stopped where the record before is not as it was sealed, or an input vanished
   */
  public Answer<RecordJob.Result> record(RecordJob.Request request) throws WrongRequest, Stopped {
    List<Path> named = request.unit().named();
    request.waivers().ifPresent(named::add);
    return RecordJob.run(request, source.apply(named));
  }

  /**
   * Says whether a record and all that it was made from are as they were sealed.
   *
   * @throws WrongRequest where the trusted key is none
   * @throws Stopped where there is no record or no seal
   */
  public VerifyJob.Result verify(VerifyJob.Request request) throws WrongRequest, Stopped {
    return VerifyJob.run(request, store);
  }
}
