package dev.ringout.print;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import dev.ringout.harness.Harness;
import dev.ringout.harness.Item;
import dev.ringout.harness.Link;
import dev.ringout.harness.PinDetail;
import dev.ringout.harness.Point;
import dev.ringout.harness.Wire;
import dev.ringout.harness.Wiring;
import dev.ringout.imports.list.ImportResult;
import dev.ringout.intake.HarnessReader;
import dev.ringout.sheet.OutFile;
import dev.ringout.sheet.OutSheet;
import dev.ringout.sheet.TabularFile;
import dev.ringout.source.Place;
import dev.ringout.source.Problems;
import dev.ringout.source.Severity;
import dev.ringout.units.Gauge;
import dev.ringout.units.Length;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Supplier;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Random wirings with every odd text there is, written as an import writes them and read again. */
class WiringRoundTripTest {
  private static final int WIRINGS = 100;
  private static final int MOST_IN_CELL = 32_767;

  private static final List<String> ITEMS =
      List.of(
          "J1",
          "P2",
          "TB-1",
          "A, B",
          "X 1:2",
          "Brücke",
          "=K1",
          "+24V",
          "12A05",
          "a/b/c",
          "-",
          "配線",
          "'Q",
          "STOWED",
          "Main \"box\"",
          "J1-2",
          "7",
          "1.5",
          "TRUE",
          "2025-01-02",
          "#REF!",
          "1E5");

  private static final List<String> PINS =
      List.of(
          "1",
          "A",
          "a",
          "-",
          "+",
          "A 1",
          "A-1",
          "SHELL",
          "=1",
          "?1",
          "1/2",
          "0",
          "ä",
          "GND (0 V)",
          "1,5",
          "1;2",
          "x_x0041_",
          "'1",
          "REST",
          "N/A",
          "3/4",
          "TRUE");

  private static final List<String> TEXTS =
      List.of(
          "",
          "",
          "",
          "RED",
          "red; blue",
          "=1+1",
          "+24 V",
          "-12 V",
          "@home",
          "'=1",
          "''-x",
          "\"",
          "say \"yes\"",
          "a,b;c",
          "Größe µΩ",
          "配線 ⚡",
          "0007",
          "1E5",
          "2025-01-02",
          "TRUE",
          "#N/A",
          "_x000D_",
          "a\u00a0b",
          "<b>&amp;");

  private static final List<String> HEADINGS =
      List.of(
          "Gauge",
          "gauge as listed",
          "Length (m)",
          "Colour",
          "Note",
          "From",
          "to pin",
          "Wire",
          "Qty",
          "qty",
          "a;b;c;d;e;f;g;h;i;j;k;l",
          "two\nlines",
          "=Sum",
          "Größe",
          "'x",
          "x, y",
          "Comment",
          "-",
          "Column D");

  @TempDir Path folder;

  private final Random random = new Random(24);

  private <T> T any(List<T> all) {
    return all.get(random.nextInt(all.size()));
  }

  private Point point() {
    return new Point(any(ITEMS), Point.pinName(any(PINS)));
  }

  private Point otherThan(Point point) {
    Point other = point();
    while (other.equals(point)) {
      other = point();
    }
    return other;
  }

  private <T> Optional<T> sometimes(Supplier<T> thing) {
    return random.nextBoolean() ? Optional.of(thing.get()) : Optional.empty();
  }

  private Gauge gauge() {
    return random.nextBoolean()
        ? new Gauge.Awg(random.nextInt(53) - 3)
        : new Gauge.SquareMillimetres((1 + random.nextInt(1000)) / 100.0);
  }

  private Wire wire(int number, Map<String, String> notes) {
    Point from = point();
    Point to = otherThan(from);
    String name = random.nextInt(4) == 0 ? any(TEXTS).strip() : "W" + number;
    return Wire.of(name.isEmpty() ? from + ">" + to : name, from, to, Place.NOWHERE)
        .madeOf(
            Wire.Make.UNSAID
                .ofGauge(sometimes(this::gauge))
                .ofType(any(TEXTS))
                .inColour(any(TEXTS))
                .ofLength(sometimes(() -> new Length(random.nextInt(100_000) / 1000.0))))
        .usedFor(Wire.Use.UNSAID.carrying(any(TEXTS)).inCable(any(TEXTS)).inGroup(any(TEXTS)))
        .withContact(Wire.End.FROM, any(TEXTS))
        .withContact(Wire.End.TO, any(TEXTS))
        .noted(any(TEXTS))
        .withNotes(notes);
  }

  private Map<String, String> notes() {
    Map<String, String> notes = new LinkedHashMap<>();
    for (String heading : HEADINGS) {
      String text =
          switch (random.nextInt(40)) {
            case 0 -> "x".repeat(MOST_IN_CELL);
            case 1 -> "a line;with;semicolons\nand one more;;;;;;;;;;;\n\"quoted\"";
            case 2, 3, 4, 5 -> any(TEXTS);
            default -> "";
          };
      if (!text.isBlank()) {
        notes.put(HarnessReader.noteHeading(heading), text);
      }
    }
    return notes;
  }

  private Wiring wiring() {
    List<Wire> wires = new ArrayList<>();
    int count = random.nextInt(6);
    for (int number = 0; number < count; number++) {
      wires.add(wire(number, notes()));
    }
    List<Link> links = new ArrayList<>();
    for (int number = wires.isEmpty() ? 0 : random.nextInt(5); number < 5; number++) {
      Point from = point();
      links.add(new Link(from, otherThan(from), any(TEXTS), Place.NOWHERE));
    }
    Set<Point> named = new LinkedHashSet<>();
    for (int number = random.nextInt(4); number < 4; number++) {
      named.add(point());
    }
    List<PinDetail> pins = new ArrayList<>();
    named.forEach(
        point ->
            pins.add(
                new PinDetail(
                    point,
                    "",
                    "",
                    OptionalDouble.empty(),
                    OptionalDouble.empty(),
                    any(TEXTS),
                    Place.NOWHERE)));
    List<Item> items =
        random.nextBoolean()
            ? List.of()
            : List.of(new Item(any(ITEMS), "", "", "", "", "", any(TEXTS), Place.NOWHERE));
    return new Wiring(wires, items, pins, links);
  }

  /** All that a wiring says but where it stands. */
  private static List<String> told(
      List<Wire> wires, List<Item> items, List<PinDetail> pins, List<Link> links) {
    List<String> told = new ArrayList<>();
    wires.forEach(
        wire ->
            told.add(
                "wire "
                    + List.of(
                        wire.name(),
                        wire.from().ref(),
                        wire.from().pin(),
                        wire.to().ref(),
                        wire.to().pin(),
                        wire.gaugeLabel(),
                        wire.length().map(Length::metres),
                        wire.type(),
                        wire.colour(),
                        wire.signal(),
                        wire.cable(),
                        wire.group(),
                        wire.fromContact(),
                        wire.toContact(),
                        wire.note())
                    + " "
                    + new TreeMap<>(wire.notes())));
    items.forEach(item -> told.add("item " + List.of(item.ref(), item.note())));
    pins.forEach(pin -> told.add("pin " + pin.point() + " " + pin.note()));
    links.forEach(
        link ->
            told.add(
                "link "
                    + List.of(
                        link.from().ref(), link.from().pin(), link.to().ref(), link.to().pin())
                    + link.note()));
    return told;
  }

  private static Harness read(Path file) throws Exception {
    Problems problems = new Problems();
    try (TabularFile table = TabularFile.open(file, "harness", problems)) {
      Harness harness = HarnessReader.read(table, "harness", problems);
      assertFalse(problems.hasErrors(), () -> problems.list().toString());
      assertEquals(
          List.of(),
          problems.list().stream().filter(one -> one.severity() != Severity.NOTE).toList());
      return harness;
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"harness.xlsx", "harness"})
  void what_is_written_is_read_as_the_same(String name) throws Exception {
    for (int number = 0; number < WIRINGS; number++) {
      Wiring wiring = wiring();
      Map<String, String> header = new LinkedHashMap<>();
      header.put("title", "Brücke, \"JB4\"; =1+1");
      header.put("revision", "-");
      List<OutSheet> sheets =
          ImportedSheets.of(
              new ImportResult(
                  List.of(),
                  wiring,
                  List.of(),
                  ImportResult.EndsFound.NONE,
                  List.of(),
                  List.of(),
                  List.of()),
              header);
      Path file = folder.resolve(number + name);
      if (name.endsWith(".xlsx")) {
        OutFile.workbook(file, sheets);
      } else {
        OutFile.folder(file, sheets);
      }
      Harness read = read(file);
      assertEquals(
          String.join("\n", told(wiring.wires(), wiring.items(), wiring.pins(), wiring.links())),
          String.join("\n", told(read.wires(), read.items(), read.pins(), read.links())),
          "wiring " + number);
      assertEquals(header, read.header());
    }
  }
}
