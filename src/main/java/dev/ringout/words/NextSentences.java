package dev.ringout.words;

import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.Expected;
import dev.ringout.diagnose.NextReading;
import dev.ringout.diagnose.NextReading.Answer;
import dev.ringout.diagnose.NextReason;
import dev.ringout.units.Numbers;
import dev.ringout.units.OhmsRange;
import dev.ringout.units.Text;
import java.util.stream.Collectors;

/** Readings to take next as sentences: why, and what each answer would mean. */
public final class NextSentences {
  private static final int MOST_MEANINGS = 2;

  private NextSentences() {}

  /** Why a reading is worth making. */
  public static String why(Circuit circuit, NextReading next) {
    return next.why().match(new Why(circuit));
  }

  /** What a reading would show, in a word or as a value. */
  public static String reads(Answer answer) {
    if (answer.poorly()) {
      return "high";
    }
    return answer.shows().match(new Reads());
  }

  /** What an answer would mean. */
  public static String answer(Answer answer) {
    int more = answer.meanings().size() - MOST_MEANINGS;
    return Text.of(
        "%s (%s): %s%s",
        reads(answer),
        Sentences.percent(answer.odds()),
        answer.meanings().stream()
            .limit(MOST_MEANINGS)
            .map(FaultSentences::slips)
            .collect(Collectors.joining("; or ")),
        more > 0 ? Text.of("; or %s", Numbers.count(more, "less likely explanation")) : "");
  }

  private record Reads() implements Expected.Cases<String> {
    @Override
    public String joined(Expected.Joined expected) {
      return "joined";
    }

    @Override
    public String apart(Expected.Apart expected) {
      return "OL";
    }

    @Override
    public String throughParts(Expected.ThroughParts parts) {
      if (Double.isInfinite(parts.lowOhms())) {
        return "OL";
      }
      return Double.isInfinite(parts.highOhms())
          ? "a part's value"
          : new OhmsRange(parts.lowOhms(), parts.highOhms()).text();
    }
  }

  private record Why(Circuit circuit) implements NextReason.Cases<String> {
    @Override
    public String tellsApart(NextReason.TellsApart reason) {
      return "tells what it is";
    }

    @Override
    public String acrossTheOpen(NextReason.AcrossTheOpen reason) {
      return "straight across " + reason.conductor().label() + ", to confirm that it is open";
    }

    @Override
    public String atTheseVeryPoints(NextReason.AtTheseVeryPoints reason) {
      return "once more, at these very points";
    }

    @Override
    public String rowOnceMore(NextReason.RowOnceMore reason) {
      return Text.of("row %d once more", reason.row().row());
    }

    @Override
    public String aloneShowsIt(NextReason.AloneShowsIt reason) {
      return "once more, before anything is touched: this reading alone shows it";
    }

    @Override
    public String leakOfTheTwo(NextReason.LeakOfTheTwo reason) {
      return "between the two alone: low here, the leak is theirs";
    }

    @Override
    public String besideThePart(NextReason.BesideThePart reason) {
      return "OL here: the " + reason.part().label() + " is bad; else what lies beside it";
    }

    @Override
    public String notMeasured(NextReason.NotMeasured reason) {
      return "on the sheet, not measured";
    }

    @Override
    public String notJoined(NextReason.NotJoined reason) {
      return "no reading joins the two";
    }

    @Override
    public String notThrough(NextReason.NotThrough reason) {
      return "no good reading goes through " + reason.conductor().label();
    }

    @Override
    public String owed(NextReason.Owed reason) {
      return UnprovenSentences.why(circuit, reason.unproven());
    }
  }
}
