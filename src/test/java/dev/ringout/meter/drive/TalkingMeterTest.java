package dev.ringout.meter.drive;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import dev.ringout.meter.Failure;
import dev.ringout.meter.HowEntered;
import dev.ringout.meter.MeterReading;
import dev.ringout.meter.MeterTrouble;
import dev.ringout.meter.Sample;
import dev.ringout.meter.link.SystemTicks;
import dev.ringout.meter.practice.PracticeInstrument;
import dev.ringout.meter.practice.PracticeProbes;
import dev.ringout.support.RealMeter;
import dev.ringout.support.SerialPair;
import java.io.BufferedReader;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicReference;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** Meters that only talk, over a real port of this machine. */
@Timeout(30)
class TalkingMeterTest {
  private static final String STREAM = "speaks: lines\nanswer-ms: 700\nnoise-ohms: 0.01\n";

  @TempDir Path folder;
  private SerialPair pair;

  @BeforeEach
  void plugIn() throws Exception {
    if (!SerialPair.isThere()) {
      System.out.println("[NOT RUN] meters that talk: socat is not installed");
    }
    assumeTrue(SerialPair.isThere(), "socat is not installed");
    pair = new SerialPair(folder);
  }

  @AfterEach
  void pull() throws Exception {
    if (pair != null) {
      pair.close();
    }
  }

  private Meter open(String profile) throws MeterTrouble {
    return RealMeter.open(pair.address(), profile);
  }

  @Test
  void a_streaming_meter_is_read_once_its_value_stands_still() throws Exception {
    AtomicReference<String> line = new AtomicReference<>("RES OL MOhm\r\n");
    pair.sendAlways(50, line::get);
    try (Meter meter = open(STREAM)) {
      Thread touch =
          new Thread(
              () -> {
                try {
                  Thread.sleep(900);
                  line.set("RES 00.31 Ohm\r\n");
                } catch (InterruptedException e) {
                  Thread.currentThread().interrupt();
                }
              });
      touch.start();
      MeterReading reading = meter.read(meter.joined(), 5000);
      assertEquals("RES 00.31 Ohm", reading.raw());
      assertEquals(HowEntered.SETTLED, reading.entered());
    }
  }

  /** A meter that sends two lines a second is between two of them when the time is over. */
  @Test
  void a_trial_that_ends_between_two_lines_is_no_silence() throws Exception {
    pair.sendAlways(400, () -> "RES 00.31 Ohm\r\n");
    try (Meter meter = open(STREAM)) {
      Trial trial = Trial.of(meter, new SystemTicks(), 1500);
      assertTrue(trial.samples().size() >= 2, trial.samples().toString());
    }
  }

  @Test
  void a_line_that_had_begun_before_is_not_read() throws Exception {
    try (Meter meter = open(STREAM)) {
      pair.send("1.31 Ohm\n");
      pair.send("9.31 Ohm\n");
      Sample sample = meter.sample(500);
      assertEquals("9.31 Ohm", sample.raw());
    }
  }

  @Test
  void a_key_of_the_meter_sends_one_whole_reading() throws Exception {
    try (Meter meter = open("speaks: lines\nsends: key\nanswer-ms: 5000\n")) {
      Thread key =
          new Thread(
              () -> {
                try {
                  Thread.sleep(300);
                  pair.send("O.L MOhm\r");
                } catch (Exception e) {
                  Thread.currentThread().interrupt();
                }
              });
      key.start();
      MeterReading reading = meter.read(meter.byKey(), 4000);
      assertTrue(reading.isOverRange());
      assertEquals(HowEntered.METER_KEY, reading.entered());
    }
  }

  @Test
  void the_rest_of_a_line_that_began_before_the_reading_is_none() throws Exception {
    try (Meter meter = open("speaks: lines\nsends: key\nanswer-ms: 5000\n")) {
      pair.send("4");
      Thread key =
          new Thread(
              () -> {
                try {
                  Thread.sleep(300);
                  pair.send("7.12 Ohm\r");
                  Thread.sleep(300);
                  pair.send("47.13 Ohm\r");
                } catch (Exception e) {
                  Thread.currentThread().interrupt();
                }
              });
      Thread.sleep(100);
      key.start();
      assertEquals("47.13 Ohm", meter.read(meter.byKey(), 4000).raw());
    }
  }

  /** Between two presses of its key there is nothing to hear. */
  @Test
  void a_trial_of_a_meter_with_a_key_ends_in_its_time_and_is_no_silence() throws Exception {
    try (Meter meter = open("speaks: lines\nsends: key\nanswer-ms: 60000\n")) {
      pair.send("0.31 Ohm\r\n");
      Trial trial = Trial.of(meter, new SystemTicks(), 1000);
      assertEquals(1, trial.samples().size());
      assertEquals(Optional.empty(), trial.trouble());
      Trial nothing = Trial.of(meter, new SystemTicks(), 1000);
      assertTrue(nothing.trouble().orElseThrow().failure().isSilence());
    }
  }

  @Test
  void a_trial_shows_what_came_before_the_meter_fell_silent() throws Exception {
    Thread talk = pair.sendAlways(50, () -> "0.31 Ohm\r\n");
    try (Meter meter = open(STREAM)) {
      Thread stop =
          new Thread(
              () -> {
                try {
                  Thread.sleep(1200);
                } catch (InterruptedException e) {
                  Thread.currentThread().interrupt();
                }
                talk.interrupt();
              });
      stop.start();
      Trial trial = Trial.of(meter, new SystemTicks(), 2500);
      assertTrue(trial.trouble().orElseThrow().failure().isSilence());
      assertTrue(trial.samples().size() > 10);
      assertTrue(trial.noiseOhms().isPresent());
    }
  }

  @Test
  void a_tester_that_names_no_volts_is_told() throws Exception {
    pair.sendAlways(30, () -> "5.00 MOhm\r\n");
    try (Meter meter = open(STREAM + "with: volts\n")) {
      MeterTrouble trouble =
          assertThrows(MeterTrouble.class, () -> meter.read(meter.byKey(), 3000));
      assertEquals(new Failure.NoVolts("5.00 MOhm"), trouble.failure());
    }
  }

  @Test
  void a_polled_meter_is_asked_with_its_character() throws Exception {
    InputStream asked = pair.toMeter();
    Thread meterSide =
        new Thread(
            () -> {
              try {
                while (asked.read() == 'D') {
                  pair.send("0.312 Ohm\r\n");
                }
              } catch (Exception e) {
                // The cable is pulled.
              }
            });
    meterSide.setDaemon(true);
    meterSide.start();
    try (Meter meter =
        open("speaks: lines\nsends: poll\npoll: D\nending: none\nanswer-ms: 1000\n")) {
      assertEquals("0.312 Ohm", meter.read(meter.byKey(), 4000).raw());
    }
  }

  @Test
  void a_meter_that_is_not_set_to_ohms_is_told() throws Exception {
    pair.sendAlways(30, () -> "DC 1.234 V\r\n");
    try (Meter meter = open(STREAM)) {
      MeterTrouble trouble =
          assertThrows(MeterTrouble.class, () -> meter.read(meter.byKey(), 3000));
      assertEquals(new Failure.OtherQuantity("DC 1.234 V", "V"), trouble.failure());
    }
  }

  @Test
  void lines_that_nobody_can_read_say_that_the_line_is_set_otherwise() throws Exception {
    pair.sendAlways(10, () -> "\u0081\u00fe#\u0003\r\n");
    try (Meter meter = open(STREAM)) {
      MeterTrouble trouble =
          assertThrows(MeterTrouble.class, () -> meter.read(meter.byKey(), 6000));
      assertInstanceOf(Failure.Garbage.class, trouble.failure());
    }
  }

  @Test
  void a_port_that_is_in_use_is_told() throws Exception {
    try (Meter meter = open(STREAM)) {
      MeterTrouble trouble = assertThrows(MeterTrouble.class, () -> open(STREAM));
      assertInstanceOf(Failure.InUse.class, trouble.failure());
      assertEquals("test", meter.identity().profile());
    }
  }

  @Test
  void a_port_that_is_not_there_is_told() {
    MeterTrouble trouble =
        assertThrows(
            MeterTrouble.class, () -> RealMeter.open(folder.resolve("nowhere").toString(), STREAM));
    assertInstanceOf(Failure.NotFound.class, trouble.failure());
  }

  @Test
  @SuppressWarnings("try") // That it is closed is what is tested.
  void a_pulled_cable_is_noticed_within_a_second_and_the_port_found_again() throws Exception {
    pair.sendAlways(50, () -> "0.31 Ohm\r\n");
    List<String> heard = new CopyOnWriteArrayList<>();
    CountDownLatch first = new CountDownLatch(5);
    CountDownLatch gone = new CountDownLatch(1);
    CountDownLatch back = new CountDownLatch(1);
    try (Meter meter = open(STREAM)) {
      Thread reader =
          new Thread(
              () -> {
                try {
                  meter.stream(
                      new Meter.Listener() {
                        @Override
                        public void sample(Sample sample) {
                          heard.add(sample.raw());
                          first.countDown();
                        }

                        @Override
                        public void gone(MeterTrouble trouble) {
                          gone.countDown();
                        }

                        @Override
                        public void back() {
                          back.countDown();
                        }
                      });
                } catch (MeterTrouble e) {
                  heard.add(e.failure().toString());
                }
              });
      reader.start();
      assertTrue(first.await(5, TimeUnit.SECONDS));
      pair.pull();
      assertTrue(gone.await(1, TimeUnit.SECONDS), "not noticed");
      heard.clear();
      pair.plugIn();
      pair.sendAlways(50, () -> "0.42 Ohm\r\n");
      assertTrue(back.await(5, TimeUnit.SECONDS), "not found again");
      Thread.sleep(700);
      assertTrue(heard.contains("0.42 Ohm"), heard.toString());
      meter.close();
      reader.join(2000);
      assertTrue(!reader.isAlive());
    }
  }

  @Test
  void the_practice_meter_answers_commands_over_a_serial_port() throws Exception {
    PracticeProbes probes = new PracticeProbes(new SystemTicks(), 1);
    PracticeInstrument instrument =
        new PracticeInstrument(probes, (one, other) -> Optional.of(0.2));
    Thread meterSide =
        new Thread(
            () -> {
              try (BufferedReader in =
                  new BufferedReader(
                      new InputStreamReader(pair.toMeter(), StandardCharsets.US_ASCII))) {
                for (String line = in.readLine(); line != null; line = in.readLine()) {
                  Optional<String> answer = instrument.execute(line);
                  if (answer.isPresent()) {
                    pair.send(answer.get() + "\r\n");
                  }
                }
              } catch (Exception e) {
                // The cable is pulled.
              }
            });
    meterSide.setDaemon(true);
    meterSide.start();
    probes.touch(0.31);
    try (Meter meter = open("speaks: scpi\nanswer-ms: 1000\nnoise-ohms: 0.01\n")) {
      MeterReading reading = meter.read(meter.byKey(), 5000);
      // With its leads.
      assertEquals(0.39, reading.measured().value().orElseThrow().ohms(), 0.01);
      assertEquals("ringout,PRACTICE METER,0,1", reading.meter().text());
    }
  }
}
