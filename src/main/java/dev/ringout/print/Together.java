package dev.ringout.print;

import dev.ringout.record.RecordBlock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Which pieces of a record stand on one page: a fault with the readings that show it. */
final class Together implements RecordBlock.Cases<Together.Part> {
  /** A longer table fills pages anyway. */
  private static final int MOST_ROWS = 14;

  private Together() {}

  /** What a piece is to those around it. */
  enum Part {
    BEGINS,
    GOES_ON,
    ENDS,
    ALONE
  }

  /** The pieces in their order, those that stand together in one list. */
  static List<List<RecordBlock>> of(List<RecordBlock> blocks) {
    Together form = new Together();
    List<List<RecordBlock>> all = new ArrayList<>();
    Optional<List<RecordBlock>> open = Optional.empty();
    for (RecordBlock block : blocks) {
      Part part = block.match(form);
      if (open.isPresent() && (part == Part.GOES_ON || part == Part.ENDS)) {
        open.get().add(block);
      } else {
        all.add(new ArrayList<>(List.of(block)));
      }
      if (part == Part.BEGINS) {
        open = Optional.of(all.get(all.size() - 1));
      } else if (part != Part.GOES_ON) {
        open = Optional.empty();
      }
    }
    return all;
  }

  @Override
  public Part heading(RecordBlock.Heading heading) {
    return heading.part().isPresent() ? Part.ALONE : Part.BEGINS;
  }

  @Override
  public Part words(RecordBlock.Words words) {
    return Part.GOES_ON;
  }

  @Override
  public Part table(RecordBlock.Table table) {
    return table.rowCount() > MOST_ROWS ? Part.ALONE : Part.ENDS;
  }

  @Override
  public Part verdict(RecordBlock.Verdict verdict) {
    return Part.ALONE;
  }

  @Override
  public Part pairs(RecordBlock.Pairs pairs) {
    return Part.ALONE;
  }

  @Override
  public Part picture(RecordBlock.Picture picture) {
    return Part.ALONE;
  }

  @Override
  public Part photograph(RecordBlock.Photograph photograph) {
    return Part.ALONE;
  }

  @Override
  public Part signatures(RecordBlock.Signatures signatures) {
    return Part.ALONE;
  }

  @Override
  public Part newPage(RecordBlock.NewPage newPage) {
    return Part.ALONE;
  }
}
