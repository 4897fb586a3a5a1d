package dev.ringout.cli;

import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import picocli.CommandLine.ITypeConverter;

/**
 * Where tables are written, in the form that the name asks for.
 *
 * @param folder whether it is a folder: one that is there, or typed like one, {@code papers/}
 */
record TablesFile(Path path, boolean folder) {
  /** The forms that a result may have, each by its ending and what it is good for. */
  enum Form {
    XLSX(".xlsx", "a workbook"),
    PDF(".pdf", "to print"),
    HTML(".html", "to read on a screen"),
    CSV(".csv", "the wires alone"),
    FOLDER("/", "a folder of .csv");

    private final String ending;
    private final String what;

    Form(String ending, String what) {
      this.ending = ending;
      this.what = what;
    }
  }

  /** From what was typed. */
  static final class Typed implements ITypeConverter<TablesFile> {
    @Override
    public TablesFile convert(String typed) {
      Path path = Path.of(typed);
      boolean likeOne = typed.endsWith("/") || typed.endsWith(File.separator);
      return new TablesFile(path, likeOne || Files.isDirectory(path));
    }
  }

  /** Whether the name asks for a form. */
  boolean is(Form form) {
    return form == Form.FOLDER ? folder : !folder && name().endsWith(form.ending);
  }

  private String name() {
    return String.valueOf(path.getFileName()).toLowerCase(Locale.ROOT);
  }

  /** What is asked back where the name asks for none of the forms that there are. */
  String asksForNone(List<Form> forms) {
    boolean hasOther = name().matches(".*\\.[a-z]{2,4}");
    String file = String.valueOf(path.getFileName());
    String stem = hasOther ? file.replaceFirst("\\.[^.]*$", "") : file;
    Stream<String> names = forms.stream().map(form -> stem + form.ending + " (" + form.what + ")");
    return "-o "
        + path
        + (hasOther ? ": this can't be written; choose " : ": what should it be? ")
        + names.collect(Collectors.joining(", "));
  }

  @Override
  public String toString() {
    return path.toString();
  }
}
