package dev.ringout.diagnose;

import dev.ringout.harness.Point;
import java.util.List;
import java.util.Optional;

/**
 * What a wrong list would make of every unit built by it: faults of two units that would come of
 * the same mistake are alike.
 *
 * @param kind the fault's kind
 * @param moves of a miswire: the same points may be exchanged in more than one way
 */
record PaperMistake(Class<? extends Fault> kind, List<Point> points, List<Move> moves) {
  private static Optional<PaperMistake> of(Fault fault) {
    return Optional.of(new PaperMistake(fault.getClass(), fault.points(), List.of()));
  }

  /** The mistake that would make a fault; none where no paper makes it. */
  static final class Made implements Fault.Cases<Optional<PaperMistake>> {
    @Override
    public Optional<PaperMistake> open(Fault.Open fault) {
      return of(fault);
    }

    @Override
    public Optional<PaperMistake> shorted(Fault.Shorted fault) {
      return of(fault);
    }

    @Override
    public Optional<PaperMistake> miswire(Fault.Miswire fault) {
      return Optional.of(new PaperMistake(fault.getClass(), fault.points(), fault.moves()));
    }

    @Override
    public Optional<PaperMistake> highResistance(Fault.HighResistance fault) {
      return Optional.empty();
    }

    @Override
    public Optional<PaperMistake> highWire(Fault.HighWire fault) {
      return fault.isLikeliestOfAnotherGauge() ? of(fault) : Optional.empty();
    }

    @Override
    public Optional<PaperMistake> unequalWire(Fault.UnequalWire fault) {
      return Optional.empty();
    }

    @Override
    public Optional<PaperMistake> wrongGauge(Fault.WrongGauge fault) {
      return of(fault);
    }

    @Override
    public Optional<PaperMistake> lowInsulation(Fault.LowInsulation fault) {
      return Optional.empty();
    }

    @Override
    public Optional<PaperMistake> wrongPart(Fault.WrongPart fault) {
      return of(fault);
    }

    @Override
    public Optional<PaperMistake> wrongSwitch(Fault.WrongSwitch fault) {
      return of(fault);
    }

    @Override
    public Optional<PaperMistake> misread(Fault.Misread fault) {
      return Optional.empty();
    }

    @Override
    public Optional<PaperMistake> slippedRows(Fault.SlippedRows fault) {
      return Optional.empty();
    }

    @Override
    public Optional<PaperMistake> misscaled(Fault.Misscaled fault) {
      return Optional.empty();
    }

    @Override
    public Optional<PaperMistake> exchangedRows(Fault.ExchangedRows fault) {
      return Optional.empty();
    }

    @Override
    public Optional<PaperMistake> leadsNotNulled(Fault.LeadsNotNulled fault) {
      return Optional.empty();
    }

    @Override
    public Optional<PaperMistake> onPaper(Fault.OnPaper fault) {
      return Optional.empty();
    }
  }
}
