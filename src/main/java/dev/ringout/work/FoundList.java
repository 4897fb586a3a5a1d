package dev.ringout.work;

import dev.ringout.harness.Harness;
import dev.ringout.harness.Point;
import dev.ringout.readings.ReadingSet;
import dev.ringout.source.Place;
import java.util.List;

/**
 * A wire list built from the readings of a unit for which there is none. Nothing is invented: a
 * join stands in it only where it was read, and says so; which wires make a net of more than two
 * points no meter can tell.
 *
 * @param nets the points read to be joined, nets of two points and more
 * @param alone the points that were read and join nothing
 * @param unsure what the readings leave open, or say twice
 * @param next what to read next, the most telling first
 * @param pairs how many pairs of nets there are, and how many were held apart
 */
public record FoundList(
    List<Net> nets, List<Alone> alone, List<OpenQuestion> unsure, List<Next> next, Pairs pairs) {
  /** The header's name that tells a list built from readings. */
  public static final String HEADER = "as found";

  /** Whether a harness file was built from readings: it says so in its header. */
  public static boolean isSourceOf(Harness harness) {
    return !harness.headerValue(HEADER).isEmpty();
  }

  /**
   * Points that were read to be joined.
   *
   * @param joins the readings that united them
   * @param heldApart whether they were read apart from every other net
   */
  public record Net(List<Point> points, List<Join> joins, boolean heldApart) {}

  /**
   * Two points that were read joined.
   *
   * @param place the cell that shows it
   */
  public record Join(Point from, Point to, Place place) {}

  /**
   * A point that joins nothing that was read.
   *
   * @param heldApart whether it was read apart from every other net
   * @param place a cell of the same sheets
   */
  public record Alone(Point point, boolean heldApart, Place place) {}

  /**
   * A reading from a point to all that is not in its net.
   *
   * @param openNets how many other nets it was not held apart from
   */
  public record Next(Point point, int openNets) {}

  /** Pairs of nets, single points included. */
  public record Pairs(long all, long heldApart) {}

  /** The list that readings tell. */
  public static FoundList of(ReadingSet readings) {
    return new FoundListBuilder(readings).build();
  }
}
