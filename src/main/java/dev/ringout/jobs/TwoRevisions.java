package dev.ringout.jobs;

import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.JoinLimits;
import dev.ringout.harness.Harness;
import dev.ringout.harness.Point;
import dev.ringout.harness.Wire;
import dev.ringout.jobs.RevisionPaper.FieldChanges;
import dev.ringout.plan.PlanOptions;
import dev.ringout.plan.Planner;
import dev.ringout.revision.AlreadyThere;
import dev.ringout.revision.Change;
import dev.ringout.revision.ChangeIdentity;
import dev.ringout.revision.Difference;
import dev.ringout.revision.HeaderChange;
import dev.ringout.revision.ReworkOrder;
import dev.ringout.revision.Risks;
import dev.ringout.revision.Unsure;
import dev.ringout.standards.CopperWire;
import dev.ringout.standards.HandMovements;
import dev.ringout.standards.ItemKinds;
import dev.ringout.standards.Tables;
import dev.ringout.work.FoundList;
import dev.ringout.work.SleeveText;
import dev.ringout.work.WorkPapers;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/** Two revisions of a unit: what changed, the work that it makes, and what to read again. */
final class TwoRevisions {
  private final Lists request;
  private final Harness unit;
  private final boolean netsOnly;
  private final Predicate<String> inner;

  /**
   * The lists that are held against each other, and how.
   *
   * @param earlier the unit as it was listed
   * @param later the unit as it is to be
   * @param asBuilt a list of this unit as it was found
   * @param renames items of the unit that the work starts from and their names in the later
   *     revision, as far as the user says
   * @param renamesOfEarlier the same of the earlier revision, whichever list the work starts from
   * @param searchRenames whether other names are looked for besides
   * @param tables the parts tables
   * @param mostPointsPlanned of how many points in opened items the readings to take again are
   *     still planned; absent: of any number
   */
  record Lists(
      Harness earlier,
      Harness later,
      Optional<Harness> asBuilt,
      Map<String, String> renames,
      Map<String, String> renamesOfEarlier,
      boolean searchRenames,
      Tables tables,
      OptionalInt mostPointsPlanned) {

    /** The list that the work starts from: the earlier, or the unit's own where it knows wires. */
    public static Harness unit(Harness earlier, Optional<Harness> asBuilt) {
      return asBuilt.filter(built -> !FoundList.isSourceOf(built)).orElse(earlier);
    }
  }

  private TwoRevisions(Lists request) {
    this.request = request;
    unit = Lists.unit(request.earlier(), request.asBuilt());
    netsOnly = FoundList.isSourceOf(unit) || FoundList.isSourceOf(request.later());
    ItemKinds before = ItemKinds.of(unit, request.tables());
    ItemKinds after = ItemKinds.of(request.later(), request.tables());
    inner = ref -> isInner(before, ref) || isInner(after, ref);
  }

  /** All that is to be said of the two. */
  public static RevisionPaper run(Lists request) {
    return new TwoRevisions(request).paper();
  }

  /** Nobody plugs anything into a splice or onto a strip between two wires; a stud is a place. */
  private static boolean isInner(ItemKinds kinds, String ref) {
    return kinds.isSplice(ref) || (kinds.isTerminal(ref) && !kinds.kind(ref).contains("stud"));
  }

  private RevisionPaper paper() {
    Difference difference =
        difference(unit, request.later(), request.renames(), request.searchRenames(), netsOnly);
    List<HeaderChange> header =
        netsOnly ? List.of() : HeaderChange.between(request.earlier(), request.later());
    ReworkOrder rework = ReworkOrder.of(difference);
    Harness before = difference.before();
    Harness after = difference.after();
    return new RevisionPaper(
        netsOnly,
        difference,
        header,
        Unsure.of(difference, !difference.isEmpty() || !header.isEmpty()),
        rework,
        Risks.of(difference, rework),
        papers(after, rework.cut(), netsOnly ? Set.of() : wiredOnlyIn(before, after)),
        papers(before, rework.taken(), netsOnly ? Set.of() : wiredOnlyIn(after, before)),
        splices(difference),
        retests(after, rework),
        request.asBuilt().map(built -> inField(built, difference)));
  }

  private Difference difference(
      Harness before, Harness after, Map<String, String> told, boolean search, boolean nets) {
    return Difference.of(before, after, new Difference.Options(told, search, inner, nets));
  }

  /**
   * What wires take that are made new, or give back that come out.
   *
   * @param emptied cavities that take a sealing plug
   */
  private WorkPapers papers(Harness harness, List<Wire> wires, Set<Point> emptied) {
    Set<Point> concerned = new HashSet<>(emptied);
    wires.forEach(wire -> concerned.addAll(List.of(wire.from(), wire.to())));
    Harness only =
        Harness.builder(harness.limits())
            .header(harness.header())
            .wires(wires)
            .items(harness.items())
            .pins(harness.pins().stream().filter(pin -> concerned.contains(pin.point())).toList())
            .build();
    return papers(only, Set.of());
  }

  private WorkPapers papers(Harness harness, Set<String> items) {
    return WorkPapers.of(
        harness, request.tables(), CopperWire.published(), items, new SleeveText("{wire}"));
  }

  /** Points with a wire in one revision and none in the other. */
  private static Set<Point> wiredOnlyIn(Harness one, Harness other) {
    Set<Point> points = new HashSet<>();
    one.wires().forEach(wire -> points.addAll(List.of(wire.from(), wire.to())));
    other.wires().forEach(wire -> points.removeAll(List.of(wire.from(), wire.to())));
    return points;
  }

  private Optional<WorkPapers> splices(Difference difference) {
    ItemKinds kinds = ItemKinds.of(request.later(), request.tables());
    Set<String> splices = new LinkedHashSet<>();
    for (Change.ItemAdded item : difference.changes(Change.ItemAdded.class)) {
      if (kinds.isSplice(item.ref())) {
        splices.add(item.ref());
      }
    }
    return splices.isEmpty() ? Optional.empty() : Optional.of(papers(difference.after(), splices));
  }

  private List<Retest> retests(Harness after, ReworkOrder rework) {
    Set<String> everOpened = rework.opened();
    Set<String> opened = new LinkedHashSet<>();
    int points = 0;
    for (Point point : after.pointsAsListed()) {
      if (everOpened.contains(point.ref())) {
        opened.add(point.ref());
        points++;
      }
    }
    if (opened.isEmpty() || points > request.mostPointsPlanned().orElse(Integer.MAX_VALUE)) {
      return List.of();
    }
    Circuit circuit = Circuit.of(after);
    return Retest.of(
        Planner.plan(
            circuit,
            JoinLimits.of(circuit, request.tables()),
            new HandMovements(request.tables()),
            new PlanOptions(
                PlanOptions.ALL.isolation(), true, false, opened, Set.of(), Optional.empty())),
        rework);
  }

  private FieldChanges inField(Harness built, Difference work) {
    return FoundList.isSourceOf(built) ? readInField(built) : listedInField(built, work);
  }

  private FieldChanges listedInField(Harness built, Difference work) {
    boolean search = request.searchRenames();
    Difference inField = difference(request.earlier(), built, Map.of(), search, false);
    Difference revision =
        difference(request.earlier(), request.later(), request.renamesOfEarlier(), search, false);
    return new FieldChanges(
        inField.changes(),
        AlreadyThere.of(revision, work),
        without(work.changes(), revision.changes()),
        List.of());
  }

  /** The changes that are not among others, which were found between other lists. */
  private static List<Change> without(List<Change> changes, List<Change> others) {
    Set<ChangeIdentity> known = others.stream().map(ChangeIdentity::of).collect(Collectors.toSet());
    return changes.stream().filter(change -> !known.contains(ChangeIdentity.of(change))).toList();
  }

  private FieldChanges readInField(Harness built) {
    Difference nets = difference(request.earlier(), built, Map.of(), false, true);
    return new FieldChanges(List.of(), List.of(), List.of(), nets.nets());
  }
}
