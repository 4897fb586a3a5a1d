package dev.ringout.imports.list;

import dev.ringout.source.Place;
import dev.ringout.source.Severity;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Collects what is suspect in a list. */
public final class ListFindings {
  private final List<Finding> found = new ArrayList<>();
  private final Set<Place> turned = new HashSet<>();

  /** Nothing is suspect yet. */
  public ListFindings() {
    // Nothing was found so far.
  }

  /** The columns of a sheet are read as rows: its places are told as they stand in the file. */
  public void turn(Place sheet) {
    turned.add(sheet);
  }

  /** Something in a cell under a heading. */
  public void add(Severity severity, Place place, String heading, Oddity oddity) {
    found.add(new Finding(severity, asInFile(place), heading, oddity));
  }

  private Place asInFile(Place place) {
    return turned.contains(Place.of(place.file(), place.sheet()))
        ? new Place(
            place.file(), place.sheet(), /* row= */ place.column(), /* column= */ place.row())
        : place;
  }

  /** Something because of which a wire could not be read. */
  public void error(Place place, Oddity oddity) {
    add(Severity.ERROR, place, "", oddity);
  }

  /** Something that may have made another wire of a wire. */
  public void warning(Place place, Oddity oddity) {
    add(Severity.WARNING, place, "", oddity);
  }

  /** Something that was settled. */
  public void note(Place place, Oddity oddity) {
    add(Severity.NOTE, place, "", oddity);
  }

  /** All that was found, in its order. */
  public List<Finding> list() {
    return List.copyOf(found);
  }
}
