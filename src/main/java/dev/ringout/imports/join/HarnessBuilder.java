package dev.ringout.imports.join;

import dev.ringout.harness.Item;
import dev.ringout.harness.Link;
import dev.ringout.harness.PinDetail;
import dev.ringout.harness.Point;
import dev.ringout.harness.Wire;
import dev.ringout.harness.Wiring;
import dev.ringout.imports.list.Draft;
import dev.ringout.imports.list.End;
import dev.ringout.imports.list.ImportOptions;
import dev.ringout.imports.list.ListFindings;
import dev.ringout.imports.list.Role;
import dev.ringout.imports.list.SparePin;
import dev.ringout.imports.list.Understanding;
import dev.ringout.imports.list.WiringOddity;
import dev.ringout.imports.list.Words;
import dev.ringout.source.Place;
import dev.ringout.units.Gauge;
import dev.ringout.units.Length;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;

/** Makes a harness of what a list has told. */
public final class HarnessBuilder {
  private final Understanding list;
  private final Words words;
  private final ImportOptions options;
  private final TwoRows twoRows;
  private final ListFindings findings;
  private final Map<Place, String> comments;
  private final NoteHeadings headings;
  private final PinNames pins = new PinNames();
  private final Map<String, Place> places = new LinkedHashMap<>();
  private final GaugesAndLengths values;
  private final List<Wire> harnessWires = new ArrayList<>();
  private final List<Link> links = new ArrayList<>();
  private final Set<Point> wired = new HashSet<>();
  private final List<Draft> duplicates = new ArrayList<>();

  /** Nothing is built yet. */
  public HarnessBuilder(
      Understanding list,
      Words words,
      ImportOptions options,
      TwoRows twoRows,
      ListFindings findings,
      Map<Place, String> comments,
      UnaryOperator<String> noteHeading) {
    this.list = list;
    this.words = words;
    this.options = options;
    this.twoRows = twoRows;
    this.findings = findings;
    this.comments = comments;
    this.headings = new NoteHeadings(noteHeading);
    this.values = new GaugesAndLengths(words, options.units(), headings, findings);
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

  /**
   * Makes the wiring.
   *
   * @param whole the file, for what holds for the list as a whole
   */
  public Built build(Place whole) {
    ItemNames items = new ItemNames(list, findings);
    items.report(whole);
    list.namesOfPins()
        .forEach(
            (item, own) ->
                own.forEach((pin, names) -> pins.add(items.of(item, whole), pin, names)));
    pins.index();
    List<Draft> drafts = resolved(items);
    BothEnds bothEnds = new BothEnds(pins, twoRows, findings);
    ListChecks checks = new ListChecks(findings, words);
    bothEnds.reportTwice(drafts, checks);
    List<Draft> wires = withTerminals(withoutDuplicates(bothEnds.match(drafts)));
    checks.check(wires);
    items.reportTwins(List.copyOf(places.keySet()), places);
    wires.forEach(values::look);
    wires.forEach(this::connect);
    values.report();
    joinByNames(items);
    Wiring wiring =
        new Wiring(
            Collections.unmodifiableList(harnessWires),
            otherNames(),
            pinDetails(items),
            List.copyOf(links));
    return new Built(
        wiring,
        List.copyOf(duplicates),
        bothEnds.matched(),
        bothEnds.oneSided(),
        bothEnds.farPinNotListed(),
        bothEnds.farHasNoList());
  }

  /** The rows' wires with the items and pins as they are named in the harness. */
  private List<Draft> resolved(ItemNames items) {
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
    return drafts;
  }

  private void connect(Draft draft) {
    Point from = point(draft.from());
    Point to = point(draft.to());
    if (from.equals(to)) {
      findings.error(draft.place(), new WiringOddity.ToItself(from.toString()));
      return;
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
            draft.place(),
            new WiringOddity.SameEnds(
                draft.from().toString(), draft.to().toString(), before.place().row()));
        kept.add(draft);
      } else {
        findings.warning(draft.place(), new WiringOddity.SameWire(before.place().row()));
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
    draft.notes().forEach((heading, text) -> headings.put(notes, heading, text));
    Optional<Gauge> gauge = values.gauge(draft, notes);
    Optional<Length> length = values.length(draft, notes);
    if (!comments.isEmpty()) {
      String comment = comments.getOrDefault(draft.place().wholeRow(), "");
      if (!comment.isEmpty()) {
        headings.put(notes, "Comment", comment);
      }
    }
    return Wire.of(draft.name().isEmpty() ? from + ">" + to : draft.name(), from, to, draft.place())
        .madeOf(
            Wire.Make.UNSAID
                .ofGauge(gauge)
                .ofType(draft.text(Role.TYPE))
                .inColour(draft.text(Role.COLOR))
                .ofLength(length))
        .usedFor(
            Wire.Use.UNSAID
                .carrying(draft.text(Role.SIGNAL))
                .inCable(draft.text(Role.CABLE))
                .inGroup(draft.text(Role.GROUP)))
        .withContact(Wire.End.FROM, draft.text(Role.FROM_CONTACT))
        .withContact(Wire.End.TO, draft.text(Role.TO_CONTACT))
        .noted(draft.text(Role.NOTE))
        .withNotes(notes.isEmpty() ? Map.of() : Collections.unmodifiableMap(notes));
  }

  /** Points that share a name, where the user takes the name for a net. */
  private void joinByNames(ItemNames items) {
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

  private List<PinDetail> pinDetails(ItemNames items) {
    SparePoints spares = new SparePoints(wired, words::isNothing);
    for (SparePin spare : list.spares()) {
      End end = resolved(spare.end(), items);
      spares.add(point(end.hasPin() ? end : end.with(end.item(), "?")), end.place(), spare.note());
    }
    spares.report(findings);
    pins.otherNames().forEach(spares::alsoNamed);
    return spares.details();
  }
}
