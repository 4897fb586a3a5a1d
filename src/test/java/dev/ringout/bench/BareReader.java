package dev.ringout.bench;

import java.io.InputStream;
import java.nio.file.Path;
import java.util.Iterator;
import org.apache.poi.openxml4j.opc.OPCPackage;
import org.apache.poi.openxml4j.opc.PackageAccess;
import org.apache.poi.util.XMLHelper;
import org.apache.poi.xssf.eventusermodel.ReadOnlySharedStringsTable;
import org.apache.poi.xssf.eventusermodel.XSSFReader;
import org.xml.sax.Attributes;
import org.xml.sax.InputSource;
import org.xml.sax.XMLReader;
import org.xml.sax.helpers.DefaultHandler;

/**
 * The workbook library's event reader with a handler that counts cells: the floor for any reader.
 */
public final class BareReader {
  private BareReader() {}

  /** Arguments: workbooks. */
  public static void main(String[] args) throws Exception {
    for (String file : args) {
      int[] cells = new int[1];
      try (OPCPackage container = OPCPackage.open(Path.of(file).toFile(), PackageAccess.READ)) {
        ReadOnlySharedStringsTable strings = new ReadOnlySharedStringsTable(container);
        Iterator<InputStream> sheets = new XSSFReader(container).getSheetsData();
        while (sheets.hasNext()) {
          try (InputStream in = sheets.next()) {
            XMLReader xml = XMLHelper.newXMLReader();
            xml.setContentHandler(
                new DefaultHandler() {
                  @Override
                  public void startElement(
                      String uri, String local, String qualified, Attributes attributes) {
                    cells[0] += local.equals("c") ? 1 : 0;
                  }
                });
            xml.parse(new InputSource(in));
          }
        }
        System.out.println(file + ": " + cells[0] + " cells, " + strings.getCount() + " strings");
      }
    }
  }
}
