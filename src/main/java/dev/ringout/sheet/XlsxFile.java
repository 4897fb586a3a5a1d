package dev.ringout.sheet;

import dev.ringout.source.FileBytes;
import dev.ringout.source.Place;
import dev.ringout.source.UnusableInput;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import org.xml.sax.SAXException;

/** Workbooks read by events: one row at a time, so that a large one fits a small heap. */
final class XlsxFile implements TabularFile {
  private final XlsxPackage parts;
  private final String shownName;
  private final String book;
  private final XlsxStrings strings = new XlsxStrings();
  private final XlsxStyles styles = new XlsxStyles();
  private final XlsxWorkbook workbook = new XlsxWorkbook();

  private XlsxFile(XlsxPackage parts, String shownName) throws IOException, SAXException {
    this.parts = parts;
    this.shownName = shownName;
    this.book = parts.first(XlsxPackage.WHOLE, "officeDocument").orElse("xl/workbook.xml");
    for (String part : parts.all(book, "styles")) {
      parts.parse(part, styles);
    }
    if (styles.fills().askForTheme()) {
      XlsxTheme theme = new XlsxTheme();
      for (String part : parts.all(book, "theme")) {
        parts.parse(part, theme);
      }
      styles.fills().theme(theme.colours());
    }
    for (String part : parts.all(book, "sharedStrings")) {
      parts.parse(part, strings);
    }
    parts.parse(book, workbook);
  }

  static XlsxFile open(FileBytes file, String shownName) throws UnusableInput {
    try {
      return new XlsxFile(new XlsxPackage(file), shownName);
    } catch (IOException | SAXException | RuntimeException e) {
      throw BrokenWorkbook.refused(shownName, e);
    }
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
  public void close() {}

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
      HandedOver handed = new HandedOver(each);
      try {
        String sheet =
            parts
                .byId(book, entry.relationId())
                .orElseThrow(
                    () -> new IOException("its sheet \"" + entry.name() + "\" is not there"));
        XlsxRows rows = new XlsxRows(strings, styles, workbook, handed);
        parts.parse(sheet, rows);
        return rows.surroundings(entry.hidden(), comments(sheet));
      } catch (IOException | SAXException e) {
        throw BrokenWorkbook.refused(shownName, e);
      } catch (RuntimeException e) {
        if (handed.hasFailedThere()) {
          throw e;
        }
        throw BrokenWorkbook.refused(shownName, e);
      }
    }

    private Map<Surroundings.Spot, String> comments(String sheet) throws IOException, SAXException {
      XlsxComments comments = new XlsxComments();
      for (String part : parts.all(sheet, "comments")) {
        parts.parse(part, comments);
      }
      return comments.comments();
    }
  }
}
