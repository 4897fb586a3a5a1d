package dev.ringout.sheet;

import dev.ringout.source.FileBytes;
import java.io.IOException;
import org.apache.poi.openxml4j.exceptions.OpenXML4JException;
import org.apache.poi.openxml4j.opc.OPCPackage;
import org.apache.poi.xssf.extractor.XSSFEventBasedExcelExtractor;
import org.apache.xmlbeans.XmlException;

/** All that a workbook says, as text. */
public final class SheetTexts {
  private SheetTexts() {}

  /**
   * The texts of its cells, sheet after sheet.
   *
   * @throws IOException where it is no workbook, or a damaged one
   */
  public static String of(FileBytes workbook) throws IOException {
    try (XSSFEventBasedExcelExtractor texts =
        new XSSFEventBasedExcelExtractor(OPCPackage.open(workbook.open()))) {
      return texts.getText();
    } catch (OpenXML4JException | XmlException | RuntimeException e) {
      // The library throws whatever it stumbles over in a damaged workbook.
      throw new IOException("it is no workbook: " + e.getMessage(), e);
    }
  }
}
