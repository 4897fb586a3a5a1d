package dev.ringout.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeFalse;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import dev.ringout.support.Run;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Results in a folder in which others write too, at the same time. */
class OutputTest {
  @TempDir Path folder;

  private final ByteArrayOutputStream said = new ByteArrayOutputStream();

  private Output output() {
    PrintStream stream = new PrintStream(said, true, StandardCharsets.UTF_8);
    return new Output(stream, stream, false, 80);
  }

  private List<Path> unfinished() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.filter(file -> file.getFileName().toString().endsWith(".part")).toList();
    }
  }

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  @Test
  void nobody_can_lead_what_is_written_into_a_file_of_another() throws IOException {
    Path victim = Files.writeString(folder.resolve("victim"), "mine");
    Path to = folder.resolve("result.txt");
    output()
        .write(
            to,
            out -> {
              for (Path beside : unfinished()) {
                Files.delete(beside);
                Files.createSymbolicLink(beside, victim);
              }
              out.write(bytes("theirs"));
            },
            false);
    assertEquals("mine", Files.readString(victim));
  }

  @Test
  void a_file_that_somebody_made_meanwhile_is_not_written_over() throws IOException {
    Path to = folder.resolve("result.txt");
    int code =
        output()
            .write(
                to,
                out -> {
                  Files.writeString(to, "mine");
                  out.write(bytes("theirs"));
                },
                false);
    assertEquals(ExitCode.CANNOT_WRITE, code);
    assertEquals("mine", Files.readString(to));
    assertTrue(said.toString(StandardCharsets.UTF_8).contains("write over it with --force"));
    assertEquals(List.of(), unfinished());
  }

  @Test
  void what_is_left_unfinished_goes_and_what_stood_there_stays() throws IOException {
    Path to = Files.writeString(folder.resolve("result.txt"), "old");
    int code =
        output()
            .write(
                to,
                out -> {
                  out.write(bytes("half"));
                  throw new IOException("no space left");
                },
                true);
    assertEquals(ExitCode.CANNOT_WRITE, code);
    assertEquals("old", Files.readString(to));
    assertEquals(List.of(), unfinished());
    assertEquals(ExitCode.DONE, output().write(to, "new", true));
    assertEquals("new", Files.readString(to));
  }

  @Test
  void a_folder_takes_the_place_of_nothing_or_adds_to_what_is_there() throws IOException {
    Path to = folder.resolve("sheets");
    Output.FolderContent content =
        beside -> {
          Files.createDirectory(beside);
          Files.writeString(beside.resolve("wires.csv"), "Wire");
        };
    assertEquals(ExitCode.DONE, output().writeFolder(to, content, false));
    Files.writeString(to.resolve("notes.txt"), "mine");
    assertEquals(ExitCode.CANNOT_WRITE, output().writeFolder(to, content, false));
    assertEquals(ExitCode.DONE, output().writeFolder(to, content, true));
    assertEquals("mine", Files.readString(to.resolve("notes.txt")));
    assertEquals(List.of(), unfinished());
  }

  private String refused(Path to, boolean folderIsMade) {
    int code =
        folderIsMade
            ? output().writeFolder(to, Files::createDirectory, true)
            : output().write(to, "result", true);
    assertEquals(ExitCode.CANNOT_WRITE, code, to.toString());
    return said.toString(StandardCharsets.UTF_8);
  }

  @Test
  void a_link_is_never_replaced_wherever_it_leads() throws IOException {
    Path file = Files.writeString(folder.resolve("file.txt"), "mine");
    Path link = Files.createSymbolicLink(folder.resolve("link.txt"), file);
    Path nowhere = Files.createSymbolicLink(folder.resolve("nowhere"), folder.resolve("gone"));
    assertTrue(refused(link, false).contains("it is a link; name the file itself"));
    assertTrue(refused(nowhere, false).contains("nowhere can't be written: it is a link"));
    assertTrue(Files.isSymbolicLink(link) && Files.isSymbolicLink(nowhere));
    Files.createDirectory(folder.resolve("sheets"));
    Path toFolder = Files.createSymbolicLink(folder.resolve("to"), folder.resolve("sheets"));
    assertTrue(refused(toFolder, true).contains("to can't be written: it is a link"));
    assertEquals("mine", Files.readString(file));
    assertEquals(List.of(), unfinished());
  }

  @Test
  void a_device_is_never_replaced() {
    Path device = Path.of("/dev/null");
    assumeTrue(Files.exists(device), "systems without devices among their files");
    assertTrue(refused(device, false).contains("it is a device or a pipe, not a file"));
    assertTrue(Files.exists(device) && !Files.isRegularFile(device));
  }

  @Test
  void a_file_takes_the_place_of_no_folder_and_a_folder_of_no_file() throws IOException {
    Path sheets = Files.createDirectory(folder.resolve("sheets"));
    assertTrue(refused(sheets, false).contains("it is a folder"));
    Path file = Files.writeString(folder.resolve("file"), "mine");
    assertTrue(refused(file, true).contains("it is a file, not a folder"));
    assertEquals("mine", Files.readString(file));
  }

  @Test
  void what_is_no_file_in_a_folder_is_replaced_neither() throws IOException {
    Path to = Files.createDirectory(folder.resolve("sheets"));
    Path other = Files.writeString(folder.resolve("other"), "mine");
    Files.createSymbolicLink(to.resolve("wires.csv"), other);
    int code =
        output()
            .writeFolder(
                to,
                beside -> {
                  Files.createDirectory(beside);
                  Files.writeString(beside.resolve("items.csv"), "Ref");
                  Files.writeString(beside.resolve("wires.csv"), "Wire");
                },
                true);
    assertEquals(ExitCode.CANNOT_WRITE, code);
    assertTrue(Files.isSymbolicLink(to.resolve("wires.csv")));
    assertFalse(Files.exists(to.resolve("items.csv")), "nothing of it is put there");
  }

  @Test
  void why_nothing_can_be_written_is_told_of_the_folder_that_was_named() throws IOException {
    String missing = refused(folder.resolve("gone").resolve("result.txt"), false);
    assertTrue(missing.contains("there is no folder " + folder.resolve("gone")), missing);
    Path file = Files.writeString(folder.resolve("file"), "");
    String within = refused(file.resolve("result.txt"), false);
    assertTrue(within.contains(file + " is not a folder"), within);
    String longName = refused(folder.resolve("n".repeat(300)), false);
    assertTrue(longName.contains("File name too long"), longName);
    assertFalse((missing + within + longName).contains(".part"), "what nobody has named");
  }

  @Test
  void a_folder_that_may_not_be_written_in_is_named_with_the_reason() throws IOException {
    Path closed = Files.createDirectory(folder.resolve("closed"));
    Files.setPosixFilePermissions(closed, PosixFilePermissions.fromString("r-xr-xr-x"));
    assumeFalse(Files.isWritable(closed), "who may write everywhere");
    String said = refused(closed.resolve("result.txt"), false);
    assertTrue(
        said.contains("nothing may be written in the folder " + closed + " (permission denied)"),
        said);
  }

  private static ResultFile of(Path to, String text) {
    return ResultFile.file(to, out -> out.write(bytes(text)));
  }

  @Test
  void files_that_belong_together_are_of_one_run_however_many_write_them() throws Exception {
    Path record = folder.resolve("record.html");
    Path seal = folder.resolve("record.html.seal");
    for (int i = 0; i < 40; i++) {
      List<Thread> runs = new ArrayList<>();
      for (String run : List.of("conforms", "faults", "incomplete")) {
        runs.add(new Thread(() -> output().write(List.of(of(record, run), of(seal, run)), true)));
      }
      runs.forEach(Thread::start);
      for (Thread run : runs) {
        run.join();
      }
      assertEquals(Files.readString(record), Files.readString(seal));
    }
    try (Stream<Path> files = Files.list(folder)) {
      assertEquals(2, files.count(), "nothing else is left");
    }
  }

  @Test
  void of_files_that_belong_together_all_are_written_or_none() throws IOException {
    Path record = Files.writeString(folder.resolve("record.html"), "old");
    Path seal = Files.createDirectory(folder.resolve("record.html.seal"));
    assertEquals(
        ExitCode.CANNOT_WRITE, output().write(List.of(of(record, "new"), of(seal, "new")), true));
    assertEquals("old", Files.readString(record));
  }

  @Test
  void the_turn_of_a_run_that_was_killed_goes_to_the_next() throws IOException {
    Path record = folder.resolve("record.html");
    Path turn = Files.createFile(folder.resolve(".record.html.turn"));
    Files.setLastModifiedTime(turn, FileTime.fromMillis(0));
    Path seal = folder.resolve("record.html.seal");
    assertEquals(ExitCode.DONE, output().write(List.of(of(record, "new"), of(seal, "new")), false));
    assertFalse(Files.exists(turn));
  }

  @Test
  void whatever_falls_through_is_one_line_and_no_verdict() {
    OutputStream broken =
        new OutputStream() {
          @Override
          public void write(int b) {
            throw new StackOverflowError("first line\nsecond line");
          }
        };
    PrintStream err = new PrintStream(said, true, StandardCharsets.UTF_8);
    int code =
        Main.run(new PrintStream(broken, true, StandardCharsets.UTF_8), err, false, "--help");
    assertEquals(ExitCode.DEFECT, code);
    String line = said.toString(StandardCharsets.UTF_8);
    assertTrue(
        line.startsWith("ringout: a defect in ringout itself, not in your files: java.lang.Stack"),
        line);
    assertEquals(1, line.lines().count(), line);
  }

  /** What an unset variable of a script leaves of a file's name. */
  @ParameterizedTest
  @ValueSource(strings = {"plan box.csv -o|", "plan|", "report --new-key|", "check box.csv|"})
  void an_empty_name_is_no_file_and_not_the_folder_that_one_happens_to_be_in(String words) {
    Run run = Run.of((Object[]) words.replace("|", " |").replace("|", "").split(" ", -1));
    assertEquals(ExitCode.USAGE, run.code(), run.err());
    assertTrue(run.err().contains("a file's name is empty"), run.err());
  }
}
