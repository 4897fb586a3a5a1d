package dev.ringout.pictures;

import java.util.List;

/** How a net is held against all others: they are tied together, and it is taken out. */
public final class TiedRest {
  private static final double WIDTH_MM = 150;
  private static final double ROW_MM = 8;
  private static final double TOP_MM = 6;
  private static final double NET_MM = 46;
  private static final double BUS_MM = 82;
  private static final double METER_MM = 112;

  private TiedRest() {}

  /**
   * The drawing (SVG).
   *
   * @param nets the first points that are taken out, in their order: the first is out now
   */
  public static String of(List<String> nets) {
    Svg svg = new Svg();
    double y = TOP_MM;
    for (String net : nets) {
      net(svg, net, y, net.equals(nets.get(0)));
      y += ROW_MM;
    }
    net(svg, "… all others", y, false);
    net(svg, "every shell", y + ROW_MM, false);
    double bottom = y + ROW_MM;
    svg.add(
        "<path d=\"M%.2f %.2f V%.2f\" stroke=\"#000\" stroke-width=\"1.2\"/>",
        BUS_MM, TOP_MM + ROW_MM / 2, bottom + 2);
    svg.boldText(BUS_MM, bottom + 6.5, 3.4, "middle", "REST");
    meter(svg, nets.get(0), bottom);
    return svg.drawing("How to tie REST", WIDTH_MM, bottom + 9);
  }

  private static void net(Svg svg, String name, double y, boolean out) {
    svg.text(NET_MM - 5, y + 1.1, 3.2, "end", name);
    svg.add(
        "<circle cx=\"%.2f\" cy=\"%.2f\" r=\"1.3\" fill=\"#fff\" stroke=\"#000\""
            + " stroke-width=\"0.4\"/>",
        NET_MM, y);
    if (!out) {
      svg.add(
          "<path d=\"M%.2f %.2f H%.2f\" stroke=\"#000\" stroke-width=\"0.3\"/>",
          NET_MM + 1.3, y, BUS_MM);
    }
  }

  private static void meter(Svg svg, String first, double bottom) {
    double middle = (TOP_MM + bottom) / 2;
    svg.add(
        "<rect x=\"%.2f\" y=\"%.2f\" width=\"26\" height=\"12\" rx=\"1.5\" fill=\"#fff\""
            + " stroke=\"#000\" stroke-width=\"0.5\"/>",
        METER_MM, middle - 6);
    svg.text(METER_MM + 13, middle + 1.2, 3.4, "middle", "meter");
    svg.add(
        "<path d=\"M%.2f %.2f H%.2f V%.2f\" fill=\"none\" stroke=\"#000\" stroke-width=\"0.6\"/>",
        NET_MM + 1.3, TOP_MM, METER_MM + 13, middle - 6);
    svg.add(
        "<path d=\"M%.2f %.2f H%.2f V%.2f\" fill=\"none\" stroke=\"#000\" stroke-width=\"0.6\"/>",
        BUS_MM, bottom, METER_MM + 13, middle + 6);
    svg.text(NET_MM + 4, TOP_MM - 1.2, 2.8, "start", first + " is out: From");
    svg.text(BUS_MM + 3, bottom - 1.2, 2.8, "start", "To");
  }
}
