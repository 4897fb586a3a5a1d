package dev.ringout.imports.find;

import dev.ringout.cells.CellText;
import dev.ringout.imports.list.ColumnCertainty;
import dev.ringout.imports.list.ColumnChoice;
import dev.ringout.imports.list.Ends;
import dev.ringout.imports.list.ListColumn;
import dev.ringout.imports.list.Role;
import dev.ringout.imports.list.Words;
import dev.ringout.imports.list.Words.Part;
import dev.ringout.source.Place;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.IntFunction;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/** Understands headings by the words in them: an end, a thing, a unit. */
public final class HeadingReader {
  /** What a heading is about, the most telling word first. */
  private static final List<String> THINGS =
      List.of(
          "parts",
          "color",
          "gauge",
          "length",
          "reading",
          "type",
          "contact",
          "pin",
          "signal",
          "wire",
          "cable",
          "group",
          "port",
          "item",
          "points",
          "note",
          "direction");

  /** Things that are certain to be no end and no pin. */
  private static final Set<String> NO_END = Set.of("direction", "parts", "reading");

  private static final Set<String> UNITS =
      Set.of("ft", "feet", "foot", "in", "inch", "inches", "mm", "cm", "m", "metres", "meters");

  private static final Pattern LETTER = Pattern.compile("[A-Z]{1,2}");

  /** {@code Pin (J1)}: brackets around a whole name are none of its signs. */
  private static final Pattern IN_BRACKETS = Pattern.compile("^[(\\[]([^()\\[\\]]+)[)\\]]$");

  private static final Pattern MEASURED =
      Pattern.compile(
          "[(\\[]\\s*(m?A|m?Ah|k?V|m?W|kW|Hz|k?\u03a9|ohms?|kg|g|\u20ac|\\$|EUR|USD|%)\\s*[)\\]]");

  /** Units that stand for nothing else in a heading. */
  private static final Set<String> MEASURES = Set.of("mm", "cm", "inch", "inches", "kg");

  private static final Set<String> GAUGE_UNITS = Set.of("awg", "mm2", "mm²", "sq mm");

  private final Words words;
  private final Map<String, ColumnChoice> overrides;
  private final IntFunction<Map<String, ColumnChoice>> byRow;
  private final int width;
  private final Map<String, ListColumn> headings = new HashMap<>();

  /**
   * Headings in these words; what the user says of one overrules them.
   *
   * @param overrides what is said of the sheet as a whole
   * @param byRow what is said of tables with headings in a row, and of the sheet as a whole
   * @param width how many columns the sheet has: their letters are no headings
   */
  public HeadingReader(
      Words words,
      Map<String, ColumnChoice> overrides,
      IntFunction<Map<String, ColumnChoice>> byRow,
      int width) {
    this.byRow = byRow;
    this.width = width;
    this.words = words;
    this.overrides = new HashMap<>();
    overrides.forEach(
        (heading, choice) -> this.overrides.put(CellText.headingKey(heading), choice));
  }

  /** Headings in these words, of which the user says nothing. */
  public static HeadingReader unsaid(Words words) {
    return new HeadingReader(words, Map.of(), row -> Map.of(), 0);
  }

  /** The reader of the headings of one row. */
  HeadingReader ofRow(int row) {
    return new HeadingReader(words, byRow.apply(row), byRow, width);
  }

  private boolean isLetterOfColumn(String heading) {
    return LETTER.matcher(heading).matches()
        && IntStream.rangeClosed(1, width).mapToObj(Place::columnLetters).anyMatch(heading::equals);
  }

  /** What the user said of a column that has no heading, by its letter. */
  Optional<ColumnChoice> byLetter(int column) {
    return Optional.ofNullable(overrides.get(CellText.headingKey(Place.columnLetters(column))));
  }

  /** Whether a cell's text is, in part or as a whole, a word for a column. */
  boolean isHeading(String text) {
    return (text.length() < 60 && alone(text).known())
        || overrides.containsKey(CellText.headingKey(text));
  }

  /** Whether a text is a word for a column, a designator beside it or not, and nothing else. */
  boolean isPlain(String text) {
    ListColumn column = alone(text);
    boolean alone = column.certainty() == ColumnCertainty.CERTAIN;
    return text.length() < 60
        && column.known()
        && (alone || Ends.isDesignator(column.item()))
        && column.role() != Role.KEEP;
  }

  /** What a heading means; texts that come again, as cells do, are looked up. */
  Role role(String text) {
    return alone(text).role();
  }

  private ListColumn alone(String text) {
    return headings.computeIfAbsent(text, key -> understand(0, text));
  }

  /** Whether a heading belongs to a list of parts to buy, which holds no wires. */
  boolean isOfPartsList(String text) {
    return words.is("parts", text);
  }

  /** A heading on its own; {@link Role#KEEP} where no word of it is known. */
  ListColumn understand(int index, String heading) {
    // A letter is a column's letter, also where a column is headed by one.
    boolean letter = isLetterOfColumn(heading);
    ColumnChoice named = letter ? null : overrides.get(CellText.headingKey(heading));
    ColumnChoice said = heading.isEmpty() || named == null ? byLetter(index).orElse(null) : named;
    List<Part> parts = words.parts(heading);
    if (said == null && parts.stream().anyMatch(part -> part.kinds().contains("old"))) {
      return new ListColumn(index, heading, Role.KEEP, "", "", true, ColumnCertainty.CERTAIN);
    }
    String side = "";
    String thing = "";
    String unit = "";
    List<String> rest = new ArrayList<>();
    for (Part part : parts) {
      boolean adds = part.kinds().contains("filler") && parts.size() > 1;
      String kind = adds ? "" : thingOf(part.kinds());
      if (GAUGE_UNITS.contains(part.phrase())) {
        unit = part.phrase();
      }
      if (isLengthUnit(part.phrase(), thing)) {
        unit = part.phrase();
      } else if (side.isEmpty() && !sideOf(part.kinds()).isEmpty()) {
        side = sideOf(part.kinds());
      } else if (!kind.isEmpty()) {
        thing = better(thing, kind);
      } else if (!part.kinds().contains("filler")) {
        rest.addAll(List.of(part.phrase().split(" ", -1)));
      }
    }
    boolean taggedEnd =
        thing.equals("wire")
            && !side.isEmpty()
            && parts.stream().anyMatch(part -> part.kinds().contains("item"));
    if (taggedEnd) {
      // A tag at one end is the device's; alone it is the wire's.
      thing = "item";
    }
    boolean measured = parts.stream().anyMatch(part -> MEASURES.contains(part.phrase()));
    measured |= MEASURED.matcher(heading).find();
    if (measured && !thing.equals("length") && !thing.equals("gauge")) {
      // "Strip (mm)" is a length to strip, not a strip.
      thing = "reading";
    }
    boolean known = !thing.isEmpty() || !side.isEmpty();
    Role role = said == null ? role(side, thing) : said.role();
    unit = said == null || said.unit().isEmpty() ? unit : said.unit();
    ColumnCertainty certainty =
        said != null
            ? ColumnCertainty.SAID
            : rest.isEmpty() && (role != Role.KEEP || isNoEnd(thing, parts))
                ? ColumnCertainty.CERTAIN
                : ColumnCertainty.LIKELY;
    if (said != null && said.namesItem()) {
      return new ListColumn(index, heading, role, ListColumn.OF_ITEM, "", known, certainty)
          .of(said.unit());
    }
    boolean bridge =
        words.is("bridge", heading) || (role == Role.PIN && words.mentions("bridge", heading));
    if (said == null && bridge) {
      return new ListColumn(
          index, heading, Role.KEEP, ListColumn.BRIDGE, "", true, ColumnCertainty.LIKELY);
    }
    boolean label = parts.stream().anyMatch(part -> part.kinds().contains("label"));
    if (said == null && label && (role == Role.FROM || role == Role.TO || role == Role.FAR)) {
      // What is printed at one end is no end.
      return new ListColumn(index, heading, Role.KEEP, "", "", true, ColumnCertainty.CERTAIN);
    }
    if (thing.equals("port") && role == Role.ITEM) {
      unit = ListColumn.PORT;
    }
    if (role == Role.SIGNAL && words.is("net", heading)) {
      unit = ListColumn.NETS;
    }
    return new ListColumn(index, heading, role, unit, itemIn(heading, rest), known, certainty);
  }

  /** A thing that is no end, and no word beside it that may be one: "Package pin" is a pin. */
  private static boolean isNoEnd(String thing, List<Part> parts) {
    return NO_END.contains(thing)
        && parts.stream()
            .noneMatch(
                part ->
                    part.kinds().contains("pin")
                        || part.kinds().contains("item")
                        || part.kinds().contains("port"));
  }

  private static boolean isLengthUnit(String phrase, String thing) {
    return thing.equals("length") && UNITS.contains(phrase);
  }

  /** What of a heading is left without the known words, as written: {@code C6} of "C6 SGNL". */
  private String itemIn(String heading, List<String> rest) {
    if (rest.isEmpty()) {
      return kindOfConnector(heading);
    }
    StringBuilder item = new StringBuilder();
    String before = "";
    String between = "";
    String device = "";
    boolean designated = false;
    for (String word : heading.strip().split("[\\s_]+", -1)) {
      List<String> tokens = Words.tokens(word);
      if (!tokens.isEmpty() && rest.containsAll(tokens)) {
        // "RACK A": a letter alone is no name.
        boolean kind = word.length() == 1 && words.isAny("item", before);
        boolean first = item.length() == 0;
        String led = device.isEmpty() || Ends.isDesignator(word) ? word : device + " " + word;
        item.append(first ? "" : between + " ")
            .append(kind && first ? before + " " + word : first ? led : word);
        designated |= Ends.isDesignator(word);
        between = "";
      } else if (item.length() > 0 && isPartOfName(word)) {
        between += " " + word;
      }
      device = words.isAny("kind of device", word) ? word : "";
      before = word;
    }
    String name = designated || between.isEmpty() ? item.toString() : item + between;
    return IN_BRACKETS.matcher(name).replaceFirst("$1");
  }

  /** {@code Relay board pin}, {@code Lock box P3}: what a thing is belongs to its name. */
  private boolean isPartOfName(String word) {
    return words.isAny("part of name", word);
  }

  /**
   * {@code Jack} of "Jack pin", {@code Sensor} of "Sensor pin": what kind of thing it is may be all
   * that a list calls it.
   */
  private String kindOfConnector(String heading) {
    String[] both = heading.strip().split("[\\s_]+", -1);
    boolean named =
        both.length == 2
            && (words.isAny("connector kind", both[0]) || words.isAny("kind of device", both[0]))
            && (words.isAny("before pin", both[1]) || words.isAny("far", both[1]));
    return named ? both[0] : "";
  }

  private static String sideOf(Set<String> kinds) {
    for (String side : List.of("far", "from", "to")) {
      if (kinds.contains(side)) {
        return side;
      }
    }
    return "";
  }

  private static String thingOf(Set<String> kinds) {
    for (String thing : THINGS) {
      if (kinds.contains(thing)) {
        return thing;
      }
    }
    return "";
  }

  private static String better(String left, String right) {
    if (left.isEmpty() || left.equals(right)) {
      return right;
    }
    // The type of a connector or contact is neither a wire's type nor a point.
    if ((left.equals("item") && right.equals("type"))
        || (left.equals("type") && right.equals("item"))) {
      return "reading";
    }
    return THINGS.indexOf(left) <= THINGS.indexOf(right) ? left : right;
  }

  private static Role role(String side, String thing) {
    return switch (thing) {
      case "color" -> Role.COLOR;
      case "gauge" -> Role.GAUGE;
      case "length" -> Role.LENGTH;
      case "type" -> Role.TYPE;
      case "contact" ->
          side.equals("from") ? Role.FROM_CONTACT : side.equals("to") ? Role.TO_CONTACT : Role.KEEP;
      case "pin" ->
          switch (side) {
            case "from" -> Role.FROM_PIN;
            case "to" -> Role.TO_PIN;
            case "far" -> Role.FAR_PIN;
            default -> Role.PIN;
          };
      case "port" -> side.isEmpty() ? Role.ITEM : role(side, "pin");
      case "signal" -> Role.SIGNAL;
      case "wire" -> side.isEmpty() ? Role.WIRE : Role.KEEP;
      case "cable" -> Role.CABLE;
      case "group" -> Role.GROUP;
      case "note" -> Role.NOTE;
      case "item", "" ->
          switch (side) {
            case "from" -> Role.FROM;
            case "to" -> Role.TO;
            case "far" -> Role.FAR;
            default -> thing.isEmpty() ? Role.KEEP : Role.ITEM;
          };
      default -> Role.KEEP;
    };
  }
}
