package dev.ringout.diagnose;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.ringout.diagnose.Fault.Alternative;
import dev.ringout.diagnose.Fault.Finding;
import dev.ringout.diagnose.Fault.HighResistance;
import dev.ringout.harness.Point;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What else a fault may be is not lost where one thing more comes to it. */
class FindingTest {
  private static final Point J1_1 = new Point("J1", "1");
  private static final Point J1_2 = new Point("J1", "2");
  private static final Point J1_3 = new Point("J1", "3");
  private static final List<SlipFact> BRIDGE = List.of(new SlipFact.Bridge(J1_1, J1_2));
  private static final List<SlipFact> OTHER_BRIDGE = List.of(new SlipFact.Bridge(J1_1, J1_3));

  private static Finding finding() {
    return Finding.alone(Certainty.CERTAIN, List.of(), List.of(new Alternative(0.4, BRIDGE)));
  }

  @Test
  void what_comes_to_it_takes_its_share_of_all_that_was_there() {
    Finding beside = finding().beside(List.of(new Alternative(0.5, OTHER_BRIDGE)));

    assertEquals(
        List.of(new Alternative(0.5, OTHER_BRIDGE), new Alternative(0.2, BRIDGE)),
        beside.alternatives());
    assertEquals(Certainty.LIKELY, beside.certainty());
  }

  @Test
  void what_was_there_already_is_not_said_twice() {
    assertEquals(
        List.of(new Alternative(0.4, BRIDGE)),
        finding().beside(List.of(new Alternative(0.5, BRIDGE))).alternatives());
  }

  @Test
  void a_poor_joint_keeps_what_else_it_may_be() {
    HighResistance high =
        new HighResistance(finding(), List.of(), List.of(J1_1, J1_2), 1, 3)
            .beside(List.of(new Alternative(0.5, OTHER_BRIDGE)));

    assertEquals(2, high.finding().alternatives().size());
  }
}
