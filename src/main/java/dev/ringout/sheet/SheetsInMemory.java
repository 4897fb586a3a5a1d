package dev.ringout.sheet;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.util.zip.GZIPInputStream;
import java.util.zip.GZIPOutputStream;
import org.apache.poi.xssf.streaming.SXSSFWorkbook;
import org.apache.poi.xssf.streaming.SheetDataWriter;

/**
 * A workbook that is written row by row and packed in memory meanwhile: the library's own way makes
 * files in a folder for all users of the machine, which may be another's, and leaves them there
 * when it is killed.
 */
final class SheetsInMemory extends SXSSFWorkbook {
  SheetsInMemory(int rowsUnpacked) {
    super(rowsUnpacked);
  }

  @Override
  protected SheetDataWriter createSheetDataWriter() throws IOException {
    ByteArrayOutputStream packed = new ByteArrayOutputStream();
    Writer text = new OutputStreamWriter(new GZIPOutputStream(packed), StandardCharsets.UTF_8);
    return new SheetDataWriter(text) {
      @Override
      public InputStream getWorksheetXMLInputStream() throws IOException {
        text.close();
        return new GZIPInputStream(new ByteArrayInputStream(packed.toByteArray()));
      }
    };
  }
}
