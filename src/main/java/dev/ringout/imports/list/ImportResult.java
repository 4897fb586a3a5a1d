package dev.ringout.imports.list;

import dev.ringout.harness.Point;
import dev.ringout.harness.Wiring;
import dev.ringout.source.Severity;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * A list as it was understood.
 *
 * @param found how many wires were found at which ends
 * @param header what the list says of itself as a whole, one value of each fact
 * @param weighed every table with every way to read it
 * @param cells what became of every cell, a sheet each
 */
public record ImportResult(
    List<SheetReport> sheets,
    Wiring wiring,
    List<Finding> findings,
    EndsFound found,
    List<HeaderFact> header,
    List<Weighed> weighed,
    List<CellBalance> cells) {

  /**
   * How many wires were found at which of their ends.
   *
   * @param bothEnds wires that the list gives at both their ends
   * @param oneSided wires that one end's list gives and the other's does not
   * @param farPinNotListed wires to a pin that the other end's list does not have
   * @param farHasNoList wires whose other end has no list of its own
   */
  public record EndsFound(int bothEnds, int oneSided, int farPinNotListed, int farHasNoList) {
    /** Nothing was looked for. */
    public static final EndsFound NONE = new EndsFound(0, 0, 0, 0);
  }

  /** Whether it is certain of every table how it tells its wires. */
  public boolean isDecided() {
    return weighed.stream().allMatch(Weighed::decided);
  }

  /**
   * How one table of one sheet was understood; a sheet without any has one with {@link
   * Layout#NONE}.
   *
   * @param range the columns of the table, such as {@code A:D}
   * @param headingRow counted from 1, or 0 where there is none
   */
  public record SheetReport(
      String sheet,
      String range,
      int headingRow,
      Layout layout,
      List<ListColumn> columns,
      RowCounts rows,
      int wires,
      List<SkippedRow> skipped) {}

  /** Every row is one of these: the counts add up to the total. */
  public record RowCounts(
      int total, int wire, int spare, int heading, int note, int blank, int skipped) {}

  /**
   * A row that holds no wire that could be read.
   *
   * @param cells the row's texts
   */
  public record SkippedRow(int row, SkipReason why, List<String> cells) {

    /** Whether there probably was a wire. */
    public boolean lost() {
      return why.lost();
    }
  }

  /** Rows that probably hold wires and could not be read. */
  public long lostRows() {
    return sheets.stream()
        .flatMap(sheet -> sheet.skipped().stream())
        .filter(SkippedRow::lost)
        .count();
  }

  /** Whether the list joins any two points. */
  public boolean joinsAnything() {
    return !wiring.wires().isEmpty() || !wiring.links().isEmpty();
  }

  /** Pins that the list names and joins to nothing. */
  public long pinsWithoutWire() {
    Set<Point> joined = new HashSet<>();
    wiring.wires().forEach(wire -> joined.addAll(List.of(wire.from(), wire.to())));
    wiring.links().forEach(link -> joined.addAll(List.of(link.from(), link.to())));
    return wiring.pins().stream().filter(pin -> !joined.contains(pin.point())).count();
  }

  /** Whether a sheet of wires alone would lose something: links, or rows that were not read. */
  public boolean hasMoreThanWires() {
    return !wiring.links().isEmpty() || lostRows() > 0;
  }

  /** Whether anything found is an error. */
  public boolean hasErrors() {
    return findings.stream().anyMatch(finding -> finding.severity() == Severity.ERROR);
  }
}
