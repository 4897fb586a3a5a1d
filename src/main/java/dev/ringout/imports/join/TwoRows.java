package dev.ringout.imports.join;

import dev.ringout.cells.GaugeCell;
import dev.ringout.cells.LengthCell;
import dev.ringout.imports.list.Draft;
import dev.ringout.imports.list.Draft.Value;
import dev.ringout.imports.list.ListFindings;
import dev.ringout.imports.list.Role;
import dev.ringout.imports.list.WiringOddity;
import dev.ringout.standards.ColourCodes;
import dev.ringout.standards.Tables;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/** Makes one wire of its two rows, one at each end, and says where they disagree. */
public final class TwoRows {
  private final ColourCodes colours = ColourCodes.of(Tables.published());
  private final ListFindings findings;

  /** What two rows say differently goes to the findings. */
  public TwoRows(ListFindings findings) {
    this.findings = findings;
  }

  /** One wire of its two rows; what they say differently is said, and the first row's stays. */
  Draft merge(Draft one, Draft other) {
    Map<Role, Value> texts = new EnumMap<>(Role.class);
    texts.putAll(one.texts());
    other.texts().forEach(texts::putIfAbsent);
    reportDifferences(one, other);
    Map<String, String> notes = new LinkedHashMap<>(one.notes());
    other
        .notes()
        .forEach(
            (heading, text) ->
                notes.merge(
                    heading,
                    text,
                    (left, right) -> left.equals(right) ? left : left + " / " + right));
    other
        .texts()
        .forEach(
            (role, value) -> {
              String first = one.text(role);
              if (!first.isEmpty() && !first.equals(value.text())) {
                notes.merge(
                    value.heading(),
                    value.text(),
                    (left, right) -> left.equals(right) ? left : left + " / " + right);
              }
            });
    return new Draft(
        one.name().isEmpty() ? other.name() : one.name(),
        one.from(),
        one.to(),
        one.also(),
        texts,
        notes,
        one.place(),
        one.layout());
  }

  private void reportDifferences(Draft one, Draft other) {
    String from = one.from().toString();
    String to = one.to().toString();
    for (Role role : List.of(Role.GAUGE, Role.LENGTH, Role.COLOR)) {
      if (!agree(role, one, other)) {
        findings.warning(
            Objects.requireNonNull(other.texts().get(role)).place(),
            new WiringOddity.RowsDisagree(from, to, role, one.text(role), other.text(role)));
      }
    }
    if (!one.name().isEmpty() && !other.name().isEmpty() && !one.name().equals(other.name())) {
      findings.warning(
          other.place(), new WiringOddity.NumbersDisagree(from, to, one.name(), other.name()));
    }
  }

  private boolean agree(Role role, Draft one, Draft other) {
    Value left = one.texts().get(role);
    Value right = other.texts().get(role);
    if (left == null || right == null || left.text().equals(right.text())) {
      return true;
    }
    return switch (role) {
      case GAUGE ->
          GaugeCell.gauge(left.text(), left.unit())
              .value()
              .equals(GaugeCell.gauge(right.text(), right.unit()).value());
      case LENGTH ->
          LengthCell.length(left.text(), left.unit())
              .value()
              .equals(LengthCell.length(right.text(), right.unit()).value());
      default -> isSameColour(left.text(), right.text());
    };
  }

  /** Two ways to write a colour differ only where both are understood. */
  private boolean isSameColour(String left, String right) {
    Optional<List<String>> meant = colours.meaning(left);
    Optional<List<String>> other = colours.meaning(right);
    return meant.isEmpty() || other.isEmpty() || meant.equals(other);
  }
}
