package dev.ringout.cli;

import dev.ringout.cli.TablesFile.Form;
import dev.ringout.print.DrawnPictures;
import dev.ringout.print.PdfFile;
import dev.ringout.print.SheetsHtml;
import dev.ringout.sheet.OutFile;
import dev.ringout.sheet.OutSheet;
import dev.ringout.sheet.PrintForm;
import dev.ringout.sheet.PrintForm.PaperSize;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;

/**
 * What a command of sheets gives: a page, or the sheets in the form that a name asks for; or JSON.
 */
final class Sheets {
  private static final List<Form> FORMS = List.of(Form.XLSX, Form.PDF, Form.HTML, Form.FOLDER);

  @Option(names = "--json", description = "One JSON document on standard output.")
  private boolean json;

  @Option(
      names = "-o",
      converter = TablesFile.Typed.class,
      paramLabel = "FILE",
      description = "Write it: FILE.xlsx, .html, .pdf, or FILE/ for a folder of .csv.")
  private Optional<TablesFile> file = Optional.empty();

  @Option(names = "--force", description = "Write over an existing FILE.")
  private boolean force;

  @Option(
      names = "--paper",
      paramLabel = "SIZE",
      description = "What it is printed on: ${COMPLETION-CANDIDATES} (default A4).")
  private PaperSize paper = PaperSize.A4;

  /** Whether a page is to be read at once: neither a file nor a document was asked for. */
  boolean isPage() {
    return file.isEmpty() && !json;
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
   * Writes the sheets where a file was asked for and says so, else the page; gives the exit code.
   *
   * @param sheets made only where they are written
   * @param what is in them, such as "289 steps"
   * @param page of a terminal, or the document where one is asked for
   */
  int write(
      Output output,
      CommandSpec spec,
      PrintForm form,
      Supplier<List<OutSheet>> sheets,
      String what,
      Supplier<String> page) {
    if (file.isEmpty()) {
      output.out().print(page.get());
      return ExitCode.DONE;
    }
    int written = write(output, spec, file.get(), form, sheets.get());
    if (written == ExitCode.DONE && json) {
      output.out().print(page.get());
    } else if (written == ExitCode.DONE) {
      output.written(file.get().path(), what);
    }
    return written;
  }

  private int write(
      Output output, CommandSpec spec, TablesFile to, PrintForm form, List<OutSheet> sheets) {
    if (to.is(Form.HTML)) {
      return output.write(to.path(), SheetsHtml.write(form, sheets), force);
    }
    if (to.is(Form.PDF)) {
      return output.write(
          to.path(), out -> PdfFile.write(out, SheetsHtml.forPaper(form, sheets)), force);
    }
    return writeTables(output, spec, to, sheets, form, force, FORMS);
  }

  /** Writes a harness file, which is a workbook or a folder of .csv; gives the exit code. */
  static int writeHarness(
      Output output, CommandSpec spec, TablesFile to, List<OutSheet> sheets, boolean force) {
    PrintForm plain = PrintForm.tested("", PaperSize.A4);
    return writeTables(output, spec, to, sheets, plain, force, List.of(Form.XLSX, Form.FOLDER));
  }

  private static int writeTables(
      Output output,
      CommandSpec spec,
      TablesFile to,
      List<OutSheet> sheets,
      PrintForm form,
      boolean force,
      List<Form> forms) {
    if (to.is(Form.XLSX)) {
      return output.write(
          to.path(), out -> OutFile.workbook(out, DrawnPictures.below(sheets), form), force);
    }
    if (to.is(Form.FOLDER)) {
      return output.writeFolder(to.path(), beside -> OutFile.folder(beside, sheets), force);
    }
    throw new ParameterException(spec.commandLine(), to.asksForNone(forms));
  }
}
