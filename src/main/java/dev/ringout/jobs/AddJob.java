package dev.ringout.jobs;

import dev.ringout.check.CheckResult;
import dev.ringout.harness.Harness;
import dev.ringout.intake.OneUnit;
import dev.ringout.readings.Job;
import dev.ringout.readings.ReadingSet;
import dev.ringout.seal.Digest;
import dev.ringout.sheet.TabularFile;
import dev.ringout.source.FileBytes;
import dev.ringout.source.Place;
import dev.ringout.source.Problem;
import dev.ringout.source.Problems;
import dev.ringout.source.UnusableInput;
import dev.ringout.standards.Tables;
import dev.ringout.store.Entry;
import dev.ringout.store.EntryKind;
import dev.ringout.store.HarnessFile;
import dev.ringout.store.KeptSheets;
import dev.ringout.store.NewSession;
import dev.ringout.store.Session;
import dev.ringout.store.Store;
import dev.ringout.store.StoreFinding;
import dev.ringout.store.StoreTrouble;
import dev.ringout.store.StoredUnit;
import dev.ringout.store.Stores;
import dev.ringout.units.Numbers;
import dev.ringout.words.StoreWords;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;

/** Brings filled test sheets into a store, each as a whole or not at all. */
public final class AddJob {
  private static final int BYTES_OF_AN_ID = 16;
  private static final HexFormat HEX = HexFormat.of();

  private final Request request;
  private final StoreAtHand store;
  private final List<Path> named;
  private final Harness harness;
  private final HarnessFile list;

  /**
   * What is asked.
   *
   * @param list the harness file, or a unit of the store that is made to the same
   * @param sheets filled test sheets, or folders of them
   * @param now when they are brought in
   */
  public record Request(Path list, List<Path> sheets, Instant now) {
    /** What is given can't be changed afterwards. */
    public Request {
      sheets = List.copyOf(sheets);
    }
  }

  /** What became of a sheet. */
  public enum State {
    ADDED,
    /** The same sheet of the same unit was there already: nothing was added. */
    WAS_THERE,
    /** It can't be understood, or is not of this list: nothing was added. */
    REFUSED
  }

  /**
   * What became of a sheet.
   *
   * @param unit its serial number; empty where it gives none
   * @param verdict on the unit with this sheet; absent where nothing was added
   */
  public record AddedSheet(
      String file,
      String unit,
      State state,
      Optional<KeptVerdict> verdict,
      List<Problem> problems) {
    /** What is given can't be changed afterwards. */
    public AddedSheet {
      problems = List.copyOf(problems);
    }
  }

  /**
   * What became of all of them.
   *
   * @param stopped why it did not go on to the end; what was acknowledged before is kept
   */
  public record Result(List<AddedSheet> sheets, Optional<StoreTrouble> stopped) {
    /** What is given can't be changed afterwards. */
    public Result {
      sheets = List.copyOf(sheets);
    }
  }

  private AddJob(
      Request request, StoreAtHand store, List<Path> named, Harness harness, HarnessFile list) {
    this.request = request;
    this.store = store;
    this.named = named;
    this.harness = harness;
    this.list = list;
  }

  /** Brings them in, one after the other. */
  public static Answer<Result> run(Request request, StoreAtHand store) {
    FileInputs folders = FileInputs.with(request.sheets(), store);
    List<Path> named = new ArrayList<>(List.of(request.list()));
    request.sheets().forEach(sheet -> named.addAll(folders.sheets(sheet)));
    FileInputs inputs = FileInputs.with(named, store).keepingBytes();
    folders.problems().list().forEach(inputs.problems()::add);
    Optional<Harness> harness = inputs.soundHarness(request.list());
    if (harness.isEmpty()) {
      return Answer.refused(inputs);
    }
    HarnessFile list = inputs.listAsKept(request.list(), harness.get());
    AddJob job = new AddJob(request, store, named, harness.get(), list);
    return Answer.of(job.all(), inputs);
  }

  private Result all() {
    List<AddedSheet> done = new ArrayList<>();
    try {
      for (Path sheet : named.subList(1, named.size())) {
        done.add(add(sheet));
      }
      return new Result(done, Optional.empty());
    } catch (StoreTrouble e) {
      return new Result(done, Optional.of(e));
    }
  }

  private AddedSheet add(Path sheet) throws StoreTrouble {
    FileInputs inputs = FileInputs.with(named, store).keepingBytes();
    ReadingSet readings = inputs.readings(List.of(sheet), harness);
    String file = inputs.shownName(sheet);
    String serial = readings.serialNumber();
    if (serial.isEmpty() && !inputs.problems().hasErrors()) {
      inputs
          .problems()
          .error(Place.of(file), "gives no serial number: write it on its sheet Job, then add it");
    }
    report(readings, inputs.problems());
    if (inputs.problems().hasErrors()) {
      return notAdded(State.REFUSED, file, serial, inputs);
    }
    Store open = store.openToWrite();
    String key = FromStore.key(serial);
    String digest = inputs.digest(sheet);
    String id = id(key, digest);
    Optional<StoredUnit> unit = open.unit(key, list.digest());
    List<Session> before = unit.isEmpty() ? List.of() : open.sessions(unit.get());
    Optional<Session> same = before.stream().filter(one -> one.id().equals(id)).findFirst();
    if (same.isPresent()) {
      lookAtTheSame(same.get(), before.size(), unit.orElseThrow(), file, inputs.problems());
      State state = inputs.problems().hasErrors() ? State.REFUSED : State.WAS_THERE;
      return notAdded(state, file, serial, inputs);
    }
    refuseOtherFile(file, serial, key, open, inputs.problems());
    String name = Session.nameAmong(before, file, sheet.toString());
    Optional<CheckResult> result =
        inputs.problems().hasErrors()
            ? Optional.empty()
            : withEarlier(sheet, serial, name, before, inputs);
    if (result.isEmpty()) {
      return notAdded(State.REFUSED, file, serial, inputs);
    }
    KeptVerdict verdict = KeptVerdict.of(result.get());
    Session session = session(id, key, digest, name, readings);
    List<Entry.Draft> entries = new ArrayList<>(drafts(sheet, file, readings, inputs));
    entries.add(list.names());
    entries.add(new Entry.Draft(EntryKind.VERDICT, "", "", verdict.body()));
    Store.Added added = open.add(new NewSession(list, serial, session, sheet.toString(), entries));
    return new AddedSheet(
        file,
        serial,
        added == Store.Added.ADDED ? State.ADDED : State.WAS_THERE,
        Optional.of(verdict),
        inputs.problems().list());
  }

  private static AddedSheet notAdded(State state, String file, String serial, FileInputs inputs) {
    return new AddedSheet(file, serial, state, Optional.empty(), inputs.problems().list());
  }

  /** What is there is only the same where it is as it was written. */
  private void lookAtTheSame(
      Session same, int tests, StoredUnit unit, String file, Problems problems)
      throws StoreTrouble {
    if (same.number() < tests) {
      problems.warning(
          Place.of(file),
          "is test "
              + same.number()
              + " of "
              + tests
              + " of its unit already; if it was read once more since, its day or its times say so");
    }
    for (StoreFinding finding : Stores.broken(unit, store.openToWrite().chains(unit))) {
      problems.error(
          Place.of(file),
          "was there already, and is not as it was written: "
              + StoreWords.finding(finding)
              + "; see ringout store check");
    }
  }

  /** Two files of one list would make two units of one, and two lots. */
  private void refuseOtherFile(
      String file, String serial, String key, Store open, Problems problems) throws StoreTrouble {
    List<StoredUnit> like = open.unitsOfLikeLists(list);
    boolean hasHeader = !(list.title() + list.drawing() + list.revision()).isEmpty();
    if (hasHeader && like.stream().anyMatch(unit -> unit.key().equals(key))) {
      problems.error(
          Place.of(file),
          "its unit is kept with another file of the same list: give unit:"
              + serial
              + " as the list, or the list a revision of its own");
    } else if (hasHeader && !like.isEmpty()) {
      problems.warning(
          Place.of(list.file()),
          "is another file of a list that the store keeps already with "
              + Numbers.count(like.size(), "unit")
              + ", such as "
              + like.get(0).serial()
              + ": theirs is another lot; give unit:"
              + like.get(0).serial()
              + " as the list to put them into one");
    }
  }

  private void report(ReadingSet readings, Problems problems) {
    OneUnit.report(harness, readings, problems);
    OneUnit.reportOtherRevision(harness, readings, problems);
  }

  /** The verdict on the unit with all that was read of it; absent where the two do not fit. */
  private Optional<CheckResult> withEarlier(
      Path sheet, String serial, String name, List<Session> before, FileInputs own) {
    FileInputs inputs = FileInputs.with(named, store).naming(sheet, name);
    List<Path> all =
        before.isEmpty() ? List.of(sheet) : List.of(InputName.ofUnit(serial, list.digest()), sheet);
    ReadingSet readings = inputs.readings(all, harness);
    report(readings, inputs.problems());
    if (inputs.problems().hasErrors()) {
      inputs.problems().list().forEach(own.problems()::add);
      return Optional.empty();
    }
    return Optional.of(
        CheckResult.of(harness, readings, Tables.published(), inputs.problems().list()));
  }

  /** The same for the same bytes of the same unit, whoever brings them in and when. */
  private String id(String unitKey, String digest) {
    byte[] bytes =
        HEX.parseHex(
            Digest.of(unitKey + " " + list.digest() + " " + digest)
                .substring(0, 2 * BYTES_OF_AN_ID));
    // A UUID of version 8 (RFC 9562, 5.8): made by the program's own rule.
    bytes[6] = (byte) ((bytes[6] & 0x0f) | 0x80);
    bytes[8] = (byte) ((bytes[8] & 0x3f) | 0x80);
    return HEX.formatHex(bytes).replaceFirst("(.{8})(.{4})(.{4})(.{4})(.{12})", "$1-$2-$3-$4-$5");
  }

  private Session session(String id, String key, String digest, String file, ReadingSet readings) {
    return new Session(
        id,
        key,
        list.digest(),
        1,
        ofJob(readings, "station"),
        ofJob(readings, "operator"),
        ofJob(readings, Job.DATE),
        file,
        digest,
        Program.text(),
        request.now().toString());
  }

  private static String ofJob(ReadingSet readings, String name) {
    return readings.jobs().stream()
        .map(job -> job.value(name))
        .filter(value -> !value.isEmpty())
        .findFirst()
        .orElse("");
  }

  private List<Entry.Draft> drafts(
      Path sheet, String file, ReadingSet readings, FileInputs inputs) {
    RowsOfSheet rows = RowsOfSheet.of(readings);
    Problems remarks = new Problems();
    List<FileBytes> parts = inputs.bytes(sheet);
    try (TabularFile table = TabularFile.kept(Files.isDirectory(sheet), parts, file, remarks)) {
      return KeptSheets.drafts(table, file, remarks.list(), rows::draft);
    } catch (UnusableInput | IOException e) {
      throw new IllegalStateException("what was read once is read again", e);
    }
  }
}
