package dev.ringout.json;

import dev.ringout.imports.list.DamagedCell;
import dev.ringout.imports.list.Oddity;
import dev.ringout.imports.list.RowOddity;
import dev.ringout.imports.list.SheetOddity;
import dev.ringout.imports.list.WiringOddity;
import java.util.Map;

/** What is odd in a list as a code and its facts. */
public final class OddityJson implements Oddity.Families<Map<String, Object>> {
  private final DamagedCellJson cells = new DamagedCellJson();
  private final RowOddityJson rows = new RowOddityJson();
  private final WiringOddityJson wiring = new WiringOddityJson();
  private final SheetOddityJson sheets = new SheetOddityJson();

  private OddityJson() {}

  /** The code and the facts, and the sentence that is made of them. */
  public static Map<String, Object> why(Oddity oddity, String text) {
    Map<String, Object> why = oddity.matchFamily(new OddityJson());
    why.put("text", text);
    return why;
  }

  @Override
  public Map<String, Object> damagedCell(DamagedCell odd) {
    return odd.match(cells);
  }

  @Override
  public Map<String, Object> rowOddity(RowOddity odd) {
    return odd.match(rows);
  }

  @Override
  public Map<String, Object> wiringOddity(WiringOddity odd) {
    return odd.match(wiring);
  }

  @Override
  public Map<String, Object> sheetOddity(SheetOddity odd) {
    return odd.match(sheets);
  }
}
