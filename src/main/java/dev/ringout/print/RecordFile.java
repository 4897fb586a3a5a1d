package dev.ringout.print;

import dev.ringout.record.RecordContent;
import dev.ringout.sheet.OutFile;
import dev.ringout.sheet.PrintForm;
import dev.ringout.sheet.PrintForm.PaperSize;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** The forms of a record as a file, each named by its ending. */
public enum RecordFile {
  /** One page that needs nothing else. */
  HTML {
    @Override
    public void write(OutputStream out, RecordContent record, PaperSize paper) throws IOException {
      out.write(RecordHtml.write(record, paper).getBytes(StandardCharsets.UTF_8));
    }
  },
  /** To print and to keep. */
  PDF {
    @Override
    public void write(OutputStream out, RecordContent record, PaperSize paper) throws IOException {
      PdfFile.writeTagged(out, RecordHtml.forPaper(record, paper));
    }
  },
  /** To sort and to plot. */
  XLSX {
    @Override
    public void write(OutputStream out, RecordContent record, PaperSize paper) throws IOException {
      OutFile.workbook(
          out,
          DrawnPictures.below(RecordSheets.of(record)),
          PrintForm.recorded(record.title(), paper).of(record.serial()));
    }
  };

  /** Writes a record in this form: the same bytes for the same record and paper. */
  public abstract void write(OutputStream out, RecordContent record, PaperSize paper)
      throws IOException;

  /** The form that a name's ending asks for, in whichever case; absent where it asks for none. */
  public static Optional<RecordFile> named(String name) {
    String asked = name.toLowerCase(Locale.ROOT);
    return Arrays.stream(values())
        .filter(form -> asked.endsWith("." + form.name().toLowerCase(Locale.ROOT)))
        .findFirst();
  }
}
