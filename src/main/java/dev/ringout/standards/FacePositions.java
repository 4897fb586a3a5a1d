package dev.ringout.standards;

import dev.ringout.standards.Tables.Entry;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Where the contacts of known insert arrangements stand, seen from the wiring side. */
public final class FacePositions {
  private final List<Entry> rows;

  /**
   * One contact, in millimetres from the middle of the insert: x to the right, y up.
   *
   * @param contact its name
   */
  public record Spot(String contact, double xMillimetres, double yMillimetres) {
    /** The same contact seen from the other side. */
    public Spot mirrored() {
      return new Spot(contact, -xMillimetres, yMillimetres);
    }
  }

  /**
   * An insert.
   *
   * @param spots the wiring side of the half with sockets
   * @param citation where the positions stand
   */
  public record Insert(List<Spot> spots, String citation) {}

  private FacePositions(List<Entry> rows) {
    this.rows = rows;
  }

  /** The table of face positions, a user's rows laid over the published. */
  public static FacePositions of(Tables tables) {
    return new FacePositions(tables.rows("face-positions"));
  }

  /** An insert by the name of its arrangement: {@code DE-9}, {@code DE9P} and {@code de-9s}. */
  public Optional<Insert> find(String arrangement) {
    String wanted = plain(arrangement).replaceFirst("(?<=[0-9])[PS]$", "");
    Map<String, Spot> spots = new LinkedHashMap<>();
    List<String> citations = new ArrayList<>();
    for (Entry row : rows) {
      boolean named =
          !wanted.isEmpty()
              && Arrays.stream(row.get("names").split(" ")).anyMatch(n -> plain(n).equals(wanted));
      if (named) {
        spots.putIfAbsent(
            row.get("contact"),
            new Spot(row.get("contact"), row.number("x_mm"), row.number("y_mm")));
        citations.add(row.citation());
      }
    }
    return spots.isEmpty()
        ? Optional.empty()
        : Optional.of(new Insert(List.copyOf(spots.values()), citations.get(0)));
  }

  private static String plain(String name) {
    return name.toUpperCase(Locale.ROOT).replaceAll("[^A-Z0-9]", "");
  }
}
