package dev.ringout.json;

import dev.ringout.imports.list.DamagedCell;

/**
 * What a spreadsheet or a hand has made of a cell, or what was cleaned of it, as facts by their
 * names.
 */
final class DamagedCellJson implements DamagedCell.Cases<Reason> {

  @Override
  public Reason madeBoolean(DamagedCell.MadeBoolean odd) {
    return Reason.of("made-boolean").with("value", odd.value());
  }

  @Override
  public Reason saysBoolean(DamagedCell.SaysBoolean odd) {
    return Reason.of("says-boolean").with("value", odd.value());
  }

  @Override
  public Reason errorValue(DamagedCell.ErrorValue odd) {
    return Reason.of("error-value").with("value", odd.value());
  }

  @Override
  public Reason hashesAlone(DamagedCell.HashesAlone odd) {
    return Reason.of("hashes-alone").with("value", odd.value());
  }

  @Override
  public Reason noResult(DamagedCell.NoResult odd) {
    return Reason.of("no-result");
  }

  @Override
  public Reason madeTime(DamagedCell.MadeTime odd) {
    return Reason.of("made-time").with("value", odd.value()).with("candidates", odd.candidates());
  }

  @Override
  public Reason madeDate(DamagedCell.MadeDate odd) {
    return Reason.of("made-date")
        .with("value", odd.value())
        .with("neighbours", odd.neighbours())
        .with("candidates", odd.candidates());
  }

  @Override
  public Reason looksLikeDate(DamagedCell.LooksLikeDate odd) {
    return Reason.of("looks-like-date")
        .with("value", odd.value())
        .with("neighbours", odd.neighbours())
        .with("candidates", odd.candidates());
  }

  @Override
  public Reason hasMinus(DamagedCell.HasMinus odd) {
    return Reason.of("has-minus").with("number", odd.number());
  }

  @Override
  public Reason tooManyDigits(DamagedCell.TooManyDigits odd) {
    return Reason.of("too-many-digits")
        .with("number", odd.number())
        .with("digitsKept", odd.digitsKept());
  }

  @Override
  public Reason numberAmongNames(DamagedCell.NumberAmongNames odd) {
    return Reason.of("number-among-names")
        .with("number", odd.number())
        .with("name", odd.name())
        .with("candidates", odd.candidates());
  }

  @Override
  public Reason withExponent(DamagedCell.WithExponent odd) {
    return Reason.of("with-exponent")
        .with("value", odd.value())
        .with("candidates", odd.candidates());
  }

  @Override
  public Reason withFraction(DamagedCell.WithFraction odd) {
    return Reason.of("with-fraction")
        .with("number", odd.number())
        .with("candidates", odd.candidates());
  }

  @Override
  public Reason stepOfNeighbours(DamagedCell.StepOfNeighbours odd) {
    return Reason.of("step-of-neighbours")
        .with("number", odd.number())
        .with("candidates", odd.candidates());
  }

  @Override
  public Reason gaugeCountsUp(DamagedCell.GaugeCountsUp odd) {
    return Reason.of("gauge-counts-up").with("gauge", odd.gauge());
  }

  @Override
  public Reason zeroLost(DamagedCell.ZeroLost odd) {
    return Reason.of("zero-lost").with("number", odd.number()).with("padded", odd.padded());
  }

  @Override
  public Reason struckInPart(DamagedCell.StruckInPart odd) {
    return Reason.of("struck-in-part").with("written", odd.written()).with("left", odd.left());
  }

  @Override
  public Reason nothingAbove(DamagedCell.NothingAbove odd) {
    return Reason.of("nothing-above").with("mark", odd.mark());
  }

  @Override
  public Reason sharedByMark(DamagedCell.SharedByMark odd) {
    return Reason.of("shared-by-mark").with("mark", odd.mark()).with("heading", odd.heading());
  }

  @Override
  public Reason blanksIgnored(DamagedCell.BlanksIgnored odd) {
    return Reason.of("blanks-ignored").with("rows", odd.rows());
  }

  @Override
  public Reason dashesMadePlain(DamagedCell.DashesMadePlain odd) {
    return Reason.of("dashes-made-plain").with("rows", odd.rows());
  }

  @Override
  public Reason marksReadAsAbove(DamagedCell.MarksReadAsAbove odd) {
    return Reason.of("marks-read-as-above").with("rows", odd.rows());
  }

  @Override
  public Reason blanksReadAsAbove(DamagedCell.BlanksReadAsAbove odd) {
    return Reason.of("blanks-read-as-above").with("rows", odd.rows());
  }
}
