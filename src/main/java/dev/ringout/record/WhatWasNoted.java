package dev.ringout.record;

import dev.ringout.pictures.PhotographForPage;
import dev.ringout.pictures.PhotographForPage.NotShown;
import dev.ringout.readings.Noted;
import dev.ringout.readings.Reading;
import dev.ringout.readings.ReadingSet;
import dev.ringout.readings.UnitHistory;
import dev.ringout.record.RecordBlock.Heading;
import dev.ringout.record.RecordBlock.Words;
import dev.ringout.source.Place;
import dev.ringout.words.NotedWords;
import dev.ringout.words.ReadingPlace;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What those who worked on the unit said of it, where it is kept: beside the verdict. */
final class WhatWasNoted {
  private static final String NO_STATE = "";
  private static final List<String> HEADINGS =
      List.of("When (UTC)", "Who", "What", "Said", "Where");

  /** More of them take no more room than these: a record is read and sent as a whole. */
  private static final int MOST_LARGE = 40;

  private static final int LONG_SIDE = 1600;

  private final Map<Noted.Photograph, Integer> photographs = new LinkedHashMap<>();

  private final ReadingSet readings;
  private final ReadingPlace places;

  private WhatWasNoted(UnitHistory history, ReadingSet readings) {
    this.readings = readings;
    this.places = new ReadingPlace(readings);
    history.noted().forEach(one -> one.match(new IsPhotograph(this)));
  }

  static List<RecordBlock> of(TestRecord record) {
    UnitHistory history = record.history();
    List<RecordBlock> inside =
        new ArrayList<>(new WhatWasNoted(history, record.result().readings()).blocks(history));
    inside.addAll(EndsMade.of(record));
    inside.addAll(LedReadings.of(record));
    if (inside.isEmpty()) {
      return List.of();
    }
    List<RecordBlock> blocks = new ArrayList<>();
    blocks.add(new Heading(2, "What was noted"));
    blocks.add(
        new Words(
            "Kept with the unit by those who worked on it; it does not change the verdict.",
            false));
    blocks.addAll(inside);
    return blocks;
  }

  private List<RecordBlock> blocks(UnitHistory history) {
    List<RecordBlock> blocks = new ArrayList<>();
    List<List<String>> rows = new ArrayList<>();
    for (Noted one : history.noted()) {
      one.match(new AsRow(this)).ifPresent(rows::add);
    }
    if (!rows.isEmpty()) {
      blocks.add(FilledColumns.of("Noted", HEADINGS, rows, NO_STATE));
    }
    if (!photographs.isEmpty()) {
      blocks.add(new Heading(3, "Photographs"));
      photographs.forEach((photograph, number) -> blocks.add(block(photograph, number)));
    }
    return blocks;
  }

  private RecordBlock block(Noted.Photograph photograph, int number) {
    Optional<byte[]> bytes = photograph.bytes().read();
    if (bytes.isEmpty()) {
      return new Words(NotedWords.notShown(photograph, number, "it can't be read"), true);
    }
    try {
      PhotographForPage page = PhotographForPage.of(bytes.get(), longSide());
      return new RecordBlock.Photograph(
          page.base64(),
          page.width(),
          page.height(),
          photograph.sha256(),
          NotedWords.shows(photograph, number),
          NotedWords.caption(photograph, number));
    } catch (NotShown e) {
      String why = String.valueOf(e.getMessage());
      return new Words(NotedWords.notShown(photograph, number, why), true);
    }
  }

  private int longSide() {
    double share = Math.min(1, (double) MOST_LARGE / photographs.size());
    return (int) (LONG_SIDE * Math.sqrt(share));
  }

  /** Between which points, and in which cell. */
  private String where(Place cell) {
    Optional<String> points =
        readings.readings().stream()
            .filter(one -> one.place().equals(cell))
            .map(Reading::subject)
            .findFirst();
    return points.map(between -> between + ", ").orElse("") + places.cell(cell);
  }

  /** Numbers photographs in their order. */
  private record IsPhotograph(WhatWasNoted all) implements Noted.Cases<Boolean> {
    @Override
    public Boolean words(Noted.Words noted) {
      return false;
    }

    @Override
    public Boolean takenBack(Noted.ReadingTakenBack noted) {
      return false;
    }

    @Override
    public Boolean photograph(Noted.Photograph noted) {
      all.photographs.putIfAbsent(noted, all.photographs.size() + 1);
      return true;
    }

    @Override
    public Boolean endTicked(Noted.EndTicked noted) {
      return false;
    }

    @Override
    public Boolean signed(Noted.Signed noted) {
      return false;
    }
  }

  /** A row of the table of all; none of a tick, which is counted with the others. */
  private record AsRow(WhatWasNoted all) implements Noted.Cases<Optional<List<String>>> {
    private static Optional<List<String>> row(Noted noted, String what, String said, String where) {
      return Optional.of(List.of(NotedWords.when(noted.at()), noted.who(), what, said, where));
    }

    @Override
    public Optional<List<String>> words(Noted.Words noted) {
      return row(noted, "note", noted.text(), "");
    }

    @Override
    public Optional<List<String>> takenBack(Noted.ReadingTakenBack noted) {
      return row(noted, "reading taken back", noted.why(), all.where(noted.cell()));
    }

    @Override
    public Optional<List<String>> photograph(Noted.Photograph noted) {
      int number = all.photographs.getOrDefault(noted, 0);
      return row(noted, "photograph " + number, noted.text(), noted.points());
    }

    @Override
    public Optional<List<String>> endTicked(Noted.EndTicked noted) {
      return Optional.empty();
    }

    @Override
    public Optional<List<String>> signed(Noted.Signed noted) {
      return row(
          noted,
          "signed as " + noted.role(),
          noted.doubt().isEmpty()
              ? "the signature holds; key " + noted.fingerprint()
              : "DOES NOT COUNT: " + noted.doubt() + "; key " + noted.fingerprint(),
          "");
    }
  }
}
