package dev.ringout.words;

import dev.ringout.review.Lack;

/** What a check of the paper lacked, as a sentence. */
public final class LackWords {
  private LackWords() {}

  /** The sentence, to stand behind the name of the check. */
  public static String of(Lack lack) {
    return switch (lack) {
      case CRIMP_TOOLS -> "there is no sheet Crimps that names tools";
      case CRIMP_PULLS -> "there is no sheet Crimps with pulls";
      case STRIP_LENGTHS ->
          "there is no sheet Crimps with strip lengths for contacts that the table has";
      case SHIELD_NOTES -> "no shield's note says \"both ends\", \"one end\" or \"float\"";
      case LOADS_WITH_GAUGES -> "there is no sheet Loads, or no gauges on the way of its loads";
      case LOADS_WITH_VOLTS_AND_LENGTHS ->
          "no load has volts that the table has, with gauge and length on every wire of its way";
      case LOADS_WITH_VOLTS_AND_TYPES ->
          "no load with volts flows through a wire whose type the tables have";
      case COLOURED_LUGS -> "no wire end names a coloured lug, such as \"red ring #10\"";
      case LUG_AND_STUD_SIZES ->
          "no lug and stud both have a size: \"red ring #10\" on the wire, \"#10\" as the pin's size";
      case STUDS -> "there are no terminal strips or studs";
      case REVISION -> "the header has no revision";
      case INSERT_ARRANGEMENTS -> "no item names an insert arrangement that the tables have";
      case MATES -> "no item names the one that it mates with";
      case GROUPS -> "no wires share a Group";
      case GAUGES_AND_CONTACT_SIZES ->
          "no wire has both a gauge and a contact or cavity of known size";
      case CONTACTS_AND_CAVITY_SIZES ->
          "no wire end has both a contact named and a cavity of known size";
      case WIRE_DIAMETERS ->
          "no wire has a type whose diameter the tables have, and a contact of known size";
      case WIRE_TYPES -> "no wire has a type";
      case COLOURS -> "no wire has a colour";
      case SPLICE_BARRELS ->
          "no splice's Part names the colour of its barrel, with gauges on all its wires";
    };
  }
}
