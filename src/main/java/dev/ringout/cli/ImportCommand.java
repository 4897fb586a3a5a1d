package dev.ringout.cli;

import dev.ringout.Ringout;
import dev.ringout.imports.list.ColumnChoice;
import dev.ringout.imports.list.ImportOptions;
import dev.ringout.imports.list.ImportResult;
import dev.ringout.imports.list.Role;
import dev.ringout.imports.list.Words;
import dev.ringout.jobs.Answer;
import dev.ringout.jobs.ImportJob;
import dev.ringout.json.ImportJson;
import dev.ringout.json.ProfileJson;
import dev.ringout.print.ImportedSheets;
import dev.ringout.sheet.OutFile;
import dev.ringout.sheet.OutSheet;
import dev.ringout.text.ImportText;
import dev.ringout.words.ProblemText;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code ringout import}: a wire list in any layout. */
@Command(
    name = "import",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    description =
        "Reads a wire list as somebody else laid it out: says how every column was understood,"
            + " accounts for every row, reports every suspect cell, and writes a harness file."
            + " Without -o it only shows its understanding.")
final class ImportCommand implements Callable<Integer> {
  private final Output output;

  @Spec private CommandSpec spec = CommandSpec.create();

  @Parameters(
      index = "0",
      paramLabel = "LIST",
      description =
          "The list: .xlsx, .xls, .ods, .csv or any text with tabs, semicolons or commas; or a"
              + " harness file in KBL (VDA 4964).")
  private Path listFile = Path.of("");

  @Option(
      names = "-o",
      paramLabel = "HARNESS",
      description = "Write a harness file: .xlsx, .csv (wires alone) or a folder of .csv.")
  private Optional<Path> outputFile = Optional.empty();

  @Option(names = "--force", description = "Write over an existing HARNESS.")
  private boolean force;

  @Option(names = "--json", description = "One JSON document on standard output.")
  private boolean json;

  @Option(
      names = "--column",
      paramLabel = "HEADING=ROLE",
      description =
          "What a column is: \"Fm Term=From Pin\", \"Lg=Length (in)\"; a column without a heading by"
              + " its letter. May be given several times.")
  private List<String> columns = new ArrayList<>();

  @Option(
      names = "--join-by",
      paramLabel = "HEADING",
      description = "Rows with the same text under HEADING are one net.")
  private Set<String> joinBy = new LinkedHashSet<>();

  @Option(
      names = "--marks",
      paramLabel = "MARK",
      split = ",",
      description = "In a matrix of marks, these are wires: --marks X,o")
  private Set<String> marks = new LinkedHashSet<>();

  @Option(
      names = "--one-point",
      paramLabel = "ITEM",
      description = "An item named without a pin is one point, however often it is named.")
  private Set<String> onePoint = new LinkedHashSet<>();

  @Option(
      names = "--module",
      paramLabel = "ID",
      description =
          "Of a harness file in KBL: only what this module controls, by its part number or id."
              + " May be given several times.")
  private Set<String> modules = new LinkedHashSet<>();

  @Option(
      names = "--profile",
      paramLabel = "FILE",
      description =
          "A shop's way of writing lists: read from FILE; where FILE is not there yet, the options"
              + " given are saved in it.")
  private Optional<Path> profile = Optional.empty();

  @Option(
      names = "--words",
      paramLabel = "FILE",
      description = "More words for headings and cells, in another language for example.")
  private List<Path> wordFiles = new ArrayList<>();

  ImportCommand(Output output) {
    this.output = output;
  }

  @Override
  public Integer call() {
    ImportOptions options = options();
    ImportJob.Request request = new ImportJob.Request(listFile, words(), options);
    return Ringout.onFiles()
        .importList(request)
        .match(answer -> show(answer, options), this::refuse);
  }

  private int show(Answer.Given<ImportJob.Result> answer, ImportOptions options) {
    ImportResult list = answer.value().list();
    output
        .out()
        .print(
            json
                ? ImportJson.write(list)
                : ImportText.write(answer.value().shownName(), list, output.showsColour()));
    output.err().print(ProblemText.lines(answer.problems()));
    int written = outputFile.isPresent() ? write(outputFile.get(), list) : ExitCode.DONE;
    if (written == ExitCode.DONE) {
      written = saveProfile(options);
    }
    if (written != ExitCode.DONE) {
      return written;
    }
    return answer.value().isUnderstood() ? ExitCode.DONE : ExitCode.NOT_UNDERSTOOD;
  }

  private int refuse(Answer.Refused<ImportJob.Result> answer) {
    if (json) {
      output.out().print(ImportJson.write(answer.problems()));
    }
    return output.refuse(answer);
  }

  private ImportOptions options() {
    Map<String, ColumnChoice> roles = new LinkedHashMap<>();
    Set<String> allJoinBy = new LinkedHashSet<>(joinBy);
    Set<String> allMarks = new LinkedHashSet<>(marks);
    Set<String> allOnePoint = new LinkedHashSet<>(onePoint);
    if (profile.isPresent() && Files.exists(profile.get())) {
      ImportOptions saved = saved(profile.get());
      roles.putAll(saved.columns());
      allJoinBy.addAll(saved.joinBy());
      allMarks.addAll(saved.marks());
      allOnePoint.addAll(saved.onePoint());
    }
    for (String column : columns) {
      int equals = column.lastIndexOf('=');
      String title = equals < 0 ? "" : column.substring(equals + 1);
      ColumnChoice role =
          ColumnChoice.of(title)
              .orElseThrow(
                  () ->
                      wrong(
                          "--column \""
                              + column
                              + "\": expected HEADING=ROLE, where ROLE is one of "
                              + String.join(
                                  ", ", Stream.of(Role.values()).map(Role::title).toList())));
      roles.put(column.substring(0, equals).strip(), role);
    }
    return new ImportOptions(roles, allJoinBy, allMarks, allOnePoint, modules);
  }

  private ImportOptions saved(Path file) {
    try {
      return ProfileJson.read(Files.readString(file));
    } catch (IOException e) {
      throw wrong(file + " can't be read: " + e.getMessage());
    } catch (ProfileJson.Unreadable e) {
      throw wrong(file + " " + e.getMessage());
    }
  }

  private Words words() {
    Words words = Words.standard();
    for (Path file : wordFiles) {
      try {
        words.add(Files.readAllLines(file));
      } catch (IOException e) {
        throw wrong(file + ": can't be read: " + e.getMessage());
      } catch (IllegalArgumentException e) {
        throw wrong(file + ": " + e.getMessage());
      }
    }
    return words;
  }

  private ParameterException wrong(String words) {
    return new ParameterException(spec.commandLine(), words);
  }

  private int saveProfile(ImportOptions options) {
    if (profile.isEmpty() || Files.exists(profile.get())) {
      return ExitCode.DONE;
    }
    int written = output.write(profile.get(), ProfileJson.write(options), false);
    if (written == ExitCode.DONE) {
      output.err().println("ringout: " + profile.get() + " written; it holds the options given");
    }
    return written;
  }

  private int write(Path file, ImportResult result) {
    String name = String.valueOf(file.getFileName()).toLowerCase(Locale.ROOT);
    List<OutSheet> sheets = ImportedSheets.of(result, header());
    if (result.wiring().wires().isEmpty()) {
      output.err().println("ringout: no wires, so nothing is written");
      return ExitCode.NOT_UNDERSTOOD;
    }
    if (name.endsWith(".xlsx")) {
      return output.write(file, beside -> OutFile.workbook(beside, sheets), force);
    }
    if (name.endsWith(".csv")) {
      if (result.hasMoreThanWires()) {
        output
            .err()
            .println(
                "ringout: a single .csv holds wires alone; this list has links or rows that could"
                    + " not be read: write an .xlsx or a folder");
        return ExitCode.CANNOT_WRITE;
      }
      return output.write(file, beside -> OutFile.csv(beside, sheets.get(0)), force);
    }
    if (name.endsWith(".xls") || name.endsWith(".ods")) {
      throw wrong("-o " + file + ": a harness file is written as .xlsx, .csv or a folder");
    }
    return output.write(file, beside -> OutFile.folder(beside, sheets), force);
  }

  private Map<String, String> header() {
    return Map.of("imported from", String.valueOf(listFile.getFileName()));
  }
}
