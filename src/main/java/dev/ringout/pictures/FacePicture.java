package dev.ringout.pictures;

import dev.ringout.standards.FacePositions.Spot;
import dev.ringout.work.Face;
import dev.ringout.work.ItemSheet;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The face of an insert with its wires in their cavities, from the wiring side and from the mating
 * side, each with its title: taking one for the other miswires the whole connector. Told by line
 * and letter alone, so that it reads in black and white.
 */
public final class FacePicture {
  /** Of a view; two of them stand side by side on a page, one below the other on a phone. */
  private static final double WIDEST_MM = 125;

  private static final double TITLE_MM = 11;
  private static final double LINE_MM = 3.6;

  /** For the words above and below a view. */
  private static final double NARROWEST_MM = 86;

  /** Between two views, and what a page needs besides. */
  private static final double BESIDE_MM = 8;

  /** What the name of a cavity is read by in the hand (common practice, no source). */
  private static final double READABLE_MM = 2;

  private static final double MOST_PITCH_MM = 13;

  /** Of the pitch; neighbours don't touch. */
  private static final double RADIUS = 0.44;

  /** Of the pitch above a cavity's middle: how far down a mark goes. */
  private static final double MARK_ENDS = 0.18;

  /** Of the pitch: how far down the names in a marked cavity stand. */
  private static final double UNDER_MARK = 0.07;

  private static final double LEAST_LETTER_MM = 1.6;
  private static final double LETTER_WIDTH = 0.58;

  private final ItemSheet sheet;
  private final Face face;
  private final Map<String, ItemSheet.Cavity> cavities = new HashMap<>();
  private final Map<String, String> marks;
  private final double scale;
  private final double pitch;
  private Svg svg = new Svg();

  private FacePicture(ItemSheet sheet, Face face, Map<String, String> marks, double viewMm) {
    this.sheet = sheet;
    this.face = face;
    this.marks = marks;
    sheet.cavities().forEach(cavity -> cavities.put(cavity.pin(), cavity));
    double nearest = nearest(face.wiringSide());
    double width = extent(face.wiringSide(), true) + nearest;
    double height = extent(face.wiringSide(), false) + nearest;
    scale = Math.min(MOST_PITCH_MM / nearest, Math.min(viewMm / width, viewMm / height));
    pitch = nearest * scale;
  }

  /**
   * The views (SVG, one after the other) of a sheet that has a face.
   *
   * @param pageMm how wide the page is on which they stand
   */
  public static String of(ItemSheet sheet, Face face, double pageMm) {
    return of(sheet, face, Map.of(), pageMm);
  }

  /**
   * The views with some cavities marked. They stand side by side where their letters can be read so
   * in the hand, else one below the other.
   *
   * @param marks pin to what stands on its mark: a number or letter
   * @param pageMm how wide the page is on which they stand
   */
  public static String of(ItemSheet sheet, Face face, Map<String, String> marks, double pageMm) {
    double beside = Math.min(WIDEST_MM, (pageMm - BESIDE_MM) / 2);
    FacePicture small = new FacePicture(sheet, face, marks, beside);
    return small.letter() >= READABLE_MM
        ? small.drawing()
        : new FacePicture(sheet, face, marks, pageMm - BESIDE_MM).drawing();
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
    if (!face.hasMatingSide()) {
      return view("WIRING SIDE", "as one stands before it", face.wiringSide());
    }
    return view("WIRING SIDE", "the side on which the wires go in", face.wiringSide())
        + view(
            "MATING SIDE",
            "the face that meets the other half: left and right are exchanged",
            face.matingSide());
  }

  private List<String> legend() {
    List<String> lines =
        new ArrayList<>(
            List.of(
                "Thick ring: a wire goes in, its name under the cavity's.",
                "Thin ring, crossed: no wire.",
                "Find the key by the letters on the insert."));
    if (!face.unplaced().isEmpty()) {
      lines.add("Without a position, so not drawn: " + String.join(", ", face.unplaced()) + ".");
    }
    return lines;
  }

  private String view(String side, String what, List<Spot> spots) {
    svg = new Svg();
    svg.boldText(0, 4, 4.2, "start", sheet.ref() + "  " + side);
    svg.text(0, 8.2, 2.7, "start", what);
    double least = spots.stream().mapToDouble(Spot::xMillimetres).min().orElse(0);
    double most = spots.stream().mapToDouble(Spot::yMillimetres).max().orElse(0);
    double across = extent(spots, true) * scale + pitch;
    double down = extent(spots, false) * scale + pitch;
    svg.add(
        "<rect x=\"%.2f\" y=\"%.2f\" width=\"%.2f\" height=\"%.2f\" rx=\"%.2f\" fill=\"none\""
            + " stroke=\"#000\" stroke-width=\"0.2\"/>",
        0.3,
        TITLE_MM - 0.8,
        across,
        down + 0.4,
        Math.min(across, down) / (isRound(across, down) ? 2 : 6));
    for (Spot spot : spots) {
      double x = 0.3 + pitch / 2 + (spot.xMillimetres() - least) * scale;
      double y = TITLE_MM - 0.6 + pitch / 2 + (most - spot.yMillimetres()) * scale;
      cavity(spot.contact(), x, y);
    }
    double below = TITLE_MM + down + LINE_MM;
    for (String line : legend()) {
      svg.text(0, below, 2.7, "start", line);
      below += LINE_MM;
    }
    return svg.drawing(
        "Face of " + sheet.ref() + ", " + side, Math.max(NARROWEST_MM, across + 0.6), below);
  }

  /** How high the name of a cavity is. */
  private double letter() {
    return Math.min(0.3 * pitch, 3.6);
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
    double letter = letter();
    String name =
        wires.size() > 1
            ? wires.get(0) + " +" + (wires.size() - 1)
            : wires.isEmpty() ? "" : wires.get(0);
    String mark = marks.getOrDefault(pin, "");
    double low = mark.isEmpty() ? 0 : UNDER_MARK * pitch;
    double across = (mark.isEmpty() ? 1.75 : 1.4) * radius;
    double small = Math.min(0.22 * pitch, across / (LETTER_WIDTH * Math.max(1, name.length())));
    boolean named = !name.isEmpty() && small >= LEAST_LETTER_MM;
    mark(mark, x, y);
    svg.boldText(x, low + (named ? y - 0.1 * letter : y + 0.36 * letter), letter, "middle", pin);
    if (named) {
      svg.text(x, low + y + 0.95 * small + 0.1 * letter, small, "middle", name);
    }
  }

  /**
   * The upper part of a cavity in black, with white letters: what stands out of a ring touches the
   * next one.
   */
  private void mark(String mark, double x, double y) {
    if (mark.isEmpty()) {
      return;
    }
    double radius = RADIUS * pitch;
    double chord = MARK_ENDS * pitch;
    double half = Math.sqrt(radius * radius - chord * chord);
    svg.add(
        "<path d=\"M%.2f %.2f A%.2f %.2f 0 0 1 %.2f %.2f Z\"/>",
        x - half, y - chord, radius, radius, x + half, y - chord);
    double letter = Math.min(0.25 * pitch, 1.2 * half / (LETTER_WIDTH * mark.length()));
    svg.whiteText(x, y - (radius + chord) / 2 + 0.36 * letter, letter, mark);
  }
}
