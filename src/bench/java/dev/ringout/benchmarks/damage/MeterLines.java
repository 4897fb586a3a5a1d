package dev.ringout.benchmarks.damage;

import dev.ringout.meter.DisplayLine;
import dev.ringout.meter.ScpiAnswer;
import dev.ringout.meter.Shown;
import dev.ringout.words.MeterWords;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.OutputStream;
import java.lang.management.ManagementFactory;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.net.SocketTimeoutException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;

/** What meters say, damaged: each line is a value, or is said to be none. */
final class MeterLines {
  private static final int LINES = 3000;

  private static final List<String> SAID =
      List.of(
          "+3.10000000E-01",
          "9.9E37",
          "+9.90000000E+37,+0.00000000E+00",
          "-0,\"No error\"",
          "0.31 Ohm",
          "OL MOhm",
          ".OL",
          "000.12 kOhm AUTO",
          "> 1.00 GOhm 500 V",
          "HOLD 12.3 Ohm",
          "1,234 Ohm",
          "---- V",
          "R= 0.05 \u03a9",
          "DMM,4711,0,1.0");

  private static final List<String> MORE =
      List.of(
          "e999999999",
          "E-999999999",
          "1".repeat(5000),
          "+".repeat(3000),
          ".",
          ",",
          "\u221e",
          "-",
          "\u0000",
          "\u00b0C",
          " k",
          "M",
          "9.9E37",
          ">>",
          "NaN",
          "1_000",
          "\u0663",
          "\ufffd");

  private final Chance chance;

  MeterLines(Chance chance) {
    this.chance = chance;
  }

  private String line() {
    StringBuilder line = new StringBuilder(chance.of(SAID));
    for (int i = chance.below(4); i > 0; i--) {
      int at = chance.below(line.length() + 1);
      switch (chance.below(5)) {
        case 0 -> line.insert(at, chance.of(MORE));
        case 1 -> line.insert(at, chance.word());
        case 2 -> line.delete(Math.min(at, line.length()), Math.min(line.length(), at + 3));
        case 3 -> line.insert(at, (char) chance.below(0x180));
        default -> line.append(chance.oneIn(9) ? " ".repeat(20_000) : chance.of(SAID));
      }
    }
    return line.toString();
  }

  /** Many lines, each read as both kinds of meters say them. */
  void round(Runs runs, Path work) throws IOException {
    for (int i = 0; i < LINES; i++) {
      String line = line();
      long since = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
      try {
        boolean odd = chance.oneIn(2);
        told(ScpiAnswer.read(line, chance.oneIn(2) ? 9e36 : 1e9, odd));
        told(DisplayLine.read(line, odd));
      } catch (RuntimeException | Error e) {
        Files.writeString(work.resolve("line.txt"), line);
        runs.keep(work, "a line ended with " + e + at(e), "meters");
      }
      long took = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - since;
      if (took > TimeUnit.SECONDS.toNanos(1)) {
        Files.writeString(work.resolve("line.txt"), line);
        runs.keep(work, "a line took more than a second", "meters");
      }
    }
  }

  private static String at(Throwable e) {
    return e.getStackTrace().length == 0 ? "" : " at " + e.getStackTrace()[0];
  }

  /** Whatever is read can be said. */
  private static void told(Shown shown) {
    if (MeterWords.shown(shown).isEmpty()) {
      throw new IllegalStateException("nothing is said of " + shown);
    }
  }

  /** A meter on the network that says such lines, or a profile that is damaged. */
  void overNetwork(Runs runs, Path work) throws IOException, InterruptedException {
    Thread meter;
    try (ServerSocket server = new ServerSocket(0, 5, InetAddress.getLoopbackAddress())) {
      server.setSoTimeout(200);
      meter = new Thread(() -> talk(server));
      meter.setDaemon(true);
      meter.start();
      String profile = chance.of(List.of("scpi", "scpi-fast", "stream-9600-8n1", "key-9600-8n1"));
      runs.run(
          work,
          "meters",
          "--try",
          "127.0.0.1:" + server.getLocalPort(),
          "--profile",
          chance.oneIn(4) ? damagedProfile(work, profile) : profile,
          "--seconds",
          "1",
          "--store",
          work.resolve("bench.db").toString(),
          chance.oneIn(2) ? "--json" : "--four-wire");
    }
    meter.join(TimeUnit.SECONDS.toMillis(5));
  }

  private String damagedProfile(Path work, String name) throws IOException {
    Path own = Path.of("src/main/resources/dev/ringout/meter/profiles/" + name + ".profile");
    Path file = work.resolve("own.profile");
    Files.write(file, chance.bytes(Files.readAllBytes(own)));
    return file.toString();
  }

  private void talk(ServerSocket server) {
    while (!server.isClosed()) {
      try (Socket socket = server.accept()) {
        socket.setSoTimeout(50);
        BufferedReader in =
            new BufferedReader(
                new InputStreamReader(socket.getInputStream(), StandardCharsets.ISO_8859_1));
        OutputStream out = socket.getOutputStream();
        while (heard(in)) {
          out.write((line() + "\n").getBytes(StandardCharsets.ISO_8859_1));
        }
      } catch (IOException e) {
        // Nobody came, or left.
      }
    }
  }

  /** A meter that only talks says its line whether somebody asks or not. */
  private static boolean heard(BufferedReader in) throws IOException {
    try {
      return in.readLine() != null;
    } catch (SocketTimeoutException e) {
      return true;
    }
  }
}
