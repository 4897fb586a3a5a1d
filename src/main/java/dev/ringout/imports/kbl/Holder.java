package dev.ringout.imports.kbl;

import dev.ringout.harness.Item;
import dev.ringout.harness.Point;
import dev.ringout.imports.list.KblOddity;
import dev.ringout.imports.list.SkipReason;
import dev.ringout.source.Place;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** A connector, splice, ring terminal or box of the harness, and what its cavities are called. */
final class Holder {
  static final String CONNECTOR = "Connector_occurrence";
  static final String BOX = "Component_box_occurrence";
  static final String CAVITIES = "Cavities";
  static final String BOX_CAVITIES = "Component_cavities";

  /** How a connector is used (Connector_usage), where it is more than a wire's connector. */
  private static final String SPLICE = "splice";

  private static final Map<String, String> KINDS =
      Map.of("ring terminal", "ring terminal", "no end", "open end", "dangler", "loose contact");

  /** The pin of what has one point. */
  private static final String ONLY_PIN = "1";

  private final Element occurrence;
  private final References references;
  private final boolean splice;
  private final Map<String, String> pinOfCavity = new LinkedHashMap<>();
  private final Map<String, Integer> timesUsed = new HashMap<>();

  /** Names the cavities of an occurrence: by number, or with their slot before it where needed. */
  Holder(Element occurrence, References references) {
    this.occurrence = occurrence;
    this.references = references;
    this.splice = isSplice();
    if (!splice) {
      nameCavities();
    }
  }

  private boolean isSplice() {
    return usage().equals(SPLICE)
        || (usage().isEmpty() && partSays("Housing_type").toLowerCase(Locale.ROOT).equals(SPLICE));
  }

  private String usage() {
    return occurrence.said("Usage").toLowerCase(Locale.ROOT);
  }

  private String partSays(String what) {
    try {
      return references
          .one(occurrence, "Part", "Connector_housing", "Component_box", "Assembly_part")
          .said(what);
    } catch (NotRead e) {
      // What a connector is made of is not needed to know where its wires go.
      return "";
    }
  }

  private void nameCavities() {
    List<Element> cavities = occurrence.within(CAVITIES, BOX_CAVITIES);
    Map<String, Integer> times = new HashMap<>();
    for (Element cavity : cavities) {
      times.merge(number(cavity), 1, Integer::sum);
    }
    // Cavities without a number are no reason to call the others otherwise.
    times.remove("");
    boolean unique = times.values().stream().allMatch(count -> count == 1);
    for (Element cavity : cavities) {
      String number = number(cavity);
      String pin = unique || number.isEmpty() ? number : slot(cavity) + "." + number;
      pinOfCavity.put(cavity.id(), pin);
      timesUsed.merge(pin, 1, Integer::sum);
    }
  }

  /** The cavity's number as pins are compared; empty where it is not told. */
  private String number(Element cavity) {
    try {
      return Point.pinName(
          references.one(cavity, "Part", CAVITIES, BOX_CAVITIES).said("Cavity_number"));
    } catch (NotRead e) {
      // Said where a wire needs it.
      return "";
    }
  }

  /** What a cavity stands in: the box's connector, the slot's name, or which slot it is. */
  private String slot(Element cavity) {
    Element slot = cavity.parent().orElse(occurrence);
    String connector =
        slot.in("Component_box_connectors")
            .map(one -> named(one, "Component_box_connectors"))
            .orElse("");
    String name = named(slot, "Slots", "Integrated_slots", "Component_slots");
    boolean said = !name.isEmpty() && !name.equals("none");
    String counted = Integer.toString(1 + siblings(slot).indexOf(slot));
    if (connector.isEmpty()) {
      return said ? name : counted;
    }
    return said && !name.equals(connector) ? connector + "." + name : connector;
  }

  private static List<Element> siblings(Element slot) {
    return slot.parent().map(in -> in.children(slot.name())).orElse(List.of(slot));
  }

  private String named(Element occurred, String... kinds) {
    try {
      return references.one(occurred, "Part", kinds).said("Id");
    } catch (NotRead e) {
      // Then it is counted.
      return "";
    }
  }

  Element occurrence() {
    return occurrence;
  }

  /** Its designator; empty where it has none. */
  String name() {
    return occurrence.said("Id");
  }

  /** Designators are one whatever their case. */
  String key() {
    return name().toUpperCase(Locale.ROOT);
  }

  /** The point of a cavity. */
  Point point(Element cavity) throws NotRead {
    if (splice) {
      return only();
    }
    String pin = pinOfCavity.getOrDefault(cavity.id(), "");
    if (pin.isEmpty()) {
      Element part = references.one(cavity, "Part", CAVITIES, BOX_CAVITIES);
      throw notClear(part, new KblOddity.NameEmpty(part.name(), part.id(), "Cavity_number"));
    }
    if (timesUsed.getOrDefault(pin, 0) > 1) {
      throw notClear(cavity, new KblOddity.CavitiesOfOneName(checkedName(), pin));
    }
    return new Point(checkedName(), pin);
  }

  /** The point of a contact that names no cavity: there must be no other. */
  Point pointWithoutCavity(Element contactPoint) throws NotRead {
    boolean one =
        splice
            || (pinOfCavity.isEmpty() && occurrence.children("Contact_points").size() == 1)
            || (pinOfCavity.size() <= 1 && KINDS.containsKey(usage()));
    if (!one) {
      throw new NotRead(
          SkipReason.POINT_NOT_CLEAR,
          contactPoint.line(),
          new KblOddity.ReferenceEmpty(contactPoint.name(), contactPoint.id(), "Contacted_cavity"));
    }
    return splice || pinOfCavity.isEmpty()
        ? only()
        : new Point(checkedName(), pinOfCavity.values().iterator().next());
  }

  private Point only() throws NotRead {
    return new Point(checkedName(), ONLY_PIN);
  }

  private String checkedName() throws NotRead {
    if (name().isEmpty()) {
      throw notClear(occurrence, new KblOddity.NameEmpty(occurrence.name(), occurrence.id(), "Id"));
    }
    return name();
  }

  private static NotRead notClear(Element at, KblOddity why) {
    return new NotRead(SkipReason.POINT_NOT_CLEAR, at.line(), why);
  }

  /** Pins that are clear, of a connector with cavities. */
  List<String> pins() {
    return pinOfCavity.values().stream()
        .filter(pin -> !pin.isEmpty() && timesUsed.getOrDefault(pin, 0) == 1)
        .toList();
  }

  /** It, as an item of the harness. */
  Item item(Place place) {
    String kind =
        splice
            ? SPLICE
            : occurrence.is(BOX) ? "component box" : KINDS.getOrDefault(usage(), "connector");
    return new Item(
        name(), kind, partSays("Part_number"), "", "", "", occurrence.said("Description"), place);
  }
}
