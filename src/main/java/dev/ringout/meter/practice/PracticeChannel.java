package dev.ringout.meter.practice;

import dev.ringout.meter.Exchange.Kind;
import dev.ringout.meter.Failure;
import dev.ringout.meter.MeterTrouble;
import dev.ringout.meter.link.Channel;
import dev.ringout.meter.link.Transcript;
import java.util.ArrayDeque;
import java.util.Deque;

/** A practice meter without a line between: the address {@code practice}. */
public final class PracticeChannel implements Channel {
  private final PracticeInstrument instrument;
  private final Transcript transcript;
  private final Runnable whenClosed;
  private final Deque<String> answers = new ArrayDeque<>();

  /** A link to a practice meter. */
  public PracticeChannel(
      PracticeInstrument instrument, Transcript transcript, Runnable whenClosed) {
    this.instrument = instrument;
    this.transcript = transcript;
    this.whenClosed = whenClosed;
  }

  @Override
  public void send(String line) throws MeterTrouble {
    transcript.add(Kind.SENT, line);
    try {
      instrument.execute(line).ifPresent(answers::add);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw transcript.trouble(new Failure.Interrupted());
    }
  }

  @Override
  public String receive(long millis) throws MeterTrouble {
    if (answers.isEmpty()) {
      throw transcript.trouble(new Failure.Silent("", millis));
    }
    String line = answers.remove();
    transcript.add(Kind.RECEIVED, line);
    return line;
  }

  @Override
  public String dropPending() {
    String pending = String.join("\n", answers);
    answers.clear();
    return pending;
  }

  @Override
  public boolean clear() {
    answers.clear();
    return true;
  }

  @Override
  public void close() {
    answers.clear();
    whenClosed.run();
  }
}
