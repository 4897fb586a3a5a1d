package dev.ringout.pictures;

import dev.ringout.standards.FacePositions.Spot;
import dev.ringout.work.Face;
import dev.ringout.work.ItemSheet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The face of an insert with its wires in their cavities, from the wiring side and from the mating
 * side, each with its title: taking one for the other miswires the whole connector. Told by line
 * and letter alone, so that it reads in black and white.
 */
public final class FacePicture {
  private static final double VIEW_MM = 125;
  private static final double GAP_MM = 8;
  private static final double TITLE_MM = 11;
  private static final double LEGEND_MM = 7;
  private static final double MOST_PITCH_MM = 13;

  /** Of the pitch; neighbours don't touch. */
  private static final double RADIUS = 0.44;

  private static final double LEAST_LETTER_MM = 1.6;
  private static final double LETTER_WIDTH = 0.58;

  private final ItemSheet sheet;
  private final Face face;
  private final Map<String, ItemSheet.Cavity> cavities = new HashMap<>();
  private final Map<String, String> marks;
  private final double scale;
  private final double pitch;
  private final Svg svg = new Svg();

  private FacePicture(ItemSheet sheet, Face face, Map<String, String> marks) {
    this.sheet = sheet;
    this.face = face;
    this.marks = marks;
    sheet.cavities().forEach(cavity -> cavities.put(cavity.pin(), cavity));
    double nearest = nearest(face.wiringSide());
    double width = extent(face.wiringSide(), true) + nearest;
    double height = extent(face.wiringSide(), false) + nearest;
    scale = Math.min(MOST_PITCH_MM / nearest, Math.min(VIEW_MM / width, VIEW_MM / height));
    pitch = nearest * scale;
  }

  /** The drawing (SVG) of a sheet that has a face. */
  public static String of(ItemSheet sheet, Face face) {
    return new FacePicture(sheet, face, Map.of()).drawing();
  }

  /**
   * The drawing with some cavities marked.
   *
   * @param marks pin to what stands on its mark: a number or letter
   */
  public static String of(ItemSheet sheet, Face face, Map<String, String> marks) {
    return new FacePicture(sheet, face, marks).drawing();
  }

  /** How near two cavities stand; one alone stands 10 mm from nobody. */
  private static double nearest(List<Spot> spots) {
    double nearest = Double.MAX_VALUE;
    for (int i = 0; i < spots.size(); i++) {
      for (int j = 0; j < i; j++) {
        double distance =
            Math.hypot(
                spots.get(i).xMillimetres() - spots.get(j).xMillimetres(),
                spots.get(i).yMillimetres() - spots.get(j).yMillimetres());
        nearest = distance > 0 ? Math.min(nearest, distance) : nearest;
      }
    }
    return nearest == Double.MAX_VALUE ? 10 : nearest;
  }

  private static double extent(List<Spot> spots, boolean across) {
    var summary =
        spots.stream()
            .mapToDouble(spot -> across ? spot.xMillimetres() : spot.yMillimetres())
            .summaryStatistics();
    return summary.getMax() - summary.getMin();
  }

  private String drawing() {
    double drawn = extent(face.wiringSide(), false) * scale + pitch;
    double height = TITLE_MM + drawn + LEGEND_MM;
    double width = face.hasMatingSide() ? 2 * VIEW_MM + GAP_MM : VIEW_MM;
    if (face.hasMatingSide()) {
      view("WIRING SIDE", "the side on which the wires go in", face.wiringSide(), 0);
      view(
          "MATING SIDE",
          "the face that meets the other half: left and right are exchanged",
          face.matingSide(),
          VIEW_MM + GAP_MM);
    } else {
      view("WIRING SIDE", "as one stands before it", face.wiringSide(), 0);
    }
    svg.text(0, height - 1.5, 2.6, "start", legend());
    return svg.drawing("Face of " + sheet.ref(), width, height);
  }

  private String legend() {
    String unplaced =
        face.unplaced().isEmpty()
            ? ""
            : " Without a position, so not drawn: " + String.join(", ", face.unplaced()) + ".";
    return "Thick ring: a wire goes in, its name under the cavity's. Thin ring, crossed: no wire."
        + " Find the key by the letters on the insert."
        + unplaced;
  }

  private void view(String side, String what, List<Spot> spots, double left) {
    svg.boldText(left, 4, 4.2, "start", sheet.ref() + "  " + side);
    svg.text(left, 8.2, 2.8, "start", what);
    double least = spots.stream().mapToDouble(Spot::xMillimetres).min().orElse(0);
    double most = spots.stream().mapToDouble(Spot::yMillimetres).max().orElse(0);
    double across = extent(spots, true) * scale + pitch;
    double down = extent(spots, false) * scale + pitch;
    svg.add(
        "<rect x=\"%.2f\" y=\"%.2f\" width=\"%.2f\" height=\"%.2f\" rx=\"%.2f\" fill=\"none\""
            + " stroke=\"#000\" stroke-width=\"0.2\"/>",
        left + 0.2,
        TITLE_MM - 0.8,
        across,
        down + 0.4,
        Math.min(across, down) / (isRound(across, down) ? 2 : 6));
    for (Spot spot : spots) {
      double x = left + 0.2 + pitch / 2 + (spot.xMillimetres() - least) * scale;
      double y = TITLE_MM - 0.6 + pitch / 2 + (most - spot.yMillimetres()) * scale;
      cavity(spot.contact(), x, y);
    }
  }

  /** Rings of cavities make an insert that is about as high as it is wide. */
  private boolean isRound(double across, double down) {
    return face.hasMatingSide()
        && face.wiringSide().size() > 4
        && Math.max(across, down) < 1.2 * Math.min(across, down);
  }

  private void cavity(String pin, double x, double y) {
    ItemSheet.Cavity cavity = cavities.get(pin);
    List<String> wires =
        cavity == null ? List.of() : cavity.ends().stream().map(end -> end.wire().name()).toList();
    double radius = RADIUS * pitch;
    svg.add(
        "<circle cx=\"%.2f\" cy=\"%.2f\" r=\"%.2f\" fill=\"none\" stroke=\"#000\""
            + " stroke-width=\"%s\"/>",
        x, y, radius, wires.isEmpty() ? "0.15" : "0.6");
    if (wires.isEmpty()) {
      double corner = radius * Math.sqrt(0.5);
      svg.add(
          "<path d=\"M%.2f %.2f L%.2f %.2f M%.2f %.2f L%.2f %.2f\" stroke=\"#000\""
              + " stroke-width=\"0.12\"/>",
          x - corner,
          y - corner,
          x - corner / 2,
          y - corner / 2,
          x + corner / 2,
          y + corner / 2,
          x + corner,
          y + corner);
    }
    double letter = Math.min(0.3 * pitch, 3.6);
    String name =
        wires.size() > 1
            ? wires.get(0) + " +" + (wires.size() - 1)
            : wires.isEmpty() ? "" : wires.get(0);
    double small =
        Math.min(0.22 * pitch, 1.75 * radius / (LETTER_WIDTH * Math.max(1, name.length())));
    boolean named = !name.isEmpty() && small >= LEAST_LETTER_MM;
    mark(marks.getOrDefault(pin, ""), x + 0.72 * radius, y - 0.72 * radius);
    svg.boldText(x, named ? y - 0.1 * letter : y + 0.36 * letter, letter, "middle", pin);
    if (named) {
      svg.text(x, y + 0.95 * small + 0.1 * letter, small, "middle", name);
    }
  }

  /** A black lozenge with white letters, on the rim of its cavity. */
  private void mark(String mark, double x, double y) {
    if (mark.isEmpty()) {
      return;
    }
    double half = Math.max(1.7, 0.26 * pitch);
    svg.add(
        "<path d=\"M%.2f %.2f L%.2f %.2f L%.2f %.2f L%.2f %.2f Z\"/>",
        x, y - half, x + half, y, x, y + half, x - half, y);
    double letter = 1.1 * half / Math.max(1, 0.6 * mark.length());
    svg.whiteText(x, y + 0.36 * letter, letter, mark);
  }
}
