package dev.ringout.benchmarks;

import com.fasterxml.jackson.jr.ob.JSON;
import dev.ringout.Ringout;
import dev.ringout.bench.BenchSetup;
import dev.ringout.jobs.LedTests.ListAtHand;
import dev.ringout.jobs.StoreAtHand;
import dev.ringout.meter.link.SystemTicks;
import dev.ringout.page.BenchPage;
import dev.ringout.store.Entry;
import dev.ringout.store.EntryKind;
import dev.ringout.store.Session;
import dev.ringout.store.Store;
import dev.ringout.store.StoreAddress;
import dev.ringout.store.StoredUnit;
import dev.ringout.store.Stores;
import dev.ringout.support.CutLine;
import dev.ringout.support.PostgresServer;
import dev.ringout.units.Text;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/**
 * A shop at work: stations that each serve their page, hands that type values over HTTP, one
 * PostgreSQL. It is killed and started again, so are the stations, and the network between them is
 * cut. Afterwards the store is held against what was acknowledged.
 *
 * <p>{@code ShopLoad SECONDS STATIONS PROCESSES ACCIDENTS SEED}; with {@code calm} for accidents
 * nothing is killed.
 */
public final class ShopLoad {
  private static final long BETWEEN_READINGS_MILLIS = 3_000;
  private static final long BETWEEN_KILLS_MILLIS = 10_000;
  private static final long MOST_CUT_MILLIS = 5_000;

  /** What a kill costs: a JVM's start, and a sign-in at each of its stations. */
  private static final long UNREST_MILLIS = 15_000;

  private static final int WIRES = 40;

  /** Java makes the machine's own code of what is used often in its first minute. */
  private static final long WARM_SECONDS = 60;

  /** One for all hands: each of them would take threads of its own from who is measured. */
  private static final HttpClient BROWSER =
      HttpClient.newBuilder()
          .followRedirects(HttpClient.Redirect.NEVER)
          .version(HttpClient.Version.HTTP_1_1)
          .build();

  private static final PostgresServer SERVER = PostgresServer.running();

  private final int seconds;
  private final int stations;
  private final boolean accidents;
  private final Random random;
  private final Path folder;
  private final String address;
  private final List<StationProcess> processes = new ArrayList<>();
  private final List<Took> took = Collections.synchronizedList(new ArrayList<>());
  private final Map<String, AtomicInteger> acknowledged = new ConcurrentHashMap<>();
  private final Map<String, AtomicInteger> refused = new ConcurrentHashMap<>();
  private volatile long unrestUntil;
  private long handsBegan;
  private volatile boolean over;

  /**
   * A value that was kept.
   *
   * @param began seconds since the hands began
   */
  private record Took(long nanos, boolean calm, long began) {}

  private ShopLoad(String[] args) throws Exception {
    seconds = Integer.parseInt(args[0]);
    stations = Integer.parseInt(args[1]);
    accidents = !args[3].equals("calm");
    random = new Random(Long.parseLong(args[4]));
    folder = Files.createTempDirectory("ringout-load");
    SERVER.sql("postgres", "alter system set max_connections = " + (2 * stations + 20));
    SERVER.kill();
    SERVER.startAgain();
    address = SERVER.address(SERVER.database());
    Stores.migrate(
        StoreAddress.of(address), Map.of("PGPASSWORD", SERVER.password()), Optional.empty());
    Path list = cable(folder.resolve("cable"));
    int many = Integer.parseInt(args[2]);
    for (int i = 0; i < many; i++) {
      int first = stations * i / many;
      processes.add(new StationProcess(list, first, stations * (i + 1) / many - first));
    }
  }

  /** The driver, or with {@code station} one of its processes. */
  public static void main(String[] args) throws Exception {
    if (args[0].equals("station")) {
      serve(args[1], Path.of(args[2]), Integer.parseInt(args[3]), Integer.parseInt(args[4]));
      return;
    }
    ShopLoad load = new ShopLoad(args);
    int code = load.run();
    System.out.flush();
    Runtime.getRuntime().exit(code);
  }

  private static Path cable(Path list) throws IOException {
    Files.createDirectories(list);
    StringBuilder wires = new StringBuilder("Wire,From,To,Gauge,Length (m)\n");
    for (int i = 1; i <= WIRES; i++) {
      wires.append(Text.of("W%1$d,J1-%1$d,P1-%1$d,20,2%n", i));
    }
    Files.writeString(list.resolve("wires.csv"), wires.toString());
    Files.writeString(list.resolve("header.csv"), "Name,Value\ntitle,Cable\nrevision,A\n");
    Files.writeString(list.resolve("limits.csv"), "Name,Value,Unit\ninsulation test,none,\n");
    return list;
  }

  /** Stations in a process of their own; each says its name and its address, until it is killed. */
  private static void serve(String address, Path list, int first, int count) throws Exception {
    List<BenchPage> pages = new ArrayList<>();
    for (int i = first; i < first + count; i++) {
      StoreAtHand store =
          new StoreAtHand(address, Map.of("PGPASSWORD", System.getenv("PGPASSWORD")));
      Ringout door = Ringout.onFilesAnd(store);
      ListAtHand known =
          door.ledTests()
              .list(list)
              .match(
                  given -> given.value(),
                  refused -> {
                    throw new IllegalStateException(refused.problems().toString());
                  });
      BenchSetup setup =
          new BenchSetup(
              store,
              "bench " + i,
              "none",
              Optional.empty(),
              "none",
              Optional.empty(),
              list.resolveSibling("bench" + i),
              false,
              0,
              1,
              new SystemTicks(),
              ZoneId.systemDefault());
      BenchPage page =
          BenchPage.open(door, setup, List.of(known), 0, defect -> defect.printStackTrace());
      pages.add(page);
      System.out.println(i + " " + page.ticket());
      System.out.flush();
    }
    while (System.in.read() >= 0) {
      // Until the driver ends.
    }
    Runtime.getRuntime().halt(pages.isEmpty() ? 1 : 0);
  }

  /** A process with stations, and the line between it and the server. */
  private final class StationProcess {
    private final CutLine line = CutLine.to(address);
    private final Path list;
    private final int first;
    private final int count;
    private final Map<Integer, URI> tickets = new ConcurrentHashMap<>();
    private Process process;

    StationProcess(Path list, int first, int count) throws IOException {
      this.list = list;
      this.first = first;
      this.count = count;
      this.process = start();
    }

    private Process start() throws IOException {
      tickets.clear();
      ProcessBuilder builder =
          new ProcessBuilder(
              Path.of(System.getProperty("java.home"), "bin", "java").toString(),
              "-Xmx300m",
              "-XX:+UseSerialGC",
              // As the program's own launcher has it.
              "-XX:TieredStopAtLevel=1",
              "-cp",
              System.getProperty("java.class.path"),
              ShopLoad.class.getName(),
              "station",
              line.address(address),
              list.toString(),
              Integer.toString(first),
              Integer.toString(count));
      builder.environment().put("PGPASSWORD", SERVER.password());
      builder.redirectError(ProcessBuilder.Redirect.INHERIT);
      Process started = builder.start();
      Thread reader = new Thread(() -> read(started), "tickets");
      reader.setDaemon(true);
      reader.start();
      return started;
    }

    private void read(Process of) {
      try (BufferedReader said =
          new BufferedReader(new InputStreamReader(of.getInputStream(), StandardCharsets.UTF_8))) {
        for (String text = said.readLine(); text != null; text = said.readLine()) {
          String[] words = text.split(" ", 2);
          tickets.put(Integer.parseInt(words[0]), URI.create(words[1]));
        }
      } catch (IOException e) {
        // It was killed.
      }
    }

    synchronized void killAndStart() throws IOException, InterruptedException {
      process.destroyForcibly().waitFor();
      process = start();
    }

    synchronized void end() {
      process.destroyForcibly();
    }

    boolean isComplete() {
      return tickets.size() == count;
    }
  }

  /** Whoever types at a station. */
  private final class Hands implements Runnable {
    private final int station;
    private final StationProcess process;
    private String cookie = "";
    private URI entered = URI.create("");
    private String list = "";
    private int unit = 1;

    Hands(int station, StationProcess process) {
      this.station = station;
      this.process = process;
    }

    @Override
    public void run() {
      long next = System.nanoTime() + (long) (Math.random() * BETWEEN_READINGS_MILLIS * 1_000_000);
      while (!over) {
        try {
          long wait = (next - System.nanoTime()) / 1_000_000;
          Thread.sleep(Math.max(0, wait));
          next =
              Math.max(next, System.nanoTime() - 1_000_000_000)
                  + BETWEEN_READINGS_MILLIS * 1_000_000;
          once();
        } catch (InterruptedException e) {
          return;
        } catch (IOException e) {
          count("no answer from the station's process");
          pause();
        }
      }
    }

    private void pause() {
      try {
        Thread.sleep(500);
      } catch (InterruptedException e) {
        Thread.currentThread().interrupt();
      }
    }

    private String serial() {
      return station + "-" + unit;
    }

    private void once() throws IOException, InterruptedException {
      enter();
      if (!knowsList()) {
        return;
      }
      Map<String, Object> session = of(ask("/api/state"), "session");
      if (session.isEmpty()) {
        session = of(post("start", start()), "session");
      }
      Map<String, Object> step = of(session, "step");
      if (session.isEmpty()) {
        return;
      }
      if (step.isEmpty()) {
        if (!post("finish", Map.of()).isEmpty()) {
          unit++;
        }
        return;
      }
      type(step);
    }

    private void type(Map<String, Object> step) throws IOException, InterruptedException {
      String what =
          serial() + " " + of(step, "from").get("text") + " " + of(step, "to").get("text");
      String value = "joined".equals(step.get("asks")) ? "0.07" : "OL";
      boolean calm = System.nanoTime() > unrestUntil;
      long began = System.nanoTime();
      Map<String, Object> answer =
          post("take", Map.of("step", step.get("id"), "typed", value, "volts", ""));
      long nanos = System.nanoTime() - began;
      if (!answer.isEmpty()) {
        took.add(
            new Took(
                nanos,
                calm && System.nanoTime() > unrestUntil,
                TimeUnit.NANOSECONDS.toSeconds(began - handsBegan)));
        acknowledged.computeIfAbsent(what, one -> new AtomicInteger()).incrementAndGet();
      }
    }

    private Map<String, Object> start() {
      return Map.of(
          "list",
          list,
          "serial",
          serial(),
          "tester",
          "Maren Lindqvist",
          "conditions",
          List.of(),
          "opened",
          List.of(),
          "touched",
          List.of());
    }

    private void enter() throws IOException, InterruptedException {
      URI ticket = process.tickets.get(station);
      if (ticket == null) {
        throw new IOException("not there yet");
      }
      if (ticket.equals(entered)) {
        return;
      }
      HttpResponse<String> let =
          BROWSER.send(
              HttpRequest.newBuilder(ticket).build(), HttpResponse.BodyHandlers.ofString());
      cookie = let.headers().firstValue("Set-Cookie").orElse("").replaceFirst(";.*", "");
      entered = ticket;
      list = "";
    }

    /** Asked for until it is there: the store may have been away when the browser came in. */
    private boolean knowsList() throws IOException, InterruptedException {
      Object lists = list.isEmpty() ? ask("/api/units").get("lists") : List.of();
      if (lists instanceof List<?> all && !all.isEmpty() && all.get(0) instanceof Map<?, ?> one) {
        list = String.valueOf(one.get("id"));
      }
      return !list.isEmpty();
    }

    private Map<String, Object> ask(String path) throws IOException, InterruptedException {
      return answer(HttpRequest.newBuilder(entered.resolve(path)));
    }

    private Map<String, Object> post(String what, Map<String, Object> body)
        throws IOException, InterruptedException {
      String origin = entered.getScheme() + "://" + entered.getAuthority();
      return answer(
          HttpRequest.newBuilder(entered.resolve("/api/session/" + what))
              .header("Content-Type", "application/json")
              .header("Origin", origin)
              .POST(HttpRequest.BodyPublishers.ofString(JSON.std.asString(body))));
    }

    private Map<String, Object> answer(HttpRequest.Builder request)
        throws IOException, InterruptedException {
      HttpResponse<String> answer =
          BROWSER.send(
              request.header("Cookie", cookie).timeout(Duration.ofSeconds(60)).build(),
              HttpResponse.BodyHandlers.ofString());
      if (answer.statusCode() == 200) {
        return JSON.std.mapFrom(answer.body());
      }
      boolean calm = System.nanoTime() > unrestUntil;
      count((calm ? "CALM " : "") + answer.statusCode() + " " + first(answer.body()));
      return Map.of();
    }

    @SuppressWarnings("unchecked")
    private static Map<String, Object> of(Map<String, Object> json, String name) {
      return json.get(name) instanceof Map<?, ?> map ? (Map<String, Object>) map : Map.of();
    }
  }

  private static String first(String body) {
    String text = body.replaceAll(".*\"text\":\"", "").replaceAll("\".*", "");
    return text.substring(0, Math.min(90, text.length()));
  }

  private void count(String what) {
    refused.computeIfAbsent(what, one -> new AtomicInteger()).incrementAndGet();
  }

  private int run() throws Exception {
    for (StationProcess one : processes) {
      while (!one.isComplete()) {
        Thread.sleep(100);
      }
    }
    System.out.println("all stations are there");
    handsBegan = System.nanoTime();
    List<Thread> hands = new ArrayList<>();
    for (StationProcess one : processes) {
      for (int i = one.first; i < one.first + one.count; i++) {
        Thread thread = new Thread(new Hands(i, one), "hands " + i);
        thread.setDaemon(true);
        thread.start();
        hands.add(thread);
      }
    }
    // Each station begins its first unit: that is another work than a reading.
    unrest(UNREST_MILLIS);
    Thread.sleep(UNREST_MILLIS);
    if (accidents) {
      accidents();
    } else {
      Thread.sleep(TimeUnit.SECONDS.toMillis(seconds));
    }
    for (StationProcess one : processes) {
      one.line.mend();
    }
    Thread.sleep(UNREST_MILLIS);
    over = true;
    for (Thread one : hands) {
      one.join(TimeUnit.SECONDS.toMillis(70));
    }
    printProcessorTime();
    processes.forEach(StationProcess::end);
    return report();
  }

  private void unrest(long millis) {
    unrestUntil = Math.max(unrestUntil, System.nanoTime() + millis * 1_000_000);
  }

  private void accidents() throws Exception {
    long began = System.nanoTime();
    long end = began + TimeUnit.SECONDS.toNanos(seconds);
    int servers = 0;
    int kills = 0;
    int cuts = 0;
    while (System.nanoTime() < end) {
      Thread.sleep(BETWEEN_KILLS_MILLIS / 2);
      StationProcess cut = processes.get(random.nextInt(processes.size()));
      long millis = 500L + random.nextInt((int) MOST_CUT_MILLIS);
      unrest(millis + UNREST_MILLIS / 5);
      cut.line.cut();
      cuts++;
      Thread.sleep(Math.min(millis, BETWEEN_KILLS_MILLIS / 2));
      cut.line.mend();
      Thread.sleep(Math.max(0, BETWEEN_KILLS_MILLIS / 2 - millis));
      unrest(UNREST_MILLIS / 2);
      processes.get(random.nextInt(processes.size())).killAndStart();
      kills++;
      double part = (double) (System.nanoTime() - began) / (end - began);
      if (servers < 2 && part > (servers + 1) / 3.0) {
        unrest(UNREST_MILLIS);
        SERVER.kill();
        Thread.sleep(1_000 + random.nextInt(2_000));
        SERVER.startAgain();
        servers++;
      }
    }
    System.out.println(
        Text.of(
            "%d kills of a station's process, %d cuts of a line, %d kills of the server",
            kills, cuts, servers));
  }

  /** What each side has taken of the processor since it was started last. */
  private void printProcessorTime() {
    Set<Long> ours = processes.stream().map(one -> one.process.pid()).collect(Collectors.toSet());
    System.out.println(
        Text.of(
            "seconds of the processor: benches %d, server %d, hands %d",
            seconds(one -> ours.contains(one.pid())),
            seconds(one -> one.info().command().orElse("").endsWith("/postgres")),
            seconds(one -> one.pid() == ProcessHandle.current().pid())));
  }

  private static long seconds(Predicate<ProcessHandle> which) {
    return ProcessHandle.allProcesses()
            .filter(which)
            .mapToLong(one -> one.info().totalCpuDuration().orElse(Duration.ZERO).toMillis())
            .sum()
        / 1000;
  }

  private int report() throws Exception {
    print("readings kept, all", took);
    print("  in calm", took.stream().filter(Took::calm).toList());
    print(
        "  in calm, from the second minute on",
        took.stream().filter(one -> one.calm() && one.began() >= WARM_SECONDS).toList());
    new TreeMap<>(took.stream().collect(Collectors.groupingBy(one -> one.began() / 30)))
        .forEach((half, all) -> print("  from second " + 30 * half, all));
    new TreeMap<>(refused)
        .forEach((what, times) -> System.out.println("  " + times + " × " + what));
    Map<String, Integer> kept = kept();
    long lost = acknowledged.keySet().stream().filter(one -> !kept.containsKey(one)).count();
    long twice = kept.values().stream().filter(times -> times > 1).count();
    System.out.println(
        Text.of(
            "acknowledged %d, kept %d, lost %d, kept twice %d",
            acknowledged.size(), kept.size(), lost, twice));
    return lost + twice == 0 ? 0 : 1;
  }

  private static void print(String what, List<Took> all) {
    long[] sorted = all.stream().mapToLong(Took::nanos).sorted().toArray();
    if (sorted.length > 0) {
      System.out.println(
          Text.of(
              "%s: %d, median %.0f ms, 95 of 100 %.0f ms, 99 of 100 %.0f ms, most %.0f ms",
              what,
              sorted.length,
              sorted[sorted.length / 2] / 1e6,
              sorted[sorted.length * 95 / 100] / 1e6,
              sorted[sorted.length * 99 / 100] / 1e6,
              sorted[sorted.length - 1] / 1e6));
    }
  }

  /** How often each step of each unit was read. */
  private Map<String, Integer> kept() throws Exception {
    Map<String, Integer> kept = new TreeMap<>();
    try (Store store =
        Stores.open(StoreAddress.of(address), Map.of("PGPASSWORD", SERVER.password()), false)) {
      var state = Stores.check(store);
      System.out.println(
          Text.of(
              "%d units, %d tests, %d entries, %d findings",
              state.units(), state.sessions(), state.entries(), state.findings().size()));
      for (var summary : store.units()) {
        StoredUnit unit = summary.unit();
        for (Session session : store.sessions(unit)) {
          for (Entry entry : store.entries(session)) {
            if (entry.is(EntryKind.READING)) {
              String[] lines = entry.body().split("\n", -1);
              kept.merge(
                  unit.serial() + " " + cell(lines, "B") + " " + cell(lines, "C"), 1, Integer::sum);
            }
          }
        }
      }
    }
    return kept;
  }

  private static String cell(String[] lines, String column) {
    for (String line : lines) {
      if (line.startsWith(column + "\t")) {
        return line.substring(line.lastIndexOf('\t') + 1);
      }
    }
    return "";
  }
}
