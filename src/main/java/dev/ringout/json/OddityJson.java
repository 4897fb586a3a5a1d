package dev.ringout.json;

import dev.ringout.imports.list.DamagedCell;
import dev.ringout.imports.list.KblOddity;
import dev.ringout.imports.list.Oddity;
import dev.ringout.imports.list.RowOddity;
import dev.ringout.imports.list.SheetOddity;
import dev.ringout.imports.list.WiringOddity;
import java.util.Map;

/** What is odd in a list as a code and its facts. */
final class OddityJson implements Oddity.Families<Reason> {
  private final DamagedCellJson cells = new DamagedCellJson();
  private final RowOddityJson rows = new RowOddityJson();
  private final WiringOddityJson wiring = new WiringOddityJson();
  private final SheetOddityJson sheets = new SheetOddityJson();
  private final KblOddityJson kbl = new KblOddityJson();

  private OddityJson() {}

  /** The code and the facts, and the sentence that is made of them. */
  static Map<String, Object> why(Oddity oddity, String text) {
    return oddity.matchFamily(new OddityJson()).said(text);
  }

  @Override
  public Reason damagedCell(DamagedCell odd) {
    return odd.match(cells);
  }

  @Override
  public Reason rowOddity(RowOddity odd) {
    return odd.match(rows);
  }

  @Override
  public Reason wiringOddity(WiringOddity odd) {
    return odd.match(wiring);
  }

  @Override
  public Reason sheetOddity(SheetOddity odd) {
    return odd.match(sheets);
  }

  @Override
  public Reason kblOddity(KblOddity odd) {
    return odd.match(kbl);
  }
}
