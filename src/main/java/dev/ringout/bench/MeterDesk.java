package dev.ringout.bench;

import dev.ringout.bench.BenchState.Link;
import dev.ringout.meter.MeterAddress;
import dev.ringout.meter.MeterIdentity;
import dev.ringout.meter.MeterProfile;
import dev.ringout.meter.MeterReading;
import dev.ringout.meter.MeterTrouble;
import dev.ringout.meter.Profiles;
import dev.ringout.meter.Sample;
import dev.ringout.meter.Settling;
import dev.ringout.meter.Ticks;
import dev.ringout.meter.drive.Meter;
import dev.ringout.meter.link.Channels;
import dev.ringout.meter.link.Transcript;
import dev.ringout.readings.Measured;
import dev.ringout.words.MeterWords;
import java.util.Optional;

/**
 * One meter of the bench: it is heard all along, and what it says becomes a reading only for the
 * step that was asked when the probes began to touch.
 */
final class MeterDesk implements AutoCloseable {
  /** A lost meter is looked for again after so long. */
  private static final long PAUSE_MILLIS = 1500;

  /** The key of a meter that is pressed twice by mistake is pressed within it. */
  private static final long TWICE_MILLIS = 500;

  /**
   * What was shown when a key was pressed may still have moved so much (common practice, no
   * source).
   */
  private static final double OTHER_TIMES = 1.5;

  private static final double OTHER_OHMS = 0.5;

  private static final String ANY_PROFILE = "scpi";

  private static final String PRACTICE_METER =
      "This is a practice meter: what it reads is not a value of a real unit.";
  private static final String NO_PRACTICE_METER =
      "This is a real meter: a practice unit is read by a practice meter.";

  private final Ticks ticks;
  private final Channels channels;
  private final Hearer hearer;
  private final boolean practice;
  private final MeterAddress address;
  private final MeterProfile profile;
  private final Thread thread;
  private volatile boolean closed;
  private volatile Link link;
  private volatile String trouble = "";
  private volatile Optional<Meter> meter = Optional.empty();
  private volatile Optional<MeterIdentity> identity = Optional.empty();

  /** What is waited for; guarded by this. */
  private Wanted wanted = Wanted.NOTHING;

  private Settling settling;
  private boolean byKey;
  private Optional<Sample> shown = Optional.empty();
  private Optional<Sample> shownAtKey = Optional.empty();
  private long sinceMillis;

  /** Who hears the meter. */
  interface Hearer {
    /** What it shows now. */
    void live(String text, Settling.Stage stage);

    /** A value for what was waited for. */
    void taken(String what, MeterReading reading);

    /** What stands still after a key is another thing than what was shown when it was pressed. */
    void changedAfterKey(String what);

    /** Its state is another. */
    void changed();

    /** The program made a mistake while it heard. */
    void defect(Throwable cause);
  }

  /**
   * What is waited for.
   *
   * @param what the step's name, or the leads
   * @param byItself whether a value that has settled is taken by itself
   * @param mostOhms what is above it is not waited for
   */
  record Wanted(String what, boolean byItself, double mostOhms) {
    static final Wanted NOTHING = new Wanted("", false, Double.POSITIVE_INFINITY);

    /** A step of a test. */
    static Wanted step(String asked, AskedStep step) {
      return new Wanted(asked, step.isTakenByItself(), Double.POSITIVE_INFINITY);
    }
  }

  MeterDesk(
      MeterAddress address,
      MeterProfile profile,
      boolean practice,
      Channels channels,
      Ticks ticks,
      Hearer hearer) {
    this.practice = practice;
    this.address = address;
    this.profile = profile;
    this.channels = channels;
    this.ticks = ticks;
    this.hearer = hearer;
    this.settling = Settling.start(Settling.Rule.joined(profile.display()), Long.MAX_VALUE);
    boolean typed = address.equals(new MeterAddress.Typed());
    this.link = typed ? Link.TYPED : Link.OPENING;
    this.thread = new Thread(this::run, "meter " + address.text());
    if (!typed) {
      thread.setDaemon(true);
      thread.start();
    }
  }

  MeterAddress address() {
    return address;
  }

  MeterProfile profile() {
    return profile;
  }

  Link link() {
    return link;
  }

  String trouble() {
    return trouble;
  }

  Optional<MeterIdentity> identity() {
    return identity;
  }

  static MeterProfile profile(Profiles profiles, MeterAddress address, Optional<String> name)
      throws MeterTrouble {
    // Where values are typed nothing is read by it.
    String usual = Profiles.usual(address);
    return profiles.find(name.orElse(usual.isEmpty() ? ANY_PROFILE : usual));
  }

  /** Waits for another value from now on: what was heard before is of the points before. */
  synchronized void want(Wanted other) {
    if (wanted.equals(other)) {
      return;
    }
    wanted = other;
    byKey = false;
    shownAtKey = Optional.empty();
    restart();
  }

  /**
   * Whether the probes were seen open since the value before: else they may still be on that pair.
   */
  synchronized boolean isLifted() {
    return byKey || settling.stage() != Settling.Stage.LIFT;
  }

  /** Takes what the probes touch from now on, open too, by a key. */
  synchronized void key(String what) {
    if (wanted.what().equals(what)) {
      byKey = true;
      shownAtKey = shown;
      restart();
    }
  }

  /** After a value was taken the probes have to be lifted before the next. */
  synchronized void again() {
    byKey = false;
    shownAtKey = Optional.empty();
    restart();
  }

  private void restart() {
    long lag = byKey ? profile.timing().settleMillis() : 0;
    Settling.Rule rule =
        byKey ? Settling.Rule.byKey(profile.display()) : Settling.Rule.joined(profile.display());
    sinceMillis = ticks.millis();
    settling = Settling.start(rule, sinceMillis + lag);
  }

  private void run() {
    while (!closed) {
      try (Meter open =
          Meter.open(address, profile, false, channels, new Transcript(ticks, line -> {}))) {
        meter = Optional.of(open);
        if (open.identity().practice() == practice) {
          identity = Optional.of(open.identity());
          set(Link.READY, "");
          open.lead(new Lead(open));
        } else {
          set(Link.LOST, practice ? NO_PRACTICE_METER : PRACTICE_METER);
        }
      } catch (MeterTrouble e) {
        lost(e);
      } catch (RuntimeException | Error e) {
        hearer.defect(e);
        set(Link.LOST, "The program made a mistake here; it tries again.");
      } finally {
        meter = Optional.empty();
      }
      pause();
    }
  }

  private void lost(MeterTrouble e) {
    if (!closed) {
      set(Link.LOST, MeterWords.failure(e.failure()));
    }
  }

  private void pause() {
    try {
      if (!closed) {
        Thread.sleep(PAUSE_MILLIS);
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      closed = true;
    }
  }

  private void set(Link other, String why) {
    link = other;
    trouble = why;
    hearer.changed();
  }

  /** Chooses, and tells. */
  private final class Lead implements Meter.Leader {
    private final Meter open;
    private String chosenFor = "";
    private String changedAfter = "";
    private boolean chosenByKey;

    Lead(Meter open) {
      this.open = open;
    }

    @Override
    public Optional<Sample> choose(Sample sample) {
      Settling.Stage stage;
      Optional<Sample> chosen;
      String changed;
      synchronized (MeterDesk.this) {
        settling = settling.after(sample);
        changedAfter = "";
        chosen = chosen(sample);
        changed = changedAfter;
        shown = sample.measured().isPresent() ? Optional.of(sample) : shown;
        stage = settling.stage();
        chosenFor = wanted.what();
        chosenByKey = byKey;
      }
      hearer.live(MeterWords.shown(sample.shown()), stage);
      if (!changed.isEmpty()) {
        hearer.changedAfterKey(changed);
      }
      return chosen;
    }

    private Optional<Sample> chosen(Sample sample) {
      if (wanted.equals(Wanted.NOTHING)) {
        return Optional.empty();
      }
      if (open.isByItsKey()) {
        boolean late = sample.millis() >= sinceMillis + TWICE_MILLIS;
        return sample.measured().filter(measured -> late).map(measured -> sample);
      }
      Optional<Sample> settled = byKey || wanted.byItself() ? settling.taken() : Optional.empty();
      if (settled.isPresent() && isTooMuch(settled.get())) {
        restart();
        return Optional.empty();
      }
      if (settled.isPresent() && isOther(settled.get())) {
        again();
        changedAfter = wanted.what();
        return Optional.empty();
      }
      return settled;
    }

    /** A short that was shown is no open because the probes were lifted a moment later. */
    private boolean isOther(Sample settled) {
      boolean ofAStep = Double.isInfinite(wanted.mostOhms());
      return byKey
          && ofAStep
          && shownAtKey.isPresent()
          && isOther(shownAtKey.get().measured().orElseThrow(), settled.measured().orElseThrow());
    }

    private static boolean isOther(Measured one, Measured other) {
      if (isOpen(one) || isOpen(other)) {
        return isOpen(one) != isOpen(other);
      }
      double least = Math.min(one.atLeastOhms(), other.atLeastOhms());
      double most = Math.max(one.atLeastOhms(), other.atLeastOhms());
      return most > OTHER_TIMES * least + OTHER_OHMS;
    }

    private static boolean isOpen(Measured measured) {
      return measured.isOverRange() || measured.moreThan().isPresent();
    }

    private boolean isTooMuch(Sample sample) {
      double ohms = sample.measured().map(Measured::atLeastOhms).orElse(0.0);
      boolean open = sample.measured().map(Measured::isOverRange).orElse(false);
      return wanted.mostOhms() < Double.POSITIVE_INFINITY && (open || ohms > wanted.mostOhms());
    }

    @Override
    public boolean isByKey() {
      return chosenByKey;
    }

    @Override
    public void taken(MeterReading reading) {
      synchronized (MeterDesk.this) {
        if (!wanted.what().equals(chosenFor)) {
          return;
        }
        again();
      }
      hearer.taken(chosenFor, reading);
    }

    @Override
    public void gone(MeterTrouble e) {
      synchronized (MeterDesk.this) {
        settling = settling.afterGap();
      }
      lost(e);
    }

    @Override
    public void back() {
      synchronized (MeterDesk.this) {
        again();
      }
      set(Link.READY, "");
    }
  }

  @Override
  public void close() {
    closed = true;
    meter.ifPresent(Meter::close);
    thread.interrupt();
  }
}
