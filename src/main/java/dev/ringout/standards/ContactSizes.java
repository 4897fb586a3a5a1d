package dev.ringout.standards;

import dev.ringout.units.Gauge;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Which gauges a crimp contact of a given size takes. */
public final class ContactSizes {
  private final List<ContactSize> sizes = new ArrayList<>();
  private final CopperWire copper;

  /**
   * One contact size.
   *
   * @param finest the thinnest wire it takes
   * @param coarsest the thickest wire it takes
   * @param citation where the wire range stands, and how sure it is
   */
  public record ContactSize(
      String size,
      Gauge.Awg finest,
      Gauge.Awg coarsest,
      String pinPart,
      String socketPart,
      String citation) {}

  private ContactSizes(PublishedTable table, CopperWire copper) {
    this.copper = copper;
    for (Map<String, String> row : table.rows()) {
      boolean fromMemory = value(row, "wire_range_confidence").equals("memory");
      sizes.add(
          new ContactSize(
              value(row, "size"),
              new Gauge.Awg(Integer.parseInt(value(row, "finest_awg"))),
              new Gauge.Awg(Integer.parseInt(value(row, "coarsest_awg"))),
              value(row, "pin_part"),
              value(row, "socket_part"),
              "SAE AS39029/56 and /58 (MIL-DTL-38999 contacts)"
                  + (fromMemory ? ", wire range from memory" : "")));
    }
  }

  private static String value(Map<String, String> row, String column) {
    return row.getOrDefault(column, "");
  }

  /** The published table. */
  public static ContactSizes published(CopperWire copper) {
    return new ContactSizes(PublishedTable.load(ContactSizes.class, "contact-sizes.csv"), copper);
  }

  /** A contact size by its name ({@code 22D}) or by a contact's part number in it. */
  public Optional<ContactSize> find(String sizeOrPart) {
    String wanted =
        sizeOrPart
            .toUpperCase(Locale.ROOT)
            .replaceFirst("^AS39029", "M39029")
            .replaceFirst("^(SIZE\\s*|#\\s*)", "");
    return sizes.stream()
        .filter(
            one ->
                one.size().equals(wanted)
                    || one.pinPart().equals(wanted)
                    || one.socketPart().equals(wanted))
        .findFirst();
  }

  /**
   * Whether a contact takes a wire, by cross-section; absent where the gauge is in no table. Wires
   * within a hundredth of the range's end are taken: metric and American sizes never meet exactly.
   */
  public Optional<Boolean> takes(ContactSize contact, Gauge gauge) {
    OptionalDouble area = copper.squareMillimetres(gauge);
    if (area.isEmpty()) {
      return Optional.empty();
    }
    double finest = copper.squareMillimetres(contact.finest()).orElseThrow();
    double coarsest = copper.squareMillimetres(contact.coarsest()).orElseThrow();
    return Optional.of(
        area.getAsDouble() >= finest * 0.99 && area.getAsDouble() <= coarsest * 1.01);
  }
}
