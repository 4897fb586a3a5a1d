package dev.ringout.review;

import java.util.Locale;

/** What a check would have needed to look at, and did not find on the paper. */
public enum Lack {
  /** A sheet Crimps that names tools. */
  CRIMP_TOOLS,
  /** A sheet Crimps with pulls. */
  CRIMP_PULLS,
  /** A sheet Crimps with strip lengths for contacts that the table has. */
  STRIP_LENGTHS,
  /** A shield's note that says where it is landed. */
  SHIELD_NOTES,
  /** A sheet Loads, and gauges on the way of its loads. */
  LOADS_WITH_GAUGES,
  /** A load with volts that the table has, gauges and lengths on its way. */
  LOADS_WITH_VOLTS_AND_LENGTHS,
  /** A load with volts that flows through a wire of a known type. */
  LOADS_WITH_VOLTS_AND_TYPES,
  /** A wire end that names a coloured lug. */
  COLOURED_LUGS,
  /** A lug and a stud that both have a size. */
  LUG_AND_STUD_SIZES,
  /** A terminal strip or a stud. */
  STUDS,
  /** A revision in the header. */
  REVISION,
  /** An insert arrangement that the tables have. */
  INSERT_ARRANGEMENTS,
  /** An item that names the one it mates with. */
  MATES,
  /** Wires that share a Group. */
  GROUPS,
  /** A wire with a gauge and a contact or cavity of known size. */
  GAUGES_AND_CONTACT_SIZES,
  /** A wire end with a contact named and a cavity of known size. */
  CONTACTS_AND_CAVITY_SIZES,
  /** A wire of a known diameter, and a contact of known size. */
  WIRE_DIAMETERS,
  /** A wire with a type. */
  WIRE_TYPES,
  /** A wire with a colour. */
  COLOURS,
  /** A splice with the colour of its barrel, and gauges on all its wires. */
  SPLICE_BARRELS;

  /** The name for programs. */
  public String code() {
    return "no-" + name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
