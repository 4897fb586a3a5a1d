package dev.ringout.sheet;

import java.util.List;
import org.apache.poi.ss.usermodel.ConditionalFormattingRule;
import org.apache.poi.ss.usermodel.DataValidation;
import org.apache.poi.ss.usermodel.DataValidationHelper;
import org.apache.poi.ss.usermodel.FillPatternType;
import org.apache.poi.ss.usermodel.IndexedColors;
import org.apache.poi.ss.usermodel.PageMargin;
import org.apache.poi.ss.usermodel.PrintSetup;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellRangeAddressList;
import org.apache.poi.xssf.streaming.SXSSFSheet;

/** A sheet that is printed, filled in by pen or keyboard, and read again. */
final class PrintedSheet {
  private static final double MARGIN_INCHES = PrintForm.MARGIN_MM / 25.4;
  private static final double MARGIN_WITH_LINE_INCHES = 0.7;
  private static final short ROW_POINTS = 18;

  private PrintedSheet() {}

  static void prepare(SXSSFSheet sheet, OutSheet from, PrintForm form, OutFile.Rows rows) {
    sheet.setDefaultRowHeightInPoints(ROW_POINTS);
    sheet.setRepeatingRows(CellRangeAddress.valueOf("1:" + rows.above()));
    sheet.setFitToPage(true);
    sheet.setAutobreaks(true);
    PrintSetup setup = sheet.getPrintSetup();
    setup.setLandscape(!form.upright());
    setup.setPaperSize(
        form.paper() == PrintForm.PaperSize.LETTER
            ? PrintSetup.LETTER_PAPERSIZE
            : PrintSetup.A4_PAPERSIZE);
    setup.setFitWidth((short) 1);
    setup.setFitHeight((short) 0);
    sheet.setMargin(PageMargin.LEFT, MARGIN_INCHES);
    sheet.setMargin(PageMargin.RIGHT, MARGIN_INCHES);
    sheet.setMargin(PageMargin.TOP, MARGIN_WITH_LINE_INCHES);
    sheet.setMargin(PageMargin.BOTTOM, MARGIN_WITH_LINE_INCHES);
    sheet.getHeader().setLeft(from.look().title().replace("&", "&&"));
    sheet.getHeader().setRight(form.whichUnit());
    sheet
        .getFooter()
        .setLeft(form.resume().isEmpty() ? from.name() : from.name() + ": " + form.resume());
    sheet.getFooter().setCenter("page &P of &N");
    sheet.getFooter().setRight(form.signed());
    int last = rows.last();
    if (from.look().filter()) {
      sheet.setAutoFilter(new CellRangeAddress(0, last, 0, from.headings().size() - 1));
    }
    from.look().choices().forEach((column, choices) -> choose(sheet, column, choices, last));
    if (!from.look().markWhere().isEmpty()) {
      mark(sheet, from, last);
    }
  }

  private static void choose(SXSSFSheet sheet, int column, List<String> choices, int last) {
    DataValidationHelper helper = sheet.getDataValidationHelper();
    DataValidation validation =
        helper.createValidation(
            helper.createExplicitListConstraint(choices.toArray(String[]::new)),
            new CellRangeAddressList(1, last, column, column));
    validation.setSuppressDropDownArrow(true);
    validation.setShowErrorBox(false);
    sheet.addValidationData(validation);
  }

  private static void mark(SXSSFSheet sheet, OutSheet from, int last) {
    var formats = sheet.getSheetConditionalFormatting();
    ConditionalFormattingRule rule =
        formats.createConditionalFormattingRule(from.look().markWhere());
    // Bold and shaded: a printer without colour shows it too.
    rule.createFontFormatting().setFontStyle(false, true);
    var fill = rule.createPatternFormatting();
    fill.setFillBackgroundColor(IndexedColors.ROSE.getIndex());
    fill.setFillPattern(FillPatternType.SOLID_FOREGROUND.getCode());
    formats.addConditionalFormatting(
        new CellRangeAddress[] {new CellRangeAddress(1, last, 0, from.headings().size() - 1)},
        rule);
  }
}
