package dev.ringout.text;

import dev.ringout.check.CheckResult;
import dev.ringout.compare.Judged;
import dev.ringout.readings.Reading;
import dev.ringout.units.Text;
import dev.ringout.words.ReadingPlace;
import java.util.List;
import java.util.stream.Collectors;

/** Readings on a page: probes, value, and the cell where it was written. */
final class ReadingLines {
  private static final int MOST_READINGS = 8;
  private static final int LONGEST_UNBROKEN = 60;

  private final ReadingPlace places;
  private final Page page;

  ReadingLines(CheckResult result, Page page) {
    this.places = new ReadingPlace(result.readings());
    this.page = page;
  }

  /** Readings one below the other: probes, value, cell. */
  void shown(String lead, List<Judged> readings) {
    String indent = lead;
    for (Judged judged : readings.subList(0, Math.min(readings.size(), MOST_READINGS))) {
      String read =
          Text.of("%-26s %-9s ", judged.reading().subject(), judged.reading().measured().text());
      String place = place(judged.reading());
      if (indent.length() + read.length() + place.length() <= page.width()) {
        page.paragraph(indent, read + place);
      } else {
        page.paragraph(indent, read.stripTrailing());
        page.paragraph(" ".repeat(lead.length() + 2), place);
      }
      indent = " ".repeat(lead.length());
    }
    if (readings.size() > MOST_READINGS) {
      page.paragraph(indent, Text.of("and %d more", readings.size() - MOST_READINGS));
    }
  }

  String inLine(List<Judged> readings) {
    return readings.stream()
        .map(
            judged ->
                Text.of(
                    "%s %s (%s)",
                    judged.reading().subject(),
                    judged.reading().measured().text(),
                    place(judged.reading())))
        .collect(Collectors.joining("; "));
  }

  /** Cell and step, kept on one line where they fit. */
  String place(Reading reading) {
    String cell = places.cell(reading.place());
    String step = ReadingPlace.step(reading);
    if (step.isEmpty()) {
      return cell;
    }
    boolean fits = cell.length() + step.length() <= LONGEST_UNBROKEN;
    return cell + "," + (fits ? Page.UNBROKEN : ' ') + step.replace(' ', Page.UNBROKEN);
  }
}
