package dev.ringout.seal;

import dev.ringout.units.Text;
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

  /** What a record is told about. */
  public enum About {
    UNIT,
    LIST
  }

  /** Why a record can't continue another. */
  public record Objection(About about, String text) {}

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
      objections.add(
          new Objection(
              About.UNIT,
              Text.of(
                  "no serial number is stated, so nothing tells whether this is the unit of %s;"
                      + " write the row \"serial number\" on the job sheet",
                  name)));
    }
    if (earlier.isEmpty()) {
      if (!sameUnit) {
        objections.add(
            notShown(About.UNIT, name, "its seal does not say of which unit and list it is"));
      }
      return new Continuation(List.copyOf(objections), sameUnit);
    }
    TestedUnit before = earlier.get();
    boolean vouchedFor = false;
    if (before.serialNumber.isBlank()) {
      vouchedFor = sameUnit;
      if (!sameUnit) {
        objections.add(notShown(About.UNIT, name, "its seal gives no serial number"));
      }
    } else if (!serialNumber.isBlank() && !same(serialNumber, before.serialNumber)) {
      objections.add(
          new Objection(
              About.UNIT,
              Text.of(
                  "unit %s can't continue %s, which is of unit %s",
                  serialNumber, name, before.serialNumber)));
    }
    Optional<Boolean> sameList = sameList(before);
    if (sameList.isEmpty()) {
      vouchedFor |= sameUnit;
      if (!sameUnit) {
        objections.add(
            notShown(
                About.LIST,
                name,
                "nothing tells whether it was made by this list, for want of a drawing or title"));
      }
    } else if (!sameList.get()) {
      objections.add(
          new Objection(
              About.LIST,
              Text.of(
                  "the list is %s; %s was made by the list %s",
                  named(before), name, before.named(this))));
    }
    if (!anyRevision && sameList.orElse(true) && !same(revision, before.revision)) {
      objections.add(
          new Objection(
              About.LIST,
              Text.of(
                  "the list is of %s; %s was made by %s of it; to continue it all the same, say"
                      + " --any-revision",
                  revisionInWords(), name, before.revisionInWords())));
    }
    return new Continuation(List.copyOf(objections), vouchedFor);
  }

  private static Objection notShown(About about, String name, String why) {
    return new Objection(
        about,
        Text.of(
            "%s can't be continued: %s; if you know that it is the same, vouch for it with"
                + " --same-unit, which the record will say",
            name, why));
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

  private String revisionInWords() {
    return revision.isBlank() ? "no stated revision" : "revision " + revision;
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
