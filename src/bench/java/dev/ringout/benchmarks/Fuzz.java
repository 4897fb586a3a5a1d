package dev.ringout.benchmarks;

import dev.ringout.cli.Main;
import dev.ringout.support.Folders;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;

/**
 * Damages real inputs at random, seeded, and runs every command on them. What must hold: an exit
 * code of the contract's list, no defect, no hang beyond ten seconds. What breaks is kept.
 */
public final class Fuzz {
  private static final Set<Integer> CODES = Set.of(0, 1, 2, 64, 65, 66, 73);
  private static final String[] WORDS = {
    "",
    " ",
    "J1-A",
    "OL",
    ">200 M",
    "1e308",
    "-1",
    "0",
    "NaN",
    "4/0",
    "0.75 mm²",
    "=1+1",
    "A\u0001B",
    "\ufeff",
    "\u202e",
    "2-Jan",
    "REST",
    "S1=CLEAR",
    "1,5",
    "x".repeat(40_000),
    "\"",
    ";",
    "\t",
    "\n",
    "9999999999999999999",
    "µΩ",
    "12 ft 3 in",
    "#REF!",
    "J1-1..J1-99999999",
    "TB1-1+TB1-2"
  };

  private final Random random;
  private final Path folder;
  private final Map<String, Integer> finds = new TreeMap<>();
  private final Map<Integer, Integer> codes = new TreeMap<>();
  private int runs;

  private Fuzz(long seed, Path folder) {
    this.random = new Random(seed);
    this.folder = folder;
  }

  /** Arguments: a folder for what breaks, seconds, a seed. */
  public static void main(String[] args) throws Exception {
    PrintStream console = System.out;
    ByteArrayOutputStream stray = new ByteArrayOutputStream();
    System.setErr(new PrintStream(stray, true, StandardCharsets.UTF_8));
    Fuzz fuzz = new Fuzz(Long.parseLong(args[2]), Files.createDirectories(Path.of(args[0])));
    long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(Long.parseLong(args[1]));
    ExecutorService one = Executors.newCachedThreadPool(Fuzz::daemon);
    while (System.nanoTime() < end) {
      fuzz.round(one);
      if (stray.size() > 0) {
        String text = stray.toString(StandardCharsets.UTF_8);
        fuzz.finds.merge(
            "past the output: " + text.substring(0, Math.min(200, text.length())), 1, Integer::sum);
        stray.reset();
      }
    }
    console.println(fuzz.runs + " runs, exit codes " + fuzz.codes);
    fuzz.finds.forEach((find, count) -> console.println(count + " × " + find));
    System.exit(fuzz.finds.isEmpty() ? 0 : 1);
  }

  private static Thread daemon(Runnable work) {
    Thread thread = new Thread(work);
    thread.setDaemon(true);
    return thread;
  }

  private void round(ExecutorService one) throws Exception {
    Path sample = Path.of("harness-samples/swing-bridge");
    Path work = Files.createTempDirectory("fuzz");
    try {
      String form = pick(new String[] {"folder", "folder", "xlsx", "ods"});
      Path harness = damaged(sample, "junction-box", form, work);
      Path readings = damaged(sample, "point-to-point", form.equals("ods") ? "folder" : form, work);
      String out =
          work.resolve("out" + pick(new String[] {".xlsx", ".html", ".pdf", ""})).toString();
      String page = work.resolve("page" + pick(new String[] {".xlsx", ".html", ".pdf"})).toString();
      String h = harness.toString();
      String r = readings.toString();
      String b = sample.resolve("junction-box").toString();
      String[][] commands = {
        {"check", h, r},
        {"check", b, r, "--json"},
        {"import", h},
        {"import", h, "-o", work.resolve("imported").toString()},
        {"review", h},
        {"trace", h, "J1-A"},
        {"plan", h, "-o", out},
        {"work", h, "-o", out},
        {"found", h, "W12 on J1-A"},
        {"diff", b, h},
        {"diff", h, b, "--json"},
        {"asfound", r},
        {"lot", h, r, "-o", page},
        {"report", h, r, "-o", page},
        {"report", b, r, "-o", page}
      };
      String[] command = pick(commands);
      run(one, command, work);
    } finally {
      Folders.delete(work);
    }
  }

  private void run(ExecutorService one, String[] command, Path work) throws Exception {
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    Callable<Integer> call =
        () ->
            Main.run(
                new PrintStream(new ByteArrayOutputStream(), true, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8),
                false,
                command);
    runs++;
    try {
      int code = one.submit(call).get(10, TimeUnit.SECONDS);
      codes.merge(code, 1, Integer::sum);
      if (!CODES.contains(code)) {
        keep(command, work, "code " + code + ": " + err.toString(StandardCharsets.UTF_8));
      }
    } catch (TimeoutException e) {
      keep(command, work, "more than 10 s");
    } catch (ExecutionException e) {
      keep(command, work, "thrown: " + e.getCause());
    }
  }

  private void keep(String[] command, Path work, String what) throws IOException {
    String find = command[0] + ": " + what.replaceAll("\\s+", " ").replace(work.toString(), "");
    find = find.substring(0, Math.min(300, find.length()));
    if (finds.merge(find, 1, Integer::sum) == 1) {
      Path kept = folder.resolve("find-" + runs);
      Folders.copy(work, kept);
      Files.writeString(kept.resolve("command.txt"), String.join(" ", command) + "\n" + what);
    }
  }

  private <T> T pick(T[] some) {
    return some[random.nextInt(some.length)];
  }

  private Path damaged(Path sample, String name, String form, Path work) throws IOException {
    if (form.equals("folder")) {
      Path to = work.resolve(name);
      Folders.copy(sample.resolve(name), to);
      List<Path> files = files(to);
      for (int i = 1 + random.nextInt(3); i > 0; i--) {
        Path file = files.get(random.nextInt(files.size()));
        if (random.nextInt(3) == 0) {
          Files.write(file, bytes(Files.readAllBytes(file)));
        } else {
          Files.writeString(
              file, cells(new String(Files.readAllBytes(file), StandardCharsets.UTF_8)));
        }
      }
      return to;
    }
    Path from =
        form.equals("ods")
            ? sample.resolve("as-received/cable-schedule.ods")
            : sample.resolve(name + ".xlsx");
    Path to = work.resolve(name + "." + form);
    if (random.nextInt(6) == 0) {
      Files.write(to, bytes(Files.readAllBytes(from)));
    } else {
      zipped(from, to);
    }
    return to;
  }

  /** Some cells are others: words from a list, doubled rows, rows and columns away. */
  private String cells(String text) {
    List<String> rows = new ArrayList<>(List.of(text.split("\n", -1)));
    for (int i = 1 + random.nextInt(6); i > 0 && !rows.isEmpty(); i--) {
      int row = random.nextInt(rows.size());
      switch (random.nextInt(5)) {
        case 0 -> rows.remove(row);
        case 1 -> rows.add(row, rows.get(random.nextInt(rows.size())));
        case 2 -> Collections.swap(rows, row, random.nextInt(rows.size()));
        default -> {
          String[] cells = rows.get(row).split(",", -1);
          cells[random.nextInt(cells.length)] = pick(WORDS);
          rows.set(row, String.join(",", cells));
        }
      }
    }
    return String.join("\n", rows);
  }

  private byte[] bytes(byte[] whole) {
    byte[] bytes = whole.clone();
    for (int i = 1 + random.nextInt(20); i > 0 && bytes.length > 0; i--) {
      bytes[random.nextInt(bytes.length)] = (byte) random.nextInt(256);
    }
    return random.nextInt(5) == 0 ? Arrays.copyOf(bytes, random.nextInt(bytes.length + 1)) : bytes;
  }

  /** One part of a workbook damaged, the others as they were: the zip stays whole. */
  private void zipped(Path from, Path to) throws IOException {
    Map<String, byte[]> parts = new LinkedHashMap<>();
    try (ZipFile zip = new ZipFile(from.toFile())) {
      for (ZipEntry entry : Collections.list(zip.entries())) {
        try (var in = zip.getInputStream(entry)) {
          parts.put(entry.getName(), in.readAllBytes());
        }
      }
    }
    List<String> names = List.copyOf(parts.keySet());
    String victim = names.get(random.nextInt(names.size()));
    byte[] part = parts.getOrDefault(victim, new byte[0]);
    parts.put(victim, random.nextBoolean() ? bytes(part) : tags(part));
    try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(to))) {
      for (Map.Entry<String, byte[]> one : parts.entrySet()) {
        if (random.nextInt(60) > 0) {
          zip.putNextEntry(new ZipEntry(one.getKey()));
          zip.write(one.getValue());
          zip.closeEntry();
        }
      }
    }
  }

  /** Numbers and attributes of a sheet's XML are others. */
  private byte[] tags(byte[] part) {
    String text = new String(part, StandardCharsets.UTF_8);
    String[] pieces = text.split("\"", -1);
    for (int i = 1 + random.nextInt(5); i > 0; i--) {
      pieces[random.nextInt(pieces.length)] =
          pick(new String[] {"", "-1", "99999999", "A1048577", "s", "ZZZZ1", "&lt;", "e", "str"});
    }
    return String.join("\"", pieces).getBytes(StandardCharsets.UTF_8);
  }

  private static List<Path> files(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.filter(Files::isRegularFile).sorted().toList();
    }
  }
}
