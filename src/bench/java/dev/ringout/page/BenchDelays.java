package dev.ringout.page;

import dev.ringout.Ringout;
import dev.ringout.bench.Bench;
import dev.ringout.bench.BenchSetup;
import dev.ringout.bench.BenchState;
import dev.ringout.bench.BenchState.StepState;
import dev.ringout.harness.Harness;
import dev.ringout.harness.Point;
import dev.ringout.harness.SwitchState;
import dev.ringout.jobs.Answer;
import dev.ringout.jobs.LedTests.ListAtHand;
import dev.ringout.jobs.StoreAtHand;
import dev.ringout.meter.link.SystemTicks;
import dev.ringout.meter.practice.PracticeInstrument;
import dev.ringout.meter.practice.PracticeProbes;
import dev.ringout.meter.practice.PracticeUnit;
import dev.ringout.readings.Side;
import dev.ringout.standards.Tables;
import dev.ringout.units.Text;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.openqa.selenium.chrome.ChromeDriver;

/**
 * Times the page at a large unit: a practice meter on a socket, hands on it, the real store, the
 * real page in a browser. Arguments: the list, how many touches, how many typed values, and a
 * folder for the store.
 */
public final class BenchDelays {
  private static final int LIFTED_MILLIS = 340;
  private static final int PATIENCE_MILLIS = 3_000;
  private static final int MOST_TOUCHES = 5;

  /** What a page hears, by the clock of the machine in milliseconds. */
  private static final String LISTEN =
      """
      window.tones = []; window.explained = []; let since = 0;
      addEventListener('ringout:tone', (event) => {
        since = performance.timeOrigin + event.detail.at;
        window.tones.push(since);
      });
      const events = new EventSource('/api/events');
      events.addEventListener('state', (event) => {
        const found = JSON.parse(event.data).session?.found;
        if (since && found && !found.working) {
          window.explained.push(performance.timeOrigin + performance.now() - since);
          since = 0;
        }
      });
      """;

  /** Values typed as fast as they are answered, each for the step that is asked then. */
  private static final String TYPE =
      """
      const done = arguments[arguments.length - 1];
      const post = async (what, body) => (await fetch('/api/session/' + what, { method: 'POST',
        headers: { 'Content-Type': 'application/json' }, body: JSON.stringify(body) })).json();
      (async () => {
        const took = [];
        let state = await (await fetch('/api/state')).json();
        for (let i = 0; i < arguments[0]; i++) {
          let { step, offer } = state.session;
          if (offer) { state = await post('lead', { follow: false }); ({ step } = state.session); }
          if (step?.confirm) { state = await post('confirm', { step: step.id }); ({ step } = state.session); }
          if (!step) break;
          const from = performance.now();
          const next = await post('take', { step: step.id, typed: step.asks === 'joined' ? '0.05' : 'OL' });
          took.push(performance.now() - from);
          if (!next.session) { done([took, JSON.stringify(next)]); return; }
          state = next;
        }
        done([took, '']);
      })().catch((e) => done([[], String(e)]));
      """;

  private final Path list;
  private final Path folder;
  private final PracticeProbes probes = new PracticeProbes(new SystemTicks(), 1);
  private volatile double arrivedMillis;
  private int touchedAgain;

  private BenchDelays(Path list, Path folder) {
    this.list = list;
    this.folder = folder;
  }

  /** Measures, and prints a table. */
  public static void main(String[] args) throws Exception {
    Path folder = Files.createDirectories(Path.of(args[3]));
    BenchDelays delays = new BenchDelays(Path.of(args[0]), folder);
    ChromeDriver browser = InBrowser.start();
    try {
      delays.touches(browser, Integer.parseInt(args[1]));
      delays.typed(browser, Integer.parseInt(args[2]));
    } finally {
      browser.quit();
    }
  }

  private static double nowMillis() {
    return ChronoUnit.MICROS.between(Instant.EPOCH, Instant.now()) / 1000.0;
  }

  /** A practice meter on a socket that writes down when each value went out. */
  private ServerSocket meter() throws IOException {
    probes.lead();
    PracticeInstrument instrument = new PracticeInstrument(probes, (from, to) -> Optional.empty());
    ServerSocket server = new ServerSocket(0, 4, InetAddress.getLoopbackAddress());
    Thread thread =
        new Thread(
            () -> {
              while (!server.isClosed()) {
                try (Socket client = server.accept()) {
                  client.setTcpNoDelay(true);
                  answer(instrument, client);
                } catch (IOException | InterruptedException e) {
                  // It left.
                }
              }
            });
    thread.setDaemon(true);
    thread.start();
    return server;
  }

  private void answer(PracticeInstrument instrument, Socket client)
      throws IOException, InterruptedException {
    BufferedReader in =
        new BufferedReader(
            new InputStreamReader(client.getInputStream(), StandardCharsets.US_ASCII));
    for (String line = in.readLine(); line != null; line = in.readLine()) {
      Optional<String> answer = instrument.execute(line);
      if (answer.isPresent()) {
        if (line.startsWith("READ")) {
          arrivedMillis = nowMillis();
        }
        client.getOutputStream().write((answer.get() + "\n").getBytes(StandardCharsets.US_ASCII));
      }
    }
  }

  private BenchPage page(String meter, String name) throws Exception {
    StoreAtHand store = new StoreAtHand(folder.resolve(name + ".db").toString(), Map.of());
    Ringout door = Ringout.onFilesAnd(store);
    return BenchPage.open(
        door,
        new BenchSetup(
            store,
            "bench",
            meter,
            meter.equals("none") ? Optional.empty() : Optional.of("scpi-fast"),
            "none",
            Optional.empty(),
            folder,
            !meter.equals("none"),
            0,
            1,
            new SystemTicks(),
            ZoneId.systemDefault()),
        List.of(listAtHand(door)),
        0,
        Throwable::printStackTrace);
  }

  private ListAtHand listAtHand(Ringout door) {
    return door.ledTests()
        .list(list)
        .match(
            Answer.Given::value,
            refused -> {
              throw new IllegalStateException(String.valueOf(refused.problems()));
            });
  }

  private void touches(ChromeDriver browser, int touches) throws Exception {
    try (ServerSocket meter = meter();
        BenchPage page = page("127.0.0.1:" + meter.getLocalPort(), "touched")) {
      Harness harness = listAtHand(Ringout.onFiles()).harness();
      PracticeUnit unit = PracticeUnit.of(harness, Tables.published(), 1, 4);
      double from = nowMillis();
      browser.get(page.ticket().toString());
      Mechanic mechanic = new Mechanic(new Tab(browser));
      mechanic.tab.waitFor("#field-serial");
      print("first page in the browser", nowMillis() - from, "");
      double began = nowMillis();
      mechanic.begins("1", "R. Adeyemi");
      print("a unit of " + harness.wires().size() + " wires begun", nowMillis() - began, "");
      mechanic.tab.script(LISTEN);
      nullLeads(mechanic.tab);
      List<Double> tones = new ArrayList<>();
      int heard = ((Number) mechanic.tab.script("return window.tones.length")).intValue();
      for (int i = 0; i < touches; i++) {
        Optional<Double> arrived = touch(page.bench(), unit);
        if (arrived.isEmpty()) {
          break;
        }
        int before = heard + tones.size();
        mechanic.tab.until(
            "a tone",
            () -> ((Number) mechanic.tab.script("return window.tones.length")).intValue() > before);
        Number at = (Number) mechanic.tab.script("return window.tones[" + before + "]");
        tones.add(at.doubleValue() - arrived.get());
      }
      spread("value arrived to tone in the page", tones, 50);
      System.out.println(touchedAgain + " touched again, as the lift before was too short");
      List<Double> explained = numbers(mechanic.tab.script("return window.explained"));
      spread("tone to explanation in the page", explained, 1000);
    }
  }

  private void nullLeads(Tab tab) {
    tab.waitFor("[data-key=leads]");
    // The page takes nothing for what has only just come up.
    Tab.pause(2 * LIFTED_MILLIS);
    tab.press("Measure the leads");
    probes.lift();
    Tab.pause(2 * LIFTED_MILLIS);
    probes.touch(0);
    tab.until("leads measured", () -> !tab.isThere("[data-key=leads]"));
  }

  /** One touch as a hand does it; when its value arrived, or nothing where the test is over. */
  private Optional<Double> touch(Bench bench, PracticeUnit unit) throws Exception {
    BenchState.SessionState session = bench.state().session().orElseThrow();
    if (session.offer().isPresent()) {
      session = bench.lead(false).session().orElseThrow();
    }
    if (session.step().isEmpty()) {
      return Optional.empty();
    }
    StepState step = session.step().get();
    if (step.kind().equals("insulation")) {
      return Optional.empty();
    }
    String last = lastOf(bench);
    double ohms = unit.ohms(side(step.from()), side(step.to()), SwitchState.normal());
    for (int attempt = 0; attempt < MOST_TOUCHES; attempt++) {
      probes.lift();
      Tab.pause(LIFTED_MILLIS);
      probes.touch(ohms);
      if (step.asks() != BenchState.Asks.JOINED) {
        bench.key(step.id());
      }
      double arrived = 0;
      for (double end = nowMillis() + PATIENCE_MILLIS; nowMillis() < end; Tab.pause(1)) {
        double now = arrivedMillis;
        if (!lastOf(bench).equals(last)) {
          return Optional.of(arrived);
        }
        arrived = now;
      }
      touchedAgain++;
    }
    throw new IllegalStateException("nothing was taken of " + step);
  }

  private static String lastOf(Bench bench) {
    return bench.state().session().orElseThrow().last().map(BenchState.TakenState::id).orElse("");
  }

  private static Side side(BenchState.SideState side) {
    return side.rest()
        ? new Side.Rest()
        : new Side.Points(
            side.points().stream().map(point -> new Point(point.item(), point.pin())).toList());
  }

  private void typed(ChromeDriver browser, int values) throws Exception {
    try (BenchPage page = page("none", "typed")) {
      browser.get(page.ticket().toString());
      Mechanic mechanic = new Mechanic(new Tab(browser));
      mechanic.tab.waitFor("#field-serial");
      mechanic.begins("2", "R. Adeyemi");
      browser.manage().timeouts().scriptTimeout(java.time.Duration.ofMinutes(30));
      List<Double> all = new ArrayList<>();
      int lot = Math.max(1, values / 8);
      System.out.println(
          Text.of(
              "%-44s %10s %12s %12s %10s",
              "after typed values", "heap MiB", "page MiB", "DOM nodes", "99 % ms"));
      for (int done = 0; done < values; done += lot) {
        List<?> answer = (List<?>) mechanic.tab.answered(TYPE, lot);
        List<Double> took = numbers(answer.get(0));
        all.addAll(took);
        String stopped = String.valueOf(answer.get(1));
        memory(browser, all.size(), took);
        if (!stopped.isEmpty() || took.size() < lot) {
          System.out.println(stopped.isEmpty() ? "nothing is left to measure" : stopped);
          break;
        }
      }
      spread("typed value sent to answer in the page", all, 50);
    }
  }

  private static void memory(ChromeDriver browser, int values, List<Double> took) {
    browser.executeCdpCommand("HeapProfiler.collectGarbage", Map.of());
    System.gc();
    long heap = Runtime.getRuntime().totalMemory() - Runtime.getRuntime().freeMemory();
    browser.executeCdpCommand("Performance.enable", Map.of());
    Map<?, ?> metrics = browser.executeCdpCommand("Performance.getMetrics", Map.of());
    System.out.println(
        Text.of(
            "%-44d %10.1f %12.1f %12.0f %10.1f",
            values,
            heap / 1048576.0,
            metric(metrics, "JSHeapUsedSize") / 1048576.0,
            metric(metrics, "Nodes"),
            share(took, 0.99)));
  }

  private static double metric(Map<?, ?> metrics, String name) {
    return ((List<?>) Objects.requireNonNull(metrics.get("metrics")))
        .stream()
            .map(one -> (Map<?, ?>) one)
            .filter(one -> name.equals(one.get("name")))
            .map(one -> (Number) Objects.requireNonNull(one.get("value")))
            .mapToDouble(Number::doubleValue)
            .findFirst()
            .orElse(Double.NaN);
  }

  private static List<Double> numbers(Object list) {
    return ((List<?>) list).stream().map(one -> ((Number) one).doubleValue()).toList();
  }

  private static double share(List<Double> values, double share) {
    List<Double> sorted = values.stream().sorted().toList();
    return sorted.isEmpty()
        ? Double.NaN
        : sorted.get((int) Math.min(sorted.size() - 1, Math.floor(share * sorted.size())));
  }

  private static void spread(String what, List<Double> values, double goal) {
    System.out.println(
        Text.of(
            "%-44s %6d  median %7.1f  90 %% %7.1f  99 %% %7.1f  most %7.1f ms, goal %.0f",
            what,
            values.size(),
            share(values, 0.5),
            share(values, 0.9),
            share(values, 0.99),
            share(values, 1),
            goal));
  }

  private static void print(String what, double millis, String more) {
    System.out.println(Text.of("%-44s %7.0f ms %s", what, millis, more));
  }
}
