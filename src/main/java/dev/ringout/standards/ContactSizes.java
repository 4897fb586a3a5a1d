package dev.ringout.standards;

import dev.ringout.units.Gauge;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
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
   * @param seriesTwoSocket the socket of MIL-DTL-38999 series II
   * @param citation where the wire range stands, and how sure it is
   * @param fromMemory whether the published wire range is from memory
   * @param thinnestWireInches the least diameter over insulation that its grommet seals on
   * @param thickestWireInches the largest that goes through its grommet
   */
  public record ContactSize(
      String size,
      Gauge.Awg finest,
      Gauge.Awg coarsest,
      String pinPart,
      String socketPart,
      String seriesTwoSocket,
      String citation,
      boolean fromMemory,
      OptionalDouble thinnestWireInches,
      OptionalDouble thickestWireInches,
      String sealingPlug) {
    /** Whether a part number is this size's pin. */
    public boolean isPin(String part) {
      return !pinPart.isEmpty() && pinPart.equals(asPart(part));
    }

    /** Whether a part number is this size's socket. */
    public boolean isSocket(String part) {
      String named = asPart(part);
      return !named.isEmpty() && (socketPart.equals(named) || seriesTwoSocket.equals(named));
    }
  }

  /** A part number as the tables spell it. */
  static String asPart(String part) {
    return part.toUpperCase(Locale.ROOT).replaceFirst("^AS39029", "M39029");
  }

  private ContactSizes(List<Tables.Entry> rows, CopperWire copper) {
    this.copper = copper;
    for (Tables.Entry row : rows) {
      sizes.add(
          new ContactSize(
              row.get("size"),
              new Gauge.Awg(Integer.parseInt(row.get("finest_awg"))),
              new Gauge.Awg(Integer.parseInt(row.get("coarsest_awg"))),
              row.get("pin_part"),
              row.get("socket_part"),
              row.get("series_ii_socket"),
              citation(row),
              row.isPublishedFromMemory(),
              inches(row, "wire_od_min_in"),
              inches(row, "wire_od_max_in"),
              row.get("sealing_plug")));
    }
  }

  private static String citation(Tables.Entry row) {
    if (row.origin() == Tables.Origin.OWN) {
      return row.citation();
    }
    return "SAE AS39029/56 and /58 (MIL-DTL-38999 contacts)"
        + (row.isFromMemory() ? ", wire range from memory" : "");
  }

  private static OptionalDouble inches(Tables.Entry row, String column) {
    return row.get(column).isEmpty()
        ? OptionalDouble.empty()
        : OptionalDouble.of(row.number(column));
  }

  /** The published table. */
  public static ContactSizes published(CopperWire copper) {
    return of(Tables.published(), copper);
  }

  /** The table of contact sizes, a user's rows laid over the published. */
  public static ContactSizes of(Tables tables, CopperWire copper) {
    return new ContactSizes(tables.rows("contact-sizes"), copper);
  }

  /** A contact size by its name ({@code 22D}) or by a contact's part number in it. */
  public Optional<ContactSize> find(String sizeOrPart) {
    String wanted = asPart(sizeOrPart).replaceFirst("^(SIZE\\s*|#\\s*)", "");
    return sizes.stream()
        .filter(one -> one.size().equals(wanted) || one.isPin(wanted) || one.isSocket(wanted))
        .findFirst();
  }

  /** Whether a contact takes a wire, by cross-section; absent where the gauge is in no table. */
  public Optional<Boolean> takes(ContactSize contact, Gauge gauge) {
    return copper.isWithin(gauge, contact.finest(), contact.coarsest());
  }
}
