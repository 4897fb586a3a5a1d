package dev.ringout.cli;

import dev.ringout.report.PdfFile;
import dev.ringout.report.SheetsHtml;
import dev.ringout.sheet.OutFile;
import dev.ringout.sheet.OutSheet;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;

/** Writes sheets in the form that a file's name asks for. */
final class Sheets {
  private Sheets() {}

  /**
   * Writes a workbook, a page, a PDF or a folder of .csv; gives the exit code.
   *
   * @param title what stands above every printed page
   */
  static int write(
      Output output,
      CommandSpec spec,
      Path file,
      String title,
      List<OutSheet> sheets,
      boolean force) {
    String name = String.valueOf(file.getFileName()).toLowerCase(Locale.ROOT);
    if (name.endsWith(".html")) {
      return output.write(file, SheetsHtml.write(title, sheets), force);
    }
    if (name.endsWith(".pdf")) {
      return output.write(
          file, beside -> PdfFile.write(beside, SheetsHtml.write(title, sheets)), force);
    }
    return writeTable(
        output, spec, file, sheets, force, "sheets are written as .xlsx, .html, .pdf or a folder");
  }

  /**
   * Writes a workbook or a folder of .csv; gives the exit code.
   *
   * @param forms what is said where the name asks for another form
   */
  static int writeTable(
      Output output,
      CommandSpec spec,
      Path file,
      List<OutSheet> sheets,
      boolean force,
      String forms) {
    String name = String.valueOf(file.getFileName()).toLowerCase(Locale.ROOT);
    if (name.endsWith(".xlsx")) {
      return output.write(file, beside -> OutFile.workbook(beside, sheets), force);
    }
    if (name.matches(".*\\.[a-z]{2,4}")) {
      throw new ParameterException(spec.commandLine(), "-o " + file + ": " + forms);
    }
    return output.write(file, beside -> OutFile.folder(beside, sheets), force);
  }
}
