package dev.ringout.jobs;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * One unit, by its list and by what was read on it.
 *
 * @param list the harness file
 * @param readings filled test sheets; later readings replace earlier ones
 * @param said what is said of the unit beside them
 * @param touched what was worked on since
 * @param ownTables a folder of tables to lay over the published ones
 */
public record UnitRequest(
    Path list, List<Path> readings, Said said, Touched touched, Optional<Path> ownTables) {
  /** What is given can't be changed afterwards. */
  public UnitRequest {
    readings = List.copyOf(readings);
  }

  /**
   * What somebody vouches for.
   *
   * @param serialNumber of the unit, for readings that give none
   * @param anyRevision whether readings against another revision of the list are accepted
   */
  public record Said(Optional<String> serialNumber, boolean anyRevision) {
    /** Nothing. */
    public static final Said NOTHING = new Said(Optional.empty(), false);
  }

  /**
   * What was worked on after all readings.
   *
   * @param wires that were touched, by their names
   * @param items that were opened, by their reference designators
   */
  public record Touched(List<String> wires, List<String> items) {
    /** What is given can't be changed afterwards. */
    public Touched {
      wires = List.copyOf(wires);
      items = List.copyOf(items);
    }

    /** Nothing. */
    public static final Touched NOTHING = new Touched(List.of(), List.of());

    /** Whether nothing was. */
    public boolean isNothing() {
      return wires.isEmpty() && items.isEmpty();
    }
  }

  /** A unit of which nothing more is said, by the published tables. */
  public static UnitRequest of(Path list, List<Path> readings) {
    return new UnitRequest(list, readings, Said.NOTHING, Touched.NOTHING, Optional.empty());
  }

  /** The same unit, of which something is said. */
  public UnitRequest with(Said other) {
    return new UnitRequest(list, readings, other, touched, ownTables);
  }

  /** The same unit, worked on since. */
  public UnitRequest with(Touched other) {
    return new UnitRequest(list, readings, said, other, ownTables);
  }

  /** All inputs that are named, the list first. */
  public List<Path> named() {
    List<Path> named = new ArrayList<>(List.of(list));
    named.addAll(readings);
    return named;
  }
}
