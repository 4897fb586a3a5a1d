package dev.ringout.cli;

import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.JoinLimits;
import dev.ringout.harness.Harness;
import dev.ringout.harness.Point;
import dev.ringout.harness.Wire;
import dev.ringout.jobs.FileInputs;
import dev.ringout.jobs.Retest;
import dev.ringout.jobs.RevisionPaper;
import dev.ringout.jobs.RevisionPaper.FieldChanges;
import dev.ringout.json.DiffJson;
import dev.ringout.plan.PlanOptions;
import dev.ringout.plan.Planner;
import dev.ringout.print.DiffSheets;
import dev.ringout.revision.Change;
import dev.ringout.revision.Difference;
import dev.ringout.revision.HeaderChange;
import dev.ringout.revision.Rework;
import dev.ringout.revision.Risks;
import dev.ringout.sheet.PrintForm;
import dev.ringout.standards.CopperWire;
import dev.ringout.standards.HandMovements;
import dev.ringout.standards.ItemKinds;
import dev.ringout.standards.Tables;
import dev.ringout.text.DiffText;
import dev.ringout.words.ProblemText;
import dev.ringout.words.UnitTitle;
import dev.ringout.work.SleeveText;
import dev.ringout.work.WorkPapers;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code ringout diff}: what changed between two revisions, and what is to be done. */
@Command(
    name = "diff",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    description =
        "Compares two revisions by connections and nets, not rows: what changed, whether it is"
            + " electrically the same, the work in an order that can be done, and what to read"
            + " again.")
final class DiffCommand implements Callable<Integer> {
  private static final int MOST_POINTS_FOR_PAGE = 20_000;

  private final Output output;

  @Spec private CommandSpec spec = CommandSpec.create();

  @Parameters(index = "0", paramLabel = "OLD", description = "The harness file as it was.")
  private Path old = Path.of("");

  @Parameters(index = "1", paramLabel = "NEW", description = "The harness file as it is to be.")
  private Path now = Path.of("");

  @Option(
      names = "--as-built",
      paramLabel = "FILE",
      description =
          "The harness file of this unit as it was found: the work starts from it, and what was"
              + " changed in the field is told.")
  private Optional<Path> asBuilt = Optional.empty();

  @Option(
      names = "--rename",
      paramLabel = "OLD=NEW",
      split = ",",
      description = "An item that has another name, such as J1=J101.")
  private List<String> renames = new ArrayList<>();

  @Option(
      names = "--as-named",
      description = "Look for no other names than those that --rename gives.")
  private boolean asNamed;

  @Mixin private OwnTables tables = new OwnTables();

  @Mixin private Sheets file = new Sheets();

  DiffCommand(Output output) {
    this.output = output;
  }

  @Override
  public Integer call() {
    List<Path> files = new ArrayList<>(List.of(old, now));
    asBuilt.ifPresent(files::add);
    FileInputs inputs = new FileInputs(files);
    Optional<Harness> before = inputs.harness(old);
    Optional<Harness> after = inputs.harness(now);
    Optional<Harness> built = asBuilt.flatMap(inputs::harness);
    output.err().print(ProblemText.write(inputs.problems().list()));
    if (before.isEmpty() || after.isEmpty() || inputs.problems().hasErrors()) {
      if (file.json()) {
        output.out().print(DiffJson.write(inputs.problems().list()));
      }
      return output.refused(inputs);
    }
    RevisionPaper paper = paper(before.get(), after.get(), built, tables.read(spec));
    int written =
        file.write(
            output,
            spec,
            PrintForm.wired(UnitTitle.of(after.get()), file.paper()),
            () -> DiffSheets.of(paper),
            () ->
                file.json()
                    ? DiffJson.write(paper, inputs.problems().list())
                    : DiffText.write(paper, output.showsColour()));
    if (written != ExitCode.DONE) {
      return written;
    }
    return paper.isEmpty() ? ExitCode.DONE : ExitCode.FAULTS;
  }

  private RevisionPaper paper(Harness before, Harness after, Optional<Harness> built, Tables read) {
    boolean workFromBuilt = built.isPresent() && !isFromReadings(built.get());
    Harness unit = workFromBuilt ? built.get() : before;
    Predicate<String> inner = inner(ItemKinds.of(unit, read), ItemKinds.of(after, read));
    boolean netsOnly = isFromReadings(unit) || isFromReadings(after);
    Difference difference =
        Difference.of(
            unit, after, new Difference.Options(told(unit, after), !asNamed, inner, netsOnly));
    Rework rework = Rework.of(difference);
    return new RevisionPaper(
        UnitTitle.of(unit),
        UnitTitle.of(after),
        netsOnly,
        difference,
        netsOnly ? List.of() : HeaderChange.between(before, after),
        rework,
        Risks.of(difference, rework),
        papers(
            difference.after(),
            rework.cut(),
            netsOnly ? Set.of() : wiredOnlyIn(difference.before(), difference.after()),
            read),
        papers(
            difference.before(),
            rework.taken(),
            netsOnly ? Set.of() : wiredOnlyIn(difference.after(), difference.before()),
            read),
        splices(difference, ItemKinds.of(after, read), read),
        retests(difference.after(), rework, read),
        built.map(
            one ->
                isFromReadings(one)
                    ? readInField(before, one, inner)
                    : listedInField(before, one, after, difference, inner)));
  }

  /** A list that {@code ringout asfound} wrote says so. */
  private static boolean isFromReadings(Harness harness) {
    return !harness.headerValue(AsFoundCommand.HEADER).isEmpty();
  }

  /** Nobody plugs anything into a splice or onto a strip between two wires; a stud is a place. */
  private static Predicate<String> inner(ItemKinds before, ItemKinds after) {
    return ref -> isInner(before, ref) || isInner(after, ref);
  }

  private static boolean isInner(ItemKinds kinds, String ref) {
    return kinds.isSplice(ref) || (kinds.isTerminal(ref) && !kinds.kind(ref).contains("stud"));
  }

  private Map<String, String> told(Harness before, Harness after) {
    Map<String, String> told = new LinkedHashMap<>();
    for (String one : renames) {
      String[] names = one.split("=", -1);
      if (names.length != 2) {
        throw new ParameterException(
            spec.commandLine(), "--rename: expected OLD=NEW such as J1=J101, not " + one);
      }
      String from = new Named(spec, before).items("--rename", List.of(names[0])).iterator().next();
      String to = new Named(spec, after).items("--rename", List.of(names[1])).iterator().next();
      if (told.containsKey(from) || told.containsValue(to)) {
        throw new ParameterException(
            spec.commandLine(), "--rename: " + one + " names an item that is named already");
      }
      told.put(from, to);
    }
    return told;
  }

  /**
   * What wires take that are made new, or give back that come out.
   *
   * @param emptied cavities that take a sealing plug
   */
  private static WorkPapers papers(
      Harness harness, List<Wire> wires, Set<Point> emptied, Tables read) {
    Set<Point> concerned = new HashSet<>(emptied);
    wires.forEach(wire -> concerned.addAll(List.of(wire.from(), wire.to())));
    Harness only =
        Harness.builder(harness.limits())
            .header(harness.header())
            .wires(wires)
            .items(harness.items())
            .pins(harness.pins().stream().filter(pin -> concerned.contains(pin.point())).toList())
            .build();
    return WorkPapers.of(only, read, CopperWire.published(), Set.of(), new SleeveText("{wire}"));
  }

  /** Points with a wire in one revision and none in the other. */
  private static Set<Point> wiredOnlyIn(Harness one, Harness other) {
    Set<Point> points = new HashSet<>();
    one.wires().forEach(wire -> points.addAll(List.of(wire.from(), wire.to())));
    other.wires().forEach(wire -> points.removeAll(List.of(wire.from(), wire.to())));
    return points;
  }

  private static Optional<WorkPapers> splices(Difference difference, ItemKinds kinds, Tables read) {
    Set<String> splices = new LinkedHashSet<>();
    for (Change.ItemAdded item : difference.changes(Change.ItemAdded.class)) {
      if (kinds.isSplice(item.ref())) {
        splices.add(item.ref());
      }
    }
    return splices.isEmpty()
        ? Optional.empty()
        : Optional.of(
            WorkPapers.of(
                difference.after(),
                read,
                CopperWire.published(),
                splices,
                new SleeveText("{wire}")));
  }

  /** A page shows the first readings only; for that a large unit's plan takes too long. */
  private List<Retest> retests(Harness after, Rework rework, Tables read) {
    Set<String> everOpened = rework.opened();
    Set<String> opened = new LinkedHashSet<>();
    int points = 0;
    for (Point point : after.pointsAsListed()) {
      if (everOpened.contains(point.ref())) {
        opened.add(point.ref());
        points++;
      }
    }
    boolean forPageOnly = !file.json() && !file.asked();
    if (opened.isEmpty() || (forPageOnly && points > MOST_POINTS_FOR_PAGE)) {
      return List.of();
    }
    Circuit circuit = Circuit.of(after);
    return Retest.of(
        Planner.plan(
            circuit,
            JoinLimits.of(circuit, read),
            new HandMovements(read),
            new PlanOptions(
                PlanOptions.ALL.isolation(), true, false, opened, Set.of(), Optional.empty())),
        rework);
  }

  private FieldChanges listedInField(
      Harness before, Harness built, Harness after, Difference work, Predicate<String> inner) {
    Difference inField =
        Difference.of(before, built, new Difference.Options(Map.of(), !asNamed, inner, false));
    Difference revision =
        Difference.of(
            before, after, new Difference.Options(told(before, after), !asNamed, inner, false));
    Set<String> toDo = texts(work.changes());
    Set<String> revised = texts(revision.changes());
    return new FieldChanges(
        inField.changes(),
        revision.changes().stream().filter(one -> !toDo.contains(key(one))).toList(),
        work.changes().stream().filter(one -> !revised.contains(key(one))).toList(),
        List.of());
  }

  private static FieldChanges readInField(Harness before, Harness built, Predicate<String> inner) {
    Difference nets =
        Difference.of(before, built, new Difference.Options(Map.of(), false, inner, true));
    return new FieldChanges(List.of(), List.of(), List.of(), nets.nets());
  }

  private static Set<String> texts(List<Change> changes) {
    return changes.stream().map(DiffCommand::key).collect(Collectors.toSet());
  }

  private static String key(Change change) {
    return DiffText.sentence(change);
  }
}
