package dev.ringout.launcher;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.URI;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What the distribution holds is what the program loads, and every job can be done with it: whoever
 * answers for what is on the bench's machine has no library to answer for that does nothing there.
 */
class DistributionIT {
  private static final Path LIB = Path.of("target/lib").toAbsolutePath();
  private static final String JAVA = System.getProperty("java.home") + "/bin/java";
  private static final Path SAMPLES = Path.of("harness-samples/swing-bridge").toAbsolutePath();
  private static final Path BOX = sample("junction-box.xlsx");
  private static final Path READINGS = sample("point-to-point.xlsx");
  private static final Path FORMATS = Path.of("src/test/resources/formats").toAbsolutePath();

  /** Nobody listens there: what speaks to a server is loaded before that shows. */
  private static final String NO_SERVER = "postgresql://localhost:1/shop";

  /** What no run here can load, and why it is there all the same. */
  private static final Map<String, String> NOT_LOADED =
      Map.of(
          "jspecify-", "annotations of the program's classes, which only a compiler reads",
          "jheaps-",
              "heaps of the graph library's shortest ways, for leaks that lead through parts",
          "commons-lang3-", "of the zip library, for workbooks whose entries carry an owner");

  /** Modules of the libraries ask for these, which no code of theirs that is run here uses. */
  private static final List<String> ASKED_FOR_BY_MODULES = List.of("commons-codec-", "apfloat-");

  @TempDir Path folder;

  private static Path sample(String name) {
    return SAMPLES.resolve(name);
  }

  /** A ring of wires, so that ohms go two ways, and a leak, so that leaks are looked for. */
  private Path ringWithLeak() throws IOException {
    Path unit = Files.createDirectories(folder.resolve("ring"));
    Files.writeString(
        unit.resolve("wires.csv"),
        """
        Wire,From,To,Gauge,Length (m)
        W1,J1-1,J2-1,AWG 20,1
        W2,J2-1,J3-1,AWG 20,1
        W3,J3-1,J1-1,AWG 20,1
        W4,J1-2,J2-2,AWG 20,1
        """);
    Files.writeString(
        unit.resolve("continuity.csv"),
        """
        From,To,Reading,Unit
        J1-1,J2-1,0.03,ohm
        """);
    Files.writeString(
        unit.resolve("insulation.csv"),
        """
        From,To,Volts,Reading,Unit
        J1-1,J1-2,500,3,MOhm
        """);
    return unit;
  }

  private List<List<Object>> everyKindOfRun() throws IOException {
    Path ring = ringWithLeak();
    return List.of(
        List.of(1, "check", BOX, READINGS),
        List.of(1, "check", sample("junction-box"), sample("point-to-point"), "--json"),
        List.of(1, "check", ring, ring, "--serial", "7"),
        List.of(0, "plan", BOX, "-o", "plan.xlsx"),
        List.of(0, "plan", BOX, "-o", "plan.pdf"),
        List.of(0, "plan", BOX, "-o", "plan.html"),
        List.of(0, "work", BOX, "-o", "work.pdf", "--code", "QR"),
        List.of(0, "work", BOX, "-o", "work.xlsx", "--code", "CODE128"),
        List.of(1, "report", BOX, READINGS, "-o", "record.html"),
        List.of(1, "report", BOX, READINGS, "-o", "record.xlsx"),
        List.of(0, "report", "--new-key", "key"),
        List.of(1, "report", BOX, READINGS, "-o", "record.pdf", "--seal", "key"),
        List.of(0, "report", "--verify", "record.pdf", "--key", "key.pub", "--inputs", sample("")),
        List.of(0, "import", sample("as-received/connector-sheets.xlsx"), "-o", "a.xlsx"),
        List.of(0, "import", sample("as-received/cable-schedule.ods"), "-o", "b.xlsx"),
        List.of(0, "import", sample("as-received/net-table.csv"), "-o", "c/"),
        List.of(65, "import", FORMATS.resolve("three-sheets.xls"), "--json"),
        List.of(0, "asfound", READINGS, "-o", "d.xlsx"),
        List.of(0, "found", BOX, "W043 on J2-18"),
        List.of(0, "trace", BOX, "J1-A", "J2-13", "--json"),
        List.of(1, "review", sample("paper-errors.xlsx")),
        List.of(1, "diff", BOX, sample("junction-box-c.xlsx"), "-o", "diff.pdf"),
        List.of(1, "lot", BOX, READINGS),
        List.of(0, "store", "add", BOX, READINGS, "--store", "bench.db"),
        firstOfTheShop(),
        List.of(66, "units", "--store", NO_SERVER),
        List.of(0, "meters", "--store", "bench.db"));
  }

  private List<Object> firstOfTheShop() throws IOException {
    return List.of(
        0,
        "people",
        "add",
        "R. Adeyemi",
        "--role",
        "administrator",
        "--passphrase",
        Files.writeString(folder.resolve("passphrase.txt"), "four lamps on a bridge\n"),
        "--who",
        "R. Adeyemi",
        "--store",
        "bench.db");
  }

  @Test
  void every_library_is_loaded_by_one_of_the_commands() throws Exception {
    List<String> program =
        List.of(
            "-Xlog:class+load:file=loaded-%p.txt",
            "-cp", LIB + "/ringout.jar" + File.pathSeparator + runs(), ManyRuns.class.getName());
    end(everyKindOfRun(), program);
    packedByAnotherProgram("record.xlsx");
    end(List.of(List.of(2, "report", "--verify", "record.xlsx", "--inputs", sample(""))), program);
    Set<String> idle = jars();
    idle.removeIf(jar -> NOT_LOADED.keySet().stream().anyMatch(jar::startsWith));
    idle.removeAll(loaded());
    assertEquals(Set.of(), idle, "never loaded");
  }

  /** Where the class stands that runs one after the other, by itself. */
  private Path runs() throws IOException {
    String name = ManyRuns.class.getName().replace('.', '/') + ".class";
    Path to = folder.resolve("runs").resolve(name);
    Files.createDirectories(to.getParent());
    Files.copy(
        Path.of("target/test-classes").resolve(name), to, StandardCopyOption.REPLACE_EXISTING);
    return folder.resolve("runs");
  }

  private void end(List<List<Object>> runs, List<String> program) throws Exception {
    Path list = folder.resolve("runs.txt");
    Files.write(
        list,
        runs.stream()
            .map(run -> run.stream().map(String::valueOf).collect(Collectors.joining("\t")))
            .toList());
    List<Object> words = new ArrayList<>(List.of(JAVA, "-XX:TieredStopAtLevel=1"));
    words.addAll(program);
    words.add(list);
    Ran ran = Ran.in(folder, Map.of(), words);
    assertEquals(0, ran.code(), ran.err());
  }

  private static Set<String> jars() throws IOException {
    Set<String> jars = new TreeSet<>();
    try (Stream<Path> files = Files.list(LIB)) {
      files.map(file -> String.valueOf(file.getFileName())).forEach(jars::add);
    }
    jars.removeIf(name -> !name.endsWith(".jar"));
    return jars;
  }

  private Set<String> loaded() throws IOException {
    Pattern source = Pattern.compile("source: .*/lib/([^/]+\\.jar)");
    Set<String> jars = new TreeSet<>();
    try (Stream<Path> files = Files.list(folder)) {
      for (Path file : files.filter(file -> file.toString().contains("loaded-")).toList()) {
        Matcher found = source.matcher(Files.readString(file));
        while (found.find()) {
          jars.add(found.group(1));
        }
      }
    }
    return jars;
  }

  /** As a program that keeps the owner of a file packs a workbook, with a seal that fits it. */
  private void packedByAnotherProgram(String name) throws IOException, NoSuchAlgorithmException {
    Path record = folder.resolve(name);
    Path seal = folder.resolve(name + ".seal");
    String before = digest(record);
    Path packed = folder.resolve("packed.xlsx");
    byte[] owner = {'u', 'x', 11, 0, 1, 4, 0, 0, 0, 0, 4, 0, 0, 0, 0};
    try (ZipFile from = new ZipFile(record.toFile());
        OutputStream out = Files.newOutputStream(packed);
        ZipOutputStream to = new ZipOutputStream(out)) {
      for (ZipEntry entry : Collections.list(from.entries())) {
        ZipEntry copy = new ZipEntry(entry.getName());
        copy.setExtra(owner);
        to.putNextEntry(copy);
        try (InputStream in = from.getInputStream(entry)) {
          in.transferTo(to);
        }
      }
    }
    Files.delete(record);
    Files.move(packed, record);
    Files.writeString(seal, Files.readString(seal).replace(before, digest(record)));
  }

  private static String digest(Path file) throws IOException, NoSuchAlgorithmException {
    MessageDigest sha = MessageDigest.getInstance("SHA-256");
    return HexFormat.of().formatHex(sha.digest(Files.readAllBytes(file)));
  }

  /** Whatever stands on the class path and the module path of the test. */
  private static Set<String> onPaths() {
    Set<String> jars = new TreeSet<>();
    for (String path : List.of("java.class.path", "jdk.module.path", "surefire.test.class.path")) {
      jars.addAll(List.of(System.getProperty(path, "").split(File.pathSeparator, -1)));
    }
    return jars;
  }

  @Test
  void on_the_module_path_the_program_runs_too_once_what_modules_ask_for_is_beside_it()
      throws Exception {
    List<String> path = new ArrayList<>(List.of(LIB.toString()));
    for (String jar : onPaths()) {
      if (ASKED_FOR_BY_MODULES.stream().anyMatch(name -> jar.contains("/" + name))) {
        path.add(jar);
      }
    }
    assertEquals(1 + ASKED_FOR_BY_MODULES.size(), path.size(), path.toString());
    end(
        List.of(
            List.of(1, "report", BOX, READINGS, "-o", "record.pdf"),
            List.of(1, "report", BOX, READINGS, "-o", "record.xlsx"),
            List.of(0, "work", BOX, "-o", "work.html", "--code", "QR"),
            List.of(0, "import", sample("as-received/cable-schedule.ods"), "-o", "a/"),
            List.of(65, "import", FORMATS.resolve("list.xls"), "--json"),
            List.of(1, "lot", BOX, READINGS),
            List.of(0, "store", "add", BOX, READINGS, "--store", "bench.db"),
            List.of(1, "check", "unit:0418", "--store", "bench.db"),
            firstOfTheShop(),
            List.of(66, "units", "--store", NO_SERVER)),
        List.of(
            "-p",
            String.join(File.pathSeparator, path),
            "--patch-module",
            "dev.ringout=" + runs(),
            "--add-modules",
            "ALL-MODULE-PATH",
            "-m",
            "dev.ringout/" + ManyRuns.class.getName()));
  }

  @Test
  void whoever_builds_it_gets_the_same_modes_and_times() throws IOException {
    Set<PosixFilePermission> read = PosixFilePermissions.fromString("rw-r--r--");
    Set<PosixFilePermission> run = PosixFilePermissions.fromString("rwxr-xr-x");
    URI zip = URI.create("jar:" + zip().toUri());
    try (FileSystem inside =
            FileSystems.newFileSystem(zip, Map.of("enablePosixFileAttributes", true));
        Stream<Path> entries = Files.walk(inside.getPath("/"))) {
      for (Path entry : entries.filter(path -> path.getNameCount() > 0).toList()) {
        boolean isRun = Files.isDirectory(entry) || entry.endsWith("ringout");
        assertEquals(isRun ? run : read, Files.getPosixFilePermissions(entry), entry.toString());
      }
    }
    try (ZipFile file = new ZipFile(zip().toFile())) {
      for (ZipEntry entry : Collections.list(file.entries())) {
        assertEquals(LocalDateTime.of(2026, 11, 25, 0, 0), entry.getTimeLocal(), entry.getName());
      }
    }
  }

  @Test
  void no_mode_in_the_zip_is_left_to_the_machine_that_builds_it() throws IOException {
    String descriptor = Files.readString(Path.of("src/main/launcher/zip.xml"));
    for (String element : List.of("file", "fileSet")) {
      List<String> parts =
          Arrays.stream(descriptor.split("<" + element + ">", -1)).skip(1).toList();
      assertTrue(!parts.isEmpty(), element);
      for (String part : parts) {
        String one = part.substring(0, part.indexOf("</" + element + ">"));
        assertTrue(one.contains("<fileMode>"), one);
        assertTrue(element.equals("file") || one.contains("<directoryMode>"), one);
      }
    }
  }

  private static Path zip() throws IOException {
    try (Stream<Path> files = Files.list(Path.of("target"))) {
      return files.filter(file -> file.toString().endsWith(".zip")).findFirst().orElseThrow();
    }
  }
}
