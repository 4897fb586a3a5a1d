package dev.ringout.words;

import dev.ringout.seal.Objection;
import dev.ringout.source.OptionNames;
import dev.ringout.units.Text;

/** Why a record can't continue another, in words. */
public final class ObjectionSentences implements Objection.Cases<String> {
  private ObjectionSentences() {}

  /** The sentence. */
  public static String of(Objection objection) {
    return objection.match(new ObjectionSentences());
  }

  @Override
  public String noSerialNumber(Objection.NoSerialNumber objection) {
    return Text.of(
        "there is no serial number, so nobody knows whether this is the unit of %s;"
            + " write the row \"serial number\" on the job sheet",
        objection.record());
  }

  @Override
  public String nothingStated(Objection.NothingStated objection) {
    return notShown(objection, "its seal does not say of which unit and list it is");
  }

  @Override
  public String numberNotStated(Objection.NumberNotStated objection) {
    return notShown(objection, "its seal gives no serial number");
  }

  @Override
  public String otherUnit(Objection.OtherUnit objection) {
    return Text.of(
        "unit %s can't continue %s, which is of unit %s",
        objection.serialNumber(), objection.record(), objection.before());
  }

  @Override
  public String listNotStated(Objection.ListNotStated objection) {
    return notShown(
        objection,
        "nothing shows whether it was made by this list: it has no drawing number or title");
  }

  @Override
  public String otherList(Objection.OtherList objection) {
    return Text.of(
        "the list is %s; %s was made by the list %s",
        objection.list(), objection.record(), objection.before());
  }

  @Override
  public String otherRevision(Objection.OtherRevision objection) {
    return Text.of(
        "the list is of %s; %s was made by %s of it; to continue it all the same, say %s",
        revision(objection.revision()),
        objection.record(),
        revision(objection.before()),
        OptionNames.ANY_REVISION);
  }

  private static String notShown(Objection objection, String why) {
    return Text.of(
        "%s can't be continued: %s; if you know that it is the same, vouch for it with"
            + " %s, which the record will say",
        objection.record(), why, OptionNames.SAME_UNIT);
  }

  private static String revision(String revision) {
    return revision.isBlank() ? "no stated revision" : "revision " + revision;
  }
}
