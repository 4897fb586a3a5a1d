package dev.ringout.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Results in a folder in which others write too, at the same time. */
class OutputTest {
  @TempDir Path folder;

  private final ByteArrayOutputStream said = new ByteArrayOutputStream();

  private Output output() {
    PrintStream stream = new PrintStream(said, true, StandardCharsets.UTF_8);
    return new Output(stream, stream, false);
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
}
