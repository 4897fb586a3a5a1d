package dev.ringout.intake;

import dev.ringout.cells.TimeCell;
import dev.ringout.harness.Waiver;
import dev.ringout.sheet.Cell;
import dev.ringout.sheet.TabularFile;
import dev.ringout.source.Problems;
import dev.ringout.source.UnusableInput;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads a file of waivers: rule, subject, who, why, until. */
public final class WaiversReader {
  private static final Column RULE = Column.of("Rule");
  private static final Column SUBJECT = Column.of("Subject", "Point", "Wire");
  private static final Column WHO = Column.of("Who");
  private static final Column WHY = Column.of("Why");
  private static final Column UNTIL = Column.of("Until");

  private WaiversReader() {}

  /**
   * Reads the first sheet.
   *
   * @throws UnusableInput where the file as a whole is no table
   */
  public static List<Waiver> read(TabularFile file, Problems problems) throws UnusableInput {
    List<Waiver> waivers = new ArrayList<>();
    if (!file.sheets().isEmpty()) {
      new Table(
              file.sheets().get(0),
              List.of(RULE, SUBJECT, WHO, WHY, UNTIL),
              List.of(RULE, SUBJECT, WHO, WHY),
              problems)
          .forEach(entry -> waiver(entry).ifPresent(waivers::add));
    }
    return List.copyOf(waivers);
  }

  private static Optional<Waiver> waiver(Entry entry) {
    for (Column column : List.of(RULE, SUBJECT, WHO, WHY)) {
      if (entry.text(column.name()).isEmpty()) {
        entry.error(column.name(), "a waiver must have its rule, subject, who and why", "");
        return Optional.empty();
      }
    }
    Cell until = entry.cell(UNTIL.name());
    Optional<LocalDate> day = Optional.empty();
    if (!until.isBlank()) {
      day = entry.take(UNTIL.name(), TimeCell.day(until.text()));
      if (day.isEmpty()) {
        return Optional.empty();
      }
    }
    return Optional.of(
        new Waiver(
            entry.text(RULE.name()),
            entry.text(SUBJECT.name()),
            entry.text(WHO.name()),
            entry.text(WHY.name()),
            day,
            entry.place()));
  }
}
