package dev.ringout.circuit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.circuit.UnitMap.Bundle;
import dev.ringout.circuit.UnitMap.Mated;
import dev.ringout.harness.Harness;
import dev.ringout.support.ReadUnit;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class UnitMapTest {
  @TempDir Path folder;

  @Test
  void items_lie_on_the_map_with_what_runs_between_them_and_what_is_plugged_together()
      throws Exception {
    Files.writeString(
        folder.resolve("wires.csv"),
        """
        Wire,From,To,Cable
        W1,J2-A,J10-1,C2
        W2,J10-2,J2-B,C1
        W3,J2-C,J10-3,
        W4,J3-1,J3-2,
        W5,TB1-1,J2-D,C9
        """);
    Files.writeString(
        folder.resolve("items.csv"),
        """
        Ref,Kind,Mates
        J2,plug,J3
        J3,plug,J2
        TB1,strip,X9
        J10,plug,J10
        """);
    Harness harness = ReadUnit.of(folder);
    UnitMap map = UnitMap.of(harness);
    assertEquals(
        List.of(
            new Bundle("J2", "J10", 3, List.of("C1", "C2")),
            new Bundle("J2", "TB1", 1, List.of("C9"))),
        map.bundles());
    assertEquals(List.of(new Mated("J2", "J3")), map.mated());
    assertEquals(List.of("J2", "J3", "J10", "TB1"), List.copyOf(map.places().keySet()));
    map.places()
        .values()
        .forEach(
            place ->
                assertTrue(
                    place.x() >= 0 && place.x() <= 1 && place.y() >= 0 && place.y() <= 1,
                    place::toString));
    assertEquals(map, UnitMap.of(harness), "the same each time");
  }
}
