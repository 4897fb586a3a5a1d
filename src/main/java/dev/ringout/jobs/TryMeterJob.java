package dev.ringout.jobs;

import dev.ringout.meter.Exchange;
import dev.ringout.meter.Failure;
import dev.ringout.meter.LeadNull;
import dev.ringout.meter.MeterAddress;
import dev.ringout.meter.MeterIdentity;
import dev.ringout.meter.MeterProfile;
import dev.ringout.meter.MeterTrouble;
import dev.ringout.meter.Profiles;
import dev.ringout.meter.drive.Meter;
import dev.ringout.meter.drive.Trial;
import dev.ringout.meter.link.SystemTicks;
import dev.ringout.meter.link.Transcript;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/** Talks to a meter for some seconds, and tells all of it. */
public final class TryMeterJob {
  private TryMeterJob() {}

  /**
   * What is asked.
   *
   * @param address as typed
   * @param profile its name, or a file; the usual one of the address where there is none
   * @param data the folder of the store: the user's own profiles and lead nulls are kept there
   * @param keepLeads whether the probes are held together, so that what settles is the lead null
   * @param listener hears each line as it goes
   */
  public record Request(
      String address,
      Optional<String> profile,
      Path data,
      boolean fourWire,
      int seconds,
      boolean keepLeads,
      Consumer<Exchange> listener) {}

  /**
   * What came of it.
   *
   * @param address as a resource string, or as typed
   * @param identity absent where it was never reached
   * @param trial absent where it could not be finished
   * @param profile absent where there is none
   * @param fourWire whether it was over four wires, where leads don't count
   * @param leads the lead null of this meter that is in force; absent where it is to be measured
   * @param trouble why it could not be finished
   */
  public record Result(
      String address,
      List<Exchange> talk,
      Optional<MeterProfile> profile,
      Optional<MeterIdentity> identity,
      Optional<Trial> trial,
      boolean fourWire,
      Optional<LeadNull> leads,
      Optional<MeterTrouble> trouble) {
    /** What is given can't be changed afterwards. */
    public Result {
      talk = List.copyOf(talk);
    }
  }

  /** Tries it. */
  public static Result run(Request request) {
    return new Trying(request).run();
  }

  /** One trial, and what is known of it so far. */
  private static final class Trying {
    private final Request request;
    private final Profiles profiles;
    private final List<Exchange> talk = new ArrayList<>();
    private String address;
    private Optional<MeterProfile> profile = Optional.empty();
    private Optional<MeterIdentity> identity = Optional.empty();

    Trying(Request request) {
      this.request = request;
      this.profiles = MetersJob.profiles(request.data());
      this.address = request.address();
    }

    Result run() {
      try {
        return result(tried());
      } catch (MeterTrouble e) {
        return result(Optional.empty(), Optional.empty(), Optional.of(e));
      }
    }

    private Result result(Trial trial) {
      Optional<LeadNull> leads = Optional.empty();
      Optional<MeterTrouble> trouble = trial.trouble();
      try {
        if (request.keepLeads() && trouble.isEmpty()) {
          keepLeads(trial);
        }
      } catch (MeterTrouble e) {
        trouble = Optional.of(e);
      }
      try {
        leads = request.fourWire() ? leads : leads();
      } catch (MeterTrouble e) {
        trouble = trouble.or(() -> Optional.of(e));
      }
      return result(Optional.of(trial), leads, trouble);
    }

    private Result result(
        Optional<Trial> trial, Optional<LeadNull> leads, Optional<MeterTrouble> trouble) {
      return new Result(
          address, talk, profile, identity, trial, request.fourWire(), leads, trouble);
    }

    private void keepLeads(Trial trial) throws MeterTrouble {
      Optional<LeadNull> measured = trial.reading().map(LeadNull::new);
      if (measured.filter(LeadNull::isSound).isEmpty()) {
        String read = trial.reading().map(one -> one.measured().text()).orElse("");
        throw new MeterTrouble(new Failure.NotTogether(read), List.of());
      }
      try {
        nulls().keep(measured.get());
      } catch (IOException e) {
        throw notKept(e);
      }
    }

    /** What is in force; over four wires the leads don't count. */
    private Optional<LeadNull> leads() throws MeterTrouble {
      try {
        return nulls().of(identity.orElseThrow(), new SystemTicks().now(), LeadNulls.USUAL);
      } catch (IOException e) {
        throw notKept(e);
      }
    }

    private LeadNulls nulls() {
      return new LeadNulls(request.data(), profiles);
    }

    private MeterTrouble notKept(IOException e) {
      return new MeterTrouble(
          new Failure.NotKept("" + request.data(), String.valueOf(e.getMessage())), talk);
    }

    private Trial tried() throws MeterTrouble {
      MeterAddress to = MeterAddress.of(request.address());
      address = to.text();
      if (to.equals(new MeterAddress.Typed())) {
        throw new MeterTrouble(new Failure.NoLink(), List.of());
      }
      MeterProfile found = profiles.find(request.profile().orElse(Profiles.usual(to)));
      profile = Optional.of(found);
      if (request.fourWire() && !found.language().mayReadFourWire()) {
        throw new MeterTrouble(
            new Failure.NoProfile(found.name(), "it has no line four-wire"), List.of());
      }
      SystemTicks ticks = new SystemTicks();
      Transcript transcript =
          new Transcript(
              ticks,
              line -> {
                talk.add(line);
                request.listener().accept(line);
              });
      try (Meter meter =
          Meter.open(to, found, request.fourWire(), PracticeJob.channels(ticks), transcript)) {
        identity = Optional.of(meter.identity());
        return Trial.of(meter, ticks, 1000L * request.seconds());
      }
    }
  }
}
