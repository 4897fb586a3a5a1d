package dev.ringout.benchmarks.damage;

import dev.ringout.sheet.Cell;
import dev.ringout.sheet.Sheet;
import dev.ringout.sheet.TabularFile;
import dev.ringout.source.Problems;
import dev.ringout.support.Folders;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.TimeUnit;

/**
 * Damages files as several programs write them, the file of a store, what a meter says and what is
 * sent to the bench's page, seeded, and runs every command on them. What must hold: an exit code of
 * the contract's list, no defect, no run of more than ten seconds, the same said of the same sheets
 * in every format, nothing verified that was not sealed, and no row of a store taken for what was
 * written that is another. What breaks is kept.
 */
public final class DamageBench {
  private final Chance chance;
  private final Path seeds;
  private final Runs runs;
  private final FileDamage damage;

  private DamageBench(long seed, Path seeds, Path finds) {
    this.chance = new Chance(seed);
    this.seeds = seeds;
    this.runs = new Runs(finds);
    this.damage = new FileDamage(chance);
  }

  /** Arguments: the folder of {@code writers.py}, one for what breaks, seconds, a seed. */
  public static void main(String[] args) throws Exception {
    PrintStream console = System.out;
    try {
      run(args, console);
    } catch (Exception | Error e) {
      // Standard error is listened to, for what the program lets past its own output.
      e.printStackTrace(console);
      System.exit(1);
    }
  }

  private static void run(String[] args, PrintStream console) throws Exception {
    ByteArrayOutputStream stray = new ByteArrayOutputStream();
    System.setErr(new PrintStream(stray, true, StandardCharsets.UTF_8));
    Path finds = Files.createDirectories(Path.of(args[1]));
    DamageBench bench = new DamageBench(Long.parseLong(args[3]), Path.of(args[0]), finds);
    Path home = Files.createTempDirectory("damage");
    Seals seals = new Seals(bench.chance, home.resolve("sealed"));
    seals.prepare(bench.runs, bench.seeds);
    Stores stores = new Stores(bench.chance, home.resolve("stored"));
    stores.prepare(bench.runs, bench.seeds);
    MeterLines lines = new MeterLines(bench.chance);
    PageRequests page = new PageRequests(bench.chance, bench.damage, bench.seeds, home);
    Formats formats = new Formats(bench.chance);
    var harness = bench.sheets("csv-harness");
    var readings = bench.sheets("csv-readings");
    long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(Long.parseLong(args[2]));
    while (System.nanoTime() < end) {
      Path work = Files.createTempDirectory(home, "round");
      switch (bench.chance.below(12)) {
        case 0 -> formats.round(bench.runs, harness, readings, work);
        case 1, 2 -> seals.round(bench.runs, work);
        case 3, 4 -> stores.round(bench.runs, work);
        case 5 -> page.round(bench.runs, work);
        case 6 -> {
          lines.round(bench.runs, work);
          lines.overNetwork(bench.runs, work);
        }
        default -> bench.files(work);
      }
      if (stray.size() > 0) {
        bench.runs.keep(work, "past the output: " + stray.toString(StandardCharsets.UTF_8), "any");
        stray.reset();
      }
      Folders.delete(work);
    }
    Folders.delete(home);
    System.exit(bench.runs.told(console) ? 0 : 1);
  }

  private Map<String, List<List<String>>> sheets(String folder) throws Exception {
    Map<String, List<List<String>>> sheets = new LinkedHashMap<>();
    try (TabularFile file = TabularFile.open(seeds.resolve(folder), folder, new Problems())) {
      for (Sheet sheet : file.sheets()) {
        List<List<String>> rows = new ArrayList<>();
        sheet.forEachRow(row -> rows.add(row.cells().stream().map(Cell::text).toList()));
        sheets.put(sheet.name().toLowerCase(Locale.ROOT), rows);
      }
    }
    return sheets;
  }

  private void files(Path work) throws IOException, InterruptedException {
    String[] writer =
        chance
            .of(
                List.of(
                    "openpyxl .xlsx",
                    "office .xlsx",
                    "xlwt .xls",
                    "office .xls",
                    "odfpy .ods",
                    "office .ods",
                    "csv "))
            .split(" ", -1);
    Path harness = taken(writer[0] + "-harness" + writer[1], work);
    Path readings = taken(writer[0] + "-readings" + writer[1], work);
    boolean list = chance.oneIn(2);
    damage.damage(list ? harness : readings);
    String h = harness.toString();
    String r = readings.toString();
    String b = seeds.resolve("csv-harness").toString();
    String out = work.resolve("out" + chance.of(List.of(".xlsx", ".html", ".pdf", ""))).toString();
    String page = work.resolve("page" + chance.of(List.of(".xlsx", ".html", ".pdf"))).toString();
    List<String[]> ofList =
        List.of(
            new String[] {"check", h, r},
            new String[] {"import", h},
            new String[] {"import", h, "-o", work.resolve("imported").toString()},
            new String[] {"review", h},
            new String[] {"trace", h, "J1-1"},
            new String[] {"plan", h, "-o", out},
            new String[] {"work", h, "-o", out},
            new String[] {"found", h, "W12 on J1-1"},
            new String[] {"diff", b, h},
            new String[] {"diff", h, b, "--json"},
            new String[] {"report", h, r, "-o", page});
    List<String[]> ofReadings =
        List.of(
            new String[] {"check", h, r},
            new String[] {"check", h, r, "--json"},
            new String[] {"asfound", r},
            new String[] {"import", r},
            new String[] {"report", h, r, "-o", page});
    runs.run(work, chance.of(list ? ofList : ofReadings));
  }

  private Path taken(String name, Path work) throws IOException {
    Path to = work.resolve(name);
    Folders.copy(seeds.resolve(name), to);
    return to;
  }
}
