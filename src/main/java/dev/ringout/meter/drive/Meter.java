package dev.ringout.meter.drive;

import dev.ringout.meter.Failure;
import dev.ringout.meter.MeterAddress;
import dev.ringout.meter.MeterIdentity;
import dev.ringout.meter.MeterProfile;
import dev.ringout.meter.MeterReading;
import dev.ringout.meter.MeterTrouble;
import dev.ringout.meter.Sample;
import dev.ringout.meter.Settling;
import dev.ringout.meter.Shown;
import dev.ringout.meter.link.Channels;
import dev.ringout.meter.link.Transcript;
import java.util.Optional;
import java.util.concurrent.locks.ReentrantLock;

/**
 * A meter that is open. Every call ends: in its time, or when its thread is interrupted, or when
 * another thread closes the meter. Two threads never read from it at once.
 */
public final class Meter implements AutoCloseable {
  private static final int MOST_RECOVERIES = 5;
  private static final long PAUSE_MILLIS = 150;

  private final SampleSource source;
  private final MeterProfile profile;
  private final Transcript transcript;
  private final ReentrantLock reader = new ReentrantLock();
  private volatile boolean closed;
  private long endMillis = Long.MAX_VALUE;
  private boolean broken;

  private Meter(SampleSource source, MeterProfile profile, Transcript transcript) {
    this.source = source;
    this.profile = profile;
    this.transcript = transcript;
  }

  /** Hears what a meter says all along. */
  public interface Listener {
    /** One value. */
    void sample(Sample sample);

    /** The link broke; it is looked for. */
    void gone(MeterTrouble trouble);

    /** The link is back, and the same meter answers. */
    void back();
  }

  /**
   * Opens a meter and makes it ready.
   *
   * @param fourWire whether it is to read over four wires where it can
   * @throws MeterTrouble where it can't be opened, or is none
   */
  public static Meter open(
      MeterAddress address,
      MeterProfile profile,
      boolean fourWire,
      Channels channels,
      Transcript transcript)
      throws MeterTrouble {
    SampleSource source =
        profile
            .language()
            .match(
                new MeterProfile.LanguageCases<>() {
                  @Override
                  public SampleSource scpi(MeterProfile.Scpi words) {
                    return new ScpiSource(address, profile, words, fourWire, channels, transcript);
                  }

                  @Override
                  public SampleSource talk(MeterProfile.Talk words) {
                    return new TalkSource(address, profile, words, channels, transcript);
                  }
                });
    source.open();
    return new Meter(source, profile, transcript);
  }

  /** Which meter it is. */
  public MeterIdentity identity() {
    return source.identity();
  }

  /** By which profile it is spoken to. */
  public MeterProfile profile() {
    return profile;
  }

  /** What is waited for where points should be joined. */
  public Settling.Rule joined() {
    return Settling.Rule.joined(profile.display());
  }

  /** What is waited for after a key. */
  public Settling.Rule byKey() {
    return Settling.Rule.byKey(profile.display());
  }

  /**
   * One settled value, of what the probes touch from now on.
   *
   * @throws MeterTrouble where none settles in time, or the meter can't be believed
   */
  public MeterReading read(Settling.Rule rule, long millis) throws MeterTrouble {
    return read(rule, millis, (sample, stage) -> {});
  }

  /** Sees what is read until a value settles. */
  public interface Live {
    /** One value, and how far it is after it. */
    void seen(Sample sample, Settling.Stage stage);
  }

  /**
   * One settled value, of what the probes touch from now on; each value before it is shown.
   *
   * @throws MeterTrouble where none settles in time, or the meter can't be believed
   */
  public MeterReading read(Settling.Rule rule, long millis, Live live) throws MeterTrouble {
    return alone(() -> settled(rule, millis, live));
  }

  private MeterReading settled(Settling.Rule rule, long millis, Live live) throws MeterTrouble {
    long start = transcript.ticks().millis();
    source.endAt(start + millis);
    // Within its own delay a meter may still show what the probes touched before the key.
    int lagMillis = rule.byKey() ? profile.timing().settleMillis() : 0;
    Settling settling = Settling.start(rule, start + lagMillis);
    Recovery recovery = new Recovery(start + millis);
    String last = "";
    Optional<MeterTrouble> unmended = Optional.empty();
    boolean fresh = false;
    while (true) {
      long left = start + millis - transcript.ticks().millis();
      if (left <= 0) {
        throw late(unmended, millis, last);
      }
      try {
        if (!fresh) {
          mendIfBroken();
          source.forget();
          fresh = true;
        }
        Sample sample = source.next(left);
        last = sample.raw();
        unmended = Optional.empty();
        settling = settling.after(sample);
        live.seen(sample, settling.stage());
        Optional<Sample> taken =
            source.isByItsKey() ? sample.measured().map(one -> sample) : settling.taken();
        if (taken.isPresent()) {
          source.confirm();
          return reading(taken.get(), rule.byKey());
        }
      } catch (MeterTrouble e) {
        if (e.failure().isEndOfTime()) {
          throw late(unmended, millis, last);
        }
        recovery.after(e);
        unmended = Optional.of(e);
        settling = settling.afterGap();
        fresh = false;
      }
    }
  }

  private MeterTrouble late(Optional<MeterTrouble> unmended, long millis, String last) {
    return unmended.orElse(transcript.trouble(new Failure.Unsettled(millis, last)));
  }

  /** An answer to what was asked before a failure may still be on its way. */
  private void mendIfBroken() throws MeterTrouble {
    if (broken) {
      source.recover();
      broken = false;
    }
  }

  /**
   * Looks whether the meter itself has something against its last value.
   *
   * @throws MeterTrouble where it has
   */
  void confirm() throws MeterTrouble {
    alone(
        () -> {
          source.confirm();
          return true;
        });
  }

  MeterReading reading(Sample sample, boolean byKey) {
    Shown.Resistance shown = sample.shown().resistance().orElseThrow();
    return new MeterReading(
        sample.raw(),
        shown.measured(),
        shown.volts(),
        sample.at(),
        identity(),
        source.entered(byKey));
  }

  /** Brings the link back, a few times within the time of one reading. */
  final class Recovery {
    private final long endMillis;
    private int left = MOST_RECOVERIES;

    Recovery(long endMillis) {
      this.endMillis = endMillis;
    }

    void after(MeterTrouble trouble) throws MeterTrouble {
      refuseIfClosed();
      boolean isOver = transcript.ticks().millis() >= endMillis;
      if (!trouble.failure().isOfTheLink() || left-- <= 0 || isOver) {
        throw trouble;
      }
      while (true) {
        try {
          source.recover();
          broken = false;
          return;
        } catch (MeterTrouble e) {
          refuseIfClosed();
          boolean late = transcript.ticks().millis() + PAUSE_MILLIS >= endMillis;
          if (late || e.failure().isEndOfTime()) {
            throw trouble;
          }
          if (!e.failure().isOfTheLink()) {
            throw e;
          }
          pause();
        }
      }
    }
  }

  private void pause() throws MeterTrouble {
    try {
      Thread.sleep(PAUSE_MILLIS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw transcript.trouble(new Failure.Interrupted());
    }
  }

  private void refuseIfClosed() throws MeterTrouble {
    if (closed || Thread.currentThread().isInterrupted()) {
      throw transcript.trouble(new Failure.Interrupted());
    }
  }

  /** One value as it is, settled or not; the next that the meter sent since the one before. */
  public Sample sample(long millis) throws MeterTrouble {
    return alone(
        () -> {
          mendIfBroken();
          return source.next(millis);
        });
  }

  /** From that time on nothing more is asked, and no broken link looked for. */
  Recovery endAt(long millis) {
    endMillis = millis;
    return new Recovery(millis);
  }

  /** Brings the link back after a failure. */
  void recover(Recovery recovery, MeterTrouble trouble) throws MeterTrouble {
    alone(
        () -> {
          recovery.after(trouble);
          return true;
        });
  }

  /** Whether it says nothing before somebody presses its key. */
  public boolean isByItsKey() {
    return source.isByItsKey();
  }

  /**
   * Tells all values until its thread is interrupted or the meter is closed; a link that breaks is
   * looked for until it is back.
   *
   * @throws MeterTrouble where the meter itself has something against it, or another answers
   */
  public void stream(Listener listener) throws MeterTrouble {
    lead(
        new Leader() {
          @Override
          public Optional<Sample> choose(Sample sample) {
            listener.sample(sample);
            return Optional.empty();
          }

          @Override
          public boolean isByKey() {
            return false;
          }

          @Override
          public void taken(MeterReading reading) {
            throw new IllegalStateException("nothing was chosen");
          }

          @Override
          public void gone(MeterTrouble trouble) {
            listener.gone(trouble);
          }

          @Override
          public void back() {
            listener.back();
          }
        });
  }

  /** Hears what a meter says all along, and chooses what of it is a reading. */
  public interface Leader {
    /** Hears one value; gives the one that is a reading now, absent while none is. */
    Optional<Sample> choose(Sample sample);

    /** Whether what was chosen last was chosen by a key. */
    boolean isByKey();

    /** The meter itself has nothing against what was chosen. */
    void taken(MeterReading reading);

    /** The link broke; it is looked for. What was heard before agrees with nothing that comes. */
    void gone(MeterTrouble trouble);

    /** The link is back, and the same meter answers. */
    void back();
  }

  /**
   * Tells all values, and makes a reading of each that is chosen, until its thread is interrupted
   * or the meter is closed; a link that breaks is looked for until it is back.
   *
   * @throws MeterTrouble where the meter itself has something against it, or another answers
   */
  public void lead(Leader leader) throws MeterTrouble {
    alone(
        () -> {
          source.forget();
          while (!closed && !Thread.currentThread().isInterrupted()) {
            try {
              Optional<Sample> chosen = leader.choose(source.next(profile.timing().answerMillis()));
              if (chosen.isPresent()) {
                source.confirm();
                leader.taken(reading(chosen.get(), leader.isByKey()));
              }
            } catch (MeterTrouble e) {
              if (closed || e.failure().isInterruption()) {
                return "";
              }
              leader.gone(e);
              new Recovery(Long.MAX_VALUE).after(e);
              leader.back();
            }
          }
          return "";
        });
  }

  private interface Call<T> {
    T now() throws MeterTrouble;
  }

  private <T> T alone(Call<T> call) throws MeterTrouble {
    if (reader.isHeldByCurrentThread() || !reader.tryLock()) {
      throw transcript.trouble(new Failure.InUse(identity().address()));
    }
    try {
      source.endAt(endMillis);
      return call.now();
    } catch (MeterTrouble e) {
      broken |= e.failure().isOfTheLink() || e.failure().isInterruption();
      throw e;
    } finally {
      reader.unlock();
    }
  }

  /** Closes it; who reads from it is told. */
  @Override
  public void close() {
    closed = true;
    source.close();
  }
}
