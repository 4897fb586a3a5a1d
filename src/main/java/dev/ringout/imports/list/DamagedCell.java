package dev.ringout.imports.list;

import java.util.List;

/**
 * What a spreadsheet or a hand has made of a cell, or what was cleaned of it. Each kind holds its
 * facts; the writers put them into words.
 */
public sealed interface DamagedCell extends Oddity {

  /** What is made of it, by its kind: a writer that lacks a kind does not compile. */
  <T> T match(Cases<T> cases);

  @Override
  default <T> T matchFamily(Oddity.Families<T> families) {
    return families.damagedCell(this);
  }

  /** The spreadsheet has made TRUE or FALSE of a cell. */
  record MadeBoolean(String value) implements DamagedCell {
    @Override
    public OddityKind kind() {
      return OddityKind.BOOLEAN;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.madeBoolean(this);
    }
  }

  /** A text says TRUE or FALSE, as a spreadsheet writes a letter. */
  record SaysBoolean(String value) implements DamagedCell {
    @Override
    public OddityKind kind() {
      return OddityKind.BOOLEAN;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.saysBoolean(this);
    }
  }

  /** A cell holds an error value. */
  record ErrorValue(String value) implements DamagedCell {
    @Override
    public OddityKind kind() {
      return OddityKind.ERROR_VALUE;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.errorValue(this);
    }
  }

  /** A cell shows hashes where its column was too narrow for what it held. */
  record HashesAlone(String value) implements DamagedCell {
    @Override
    public OddityKind kind() {
      return OddityKind.ERROR_VALUE;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.hashesAlone(this);
    }
  }

  /** A cell holds a formula whose result was not stored. */
  record NoResult() implements DamagedCell {
    @Override
    public OddityKind kind() {
      return OddityKind.NO_RESULT;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.noResult(this);
    }
  }

  /** The spreadsheet has made a time of a cell. */
  record MadeTime(String value, List<String> candidates) implements DamagedCell {
    /** Keeps a copy of what is listed. */
    public MadeTime {
      candidates = List.copyOf(candidates);
    }

    @Override
    public OddityKind kind() {
      return OddityKind.TIME;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.madeTime(this);
    }
  }

  /** The spreadsheet has made a date of a cell. */
  record MadeDate(String value, List<String> neighbours, List<String> candidates)
      implements DamagedCell {
    /** Keeps a copy of what is listed. */
    public MadeDate {
      neighbours = List.copyOf(neighbours);
      candidates = List.copyOf(candidates);
    }

    @Override
    public OddityKind kind() {
      return OddityKind.DATE;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.madeDate(this);
    }
  }

  /** A text looks like a date that went through a text file. */
  record LooksLikeDate(String value, List<String> neighbours, List<String> candidates)
      implements DamagedCell {
    /** Keeps a copy of what is listed. */
    public LooksLikeDate {
      neighbours = List.copyOf(neighbours);
      candidates = List.copyOf(candidates);
    }

    @Override
    public OddityKind kind() {
      return OddityKind.DATE;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.looksLikeDate(this);
    }
  }

  /** A number has a minus where names stand. */
  record HasMinus(String number) implements DamagedCell {
    @Override
    public OddityKind kind() {
      return OddityKind.SIGN;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.hasMinus(this);
    }
  }

  /** A number has more digits than a spreadsheet keeps. */
  record TooManyDigits(String number, int digitsKept) implements DamagedCell {
    @Override
    public OddityKind kind() {
      return OddityKind.LONG_NUMBER;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.tooManyDigits(this);
    }
  }

  /** A number stands among names with a letter between digits. */
  record NumberAmongNames(String number, String name, List<String> candidates)
      implements DamagedCell {
    /** Keeps a copy of what is listed. */
    public NumberAmongNames {
      candidates = List.copyOf(candidates);
    }

    @Override
    public OddityKind kind() {
      return OddityKind.EXPONENT;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.numberAmongNames(this);
    }
  }

  /** A text is a number with an exponent. */
  record WithExponent(String value, List<String> candidates) implements DamagedCell {
    /** Keeps a copy of what is listed. */
    public WithExponent {
      candidates = List.copyOf(candidates);
    }

    @Override
    public OddityKind kind() {
      return OddityKind.EXPONENT;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.withExponent(this);
    }
  }

  /** A number has a fraction where names stand. */
  record WithFraction(String number, List<String> candidates) implements DamagedCell {
    /** Keeps a copy of what is listed. */
    public WithFraction {
      candidates = List.copyOf(candidates);
    }

    @Override
    public OddityKind kind() {
      return OddityKind.EXPONENT;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.withFraction(this);
    }
  }

  /** A number goes on from its neighbours by the same step. */
  record StepOfNeighbours(String number, List<String> candidates) implements DamagedCell {
    /** Keeps a copy of what is listed. */
    public StepOfNeighbours {
      candidates = List.copyOf(candidates);
    }

    @Override
    public OddityKind kind() {
      return OddityKind.FILL_DRAG;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.stepOfNeighbours(this);
    }
  }

  /** A gauge is one more than that of the row above, row after row. */
  record GaugeCountsUp(String gauge) implements DamagedCell {
    @Override
    public OddityKind kind() {
      return OddityKind.FILL_DRAG;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.gaugeCountsUp(this);
    }
  }

  /** A number stands among texts with leading zeros. */
  record ZeroLost(String number, String padded) implements DamagedCell {
    @Override
    public OddityKind kind() {
      return OddityKind.LEADING_ZERO;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.zeroLost(this);
    }
  }

  /** A part of a cell is struck through. */
  record StruckInPart(String written, String left) implements DamagedCell {
    @Override
    public OddityKind kind() {
      return OddityKind.STRUCK;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.struckInPart(this);
    }
  }

  /** A mark says "as above" where nothing stands above that may be repeated. */
  record NothingAbove(String mark) implements DamagedCell {
    @Override
    public OddityKind kind() {
      return OddityKind.DITTO;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.nothingAbove(this);
    }
  }

  /** A mark says "as above" of what two wires do not share. */
  record SharedByMark(String mark, String heading) implements DamagedCell {
    @Override
    public OddityKind kind() {
      return OddityKind.DITTO;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.sharedByMark(this);
    }
  }

  /** Blanks that can't be seen were ignored in a column. */
  record BlanksIgnored(List<Integer> rows) implements DamagedCell {
    /** Keeps a copy of what is listed. */
    public BlanksIgnored {
      rows = List.copyOf(rows);
    }

    @Override
    public OddityKind kind() {
      return OddityKind.BLANKS;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.blanksIgnored(this);
    }
  }

  /** Dashes or quotes of another kind were read as the plain ones. */
  record DashesMadePlain(List<Integer> rows) implements DamagedCell {
    /** Keeps a copy of what is listed. */
    public DashesMadePlain {
      rows = List.copyOf(rows);
    }

    @Override
    public OddityKind kind() {
      return OddityKind.DASH;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.dashesMadePlain(this);
    }
  }

  /** Marks for "as above" were read so. */
  record MarksReadAsAbove(List<Integer> rows) implements DamagedCell {
    /** Keeps a copy of what is listed. */
    public MarksReadAsAbove {
      rows = List.copyOf(rows);
    }

    @Override
    public OddityKind kind() {
      return OddityKind.DITTO;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.marksReadAsAbove(this);
    }
  }

  /** Blanks were read as the text above. */
  record BlanksReadAsAbove(List<Integer> rows) implements DamagedCell {
    /** Keeps a copy of what is listed. */
    public BlanksReadAsAbove {
      rows = List.copyOf(rows);
    }

    @Override
    public OddityKind kind() {
      return OddityKind.CARRIED;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.blanksReadAsAbove(this);
    }
  }

  /**
   * What a writer makes of each kind.
   *
   * @param <T> what it makes
   */
  interface Cases<T> {
    T madeBoolean(MadeBoolean odd);

    T saysBoolean(SaysBoolean odd);

    T errorValue(ErrorValue odd);

    T hashesAlone(HashesAlone odd);

    T noResult(NoResult odd);

    T madeTime(MadeTime odd);

    T madeDate(MadeDate odd);

    T looksLikeDate(LooksLikeDate odd);

    T hasMinus(HasMinus odd);

    T tooManyDigits(TooManyDigits odd);

    T numberAmongNames(NumberAmongNames odd);

    T withExponent(WithExponent odd);

    T withFraction(WithFraction odd);

    T stepOfNeighbours(StepOfNeighbours odd);

    T gaugeCountsUp(GaugeCountsUp odd);

    T zeroLost(ZeroLost odd);

    T struckInPart(StruckInPart odd);

    T nothingAbove(NothingAbove odd);

    T sharedByMark(SharedByMark odd);

    T blanksIgnored(BlanksIgnored odd);

    T dashesMadePlain(DashesMadePlain odd);

    T marksReadAsAbove(MarksReadAsAbove odd);

    T blanksReadAsAbove(BlanksReadAsAbove odd);
  }
}
