package dev.ringout.record;

import dev.ringout.circuit.UnitMap;
import dev.ringout.pictures.Html;
import java.util.Map;

/** The unit: items as boxes, wires between them as lines with their number, faults marked. */
final class UnitMapPicture {
  private final UnitMap map;
  private final double height;
  private final Chart chart = new Chart();

  private UnitMapPicture(UnitMap map) {
    this.map = map;
    this.height = Math.min(170, 40 + 9 * map.places().size());
  }

  /**
   * The drawing.
   *
   * @param faultsAt item to the numbers of its faults
   */
  static String of(UnitMap map, Map<String, String> faultsAt) {
    UnitMapPicture picture = new UnitMapPicture(map);
    map.bundles().forEach(picture::bundle);
    map.mated().forEach(picture::mated);
    map.bundles().forEach(picture::number);
    map.places().keySet().forEach(ref -> picture.item(ref, faultsAt.getOrDefault(ref, "")));
    return picture.chart.svg.drawing("Map of the unit", Chart.WIDTH_MM, picture.height);
  }

  private record Spot(double x, double y) {}

  private Spot at(String ref) {
    UnitMap.Place place = map.places().getOrDefault(ref, new UnitMap.Place(0, 0));
    return new Spot(12 + place.x() * (Chart.WIDTH_MM - 30), 8 + place.y() * (height - 16));
  }

  private void bundle(UnitMap.Bundle bundle) {
    Spot one = at(bundle.one());
    Spot other = at(bundle.other());
    double width = Math.min(1.6, 0.15 + 0.12 * Math.sqrt(bundle.wires()));
    chart.line(one.x, one.y, other.x, other.y, width);
  }

  private void mated(UnitMap.Mated mated) {
    Spot one = at(mated.one());
    Spot other = at(mated.other());
    chart.svg.add(
        "<path d=\"M%.2f %.2f L%.2f %.2f\" stroke=\"#000\" stroke-width=\"0.3\""
            + " stroke-dasharray=\"1.5 1.2\"/>",
        one.x, one.y, other.x, other.y);
  }

  private void number(UnitMap.Bundle bundle) {
    Spot one = at(bundle.one());
    Spot other = at(bundle.other());
    String cables = String.join(" ", bundle.cables());
    chart.onWhite(
        (one.x + other.x) / 2,
        (one.y + other.y) / 2,
        2.4,
        cables.isEmpty() ? "" + bundle.wires() : cables + ": " + bundle.wires());
  }

  private void item(String ref, String faults) {
    Spot at = at(ref);
    double half = Math.max(5, 1.1 * ref.length() + 1.5);
    chart.svg.add(
        "<rect x=\"%.2f\" y=\"%.2f\" width=\"%.2f\" height=\"6\" rx=\"1\" fill=\"#fff\""
            + " stroke=\"#000\" stroke-width=\"%s\"/>",
        at.x - half, at.y - 3, 2 * half, faults.isEmpty() ? "0.25" : "0.9");
    chart.svg.text(at.x, at.y + 1.1, 3.2, "middle", ref);
    if (!faults.isEmpty()) {
      faults(at.x + half - 1, at.y, faults);
    }
  }

  private void faults(double left, double y, String faults) {
    double wide = 2.4 + 1.6 * faults.length();
    chart.svg.add(
        "<rect x=\"%.2f\" y=\"%.2f\" width=\"%.2f\" height=\"4.2\"/>", left, y - 5.6, wide);
    chart.svg.add(
        "<text x=\"%.2f\" y=\"%.2f\" font-size=\"3\" text-anchor=\"middle\""
            + " fill=\"#fff\">%s</text>",
        left + wide / 2, y - 2.5, Html.escaped(faults));
  }
}
