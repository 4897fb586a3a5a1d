package dev.ringout.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import dev.ringout.support.Run;
import dev.ringout.support.ScriptedMeter;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What somebody sees who has a meter and a cable. */
@Timeout(60)
class MetersCommandTest {
  private static final Path BOX = Path.of("harness-samples/swing-bridge");

  @TempDir Path folder;

  private Run meters(Object... words) {
    Object[] all = new Object[words.length + 3];
    all[0] = "meters";
    all[1] = "--store";
    all[2] = folder.resolve("bench.db");
    System.arraycopy(words, 0, all, 3, words.length);
    return Run.of(all);
  }

  @Test
  void ports_and_profiles_are_listed() {
    Run run = meters();
    assertEquals(0, run.code());
    assertTrue(run.out().contains("SERIAL PORTS"), run.out());
    assertTrue(run.out().contains("  stream-2400-7o1 "), run.out());
  }

  @Test
  void a_trial_shows_every_line_and_what_was_understood() throws Exception {
    try (ScriptedMeter meter = ScriptedMeter.sound("+3.10000E-01")) {
      Run run = meters("--try", meter.address(), "--seconds", "1");
      assertEquals(0, run.code(), run.err());
      assertTrue(run.out().contains("sent      *IDN?"), run.out());
      assertTrue(run.out().contains("received  Works,Meter,17,1.0"), run.out());
      assertTrue(run.out().contains("+3.10000E-01 is 0.31 Ω"), run.out());
      assertTrue(run.out().contains("add --leads"), run.out());
      assertTrue(run.out().contains("never switches test volts on"), run.out());
    }
  }

  @Test
  void a_trial_keeps_a_profile_that_is_found_by_its_name() throws Exception {
    Path own = Files.createDirectories(folder.resolve("meters"));
    try (ScriptedMeter meter = ScriptedMeter.sound("+3.10000E-01")) {
      Path mine = own.resolve("bench-meter.profile");
      assertEquals(0, meters("--try", meter.address(), "--seconds", "1", "-o", mine).code());
      assertTrue(Files.readString(mine).contains("query: READ?"), Files.readString(mine));
      assertTrue(meters().out().contains("bench-meter"), meters().out());
      assertTrue(meters().out().contains("(your own)"), meters().out());
      Run again = meters("--try", meter.address(), "--seconds", "1", "--profile", "bench-meter");
      assertEquals(0, again.code(), again.err());
    }
  }

  @Test
  void leads_are_measured_with_the_probes_together_and_kept() throws Exception {
    try (ScriptedMeter meter = ScriptedMeter.sound("+8.10000E-02")) {
      Run run = meters("--try", meter.address(), "--seconds", "1", "--leads");
      assertTrue(run.out().contains("the job's lead null is 0.081 ohm"), run.out());
      Run later = meters("--try", meter.address(), "--seconds", "1");
      assertTrue(later.out().contains("the job's lead null is 0.081 ohm"), later.out());
    }
    try (ScriptedMeter meter = ScriptedMeter.sound("+4.70000E+01")) {
      Run run = meters("--try", meter.address(), "--seconds", "1", "--leads");
      assertTrue(run.out().contains("add --leads"), run.out());
    }
  }

  @Test
  void probes_that_were_not_together_are_said_and_nothing_is_kept() throws Exception {
    try (ScriptedMeter meter = ScriptedMeter.sound("+4.70000E+01")) {
      Run run = meters("--try", meter.address(), "--seconds", "1", "--leads");
      assertEquals(ExitCode.NOT_UNDERSTOOD, run.code());
      assertTrue(
          run.err().contains("not held together: 47 Ω was read; leads have 5 Ω at most"),
          run.err());
      assertFalse(Files.exists(folder.resolve("lead-nulls.txt")));
    }
  }

  @Test
  void over_four_wires_leads_are_of_no_matter() throws Exception {
    try (ScriptedMeter meter = ScriptedMeter.sound("+8.10000E-02")) {
      meters("--try", meter.address(), "--seconds", "1", "--leads");
      Run run = meters("--try", meter.address(), "--seconds", "1", "--four-wire");
      assertTrue(run.out().contains("not needed with four wires"), run.out());
      Run plain =
          meters("--try", meter.address(), "--profile", "scpi-plain", "--four-wire", "--json");
      assertEquals(ExitCode.NOT_UNDERSTOOD, plain.code());
      assertTrue(plain.err().contains("it has no line four-wire"), plain.err());
    }
  }

  /** What was seen before a failure is the half of what somebody wants to know. */
  @Test
  void a_failure_at_the_end_takes_no_values_away() throws Exception {
    for (String last : new String[] {"silent", "gone", "garbage", "half-line"}) {
      AtomicInteger reads = new AtomicInteger();
      try (ScriptedMeter meter =
          new ScriptedMeter(
              (connection, line, out) -> {
                if (line.equals("READ?") && reads.incrementAndGet() > 60) {
                  fail(last, out);
                } else {
                  Thread.sleep(5);
                  ScriptedMeter.sound(line, "+3.10000E-01", out);
                }
              })) {
        Path profile =
            Files.writeString(
                folder.resolve("quick.profile"),
                "speaks: scpi\nanswer-ms: 200\nnoise-ohms: 0.01\n");
        Run run =
            meters("--try", meter.address(), "--profile", profile, "--seconds", "3", "--json");
        boolean isOfTheLink = last.equals("silent") || last.equals("gone");
        assertEquals(
            isOfTheLink ? ExitCode.MISSING_INPUT : ExitCode.NOT_UNDERSTOOD, run.code(), last);
        assertTrue(run.out().contains("\"code\" : \"" + last + "\""), last + run.err());
        assertTrue(run.out().contains("\"values\""), last);
        assertTrue(run.out().contains("\"settled\""), last);
        assertTrue(run.out().contains("\"noiseOhms\""), last);
      }
    }
  }

  private static void fail(String how, OutputStream out) throws IOException {
    switch (how) {
      case "gone" -> out.close();
      case "garbage" -> ScriptedMeter.say(out, "%&#\n");
      case "half-line" -> ScriptedMeter.say(out, "+3.1");
      default -> {
        // Silent.
      }
    }
  }

  private Run says(String answer, String... more) throws Exception {
    try (ScriptedMeter meter = ScriptedMeter.sound(answer)) {
      Object[] words = new Object[4 + more.length];
      System.arraycopy(new Object[] {"--try", meter.address(), "--seconds", "1"}, 0, words, 0, 4);
      System.arraycopy(more, 0, words, 4, more.length);
      return meters(words);
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "9.91E37    | what came in 1000 ms is not a value in ohms; the last was \"9.91E37\"",
        "-9.9E37    | what came in 1000 ms is not a value in ohms; the last was \"-9.9E37\"",
        "1.2 V      | \"1.2 V\" is V, no ohms",
        "?          | \"?\" is not an answer to \"READ?\"",
      })
  void a_meter_of_which_nothing_is_understood_is_no_success(String answer, String said)
      throws Exception {
    Run run = says(answer);
    assertEquals(ExitCode.NOT_UNDERSTOOD, run.code(), run.out());
    assertTrue(run.err().contains(said), run.err());
  }

  @Test
  void an_insulation_tester_that_says_no_volts_is_told() throws Exception {
    try (ScriptedMeter meter =
        new ScriptedMeter(
            (connection, line, out) ->
                ScriptedMeter.sound(line.replace("FETC?", "READ?"), "5.0E+08", out))) {
      Run run = meters("--try", meter.address(), "--profile", "scpi-insulation");
      assertEquals(ExitCode.NOT_UNDERSTOOD, run.code());
      assertTrue(run.err().contains("\"5.0E+08\" has no test volts"), run.err());
    }
  }

  @Test
  void a_number_with_an_error_queued_is_told_whether_it_settles_or_not() throws Exception {
    isTold("47");
    isTold("+4.70000000E+01");
  }

  private void isTold(String value) throws Exception {
    AtomicInteger reads = new AtomicInteger();
    try (ScriptedMeter meter =
        new ScriptedMeter(
            (connection, line, out) -> {
              if (line.equals("READ?")) {
                reads.incrementAndGet();
              }
              if (line.equals("SYST:ERR?") && reads.getAndSet(0) > 0) {
                ScriptedMeter.say(out, "-230,\"Data corrupt or stale\"\n");
              } else {
                ScriptedMeter.sound(line, value, out);
              }
            })) {
      Run run = meters("--try", meter.address(), "--seconds", "2", "--json");
      assertEquals(ExitCode.NOT_UNDERSTOOD, run.code());
      assertTrue(run.out().contains("\"code\" : \"queued\""), run.out());
      assertTrue(run.err().contains("-230,\"Data corrupt or stale\""), run.err());
      assertFalse(run.out().contains("\"settled\""), run.out());
      assertTrue(run.out().contains("\"values\""), run.out());
    }
  }

  @Test
  void a_link_that_breaks_and_comes_back_is_told_and_the_trial_goes_on() throws Exception {
    AtomicInteger reads = new AtomicInteger();
    try (ScriptedMeter meter =
        new ScriptedMeter(
            (connection, line, out) -> {
              if (line.equals("READ?") && reads.incrementAndGet() == 20) {
                out.close();
              } else {
                ScriptedMeter.sound(line, "0.31", out);
              }
            })) {
      Run run = meters("--try", meter.address(), "--seconds", "2");
      assertEquals(ExitCode.DONE, run.code(), run.err());
      assertTrue(run.out().contains("link      gone"), run.out());
      assertEquals(2, run.out().split("link      open", -1).length - 1, run.out());
    }
  }

  @Test
  void another_meter_is_told_after_the_link_broke_and_without_its_breaking() throws Exception {
    for (boolean breaks : new boolean[] {true, false}) {
      AtomicInteger reads = new AtomicInteger();
      try (ScriptedMeter meter =
          new ScriptedMeter(
              (connection, line, out) -> {
                boolean other = reads.get() >= 20;
                if (line.equals("READ?") && reads.incrementAndGet() == 20 && breaks) {
                  out.close();
                } else if (line.equals("*IDN?") && other) {
                  ScriptedMeter.say(out, "Works,Meter,18,1.0\n");
                } else {
                  ScriptedMeter.sound(line, "0.31", out);
                }
              })) {
        Run run = meters("--try", meter.address(), "--seconds", "3", "--json");
        assertEquals(ExitCode.MISSING_INPUT, run.code(), run.err());
        assertTrue(run.out().contains("\"code\" : \"other-meter\""), run.err());
        assertTrue(run.out().contains("\"values\""), run.err());
        assertTrue(run.err().contains("Works,Meter,17,1.0"), run.err());
        assertTrue(run.err().contains("Works,Meter,18,1.0"), run.err());
      }
    }
  }

  @Test
  void the_seconds_are_over_when_they_are_over() throws Exception {
    try (ScriptedMeter meter =
        new ScriptedMeter(
            (connection, line, out) -> {
              Thread.sleep(line.endsWith("?") ? 250 : 0);
              ScriptedMeter.sound(line, "0.31", out);
            })) {
      Run run = meters("--try", meter.address(), "--seconds", "2", "--json");
      assertEquals(ExitCode.DONE, run.code(), run.err());
      List<JsonNode> talk = new ArrayList<>();
      new ObjectMapper().readTree(run.out()).get("talk").forEach(talk::add);
      long first =
          talk.stream()
              .filter(line -> line.get("text").asText().equals("READ?"))
              .findFirst()
              .orElseThrow()
              .get("ms")
              .asLong();
      long last = talk.get(talk.size() - 1).get("ms").asLong();
      assertTrue(last - first < 2000 + 500, first + " to " + last);
    }
  }

  @Test
  void what_does_not_belong_together_is_a_wrong_command_line() {
    String[][] wrong = {
      {"--try", "localhost:1", "--practice", "0"},
      {"--leads"},
      {"--profile", "scpi"},
      {"--practice", "0", "--four-wire"},
      {"list.xlsx", "--try", "localhost:1"},
      {"--slips", "3"},
      {"--try", "localhost:1", "--seconds", "0"},
      {"--try", "localhost:1", "--seconds", "601"},
    };
    for (String[] words : wrong) {
      Run run = meters((Object[]) words);
      assertEquals(ExitCode.USAGE, run.code(), String.join(" ", words));
      assertTrue(run.err().startsWith("ringout: "), run.err());
      assertEquals("", run.out());
    }
  }

  @Test
  void what_has_no_link_is_typed() {
    Run run = meters("--try", "none");
    assertEquals(ExitCode.MISSING_INPUT, run.code());
    assertTrue(run.err().contains("none has no link"), run.err());
  }

  @Test
  void what_is_no_address_is_said() {
    Run run = meters("--try", "the meter");
    assertEquals(ExitCode.NOT_UNDERSTOOD, run.code());
    assertTrue(
        run.err().startsWith("ringout: \"the meter\" is not an address of a meter"), run.err());
  }

  @Test
  void a_meter_that_is_not_there_is_said_in_time() {
    Run run = meters("--try", "localhost:1");
    assertEquals(ExitCode.MISSING_INPUT, run.code());
    assertTrue(run.err().contains("nobody listens at TCPIP::localhost::1::SOCKET"), run.err());
  }

  @Test
  void a_profile_that_could_put_out_volts_is_refused() throws Exception {
    Path own = Files.createDirectories(folder.resolve("meters"));
    Files.writeString(
        own.resolve("hot.profile"), "speaks: scpi\nset-up: :SOUR:VOLT 500\nset-up: OUTP ON\n");
    Run run = meters("--try", "localhost:1", "--profile", "hot");
    assertEquals(ExitCode.NOT_UNDERSTOOD, run.code());
    assertTrue(run.err().contains("line 2"), run.err());
    assertTrue(run.err().contains("could switch volts on, which is never sent"), run.err());
  }

  @Test
  void a_profile_that_is_not_there_is_said_with_those_that_are() {
    Run run = meters("--try", "localhost:1", "--profile", "mine");
    assertEquals(ExitCode.NOT_UNDERSTOOD, run.code());
    assertTrue(run.err().contains("profile mine: there are scpi, scpi-fast"), run.err());
  }

  @Test
  void words_of_a_profile_are_checked_line_by_line() throws Exception {
    Path own = Files.createDirectories(folder.resolve("meters"));
    for (String wrong :
        new String[] {
          "speaks: scpi\nbaud: 9600\n",
          "speaks: morse\n",
          "speaks: lines\nline: 9600\n",
          "speaks: lines\nsends: poll\n",
          "speaks: scpi\nanswer-ms: soon\n",
          "speaks: scpi\nquery: READ?\nquery: FETC?\n",
          "speaks: scpi\ndtr: yes\n"
        }) {
      Files.writeString(own.resolve("wrong.profile"), wrong);
      Run run = meters("--try", "localhost:1", "--profile", "wrong");
      assertEquals(ExitCode.NOT_UNDERSTOOD, run.code(), wrong);
      assertTrue(run.err().startsWith("ringout: profile wrong: "), run.err());
    }
  }

  @Test
  void a_port_that_is_taken_can_serve_no_practice_meter() throws Exception {
    try (ScriptedMeter other = ScriptedMeter.sound("1")) {
      Run run = meters("--practice", other.port());
      assertEquals(ExitCode.CANNOT_WRITE, run.code());
      assertTrue(run.err().contains("port " + other.port() + " can't be had"), run.err());
    }
    assertEquals(ExitCode.USAGE, meters("--practice", "70000").code());
  }

  @Test
  void a_practice_meter_serves_until_it_is_stopped() throws Exception {
    servesTheUnit(BOX.resolve("junction-box.xlsx").toString());
  }

  @Test
  void a_practice_meter_takes_a_unit_of_the_store() throws Exception {
    Run added =
        Run.of(
            "store",
            "add",
            BOX.resolve("junction-box.xlsx"),
            BOX.resolve("point-to-point.xlsx"),
            "--store",
            folder.resolve("bench.db"));
    assertEquals(0, added.code(), added.err());
    servesTheUnit("unit:0418");
  }

  private void servesTheUnit(String unit) throws InterruptedException {
    Run[] ran = new Run[1];
    Thread serving = new Thread(() -> ran[0] = meters("--practice", "0", unit, "--slips", "2"));
    serving.start();
    Thread.sleep(3000);
    serving.interrupt();
    serving.join(10_000);
    assertFalse(serving.isAlive());
    assertTrue(ran[0].out().contains("PRACTICE METER"), ran[0].out());
    assertTrue(ran[0].out().contains("2 slips planted"), ran[0].out());
  }
}
