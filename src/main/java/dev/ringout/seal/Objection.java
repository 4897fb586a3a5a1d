package dev.ringout.seal;

/** Why a record can't continue another, whose name each kind knows. */
public sealed interface Objection {

  /** What a record is told about. */
  enum About {
    UNIT,
    LIST
  }

  /** What is made of it, by its kind: a writer that lacks a kind does not compile. */
  <T> T match(Cases<T> cases);

  /** The file name of the record before. */
  String record();

  /** Where it is to be told. */
  default About about() {
    return About.UNIT;
  }

  /** The unit at hand has no serial number, so that nothing tells whether it is the same. */
  record NoSerialNumber(String record) implements Objection {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.noSerialNumber(this);
    }
  }

  /** The seal before does not say of which unit and list it is; somebody may vouch for it. */
  record NothingStated(String record) implements Objection {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.nothingStated(this);
    }
  }

  /** The seal before gives no serial number; somebody may vouch for it. */
  record NumberNotStated(String record) implements Objection {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.numberNotStated(this);
    }
  }

  /** The record before is of another unit. */
  record OtherUnit(String record, String serialNumber, String before) implements Objection {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.otherUnit(this);
    }
  }

  /** One of the two lists has neither drawing nor title; somebody may vouch for it. */
  record ListNotStated(String record) implements Objection {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.listNotStated(this);
    }

    @Override
    public About about() {
      return About.LIST;
    }
  }

  /** The record before was made by another list: both by their drawings, or by their titles. */
  record OtherList(String record, String list, String before) implements Objection {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.otherList(this);
    }

    @Override
    public About about() {
      return About.LIST;
    }
  }

  /**
   * The record before was made by another revision of the list; each blank where none is stated.
   */
  record OtherRevision(String record, String revision, String before) implements Objection {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.otherRevision(this);
    }

    @Override
    public About about() {
      return About.LIST;
    }
  }

  /** One answer for each kind. */
  interface Cases<T> {
    /** See {@link NoSerialNumber}. */
    T noSerialNumber(NoSerialNumber objection);

    /** See {@link NothingStated}. */
    T nothingStated(NothingStated objection);

    /** See {@link NumberNotStated}. */
    T numberNotStated(NumberNotStated objection);

    /** See {@link OtherUnit}. */
    T otherUnit(OtherUnit objection);

    /** See {@link ListNotStated}. */
    T listNotStated(ListNotStated objection);

    /** See {@link OtherList}. */
    T otherList(OtherList objection);

    /** See {@link OtherRevision}. */
    T otherRevision(OtherRevision objection);
  }
}
