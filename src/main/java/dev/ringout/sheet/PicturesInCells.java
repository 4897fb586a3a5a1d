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
      drawing.createPicture(
          anchor,
          workbook.addPicture(
              Base64.getDecoder().decode(picture.base64()), Workbook.PICTURE_TYPE_JPEG));
    }
    describe(
        workbook.getXSSFWorkbook().getSheet(sheet.getSheetName()).getDrawingPatriarch(), pictures);
  }

  private static void describe(XSSFDrawing drawing, List<OutPicture> pictures) {
    int next = 0;
    for (XSSFShape shape : drawing.getShapes()) {
      if (shape instanceof XSSFPicture picture) {
        String shows = Xstring.encoded(pictures.get(next++).shows());
        picture.getCTPicture().getNvPicPr().getCNvPr().setDescr(shows);
      }
    }
  }
}
