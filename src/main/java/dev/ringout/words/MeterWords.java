package dev.ringout.words;

import dev.ringout.meter.Exchange;
import dev.ringout.meter.Failure;
import dev.ringout.meter.LeadNull;
import dev.ringout.meter.Shown;
import dev.ringout.readings.Measured;
import dev.ringout.units.Numbers;
import dev.ringout.units.Ohms;
import dev.ringout.units.Text;

/** What happened with a meter, as sentences, and as codes for programs. */
public final class MeterWords {
  /** The program never does it; who works with such a tester hears so. */
  public static final String VOLTS_BY_HAND =
      "ringout never switches test volts on: that is done at the tester, by hand, with people"
          + " clear, electronics disconnected, and the unit discharged afterwards.";

  private MeterWords() {}

  /** Why there is no reading. */
  public static String failure(Failure failure) {
    return failure.match(SENTENCES);
  }

  /** The kind of it, for programs. */
  public static String code(Failure failure) {
    return failure.match(CODES);
  }

  /** One line of the talk: when, which way, what. */
  public static String exchange(Exchange exchange) {
    String way =
        switch (exchange.kind()) {
          case SENT -> "sent";
          case RECEIVED -> "received";
          case DROPPED -> "dropped";
          case LINK -> "link";
        };
    return Text.of("%6d ms  %-9s %s", exchange.millis(), way, visible(exchange.text()));
  }

  /** Control characters by their names, so that a terminal is not steered by a meter. */
  public static String visible(String text) {
    return Text.visible(text.replace("\r", "\\r").replace("\n", "\\n").replace("\t", "\\t"));
  }

  /** What was understood of a line. */
  public static String shown(Shown shown) {
    return shown.match(SHOWN);
  }

  private static final Shown.Cases<String> SHOWN =
      new Shown.Cases<>() {
        @Override
        public String resistance(Shown.Resistance resistance) {
          Measured measured = resistance.measured();
          String volts =
              resistance.volts().isPresent()
                  ? " at " + Numbers.plain(resistance.volts().getAsDouble()) + " V"
                  : "";
          return (measured.isOverRange() ? "over range" : measured.text()) + volts;
        }

        @Override
        public String noValue(Shown.NoValue none) {
          return "no value now";
        }

        @Override
        public String held(Shown.Held held) {
          return "held (" + held.word() + "): not what the probes touch";
        }

        @Override
        public String otherQuantity(Shown.OtherQuantity other) {
          return "no ohms, but " + other.unit();
        }

        @Override
        public String withoutVolts(Shown.WithoutVolts without) {
          return "ohms without the volts of the test";
        }

        @Override
        public String unreadable(Shown.Unreadable unreadable) {
          return "not understood";
        }
      };

  private static String quoted(String text) {
    return text.isEmpty() ? "nothing" : "\"" + visible(text) + "\"";
  }

  private static final Failure.Cases<String> SENTENCES =
      new Failure.Cases<>() {
        @Override
        public String noAddress(Failure.NoAddress failure) {
          return quoted(failure.text())
              + " is not an address of a meter; write one such as 192.0.2.7:5025,"
              + " TCPIP::192.0.2.7::hislip0::INSTR, /dev/ttyUSB0, COM3, none or practice";
        }

        @Override
        public String noLink(Failure.NoLink failure) {
          return "none has no link: what the meter shows is typed";
        }

        @Override
        public String noProfile(Failure.NoProfile failure) {
          return "profile " + failure.name() + ": " + failure.why();
        }

        @Override
        public String refused(Failure.Refused failure) {
          return "nobody listens at "
              + failure.address()
              + ": is the meter on, and its remote control?";
        }

        @Override
        public String notFound(Failure.NotFound failure) {
          return failure.address() + " can't be reached: " + failure.why();
        }

        @Override
        public String inUse(Failure.InUse failure) {
          return failure.address()
              + " is in use by another reader; two would take each other's"
              + " answers";
        }

        @Override
        public String noSerial(Failure.NoSerial failure) {
          return "serial ports can't be used: "
              + failure.why()
              + "; where the temporary folder forbids programs (noexec), name another with"
              + " RINGOUT_JAVA_OPTS=-Djava.io.tmpdir=FOLDER";
        }

        @Override
        public String gone(Failure.Gone failure) {
          return failure.address() + " is gone: the cable was pulled, or the meter switched off";
        }

        @Override
        public String silent(Failure.Silent failure) {
          return Text.of(
              "nothing came in %d ms%s",
              failure.millis(),
              failure.asked().isEmpty() ? "" : " after " + quoted(failure.asked()));
        }

        @Override
        public String halfLine(Failure.HalfLine failure) {
          return Text.of(
              "a line began with %s and did not end in %d ms",
              quoted(failure.begun()), failure.millis());
        }

        @Override
        public String tooLong(Failure.TooLong failure) {
          return Text.of(
              "a line of more than %d characters, which begins with %s",
              failure.most(), quoted(failure.begun()));
        }

        @Override
        public String garbage(Failure.Garbage failure) {
          return quoted(failure.received())
              + " is not an answer"
              + (failure.asked().isEmpty()
                  ? " of a meter; are the serial settings those of the meter?"
                  : " to " + quoted(failure.asked()));
        }

        @Override
        public String unasked(Failure.Unasked failure) {
          return quoted(failure.received())
              + " came, which is not an answer to a question; no value counts until the"
              + " answers fit again";
        }

        @Override
        public String queued(Failure.Queued failure) {
          return "after "
              + quoted(failure.after())
              + " the meter has an error: "
              + visible(failure.error());
        }

        @Override
        public String otherMeter(Failure.OtherMeter failure) {
          return "another meter answers: it was "
              + quoted(failure.before())
              + ", now it is "
              + quoted(failure.now());
        }

        @Override
        public String otherQuantity(Failure.OtherQuantity failure) {
          return quoted(failure.received())
              + " is "
              + failure.unit()
              + ", no ohms: set the meter to ohms";
        }

        @Override
        public String setOtherwise(Failure.SetOtherwise failure) {
          return Text.of(
              "a key at the meter was pressed: to %s it said %s, now it says %s; this value is no"
                  + " reading",
              failure.asked(), quoted(failure.before()), quoted(failure.now()));
        }

        @Override
        public String unsettled(Failure.Unsettled failure) {
          return Text.of(
              "no value settled in %d ms%s",
              failure.millis(),
              failure.last().isEmpty() ? "" : "; the last was " + quoted(failure.last()));
        }

        @Override
        public String noValue(Failure.NoValue failure) {
          return Text.of(
              "what came in %d ms is not a value in ohms; the last was %s",
              failure.millis(), quoted(failure.last()));
        }

        @Override
        public String noVolts(Failure.NoVolts failure) {
          return quoted(failure.received())
              + " has no test volts, and ohms without volts prove no insulation: is it an insulation"
              + " tester, and is this its profile?";
        }

        @Override
        public String notTogether(Failure.NotTogether failure) {
          return "the probes were not held together"
              + (failure.read().isEmpty()
                  ? ", or nothing stood still"
                  : ": " + failure.read() + " was read")
              + "; leads have "
              + Ohms.text(LeadNull.MOST_OHMS)
              + " at most";
        }

        @Override
        public String notKept(Failure.NotKept failure) {
          return "in " + failure.folder() + " nothing can be kept: " + failure.why();
        }

        @Override
        public String interrupted(Failure.Interrupted failure) {
          return "it was stopped";
        }
      };

  private static final Failure.Cases<String> CODES =
      new Failure.Cases<>() {
        @Override
        public String noAddress(Failure.NoAddress failure) {
          return "no-address";
        }

        @Override
        public String noLink(Failure.NoLink failure) {
          return "no-link";
        }

        @Override
        public String noProfile(Failure.NoProfile failure) {
          return "no-profile";
        }

        @Override
        public String refused(Failure.Refused failure) {
          return "refused";
        }

        @Override
        public String notFound(Failure.NotFound failure) {
          return "not-found";
        }

        @Override
        public String inUse(Failure.InUse failure) {
          return "in-use";
        }

        @Override
        public String noSerial(Failure.NoSerial failure) {
          return "no-serial";
        }

        @Override
        public String gone(Failure.Gone failure) {
          return "gone";
        }

        @Override
        public String silent(Failure.Silent failure) {
          return "silent";
        }

        @Override
        public String halfLine(Failure.HalfLine failure) {
          return "half-line";
        }

        @Override
        public String tooLong(Failure.TooLong failure) {
          return "too-long";
        }

        @Override
        public String garbage(Failure.Garbage failure) {
          return "garbage";
        }

        @Override
        public String unasked(Failure.Unasked failure) {
          return "unasked";
        }

        @Override
        public String queued(Failure.Queued failure) {
          return "queued";
        }

        @Override
        public String otherMeter(Failure.OtherMeter failure) {
          return "other-meter";
        }

        @Override
        public String otherQuantity(Failure.OtherQuantity failure) {
          return "other-quantity";
        }

        @Override
        public String setOtherwise(Failure.SetOtherwise failure) {
          return "set-otherwise";
        }

        @Override
        public String unsettled(Failure.Unsettled failure) {
          return "unsettled";
        }

        @Override
        public String noValue(Failure.NoValue failure) {
          return "no-value";
        }

        @Override
        public String noVolts(Failure.NoVolts failure) {
          return "no-volts";
        }

        @Override
        public String notTogether(Failure.NotTogether failure) {
          return "not-together";
        }

        @Override
        public String notKept(Failure.NotKept failure) {
          return "not-kept";
        }

        @Override
        public String interrupted(Failure.Interrupted failure) {
          return "interrupted";
        }
      };
}
