package dev.ringout.diagnose;

import dev.ringout.circuit.Conductor;
import dev.ringout.compare.Unproven;
import dev.ringout.harness.Part;
import dev.ringout.source.Place;

/** Why a reading is worth making. Each kind holds its facts; the writers put them into words. */
public sealed interface NextReason {
  /** What is made of it, by its kind: a writer that lacks a kind does not compile. */
  <T> T match(Cases<T> cases);

  /** It tells explanations of a fault apart: what it may show stands in its answers. */
  record TellsApart() implements NextReason {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.tellsApart(this);
    }
  }

  /** Straight across a conductor that is open for certain, before anything is taken apart. */
  record AcrossTheOpen(Conductor conductor) implements NextReason {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.acrossTheOpen(this);
    }
  }

  /** The same points once more: it seems to have been read at others. */
  record AtTheseVeryPoints() implements NextReason {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.atTheseVeryPoints(this);
    }
  }

  /** The same row once more: values seem to stand a row off. */
  record RowOnceMore(Place row) implements NextReason {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.rowOnceMore(this);
    }
  }

  /** Once more, before anything is touched: nothing else shows the fault. */
  record AloneShowsIt() implements NextReason {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.aloneShowsIt(this);
    }
  }

  /** Between two nets alone, to see whether the leak is theirs. */
  record LeakOfTheTwo() implements NextReason {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.leakOfTheTwo(this);
    }
  }

  /** With a lead of a part off, to see whether the part is bad or what lies beside it. */
  record BesideThePart(Part part) implements NextReason {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.besideThePart(this);
    }
  }

  /** It is on the sheet and was not measured. */
  record NotMeasured() implements NextReason {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.notMeasured(this);
    }
  }

  /** No reading joins its two points. */
  record NotJoined() implements NextReason {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.notJoined(this);
    }
  }

  /** No good reading goes through a wire. */
  record NotThrough(Conductor conductor) implements NextReason {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.notThrough(this);
    }
  }

  /** It proves what else is not proven. */
  record Owed(Unproven unproven) implements NextReason {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.owed(this);
    }
  }

  /** One answer for each kind. */
  interface Cases<T> {
    /** See {@link TellsApart}. */
    T tellsApart(TellsApart reason);

    /** See {@link AcrossTheOpen}. */
    T acrossTheOpen(AcrossTheOpen reason);

    /** See {@link AtTheseVeryPoints}. */
    T atTheseVeryPoints(AtTheseVeryPoints reason);

    /** See {@link RowOnceMore}. */
    T rowOnceMore(RowOnceMore reason);

    /** See {@link AloneShowsIt}. */
    T aloneShowsIt(AloneShowsIt reason);

    /** See {@link LeakOfTheTwo}. */
    T leakOfTheTwo(LeakOfTheTwo reason);

    /** See {@link BesideThePart}. */
    T besideThePart(BesideThePart reason);

    /** See {@link NotMeasured}. */
    T notMeasured(NotMeasured reason);

    /** See {@link NotJoined}. */
    T notJoined(NotJoined reason);

    /** See {@link NotThrough}. */
    T notThrough(NotThrough reason);

    /** See {@link Owed}. */
    T owed(Owed reason);
  }
}
