package dev.ringout.jobs;

import dev.ringout.revision.Change;
import dev.ringout.revision.Difference;
import dev.ringout.revision.HeaderChange;
import dev.ringout.revision.NetChange;
import dev.ringout.revision.ReworkOrder;
import dev.ringout.revision.Risk;
import dev.ringout.revision.Unsure;
import dev.ringout.work.WorkPapers;
import java.util.List;
import java.util.Optional;

/**
 * All that is to be said of two revisions.
 *
 * @param fromReadings whether a list was built from readings, so that only nets are compared
 * @param difference from the unit as it is to the later revision
 * @param header what the headers of the two revisions have otherwise and counts as a difference
 * @param unsure what makes one doubt that the right lists, or the right wires, were compared
 * @param rework what is to be done to it
 * @param risks power and ground joined on the way; absent where the work is too large to walk
 * @param plus the papers of the wires that are made new
 * @param minus the papers of the wires that come out
 * @param splices the papers of the splices that are new, with all their wires
 * @param retests the readings to take again; none where nothing is opened
 * @param field what the unit has that the earlier revision has not, where a list of it was given
 */
public record RevisionPaper(
    boolean fromReadings,
    Difference difference,
    List<HeaderChange> header,
    List<Unsure> unsure,
    ReworkOrder rework,
    Optional<List<Risk>> risks,
    WorkPapers plus,
    WorkPapers minus,
    Optional<WorkPapers> splices,
    List<Retest> retests,
    Optional<FieldChanges> field) {

  /** Whether nothing at all differs. */
  public boolean isEmpty() {
    return difference.isEmpty() && header.isEmpty();
  }

  /**
   * What somebody changed in the field.
   *
   * @param changes from the earlier revision to the unit
   * @param done changes of the later revision that are already there
   * @param undone work of the list above that takes a field change away
   * @param nets nets that the unit joins otherwise, where its list was built from readings and
   *     knows no wires
   */
  public record FieldChanges(
      List<Change> changes, List<Change> done, List<Change> undone, List<NetChange> nets) {}
}
