package dev.ringout.json;

import dev.ringout.imports.list.DamagedCell;
import java.util.Map;

/**
 * What a spreadsheet or a hand has made of a cell, or what was cleaned of it, as facts by their
 * names.
 */
final class DamagedCellJson implements DamagedCell.Cases<Map<String, Object>> {

  @Override
  public Map<String, Object> madeBoolean(DamagedCell.MadeBoolean odd) {
    return OddityFacts.of("made-boolean").with("value", odd.value()).map();
  }

  @Override
  public Map<String, Object> saysBoolean(DamagedCell.SaysBoolean odd) {
    return OddityFacts.of("says-boolean").with("value", odd.value()).map();
  }

  @Override
  public Map<String, Object> errorValue(DamagedCell.ErrorValue odd) {
    return OddityFacts.of("error-value").with("value", odd.value()).map();
  }

  @Override
  public Map<String, Object> noResult(DamagedCell.NoResult odd) {
    return OddityFacts.of("no-result").map();
  }

  @Override
  public Map<String, Object> madeTime(DamagedCell.MadeTime odd) {
    return OddityFacts.of("made-time")
        .with("value", odd.value())
        .with("candidates", odd.candidates())
        .map();
  }

  @Override
  public Map<String, Object> madeDate(DamagedCell.MadeDate odd) {
    return OddityFacts.of("made-date")
        .with("value", odd.value())
        .with("neighbours", odd.neighbours())
        .with("candidates", odd.candidates())
        .map();
  }

  @Override
  public Map<String, Object> looksLikeDate(DamagedCell.LooksLikeDate odd) {
    return OddityFacts.of("looks-like-date")
        .with("value", odd.value())
        .with("neighbours", odd.neighbours())
        .with("candidates", odd.candidates())
        .map();
  }

  @Override
  public Map<String, Object> hasMinus(DamagedCell.HasMinus odd) {
    return OddityFacts.of("has-minus").with("number", odd.number()).map();
  }

  @Override
  public Map<String, Object> tooManyDigits(DamagedCell.TooManyDigits odd) {
    return OddityFacts.of("too-many-digits")
        .with("number", odd.number())
        .with("digitsKept", odd.digitsKept())
        .map();
  }

  @Override
  public Map<String, Object> numberAmongNames(DamagedCell.NumberAmongNames odd) {
    return OddityFacts.of("number-among-names")
        .with("number", odd.number())
        .with("name", odd.name())
        .with("candidates", odd.candidates())
        .map();
  }

  @Override
  public Map<String, Object> withExponent(DamagedCell.WithExponent odd) {
    return OddityFacts.of("with-exponent")
        .with("value", odd.value())
        .with("candidates", odd.candidates())
        .map();
  }

  @Override
  public Map<String, Object> withFraction(DamagedCell.WithFraction odd) {
    return OddityFacts.of("with-fraction")
        .with("number", odd.number())
        .with("candidates", odd.candidates())
        .map();
  }

  @Override
  public Map<String, Object> stepOfNeighbours(DamagedCell.StepOfNeighbours odd) {
    return OddityFacts.of("step-of-neighbours")
        .with("number", odd.number())
        .with("candidates", odd.candidates())
        .map();
  }

  @Override
  public Map<String, Object> gaugeCountsUp(DamagedCell.GaugeCountsUp odd) {
    return OddityFacts.of("gauge-counts-up").with("gauge", odd.gauge()).map();
  }

  @Override
  public Map<String, Object> zeroLost(DamagedCell.ZeroLost odd) {
    return OddityFacts.of("zero-lost")
        .with("number", odd.number())
        .with("padded", odd.padded())
        .map();
  }

  @Override
  public Map<String, Object> struckInPart(DamagedCell.StruckInPart odd) {
    return OddityFacts.of("struck-in-part")
        .with("written", odd.written())
        .with("left", odd.left())
        .map();
  }

  @Override
  public Map<String, Object> nothingAbove(DamagedCell.NothingAbove odd) {
    return OddityFacts.of("nothing-above").with("mark", odd.mark()).map();
  }

  @Override
  public Map<String, Object> sharedByMark(DamagedCell.SharedByMark odd) {
    return OddityFacts.of("shared-by-mark")
        .with("mark", odd.mark())
        .with("heading", odd.heading())
        .map();
  }

  @Override
  public Map<String, Object> blanksIgnored(DamagedCell.BlanksIgnored odd) {
    return OddityFacts.of("blanks-ignored").with("rows", odd.rows()).map();
  }

  @Override
  public Map<String, Object> dashesMadePlain(DamagedCell.DashesMadePlain odd) {
    return OddityFacts.of("dashes-made-plain").with("rows", odd.rows()).map();
  }

  @Override
  public Map<String, Object> marksReadAsAbove(DamagedCell.MarksReadAsAbove odd) {
    return OddityFacts.of("marks-read-as-above").with("rows", odd.rows()).map();
  }

  @Override
  public Map<String, Object> blanksReadAsAbove(DamagedCell.BlanksReadAsAbove odd) {
    return OddityFacts.of("blanks-read-as-above").with("rows", odd.rows()).map();
  }
}
