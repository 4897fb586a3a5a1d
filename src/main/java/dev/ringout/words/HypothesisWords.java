package dev.ringout.words;

import dev.ringout.harness.Link;
import dev.ringout.harness.Point;
import dev.ringout.harness.Wire;
import dev.ringout.imports.list.End;
import dev.ringout.imports.list.Evidence;
import dev.ringout.imports.list.Hypothesis;
import dev.ringout.imports.list.Weighed;
import dev.ringout.units.Text;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** A way to read a table, in words: its first wires as sentences, and what speaks for it. */
public final class HypothesisWords {
  /** Over what can be said where none of the ways shown is right. */
  public static final String NONE_OF_THESE =
      "None of these? Say what the columns are, each by its letter, or where the table is:";

  /**
   * What can be said of a table.
   *
   * @param where what the table is like
   * @param options the options for it
   */
  public record Hint(String where, String options) {}

  /** What can be said where none of the ways shown is right. */
  public static final List<Hint> HINTS =
      List.of(
          new Hint(
              "both ends in a row",
              "--column B=From --column \"C=From Pin\" --column D=To --column \"E=To Pin\""),
          new Hint(
              "a connector's pins",
              "--column A=Pin --column \"B=Far End\" --column \"C=Far Pin\" --item J1"),
          new Hint(
              "a strip's terminals",
              "--layout terminals --column C=Pin --item X1 --column D=Bridge"),
          new Hint(
              "pins of several items",
              "--column \"A=Points (J1)\" --column \"D=Points (P2)\", or --layout row-nets"),
          new Hint("one point after another", "--layout paths"),
          new Hint("nets", "--column A=Net --column B=Item --column C=Pin"),
          new Hint("pins of one name", "--join-by Signal"),
          new Hint("marks in a matrix", "--marks X --column \"A=Pin (J1)\" --item P2"),
          new Hint(
              "where, and how written",
              "--heading-row 5, --rows 5-40, --sheet NAME, --separator -"),
          new Hint("no wires", "--layout none"));

  private HypothesisWords() {}

  /** How a table stands that was not read as it is. */
  public static String standing(Weighed table) {
    return table.decided()
        ? "no wires are read here; if there are some, say which way"
        : "not certain how to read it, so nothing is read";
  }

  /** A wire as it would be read: {@code W1 runs from Drive 1 terminal U to Motor 1 terminal U}. */
  public static String sentence(Hypothesis.Sample wire) {
    if (wire.net()) {
      return end(wire.from()) + " and " + end(wire.to()) + " are on the net " + wire.wire();
    }
    String name = wire.wire().isEmpty() ? "a wire" : wire.wire();
    return name + " runs from " + end(wire.from()) + " to " + end(wire.to());
  }

  /** A wire as it was read, in the same words, with its gauge, colour and signal. */
  public static String sentence(Wire wire) {
    boolean unnamed = wire.name().equals(wire.from() + ">" + wire.to());
    List<String> parts = new ArrayList<>();
    parts.add(
        (unnamed ? "a wire" : wire.name())
            + " runs from "
            + end(wire.from())
            + " to "
            + end(wire.to()));
    Stream.of(wire.gaugeLabel(), wire.colour(), wire.signal())
        .filter(text -> !text.isEmpty())
        .forEach(parts::add);
    return String.join(", ", parts);
  }

  /** A link as it was read. */
  public static String sentence(Link link) {
    return end(link.from()) + " and " + end(link.to()) + " are joined without a wire";
  }

  private static String end(End end) {
    return end(end.item(), end.pin());
  }

  private static String end(Point point) {
    // A terminal that the list does not name has a mark in place of its name.
    return end(point.ref(), point.pin().startsWith("?") ? "" : point.pin());
  }

  private static String end(String item, String pin) {
    return pin.isEmpty() ? item + " (no terminal said)" : item + " terminal " + pin;
  }

  /** What was found that speaks for or against a way. */
  public static String evidence(Evidence found) {
    String share = Text.of("%d of %d ", found.count(), found.of());
    return switch (found.kind()) {
      case SAID -> "you said so";
      case BOTH_ENDS_NAMED -> "the headings name both ends";
      case ONE_END_NAMED -> "the headings name one end only";
      case NO_END_NAMED -> "no heading names an end";
      case ITEMS_IN_HEADINGS ->
          found.of() == 0
              ? "a heading names the item"
              : share + "columns of pins have the item or the word pin in their heading";
      case BRIDGES_BY_MARKS ->
          "the marks under "
              + found.what()
              + " are taken to join terminals that follow one another";
      case CHAIN_HEADED -> "the headings count the points of a chain";
      case PINS_UNDER_NAMES ->
          share + "cells under headings that may be devices are called as pins are";
      case HEADINGS_UNKNOWN ->
          share + "columns are taken for pins though their headings say nothing of it";
      case NETS_NAMED -> "the heading " + found.what() + " names nets";
      case SIGNALS_NAMED -> "the names under " + found.what() + " need not be nets";
      case ENDS_LOOK_LIKE_POINTS -> share + "ends have an item and a terminal";
      case ENDS_LOOK_LIKE_NOTHING -> share + "ends look like no point";
      case ITEM_UNKNOWN -> share + "ends are numbers, and no item is named";
      case ITEM_UNNAMED -> "only the sheet's name tells to which item these pins belong";
      case PINS_ONCE -> share + "pins stand once";
      case PINS_AGAIN -> share + "pins stand again and again";
      case MANY_FAR_ENDS -> share + "points would have three or more far ends";
      case SELF -> share + "wires would run from a point to itself";
      case FOUND_AT_BOTH_ENDS -> share + "wires are listed at both their ends";
      case NUMBERS_TWICE -> share + "wire numbers stand at two pins each";
      case NUMBERS_NOT_TWICE -> "only " + share + "wire numbers stand at two pins each";
      case NETS_OF_SEVERAL -> share + "nets have several points";
      case POINTS_LEFT_OUT -> share + "rows leave out a point of the chain";
      case ROWS_OF_SEVERAL -> share + "rows have several points";
      case COLUMN_UNUSED ->
          "the column "
              + (found.what().isEmpty() ? "without a heading" : found.what())
              + " looks like a part of the answer and is not used";
      case COLUMN_MATTERS ->
          "the column " + found.what() + " may change what the wires are, and is not used";
      case MEASUREMENTS -> "the heading " + found.what() + " is of measurements";
      case TITLE_OF_CHANGES -> "the title \"" + found.what() + "\" speaks of changes";
      case ONE_ITEM_ACROSS -> share + "rows hold several points of one item";
      case SAME_TEXT_ACROSS -> share + "rows hold the same text in several columns";
      case NAMES_DIFFER -> share + "rows give their pins different names";
      case QUANTITIES -> share + "ends are quantities";
      case PARTS_LIST -> "headings of a list of parts to buy";
      case NOTHING_OF_WIRES ->
          "no column tells of a wire: no number, gauge, colour, length, signal or pin";
      case ROWS_OUTSIDE -> share + "rows stand above the headings";
      case NUMBER_MAY_BE_PIN -> "a number after a name may be its terminal or a part of the name";
      case PINS_BESIDE_ITEMS -> "each end has a column of devices and one of its pins";
      case CORES_MAY_BE_PINS -> "the cores may be named after the terminals at both ends";
      case NAMES_MAY_BE_ENDS -> "what stands beside the pins may be names, or what they go to";
      case TERMINAL_BETWEEN -> "a terminal stands between what comes and what goes";
      case FAR_ENDS_MISSING -> "the far ends are not listed";
      case SAME_HEADINGS -> "a table with the same headings is read so";
      case ITEM_TWICE -> "several columns of pins belong to " + found.what();
    };
  }

  /**
   * The command that confirms a way, as it is typed in a shell.
   *
   * @param given what was typed after {@code ringout import} before
   */
  public static String command(List<String> given, Hypothesis way) {
    StringBuilder command = new StringBuilder("ringout import");
    for (String word : given) {
      command.append(' ').append(quoted(word));
    }
    for (String word : way.options()) {
      command.append(' ').append(quoted(word));
    }
    return command.toString();
  }

  /** A word as it is typed in a shell. */
  static String quoted(String word) {
    return word.matches("[A-Za-z0-9_./:=+-]+") ? word : "'" + word.replace("'", "'\\''") + "'";
  }
}
