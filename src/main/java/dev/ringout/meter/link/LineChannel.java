package dev.ringout.meter.link;

import dev.ringout.meter.Exchange.Kind;
import dev.ringout.meter.Failure;
import dev.ringout.meter.MeterProfile.Ending;
import dev.ringout.meter.MeterTrouble;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.Deque;

/** Lines over a stream of bytes, however they come in pieces; CR, LF or both end one. */
final class LineChannel implements Channel {
  /** Far longer than any reading. */
  static final int LONGEST = 4096;

  /** What lay unread for hours is read away in less. */
  private static final long DROP_MILLIS = 2000;

  private static final int MOST_TOLD = 20;

  /** So many lines go out before an answer is waited for. */
  private static final int MOST_ECHOES = 8;

  private final WatchedLink link;
  private final Ending ending;
  private final Transcript transcript;
  private final byte[] piece = new byte[2048];
  private final byte[] begun = new byte[LONGEST];
  private int begunLength;
  private final Deque<String> whole = new ArrayDeque<>();
  private final Deque<String> sent = new ArrayDeque<>();
  private String blank = "";

  LineChannel(ByteLink link, Ending ending, String address, Transcript transcript) {
    this.link = new WatchedLink(link, address, transcript);
    this.ending = ending;
    this.transcript = transcript;
  }

  @Override
  public void send(String line) throws MeterTrouble {
    link.write((line + ending.characters()).getBytes(StandardCharsets.ISO_8859_1));
    transcript.add(Kind.SENT, line);
    sent.addLast(line.strip());
    if (sent.size() > MOST_ECHOES) {
      sent.removeFirst();
    }
  }

  @Override
  public String receive(long millis) throws MeterTrouble {
    long end = transcript.ticks().millis() + millis;
    blank = "";
    while (whole.isEmpty()) {
      transcript.stopIfInterrupted();
      long left = end - transcript.ticks().millis();
      if (left <= 0) {
        throw late(millis);
      }
      fill((int) Math.min(left, ByteLink.SLICE_MILLIS));
    }
    String line = whole.remove();
    transcript.add(Kind.RECEIVED, line);
    return line;
  }

  private MeterTrouble late(long millis) {
    if (begunLength == 0) {
      return transcript.trouble(
          blank.isEmpty() ? new Failure.Silent("", millis) : new Failure.Garbage("", blank));
    }
    String half = text(begun, begunLength);
    transcript.add(Kind.DROPPED, half);
    begunLength = 0;
    return transcript.trouble(new Failure.HalfLine(half, millis));
  }

  /** Takes what comes within so long; gives whether anything did. */
  private boolean fill(int waitMillis) throws MeterTrouble {
    int length = link.read(piece, waitMillis);
    for (int i = 0; i < length; i++) {
      take(piece[i]);
    }
    return length > 0;
  }

  private void take(byte one) throws MeterTrouble {
    if (one == '\n' || one == '\r') {
      String line = text(begun, begunLength);
      begunLength = 0;
      if (line.isBlank()) {
        blank = line + (char) one;
      } else if (sent.remove(line.strip())) {
        // Its own echo, as serial links have it, answers nothing.
        transcript.add(Kind.DROPPED, line);
      } else {
        whole.add(line);
      }
      return;
    }
    if (begunLength == LONGEST) {
      String beginning = text(begun, 60);
      transcript.add(Kind.DROPPED, text(begun, begunLength));
      begunLength = 0;
      throw transcript.trouble(new Failure.TooLong(beginning, LONGEST));
    }
    begun[begunLength++] = one;
  }

  /** Meters write what they like above 127: as UTF-8 where it is, else byte by byte. */
  private static String text(byte[] bytes, int length) {
    try {
      return StandardCharsets.UTF_8
          .newDecoder()
          .decode(ByteBuffer.wrap(bytes, 0, length))
          .toString();
    } catch (CharacterCodingException e) {
      return new String(bytes, 0, length, StandardCharsets.ISO_8859_1);
    }
  }

  @Override
  public String dropPending() throws MeterTrouble {
    long latest = transcript.ticks().millis() + DROP_MILLIS;
    while (fill(1)) {
      transcript.stopIfInterrupted();
      while (whole.size() > MOST_TOLD) {
        whole.remove();
      }
      if (transcript.ticks().millis() > latest) {
        // It talks faster than it is read: what comes next may be of any time before.
        throw transcript.trouble(new Failure.Unasked("", text(begun, begunLength)));
      }
    }
    StringBuilder lines = new StringBuilder();
    whole.forEach(line -> lines.append(line).append('\n'));
    String pending = lines + text(begun, begunLength);
    whole.clear();
    begunLength = 0;
    if (!pending.isEmpty()) {
      transcript.add(Kind.DROPPED, pending.strip());
    }
    return pending;
  }

  @Override
  public boolean clear() {
    return false;
  }

  @Override
  public void close() {
    link.close();
  }
}
