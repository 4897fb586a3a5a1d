package dev.ringout.intake;

import dev.ringout.cells.Blanks;
import dev.ringout.cells.Names;
import dev.ringout.harness.Harness;
import dev.ringout.harness.Wire;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Finds the wires that a person at a bench means: {@code W012} is also {@code w12}, {@code wire 12}
 * and {@code 12}; a colour beside it must be the wire's own; and an item with a colour, {@code J2
 * BLU}, is every wire of that colour which ends there.
 */
public final class WireSearch {
  private static final Pattern NUMBERED = Pattern.compile("(.*?)0*(\\d+)");
  private static final Pattern TYPED = Pattern.compile("([A-Za-z]*)[\\s-]*0*(\\d+)");
  private static final Pattern WORD_FIRST = Pattern.compile("(?i)^wire\\s+");

  private final Harness harness;

  /** A search among the wires of a harness. */
  public WireSearch(Harness harness) {
    this.harness = harness;
  }

  /** The wires that a text may mean: none, one, or several. */
  public List<Wire> find(String text) {
    String name = WORD_FIRST.matcher(Blanks.strip(text)).replaceFirst("");
    List<Wire> named = named(name);
    return named.isEmpty() ? coloured(name) : named;
  }

  private List<Wire> named(String name) {
    List<Wire> exact = those(wire -> wire.name().equalsIgnoreCase(name));
    if (!exact.isEmpty()) {
      return exact;
    }
    Matcher typed = TYPED.matcher(name);
    return typed.matches()
        ? those(wire -> isNumbered(wire.name(), typed.group(1), typed.group(2)))
        : List.of();
  }

  private static boolean isNumbered(String listed, String letters, String number) {
    Matcher parts = NUMBERED.matcher(listed);
    return parts.matches()
        && parts.group(2).equals(number)
        && (letters.isEmpty() || letters.equalsIgnoreCase(parts.group(1).replaceAll("[\\s-]", "")));
  }

  /** One word is a colour, and the others are a wire or an item. */
  private List<Wire> coloured(String text) {
    List<String> words = List.of(text.split("\\s+", -1));
    if (words.size() < 2) {
      return List.of();
    }
    List<Wire> found = new ArrayList<>();
    for (int i : new int[] {words.size() - 1, 0}) {
      String colour = Names.key(words.get(i));
      List<String> others = new ArrayList<>(words);
      others.remove(i);
      String rest = String.join(" ", others);
      List<Wire> candidates = named(rest);
      (candidates.isEmpty() ? those(wire -> endsAt(wire, rest)) : candidates)
          .stream()
              .filter(wire -> !colour.isEmpty() && Names.key(wire.colour()).equals(colour))
              .filter(wire -> !found.contains(wire))
              .forEach(found::add);
    }
    return found;
  }

  private static boolean endsAt(Wire wire, String item) {
    return wire.from().ref().equalsIgnoreCase(item) || wire.to().ref().equalsIgnoreCase(item);
  }

  private List<Wire> those(Predicate<Wire> which) {
    return harness.wires().stream().filter(which).toList();
  }

  /** Several wires of which one is meant, with what tells them apart. */
  public static String several(String text, List<Wire> wires) {
    return "\""
        + text
        + "\" may be any of "
        + String.join(", ", wires.stream().map(WireSearch::named).limit(6).toList())
        + (wires.size() > 6 ? " and " + (wires.size() - 6) + " more" : "");
  }

  private static String named(Wire wire) {
    return wire.name() + " (" + wire.from() + " to " + wire.to() + ")";
  }
}
