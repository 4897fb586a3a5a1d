package dev.ringout.revision;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * What of a revision's changes a unit has already: what the later revision wants and no work on the
 * unit has still to bring about. That a unit no longer is as the earlier revision has it is not
 * enough: the field may have moved a wire somewhere else.
 */
public final class AlreadyThere implements Change.Cases<Optional<Change>> {
  private final Set<ChangeIdentity> work;
  private final StillOwed owed;

  private AlreadyThere(Difference revision, Difference work) {
    this.work = identities(work);
    owed = StillOwed.of(work, identities(revision));
  }

  /**
   * The changes that are there already; of a wire with one end where it should be, that end's move.
   *
   * @param revision from the earlier revision to the later
   * @param work from the unit to the later revision
   */
  public static List<Change> of(Difference revision, Difference work) {
    AlreadyThere there = new AlreadyThere(revision, work);
    return revision.changes().stream().flatMap(one -> one.match(there).stream()).toList();
  }

  private static Set<ChangeIdentity> identities(Difference difference) {
    return difference.changes().stream()
        .map(ChangeIdentity::of)
        .collect(Collectors.toCollection(HashSet::new));
  }

  private Optional<Change> unlessOwed(Change change) {
    return work.contains(ChangeIdentity.of(change)) ? Optional.empty() : Optional.of(change);
  }

  private static Optional<Change> onlyIf(boolean there, Change change) {
    return there ? Optional.of(change) : Optional.empty();
  }

  @Override
  public Optional<Change> removed(Change.Removed change) {
    return owed.takesOutElsewhere(change.wire()) ? Optional.empty() : unlessOwed(change);
  }

  @Override
  public Optional<Change> added(Change.Added change) {
    return onlyIf(owed.isAsMade(change.wire()), change);
  }

  @Override
  public Optional<Change> moved(Change.Moved change) {
    List<Change.MovedEnd> there =
        change.ends().stream().filter(end -> owed.has(change.after(), end.to())).toList();
    return onlyIf(!there.isEmpty(), new Change.Moved(change.before(), change.after(), there));
  }

  @Override
  public Optional<Change> renumbered(Change.Renumbered change) {
    return onlyIf(owed.hasNumber(change.after()), change);
  }

  @Override
  public Optional<Change> altered(Change.Altered change) {
    return onlyIf(owed.has(change.after(), change.field()), change);
  }

  @Override
  public Optional<Change> itemAdded(Change.ItemAdded change) {
    return unlessOwed(change);
  }

  @Override
  public Optional<Change> itemDropped(Change.ItemDropped change) {
    return unlessOwed(change);
  }

  @Override
  public Optional<Change> itemAltered(Change.ItemAltered change) {
    return onlyIf(owed.has(change.after(), change.field()), change);
  }

  @Override
  public Optional<Change> jumper(Change.Jumper change) {
    return unlessOwed(change);
  }

  @Override
  public Optional<Change> switchContact(Change.SwitchContact change) {
    return unlessOwed(change);
  }

  @Override
  public Optional<Change> normalPosition(Change.NormalPosition change) {
    return unlessOwed(change);
  }

  @Override
  public Optional<Change> ofPart(Change.OfPart change) {
    return unlessOwed(change);
  }
}
