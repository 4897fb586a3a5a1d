package dev.ringout.standards;

import dev.ringout.units.Text;
import java.util.List;

/** The usual cautions of a test bench, each with where it comes from. */
public final class Cautions {
  private static final String WHEN = "when";
  private static final String ALWAYS = "always";
  private static final String VOLTS = "insulation";

  private Cautions() {}

  /** What stands on each page of work for which hands go into a unit. */
  public static String onPageOfHands() {
    return onPage("hands");
  }

  /** What stands on each page of steps that put volts on a unit. */
  public static String onPageOfVolts(double volts) {
    return onPage("volts").replace("{volts}", Text.of("%.0f V", volts));
  }

  private static String onPage(String of) {
    return PublishedTable.load(Cautions.class, "cautions.csv")
        .row(WHEN, of)
        .getOrDefault("caution", "");
  }

  /** A caution in one line and its source. */
  public record Caution(String text, String source) {}

  /** The cautions that apply, those of insulation tests only where such tests are meant. */
  public static List<Caution> published(boolean withInsulation) {
    return PublishedTable.load(Cautions.class, "cautions.csv").rows().stream()
        .filter(
            row -> ALWAYS.equals(row.get(WHEN)) || (withInsulation && VOLTS.equals(row.get(WHEN))))
        .map(row -> new Caution(row.getOrDefault("caution", ""), row.getOrDefault("source", "")))
        .toList();
  }
}
