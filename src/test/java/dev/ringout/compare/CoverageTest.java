package dev.ringout.compare;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.compare.Coverage.Tally;
import java.lang.reflect.Constructor;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A unit conforms only where nothing that its list requires is left. */
class CoverageTest {
  private static final Tally ALL = new Tally(2, 2);
  private static final Tally ONE_LEFT = new Tally(2, 1);
  private static final RecordComponent[] COMPONENTS = Coverage.class.getRecordComponents();

  /** All is proven, but the tally at a place among the components. */
  private static Coverage allBut(int left) throws ReflectiveOperationException {
    Object[] values = new Object[COMPONENTS.length];
    for (int i = 0; i < values.length; i++) {
      boolean isTally = COMPONENTS[i].getType() == Tally.class;
      values[i] = isTally ? i == left ? ONE_LEFT : ALL : List.of();
    }
    Constructor<Coverage> constructor =
        Coverage.class.getDeclaredConstructor(
            Arrays.stream(COMPONENTS).map(RecordComponent::getType).toArray(Class<?>[]::new));
    return constructor.newInstance(values);
  }

  @Test
  void nothing_left_is_complete() throws ReflectiveOperationException {
    assertTrue(allBut(-1).isComplete());
  }

  @Test
  void one_left_of_any_sort_that_is_counted_is_not_complete() throws ReflectiveOperationException {
    for (int i = 0; i < COMPONENTS.length; i++) {
      if (COMPONENTS[i].getType() == Tally.class) {
        assertFalse(allBut(i).isComplete(), COMPONENTS[i].getName());
      }
    }
  }

  @Test
  void a_gap_of_a_sort_that_nobody_counts_is_not_complete() {
    List<Unproven> gap = List.of(new Unproven.Join(0, 1));
    assertFalse(new Coverage(ALL, ALL, ALL, ALL, ALL, ALL, gap, List.of()).isComplete());
  }
}
