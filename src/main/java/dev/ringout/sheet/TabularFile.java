package dev.ringout.sheet;

import dev.ringout.source.Problems;
import dev.ringout.source.UnusableInput;
import dev.ringout.source.UnusableInput.Reason;
import java.io.Closeable;
import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

/** A workbook, a CSV file or a folder of CSV files, as a list of sheets. */
public interface TabularFile extends Closeable {

  /** The sheets in the file's own order; of a folder, by name. */
  List<Sheet> sheets();

  /** Whether this is a single CSV file: one sheet whose name says nothing of its content. */
  default boolean isSingleTable() {
    return false;
  }

  /**
   * Opens a file by its content and name.
   *
   * @param shownName the file's name in every message
   * @param problems takes what is odd about the file but does not stop the reading
   * @throws UnusableInput where there is no such file, it may not be read, or it is no table
   */
  static TabularFile open(Path path, String shownName, Problems problems) throws UnusableInput {
    try {
      if (Files.isDirectory(path)) {
        return CsvFiles.folder(path, shownName, problems);
      }
      if (Files.exists(path) && !Files.isRegularFile(path)) {
        // It may never end, or wait for ever.
        throw new UnusableInput(shownName, Reason.MISSING, "is a device or a pipe, not a file");
      }
      return openFile(path, shownName, problems);
    } catch (NoSuchFileException e) {
      throw new UnusableInput(shownName, Reason.MISSING, "there is no such file");
    } catch (AccessDeniedException e) {
      throw new UnusableInput(shownName, Reason.MISSING, "may not be read: permission denied");
    } catch (IOException e) {
      throw new UnusableInput(shownName, Reason.MISSING, "can't be read: " + e.getMessage());
    }
  }

  private static TabularFile openFile(Path path, String shownName, Problems problems)
      throws IOException, UnusableInput {
    String name = String.valueOf(path.getFileName()).toLowerCase(Locale.ROOT);
    boolean calledOpenDocument = name.endsWith(".ods");
    boolean calledWorkbook = name.endsWith(".xlsx") || name.endsWith(".xls") || calledOpenDocument;
    if (calledWorkbook && Files.size(path) == 0) {
      throw new UnusableInput(shownName, Reason.NOT_UNDERSTOOD, "is an empty file, not a workbook");
    }
    Container container = Container.of(path);
    if (container == Container.ZIP) {
      return OdsFile.isOne(path) ? OdsFile.open(path, shownName) : XlsxFile.open(path, shownName);
    }
    if (container == Container.COMPOUND) {
      return XlsFile.open(path, shownName);
    }
    if (calledWorkbook) {
      throw new UnusableInput(
          shownName,
          Reason.NOT_UNDERSTOOD,
          "is called a workbook, but its content is not one; if it is a text file, name it .csv");
    }
    if (CsvFiles.isText(path)) {
      return CsvFiles.single(path, shownName, problems);
    }
    throw new UnusableInput(
        shownName,
        Reason.NOT_UNDERSTOOD,
        "is no kind of table that is read here: .xlsx, .xls, .ods, .csv or a folder of .csv");
  }
}
