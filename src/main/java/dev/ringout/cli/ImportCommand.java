package dev.ringout.cli;

import dev.ringout.Ringout;
import dev.ringout.cli.TablesFile.Form;
import dev.ringout.imports.list.ImportOptions;
import dev.ringout.imports.list.ImportResult;
import dev.ringout.imports.list.OddityKind;
import dev.ringout.imports.list.Words;
import dev.ringout.jobs.Answer;
import dev.ringout.jobs.ImportJob;
import dev.ringout.json.ImportJson;
import dev.ringout.json.ProfileJson;
import dev.ringout.print.ImportedSheets;
import dev.ringout.sheet.OutFile;
import dev.ringout.sheet.OutSheet;
import dev.ringout.source.FileBytes;
import dev.ringout.source.Severity;
import dev.ringout.text.ImportText;
import dev.ringout.text.ProfileText;
import dev.ringout.units.Numbers;
import dev.ringout.words.ProblemText;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
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
      converter = TablesFile.Typed.class,
      paramLabel = "HARNESS",
      description =
          "Write a harness file: .xlsx, .csv (wires alone), or HARNESS/ for a folder of .csv.")
  private Optional<TablesFile> outputFile = Optional.empty();

  @Option(names = "--force", description = "Write over an existing HARNESS.")
  private boolean force;

  @Option(names = "--json", description = "One JSON document on standard output.")
  private boolean json;

  @Option(
      names = "--column",
      paramLabel = "HEADING=ROLE",
      description =
          "What a column is, by its heading or its letter: \"Fm Term=From Pin\","
              + " \"Lg=Length (in)\", D=Keep. It is final. May be given several times.")
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
      description =
          "An item named without a pin is one point, however often it is named;"
              + " all: every such item.")
  private Set<String> onePoint = new LinkedHashSet<>();

  @Option(
      names = "--module",
      paramLabel = "ID",
      description =
          "Of a harness file in KBL: only what this module controls, by its part number or id."
              + " May be given several times.")
  private Set<String> modules = new LinkedHashSet<>();

  @Option(
      names = "--sheet",
      paramLabel = "SHEET",
      description = "Read this sheet alone. May be given several times.")
  private Set<String> sheets = new LinkedHashSet<>();

  @Option(
      names = "--rows",
      paramLabel = "FIRST-LAST",
      description = "Read these rows alone, the headings among them: 5-40.")
  private List<String> rows = new ArrayList<>();

  @Option(
      names = "--heading-row",
      paramLabel = "ROW",
      description = "Where the headings stand; 0 where there are none.")
  private List<String> headingRows = new ArrayList<>();

  @Option(
      names = "--layout",
      paramLabel = "LAYOUT",
      description =
          "How a table tells its wires: from-to, block, terminals, net-list, row-nets, wire-ends,"
              + " item-to-points, paths, marks, open-ended, pin-names or none.")
  private List<String> layouts = new ArrayList<>();

  @Option(
      names = "--item",
      paramLabel = "ITEM",
      description = "The connector whose pins a table lists, where the list does not say it.")
  private List<String> items = new ArrayList<>();

  @Option(
      names = "--separator",
      paramLabel = "SIGN",
      description =
          "What stands between item and pin in one cell: - : / blank; none where the whole cell is"
              + " the item.")
  private List<String> separators = new ArrayList<>();

  @Option(
      names = "--read-as",
      paramLabel = "TEXT=POINT",
      description =
          "What a cell means, or one of several points in a cell: \"P2-?=P2-7\". May be given"
              + " several times.")
  private List<String> readAs = new ArrayList<>();

  @Option(
      names = "--leave-out",
      paramLabel = "ROWS",
      description = "Rows that are no wires, by their numbers: 19,22-24.")
  private List<String> leaveOut = new ArrayList<>();

  @Option(
      names = "--profile",
      paramLabel = "FILE",
      description = "A shop's way of writing lists, as --save-profile wrote it.")
  private Optional<Path> profile = Optional.empty();

  @Option(
      names = "--save-profile",
      paramLabel = "FILE",
      description = "Save the options given in FILE, for --profile.")
  private Optional<Path> newProfile = Optional.empty();

  @Option(
      names = "--words",
      paramLabel = "FILE",
      description = "More words for headings and cells, in another language for example.")
  private List<Path> wordFiles = new ArrayList<>();

  @Option(
      names = "--length-unit",
      paramLabel = "UNIT",
      description = "What lengths without a unit are in: mm, cm, m, in, ft.")
  private Optional<String> lengthUnit = Optional.empty();

  @Option(
      names = "--gauge-unit",
      paramLabel = "UNIT",
      description = "What gauges without a unit are in: AWG, mm2.")
  private Optional<String> gaugeUnit = Optional.empty();

  @Option(
      names = "--title",
      paramLabel = "TEXT",
      description = "The unit's title, whatever the list says.")
  private Optional<String> title = Optional.empty();

  @Option(
      names = "--revision",
      paramLabel = "TEXT",
      description = "The list's revision, whatever the list says.")
  private Optional<String> revision = Optional.empty();

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
                : ImportText.write(answer.value().shownName(), typed(), list, output.look()));
    output.err().print(ProblemText.lines(answer.problems()));
    int written = outputFile.isPresent() ? write(outputFile.get(), list) : ExitCode.DONE;
    if (written == ExitCode.DONE && !json) {
      outputFile.ifPresent(
          to -> output.written(to.path(), Numbers.count(list.wiring().wires().size(), "wire")));
    }
    if (written == ExitCode.DONE) {
      written = saveProfile(options);
    }
    if (written != ExitCode.DONE) {
      return written;
    }
    return answer.value().isUnderstood() ? ExitCode.DONE : ExitCode.NOT_UNDERSTOOD;
  }

  /** What was typed behind the command's name. */
  private List<String> typed() {
    return spec.commandLine().getParseResult().originalArgs().stream()
        .dropWhile(word -> !word.equals(spec.name()))
        .skip(1)
        .toList();
  }

  private int refuse(Answer.Refused<ImportJob.Result> answer) {
    if (json) {
      output.out().print(ImportJson.write(answer.problems()));
    }
    return output.refuse(answer);
  }

  private ImportOptions options() {
    ProfileText said = new ProfileText();
    profile.ifPresent(file -> takeProfile(said, file));
    say(said, "sheet", sheets);
    say(said, "rows", rows);
    say(said, "heading-row", headingRows);
    say(said, "layout", layouts);
    say(said, "item", items);
    say(said, "separator", separators);
    say(said, "read-as", readAs);
    say(said, "leave-out", leaveOut);
    say(said, "column", columns);
    say(said, "join-by", joinBy);
    say(said, "marks", marks);
    say(said, "one-point", onePoint);
    say(said, "length-unit", lengthUnit.stream().toList());
    say(said, "gauge-unit", gaugeUnit.stream().toList());
    say(said, "title", title.stream().toList());
    say(said, "revision", revision.stream().toList());
    say(said, "module", modules);
    return said.options();
  }

  private void say(ProfileText said, String option, Collection<String> values) {
    for (String value : values) {
      try {
        said.say(option, value);
      } catch (ProfileText.Unreadable e) {
        throw wrong("--" + option + " " + e.getMessage());
      }
    }
  }

  private void takeProfile(ProfileText said, Path file) {
    try {
      String text = FileBytes.read(file).utf8();
      if (text.stripLeading().startsWith("{")) {
        said.take(ProfileJson.read(text));
      } else if (ProfileText.is(text)) {
        said.read(text);
      } else {
        throw wrong(file + " is not a profile: no line says \"profile: ringout 2\"");
      }
    } catch (IOException e) {
      throw wrong(file + " can't be read; a profile is written by --save-profile");
    } catch (ProfileText.Unreadable | ProfileJson.Unreadable e) {
      throw wrong(file + " " + e.getMessage());
    }
  }

  private Words words() {
    Words words = Words.standard();
    for (Path file : wordFiles) {
      try {
        words.add(FileBytes.read(file).utf8().lines().toList());
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
    if (newProfile.isEmpty()) {
      return ExitCode.DONE;
    }
    int written = output.write(newProfile.get(), ProfileText.write(options), force);
    if (written == ExitCode.DONE) {
      output
          .err()
          .println("ringout: " + newProfile.get() + " written; it holds the options you gave");
    }
    return written;
  }

  /** An option that fits nothing: a slip, or the profile of another list. */
  private static boolean namesWhatIsNotThere(ImportResult result) {
    return result.findings().stream()
        .anyMatch(
            finding ->
                finding.severity() == Severity.ERROR && finding.kind() == OddityKind.HEADING);
  }

  private int write(TablesFile to, ImportResult result) {
    Path file = to.path();
    List<OutSheet> sheets = ImportedSheets.of(result, String.valueOf(listFile.getFileName()));
    if (namesWhatIsNotThere(result)) {
      output.err().println("ringout: the options name what is not there, so nothing is written");
      return ExitCode.NOT_UNDERSTOOD;
    }
    if (!result.joinsAnything()) {
      output
          .err()
          .println(
              result.isDecided()
                  ? "ringout: no wires and no links, so nothing is written"
                  : "ringout: not certain, so nothing is written");
      return ExitCode.NOT_UNDERSTOOD;
    }
    if (to.is(Form.XLSX)) {
      return output.write(file, out -> OutFile.workbook(out, sheets), force);
    }
    if (to.is(Form.CSV)) {
      if (result.hasMoreThanWires()) {
        output
            .err()
            .println(
                "ringout: a single .csv holds wires alone; this list has links or rows that could"
                    + " not be read: write an .xlsx or a folder");
        return ExitCode.CANNOT_WRITE;
      }
      return writeWires(file, sheets, result);
    }
    if (!to.folder()) {
      throw wrong(to.asksForNone(List.of(Form.XLSX, Form.CSV, Form.FOLDER)));
    }
    String stays = sheetThatStays(file, sheets);
    if (!stays.isEmpty()) {
      output
          .err()
          .println(
              "ringout: "
                  + stays
                  + " is in this folder and is not a sheet of this list; it would be read as"
                  + " part of the harness: choose another folder");
      return ExitCode.CANNOT_WRITE;
    }
    return output.writeFolder(file, beside -> OutFile.folder(beside, sheets), force);
  }

  private int writeWires(Path file, List<OutSheet> sheets, ImportResult result) {
    int written = output.write(file, out -> OutFile.csv(out, sheets.get(0)), force);
    List<String> others =
        sheets.stream()
            .skip(1)
            .map(OutSheet::name)
            .filter(name -> !name.equals("Header") || !result.header().isEmpty())
            .toList();
    if (written == ExitCode.DONE && !others.isEmpty()) {
      output
          .err()
          .println(
              "ringout: "
                  + file
                  + " holds the wires alone; what belongs on "
                  + String.join(", ", others)
                  + " is not in it: write an .xlsx or a folder to keep it");
    }
    return written;
  }

  /** A sheet of another harness in the folder, which would be read with the new ones; or empty. */
  private static String sheetThatStays(Path folder, List<OutSheet> sheets) {
    if (!Files.isDirectory(folder)) {
      return "";
    }
    Set<String> written = new LinkedHashSet<>();
    sheets.forEach(sheet -> written.add(sheet.name().toLowerCase(Locale.ROOT) + ".csv"));
    try (Stream<Path> files = Files.list(folder)) {
      return files
          .map(file -> String.valueOf(file.getFileName()))
          .filter(name -> name.toLowerCase(Locale.ROOT).endsWith(".csv"))
          .filter(name -> !written.contains(name.toLowerCase(Locale.ROOT)))
          .sorted()
          .findFirst()
          .orElse("");
    } catch (IOException e) {
      return "";
    }
  }
}
