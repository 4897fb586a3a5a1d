package dev.ringout.meter.link;

import dev.ringout.meter.Exchange.Kind;
import dev.ringout.meter.Failure;
import dev.ringout.meter.MeterAddress;
import dev.ringout.meter.MeterProfile;
import dev.ringout.meter.MeterTrouble;

/** Opens the link of an address. */
public interface Channels {
  /**
   * Opens.
   *
   * @throws MeterTrouble where it can't be
   */
  Channel open(MeterAddress address, MeterProfile profile, Transcript transcript)
      throws MeterTrouble;

  /** Links to real meters. */
  static Channels real() {
    return (address, profile, transcript) -> {
      transcript.add(Kind.LINK, "open " + address.text());
      return address.match(new Opening(profile, transcript)).now();
    };
  }

  /** What opens a link, once it is asked to. */
  interface Open {
    /** The link. */
    Channel now() throws MeterTrouble;
  }

  /** One way for each kind of address. */
  record Opening(MeterProfile profile, Transcript transcript) implements MeterAddress.Cases<Open> {
    @Override
    public Open socket(MeterAddress.Socket to) {
      int millis = profile.timing().connectMillis();
      return () -> lines(TcpLink.connect(to.host(), to.port(), millis, to.text(), transcript), to);
    }

    @Override
    public Open hislip(MeterAddress.Hislip to) {
      return () -> HislipChannel.open(to, profile.timing().connectMillis(), transcript);
    }

    @Override
    public Open serial(MeterAddress.Serial to) {
      return () -> lines(SerialLink.open(to.port(), profile.line(), to.text(), transcript), to);
    }

    @Override
    public Open typed(MeterAddress.Typed to) {
      return this::nothing;
    }

    @Override
    public Open practice(MeterAddress.Practice to) {
      return this::nothing;
    }

    private Channel nothing() throws MeterTrouble {
      throw transcript.trouble(new Failure.NoLink());
    }

    private Channel lines(ByteLink link, MeterAddress to) {
      return new LineChannel(link, profile.ending(), to.text(), transcript);
    }
  }
}
