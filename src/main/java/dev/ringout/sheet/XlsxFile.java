package dev.ringout.sheet;

import com.fasterxml.aalto.sax.SAXParserFactoryImpl;
import dev.ringout.source.Place;
import dev.ringout.source.UnusableInput;
import dev.ringout.source.UnusableInput.Reason;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import javax.xml.parsers.ParserConfigurationException;
import org.apache.poi.openxml4j.exceptions.OpenXML4JException;
import org.apache.poi.openxml4j.opc.OPCPackage;
import org.apache.poi.openxml4j.opc.PackageAccess;
import org.apache.poi.openxml4j.opc.PackagePart;
import org.apache.poi.openxml4j.opc.PackageRelationship;
import org.apache.poi.openxml4j.opc.PackageRelationshipTypes;
import org.apache.poi.xssf.eventusermodel.XSSFReader;
import org.apache.poi.xssf.usermodel.XSSFRelation;
import org.xml.sax.ContentHandler;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import org.xml.sax.XMLReader;

/** Workbooks read by events: one row at a time, so that a large one fits a small heap. */
final class XlsxFile implements TabularFile {
  private final OPCPackage container;
  private final String shownName;
  private final XSSFReader reader;
  private final XlsxStrings strings;
  private final XlsxStyles styles;
  private final XlsxWorkbook workbook;

  private XlsxFile(OPCPackage container, String shownName)
      throws IOException, OpenXML4JException, SAXException, ParserConfigurationException {
    this.container = container;
    this.shownName = shownName;
    this.reader = new XSSFReader(container);
    this.strings = new XlsxStrings();
    this.styles = new XlsxStyles();
    this.workbook = new XlsxWorkbook();
    try (InputStream in = reader.getStylesData()) {
      if (in != null) {
        parse(in, styles);
      }
    }
    for (PackagePart part :
        container.getPartsByContentType(XSSFRelation.SHARED_STRINGS.getContentType())) {
      try (InputStream in = part.getInputStream()) {
        parse(in, strings);
      }
    }
    try (InputStream in = reader.getWorkbookData()) {
      parse(in, workbook);
    }
  }

  static XlsxFile open(Path path, String shownName) throws UnusableInput {
    OPCPackage container;
    try {
      container = OPCPackage.open(path.toFile(), PackageAccess.READ);
    } catch (OpenXML4JException | RuntimeException e) {
      throw damaged(shownName, e);
    }
    try {
      return new XlsxFile(container, shownName);
    } catch (IOException
        | OpenXML4JException
        | SAXException
        | ParserConfigurationException
        | RuntimeException e) {
      container.revert();
      throw damaged(shownName, e);
    }
  }

  /** The library answers damage with many kinds of exception; to the user they are two. */
  private static UnusableInput damaged(String shownName, Exception e) {
    String why = String.valueOf(e.getMessage());
    if (why.contains("Zip bomb")) {
      return new UnusableInput(
          shownName,
          Reason.NOT_UNDERSTOOD,
          "unpacks to far more than a wire list would (a zip bomb?); not read");
    }
    return new UnusableInput(
        shownName, Reason.NOT_UNDERSTOOD, "is a damaged workbook: " + firstLine(why));
  }

  private static String firstLine(String text) {
    int end = text.indexOf('\n');
    return end < 0 ? text : text.substring(0, end).strip();
  }

  private static void parse(InputStream in, ContentHandler handler)
      throws IOException, SAXException, ParserConfigurationException {
    // Half the time of Java's own parser; it resolves no external entities at all.
    XMLReader xml = new SAXParserFactoryImpl().newSAXParser().getXMLReader();
    xml.setContentHandler(handler);
    xml.parse(new InputSource(in));
  }

  @Override
  public List<Sheet> sheets() {
    List<Sheet> sheets = new ArrayList<>();
    for (XlsxWorkbook.Entry entry : workbook.sheets()) {
      sheets.add(new XlsxSheet(entry));
    }
    return List.copyOf(sheets);
  }

  @Override
  public void close() {
    // Opened for reading only: nothing to save, so revert rather than close.
    container.revert();
  }

  private final class XlsxSheet implements Sheet {
    private final XlsxWorkbook.Entry entry;

    XlsxSheet(XlsxWorkbook.Entry entry) {
      this.entry = entry;
    }

    @Override
    public String name() {
      return entry.name();
    }

    @Override
    public Place place() {
      return Place.of(shownName, entry.name());
    }

    @Override
    public Surroundings forEachRow(Consumer<Row> each) throws UnusableInput {
      try (InputStream in = sheet()) {
        XlsxRows rows = new XlsxRows(strings, styles, workbook.dates1904(), each);
        parse(in, rows);
        return rows.surroundings(entry.hidden(), comments());
      } catch (IOException
          | OpenXML4JException
          | SAXException
          | ParserConfigurationException
          | XlsxRows.Damaged e) {
        throw damaged(shownName, e);
      }
    }

    /** A sheet that the workbook names and does not hold is damage, not a defect. */
    private InputStream sheet() throws IOException, OpenXML4JException, UnusableInput {
      try {
        return reader.getSheet(entry.relationId());
      } catch (RuntimeException e) {
        throw damaged(shownName, e);
      }
    }

    private Map<Surroundings.Spot, String> comments()
        throws IOException,
            OpenXML4JException,
            SAXException,
            ParserConfigurationException,
            UnusableInput {
      try {
        return commentsOfParts();
      } catch (RuntimeException e) {
        throw damaged(shownName, e);
      }
    }

    private Map<Surroundings.Spot, String> commentsOfParts()
        throws IOException, OpenXML4JException, SAXException, ParserConfigurationException {
      PackagePart book =
          container.getPartsByRelationshipType(PackageRelationshipTypes.CORE_DOCUMENT).get(0);
      PackageRelationship toSheet = book.getRelationship(entry.relationId());
      if (toSheet == null) {
        return Map.of();
      }
      PackagePart sheet = book.getRelatedPart(toSheet);
      XlsxComments comments = new XlsxComments();
      for (PackageRelationship relationship :
          sheet.getRelationshipsByType(XSSFRelation.SHEET_COMMENTS.getRelation())) {
        try (InputStream in = sheet.getRelatedPart(relationship).getInputStream()) {
          parse(in, comments);
        }
      }
      return comments.comments();
    }
  }
}
