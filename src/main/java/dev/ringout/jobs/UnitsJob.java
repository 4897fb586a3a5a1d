package dev.ringout.jobs;

import dev.ringout.check.CheckResult;
import dev.ringout.harness.Harness;
import dev.ringout.harness.NaturalOrder;
import dev.ringout.people.Signers;
import dev.ringout.readings.ReadingSet;
import dev.ringout.source.Place;
import dev.ringout.source.Problem;
import dev.ringout.standards.Tables;
import dev.ringout.store.Entry;
import dev.ringout.store.EntryKind;
import dev.ringout.store.Lease;
import dev.ringout.store.Session;
import dev.ringout.store.Signature;
import dev.ringout.store.Store;
import dev.ringout.store.StoreTrouble;
import dev.ringout.store.StoredUnit;
import dev.ringout.store.TakenBack;
import dev.ringout.store.UnitSummary;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** The units of a store, or the history of one. */
public final class UnitsJob {
  private UnitsJob() {}

  /**
   * What is asked.
   *
   * @param serial of one unit; of all where there is none
   */
  public record Request(Optional<String> serial) {}

  /** Either of both. */
  public record Result(String store, List<Listed> units, List<History> histories) {
    /** What is given can't be changed afterwards. */
    public Result {
      units = List.copyOf(units);
      histories = List.copyOf(histories);
    }

    /** Whether all of it is as it was written, and can be understood. */
    public boolean isAsWritten() {
      return units.stream().allMatch(Listed::asWritten)
          && histories.stream().allMatch(one -> one.now().isPresent());
    }
  }

  /**
   * A unit as it stood when it was last read.
   *
   * @param asWritten whether the verdict's entry is as it was written
   * @param leads who leads its test, where one is under way
   */
  public record Listed(
      StoredUnit unit,
      int sessions,
      String started,
      String who,
      Optional<KeptVerdict> verdict,
      boolean asWritten,
      List<Lease> leads) {
    /** What is given can't be changed afterwards. */
    public Listed {
      leads = List.copyOf(leads);
    }
  }

  /**
   * All that was read of a unit.
   *
   * @param now the verdict derived again from all of it; absent where the list or a sheet can't be
   *     understood any more
   */
  public record History(
      StoredUnit unit, List<Test> tests, Optional<CheckResult> now, List<Problem> problems) {
    /** What is given can't be changed afterwards. */
    public History {
      tests = List.copyOf(tests);
      problems = List.copyOf(problems);
    }
  }

  /**
   * One test.
   *
   * @param readings how many rows are readings
   * @param verdict as it was shown then
   * @param later what was said of the unit afterwards
   */
  public record Test(
      Session session, int readings, Optional<KeptVerdict> verdict, List<Later> later) {
    /** What is given can't be changed afterwards. */
    public Test {
      later = List.copyOf(later);
    }
  }

  /**
   * What was said of a unit afterwards.
   *
   * @param cell of the row that was taken back; empty where none was
   * @param signature absent where it is none
   * @param text a note's, or why something was taken back, or why a signature does not count; empty
   *     where it does
   */
  public record Later(
      EntryKind kind,
      String at,
      String who,
      String cell,
      Optional<Signature> signature,
      String text) {}

  /**
   * Looks them up.
   *
   * @throws StoreTrouble where the store can't be used, or has no such unit
   */
  public static Result run(Request request, StoreAtHand store) throws StoreTrouble {
    Store open = store.open();
    if (request.serial().isEmpty()) {
      return new Result(store.shown(), all(open), List.of());
    }
    List<StoredUnit> units = open.find(FromStore.key(request.serial().get()));
    if (units.isEmpty()) {
      throw StoreTrouble.of(
          StoreTrouble.Reason.MISSING,
          "there is no unit " + request.serial().get() + " in " + store.shown());
    }
    List<History> histories = new ArrayList<>();
    for (StoredUnit unit : units) {
      histories.add(history(unit, open, store));
    }
    return new Result(store.shown(), List.of(), histories);
  }

  private static List<Listed> all(Store open) throws StoreTrouble {
    List<Listed> listed = new ArrayList<>();
    Map<String, List<Lease>> leads =
        open.leases().stream().collect(Collectors.groupingBy(Lease::session));
    for (UnitSummary one : open.units()) {
      Optional<KeptVerdict> verdict = KeptVerdict.of(one.verdict().body());
      boolean underWay = one.verdict().asWritten() && verdict.isEmpty();
      listed.add(
          new Listed(
              one.unit(),
              one.sessions(),
              one.started(),
              one.who(),
              verdict,
              one.verdict().asWritten(),
              underWay ? leads.getOrDefault(one.session(), List.of()) : List.of()));
    }
    listed.sort(
        Comparator.comparing((Listed one) -> one.unit().title())
            .thenComparing(one -> one.unit().drawing())
            .thenComparing(one -> one.unit().revision())
            .thenComparing(one -> one.unit().harness())
            .thenComparing(one -> one.unit().serial(), NaturalOrder.INSTANCE));
    return listed;
  }

  private static History history(StoredUnit unit, Store open, StoreAtHand store)
      throws StoreTrouble {
    Map<Session, List<Entry>> chains = open.chains(unit);
    Signers signers = Signers.of(open.people());
    List<Test> tests = new ArrayList<>();
    chains.forEach(
        (session, entries) ->
            tests.add(
                new Test(
                    session,
                    (int) entries.stream().filter(one -> one.is(EntryKind.READING)).count(),
                    KeptVerdict.firstIn(entries),
                    entries.stream()
                        .flatMap(one -> later(one, chains, signers).stream())
                        .toList())));
    Path named = InputName.ofUnit(unit.serial(), unit.harness());
    FileInputs inputs = FileInputs.with(List.of(named), store);
    Optional<Harness> harness = inputs.soundHarness(named);
    Optional<CheckResult> now = harness.map(list -> check(list, named, inputs));
    // Of a unit of which something is missing or changed nothing can be said.
    Optional<CheckResult> sound = now.filter(result -> !inputs.problems().hasErrors());
    return new History(unit, tests, sound, inputs.problems().list());
  }

  private static Optional<Later> later(
      Entry entry, Map<Session, List<Entry>> chains, Signers signers) {
    EntryKind kind = EntryKind.of(entry.kind()).orElse(EntryKind.VERDICT);
    Later later = new Later(kind, entry.at(), entry.who(), "", Optional.empty(), entry.body());
    return switch (kind) {
      case NOTE -> Optional.of(later);
      case SIGNATURE ->
          Signature.of(entry.body())
              .map(
                  one ->
                      new Later(
                          kind,
                          entry.at(),
                          entry.who(),
                          "",
                          Optional.of(one),
                          signers.doubt(one).orElse("")));
      case TAKEN_BACK ->
          TakenBack.of(entry.body())
              .map(
                  back ->
                      new Later(
                          kind,
                          entry.at(),
                          entry.who(),
                          back.cell(chains).map(Place::toString).orElse(""),
                          Optional.empty(),
                          back.why()));
      default -> Optional.empty();
    };
  }

  private static CheckResult check(Harness harness, Path named, FileInputs inputs) {
    ReadingSet readings = inputs.readings(List.of(named), harness);
    return CheckResult.of(harness, readings, Tables.published(), inputs.problems().list());
  }
}
