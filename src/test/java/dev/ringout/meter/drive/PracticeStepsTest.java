package dev.ringout.meter.drive;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.harness.Harness;
import dev.ringout.harness.SwitchState;
import dev.ringout.harness.Wire;
import dev.ringout.jobs.FileInputs;
import dev.ringout.meter.HowEntered;
import dev.ringout.meter.MeterAddress;
import dev.ringout.meter.MeterReading;
import dev.ringout.meter.Profiles;
import dev.ringout.meter.Settling.Stage;
import dev.ringout.meter.link.Channels;
import dev.ringout.meter.link.SystemTicks;
import dev.ringout.meter.link.Transcript;
import dev.ringout.meter.practice.PracticeChannel;
import dev.ringout.meter.practice.PracticeInstrument;
import dev.ringout.meter.practice.PracticeProbes;
import dev.ringout.meter.practice.PracticeServer;
import dev.ringout.meter.practice.PracticeUnit;
import dev.ringout.readings.Side;
import dev.ringout.standards.Tables;
import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** Step by step at a practice meter: lifted, touched, settled, taken. */
@Timeout(60)
class PracticeStepsTest {
  private static final Path LIST = Path.of("harness-samples/swing-bridge/junction-box.xlsx");
  private static final double LEADS_OHMS = 0.08;

  @Test
  void each_step_takes_the_value_of_its_own_pair() throws Exception {
    Harness box = new FileInputs(List.of(LIST)).soundHarness(LIST).orElseThrow();
    PracticeUnit unit = PracticeUnit.of(box, Tables.published(), 1, 0);
    SystemTicks ticks = new SystemTicks();
    PracticeProbes probes = new PracticeProbes(ticks, 1);
    PracticeInstrument instrument = new PracticeInstrument(probes, (from, to) -> Optional.empty());
    Set<Stage> stages = new LinkedHashSet<>();
    try (Meter meter =
        Meter.open(
            MeterAddress.of("practice"),
            new Profiles(Optional.empty()).find("scpi"),
            false,
            (address, profile, transcript) -> new PracticeChannel(instrument, transcript, () -> {}),
            new Transcript(ticks, line -> {}))) {
      for (Wire wire : box.wires().subList(0, 5)) {
        Side from = new Side.Points(List.of(wire.from()));
        Side to = new Side.Points(List.of(wire.to()));
        unit.probe(probes, from, to, SwitchState.normal());
        MeterReading reading =
            meter.read(meter.joined(), 10_000, (sample, stage) -> stages.add(stage));
        double expected = unit.ohms(from, to, SwitchState.normal()) + LEADS_OHMS;
        assertEquals(expected, reading.measured().value().orElseThrow().ohms(), 0.004, wire.name());
        assertEquals(HowEntered.SETTLED, reading.entered());
        assertTrue(reading.meter().practice());
      }
    }
    assertEquals(List.of(Stage.LIFT, Stage.OPEN, Stage.TOUCHED, Stage.TAKEN), List.copyOf(stages));
  }

  @Test
  void a_practice_meter_is_one_over_a_network_too() throws Exception {
    SystemTicks ticks = new SystemTicks();
    PracticeInstrument instrument =
        new PracticeInstrument(new PracticeProbes(ticks, 1), (from, to) -> Optional.empty());
    try (PracticeServer server = new PracticeServer(instrument, 0, 0);
        Meter meter =
            Meter.open(
                MeterAddress.of("127.0.0.1:" + server.rawPort()),
                new Profiles(Optional.empty()).find("scpi"),
                false,
                Channels.real(),
                new Transcript(ticks, line -> {}))) {
      assertTrue(meter.identity().practice());
    }
  }
}
