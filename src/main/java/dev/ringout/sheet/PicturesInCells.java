package dev.ringout.sheet;

import java.util.Base64;
import java.util.List;
import org.apache.poi.ss.usermodel.ClientAnchor;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.util.Units;
import org.apache.poi.xssf.streaming.SXSSFSheet;
import org.apache.poi.xssf.streaming.SXSSFWorkbook;
import org.apache.poi.xssf.usermodel.XSSFDrawing;
import org.apache.poi.xssf.usermodel.XSSFPicture;
import org.apache.poi.xssf.usermodel.XSSFShape;

/** Puts pictures into cells, each as large as the cell lets it be. */
final class PicturesInCells {
  private static final double WIDEST_POINTS = 340;
  private static final double HIGHEST_POINTS = 250;
  private static final double POINTS_OF_A_PIXEL = 0.75;
  private static final double BORDER_POINTS = 4;

  /** No row of a workbook is higher. */
  private static final double MOST_OF_A_ROW_POINTS = 409;

  /** In letters of the font that a new workbook has. */
  static final int WIDTH_OF_COLUMN = 68;

  private PicturesInCells() {}

  /** How high the row of a picture is. */
  static float rowPoints(OutPicture picture) {
    return (float) (scale(picture) * picture.height() + 2 * BORDER_POINTS);
  }

  private static double scale(OutPicture picture) {
    return Math.min(
        POINTS_OF_A_PIXEL,
        Math.min(WIDEST_POINTS / picture.width(), HIGHEST_POINTS / picture.height()));
  }

  static void write(SXSSFWorkbook workbook, SXSSFSheet sheet, List<OutPicture> pictures) {
    var drawing = sheet.createDrawingPatriarch();
    for (OutPicture picture : pictures) {
      ClientAnchor anchor = workbook.getCreationHelper().createClientAnchor();
      int row = picture.row() + 1;
      anchor.setAnchorType(ClientAnchor.AnchorType.MOVE_DONT_RESIZE);
      anchor.setRow1(row);
      anchor.setRow2(row);
      anchor.setCol1(picture.column());
      anchor.setCol2(picture.column());
      anchor.setDx1(Units.toEMU(BORDER_POINTS));
      anchor.setDy1(Units.toEMU(BORDER_POINTS));
      anchor.setDx2(Units.toEMU(BORDER_POINTS + scale(picture) * picture.width()));
      anchor.setDy2(Units.toEMU(BORDER_POINTS + scale(picture) * picture.height()));
      drawing.createPicture(anchor, add(workbook, picture.base64(), Workbook.PICTURE_TYPE_JPEG));
    }
    describe(workbook, sheet, pictures.stream().map(OutPicture::shows).toList());
  }

  /**
   * Puts drawings below a table as large as they are, one below the other.
   *
   * @param from the first row that is free
   */
  static void writeBelow(
      SXSSFWorkbook workbook, SXSSFSheet sheet, List<OutDrawing> drawings, int from) {
    var patriarch = sheet.createDrawingPatriarch();
    int row = from;
    for (OutDrawing drawing : drawings) {
      ClientAnchor anchor = workbook.getCreationHelper().createClientAnchor();
      double height = drawing.heightMm() * PrintForm.POINTS_OF_A_MM;
      sheet.createRow(row).setHeightInPoints((float) Math.min(MOST_OF_A_ROW_POINTS, height + 6));
      anchor.setAnchorType(ClientAnchor.AnchorType.MOVE_DONT_RESIZE);
      anchor.setRow1(row);
      anchor.setRow2(row);
      anchor.setCol1(0);
      anchor.setCol2(0);
      anchor.setDx2(Units.toEMU(drawing.widthMm() * PrintForm.POINTS_OF_A_MM));
      anchor.setDy2(Units.toEMU(height));
      patriarch.createPicture(anchor, add(workbook, drawing.base64(), Workbook.PICTURE_TYPE_PNG));
      row += 2;
    }
    describe(workbook, sheet, drawings.stream().map(OutDrawing::shows).toList());
  }

  private static int add(SXSSFWorkbook workbook, String base64, int type) {
    return workbook.addPicture(Base64.getDecoder().decode(base64), type);
  }

  private static void describe(SXSSFWorkbook workbook, SXSSFSheet sheet, List<String> shows) {
    XSSFDrawing drawing =
        workbook.getXSSFWorkbook().getSheet(sheet.getSheetName()).getDrawingPatriarch();
    int next = 0;
    for (XSSFShape shape : drawing.getShapes()) {
      if (shape instanceof XSSFPicture picture) {
        String words = Xstring.encoded(shows.get(next++));
        picture.getCTPicture().getNvPicPr().getCNvPr().setDescr(words);
      }
    }
  }
}
