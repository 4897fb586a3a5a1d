package dev.ringout.record;

import dev.ringout.compare.Judged;
import dev.ringout.diagnose.Fault;
import dev.ringout.harness.Point;
import dev.ringout.pictures.FacePicture;
import dev.ringout.record.RecordBlock.Heading;
import dev.ringout.record.RecordBlock.Picture;
import dev.ringout.record.RecordBlock.Words;
import dev.ringout.standards.Cautions;
import dev.ringout.units.Text;
import dev.ringout.words.FaultSentences;
import dev.ringout.words.Sentences;
import dev.ringout.work.ItemSheet;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** The faults: what each is, what shows it, where it lies on the faces, and how its nets are. */
final class WhatIsWrong {
  private static final double PAGE_MM = 186;
  private static final double LEAST_ODDS_SHOWN = 0.015;

  private final TestRecord record;
  private final ReadingTable readings;
  private final FaultNets nets;
  private final List<RecordBlock> blocks = new ArrayList<>();

  private WhatIsWrong(TestRecord record) {
    this.record = record;
    this.readings = new ReadingTable(record.result());
    this.nets = new FaultNets(record.result());
  }

  static List<RecordBlock> of(TestRecord record) {
    WhatIsWrong part = new WhatIsWrong(record);
    part.write();
    return part.blocks;
  }

  private void write() {
    List<Fault> faults = record.result().diagnosis().faults();
    List<Judged> unexplained = record.result().diagnosis().unexplained();
    if (!faults.isEmpty() || !unexplained.isEmpty()) {
      blocks.add(new Heading(2, "What is wrong"));
    }
    int number = 0;
    for (Fault fault : faults) {
      number++;
      fault(number, fault);
    }
    if (!unexplained.isEmpty()) {
      blocks.add(new Heading(3, "Failing readings without an explanation"));
      blocks.add(readings.of("Unexplained", unexplained));
    }
    if (!faults.isEmpty()) {
      Cautions.published(true).forEach(caution -> blocks.add(new Words(caution.text(), true)));
    }
  }

  private void fault(int number, Fault fault) {
    blocks.add(
        new Heading(
            3,
            Text.of(
                "%d  %s (%s)",
                number,
                FaultSentences.kind(fault).replace('-', ' '),
                fault.finding().certainty().word())));
    blocks.add(new Words(FaultSentences.summary(fault), false));
    blocks.add(new Words("Do: " + FaultSentences.advice(fault), false));
    for (Fault.Alternative other : fault.finding().alternatives()) {
      if (other.odds() >= LEAST_ODDS_SHOWN) {
        blocks.add(
            new Words(
                Text.of(
                    "Or: %s (%s)",
                    FaultSentences.slips(other.slips()), Sentences.percent(other.odds())),
                false));
      }
    }
    blocks.add(readings.of("Fault " + number, fault.finding().readings()));
    faces(number, fault);
    nets.picture(number, fault).ifPresent(blocks::add);
  }

  private void faces(int number, Fault fault) {
    Map<String, Map<String, String>> marks = new TreeMap<>();
    for (Point point : fault.points()) {
      marks.computeIfAbsent(point.ref(), ref -> new TreeMap<>()).put(point.pin(), "" + number);
    }
    for (ItemSheet sheet : record.faces()) {
      Map<String, String> marked = marks.getOrDefault(sheet.ref(), Map.of());
      if (!marked.isEmpty() && sheet.face().isPresent()) {
        blocks.add(
            new Picture(
                FacePicture.of(sheet, sheet.face().get(), marked, PAGE_MM),
                Text.of(
                    "%s from both sides; marked %d: %s",
                    sheet.ref(), number, String.join(", ", marked.keySet()))));
      }
    }
  }
}
