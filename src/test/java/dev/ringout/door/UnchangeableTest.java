package dev.ringout.door;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import dev.ringout.Ringout;
import dev.ringout.jobs.CheckJob;
import dev.ringout.jobs.DiffJob;
import dev.ringout.jobs.LotJob;
import dev.ringout.jobs.PlanJob;
import dev.ringout.jobs.RecordJob;
import dev.ringout.jobs.ReviewJob;
import dev.ringout.jobs.TraceJob;
import dev.ringout.jobs.UnitRequest;
import dev.ringout.jobs.UnitRequest.Touched;
import dev.ringout.jobs.WorkJob;
import java.lang.reflect.RecordComponent;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What an answer says can't be changed by whoever was given it, nor by whoever asked. */
class UnchangeableTest {
  private static final Path SAMPLES = Path.of("harness-samples/swing-bridge");
  private static final Path LIST = SAMPLES.resolve("junction-box.xlsx");
  private static final UnitRequest UNIT =
      UnitRequest.of(LIST, List.of(SAMPLES.resolve("point-to-point.xlsx")));

  @TempDir private Path folder;

  private final IdentityHashMap<Object, Boolean> seen = new IdentityHashMap<>();
  private final Set<String> changeable = new TreeSet<>();

  @Test
  void no_list_and_no_map_of_an_answer_can_be_changed() throws Exception {
    Ringout ringout = Ringout.onFiles();
    walk("check", ringout.check(CheckJob.Request.of(UNIT)));
    walk("plan", ringout.plan(PlanJob.Request.whole(UNIT)));
    walk("record", ringout.record(RecordJob.Request.of(UNIT, folder.resolve("record.html"))));
    walk("diff", ringout.diff(DiffJob.Request.of(LIST, SAMPLES.resolve("junction-box-c.xlsx"))));
    walk(
        "review",
        ringout.review(
            new ReviewJob.Request(
                LIST, Optional.empty(), LocalDate.of(2027, 1, 1), Optional.empty())));
    walk(
        "trace",
        ringout.trace(new TraceJob.Request(LIST, List.of("J1-A", "J2-1"), "", Optional.empty())));
    walk(
        "lot",
        ringout.lot(LotJob.Request.of(LIST, List.of(SAMPLES.resolve("point-to-point.xlsx")))));
    walk("work", ringout.work(new WorkJob.Request(LIST, List.of(), "wire", Optional.empty())));
    assertEquals(Set.of(), changeable);
  }

  /** Looks into records of the program and into what they hold. */
  private void walk(String way, Object from) throws ReflectiveOperationException {
    if (seen.put(from, true) != null) {
      return;
    }
    if (from instanceof Optional<?> some && some.isPresent()) {
      walk(way, some.get());
    } else if (from instanceof Collection<?> some) {
      note(way, some.getClass());
      for (Object each : List.copyOf(some)) {
        walk(way, each);
      }
    } else if (from instanceof Map<?, ?> some) {
      note(way, some.getClass());
      for (Object each : List.copyOf(some.values())) {
        walk(way, each);
      }
    } else if (from.getClass().isRecord() && from.getClass().getName().startsWith("dev.ringout.")) {
      for (RecordComponent part : from.getClass().getRecordComponents()) {
        part.getAccessor().setAccessible(true);
        Object held = part.getAccessor().invoke(from);
        if (held != null) {
          walk(from.getClass().getName().substring(12) + "." + part.getName(), held);
        }
      }
    }
  }

  private void note(String way, Class<?> type) {
    if (!type.getName().matches("java\\.util\\.(ImmutableCollections|Collections)\\$.*")) {
      changeable.add(way);
    }
  }

  @Test
  void a_request_stays_as_it_was_made() {
    List<String> wires = new ArrayList<>(List.of("W012"));
    Touched touched = new Touched(wires, List.of());
    wires.clear();
    assertEquals(List.of("W012"), touched.wires());
    List<Path> readings = new ArrayList<>(List.of(LIST));
    UnitRequest unit = UnitRequest.of(LIST, readings);
    readings.clear();
    assertEquals(List.of(LIST), unit.readings());
    assertThrows(UnsupportedOperationException.class, () -> unit.readings().clear());
  }
}
