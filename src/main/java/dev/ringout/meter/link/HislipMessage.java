package dev.ringout.meter.link;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;

/**
 * A message of IVI-6.1: a header of 16 bytes, and what it carries.
 *
 * @param control the control code
 * @param parameter the message parameter
 * @param payload what it carries, a character for each byte
 */
public record HislipMessage(HislipType type, int control, int parameter, String payload) {
  /** The bytes of a header. */
  public static final int HEADER = 16;

  /** The message of a client's first query, and of the first after a device clear. */
  public static final int FIRST_ID = 0xffffff00;

  /** A message that carries nothing. */
  public static HislipMessage of(HislipType type, int control, int parameter) {
    return new HislipMessage(type, control, parameter, "");
  }

  /** As it goes over the line. */
  public byte[] bytes() {
    byte[] carried = payload.getBytes(StandardCharsets.ISO_8859_1);
    return ByteBuffer.allocate(HEADER + carried.length)
        .put((byte) 'H')
        .put((byte) 'S')
        .put((byte) type.number())
        .put((byte) control)
        .putInt(parameter)
        .putLong(carried.length)
        .put(carried)
        .array();
  }

  /** Whether bytes begin a header. */
  public static boolean isHeader(byte[] header) {
    return header[0] == 'H' && header[1] == 'S';
  }

  /** How much follows a header. */
  public static long payloadLength(byte[] header) {
    return ByteBuffer.wrap(header).getLong(8);
  }

  /** The message of a header and what followed it. */
  public static HislipMessage of(byte[] header, byte[] payload) {
    return new HislipMessage(
        HislipType.of(header[2] & 0xff),
        header[3] & 0xff,
        ByteBuffer.wrap(header).getInt(4),
        new String(payload, StandardCharsets.ISO_8859_1));
  }

  /** Eight bytes, as sizes are carried. */
  public static String size(long size) {
    byte[] bytes = ByteBuffer.allocate(8).putLong(size).array();
    return new String(bytes, StandardCharsets.ISO_8859_1);
  }
}
