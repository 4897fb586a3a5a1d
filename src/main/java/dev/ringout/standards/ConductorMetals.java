package dev.ringout.standards;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Of which metal a conductor is, by what the list says of the wire. */
final class ConductorMetals {
  private static final String COPPER = "copper";
  private static final String ALUMINIUM = "aluminium";
  private static final double REFERENCE_CELSIUS = 20;

  /** Metals that lie on a conductor or around it: its coating, a shield, an armour. */
  private static final Pattern AROUND =
      Pattern.compile(
          "\\b(?:SILVER|NICKEL|TIN|ALUMINI?UM|AL|COPPER|CU|STEEL|STAINLESS STEEL|BRONZE|IRON)"
              + "[\\s/-]*(?:COATED|PLATED|PLATING|PLATE|COATING|FOIL|BRAIDED|BRAID|TAPE|ARMOU?RED"
              + "|ARMOU?R|WIRE ARMOU?RED|SCREENED|SCREEN|SHIELDED|SHIELD|MYLAR|POLYESTER|PET"
              + "|LAMINATED|LAMINATE)\\b");

  /**
   * A metal.
   *
   * @param name as a mechanic says it
   * @param values how much it resists; absent where no published value is known
   */
  record Metal(String name, Optional<Values> values) {
    /** Whether it is annealed copper, of which the tables of conductors are. */
    boolean isCopper() {
      return name.equals(COPPER);
    }

    boolean isAluminium() {
      return name.equals(ALUMINIUM);
    }
  }

  /**
   * How much a metal resists.
   *
   * @param leastOhms the least, in Ω·mm²/m at 20 °C
   * @param mostOhms the most
   * @param perKelvin by how much more of that at 20 °C for each kelvin
   */
  record Values(double leastOhms, double mostOhms, double perKelvin) {
    double timesAt(double celsius) {
      return 1 + perKelvin * (celsius - REFERENCE_CELSIUS);
    }
  }

  private record Row(Metal metal, Pattern words, Optional<Pattern> and) {
    boolean isIn(String text) {
      return words.matcher(text).find() && and.map(one -> one.matcher(text).find()).orElse(true);
    }
  }

  private final List<Row> rows;
  private final Metal copper;

  private ConductorMetals(List<Row> rows) {
    this.rows = rows;
    this.copper = rows.stream().map(Row::metal).filter(Metal::isCopper).findFirst().orElseThrow();
  }

  /** The metals of the tables, a user's rows laid over the published. */
  static ConductorMetals of(Tables tables) {
    return new ConductorMetals(
        tables.rows("conductor-metals").stream().map(ConductorMetals::row).toList());
  }

  private static Row row(Tables.Entry row) {
    return new Row(
        new Metal(row.get("metal"), values(row)),
        words(row.get("words")),
        row.get("and").isEmpty() ? Optional.empty() : Optional.of(words(row.get("and"))));
  }

  private static Optional<Values> values(Tables.Entry row) {
    double perKelvin = row.get("per_kelvin").isEmpty() ? 0 : row.number("per_kelvin");
    return row.get("least_ohm_mm2_per_m").isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Values(
                row.number("least_ohm_mm2_per_m"),
                row.number("most_ohm_mm2_per_m"),
                row.get("zero_celsius").isEmpty()
                    ? perKelvin
                    : 1 / (row.number("zero_celsius") + REFERENCE_CELSIUS)));
  }

  /** Whole words; a hyphen stands for a blank or nothing as well. */
  private static Pattern words(String words) {
    return Pattern.compile(
        Arrays.stream(words.toUpperCase(Locale.ROOT).split(" ", -1))
            .map(word -> Pattern.quote(word).replace("-", "\\E[\\s-]?\\Q"))
            .collect(Collectors.joining("|", "(?<![A-Z0-9])(?:", ")(?![A-Z0-9])")));
  }

  /** The metal that a text names; copper where it names none. */
  Metal of(String text) {
    String said = AROUND.matcher(text.toUpperCase(Locale.ROOT)).replaceAll(" ");
    return rows.stream().filter(row -> row.isIn(said)).map(Row::metal).findFirst().orElse(copper);
  }
}
