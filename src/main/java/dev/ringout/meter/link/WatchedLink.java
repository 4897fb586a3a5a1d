package dev.ringout.meter.link;

import dev.ringout.meter.Exchange.Kind;
import dev.ringout.meter.Failure;
import dev.ringout.meter.MeterTrouble;
import java.io.IOException;

/** A link that tells as a failure of the meter at its address that it is gone. */
final class WatchedLink {
  private final ByteLink link;
  private final String address;
  private final Transcript transcript;

  WatchedLink(ByteLink link, String address, Transcript transcript) {
    this.link = link;
    this.address = address;
    this.transcript = transcript;
  }

  /** Writes, unless somebody stopped the thread. */
  void write(byte[] bytes) throws MeterTrouble {
    transcript.stopIfInterrupted();
    try {
      link.write(bytes);
    } catch (IOException e) {
      throw gone();
    }
  }

  /** Reads what there is, after a short wait; gives how much. */
  int read(byte[] into, int waitMillis) throws MeterTrouble {
    int came;
    try {
      came = link.read(into, waitMillis);
    } catch (IOException e) {
      throw gone();
    }
    if (came < 0) {
      throw gone();
    }
    return came;
  }

  private MeterTrouble gone() {
    transcript.add(Kind.LINK, "gone");
    return transcript.trouble(new Failure.Gone(address));
  }

  void close() {
    link.close();
  }
}
