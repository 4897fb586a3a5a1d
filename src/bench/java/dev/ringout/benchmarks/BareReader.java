package dev.ringout.benchmarks;

import java.io.InputStream;
import java.nio.file.Path;
import java.util.Iterator;
import org.apache.poi.openxml4j.opc.OPCPackage;
import org.apache.poi.openxml4j.opc.PackageAccess;
import org.apache.poi.util.XMLHelper;
import org.apache.poi.xssf.eventusermodel.ReadOnlySharedStringsTable;
import org.apache.poi.xssf.eventusermodel.XSSFReader;
import org.apache.poi.xssf.eventusermodel.XSSFSheetXMLHandler;
import org.apache.poi.xssf.eventusermodel.XSSFSheetXMLHandler.SheetContentsHandler;
import org.apache.poi.xssf.usermodel.XSSFComment;
import org.xml.sax.Attributes;
import org.xml.sax.ContentHandler;
import org.xml.sax.InputSource;
import org.xml.sax.XMLReader;
import org.xml.sax.helpers.DefaultHandler;

/**
 * The workbook library's event reader with nothing behind it: either its cells are counted and
 * never looked at, the floor for any reader, or the library hands over each cell's text.
 */
public final class BareReader {
  private BareReader() {}

  /** Arguments: {@code count} or {@code texts}, then workbooks. */
  public static void main(String[] args) throws Exception {
    for (int i = 1; i < args.length; i++) {
      int[] cells = new int[1];
      try (OPCPackage container = OPCPackage.open(Path.of(args[i]).toFile(), PackageAccess.READ)) {
        ReadOnlySharedStringsTable strings = new ReadOnlySharedStringsTable(container);
        XSSFReader reader = new XSSFReader(container);
        ContentHandler handler =
            args[0].equals("texts")
                ? new XSSFSheetXMLHandler(reader.getStylesTable(), strings, texts(cells), false)
                : counter(cells);
        Iterator<InputStream> sheets = reader.getSheetsData();
        while (sheets.hasNext()) {
          try (InputStream in = sheets.next()) {
            XMLReader xml = XMLHelper.newXMLReader();
            xml.setContentHandler(handler);
            xml.parse(new InputSource(in));
          }
        }
        System.out.println(
            args[i] + ": " + cells[0] + " cells, " + strings.getCount() + " strings");
      }
    }
  }

  private static ContentHandler counter(int[] cells) {
    return new DefaultHandler() {
      @Override
      public void startElement(String uri, String local, String qualified, Attributes attributes) {
        cells[0] += local.equals("c") ? 1 : 0;
      }
    };
  }

  private static SheetContentsHandler texts(int[] cells) {
    return new SheetContentsHandler() {
      @Override
      public void startRow(int row) {}

      @Override
      public void endRow(int row) {}

      @Override
      public void cell(String reference, String text, XSSFComment comment) {
        cells[0]++;
      }
    };
  }
}
