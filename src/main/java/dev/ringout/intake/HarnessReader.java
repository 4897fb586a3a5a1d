package dev.ringout.intake;

import dev.ringout.harness.Harness;
import dev.ringout.harness.Item;
import dev.ringout.harness.Limits;
import dev.ringout.harness.Link;
import dev.ringout.harness.PinDetail;
import dev.ringout.harness.Point;
import dev.ringout.harness.Wire;
import dev.ringout.readings.Side;
import dev.ringout.sheet.Sheet;
import dev.ringout.sheet.TabularFile;
import dev.ringout.source.Problems;
import dev.ringout.source.UnusableInput;
import dev.ringout.units.Numbers;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** Reads a harness file: a workbook, a folder of CSV files, or one CSV file of wires. */
public final class HarnessReader {
  static final String WIRES = "Wires";
  static final String LINKS = "Links";

  /** Where an import leaves the rows that it could not read: while any stand there, no judging. */
  private static final String NOT_READ = "Not Read";

  private static final List<String> SHEETS =
      List.of(
          WIRES,
          "Items",
          "Pins",
          LINKS,
          "Switches",
          "Parts",
          "Loads",
          "Crimps",
          "Limits",
          "Header",
          NOT_READ);

  private final SheetsOfHarness sheets;

  private HarnessReader(SheetsOfHarness sheets) {
    this.sheets = sheets;
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
    SheetsByName sheets = new SheetsByName(file, SHEETS, WIRES, HarnessReader::refusal, problems);
    // A sheet of another name may be the wires: links alone are taken only where there is none.
    boolean linksAlone = sheets.find(LINKS).isPresent() && !sheets.passedOver();
    if (sheets.find(WIRES).isEmpty() && !linksAlone) {
      sheets.reportMissing(WIRES, shownName, problems);
    }
    return new HarnessReader(new SheetsOfHarness(sheets, problems)).read();
  }

  /** Wires on a sheet of another name are wires all the same, and nothing would ask for them. */
  private static String refusal(Sheet sheet) throws UnusableInput {
    return WireRows.areOn(sheet)
        ? "holds wires and is not read; put them on the sheet Wires, or take the sheet out"
        : "";
  }

  /** A heading under which a wire's own notes can stand: none that means a column of its own. */
  public static String noteHeading(String heading) {
    return WireRows.isColumn(heading) ? "Listed " + heading : heading;
  }

  private Harness read() throws UnusableInput {
    refuseUnread();
    Map<String, String> header = Settings.read(sheets.find("Header"), sheets.problems()).asMap();
    Settings limitRows = Settings.read(sheets.find("Limits"), sheets.problems());
    Limits limits = LimitsReader.read(limitRows);
    // Items come first: a point written in one cell is split where it names a known item.
    List<Item> items = ItemRows.read(sheets);
    List<PinDetail> pins = PinRows.read(sheets);
    List<Wire> wires = WireRows.read(sheets);
    List<Link> links = LinkRows.read(sheets);
    refuseNothing(wires, links);
    Harness unit =
        Harness.builder(limits)
            .header(header)
            .wires(wires)
            .items(items)
            .pins(pins)
            .links(links)
            .switches(SwitchRows.read(sheets))
            .parts(PartRows.read(sheets))
            .crimps(CrimpRows.read(sheets))
            .build();
    return unit.toBuilder()
        .loads(LoadRows.read(sheets, unit))
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

  /** A list of nets has links and no wires; without either there is no unit. */
  private void refuseNothing(List<Wire> wires, List<Link> links) {
    if (wires.isEmpty() && links.isEmpty() && !sheets.problems().hasErrors()) {
      sheets
          .find(WIRES)
          .ifPresentOrElse(
              sheet -> sheets.problems().error(sheet.place(), "the sheet lists no wires"),
              () ->
                  sheets
                      .find(LINKS)
                      .ifPresent(
                          sheet ->
                              sheets
                                  .problems()
                                  .error(
                                      sheet.place(),
                                      "the sheet lists no links, and there is no sheet Wires")));
    }
  }

  private void refuseUnread() throws UnusableInput {
    Optional<Sheet> unread = sheets.find(NOT_READ);
    if (unread.isEmpty()) {
      return;
    }
    int[] rows = new int[1];
    unread.get().forEachRow(row -> rows[0]++);
    if (rows[0] > 1) {
      sheets
          .problems()
          .error(
              unread.get().place(),
              Numbers.count(rows[0] - 1, "row")
                  + " of the list could not be read and may be wires; settle each on Wires, then delete it"
                  + " here");
    }
  }
}
