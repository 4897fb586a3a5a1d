package dev.ringout.meter.drive;

import dev.ringout.meter.Failure;
import dev.ringout.meter.MeterAddress;
import dev.ringout.meter.MeterIdentity;
import dev.ringout.meter.MeterProfile;
import dev.ringout.meter.MeterProfile.Sends;
import dev.ringout.meter.MeterTrouble;
import dev.ringout.meter.Sample;
import dev.ringout.meter.Shown;
import dev.ringout.meter.link.Channel;
import dev.ringout.meter.link.Channels;
import dev.ringout.meter.link.Transcript;
import java.util.Optional;

/** A meter that only talks: all the time, by its key, or when it is asked by a character. */
final class TalkSource implements SampleSource {
  /** So many lines in a row that nobody can read: the line is set otherwise. */
  private static final int MOST_UNREADABLE = 8;

  private static final int MOST_OTHERS = 3;

  private final MeterAddress address;
  private final MeterProfile profile;
  private final MeterProfile.Talk words;
  private final Channels channels;
  private final Transcript transcript;
  private Optional<Channel> channel = Optional.empty();
  private boolean mayBeHalf;
  private long lineBeforeMillis;
  private int unreadable;
  private int others;

  TalkSource(
      MeterAddress address,
      MeterProfile profile,
      MeterProfile.Talk words,
      Channels channels,
      Transcript transcript) {
    this.address = address;
    this.profile = profile;
    this.words = words;
    this.channels = channels;
    this.transcript = transcript;
  }

  @Override
  public void open() throws MeterTrouble {
    close();
    channel = Optional.of(channels.open(address, profile, transcript));
    begin("");
  }

  private void begin(String dropped) {
    boolean wasHalf = !dropped.isEmpty() && !dropped.endsWith("\n");
    mayBeHalf = words.sends() == Sends.STREAM || wasHalf;
    lineBeforeMillis = transcript.ticks().millis();
  }

  private Channel channel() throws MeterTrouble {
    return channel.orElseThrow(() -> transcript.trouble(new Failure.Gone(address.text())));
  }

  @Override
  public MeterIdentity identity() {
    return new MeterIdentity(address.text(), "", profile.name(), false);
  }

  @Override
  public void forget() throws MeterTrouble {
    begin(channel().dropPending());
  }

  @Override
  public Sample next(long millis) throws MeterTrouble {
    if (words.sends() == Sends.POLL) {
      channel().dropPending();
      lineBeforeMillis = transcript.ticks().millis();
      channel().send(words.poll());
    }
    long most = profile.timing().answerMillis();
    // Nobody has to press its key; all the time that there is may go by.
    long wait = isByItsKey() ? Math.max(millis, 1) : Math.min(Math.max(millis, 1), most);
    String line = channel().receive(wait);
    if (mayBeHalf) {
      // It had begun before anybody listened, and so had the measurement it tells.
      mayBeHalf = false;
      lineBeforeMillis = transcript.ticks().millis();
      line = channel().receive(isByItsKey() ? wait : most);
    }
    Shown shown = words.read(line);
    count(line, shown);
    long now = transcript.ticks().millis();
    Sample sample = new Sample(lineBeforeMillis, now, transcript.ticks().now(), line, shown);
    lineBeforeMillis = now;
    return sample;
  }

  private void count(String line, Shown shown) throws MeterTrouble {
    unreadable = shown.isReadable() ? 0 : unreadable + 1;
    Optional<Failure> objection = Objection.to(words.poll(), line, shown);
    others = objection.isPresent() && shown.isReadable() ? others + 1 : 0;
    if (objection.isPresent() && (unreadable >= MOST_UNREADABLE || others >= MOST_OTHERS)) {
      throw transcript.trouble(objection.get());
    }
  }

  /** It has no error queue. */
  @Override
  public void confirm() {}

  @Override
  public void recover() throws MeterTrouble {
    unreadable = 0;
    others = 0;
    open();
  }

  @Override
  public boolean isByItsKey() {
    return words.sends() == Sends.KEY;
  }

  @Override
  public void close() {
    channel.ifPresent(Channel::close);
    channel = Optional.empty();
  }
}
