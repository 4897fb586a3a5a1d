package dev.ringout.revision;

import dev.ringout.harness.Effectivity;
import dev.ringout.harness.Harness;
import java.util.List;

/**
 * A row of the header that two revisions have otherwise, and that makes them two things to build or
 * test by.
 *
 * <p>Title, drawing and revision are other ones by the nature of a revision: they are shown, and
 * are no difference.
 *
 * @param name of the row
 * @param old as the earlier revision has it, or empty
 * @param now as the later has it, or empty
 */
public record HeaderChange(String name, String old, String now) {

  /** What the headers of two revisions have otherwise. */
  public static List<HeaderChange> between(Harness earlier, Harness later) {
    String old = Effectivity.of(earlier);
    String now = Effectivity.of(later);
    return Effectivity.same(old, now)
        ? List.of()
        : List.of(new HeaderChange("effectivity", old, now));
  }
}
