package dev.ringout.imports.join;

import dev.ringout.cells.GaugeCell;
import dev.ringout.cells.LengthCell;
import dev.ringout.cells.Understood;
import dev.ringout.harness.Item;
import dev.ringout.harness.Link;
import dev.ringout.harness.PinDetail;
import dev.ringout.harness.Point;
import dev.ringout.harness.Wire;
import dev.ringout.harness.Wiring;
import dev.ringout.imports.list.Draft;
import dev.ringout.imports.list.Draft.Value;
import dev.ringout.imports.list.End;
import dev.ringout.imports.list.Finding.Kind;
import dev.ringout.imports.list.Findings;
import dev.ringout.imports.list.ImportOptions;
import dev.ringout.imports.list.Role;
import dev.ringout.imports.list.SparePin;
import dev.ringout.imports.list.Understanding;
import dev.ringout.imports.list.Words;
import dev.ringout.source.Place;
import dev.ringout.source.Severity;
import dev.ringout.units.Gauge;
import dev.ringout.units.Length;
import dev.ringout.units.Text;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.UnaryOperator;

/** Makes a harness of what a list has told. */
public final class HarnessBuilder {
  private static final int SAID_ONE_BY_ONE = 20;

  private final Understanding list;
  private final Words words;
  private final ImportOptions options;
  private final TwoRows twoRows;
  private final Findings findings;
  private final Map<Place, String> comments;
  private final UnaryOperator<String> noteHeading;
  private final PinNames pins = new PinNames();
  private final Map<String, Place> places = new LinkedHashMap<>();
  private final Map<String, Understood<Gauge>> gauges = new HashMap<>();
  private final Map<String, Understood<Length>> lengths = new HashMap<>();
  private final Map<Column, List<NotTaken>> notTaken = new LinkedHashMap<>();
  private final List<Draft> duplicates = new ArrayList<>();

  public HarnessBuilder(
      Understanding list,
      Words words,
      ImportOptions options,
      TwoRows twoRows,
      Findings findings,
      Map<Place, String> comments,
      UnaryOperator<String> noteHeading) {
    this.list = list;
    this.words = words;
    this.options = options;
    this.twoRows = twoRows;
    this.findings = findings;
    this.comments = comments;
    this.noteHeading = noteHeading;
  }

  /**
   * What was built.
   *
   * @param duplicates rows that say once more what another row says
   */
  public record Built(
      Wiring wiring,
      List<Draft> duplicates,
      int bothEnds,
      int oneSided,
      int farPinNotListed,
      int farHasNoList) {}

  public Built build(Place whole) {
    ItemNames items = new ItemNames(list, findings);
    items.report(whole);
    list.namesOfPins()
        .forEach(
            (item, own) ->
                own.forEach((pin, names) -> pins.add(items.of(item, whole), pin, names)));
    pins.index();
    List<Draft> drafts = new ArrayList<>(list.drafts().size());
    for (Draft draft : list.drafts()) {
      End from = resolved(draft.from(), items);
      End to = resolved(draft.to(), items);
      boolean same = from.equals(draft.from()) && to.equals(draft.to()) && draft.also().isEmpty();
      drafts.add(
          same
              ? draft
              : draft.with(
                  from, to, draft.also().stream().map(end -> resolved(end, items)).toList()));
    }
    BothEnds bothEnds = new BothEnds(pins, twoRows, findings);
    ListChecks checks = new ListChecks(findings);
    bothEnds.reportTwice(drafts, checks);
    List<Draft> wires = withTerminals(withoutDuplicates(bothEnds.match(drafts)));
    checks.check(wires);
    items.reportTwins(List.copyOf(places.keySet()), places);
    List<Wire> harnessWires = new ArrayList<>(wires.size());
    List<Link> links = new ArrayList<>();
    Set<Point> wired = new HashSet<>(4 * wires.size());
    for (Draft draft : wires) {
      Point from = point(draft.from());
      Point to = point(draft.to());
      if (from.equals(to)) {
        findings.error(
            Kind.PIN_TWICE, draft.place(), "a wire from " + from + " to itself; left out", "");
        continue;
      }
      harnessWires.add(wire(draft, from, to));
      Point last = to;
      for (End end : draft.also()) {
        links.add(new Link(last, point(end), "one conductor on both", draft.place()));
        wired.add(point(end));
        last = point(end);
      }
      wired.add(from);
      wired.add(to);
    }
    reportNotTaken();
    joinByNames(items, links, wired);
    Wiring wiring =
        new Wiring(
            Collections.unmodifiableList(harnessWires),
            otherNames(),
            pinDetails(items, wired),
            List.copyOf(links));
    return new Built(
        wiring,
        List.copyOf(duplicates),
        bothEnds.matched(),
        bothEnds.oneSided(),
        bothEnds.farPinNotListed(),
        bothEnds.farHasNoList());
  }

  private End resolved(End end, ItemNames items) {
    String item = items.of(end.item(), end.place());
    places.putIfAbsent(item, end.place());
    String pin = Point.pinName(end.pin());
    if (!end.own() && !pin.isEmpty() && pins.hasList(item) && !pins.lists(item, pin)) {
      Optional<String> first = pins.resolve(item, pin);
      if (first.isPresent()) {
        pin = first.get();
      }
    }
    return item.equals(end.item()) && pin.equals(end.pin()) ? end : end.with(item, pin);
  }

  /** Rows that repeat a wire's number and both its ends are one wire. */
  private List<Draft> withoutDuplicates(List<Draft> drafts) {
    record Key(String name, String item, String pin, String toItem, String toPin) {}
    Map<Key, Draft> seen = new HashMap<>(2 * drafts.size());
    List<Draft> kept = new ArrayList<>(drafts.size());
    for (Draft draft : drafts) {
      Key key =
          new Key(
              draft.name(),
              draft.from().item(),
              draft.from().pin(),
              draft.to().item(),
              draft.to().pin());
      Draft before =
          draft.block() || !draft.from().hasPin() || !draft.to().hasPin()
              ? null
              : seen.putIfAbsent(key, draft);
      if (before == null) {
        kept.add(draft);
      } else if (draft.name().isEmpty()) {
        findings.warning(
            Kind.DUPLICATE,
            draft.place(),
            Text.of(
                "%s to %s stands in row %d too: two wires, or one row twice? Kept",
                draft.from(), draft.to(), before.place().row()));
        kept.add(draft);
      } else {
        findings.warning(
            Kind.DUPLICATE,
            draft.place(),
            Text.of("the same wire and ends as row %d; read once", before.place().row()));
        duplicates.add(draft);
      }
    }
    return kept;
  }

  private List<Draft> withTerminals(List<Draft> drafts) {
    Terminals terminals = new Terminals(words, options, findings);
    for (Draft draft : drafts) {
      terminals.look(draft.from());
      terminals.look(draft.to());
      draft.also().forEach(terminals::look);
    }
    terminals.report();
    List<Draft> given = new ArrayList<>(drafts.size());
    for (Draft draft : drafts) {
      given.add(
          draft.from().hasPin() && draft.to().hasPin()
              ? draft
              : draft.with(
                  terminals.give(draft.from()),
                  terminals.give(draft.to()),
                  draft.also().stream().map(terminals::give).toList()));
    }
    return given;
  }

  private static Point point(End end) {
    return new Point(end.item(), end.pin());
  }

  private Wire wire(Draft draft, Point from, Point to) {
    Map<String, String> notes = new LinkedHashMap<>();
    draft.notes().forEach((heading, text) -> notes.put(noteHeading.apply(heading), text));
    Optional<Gauge> gauge = taken(draft, Role.GAUGE, Kind.GAUGE, gauges, GaugeCell::gauge, notes);
    Optional<Length> length =
        taken(draft, Role.LENGTH, Kind.LENGTH, lengths, LengthCell::length, notes);
    if (!comments.isEmpty()) {
      Place row = new Place(draft.place().file(), draft.place().sheet(), draft.place().row(), 0);
      String comment = comments.getOrDefault(row, "");
      if (!comment.isEmpty()) {
        notes.put("Comment", comment);
      }
    }
    return new Wire(
        draft.name().isEmpty() ? from + ">" + to : draft.name(),
        from,
        to,
        gauge,
        draft.text(Role.TYPE),
        draft.text(Role.COLOR),
        length,
        draft.text(Role.SIGNAL),
        draft.text(Role.CABLE),
        draft.text(Role.GROUP),
        draft.text(Role.FROM_CONTACT),
        draft.text(Role.TO_CONTACT),
        draft.text(Role.NOTE),
        notes.isEmpty() ? Map.of() : Collections.unmodifiableMap(notes),
        draft.place());
  }

  private record Column(Kind kind, String sheet, int index) {}

  private record NotTaken(Value value, String complaint, String maybe) {}

  /** Values that are none: one by one, or once a column where it is the same with all. */
  private void reportNotTaken() {
    notTaken.forEach(
        (column, all) -> {
          NotTaken first = all.get(0);
          if (all.size() <= SAID_ONE_BY_ONE) {
            for (NotTaken one : all) {
              findings.add(
                  column.kind(),
                  Severity.WARNING,
                  one.value().place(),
                  one.value().heading(),
                  one.complaint() + "; kept as a note",
                  one.maybe());
            }
            return;
          }
          String heading =
              first.value().heading().isEmpty()
                  ? Place.columnLetters(column.index())
                  : first.value().heading();
          findings.add(
              column.kind(),
              Severity.WARNING,
              first.value().place(),
              first.value().heading(),
              Text.of(
                  "%d cells of this column could not be taken, such as this: %s; kept as notes. To give a unit, say --column \"%s=%s\"",
                  all.size(),
                  first.complaint(),
                  heading,
                  column.kind() == Kind.LENGTH ? "Length (in)" : "Gauge (mm2)"),
              first.maybe());
        });
  }

  private interface Reader<T> {
    Understood<T> read(String text, String unit);
  }

  /** A value with a unit; what is none goes along as a note, and is said. */
  private <T> Optional<T> taken(
      Draft draft,
      Role role,
      Kind kind,
      Map<String, Understood<T>> known,
      Reader<T> reader,
      Map<String, String> notes) {
    Value value = draft.texts().get(role);
    if (value == null || words.isNothing(value.text())) {
      return Optional.empty();
    }
    String key = value.unit().isEmpty() ? value.text() : value.text() + "\t" + value.unit();
    Understood<T> understood = known.get(key);
    if (understood == null) {
      understood = reader.read(value.text(), value.unit());
      known.put(key, understood);
    }
    if (understood.value().isEmpty()) {
      notTaken
          .computeIfAbsent(
              new Column(kind, value.place().sheet(), value.place().column()),
              column -> new ArrayList<>())
          .add(new NotTaken(value, understood.complaint(), understood.maybe()));
      notes.put(role.title() + " as listed", value.text());
    }
    return understood.value();
  }

  /** Points that share a name, where the user takes the name for a net. */
  private void joinByNames(ItemNames items, List<Link> links, Set<Point> wired) {
    list.named()
        .forEach(
            (net, ends) -> {
              Set<Point> points = new LinkedHashSet<>();
              Place place = ends.get(0).place();
              for (End end : ends) {
                points.add(point(resolved(end, items)));
              }
              Point last = null;
              for (Point point : points) {
                if (last != null) {
                  links.add(new Link(last, point, "joined by the name " + net, place));
                  wired.add(last);
                  wired.add(point);
                }
                last = point;
              }
            });
  }

  private List<Item> otherNames() {
    Map<String, Item> items = new LinkedHashMap<>();
    list.otherNames()
        .values()
        .forEach(
            item ->
                items.putIfAbsent(
                    item,
                    new Item(
                        item, "", "", "", "", "", "", places.getOrDefault(item, Place.of("")))));
    return List.copyOf(items.values());
  }

  private List<PinDetail> pinDetails(ItemNames items, Set<Point> wired) {
    Map<Point, String> notes = new LinkedHashMap<>();
    Map<Point, Place> where = new HashMap<>();
    Map<Point, Integer> twice = new TreeMap<>();
    for (SparePin spare : list.spares()) {
      End end = resolved(spare.end(), items);
      Point point = point(end.hasPin() ? end : end.with(end.item(), "?"));
      where.putIfAbsent(point, end.place());
      if (!wired.contains(point)) {
        String before = notes.putIfAbsent(point, spare.note());
        if (before != null && !before.equals(spare.note())) {
          twice.merge(point, 1, Integer::sum);
          notes.put(
              point,
              before.isEmpty()
                  ? spare.note()
                  : spare.note().isEmpty() ? before : before + " / " + spare.note());
        }
      }
    }
    reportTwice(twice, where);
    pins.otherNames()
        .forEach(
            (point, names) ->
                notes.merge(
                    point,
                    "also " + String.join(", ", new LinkedHashSet<>(names)),
                    (one, other) -> one.isEmpty() ? other : one + "; " + other));
    List<PinDetail> details = new ArrayList<>();
    notes.forEach(
        (point, note) ->
            details.add(
                new PinDetail(
                    point,
                    "",
                    "",
                    OptionalDouble.empty(),
                    OptionalDouble.empty(),
                    note,
                    where.getOrDefault(point, Place.of("")))));
    return List.copyOf(details);
  }

  private void reportTwice(Map<Point, Integer> twice, Map<Point, Place> where) {
    int said = 0;
    for (Point point : twice.keySet()) {
      if (said++ < SAID_ONE_BY_ONE) {
        findings.note(
            Kind.PIN_TWICE,
            where.getOrDefault(point, Place.of("")),
            point + " is listed more than once, without a wire");
      }
    }
  }
}
