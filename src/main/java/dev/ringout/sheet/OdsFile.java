package dev.ringout.sheet;

import dev.ringout.source.FileBytes;
import dev.ringout.source.Place;
import dev.ringout.source.UnusableInput;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import org.xml.sax.SAXException;

/** OpenDocument spreadsheets, read by events: one row at a time. */
final class OdsFile implements TabularFile {
  private static final String TYPE = "application/vnd.oasis.opendocument.spreadsheet";
  private static final int LONGEST_TYPE = 128;
  private static final String MIMETYPE = "mimetype";
  private static final String CONTENT = "content.xml";
  private static final String STYLES = "styles.xml";

  private final ZipParts zip;
  private final String shownName;
  private final OdsBook book = new OdsBook();

  private OdsFile(ZipParts zip, String shownName) throws IOException, SAXException {
    this.zip = zip;
    this.shownName = shownName;
    if (zip.has(STYLES)) {
      XmlPart.parse(zip, STYLES, book);
    }
    XmlPart.parse(zip, CONTENT, book);
  }

  /** Whether a zip file says that it is one: in its entry {@code mimetype}. */
  static boolean isOne(FileBytes file) {
    try {
      ZipParts zip = new ZipParts(file);
      if (!zip.has(MIMETYPE)) {
        return false;
      }
      try (InputStream in = zip.open(MIMETYPE)) {
        String text = new String(in.readNBytes(LONGEST_TYPE), StandardCharsets.ISO_8859_1);
        return text.startsWith(TYPE);
      }
    } catch (IOException e) {
      // A damaged zip is for the other readers to report.
      return false;
    }
  }

  static OdsFile open(FileBytes file, String shownName) throws UnusableInput {
    try {
      return new OdsFile(new ZipParts(file), shownName);
    } catch (IOException | SAXException | RuntimeException e) {
      throw BrokenWorkbook.refused(shownName, e);
    }
  }

  @Override
  public List<Sheet> sheets() {
    List<Sheet> sheets = new ArrayList<>();
    for (int i = 0; i < book.sheets().size(); i++) {
      sheets.add(new OdsSheet(i, book.sheets().get(i)));
    }
    return List.copyOf(sheets);
  }

  @Override
  public void close() {}

  private final class OdsSheet implements Sheet {
    private final int number;
    private final OdsBook.Entry entry;

    OdsSheet(int number, OdsBook.Entry entry) {
      this.number = number;
      this.entry = entry;
    }

    @Override
    public String name() {
      return entry.name();
    }

    @Override
    public Place place() {
      return Place.of(shownName, name());
    }

    @Override
    public Surroundings forEachRow(Consumer<Row> each) throws UnusableInput {
      HandedOver handed = new HandedOver(each);
      OdsRows rows = new OdsRows(number, book.styles(), handed);
      try {
        XmlPart.parse(zip, CONTENT, rows);
      } catch (OdsRows.Read e) {
        return rows.surroundings(book.styles().isHidden(entry.style()), book.filterButtons());
      } catch (IOException | SAXException e) {
        throw BrokenWorkbook.refused(shownName, e);
      } catch (RuntimeException e) {
        if (handed.hasFailedThere()) {
          throw e;
        }
        throw BrokenWorkbook.refused(shownName, e);
      }
      throw BrokenWorkbook.refused(
          shownName, new IOException("its sheet \"" + name() + "\" has no end"));
    }
  }
}
