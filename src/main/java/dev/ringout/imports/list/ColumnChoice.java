package dev.ringout.imports.list;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What the user says a column is: {@code From Pin}, {@code Length (in)}, {@code Points (J1)}.
 *
 * @param unit the unit of its numbers, or the item whose pins it holds, or empty
 */
public record ColumnChoice(Role role, String unit) {

  /** A choice by its text, or nothing where it names no role. */
  public static Optional<ColumnChoice> of(String text) {
    int open = text.indexOf('(');
    boolean united = open > 0 && text.strip().endsWith(")");
    String title = united ? text.substring(0, open) : text;
    String unit = united ? text.substring(open + 1, text.lastIndexOf(')')).strip() : "";
    return Role.of(title).map(role -> new ColumnChoice(role, unit));
  }

  /** Whether what stands in brackets is the item whose pins the column holds: {@code Pin (J1)}. */
  public boolean namesItem() {
    boolean pins = role == Role.PIN || role == Role.POINTS || role.isPinOfEnd();
    return pins && !unit.isEmpty();
  }

  /** What a column can be, as the user would write it. */
  public static List<String> titles() {
    return Stream.of(Role.values()).map(Role::title).toList();
  }

  /** As the user would write it. */
  @Override
  public String toString() {
    return unit.isEmpty() ? role.title() : role.title() + " (" + unit + ")";
  }
}
