package dev.ringout.meter;

import java.util.List;
import java.util.stream.IntStream;

/**
 * Which meter it is.
 *
 * @param address as a resource string
 * @param text what it says of itself, such as the answer to {@code *IDN?}; empty where it says
 *     nothing
 * @param profile by which it was spoken to
 * @param practice whether it is no real meter
 */
public record MeterIdentity(String address, String text, String profile, boolean practice) {
  /** What a practice meter of this program says of itself, whatever line lies between. */
  public static final String OF_PRACTICE = "ringout,PRACTICE METER,0,1";

  /** A value that was typed: of the meter nothing is known but what the job says. */
  public static final MeterIdentity TYPED = new MeterIdentity("none", "", "", false);

  /** Maker, model, serial number and version by IEEE 488.2; what is not said is empty. */
  public List<String> fields() {
    String[] fields = text.split(",", -1);
    return IntStream.range(0, 4).mapToObj(i -> i < fields.length ? fields[i].strip() : "").toList();
  }
}
