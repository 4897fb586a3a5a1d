package dev.ringout.page;

import dev.ringout.bench.Refused;
import dev.ringout.bench.Refused.Reason;
import dev.ringout.print.DrawnPictures;
import dev.ringout.print.PdfFile;
import dev.ringout.print.RecordHtml;
import dev.ringout.print.RecordSheets;
import dev.ringout.record.RecordContent;
import dev.ringout.serve.Reply;
import dev.ringout.sheet.OutFile;
import dev.ringout.sheet.PrintForm;
import dev.ringout.sheet.PrintForm.PaperSize;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/** The forms of a record, each as {@code report} writes it. */
enum RecordForm {
  HTML {
    @Override
    Reply of(RecordContent content, String name) {
      return Reply.paper(RecordHtml.write(content, PaperSize.A4).getBytes(StandardCharsets.UTF_8))
          .shownAs(name);
    }
  },
  PDF {
    @Override
    Reply of(RecordContent content, String name) throws IOException {
      ByteArrayOutputStream bytes = new ByteArrayOutputStream();
      PdfFile.writeTagged(bytes, RecordHtml.forPaper(content, PaperSize.A4));
      return Reply.of(200, "application/pdf", bytes.toByteArray()).shownAs(name);
    }
  },
  XLSX {
    @Override
    Reply of(RecordContent content, String name) throws IOException {
      ByteArrayOutputStream bytes = new ByteArrayOutputStream();
      OutFile.workbook(
          bytes,
          DrawnPictures.below(RecordSheets.of(content)),
          PrintForm.recorded(content.title(), PaperSize.A4).of(content.serial()));
      return Reply.of(200, WORKBOOK, bytes.toByteArray()).savedAs(name);
    }
  };

  private static final String WORKBOOK =
      "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";

  /** The record in this form. */
  abstract Reply of(RecordContent content, String name) throws IOException;

  /** The form of an ending. */
  static RecordForm named(String ending) throws Refused {
    return Arrays.stream(values())
        .filter(form -> form.name().equalsIgnoreCase(ending))
        .findFirst()
        .orElseThrow(
            () -> new Refused(Reason.MISSING, "A record is a .pdf, an .html or an .xlsx."));
  }
}
