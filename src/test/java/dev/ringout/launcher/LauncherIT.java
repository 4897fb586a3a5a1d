package dev.ringout.launcher;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Runs after packaging, on the files a user gets. */
class LauncherIT {
  private static final Path LAUNCHER = Path.of("target/ringout").toAbsolutePath();
  private static final Path SAMPLE = Path.of("harness-samples/swing-bridge").toAbsolutePath();

  @TempDir Path folder;

  private static Ran run(Path in, Map<String, String> environment, Object... words)
      throws IOException, InterruptedException {
    return Ran.in(in, environment, List.of(words));
  }

  private Object[] sample(Path launcher) {
    return new Object[] {
      launcher, "check", SAMPLE.resolve("junction-box.xlsx"), SAMPLE.resolve("point-to-point.xlsx")
    };
  }

  @Test
  void it_runs_the_main_job_from_any_folder_and_says_nothing_else() throws Exception {
    Ran ran = run(folder, Map.of(), sample(LAUNCHER));
    assertEquals(1, ran.code(), ran.err());
    assertTrue(ran.out().startsWith("FAULTS: 5."), ran.out());
    assertEquals("", ran.err(), "no noise from libraries");
  }

  @Test
  void it_runs_through_symlinks() throws Exception {
    Path link = Files.createSymbolicLink(folder.resolve("ring"), LAUNCHER);
    Path second = Files.createSymbolicLink(folder.resolve("out"), link.getFileName());
    assertEquals(0, run(folder, Map.of(), second, "--version").code());
  }

  @Test
  void it_runs_from_a_stick_with_blanks_in_its_path() throws Exception {
    Path stick = Files.createDirectory(folder.resolve("my stick"));
    Path launcher = unzip(stick);
    Path harness = stick.resolve("wire list.xlsx");
    Files.copy(SAMPLE.resolve("junction-box.xlsx"), harness);
    Ran ran =
        run(
            stick,
            Map.of(),
            launcher,
            "check",
            "wire list.xlsx",
            SAMPLE.resolve("point-to-point-clean.xlsx"));
    assertEquals(0, ran.code(), ran.err());
    assertEquals("", ran.err());
  }

  private static Path unzip(Path into) throws IOException {
    Path zip;
    try (Stream<Path> files = Files.list(Path.of("target"))) {
      zip = files.filter(file -> file.toString().endsWith(".zip")).findFirst().orElseThrow();
    }
    Path launcher = into;
    try (ZipFile archive = new ZipFile(zip.toFile())) {
      for (ZipEntry entry : java.util.Collections.list(archive.entries())) {
        Path file = into.resolve(entry.getName()).normalize();
        assertTrue(file.startsWith(into));
        if (entry.isDirectory()) {
          Files.createDirectories(file);
          continue;
        }
        Files.createDirectories(into.resolve(entry.getName()).getParent());
        try (InputStream in = archive.getInputStream(entry);
            OutputStream out = Files.newOutputStream(file)) {
          in.transferTo(out);
        }
        if (String.valueOf(file.getFileName()).equals("ringout")) {
          launcher = file;
        }
      }
    }
    Files.setPosixFilePermissions(launcher, PosixFilePermissions.fromString("rwxr-xr-x"));
    return launcher;
  }

  @Test
  void a_large_file_is_worth_the_thorough_compiler_a_small_one_is_not() throws Exception {
    Path home = Files.createDirectories(folder.resolve("java"));
    Files.createDirectories(home.resolve("bin"));
    Path java = home.resolve("bin/java");
    Files.writeString(java, "#!/bin/sh\necho \"$@\"\n");
    Files.setPosixFilePermissions(java, PosixFilePermissions.fromString("rwxr-xr-x"));
    Files.writeString(home.resolve("release"), "JAVA_VERSION=\"17.0.15\"\n");
    Map<String, String> environment = Map.of("JAVA_HOME", home.toString());
    Files.write(folder.resolve("small.csv"), new byte[1000]);
    Path tables = Files.createDirectory(folder.resolve("many readings"));
    Files.write(tables.resolve("Continuity.csv"), new byte[5_000_000]);

    for (Object[] words :
        new Object[][] {{"check", "small.csv", "--json"}, {"--version"}, {"check", "absent.csv"}}) {
      Ran ran = run(folder, environment, with(words));
      assertTrue(ran.out().contains(" -XX:TieredStopAtLevel=1 "), ran.out());
      assertEquals("", ran.err());
    }
    for (Object[] words :
        new Object[][] {
          {"check", "small.csv", "many readings"},
          {"check", tables.resolve("Continuity.csv"), "--json"}
        }) {
      Ran ran = run(folder, environment, with(words));
      assertFalse(ran.out().contains("TieredStopAtLevel"), ran.out());
    }
  }

  private static Object[] with(Object... words) {
    return Stream.concat(Stream.of(LAUNCHER), Stream.of(words)).toArray();
  }

  @Test
  void it_says_that_java_is_missing() throws Exception {
    Path tools = Files.createDirectory(folder.resolve("bin"));
    for (String tool : new String[] {"sh", "dirname", "readlink", "sed", "head"}) {
      Path real =
          Stream.of("/bin", "/usr/bin")
              .map(bin -> Path.of(bin, tool))
              .filter(Files::exists)
              .findFirst()
              .orElseThrow();
      Files.createSymbolicLink(tools.resolve(tool), real);
    }
    Ran ran = run(folder, Map.of("PATH", tools.toString(), "JAVA_HOME", ""), LAUNCHER, "--version");
    assertEquals(70, ran.code());
    assertTrue(ran.err().startsWith("ringout: Java is missing."), ran.err());
  }

  @Test
  void it_says_that_java_is_too_old_by_its_release_file_and_by_asking_it() throws Exception {
    for (boolean withReleaseFile : new boolean[] {true, false}) {
      Path home = Files.createDirectories(folder.resolve("java" + withReleaseFile));
      Files.createDirectories(home.resolve("bin"));
      Path java = home.resolve("bin/java");
      Files.writeString(
          java,
          "#!/bin/sh\necho 'openjdk version \"11.0.2\" 2019-01-15' >&2\n",
          StandardCharsets.UTF_8);
      Files.setPosixFilePermissions(java, PosixFilePermissions.fromString("rwxr-xr-x"));
      if (withReleaseFile) {
        Files.writeString(home.resolve("release"), "JAVA_VERSION=\"1.8.0_392\"\n");
      }
      Ran ran = run(folder, Map.of("JAVA_HOME", home.toString()), LAUNCHER, "--version");
      assertEquals(70, ran.code());
      assertTrue(ran.err().startsWith("ringout: needs Java 17 or newer;"), ran.err());
      assertTrue(ran.err().contains(withReleaseFile ? "1.8.0_392" : "11.0.2"), ran.err());
    }
  }

  @Test
  void an_archive_of_classes_that_does_not_fit_is_skipped_silently() throws Exception {
    Path launcher = unzip(Files.createDirectory(folder.resolve("other")));
    Path lib = launcher.resolveSibling("lib");
    assertFalse(Files.exists(lib.resolve("ringout.jsa")), "the archive does not travel");
    Files.copy(Path.of("target/lib/ringout.jsa"), lib.resolve("ringout.jsa"));
    Ran foreign = run(folder, Map.of(), launcher, "--version");
    assertEquals(0, foreign.code());
    assertEquals("", foreign.err());
    Files.writeString(Path.of(lib.toString(), "ringout.jsa"), "not an archive");
    Ran broken = run(folder, Map.of(), launcher, "--version");
    assertEquals(0, broken.code(), broken.err());
    assertEquals("", broken.err());
    assertTrue(broken.out().matches("ringout \\d+\\.\\d+\\.\\d+\\R"), broken.out());
  }

  /** Java ends with 1 then, which here means faults. */
  @Test
  void a_java_that_can_not_start_is_no_verdict() throws Exception {
    for (String variable : new String[] {"RINGOUT_JAVA_OPTS", "JAVA_TOOL_OPTIONS"}) {
      Ran ran = run(folder, Map.of(variable, "-Xmx9999999g"), sample(LAUNCHER));
      assertEquals(70, ran.code(), variable);
      assertTrue(ran.err().startsWith("ringout: Java can't start: "), ran.err());
    }
  }

  @Test
  void a_program_that_was_copied_in_part_is_no_verdict() throws Exception {
    Path launcher = unzip(Files.createDirectory(folder.resolve("part")));
    Path lib = launcher.resolveSibling("lib");
    try (Stream<Path> jars = Files.list(lib)) {
      Files.delete(
          jars.filter(jar -> jar.getFileName().toString().startsWith("picocli"))
              .findFirst()
              .orElseThrow());
    }
    Ran library = run(folder, Map.of(), sample(launcher));
    assertEquals(70, library.code(), library.err());
    assertTrue(library.err().startsWith("ringout: "), library.err());
    Path jar = lib.resolve("ringout.jar");
    Files.write(jar, Arrays.copyOf(Files.readAllBytes(jar), 10_000));
    Ran half = run(folder, Map.of(), sample(launcher));
    assertEquals(70, half.code(), half.err());
    assertTrue(half.err().contains("ringout.jar is missing or damaged"), half.err());
  }

  @Test
  void letters_of_any_language_in_a_path_need_no_locale() throws Exception {
    Path list = Files.createDirectory(folder.resolve("Schl\u00fcsse")).resolve("k\u00e4sten.xlsx");
    Files.copy(SAMPLE.resolve("junction-box.xlsx"), list);
    for (String locale : new String[] {"C", "POSIX", "xx_YY.UTF-8"}) {
      Ran ran =
          run(
              folder,
              Map.of("LC_ALL", locale),
              "/bin/sh",
              "-c",
              "exec \"$0\" review Schl*/k*.xlsx",
              LAUNCHER);
      assertEquals(0, ran.code(), locale + ": " + ran.err());
    }
  }
}
