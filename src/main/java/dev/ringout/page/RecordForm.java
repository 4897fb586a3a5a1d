package dev.ringout.page;

import dev.ringout.bench.Refused;
import dev.ringout.bench.Refused.Reason;
import dev.ringout.print.RecordFile;
import dev.ringout.record.RecordContent;
import dev.ringout.serve.Reply;
import dev.ringout.sheet.PrintForm.PaperSize;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Arrays;

/** The forms of a record, each as {@code report} writes it. */
enum RecordForm {
  HTML(RecordFile.HTML) {
    @Override
    Reply answered(byte[] record, String name) {
      return Reply.paper(record).shownAs(name);
    }
  },
  PDF(RecordFile.PDF) {
    @Override
    Reply answered(byte[] record, String name) {
      return Reply.of(200, "application/pdf", record).shownAs(name);
    }
  },
  XLSX(RecordFile.XLSX) {
    @Override
    Reply answered(byte[] record, String name) {
      return Reply.of(200, WORKBOOK, record).savedAs(name);
    }
  };

  private static final String WORKBOOK =
      "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";

  private final RecordFile file;

  RecordForm(RecordFile file) {
    this.file = file;
  }

  abstract Reply answered(byte[] record, String name);

  /** The record in this form. */
  Reply of(RecordContent content, String name) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    file.write(bytes, content, PaperSize.A4);
    return answered(bytes.toByteArray(), name);
  }

  /** The form of an ending. */
  static RecordForm named(String ending) throws Refused {
    return Arrays.stream(values())
        .filter(form -> form.name().equalsIgnoreCase(ending))
        .findFirst()
        .orElseThrow(
            () -> new Refused(Reason.MISSING, "A record is a .pdf, an .html or an .xlsx."));
  }
}
