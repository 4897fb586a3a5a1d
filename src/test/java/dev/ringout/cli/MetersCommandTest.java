package dev.ringout.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.support.Run;
import dev.ringout.support.ScriptedMeter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** What somebody sees who has a meter and a cable. */
@Timeout(60)
class MetersCommandTest {
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
  void what_is_no_address_is_said() {
    Run run = meters("--try", "the meter");
    assertEquals(ExitCode.NOT_UNDERSTOOD, run.code());
    assertTrue(run.err().startsWith("ringout: \"the meter\" is no address of a meter"), run.err());
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
    Run[] ran = new Run[1];
    Thread serving =
        new Thread(
            () ->
                ran[0] =
                    meters(
                        "--practice",
                        "0",
                        "harness-samples/swing-bridge/junction-box.xlsx",
                        "--slips",
                        "2"));
    serving.start();
    Thread.sleep(3000);
    serving.interrupt();
    serving.join(10_000);
    assertFalse(serving.isAlive());
    assertTrue(ran[0].out().contains("PRACTICE METER"), ran[0].out());
    assertTrue(ran[0].out().contains("2 slips planted"), ran[0].out());
  }
}
