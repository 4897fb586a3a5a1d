package dev.ringout.plan;

import dev.ringout.compare.Comparison;
import dev.ringout.readings.JobTemplate;
import dev.ringout.readings.Rework;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What a plan is to hold.
 *
 * @param isolation how nets are shown to be apart
 * @param insulation whether an insulation test is planned besides
 * @param byConnector connector after connector as listed, rather than by the least movement
 * @param only the items to whose nets the plan is limited; empty: all
 * @param touched the wires that were worked on: they, every wire of each connector opened for them,
 *     and the isolation there; empty: all
 * @param opened items that were opened besides
 * @param after readings that need not be taken again
 * @param reworks what was opened before the planned readings are taken, by the sheet's own word
 * @param job what the station carries into every test
 */
public record PlanOptions(
    Isolation isolation,
    boolean insulation,
    boolean byConnector,
    Set<String> only,
    Set<String> touched,
    Set<String> opened,
    Optional<Comparison> after,
    List<Rework> reworks,
    JobTemplate job) {
  /** What is given can't be changed afterwards. */
  public PlanOptions {
    only = Collections.unmodifiableSet(new LinkedHashSet<>(only));
    touched = Collections.unmodifiableSet(new LinkedHashSet<>(touched));
    opened = Collections.unmodifiableSet(new LinkedHashSet<>(opened));
  }

  /** A plan of a unit that was not opened since. */
  public PlanOptions(
      Isolation isolation,
      boolean insulation,
      boolean byConnector,
      Set<String> only,
      Set<String> touched,
      Optional<Comparison> after) {
    this(
        isolation,
        insulation,
        byConnector,
        only,
        touched,
        Set.of(),
        after,
        List.of(),
        JobTemplate.NONE);
  }

  /** Everything, by the least movement. */
  public static final PlanOptions ALL =
      new PlanOptions(Isolation.REST, true, false, Set.of(), Set.of(), Optional.empty());

  /** How nets are shown to be apart. */
  public enum Isolation {
    /** Each net against all others tied together: one step less than there are nets. */
    REST,
    /** Half of the nets tied together against the other half: by the bits of their numbers. */
    FIXTURE,
    /** Only pins next to each other, pair by pair. */
    NEIGHBOURS,
    /** By the insulation test alone. */
    INSULATION
  }
}
