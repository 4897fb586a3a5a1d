package dev.ringout.imports.kbl;

import dev.ringout.cells.Understood;
import dev.ringout.harness.Wire;
import dev.ringout.imports.list.KblOddity;
import dev.ringout.imports.list.Oddity;
import dev.ringout.imports.list.WiringOddity;
import dev.ringout.units.Length;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;

/** What a wire or a core is made of: its part of the catalogue, and its own length. */
final class WireFacts {
  static final String WIRE = "General_wire_occurrence";
  static final String CORE = "Core_occurrence";
  private static final String LENGTH = "Length_information";
  private static final int NAMED = 4;

  /**
   * Sorts of length: the first that is there is taken. Production, Drawing, DMU and Contract are
   * edition 2.5's own; before, "special values have to be negotiated": the German words are common
   * practice, no source.
   */
  private static final List<String> LENGTHS_WANTED =
      List.of("production", "produktion", "fertigung", "drawing", "zeichnung", "dmu", "contract");

  /** The first colour: edition 2.5's own word, and the German one (common practice, no source). */
  private static final List<String> BASE = List.of("base", "grund");

  /** Of a label on the insulation, not of the insulation (edition 2.5). */
  private static final String LABEL = "label identification";

  private final Element root;
  private final References references;
  private final Values values;
  private final Findings findings;
  private final Map<String, String> groups = new HashMap<>();
  private final Map<String, Integer> severalLengths = new LinkedHashMap<>();
  private final List<String> lengthsOfNothing = new ArrayList<>();
  private final Map<Element, Understood<?>> gaugesNotTaken = new LinkedHashMap<>();
  private final Map<Element, Understood<?>> lengthsNotTaken = new LinkedHashMap<>();

  WireFacts(Element root, References references, Findings findings) {
    this.root = root;
    this.references = references;
    this.findings = findings;
    this.values = new Values(references);
    for (Element group : root.within("Wiring_group")) {
      String name = group.said("Id");
      group
          .references("Assigned_wire")
          .forEach(wire -> groups.putIfAbsent(wire, name.isEmpty() ? group.id() : name));
    }
  }

  /** What it is called: its number, else the connection's id. */
  static String name(Element wire, Element connection) {
    String number = wire.said("Wire_number");
    String cable = number.isEmpty() ? wire.said("Special_wire_id") : number;
    return cable.isEmpty() ? connection.said("Id") : cable;
  }

  /** What it is for, and what it runs in. */
  Wire.Use use(Element wire, Element connection) {
    Optional<Element> cable = wire.in(WIRE);
    String inCable = cable.map(one -> one.said("Special_wire_id")).orElse("");
    String group = groups.getOrDefault(wire.id(), "");
    return Wire.Use.UNSAID
        .carrying(connection.said("Signal_name"))
        .inCable(inCable)
        .inGroup(
            group.isEmpty()
                ? cable.map(one -> groups.getOrDefault(one.id(), "")).orElse("")
                : group);
  }

  /**
   * What it is.
   *
   * @param notes takes values that are none
   */
  Wire.Make make(Element wire, Map<String, String> notes) {
    Wire.Make made = Wire.Make.UNSAID.ofLength(length(wire, notes));
    if (made.length().filter(length -> length.metres() == 0).isPresent()) {
      lengthsOfNothing.add(name(wire, wire));
    }
    try {
      Element part =
          wire.is(CORE)
              ? references.one(wire, "Part", "Core")
              : references.one(wire, "Part", "General_wire");
      String designator = part.said("Cable_designator");
      return made.ofGauge(
              part.child("Cross_section_area")
                  .flatMap(
                      value ->
                          taken(value, "Gauge as listed", notes, Values::gauge, gaugesNotTaken)))
          .ofType(designator.isEmpty() ? number(part) : designator)
          .inColour(colour(part));
    } catch (NotRead e) {
      findings.warning(e);
      return made;
    }
  }

  /** The part number of a wire; of a core that of its cable. */
  private static String number(Element part) {
    return part.in("General_wire").orElse(part).said("Part_number");
  }

  /** The colours of its insulation, the base colour first. */
  private static String colour(Element part) {
    List<String> base = new ArrayList<>();
    List<String> others = new ArrayList<>();
    for (Element colour : part.children(part.is("Core") ? "Core_colour" : "Cover_colour")) {
      String type = colour.said("Colour_type").toLowerCase(Locale.ROOT);
      String value = colour.said("Colour_value");
      if (!value.isEmpty() && !type.equals(LABEL)) {
        (BASE.stream().anyMatch(type::startsWith) ? base : others).add(value);
      }
    }
    base.addAll(others);
    return String.join("/", base);
  }

  private Optional<Length> length(Element wire, Map<String, String> notes) {
    List<Element> all = wire.children(LENGTH);
    if (all.isEmpty()) {
      all = wire.in(WIRE).map(cable -> cable.children(LENGTH)).orElse(List.of());
    }
    if (all.isEmpty()) {
      return Optional.empty();
    }
    Element one = wanted(all);
    if (all.size() > 1) {
      severalLengths.merge(one.said("Length_type"), 1, Integer::sum);
    }
    return one.child("Length_value")
        .flatMap(value -> taken(value, "Length as listed", notes, Values::length, lengthsNotTaken));
  }

  private static Element wanted(List<Element> lengths) {
    for (String word : LENGTHS_WANTED) {
      for (Element length : lengths) {
        if (length.said("Length_type").toLowerCase(Locale.ROOT).contains(word)) {
          return length;
        }
      }
    }
    return lengths.get(0);
  }

  private interface Reader<T> {
    Understood<T> read(Values values, Element value) throws NotRead;
  }

  private <T> Optional<T> taken(
      Element value,
      String note,
      Map<String, String> notes,
      Reader<T> reader,
      Map<Element, Understood<?>> notTaken) {
    try {
      Understood<T> understood = reader.read(values, value);
      if (understood.value().isEmpty()) {
        notTaken.put(value, understood);
        notes.put(note, value.said("Value_component"));
      }
      return understood.value();
    } catch (NotRead e) {
      findings.warning(e);
      notes.put(note, value.said("Value_component"));
      return Optional.empty();
    }
  }

  private void say(Map<Element, Understood<?>> notTaken, BiFunction<String, String, Oddity> odd) {
    notTaken.forEach(
        (value, understood) ->
            findings.warning(value, odd.apply(understood.complaint(), understood.maybe())));
  }

  /** Says once which of several lengths was taken, and which are nothing. */
  void report() {
    say(gaugesNotTaken, WiringOddity.GaugeNotTaken::new);
    say(lengthsNotTaken, WiringOddity.LengthNotTaken::new);
    if (!lengthsOfNothing.isEmpty()) {
      findings.warning(
          root,
          new KblOddity.LengthOfNothing(
              lengthsOfNothing.size(), lengthsOfNothing.stream().limit(NAMED).toList()));
    }
    severalLengths.forEach(
        (type, wires) -> findings.note(root, new KblOddity.SeveralLengths(wires, type)));
  }
}
