package dev.ringout.seal;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Which unit a record is of, and by which list it was tested; each part as written, or empty.
 *
 * @param serialNumber of the unit
 * @param title of the list
 * @param drawing of the list
 * @param revision of the list
 */
public record TestedUnit(String serialNumber, String title, String drawing, String revision) {

  /**
   * Whether a record may continue another.
   *
   * @param objections none where it may
   * @param vouchedFor whether somebody's word stands for what the seal before does not say
   */
  public record Continuation(List<Objection> objections, boolean vouchedFor) {}

  /**
   * Whether a record of this unit may continue another record.
   *
   * @param name of the record before
   * @param earlier what its seal says; absent in seals of the time before units stood in them
   * @param sameUnit whether somebody vouches for what that seal does not say
   * @param anyRevision whether the list may be of another revision
   */
  public Continuation after(
      String name, Optional<TestedUnit> earlier, boolean sameUnit, boolean anyRevision) {
    List<Objection> objections = new ArrayList<>();
    if (serialNumber.isBlank()) {
      objections.add(new Objection.NoSerialNumber(name));
    }
    if (earlier.isEmpty()) {
      if (!sameUnit) {
        objections.add(new Objection.NothingStated(name));
      }
      return new Continuation(List.copyOf(objections), sameUnit);
    }
    TestedUnit before = earlier.get();
    boolean isUnsaid = before.serialNumber.isBlank() || sameList(before).isEmpty();
    ofUnit(name, before, sameUnit).ifPresent(objections::add);
    ofList(name, before, sameUnit).ifPresent(objections::add);
    if (!anyRevision && sameList(before).orElse(true) && !same(revision, before.revision)) {
      objections.add(new Objection.OtherRevision(name, revision, before.revision));
    }
    return new Continuation(List.copyOf(objections), sameUnit && isUnsaid);
  }

  /** Whether both name one unit of one list, whatever its revision. */
  public boolean isSameUnitAs(TestedUnit other) {
    return !serialNumber.isBlank()
        && same(serialNumber, other.serialNumber)
        && sameList(other).orElse(false);
  }

  private Optional<Objection> ofUnit(String name, TestedUnit before, boolean sameUnit) {
    if (before.serialNumber.isBlank()) {
      return sameUnit ? Optional.empty() : Optional.of(new Objection.NumberNotStated(name));
    }
    return serialNumber.isBlank() || same(serialNumber, before.serialNumber)
        ? Optional.empty()
        : Optional.of(new Objection.OtherUnit(name, serialNumber, before.serialNumber));
  }

  private Optional<Objection> ofList(String name, TestedUnit before, boolean sameUnit) {
    Optional<Boolean> sameList = sameList(before);
    if (sameList.isEmpty()) {
      return sameUnit ? Optional.empty() : Optional.of(new Objection.ListNotStated(name));
    }
    return sameList.get()
        ? Optional.empty()
        : Optional.of(new Objection.OtherList(name, named(before), before.named(this)));
  }

  /** By the drawings, else by the titles; absent where neither is stated in both. */
  private Optional<Boolean> sameList(TestedUnit other) {
    if (bothHaveDrawings(other)) {
      return Optional.of(same(drawing, other.drawing));
    }
    return title.isBlank() || other.title.isBlank()
        ? Optional.empty()
        : Optional.of(same(title, other.title));
  }

  private boolean bothHaveDrawings(TestedUnit other) {
    return !drawing.isBlank() && !other.drawing.isBlank();
  }

  private String named(TestedUnit other) {
    return bothHaveDrawings(other) ? drawing : title;
  }

  /** People write a number with blanks or without, in capitals or not. */
  private static boolean same(String one, String other) {
    return key(one).equals(key(other));
  }

  private static String key(String text) {
    return text.replaceAll("[\\s\\u00a0]+", "")
        .toLowerCase(Locale.ROOT)
        .replaceFirst("^0+(?=.)", "");
  }
}
