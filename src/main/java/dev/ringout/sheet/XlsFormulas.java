package dev.ringout.sheet;

import java.util.HashSet;
import java.util.Iterator;
import java.util.Set;
import org.apache.poi.hssf.record.CellValueRecordInterface;
import org.apache.poi.hssf.record.FormulaRecord;
import org.apache.poi.hssf.record.aggregates.FormulaRecordAggregate;
import org.apache.poi.hssf.usermodel.HSSFSheet;
import org.apache.poi.ss.formula.ptg.ConcatPtg;
import org.apache.poi.ss.formula.ptg.IntPtg;
import org.apache.poi.ss.formula.ptg.NumberPtg;
import org.apache.poi.ss.formula.ptg.Ptg;
import org.apache.poi.ss.formula.ptg.ValueOperatorPtg;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.util.CellAddress;

/**
 * Formulas of an older workbook that nobody has calculated ([MS-XLS] 2.4.127 Formula). The format
 * has no place without a result: a program that does not calculate writes 0 and asks that it be
 * done when the file is opened, or an empty text where only a number can come out.
 */
final class XlsFormulas {
  private final Set<CellAddress> uncalculated = new HashSet<>();

  XlsFormulas(HSSFSheet sheet) {
    Iterator<CellValueRecordInterface> values = sheet.getSheet().getCellValueIterator();
    while (values.hasNext()) {
      if (values.next() instanceof FormulaRecordAggregate formula && isUncalculated(formula)) {
        uncalculated.add(new CellAddress(formula.getRow(), formula.getColumn()));
      }
    }
  }

  boolean isUncalculated(CellAddress address) {
    return uncalculated.contains(address);
  }

  private static boolean isUncalculated(FormulaRecordAggregate aggregate) {
    FormulaRecord formula = aggregate.getFormulaRecord();
    boolean isNumber = formula.getCachedResultTypeEnum() == CellType.NUMERIC;
    if (isNumber) {
      return formula.isCalcOnLoad() && formula.getValue() == 0;
    }
    return formula.getCachedResultTypeEnum() == CellType.STRING
        && aggregate.getStringRecord() == null
        && givesNumber(formula.getParsedExpression());
  }

  /** The last token is what is done last. */
  private static boolean givesNumber(Ptg[] tokens) {
    if (tokens.length == 0) {
      return false;
    }
    Ptg last = tokens[tokens.length - 1];
    return last instanceof IntPtg
        || last instanceof NumberPtg
        || (last instanceof ValueOperatorPtg && !(last instanceof ConcatPtg));
  }
}
