package dev.ringout.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.bench.MeterDesk.Wanted;
import dev.ringout.meter.HowEntered;
import dev.ringout.meter.MeterAddress;
import dev.ringout.meter.MeterReading;
import dev.ringout.meter.Profiles;
import dev.ringout.meter.Settling;
import dev.ringout.meter.Ticks;
import dev.ringout.meter.link.SystemTicks;
import dev.ringout.meter.practice.PracticeChannel;
import dev.ringout.meter.practice.PracticeInstrument;
import dev.ringout.meter.practice.PracticeProbes;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.BooleanSupplier;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** A meter on the bench, its probes in the hands of the test. */
class MeterDeskTest {
  private static final Wanted JOINED = new Wanted("joined", true, Double.POSITIVE_INFINITY);
  private static final Wanted APART = new Wanted("apart", false, Double.POSITIVE_INFINITY);

  private final Ticks ticks = new SystemTicks();
  private final PracticeProbes probes = new PracticeProbes(ticks, 1);
  private final List<String> taken = new CopyOnWriteArrayList<>();
  private final List<HowEntered> how = new CopyOnWriteArrayList<>();
  private final List<String> notKept = new CopyOnWriteArrayList<>();
  private final List<Throwable> defects = new CopyOnWriteArrayList<>();
  private volatile String live = "";
  private volatile boolean stumbles;
  private MeterDesk desk;

  @BeforeEach
  void open() throws Exception {
    desk =
        new MeterDesk(
            new MeterAddress.Practice(),
            new Profiles(Optional.empty()).find("scpi"),
            true,
            (address, profile, transcript) ->
                new PracticeChannel(
                    new PracticeInstrument(probes, (from, to) -> Optional.empty()),
                    transcript,
                    () -> {}),
            ticks,
            new MeterDesk.Hearer() {
              @Override
              public void live(String text, Settling.Stage stage) {
                if (stumbles) {
                  stumbles = false;
                  throw new OutOfMemoryError("of an explanation beside it");
                }
                live = text;
              }

              @Override
              public void taken(String what, MeterReading reading) {
                how.add(reading.entered());
                taken.add(what + " " + BenchWords.value(reading.measured()));
              }

              @Override
              public void changedAfterKey(String what) {
                notKept.add(what);
              }

              @Override
              public void changed() {}

              @Override
              public void defect(Throwable cause) {
                defects.add(cause);
              }
            });
  }

  @AfterEach
  void close() {
    desk.close();
    assertEquals(List.of(), defects);
  }

  private static void until(BooleanSupplier happened) throws InterruptedException {
    for (int i = 0; i < 1500 && !happened.getAsBoolean(); i++) {
      Thread.sleep(10);
    }
    assertTrue(happened.getAsBoolean());
  }

  @Test
  void a_join_is_taken_by_itself_once_for_each_touch() throws Exception {
    desk.want(JOINED);
    Thread.sleep(600);
    probes.touch(0.31);
    until(() -> taken.size() == 1);
    Thread.sleep(1200);
    assertEquals(1, taken.size(), "held on, and not taken again");
    assertEquals(List.of(HowEntered.SETTLED), how);
    probes.lift();
    Thread.sleep(800);
    probes.touch(0.31);
    until(() -> taken.size() == 2);
  }

  /**
   * Memory may be short for a moment; a meter that is then heard no more would be believed idle.
   */
  @Test
  void whatever_goes_wrong_in_the_program_the_meter_is_heard_again() throws Exception {
    stumbles = true;
    until(() -> defects.size() == 1);
    defects.clear();
    live = "";
    desk.want(JOINED);
    until(() -> desk.link() == BenchState.Link.READY && !live.isEmpty());
    Thread.sleep(600);
    probes.touch(0.31);
    until(() -> taken.size() == 1);
  }

  @Test
  void what_the_probes_still_touch_is_no_value_of_the_next_step() throws Exception {
    desk.want(JOINED);
    Thread.sleep(600);
    probes.touch(0.31);
    until(() -> taken.size() == 1);
    desk.want(new Wanted("next", true, Double.POSITIVE_INFINITY));
    Thread.sleep(1500);
    assertEquals(1, taken.size());
  }

  @Test
  void probes_in_the_air_are_taken_by_a_key_alone() throws Exception {
    desk.want(APART);
    Thread.sleep(1200);
    assertEquals(List.of(), taken);
    desk.key("apart");
    until(() -> taken.size() == 1);
    assertEquals(List.of(HowEntered.KEY), how);
    assertTrue(taken.get(0).startsWith("apart OL"), taken.toString());
  }

  /** Found by an attacker: the short was shown, the key pressed, and the probes lifted. */
  @Test
  void a_short_that_was_shown_at_the_key_is_no_open_a_moment_later() throws Exception {
    desk.want(APART);
    probes.touch(0.3);
    until(() -> live.contains("Ω"));
    desk.key("apart");
    probes.lift();
    until(() -> !notKept.isEmpty());
    assertEquals(List.of(), taken);
    desk.key("apart");
    until(() -> taken.size() == 1);
  }

  /** Found by an attacker: the key again and again, the probes still on the first pair. */
  @Test
  void a_key_waits_until_the_probes_were_lifted_from_the_pair_before() throws Exception {
    desk.want(JOINED);
    Thread.sleep(600);
    probes.touch(0.31);
    until(() -> taken.size() == 1);
    desk.want(new Wanted("next", true, Double.POSITIVE_INFINITY));
    Thread.sleep(600);
    assertFalse(desk.isLifted());
    probes.lift();
    until(desk::isLifted);
  }

  /** Found by an attacker: the touch of a poor joint was kept as what the leads have. */
  @Test
  void leads_are_what_is_read_after_the_probes_were_lifted() throws Exception {
    desk.want(APART);
    probes.touch(1.3);
    until(() -> live.contains("Ω"));
    desk.want(new Wanted(BenchMeters.LEADS, true, 5));
    Thread.sleep(1200);
    assertEquals(List.of(), taken);
    probes.lift();
    Thread.sleep(800);
    // With nothing but the leads, 80 mΩ, noise decides whether it begins with a seven.
    probes.touch(0.005);
    until(() -> taken.size() == 1);
    assertTrue(taken.get(0).startsWith("leads 8"), taken.toString());
  }

  @Test
  void a_key_for_another_step_takes_nothing() throws Exception {
    desk.want(APART);
    Thread.sleep(400);
    desk.key("joined");
    Thread.sleep(1000);
    assertEquals(List.of(), taken);
  }
}
