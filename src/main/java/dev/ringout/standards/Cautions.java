package dev.ringout.standards;

import java.util.List;

/** The usual cautions of a test bench, each with where it comes from. */
public final class Cautions {
  private Cautions() {}

  /** A caution in one line and its source. */
  public record Caution(String text, String source) {}

  /** The cautions that apply, those of insulation tests only where such tests are meant. */
  public static List<Caution> published(boolean withInsulation) {
    return PublishedTable.load(Cautions.class, "cautions.csv").rows().stream()
        .filter(row -> withInsulation || !"insulation".equals(row.get("when")))
        .map(row -> new Caution(row.getOrDefault("caution", ""), row.getOrDefault("source", "")))
        .toList();
  }
}
