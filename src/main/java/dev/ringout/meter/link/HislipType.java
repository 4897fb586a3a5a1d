package dev.ringout.meter.link;

import java.util.stream.Stream;

/** IVI-6.1, table of message types. */
public enum HislipType {
  INITIALIZE(0),
  INITIALIZE_RESPONSE(1),
  FATAL_ERROR(2),
  ERROR(3),
  ASYNC_LOCK(4),
  ASYNC_LOCK_RESPONSE(5),
  DATA(6),
  DATA_END(7),
  DEVICE_CLEAR_COMPLETE(8),
  DEVICE_CLEAR_ACKNOWLEDGE(9),
  ASYNC_REMOTE_LOCAL_CONTROL(10),
  ASYNC_REMOTE_LOCAL_RESPONSE(11),
  TRIGGER(12),
  INTERRUPTED(13),
  ASYNC_INTERRUPTED(14),
  ASYNC_MAXIMUM_MESSAGE_SIZE(15),
  ASYNC_MAXIMUM_MESSAGE_SIZE_RESPONSE(16),
  ASYNC_INITIALIZE(17),
  ASYNC_INITIALIZE_RESPONSE(18),
  ASYNC_DEVICE_CLEAR(19),
  ASYNC_SERVICE_REQUEST(20),
  ASYNC_STATUS_QUERY(21),
  ASYNC_STATUS_RESPONSE(22),
  ASYNC_DEVICE_CLEAR_ACKNOWLEDGE(23),
  ASYNC_LOCK_INFO(24),
  ASYNC_LOCK_INFO_RESPONSE(25),
  /** A number that none of these has. */
  OTHER(255);

  private final int number;

  HislipType(int number) {
    this.number = number;
  }

  int number() {
    return number;
  }

  static HislipType of(int number) {
    return Stream.of(values()).filter(one -> one.number == number).findFirst().orElse(OTHER);
  }
}
