package dev.ringout.meter;

/** Why a meter gives no reading. */
public sealed interface Failure {

  /** What is made of it, by its kind. */
  <T> T match(Cases<T> cases);

  /** Whether opening the link again may help: the meter itself said nothing against it. */
  default boolean isOfTheLink() {
    return false;
  }

  /** Whether nothing came at all. */
  default boolean isSilence() {
    return false;
  }

  /** Whether it says no more than that something came which answers nothing. */
  default boolean isStray() {
    return false;
  }

  /** Whether the time for it was over. */
  default boolean isEndOfTime() {
    return false;
  }

  /** Whether somebody stopped it. */
  default boolean isInterruption() {
    return false;
  }

  /** The same with what was asked, where that was not known. */
  default Failure asking(String asked) {
    return this;
  }

  /** The text is no address. */
  record NoAddress(String text) implements Failure {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.noAddress(this);
    }
  }

  /** There is nothing to open: what it shows is typed. */
  record NoLink() implements Failure {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.noLink(this);
    }
  }

  /** No profile of that name, or one that can't be read. */
  record NoProfile(String name, String why) implements Failure {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.noProfile(this);
    }
  }

  /** Nobody listens at the address. */
  record Refused(String address) implements Failure {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.refused(this);
    }

    @Override
    public boolean isOfTheLink() {
      return true;
    }
  }

  /**
   * The address can't be reached, or the port is not there.
   *
   * @param why as the system says it, or empty
   */
  record NotFound(String address, String why) implements Failure {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.notFound(this);
    }

    @Override
    public boolean isOfTheLink() {
      return true;
    }
  }

  /** Another reader has the port. */
  record InUse(String address) implements Failure {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.inUse(this);
    }
  }

  /** The part of the library that the system runs can't be unpacked or loaded. */
  record NoSerial(String why) implements Failure {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.noSerial(this);
    }
  }

  /** The link broke: the cable was pulled, the other side hung up. */
  record Gone(String address) implements Failure {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.gone(this);
    }

    @Override
    public boolean isOfTheLink() {
      return true;
    }
  }

  /** Nothing came in time. */
  record Silent(String asked, long millis) implements Failure {
    @Override
    public boolean isSilence() {
      return true;
    }

    @Override
    public Failure asking(String other) {
      return new Silent(other, millis);
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.silent(this);
    }

    @Override
    public boolean isOfTheLink() {
      return true;
    }
  }

  /** A line began and never ended. */
  record HalfLine(String begun, long millis) implements Failure {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.halfLine(this);
    }

    @Override
    public boolean isOfTheLink() {
      return true;
    }
  }

  /** A line longer than any reading. */
  record TooLong(String begun, int most) implements Failure {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.tooLong(this);
    }

    @Override
    public boolean isOfTheLink() {
      return true;
    }
  }

  /** What came is no answer to what was asked. */
  record Garbage(String asked, String received) implements Failure {
    @Override
    public Failure asking(String other) {
      return asked.isEmpty() ? new Garbage(other, received) : this;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.garbage(this);
    }

    @Override
    public boolean isOfTheLink() {
      return true;
    }
  }

  /** More came than was asked for, or an answer to something else: none of it can be believed. */
  record Unasked(String asked, String received) implements Failure {
    @Override
    public boolean isStray() {
      return true;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.unasked(this);
    }

    @Override
    public boolean isOfTheLink() {
      return true;
    }
  }

  /** The meter's error queue held something. */
  record Queued(String after, String error) implements Failure {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.queued(this);
    }
  }

  /** Another meter answers than the one that was opened. */
  record OtherMeter(String before, String now) implements Failure {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.otherMeter(this);
    }
  }

  /** The meter is not set to ohms. */
  record OtherQuantity(String received, String unit) implements Failure {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.otherQuantity(this);
    }
  }

  /**
   * The meter is not set as it was set when it was opened: a key at it was pressed.
   *
   * @param asked what asks for it
   */
  record SetOtherwise(String asked, String before, String now) implements Failure {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.setOtherwise(this);
    }
  }

  /** No value settled in time. */
  record Unsettled(long millis, String last) implements Failure {
    @Override
    public boolean isEndOfTime() {
      return true;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.unsettled(this);
    }
  }

  /** Lines came in time, and none of them was a value. */
  record NoValue(long millis, String last) implements Failure {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.noValue(this);
    }
  }

  /** An insulation tester says ohms, and not the volts at which they are. */
  record NoVolts(String received) implements Failure {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.noVolts(this);
    }
  }

  /**
   * The leads were to be measured, and the probes were not together.
   *
   * @param read what settled, or empty
   */
  record NotTogether(String read) implements Failure {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.notTogether(this);
    }
  }

  /** What was measured can't be written down. */
  record NotKept(String folder, String why) implements Failure {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.notKept(this);
    }
  }

  /** Somebody stopped it. */
  record Interrupted() implements Failure {
    @Override
    public boolean isInterruption() {
      return true;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.interrupted(this);
    }
  }

  /** One answer for each kind. */
  interface Cases<T> {
    /** See {@link NoAddress}. */
    T noAddress(NoAddress failure);

    /** See {@link NoLink}. */
    T noLink(NoLink failure);

    /** See {@link NoProfile}. */
    T noProfile(NoProfile failure);

    /** See {@link Refused}. */
    T refused(Refused failure);

    /** See {@link NotFound}. */
    T notFound(NotFound failure);

    /** See {@link InUse}. */
    T inUse(InUse failure);

    /** See {@link NoSerial}. */
    T noSerial(NoSerial failure);

    /** See {@link Gone}. */
    T gone(Gone failure);

    /** See {@link Silent}. */
    T silent(Silent failure);

    /** See {@link HalfLine}. */
    T halfLine(HalfLine failure);

    /** See {@link TooLong}. */
    T tooLong(TooLong failure);

    /** See {@link Garbage}. */
    T garbage(Garbage failure);

    /** See {@link Unasked}. */
    T unasked(Unasked failure);

    /** See {@link Queued}. */
    T queued(Queued failure);

    /** See {@link OtherMeter}. */
    T otherMeter(OtherMeter failure);

    /** See {@link OtherQuantity}. */
    T otherQuantity(OtherQuantity failure);

    /** See {@link SetOtherwise}. */
    T setOtherwise(SetOtherwise failure);

    /** See {@link Unsettled}. */
    T unsettled(Unsettled failure);

    /** See {@link NoValue}. */
    T noValue(NoValue failure);

    /** See {@link NoVolts}. */
    T noVolts(NoVolts failure);

    /** See {@link NotTogether}. */
    T notTogether(NotTogether failure);

    /** See {@link NotKept}. */
    T notKept(NotKept failure);

    /** See {@link Interrupted}. */
    T interrupted(Interrupted failure);
  }
}
