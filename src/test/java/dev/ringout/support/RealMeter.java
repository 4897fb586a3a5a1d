package dev.ringout.support;

import dev.ringout.meter.Exchange;
import dev.ringout.meter.MeterAddress;
import dev.ringout.meter.MeterProfileText;
import dev.ringout.meter.MeterTrouble;
import dev.ringout.meter.drive.Meter;
import dev.ringout.meter.link.Channels;
import dev.ringout.meter.link.SystemTicks;
import dev.ringout.meter.link.Transcript;
import java.util.function.Consumer;

/** A meter over a real link, spoken to by a profile that a test writes. */
public final class RealMeter {
  private RealMeter() {}

  /** Opens it. */
  public static Meter open(String address, String profile) throws MeterTrouble {
    return open(address, profile, line -> {});
  }

  /** Opens it; each line of the talk is heard. */
  public static Meter open(String address, String profile, Consumer<Exchange> listener)
      throws MeterTrouble {
    return Meter.open(
        MeterAddress.of(address),
        MeterProfileText.read("test", profile),
        false,
        Channels.real(),
        new Transcript(new SystemTicks(), listener));
  }
}
