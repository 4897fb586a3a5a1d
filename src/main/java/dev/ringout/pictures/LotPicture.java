package dev.ringout.pictures;

import dev.ringout.lot.Counted;
import dev.ringout.lot.JoinSpread;
import dev.ringout.lot.Lot;
import dev.ringout.lot.LotUnit;
import dev.ringout.units.Numbers;
import dev.ringout.units.Text;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** A lot at a glance. Told by shape and letter, never by tone alone. */
public final class LotPicture {
  private static final double WIDTH_MM = 260;
  private static final double NAMES_MM = 52;
  private static final double ROW_MM = 5;
  private static final double HEAD_MM = 8;
  private static final int MOST_JOINS = 24;
  private static final int MOST_BARS = 8;
  private static final int MOST_COLUMNS = 26;
  private static final int MOST_ROWS = 14;
  private static final double MILLI = 1e-3;

  private LotPicture() {}

  /** The units against the items at which they have faults; absent where there is no fault. */
  public static Optional<String> faults(Lot lot) {
    List<String> items = lot.places().stream().limit(MOST_COLUMNS).map(Counted::name).toList();
    List<LotUnit> units =
        lot.units().stream().filter(unit -> !unit.faults().isEmpty()).limit(MOST_ROWS).toList();
    if (items.isEmpty() || units.isEmpty()) {
      return Optional.empty();
    }
    Svg svg = new Svg();
    svg.text(NAMES_MM - 3, 5, 2.8, "end", "faults at");
    double step = Math.min(12, (WIDTH_MM - NAMES_MM) / items.size());
    for (int i = 0; i < items.size(); i++) {
      svg.text(NAMES_MM + (i + 0.5) * step, 5, 2.8, "middle", shortened(items.get(i), 6));
    }
    double y = HEAD_MM + ROW_MM / 2;
    for (LotUnit unit : units) {
      svg.text(NAMES_MM - 3, y + 1, 2.8, "end", shortened(unit.name(), 24));
      line(svg, NAMES_MM, y + ROW_MM / 2, NAMES_MM + items.size() * step, y + ROW_MM / 2, 0.1);
      for (int i = 0; i < items.size(); i++) {
        String item = items.get(i);
        long count = unit.faults().stream().filter(fault -> fault.items().contains(item)).count();
        if (count > 0) {
          double x = NAMES_MM + (i + 0.5) * step;
          svg.add(
              "<rect x=\"%.2f\" y=\"%.2f\" width=\"%.2f\" height=\"4\"/>",
              x - step / 2 + 0.5, y - 2, step - 1);
          svg.whiteText(x, y + 1, 2.8, Long.toString(count));
        }
      }
      y += ROW_MM;
    }
    return Optional.of(svg.drawing("Units and the items at which they have faults", WIDTH_MM, y));
  }

  /**
   * The joins in which a unit stands out, else those that spread most; absent where none is read.
   */
  public static Optional<String> joins(Lot lot) {
    List<JoinSpread> joins = new ArrayList<>(lot.joins());
    joins.removeIf(join -> join.units() < 2);
    joins.sort(Comparator.comparingDouble(join -> -farthest(join)));
    joins = joins.subList(0, Math.min(MOST_JOINS, joins.size()));
    if (joins.isEmpty()) {
      return Optional.empty();
    }
    double most = most(joins);
    Svg svg = new Svg();
    svg.text(NAMES_MM - 3, 5, 2.8, "end", "above the middle unit");
    double bottom = HEAD_MM + joins.size() * ROW_MM;
    for (int i = -4; i <= 4; i++) {
      double ohms = most * i / 4;
      line(svg, x(ohms, most), 6, x(ohms, most), bottom, i == 0 ? 0.5 : 0.1);
      svg.text(x(ohms, most), bottom + 4, 2.8, "middle", Numbers.rounded(ohms / MILLI, 2) + " mΩ");
    }
    double y = HEAD_MM + ROW_MM / 2;
    for (JoinSpread join : joins) {
      svg.text(NAMES_MM - 3, y + 1, 2.8, "end", shortened(join.join().toString(), 30));
      band(svg, lot, join, y, most);
      for (JoinSpread.OfUnit one : join.values()) {
        dot(svg, one, y, most);
      }
      y += ROW_MM;
    }
    return Optional.of(
        svg.drawing(
            "Joins over the units, each above or below the middle unit", WIDTH_MM, bottom + 6));
  }

  private static double farthest(JoinSpread join) {
    return join.values().stream().mapToDouble(one -> Math.abs(one.score())).max().orElse(0);
  }

  /** A wild value is drawn at the edge. */
  private static double most(List<JoinSpread> joins) {
    double most =
        joins.stream()
            .flatMap(join -> join.values().stream())
            .filter(one -> !one.fails())
            .mapToDouble(one -> Math.abs(one.ohms()))
            .max()
            .orElse(0);
    double scale = Math.pow(10, Math.floor(Math.log10(Math.max(most, MILLI))));
    return Math.ceil(Math.max(most, MILLI) / scale * 1.1 / 0.4) * 0.4 * scale;
  }

  private static double x(double ohms, double most) {
    double share = Math.max(-1, Math.min(1, ohms / most));
    double half = (WIDTH_MM - NAMES_MM - 24) / 2;
    return NAMES_MM + 6 + half + share * half;
  }

  /** Within it a value does not stand out. */
  private static void band(Svg svg, Lot lot, JoinSpread join, double y, double most) {
    double reach = lot.limitScore() * join.spreadOhms();
    svg.add(
        "<rect x=\"%.2f\" y=\"%.2f\" width=\"%.2f\" height=\"3\" fill=\"#ddd\"/>",
        x(-reach, most), y - 1.5, x(reach, most) - x(-reach, most));
  }

  private static void dot(Svg svg, JoinSpread.OfUnit one, double y, double most) {
    double x = x(one.ohms(), most);
    if (one.standsOut()) {
      svg.add("<path d=\"M%.2f %.2f l1.9 1.9 l-1.9 1.9 l-1.9 -1.9 Z\"/>", x, y - 1.9);
      boolean right = one.ohms() > 0;
      svg.text(
          x + (right ? 2.5 : -2.5), y + 1, 2.6, right ? "start" : "end", shortened(one.unit(), 12));
    } else {
      svg.add(
          "<circle cx=\"%.2f\" cy=\"%.2f\" r=\"0.8\" fill=\"none\" stroke=\"#000\""
              + " stroke-width=\"0.2\"/>",
          x, y);
    }
  }

  /** By how much all joins of each unit are higher, in the order of the units. */
  public static Optional<String> levels(Lot lot) {
    if (lot.units().size() < 2 || lot.joins().isEmpty()) {
      return Optional.empty();
    }
    Svg svg = new Svg();
    svg.text(NAMES_MM - 3, 4.5, 2.8, "end", "all joins of a unit");
    double height = 40;
    double most = lot.levelsOhms().stream().mapToDouble(Math::abs).max().orElse(0);
    double top = Math.max(most, MILLI / 10);
    for (int i = -1; i <= 1; i++) {
      double y = HEAD_MM + height / 2 - i * height / 2;
      line(svg, NAMES_MM, y, WIDTH_MM - 4, y, i == 0 ? 0.5 : 0.1);
      svg.text(NAMES_MM - 3, y + 1, 2.8, "end", Numbers.rounded(i * top / MILLI, 2) + " mΩ");
    }
    double step = (WIDTH_MM - NAMES_MM - 8) / lot.units().size();
    int each = (int) Math.ceil(14 / step);
    for (int i = 0; i < lot.units().size(); i++) {
      double x = NAMES_MM + 2 + (i + 0.5) * step;
      double y = HEAD_MM + height / 2 - lot.levelsOhms().get(i) / top * height / 2;
      svg.add("<circle cx=\"%.2f\" cy=\"%.2f\" r=\"0.9\"/>", x, y);
      if (i % each == 0) {
        svg.text(x, HEAD_MM + height + 5, 2.6, "middle", shortened(lot.units().get(i).name(), 9));
      }
    }
    return Optional.of(
        svg.drawing(
            "By how much all joins of each unit are higher", WIDTH_MM, height + HEAD_MM + 8));
  }

  /** Bars, the longest first, with the share of all faults that they add up to. */
  public static Optional<String> counted(String label, List<Counted> counted, boolean addUp) {
    if (counted.isEmpty()) {
      return Optional.empty();
    }
    Svg svg = new Svg();
    double all = counted.stream().mapToInt(Counted::faults).sum();
    double y = 4;
    double sum = 0;
    for (Counted one : counted.subList(0, Math.min(MOST_BARS, counted.size()))) {
      double wide = 150.0 * one.faults() / counted.get(0).faults();
      sum += one.faults();
      svg.text(NAMES_MM - 3, y + 1, 2.8, "end", shortened(one.name(), 24));
      svg.add(
          "<rect x=\"%.2f\" y=\"%.2f\" width=\"%.2f\" height=\"3.6\"/>", NAMES_MM, y - 1.8, wide);
      svg.text(
          NAMES_MM + wide + 2,
          y + 1,
          2.8,
          "start",
          Text.of("%d in %s", one.faults(), Numbers.count(one.units(), "unit"))
              + (addUp ? Text.of(", together %.0f %%", 100 * sum / all) : ""));
      y += ROW_MM;
    }
    return Optional.of(svg.drawing(label, WIDTH_MM, y));
  }

  private static void line(Svg svg, double x1, double y1, double x2, double y2, double width) {
    svg.add(
        "<path d=\"M%.2f %.2f L%.2f %.2f\" stroke=\"#000\" stroke-width=\"%.2f\"/>",
        x1, y1, x2, y2, width);
  }

  private static String shortened(String name, int most) {
    return name.length() > most ? name.substring(0, most - 1) + "…" : name;
  }
}
