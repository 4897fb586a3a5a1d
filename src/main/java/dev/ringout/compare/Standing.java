package dev.ringout.compare;

import dev.ringout.circuit.Circuit;
import dev.ringout.readings.Reading;
import dev.ringout.source.Place;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Which of several readings of one subject stands.
 *
 * @param inForce those that stand, in the order of the files
 * @param replaced the others that were made
 */
record Standing(List<Judged> inForce, List<Replaced> replaced) {
  static Standing of(Circuit circuit, List<Judged> all, JobOfReading jobs) {
    Subjects subjects = Subjects.of(circuit, all);
    List<Judged> inForce = new ArrayList<>(all.size());
    List<Replaced> replaced = new ArrayList<>();
    Judged[] standing = new Judged[all.size()];
    for (int i = 0; i < standing.length; i++) {
      Judged judged = all.get(i);
      int first = subjects.first(i);
      standing[i] = first == i ? standing(subjects.like(i), jobs) : standing[first];
      if (standing[i].equals(judged)) {
        inForce.add(judged);
      } else if (judged.reading().measured().made()) {
        replaced.add(new Replaced(judged, standing[i], saysOtherwise(judged, standing[i])));
      }
    }
    return new Standing(inForce, replaced);
  }

  private static boolean saysOtherwise(Judged earlier, Judged later) {
    return earlier.outcome() != later.outcome() || earlier.observed() != later.observed();
  }

  /**
   * The last one measured: by their days where they differ, then by their times, else by order.
   * What stands in one row was measured at once: there the failing one stands, or one below zero,
   * for with the leads exchanged the same voltage reads as a resistance. So it does where times of
   * day run against the rows, for a clock begins anew at midnight, some at noon. Of a step that was
   * never measured the first: it is named once, however often the sheet asks for it.
   */
  private static Judged standing(List<Judged> same, JobOfReading jobs) {
    if (same.size() == 1) {
      return same.get(0);
    }
    List<Judged> made = same.stream().filter(one -> one.reading().measured().made()).toList();
    if (made.isEmpty()) {
      return same.get(0);
    }
    Judged last = last(made, jobs);
    if (last.outcome().fails()) {
      return last;
    }
    List<Judged> atOnce =
        made.stream().filter(one -> isInRowOf(one, last) || runsAgainstRows(one, last)).toList();
    return atOnce.stream()
        .filter(one -> one.outcome().fails())
        .findFirst()
        .or(() -> atOnce.stream().filter(Standing::isBelowZero).findFirst())
        .orElse(last);
  }

  private static boolean isBelowZero(Judged judged) {
    return judged.reading().measured().isBelowZero();
  }

  private static boolean isInRowOf(Judged one, Judged other) {
    return isOnSheetOf(one, other) && row(one) == row(other);
  }

  private static boolean isOnSheetOf(Judged one, Judged other) {
    Place left = one.reading().place();
    Place right = other.reading().place();
    return left.file().equals(right.file()) && left.sheet().equals(right.sheet());
  }

  private static int row(Judged judged) {
    return judged.reading().place().row();
  }

  private static boolean runsAgainstRows(Judged one, Judged last) {
    return isOnSheetOf(one, last)
        && row(one) > row(last)
        && isOfNoDay(one.reading())
        && isOfNoDay(last.reading());
  }

  private static boolean isOfNoDay(Reading reading) {
    return reading.time().filter(time -> time.day().isEmpty()).isPresent();
  }

  private static Judged last(List<Judged> made, JobOfReading jobs) {
    Judged last = made.get(0);
    for (Judged judged : made) {
      last = isEarlier(judged.reading(), last.reading(), jobs) ? last : judged;
    }
    return last;
  }

  /** By their days where both have one, in one day or one file by their times of day. */
  private static boolean isEarlier(Reading one, Reading other, JobOfReading jobs) {
    Optional<LocalDate> day = jobs.day(one);
    Optional<LocalDate> otherDay = jobs.day(other);
    if (day.isPresent() && otherDay.isPresent() && !day.equals(otherDay)) {
      return day.get().isBefore(otherDay.get());
    }
    return day.isPresent() == otherDay.isPresent()
        && one.time().isPresent()
        && other.time().isPresent()
        && one.time().get().at().toLocalTime().isBefore(other.time().get().at().toLocalTime());
  }
}
