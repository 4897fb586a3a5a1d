package dev.ringout.store;

import java.util.List;
import java.util.Optional;

/**
 * Something that is one thing in one store and another in the other: nothing of it is copied, and
 * nothing is written over.
 *
 * @param from the first entry of the one that the other does not have; absent where the test as a
 *     whole is meant
 * @param to what the other has in its place
 */
public record Parted(StoreFinding finding, Optional<Entry> from, Optional<Entry> to) {

  /** Of the first entry in which both differ. */
  static Parted at(StoreFinding finding, List<Entry> from, List<Entry> to) {
    int both = common(from, to);
    return new Parted(
        new StoreFinding(
            finding.unit(), finding.session(), finding.file(), both + 1, finding.kind()),
        entry(from, both),
        entry(to, both));
  }

  /** How many entries both have in common. */
  static int common(List<Entry> from, List<Entry> to) {
    int both = 0;
    while (both < Math.min(from.size(), to.size()) && from.get(both).equals(to.get(both))) {
      both++;
    }
    return both;
  }

  private static Optional<Entry> entry(List<Entry> entries, int index) {
    return index < entries.size() ? Optional.of(entries.get(index)) : Optional.empty();
  }
}
