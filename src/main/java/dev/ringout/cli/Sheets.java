package dev.ringout.cli;

import dev.ringout.print.DrawnPictures;
import dev.ringout.print.PdfFile;
import dev.ringout.print.SheetsHtml;
import dev.ringout.sheet.OutFile;
import dev.ringout.sheet.OutSheet;
import dev.ringout.sheet.PrintForm;
import dev.ringout.sheet.PrintForm.PaperSize;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;

/**
 * What a command of sheets gives: a page or JSON, and the sheets in the form that a name asks for.
 */
final class Sheets {
  @Option(names = "--json", description = "One JSON document on standard output.")
  private boolean json;

  @Option(
      names = "-o",
      converter = PathOfResult.class,
      paramLabel = "FILE",
      description = "Write it: .xlsx, .html, .pdf, or a folder of .csv.")
  private Optional<Path> file = Optional.empty();

  @Option(names = "--force", description = "Write over an existing FILE.")
  private boolean force;

  @Option(
      names = "--paper",
      paramLabel = "SIZE",
      description = "What it is printed on: ${COMPLETION-CANDIDATES} (default A4).")
  private PaperSize paper = PaperSize.A4;

  /** Whether a file was asked for. */
  boolean asked() {
    return file.isPresent();
  }

  /** Whether a JSON document was asked for. */
  boolean json() {
    return json;
  }

  /** The paper that was asked for. */
  PaperSize paper() {
    return paper;
  }

  /**
   * Writes the sheets where a file was asked for, and then the page; gives the exit code.
   *
   * @param sheets made only where they are written
   */
  int write(
      Output output,
      CommandSpec spec,
      PrintForm form,
      Supplier<List<OutSheet>> sheets,
      Supplier<String> page) {
    int written =
        file.isPresent() ? write(output, spec, file.get(), form, sheets.get()) : ExitCode.DONE;
    if (written == ExitCode.DONE) {
      output.out().print(page.get());
    }
    return written;
  }

  private int write(
      Output output, CommandSpec spec, Path to, PrintForm form, List<OutSheet> sheets) {
    String name = String.valueOf(to.getFileName()).toLowerCase(Locale.ROOT);
    if (name.endsWith(".html")) {
      return output.write(to, SheetsHtml.write(form, sheets), force);
    }
    if (name.endsWith(".pdf")) {
      return output.write(to, out -> PdfFile.write(out, SheetsHtml.forPaper(form, sheets)), force);
    }
    return writeTable(
        output,
        spec,
        to,
        sheets,
        form,
        force,
        "sheets are written as .xlsx, .html, .pdf or a folder");
  }

  /** Writes a harness file, which is a workbook or a folder of .csv; gives the exit code. */
  static int writeHarness(
      Output output, CommandSpec spec, Path file, List<OutSheet> sheets, boolean force) {
    PrintForm plain = PrintForm.tested("", PaperSize.A4);
    return writeTable(
        output, spec, file, sheets, plain, force, "a harness file is written as .xlsx or a folder");
  }

  private static int writeTable(
      Output output,
      CommandSpec spec,
      Path file,
      List<OutSheet> sheets,
      PrintForm form,
      boolean force,
      String forms) {
    String name = String.valueOf(file.getFileName()).toLowerCase(Locale.ROOT);
    if (name.endsWith(".xlsx")) {
      return output.write(
          file, out -> OutFile.workbook(out, DrawnPictures.below(sheets), form), force);
    }
    if (name.matches(".*\\.[a-z]{2,4}")) {
      throw new ParameterException(spec.commandLine(), "-o " + file + ": " + forms);
    }
    return output.writeFolder(file, beside -> OutFile.folder(beside, sheets), force);
  }
}
