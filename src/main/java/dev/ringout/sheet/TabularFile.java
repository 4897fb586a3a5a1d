package dev.ringout.sheet;

import dev.ringout.source.FileBytes;
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
    return open(path, shownName, problems, FileBytes::read);
  }

  /**
   * Opens a file by its content and name.
   *
   * @param reader reads it, or each file of a folder, once
   * @throws UnusableInput where there is no such file, it may not be read, or it is no table
   */
  static TabularFile open(Path path, String shownName, Problems problems, FileBytes.Reader reader)
      throws UnusableInput {
    try {
      if (Files.isDirectory(path)) {
        return CsvFiles.folder(path, shownName, problems, reader);
      }
      if (FileBytes.isEndless(path)) {
        throw new UnusableInput(shownName, Reason.MISSING, "is a device or a pipe, not a file");
      }
      return openFile(reader.read(path), shownName, problems);
    } catch (NoSuchFileException e) {
      throw new UnusableInput(shownName, Reason.MISSING, NearFiles.noSuch(path));
    } catch (AccessDeniedException e) {
      throw new UnusableInput(shownName, Reason.MISSING, "may not be read: permission denied");
    } catch (IOException e) {
      throw new UnusableInput(shownName, Reason.MISSING, "can't be read: " + e.getMessage());
    }
  }

  /**
   * Opens what was read before and kept.
   *
   * @param folder whether it was a folder of CSV files
   * @throws UnusableInput where it is no table
   */
  static TabularFile kept(
      boolean folder, List<FileBytes> parts, String shownName, Problems problems)
      throws UnusableInput {
    try {
      return folder
          ? CsvFiles.folder(parts, shownName, problems)
          : openFile(parts.get(0), shownName, problems);
    } catch (IOException e) {
      throw new UnusableInput(shownName, Reason.MISSING, "can't be read: " + e.getMessage());
    }
  }

  private static TabularFile openFile(FileBytes file, String shownName, Problems problems)
      throws IOException, UnusableInput {
    String name = file.name().toLowerCase(Locale.ROOT);
    boolean calledOpenDocument = name.endsWith(".ods");
    boolean calledWorkbook = name.endsWith(".xlsx") || name.endsWith(".xls") || calledOpenDocument;
    if (calledWorkbook && file.size() == 0) {
      throw new UnusableInput(shownName, Reason.NOT_UNDERSTOOD, "is an empty file, not a workbook");
    }
    Container container = Container.of(file);
    if (container == Container.ZIP) {
      return OdsFile.isOne(file) ? OdsFile.open(file, shownName) : XlsxFile.open(file, shownName);
    }
    if (container == Container.COMPOUND) {
      return XlsFile.open(file, shownName);
    }
    if (calledWorkbook) {
      throw new UnusableInput(
          shownName,
          Reason.NOT_UNDERSTOOD,
          "is called a workbook, but its content is not one; if it is a text file, name it .csv");
    }
    if (CsvFiles.isText(file)) {
      return CsvFiles.single(file, shownName, problems);
    }
    throw new UnusableInput(
        shownName,
        Reason.NOT_UNDERSTOOD,
        "is not a table that can be read; these can: .xlsx, .xls, .ods, .csv or a folder of .csv");
  }
}
