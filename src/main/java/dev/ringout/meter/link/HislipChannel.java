package dev.ringout.meter.link;

import dev.ringout.meter.Exchange.Kind;
import dev.ringout.meter.Failure;
import dev.ringout.meter.MeterAddress;
import dev.ringout.meter.MeterTrouble;
import java.nio.charset.StandardCharsets;

/**
 * HiSLIP in synchronised mode (IVI-6.1): two connections, each message with a number, each answer
 * with the number of what it answers.
 */
final class HislipChannel implements Channel {
  /** Version 1.0, and two letters of who asks that are nobody's. */
  private static final int VERSION_AND_VENDOR = 0x0100_7878;

  private static final int RESPONSE_MESSAGE_DELIVERED = 1;

  private static final int PREFERS_OVERLAP = 1;

  /** Data whose number the server did not know yet. */
  private static final int NOT_YET_KNOWN = 0xffffffff;

  private final int millis;
  private final Transcript transcript;
  private final WatchedLink sync;
  private final WatchedLink async;
  private int nextId = HislipMessage.FIRST_ID;
  private int lastId;
  private boolean delivered;
  private int answeredId;
  private String answered = "";

  private HislipChannel(
      String address, int millis, Transcript transcript, ByteLink sync, ByteLink async) {
    this.millis = millis;
    this.transcript = transcript;
    this.sync = new WatchedLink(sync, address, transcript);
    this.async = new WatchedLink(async, address, transcript);
  }

  /** Connects twice and makes one session of both. */
  static HislipChannel open(MeterAddress.Hislip to, int millis, Transcript transcript)
      throws MeterTrouble {
    String shown = to.text();
    ByteLink sync = TcpLink.connect(to.host(), to.port(), millis, shown, transcript);
    try {
      ByteLink async = TcpLink.connect(to.host(), to.port(), millis, shown, transcript);
      HislipChannel channel = new HislipChannel(shown, millis, transcript, sync, async);
      try {
        channel.initialize(to.device());
        return channel;
      } catch (MeterTrouble e) {
        async.close();
        throw e;
      }
    } catch (MeterTrouble e) {
      sync.close();
      throw e;
    }
  }

  private void initialize(String device) throws MeterTrouble {
    sync.write(new HislipMessage(HislipType.INITIALIZE, 0, VERSION_AND_VENDOR, device).bytes());
    HislipMessage begun = expect(sync, HislipType.INITIALIZE_RESPONSE);
    int session = begun.parameter() & 0xffff;
    async.write(HislipMessage.of(HislipType.ASYNC_INITIALIZE, 0, session).bytes());
    expect(async, HislipType.ASYNC_INITIALIZE_RESPONSE);
    String most = HislipMessage.size(LineChannel.LONGEST);
    async.write(new HislipMessage(HislipType.ASYNC_MAXIMUM_MESSAGE_SIZE, 0, 0, most).bytes());
    expect(async, HislipType.ASYNC_MAXIMUM_MESSAGE_SIZE_RESPONSE);
    transcript.add(Kind.LINK, "session " + session);
    if ((begun.control() & PREFERS_OVERLAP) != 0) {
      // With a device clear both sides agree on one mode; it asks for the synchronised one.
      clear();
    }
  }

  @Override
  public void send(String line) throws MeterTrouble {
    int control = delivered ? RESPONSE_MESSAGE_DELIVERED : 0;
    sync.write(new HislipMessage(HislipType.DATA_END, control, nextId, line + "\n").bytes());
    delivered = false;
    lastId = nextId;
    nextId += 2;
    transcript.add(Kind.SENT, line);
  }

  @Override
  public String receive(long waitMillis) throws MeterTrouble {
    long end = transcript.ticks().millis() + waitMillis;
    StringBuilder text = new StringBuilder();
    String stray = "";
    while (true) {
      HislipMessage message = readAfter(stray, end, waitMillis);
      if (message.type() == HislipType.FATAL_ERROR || message.type() == HislipType.ERROR) {
        transcript.add(Kind.RECEIVED, "error " + message.control() + " " + message.payload());
        throw transcript.trouble(new Failure.Garbage("", message.payload()));
      }
      boolean isData = message.type() == HislipType.DATA || message.type() == HislipType.DATA_END;
      if (!isData || !isAnswer(message)) {
        transcript.add(Kind.DROPPED, message.type() + " " + message.payload().strip());
        refuseIfSecond(message);
        stray = isData ? message.payload().strip() : stray;
        text.setLength(0);
        continue;
      }
      text.append(message.payload());
      if (text.length() > LineChannel.LONGEST) {
        throw transcript.trouble(new Failure.TooLong(text.substring(0, 60), LineChannel.LONGEST));
      }
      if (message.type() == HislipType.DATA_END) {
        delivered = true;
        answeredId = lastId;
        String line = text.toString().strip();
        answered = line;
        transcript.add(Kind.RECEIVED, line);
        return line;
      }
    }
  }

  private HislipMessage readAfter(String stray, long end, long waitMillis) throws MeterTrouble {
    try {
      return read(sync, end, waitMillis);
    } catch (MeterTrouble e) {
      if (stray.isEmpty() || !e.failure().isSilence()) {
        throw e;
      }
      throw transcript.trouble(new Failure.Garbage("", stray));
    }
  }

  /** Two answers to one message that are not the same: neither can be believed. */
  private void refuseIfSecond(HislipMessage message) throws MeterTrouble {
    String second = message.payload().strip();
    if (message.type() == HislipType.DATA_END
        && !answered.isEmpty()
        && message.parameter() == answeredId
        && !second.equals(answered)) {
      throw transcript.trouble(new Failure.Unasked("", second));
    }
  }

  /** An answer to an earlier message is late, whatever it says. */
  private boolean isAnswer(HislipMessage message) {
    return message.parameter() == lastId
        || (message.type() == HislipType.DATA && message.parameter() == NOT_YET_KNOWN);
  }

  /** Nothing to drop: what answers nothing is known by its number. */
  @Override
  public String dropPending() {
    return "";
  }

  @Override
  public boolean clear() throws MeterTrouble {
    transcript.add(Kind.LINK, "device clear");
    async.write(HislipMessage.of(HislipType.ASYNC_DEVICE_CLEAR, 0, 0).bytes());
    HislipMessage agreed = expect(async, HislipType.ASYNC_DEVICE_CLEAR_ACKNOWLEDGE);
    sync.write(
        HislipMessage.of(HislipType.DEVICE_CLEAR_COMPLETE, agreed.control() & 0xfe, 0).bytes());
    expect(sync, HislipType.DEVICE_CLEAR_ACKNOWLEDGE);
    nextId = HislipMessage.FIRST_ID;
    delivered = false;
    answered = "";
    return true;
  }

  /** The next message of a type; others before it are of no more use. */
  private HislipMessage expect(WatchedLink link, HislipType type) throws MeterTrouble {
    long end = transcript.ticks().millis() + millis;
    while (true) {
      HislipMessage message = read(link, end, millis);
      if (message.type() == type) {
        return message;
      }
      transcript.add(Kind.DROPPED, message.type() + " " + message.payload().strip());
      if (message.type() == HislipType.FATAL_ERROR) {
        throw transcript.trouble(new Failure.Garbage(type.toString(), message.payload()));
      }
    }
  }

  private HislipMessage read(WatchedLink link, long end, long waitMillis) throws MeterTrouble {
    byte[] header = read(link, HislipMessage.HEADER, end, waitMillis);
    if (!HislipMessage.isHeader(header)) {
      throw transcript.trouble(
          new Failure.Garbage("", new String(header, StandardCharsets.ISO_8859_1)));
    }
    long length = HislipMessage.payloadLength(header);
    if (length < 0 || length > LineChannel.LONGEST) {
      throw transcript.trouble(new Failure.TooLong("", LineChannel.LONGEST));
    }
    return HislipMessage.of(header, read(link, (int) length, end, waitMillis));
  }

  private byte[] read(WatchedLink link, int length, long end, long waitMillis) throws MeterTrouble {
    byte[] bytes = new byte[length];
    int have = 0;
    while (have < length) {
      transcript.stopIfInterrupted();
      long left = end - transcript.ticks().millis();
      if (left <= 0) {
        throw transcript.trouble(
            have == 0
                ? new Failure.Silent("", waitMillis)
                : new Failure.HalfLine(have + " bytes", waitMillis));
      }
      byte[] piece = new byte[length - have];
      int came = link.read(piece, (int) Math.min(left, ByteLink.SLICE_MILLIS));
      System.arraycopy(piece, 0, bytes, have, came);
      have += came;
    }
    return bytes;
  }

  @Override
  public void close() {
    sync.close();
    async.close();
  }
}
