package dev.ringout.meter.link;

import dev.ringout.meter.Exchange;
import dev.ringout.meter.Failure;
import dev.ringout.meter.MeterTrouble;
import dev.ringout.meter.Ticks;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.function.Consumer;

/** What was sent and received last, line by line. */
public final class Transcript {
  private static final int KEPT = 12;
  private static final int LONGEST = 200;

  private final Ticks ticks;
  private final Consumer<Exchange> listener;
  private final Deque<Exchange> last = new ArrayDeque<>();
  private final long startMillis;

  /** A transcript that also tells each line as it comes. */
  public Transcript(Ticks ticks, Consumer<Exchange> listener) {
    this.ticks = ticks;
    this.listener = listener;
    this.startMillis = ticks.millis();
  }

  /** One line more. */
  public void add(Exchange.Kind kind, String text) {
    String shown = text.length() > LONGEST ? text.substring(0, LONGEST) + "\u2026" : text;
    Exchange exchange = new Exchange(ticks.millis() - startMillis, kind, shown);
    synchronized (last) {
      last.addLast(exchange);
      if (last.size() > KEPT) {
        last.removeFirst();
      }
    }
    listener.accept(exchange);
  }

  /** A failure with what went before it. */
  public MeterTrouble trouble(Failure failure) {
    synchronized (last) {
      return new MeterTrouble(failure, List.copyOf(last));
    }
  }

  /** Whether somebody stopped the thread, which is then told as a failure. */
  void stopIfInterrupted() throws MeterTrouble {
    if (Thread.currentThread().isInterrupted()) {
      throw trouble(new Failure.Interrupted());
    }
  }

  /** The clock. */
  public Ticks ticks() {
    return ticks;
  }
}
