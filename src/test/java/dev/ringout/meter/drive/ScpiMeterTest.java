package dev.ringout.meter.drive;

import static dev.ringout.support.RealMeter.open;
import static dev.ringout.support.ScriptedMeter.say;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.meter.Exchange;
import dev.ringout.meter.Failure;
import dev.ringout.meter.HowEntered;
import dev.ringout.meter.MeterReading;
import dev.ringout.meter.MeterTrouble;
import dev.ringout.support.ScriptedMeter;
import java.io.IOException;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicReference;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** A meter that takes commands, sound and otherwise: a reading or a clear word, and in time. */
@Timeout(30)
class ScpiMeterTest {
  private static final String PROFILE =
      "speaks: scpi\nconnect-ms: 500\nanswer-ms: 300\nnoise-ohms: 0.01\n";

  private static MeterReading read(ScriptedMeter meter) throws MeterTrouble {
    try (Meter open = open(meter.address(), PROFILE)) {
      return open.read(open.byKey(), 3000);
    }
  }

  private static MeterTrouble trouble(ScriptedMeter.Script script) throws IOException {
    try (ScriptedMeter meter = new ScriptedMeter(script)) {
      return assertThrows(MeterTrouble.class, () -> read(meter));
    }
  }

  @Test
  void a_reading_keeps_what_the_meter_said_and_which_it_was() throws Exception {
    try (ScriptedMeter meter = ScriptedMeter.sound("+3.10000000E-01")) {
      MeterReading reading = read(meter);
      assertEquals("+3.10000000E-01", reading.raw());
      assertEquals("0.31 Ω", reading.measured().text());
      assertEquals("Works,Meter,17,1.0", reading.meter().text());
      assertEquals("17", reading.meter().fields().get(2));
      assertEquals(HowEntered.KEY, reading.entered());
      assertEquals("*IDN?", meter.received().get(0));
      assertTrue(meter.received().contains("CONF:RES"));
    }
  }

  /** Found by an attacker: the beeper's range ends at a kilohm or two, and above it is OL. */
  @Test
  void a_value_after_a_key_at_the_meter_was_pressed_is_no_reading() throws Exception {
    AtomicReference<String> function = new AtomicReference<>("\"RES\"");
    try (ScriptedMeter meter = asked(function, "FUNC?");
        Meter open = open(meter.address(), PROFILE + "setting: FUNC?\n")) {
      assertEquals("OL", open.read(open.byKey(), 3000).measured().text());
      function.set("\"CONT\"");
      MeterTrouble trouble = assertThrows(MeterTrouble.class, () -> open.read(open.byKey(), 3000));
      assertEquals(new Failure.SetOtherwise("FUNC?", "\"RES\"", "\"CONT\""), trouble.failure());
    }
  }

  @Test
  void a_meter_that_does_not_say_how_it_is_set_is_not_asked_again() throws Exception {
    try (ScriptedMeter meter = ScriptedMeter.sound("9.9E37");
        Meter open = open(meter.address(), PROFILE + "setting: SENS:FUNC?\n")) {
      assertTrue(open.read(open.byKey(), 3000).isOverRange());
      assertEquals(1, meter.received().stream().filter("SENS:FUNC?"::equals).count());
    }
  }

  private static ScriptedMeter asked(AtomicReference<String> answer, String asked)
      throws IOException {
    return new ScriptedMeter(
        (connection, line, out) -> {
          if (line.equals(asked)) {
            say(out, answer.get() + "\n");
          } else {
            ScriptedMeter.sound(line, "9.9E37", out);
          }
        });
  }

  @Test
  void what_is_kept_of_a_reading_gives_it_back() throws Exception {
    try (ScriptedMeter meter = ScriptedMeter.sound("9.9E37")) {
      MeterReading reading = read(meter);
      assertTrue(reading.isOverRange());
      assertEquals(
          reading,
          MeterReading.of(
                  reading.fields(),
                  (raw, profile) ->
                      dev.ringout.meter.ScpiAnswer.read(raw, 9.9e37, false)
                          .resistance()
                          .map(one -> one.measured()))
              .orElseThrow());
    }
  }

  @Test
  void nobody_listens() throws Exception {
    int port;
    try (ServerSocket free = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
      port = free.getLocalPort();
    }
    MeterTrouble trouble =
        assertThrows(MeterTrouble.class, () -> open("127.0.0.1:" + port, PROFILE));
    assertInstanceOf(Failure.Refused.class, trouble.failure());
  }

  @Test
  void there_is_no_such_host() {
    MeterTrouble trouble =
        assertThrows(MeterTrouble.class, () -> open("no-such-meter.invalid:5025", PROFILE));
    assertInstanceOf(Failure.NotFound.class, trouble.failure());
  }

  @Test
  void a_meter_that_is_silent() throws Exception {
    MeterTrouble trouble = trouble((connection, line, out) -> {});
    assertEquals(new Failure.Silent("*IDN?", 300), trouble.failure());
    assertTrue(
        trouble.talk().stream()
            .anyMatch(one -> one.kind() == Exchange.Kind.SENT && one.text().equals("*IDN?")));
  }

  @Test
  void a_meter_that_falls_silent_is_asked_again_and_then_given_up() throws Exception {
    MeterTrouble trouble =
        trouble(
            (connection, line, out) -> {
              if (!line.equals("READ?")) {
                ScriptedMeter.sound(line, "", out);
              }
            });
    assertEquals(new Failure.Silent("READ?", 300), trouble.failure());
  }

  @Test
  void garbage_is_no_identity() throws Exception {
    MeterTrouble trouble =
        trouble((connection, line, out) -> say(out, "\u0001\u00ff\u0002\n".repeat(30)));
    assertInstanceOf(Failure.Garbage.class, trouble.failure());
  }

  @Test
  void what_came_and_is_no_identity_is_told_and_not_silence() throws Exception {
    for (String odd : new String[] {"\u001b[2J<b>Works</b>", "Works\u0007,Meter", "", "   "}) {
      MeterTrouble trouble =
          trouble((connection, line, out) -> say(out, line.equals("*IDN?") ? odd + "\n" : ""));
      assertEquals(
          new Failure.Garbage("*IDN?", odd.isBlank() ? odd + "\n" : odd), trouble.failure());
    }
  }

  @Test
  void an_identity_that_is_another_each_time_is_told_with_both() throws Exception {
    AtomicInteger asked = new AtomicInteger();
    MeterTrouble trouble =
        trouble(
            (connection, line, out) ->
                say(
                    out,
                    line.equals("*IDN?") ? "Works,Meter," + asked.incrementAndGet() + "\n" : ""));
    assertEquals(new Failure.OtherMeter("Works,Meter,5", "Works,Meter,6"), trouble.failure());
  }

  @Test
  void an_answer_of_signs_that_nobody_reads_is_told_and_not_silence() throws Exception {
    MeterTrouble trouble =
        trouble(
            (connection, line, out) -> {
              if (line.equals("READ?")) {
                say(out, "\u0001\u00ff\n\u0081\u0002\u0003\n\u0005");
              } else {
                ScriptedMeter.sound(line, "", out);
              }
            });
    assertInstanceOf(Failure.Garbage.class, trouble.failure());
  }

  @Test
  void a_link_that_echoes_is_read_all_the_same() throws Exception {
    for (String fence : new String[] {"number", "errors"}) {
      try (ServerSocket server = new ServerSocket(0, 4, InetAddress.getLoopbackAddress())) {
        Thread thread = new Thread(() -> echoing(server));
        thread.setDaemon(true);
        thread.start();
        String profile = PROFILE + "fence: " + fence + "\n";
        try (Meter open = open("127.0.0.1:" + server.getLocalPort(), profile)) {
          assertEquals("0.31", open.read(open.byKey(), 3000).raw());
          assertEquals("Works,Meter,17,1.0", open.identity().text());
        }
      }
    }
  }

  private static void echoing(ServerSocket server) {
    String enable = "0";
    while (!server.isClosed()) {
      try (var client = server.accept();
          var in =
              new java.io.BufferedReader(
                  new java.io.InputStreamReader(
                      client.getInputStream(), java.nio.charset.StandardCharsets.US_ASCII))) {
        for (String line = in.readLine(); line != null; line = in.readLine()) {
          say(client.getOutputStream(), line + "\r\n");
          enable = line.startsWith("*ESE ") ? line.substring(5) : enable;
          if (line.equals("*ESE?")) {
            say(client.getOutputStream(), enable + "\r\n");
          }
          ScriptedMeter.sound(line, "0.31", client.getOutputStream());
        }
      } catch (IOException e) {
        // The client left.
      }
    }
  }

  @Test
  void an_error_that_never_leaves_its_queue_is_named() throws Exception {
    MeterTrouble trouble =
        trouble(
            (connection, line, out) -> {
              if (line.equals("SYST:ERR?")) {
                say(out, "-350,\"Queue overflow\"\n");
              } else {
                ScriptedMeter.sound(line, "0.31", out);
              }
            });
    assertEquals(new Failure.Queued("*IDN?", "-350,\"Queue overflow\""), trouble.failure());
  }

  @Test
  void no_error_has_many_forms() throws Exception {
    for (String none :
        new String[] {
          "0", "+0,\"No error\"", "0 No error", "No error", "0,No Error", "\"No error\""
        }) {
      for (String fence : new String[] {"number", "errors"}) {
        try (ScriptedMeter meter =
                new ScriptedMeter(
                    (connection, line, out) -> {
                      if (line.equals("SYST:ERR?")) {
                        say(out, none + "\n");
                      } else {
                        ScriptedMeter.sound(line, "0.31", out);
                      }
                    });
            Meter open = open(meter.address(), PROFILE + "fence: " + fence + "\n")) {
          assertEquals("0.31", open.read(open.byKey(), 3000).raw(), none);
        }
      }
    }
  }

  @Test
  void a_reading_is_not_asked_for_after_its_time() throws Exception {
    try (ScriptedMeter meter =
            new ScriptedMeter(
                (connection, line, out) -> {
                  Thread.sleep(line.endsWith("?") ? 200 : 0);
                  ScriptedMeter.sound(line, "0.31", out);
                });
        Meter open = open(meter.address(), PROFILE)) {
      long before = System.nanoTime();
      MeterTrouble trouble = assertThrows(MeterTrouble.class, () -> open.read(open.byKey(), 700));
      assertEquals(new Failure.Unsettled(700, "0.31"), trouble.failure());
      assertTrue(System.nanoTime() - before < 1_100_000_000L);
      assertEquals("0.31", open.read(open.byKey(), 8000).raw(), "and the next is as good as any");
    }
  }

  @Test
  void garbage_is_no_reading() throws Exception {
    MeterTrouble trouble =
        trouble((connection, line, out) -> ScriptedMeter.sound(line, "%&#", out));
    assertEquals(new Failure.Garbage("READ?", "%&#"), trouble.failure());
  }

  @Test
  void half_a_line_for_ever() throws Exception {
    MeterTrouble trouble =
        trouble(
            (connection, line, out) -> {
              for (int i = 0; i < 20; i++) {
                say(out, "1");
                Thread.sleep(100);
              }
            });
    assertInstanceOf(Failure.HalfLine.class, trouble.failure());
  }

  @Test
  void a_line_of_a_megabyte() throws Exception {
    MeterTrouble trouble = trouble((connection, line, out) -> say(out, "1".repeat(1 << 20) + "\n"));
    assertInstanceOf(Failure.TooLong.class, trouble.failure());
  }

  @Test
  void a_number_with_an_error_queued_is_no_reading() throws Exception {
    AtomicInteger reads = new AtomicInteger();
    MeterTrouble trouble =
        trouble(
            (connection, line, out) -> {
              if (line.equals("READ?")) {
                reads.incrementAndGet();
              }
              if (line.equals("SYST:ERR?") && reads.getAndSet(0) > 0) {
                say(out, "-230,\"Data corrupt or stale\"\n");
              } else {
                ScriptedMeter.sound(line, "0.31", out);
              }
            });
    assertEquals(new Failure.Queued("READ?", "-230,\"Data corrupt or stale\""), trouble.failure());
  }

  @Test
  void a_setting_that_the_meter_refuses_is_said_before_anything_is_read() throws Exception {
    AtomicReference<String> last = new AtomicReference<>("");
    MeterTrouble trouble =
        trouble(
            (connection, line, out) -> {
              boolean refused = last.getAndSet(line).equals("CONF:RES");
              say(
                  out,
                  line.equals("*IDN?")
                      ? "Works,Meter,17,1.0\n"
                      : line.equals("SYST:ERR?")
                          ? refused ? "-113,\"Undefined header\"\n" : "0,\"No error\"\n"
                          : "");
            });
    assertEquals(new Failure.Queued("CONF:RES", "-113,\"Undefined header\""), trouble.failure());
  }

  @Test
  void two_answers_at_once_are_both_dropped() throws Exception {
    MeterTrouble trouble =
        trouble((connection, line, out) -> ScriptedMeter.sound(line, "0.31\n0.32", out));
    assertInstanceOf(Failure.Unasked.class, trouble.failure());
  }

  /** The pair before read 7 Ω, and that answer comes when the next pair is read. */
  @Test
  void a_late_answer_is_not_the_next_pairs() throws Exception {
    String[] value = {"7.0"};
    AtomicInteger reads = new AtomicInteger();
    ScriptedMeter.Script late =
        (connection, line, out) -> {
          if (line.equals("READ?") && reads.incrementAndGet() == 1) {
            later(out, value[0] + "\n", 700);
            return;
          }
          ScriptedMeter.sound(line, value[0], out);
        };
    try (ScriptedMeter meter = new ScriptedMeter(late);
        Meter open = open(meter.address(), PROFILE)) {
      assertThrows(MeterTrouble.class, () -> open.read(open.byKey(), 250));
      value[0] = "0.31";
      assertEquals("0.31", open.read(open.byKey(), 4000).raw());
    }
  }

  private static void later(OutputStream out, String text, int millis) {
    Thread thread =
        new Thread(
            () -> {
              try {
                Thread.sleep(millis);
                say(out, text);
              } catch (IOException | InterruptedException e) {
                // The client hung up, as it should.
              }
            });
    thread.setDaemon(true);
    thread.start();
  }

  @Test
  void another_meter_at_the_same_address_is_noticed() throws Exception {
    try (ScriptedMeter meter =
            new ScriptedMeter(
                (connection, line, out) -> {
                  if (line.equals("*IDN?")) {
                    say(out, "Works,Meter," + connection + ",1.0\n");
                  } else {
                    ScriptedMeter.sound(line, "0.31", out);
                  }
                });
        Meter open = open(meter.address(), PROFILE)) {
      open.read(open.byKey(), 3000);
      meter.hangUp();
      MeterTrouble trouble = assertThrows(MeterTrouble.class, () -> open.read(open.byKey(), 3000));
      assertEquals(
          new Failure.OtherMeter("Works,Meter,1,1.0", "Works,Meter,2,1.0"), trouble.failure());
    }
  }

  @Test
  void a_link_that_breaks_is_opened_again_within_the_time_of_the_reading() throws Exception {
    try (ScriptedMeter meter = ScriptedMeter.sound("0.31");
        Meter open = open(meter.address(), PROFILE)) {
      open.read(open.byKey(), 3000);
      meter.hangUp();
      assertEquals("0.31", open.read(open.byKey(), 3000).raw());
    }
  }

  @Test
  @SuppressWarnings("try") // That it is closed is what is tested.
  void a_meter_that_went_away_is_given_up_in_time() throws Exception {
    try (ScriptedMeter meter = ScriptedMeter.sound("0.31");
        Meter open = open(meter.address(), PROFILE)) {
      meter.close();
      long before = System.nanoTime();
      MeterTrouble trouble = assertThrows(MeterTrouble.class, () -> open.read(open.byKey(), 1000));
      assertInstanceOf(Failure.Gone.class, trouble.failure());
      assertTrue(System.nanoTime() - before < 3_000_000_000L);
    }
  }

  @Test
  void a_meter_without_the_common_commands_is_told_apart_by_its_error_queue() throws Exception {
    try (ServerSocket server = new ServerSocket(0, 4, InetAddress.getLoopbackAddress())) {
      Thread thread = new Thread(() -> plain(server));
      thread.setDaemon(true);
      thread.start();
      try (Meter open = open("127.0.0.1:" + server.getLocalPort(), PROFILE)) {
        assertEquals("0.31", open.read(open.byKey(), 3000).raw());
      }
    }
  }

  private static void plain(ServerSocket server) {
    while (!server.isClosed()) {
      try (var client = server.accept();
          var in =
              new java.io.BufferedReader(
                  new java.io.InputStreamReader(
                      client.getInputStream(), java.nio.charset.StandardCharsets.US_ASCII))) {
        for (String line = in.readLine(); line != null; line = in.readLine()) {
          ScriptedMeter.sound(line, "0.31", client.getOutputStream());
        }
      } catch (IOException e) {
        // The client left.
      }
    }
  }

  @Test
  void two_readers_are_never_at_one_meter() throws Exception {
    try (ScriptedMeter meter = ScriptedMeter.sound("9.9E37");
        Meter open = open(meter.address(), PROFILE)) {
      Thread first = new Thread(() -> quietly(open));
      first.start();
      Thread.sleep(200);
      MeterTrouble trouble = assertThrows(MeterTrouble.class, () -> open.sample(100));
      assertInstanceOf(Failure.InUse.class, trouble.failure());
      first.interrupt();
      first.join(1000);
      assertTrue(!first.isAlive());
    }
  }

  private static void quietly(Meter open) {
    try {
      open.read(open.joined(), 20_000);
    } catch (MeterTrouble e) {
      // It was stopped.
    }
  }

  @Test
  @SuppressWarnings("try") // That it is closed is what is tested.
  void a_reader_is_told_when_the_meter_is_closed() throws Exception {
    AtomicReference<Failure> failure = new AtomicReference<>();
    try (ScriptedMeter meter = ScriptedMeter.sound("9.9E37");
        Meter open = open(meter.address(), PROFILE)) {
      Thread reader =
          new Thread(
              () -> {
                try {
                  open.read(open.joined(), 20_000);
                } catch (MeterTrouble e) {
                  failure.set(e.failure());
                }
              });
      reader.start();
      Thread.sleep(200);
      open.close();
      reader.join(2000);
    }
    assertEquals(new Failure.Interrupted(), failure.get());
  }

  @Test
  void within_its_own_delay_a_meter_may_show_the_pair_before() throws Exception {
    long start = System.nanoTime();
    try (ScriptedMeter meter =
            new ScriptedMeter(
                (connection, line, out) -> {
                  boolean late = System.nanoTime() - start > 1_200_000_000L;
                  ScriptedMeter.sound(line, late ? "0.31" : "9.9E37", out);
                });
        Meter open = open(meter.address(), PROFILE + "settle-ms: 1500\n")) {
      assertEquals("0.31", open.read(open.byKey(), 5000).raw());
    }
  }

  @Test
  void an_insulation_tester_says_its_volts_and_is_never_told_to_put_them_on() throws Exception {
    try (ScriptedMeter meter =
            new ScriptedMeter(
                (connection, line, out) -> {
                  if (line.equals("FETC?")) {
                    say(out, "+2.10000E+09,+5.02000E+02\n");
                  } else {
                    ScriptedMeter.sound(line, "", out);
                  }
                });
        Meter open =
            open(
                meter.address(),
                PROFILE + "two-wire:\nquery: FETC?\nsecond-field: volts\nnoise-share: 0.05\n")) {
      MeterReading reading = open.read(open.byKey(), 3000);
      assertEquals(502, reading.volts().orElseThrow());
      assertEquals("2.1 GΩ", reading.measured().text());
      assertEquals(
          java.util.Set.of("*IDN?", "SYST:ERR?", "FETC?"),
          meter.received().stream()
              .filter(line -> !line.startsWith("*ESE"))
              .collect(java.util.stream.Collectors.toSet()));
    }
  }
}
