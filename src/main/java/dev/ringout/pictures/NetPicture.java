package dev.ringout.pictures;

import dev.ringout.harness.Harness;
import dev.ringout.harness.Link;
import dev.ringout.harness.Point;
import dev.ringout.harness.Wire;
import dev.ringout.pictures.JoinPicture.Join;
import dev.ringout.pictures.JoinPicture.Look;
import dev.ringout.revision.Change;
import dev.ringout.revision.Difference;
import dev.ringout.revision.NetChange;
import dev.ringout.units.Text;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;

/** Changed nets before and after: what goes is broken and marked −, what comes thick and +. */
public final class NetPicture {
  private static final int MOST_POINTS = 36;

  private final Set<Wire> changedWires = new HashSet<>();
  private final Set<Link> changedLinks = new HashSet<>();
  private final Difference difference;

  public NetPicture(Difference difference) {
    this.difference = difference;
    difference.changes(Change.Removed.class).forEach(one -> changedWires.add(one.wire()));
    difference.changes(Change.Added.class).forEach(one -> changedWires.add(one.wire()));
    for (Change.Moved moved : difference.changes(Change.Moved.class)) {
      changedWires.addAll(List.of(moved.before(), moved.after()));
    }
    difference.changes(Change.Jumper.class).forEach(one -> changedLinks.add(one.link()));
  }

  /** The drawing (SVG). */
  public String draw(int number, NetChange change) {
    List<Join> before = joins(difference.before(), change.before(), Look.BROKEN);
    List<Join> after = joins(difference.after(), change.after(), Look.THICK);
    Set<Point> all = all(change);
    Set<Point> shown = shown(all, before, after);
    String title = Text.of("Nets %d: %s", number, change.kind().name().toLowerCase(Locale.ROOT));
    String note =
        shown.size() < all.size()
            ? Text.of(
                "%d more points of these nets, where nothing changes, are not drawn",
                all.size() - shown.size())
            : "";
    return new JoinPicture(shown)
        .draw(
            title,
            new JoinPicture.Side(title + ", BEFORE", before),
            new JoinPicture.Side(title + ", AFTER", after),
            note);
  }

  private static Set<Point> all(NetChange change) {
    Set<Point> all = new TreeSet<>();
    change.before().forEach(all::addAll);
    change.after().forEach(all::addAll);
    return all;
  }

  private List<Join> joins(Harness harness, List<List<Point>> nets, Look look) {
    Set<Point> points = new HashSet<>();
    nets.forEach(points::addAll);
    List<Join> joins = new ArrayList<>();
    for (Wire wire : harness.wires()) {
      if (points.contains(wire.from())) {
        joins.add(
            new Join(
                wire.from(),
                wire.to(),
                wire.name(),
                changedWires.contains(wire) ? look : Look.THIN));
      }
    }
    for (Link link : harness.links()) {
      if (points.contains(link.from())) {
        joins.add(
            new Join(link.from(), link.to(), "", changedLinks.contains(link) ? look : Look.THIN));
      }
    }
    return joins;
  }

  /** All points, or of large nets those where something changes and what is joined to them. */
  private static Set<Point> shown(Set<Point> all, List<Join> before, List<Join> after) {
    if (all.size() <= MOST_POINTS) {
      return all;
    }
    Set<Point> shown = new TreeSet<>();
    List<Join> joins = new ArrayList<>(before);
    joins.addAll(after);
    for (boolean thin : new boolean[] {false, true}) {
      for (Join join : joins) {
        boolean near = shown.contains(join.from()) || shown.contains(join.to());
        boolean isThin = join.look() == Look.THIN;
        if (isThin == thin && (near || !thin) && shown.size() < MOST_POINTS - 1) {
          shown.add(join.from());
          shown.add(join.to());
        }
      }
    }
    return shown;
  }
}
