package dev.ringout.intake;

import dev.ringout.cells.GaugeCell;
import dev.ringout.cells.LengthCell;
import dev.ringout.cells.LookAlikes;
import dev.ringout.cells.OhmsCell;
import dev.ringout.cells.Understood;
import dev.ringout.cells.VoltsCell;
import dev.ringout.harness.Crimp;
import dev.ringout.harness.Harness;
import dev.ringout.harness.Item;
import dev.ringout.harness.Limits;
import dev.ringout.harness.Link;
import dev.ringout.harness.Load;
import dev.ringout.harness.Part;
import dev.ringout.harness.PinDetail;
import dev.ringout.harness.Point;
import dev.ringout.harness.Switch;
import dev.ringout.harness.Wire;
import dev.ringout.readings.Side;
import dev.ringout.sheet.Sheet;
import dev.ringout.sheet.TabularFile;
import dev.ringout.source.Problems;
import dev.ringout.source.UnusableInput;
import dev.ringout.units.Gauge;
import dev.ringout.units.Length;
import dev.ringout.units.Numbers;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Function;

/** Reads a harness file: a workbook, a folder of CSV files, or one CSV file of wires. */
public final class HarnessReader {
  private static final Column WIRE = Column.of("Wire");
  private static final Column FROM = Column.of("From");
  private static final Column FROM_PIN = Column.of("From Pin");
  private static final Column TO = Column.of("To");
  private static final Column TO_PIN = Column.of("To Pin");
  private static final Column GAUGE = Column.withUnit("Gauge");
  private static final Column WIRE_TYPE = Column.of("Wire Type");
  private static final Column COLOUR = Column.of("Color", "Colour");
  private static final Column LENGTH = Column.withUnit("Length");
  private static final Column SIGNAL = Column.of("Signal");
  private static final Column CABLE = Column.of("Cable");
  private static final Column GROUP = Column.of("Group");
  private static final Column FROM_CONTACT = Column.of("From Contact");
  private static final Column TO_CONTACT = Column.of("To Contact");
  private static final Column NOTE = Column.of("Note");
  private static final Column REF = Column.of("Ref");
  private static final Column PIN = Column.of("Pin");
  private static final Column KIND = Column.of("Kind");
  private static final Column PART = Column.of("Part");
  private static final Column ARRANGEMENT = Column.of("Arrangement");
  private static final Column LOCATION = Column.of("Location");
  private static final Column MATES = Column.of("Mates");
  private static final Column SIZE = Column.of("Size");
  private static final Column CONTACT = Column.of("Contact");
  private static final Column X = Column.withUnit("X");
  private static final Column Y = Column.withUnit("Y");
  private static final Column STATE = Column.of("State");
  private static final Column OHMS = Column.withUnit("Ohms");
  private static final Column TOLERANCE = Column.of("Tolerance %", "Tolerance");
  private static final Column NAME = Column.of("Name", "Load");
  private static final Column AMPS = Column.of("Amps");
  private static final Column VOLTS = Column.of("Volts");
  private static final Column ALLOWED_DROP = Column.of("Allowed Drop V", "Allowed Drop");
  private static final Column WIRE_CELSIUS = Column.of("Wire °C", "Wire C");
  private static final Column DUTY = Column.of("Duty");
  private static final Column TOOL = Column.of("Tool");
  private static final Column POSITIONER = Column.of("Positioner");
  private static final Column SETTING = Column.of("Setting", "Selector");
  private static final Column STRIP_MM = Column.of("Strip mm");
  private static final Column STRIP_IN = Column.of("Strip in");
  private static final Column PULL_LBF = Column.of("Pull lbf");
  private static final Column PULL_N = Column.of("Pull N");
  private static final Column STANDARD = Column.of("Standard");

  /** One pound-force, by definition of the pound and of standard gravity. */
  private static final double MILLIMETRES_PER_INCH = 25.4;

  private static final double NEWTONS_PER_POUND_FORCE = 4.4482216152605;

  private static final Column MAX_TEST_VOLTS = Column.of("Max Test Volts");

  private static final List<Column> WIRE_COLUMNS =
      List.of(
          WIRE,
          FROM_PIN,
          FROM_CONTACT,
          FROM,
          TO_PIN,
          TO_CONTACT,
          TO,
          GAUGE,
          WIRE_TYPE,
          COLOUR,
          LENGTH,
          SIGNAL,
          CABLE,
          GROUP,
          NOTE);

  /** Where an import leaves the rows that it could not read: while any stand there, no judging. */
  private static final String NOT_READ = "Not Read";

  private static final List<String> SHEETS =
      List.of(
          "Wires",
          "Items",
          "Pins",
          "Links",
          "Switches",
          "Parts",
          "Loads",
          "Crimps",
          "Limits",
          "Header",
          NOT_READ);

  private final SheetsByName sheets;
  private final Problems problems;
  private final Refs refs = new Refs();
  private final Map<String, String> texts = new HashMap<>();

  private HarnessReader(SheetsByName sheets, Problems problems) {
    this.sheets = sheets;
    this.problems = problems;
  }

  /**
   * Reads a harness. What could not be understood is in {@code problems}; while these hold an error
   * the harness is incomplete and must not be judged by.
   *
   * @param shownName the file's name in every message
   * @throws UnusableInput where the file as a whole is missing or no table
   */
  public static Harness read(TabularFile file, String shownName, Problems problems)
      throws UnusableInput {
    SheetsByName sheets = new SheetsByName(file, SHEETS, "Wires", problems);
    HarnessReader reader = new HarnessReader(sheets, problems);
    if (sheets.find("Wires").isEmpty()) {
      sheets.reportMissing("Wires", shownName, problems);
    }
    return reader.read();
  }

  /** A heading under which a wire's own notes can stand: none that means a column of its own. */
  public static String noteHeading(String heading) {
    boolean taken =
        WIRE_COLUMNS.stream()
            .anyMatch(column -> column.matches(heading) || !column.unitIn(heading).isEmpty());
    return taken ? "Listed " + heading : heading;
  }

  private Harness read() throws UnusableInput {
    refuseUnread();
    Map<String, String> header = Settings.read(sheets.find("Header"), problems).asMap();
    Settings limitRows = Settings.read(sheets.find("Limits"), problems);
    Limits limits = LimitsReader.read(limitRows);
    // Items come first: a point written in one cell is split where it names a known item.
    List<Item> items = items();
    List<PinDetail> pins = pins();
    List<Wire> wires = wires();
    Harness unit =
        Harness.builder(limits)
            .header(header)
            .wires(wires)
            .items(items)
            .pins(pins)
            .links(links())
            .switches(switches())
            .parts(parts())
            .crimps(crimps())
            .build();
    return unit.toBuilder()
        .loads(loads(unit))
        .netLimits(
            limitRows.ofNets().isEmpty()
                ? List.of()
                : LimitsReader.ofNets(limitRows, netPoints(unit)))
        .build();
  }

  /** A point, or one end of every wire of a signal. */
  private static Function<String, List<Point>> netPoints(Harness unit) {
    HarnessPoints known = new HarnessPoints(unit);
    return net ->
        known
            .side(net, "")
            .value()
            .map(Side.Points::points)
            .orElseGet(
                () ->
                    unit.wires().stream()
                        .filter(wire -> !wire.signal().isEmpty())
                        .filter(wire -> wire.signal().equalsIgnoreCase(net))
                        .map(Wire::from)
                        .toList());
  }

  private void refuseUnread() throws UnusableInput {
    Optional<Sheet> unread = sheets.find(NOT_READ);
    if (unread.isEmpty()) {
      return;
    }
    int[] rows = new int[1];
    unread.get().forEachRow(row -> rows[0]++);
    if (rows[0] > 1) {
      problems.error(
          unread.get().place(),
          Numbers.count(rows[0] - 1, "row")
              + " of the list could not be read and may be wires; settle each on Wires, then delete it"
              + " here");
    }
  }

  private void each(String name, List<Column> known, List<Column> required, Consumer<Entry> each)
      throws UnusableInput {
    Optional<Sheet> sheet = sheets.find(name);
    if (sheet.isPresent()) {
      new Table(sheet.get(), known, required, problems).forEach(each);
    }
  }

  /** One object for equal texts: a long list repeats its colours and types on every row. */
  private String shared(String text) {
    return text.isEmpty() ? "" : texts.computeIfAbsent(text, same -> same);
  }

  private List<Wire> wires() throws UnusableInput {
    List<Wire> wires = new ArrayList<>();
    each("Wires", WIRE_COLUMNS, List.of(FROM, TO), entry -> wire(entry).ifPresent(wires::add));
    if (wires.isEmpty() && sheets.find("Wires").isPresent() && !problems.hasErrors()) {
      problems.error(sheets.find("Wires").get().place(), "the sheet lists no wires");
    }
    return wires;
  }

  private Optional<Wire> wire(Entry entry) {
    Optional<Point> from = point(entry, FROM, FROM_PIN);
    Optional<Point> to = point(entry, TO, TO_PIN);
    Optional<Gauge> gauge = optional(entry, GAUGE, GaugeCell::gauge);
    Optional<Length> length = optional(entry, LENGTH, LengthCell::length);
    if (from.isEmpty() || to.isEmpty()) {
      return Optional.empty();
    }
    if (from.equals(to)) {
      entry.error(TO.name(), "the wire goes from " + from.get() + " to itself", "");
      return Optional.empty();
    }
    String name = entry.text(WIRE.name());
    return Optional.of(
        Wire.of(
                name.isEmpty() ? from.get() + ">" + to.get() : name,
                from.get(),
                to.get(),
                entry.place())
            .madeOf(
                Wire.Make.UNSAID
                    .ofGauge(gauge)
                    .ofType(shared(entry.text(WIRE_TYPE.name())))
                    .inColour(shared(entry.text(COLOUR.name())))
                    .ofLength(length))
            .usedFor(
                Wire.Use.UNSAID
                    .carrying(shared(entry.text(SIGNAL.name())))
                    .inCable(shared(entry.text(CABLE.name())))
                    .inGroup(shared(entry.text(GROUP.name()))))
            .withContact(Wire.End.FROM, shared(entry.text(FROM_CONTACT.name())))
            .withContact(Wire.End.TO, shared(entry.text(TO_CONTACT.name())))
            .noted(shared(entry.text(NOTE.name())))
            .withNotes(entry.notes()));
  }

  private interface WithUnit<T> {
    Understood<T> understand(String text, String headingUnit);
  }

  private static <T> Optional<T> optional(Entry entry, Column column, WithUnit<T> reader) {
    String text = entry.text(column.name());
    if (text.isEmpty()) {
      return Optional.empty();
    }
    return entry.take(column.name(), reader.understand(text, entry.headingUnit(column.name())));
  }

  private Optional<Point> point(Entry entry, Column ref, Column pin) {
    return entry.take(ref.name(), refs.point(entry.text(ref.name()), entry.text(pin.name())));
  }

  private List<Item> items() throws UnusableInput {
    Map<String, Item> items = new LinkedHashMap<>();
    each(
        "Items",
        List.of(REF, KIND, PART, ARRANGEMENT, LOCATION, MATES, NOTE),
        List.of(REF),
        entry -> {
          String ref = entry.text(REF.name());
          if (ref.isEmpty()) {
            entry.error(REF.name(), "an item without a reference designator", "");
            return;
          }
          ref = refs.spelling(ref);
          Item item =
              new Item(
                  ref,
                  entry.text(KIND.name()),
                  entry.text(PART.name()),
                  entry.text(ARRANGEMENT.name()),
                  entry.text(LOCATION.name()),
                  entry.text(MATES.name()),
                  entry.text(NOTE.name()),
                  entry.place());
          if (items.putIfAbsent(ref, item) != null) {
            entry.error(REF.name(), "the item " + ref + " is listed twice", "");
          }
        });
    return List.copyOf(items.values());
  }

  private List<PinDetail> pins() throws UnusableInput {
    Map<Point, PinDetail> pins = new LinkedHashMap<>();
    each(
        "Pins",
        List.of(REF, PIN, SIZE, CONTACT, X, Y, NOTE),
        List.of(REF, PIN),
        entry ->
            point(entry, REF, PIN)
                .ifPresent(
                    point -> {
                      PinDetail pin =
                          new PinDetail(
                              point,
                              shared(entry.text(SIZE.name())),
                              shared(entry.text(CONTACT.name())),
                              millimetres(entry, X),
                              millimetres(entry, Y),
                              shared(entry.text(NOTE.name())),
                              entry.place());
                      if (pins.putIfAbsent(point, pin) != null) {
                        entry.error(PIN.name(), "the pin " + point + " is listed twice", "");
                      }
                    }));
    return List.copyOf(pins.values());
  }

  private static OptionalDouble millimetres(Entry entry, Column column) {
    String unit = entry.headingUnit(column.name());
    if (!unit.isEmpty() && !unit.equalsIgnoreCase("mm")) {
      entry.error(column.name(), "face positions are in mm, not in " + unit, "");
      return OptionalDouble.empty();
    }
    return number(entry, column);
  }

  private static OptionalDouble number(Entry entry, Column column) {
    return entry.number(entry.text(column.name()), column);
  }

  private List<Link> links() throws UnusableInput {
    List<Link> links = new ArrayList<>();
    each(
        "Links",
        List.of(REF, PIN, TO_PIN, NOTE),
        List.of(PIN, TO_PIN),
        entry ->
            pair(entry)
                .ifPresent(
                    pair ->
                        links.add(
                            new Link(
                                pair.from(),
                                pair.to(),
                                shared(entry.text(NOTE.name())),
                                entry.place()))));
    return links;
  }

  private record Pair(Point from, Point to) {}

  /** Two points of one item, or two full points where the item's cell is blank. */
  private Optional<Pair> pair(Entry entry) {
    Optional<Point> from = pairEnd(entry, PIN);
    Optional<Point> to = pairEnd(entry, TO_PIN);
    if (from.isEmpty() || to.isEmpty()) {
      return Optional.empty();
    }
    if (from.equals(to)) {
      entry.error(TO_PIN.name(), from.get() + " is joined to itself", "");
      return Optional.empty();
    }
    return Optional.of(new Pair(from.get(), to.get()));
  }

  private Optional<Point> pairEnd(Entry entry, Column pin) {
    String ref = entry.text(REF.name());
    String text = entry.text(pin.name());
    if (text.isEmpty()) {
      entry.error(pin.name(), "expected a pin", "");
      return Optional.empty();
    }
    return entry.take(pin.name(), ref.isEmpty() ? refs.point(text, "") : refs.point(ref, text));
  }

  private static final class SwitchRows {
    final List<String> states = new ArrayList<>();
    final List<Switch.Contact> contacts = new ArrayList<>();
  }

  private List<Switch> switches() throws UnusableInput {
    Map<String, SwitchRows> rows = new LinkedHashMap<>();
    each(
        "Switches",
        List.of(REF, STATE, PIN, TO_PIN, NOTE),
        List.of(REF, STATE, PIN, TO_PIN),
        entry -> switchRow(entry, rows));
    return rows.entrySet().stream()
        .map(
            entry ->
                new Switch(
                    entry.getKey(),
                    List.copyOf(entry.getValue().states),
                    List.copyOf(entry.getValue().contacts)))
        .toList();
  }

  private void switchRow(Entry entry, Map<String, SwitchRows> rows) {
    String refText = entry.text(REF.name());
    String stateText = entry.text(STATE.name());
    if (refText.isEmpty() || stateText.isEmpty()) {
      entry.error(
          (refText.isEmpty() ? REF : STATE).name(),
          "a switch row needs the switch and its position",
          "");
      return;
    }
    String ref = refs.spelling(refText);
    SwitchRows one = rows.computeIfAbsent(ref, key -> new SwitchRows());
    String state =
        one.states.stream()
            .filter(known -> known.equalsIgnoreCase(stateText))
            .findFirst()
            .orElse(stateText);
    if (!one.states.contains(state)) {
      one.states.add(state);
    }
    if (entry.text(PIN.name()).isEmpty() && entry.text(TO_PIN.name()).isEmpty()) {
      return;
    }
    pair(entry)
        .ifPresent(
            pair ->
                one.contacts.add(
                    new Switch.Contact(ref, state, pair.from(), pair.to(), entry.place())));
  }

  private List<Part> parts() throws UnusableInput {
    List<Part> parts = new ArrayList<>();
    each(
        "Parts",
        List.of(REF, PIN, TO_PIN, KIND, OHMS, TOLERANCE, MAX_TEST_VOLTS, NOTE),
        List.of(REF, PIN, TO_PIN),
        entry ->
            pair(entry)
                .ifPresent(
                    pair ->
                        parts.add(
                            new Part(
                                pair.from().ref(),
                                pair.from(),
                                pair.to(),
                                kind(entry),
                                ohms(entry),
                                tolerance(entry),
                                maxTestVolts(entry),
                                shared(entry.text(NOTE.name())),
                                entry.place()))));
    return parts;
  }

  private List<Load> loads(Harness unit) throws UnusableInput {
    List<Load> loads = new ArrayList<>();
    Set<Point> known = new HashSet<>();
    if (sheets.find("Loads").isPresent()) {
      known.addAll(unit.points());
    }
    each(
        "Loads",
        List.of(
            NAME, FROM_PIN, FROM, TO_PIN, TO, AMPS, VOLTS, ALLOWED_DROP, WIRE_CELSIUS, DUTY, NOTE),
        List.of(FROM, TO, AMPS),
        entry -> {
          Optional<Point> from = point(entry, FROM, FROM_PIN);
          Optional<Point> to = point(entry, TO, TO_PIN);
          OptionalDouble amps = number(entry, AMPS);
          if (amps.isEmpty()) {
            entry.error(AMPS.name(), "a load needs its amps", "");
          } else if (isKnown(entry, FROM, from, known) && isKnown(entry, TO, to, known)) {
            loads.add(
                new Load(
                    entry.text(NAME.name()),
                    from.orElseThrow(),
                    to.orElseThrow(),
                    amps.getAsDouble(),
                    number(entry, VOLTS),
                    number(entry, ALLOWED_DROP),
                    number(entry, WIRE_CELSIUS),
                    entry.text(DUTY.name()).toLowerCase(Locale.ROOT).startsWith("int"),
                    entry.place()));
          }
        });
    return List.copyOf(loads);
  }

  /** A load at a point that nothing else names is a misspelt pin. */
  private static boolean isKnown(
      Entry entry, Column column, Optional<Point> point, Set<Point> known) {
    if (point.isPresent() && !known.contains(point.get())) {
      entry.error(
          column.name(),
          "the harness has no point " + point.get(),
          LookAlikes.nearest(
              point.get().toString(), known.stream().map(Point::toString).sorted().toList()));
      return false;
    }
    return point.isPresent();
  }

  private List<Crimp> crimps() throws UnusableInput {
    List<Crimp> crimps = new ArrayList<>();
    each(
        "Crimps",
        List.of(
            WIRE,
            CONTACT,
            TOOL,
            POSITIONER,
            SETTING,
            STRIP_MM,
            STRIP_IN,
            PULL_LBF,
            PULL_N,
            STANDARD,
            NOTE),
        List.of(WIRE),
        entry -> {
          crimps.add(
              new Crimp(
                  entry.text(WIRE.name()),
                  entry.text(CONTACT.name()),
                  entry.text(TOOL.name()),
                  entry.text(POSITIONER.name()),
                  entry.text(SETTING.name()),
                  eitherOf(entry, STRIP_MM, STRIP_IN, MILLIMETRES_PER_INCH),
                  eitherOf(entry, PULL_N, PULL_LBF, NEWTONS_PER_POUND_FORCE),
                  entry.text(STANDARD.name()),
                  entry.place()));
        });
    return List.copyOf(crimps);
  }

  /** One quantity that may be given in either of two units; in the first where it is. */
  private OptionalDouble eitherOf(Entry entry, Column first, Column second, double perSecond) {
    OptionalDouble inFirst = number(entry, first);
    OptionalDouble inSecond = number(entry, second);
    if (inFirst.isPresent() && inSecond.isPresent()) {
      entry.error(
          first.name(), first.name() + " and " + second.name() + " are both given; keep one", "");
    }
    return inSecond.isPresent() && inFirst.isEmpty()
        ? OptionalDouble.of(inSecond.getAsDouble() * perSecond)
        : inFirst;
  }

  private static OptionalDouble ohms(Entry entry) {
    String text = entry.text(OHMS.name());
    if (text.isEmpty()) {
      return OptionalDouble.empty();
    }
    String unit = entry.headingUnit(OHMS.name());
    return entry
        .take(OHMS.name(), OhmsCell.ohms(text, OhmsCell.unit(unit).isPresent() ? unit : ""))
        .filter(ohms -> isAboveZero(entry, ohms))
        .map(OptionalDouble::of)
        .orElse(OptionalDouble.empty());
  }

  private static boolean isAboveZero(Entry entry, double ohms) {
    if (ohms <= 0) {
      entry.error(OHMS.name(), "a part's ohms must be above 0", "");
    }
    return ohms > 0;
  }

  private static OptionalDouble tolerance(Entry entry) {
    return TolerancePercent.within(
        number(entry, TOLERANCE), "a tolerance", text -> entry.error(TOLERANCE.name(), text, ""));
  }

  private static OptionalDouble maxTestVolts(Entry entry) {
    String text = entry.text(MAX_TEST_VOLTS.name());
    return text.isEmpty()
        ? OptionalDouble.empty()
        : entry
            .take(MAX_TEST_VOLTS.name(), VoltsCell.volts(text, ""))
            .map(OptionalDouble::of)
            .orElse(OptionalDouble.empty());
  }

  private static Part.Kind kind(Entry entry) {
    String text = entry.text(KIND.name());
    String word = text.toUpperCase(Locale.ROOT);
    for (Part.Kind kind : Part.Kind.values()) {
      if (kind.name().equals(word)) {
        return kind;
      }
    }
    List<String> words = List.of("resistor", "winding", "lamp", "diode", "capacitor", "suppressor");
    entry.warning(
        KIND.name(),
        "\""
            + text
            + "\" is no kind of part that is known here ("
            + String.join(", ", words)
            + "); any reading through it will do",
        LookAlikes.nearest(text, words));
    return Part.Kind.OTHER;
  }
}
