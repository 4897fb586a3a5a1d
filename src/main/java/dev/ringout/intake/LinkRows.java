package dev.ringout.intake;

import dev.ringout.harness.Link;
import dev.ringout.source.UnusableInput;
import java.util.ArrayList;
import java.util.List;

/** The sheet {@code Links}: joints without a wire. */
final class LinkRows {
  private LinkRows() {}

  static List<Link> read(SheetsOfHarness sheets) throws UnusableInput {
    List<Link> links = new ArrayList<>();
    sheets.each(
        HarnessReader.LINKS,
        List.of(
            SheetsOfHarness.REF,
            SheetsOfHarness.PIN,
            SheetsOfHarness.TO_PIN,
            SheetsOfHarness.TO,
            SheetsOfHarness.NOTE),
        List.of(SheetsOfHarness.PIN, SheetsOfHarness.TO_PIN),
        entry ->
            sheets
                .pair(entry)
                .map(
                    pair ->
                        new Link(
                            pair.from(),
                            pair.to(),
                            sheets.shared(entry, SheetsOfHarness.NOTE),
                            entry.place()))
                .ifPresent(links::add));
    return links;
  }
}
