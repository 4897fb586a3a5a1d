package dev.ringout.jobs;

import dev.ringout.meter.MeterProfile;
import dev.ringout.meter.MeterTrouble;
import dev.ringout.meter.Profiles;
import dev.ringout.meter.link.SerialPorts;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The ports of this machine, and the profiles by which meters are spoken to. */
public final class MetersJob {
  private MetersJob() {}

  /** This program's, and the user's own in a folder beside the store. */
  static Profiles profiles(Path data) {
    return new Profiles(Optional.of(data.resolve("meters")));
  }

  /**
   * What is asked.
   *
   * @param data the folder of the store: the user's own profiles may be in a folder there
   */
  public record Request(Path data) {}

  /**
   * What there is.
   *
   * @param noPorts why ports can't be listed
   */
  public record Result(
      List<SerialPorts.Port> ports, Optional<MeterTrouble> noPorts, List<Listed> profiles) {
    /** What is given can't be changed afterwards. */
    public Result {
      ports = List.copyOf(ports);
      profiles = List.copyOf(profiles);
    }
  }

  /** A profile, and whether it is the user's own. */
  public record Listed(MeterProfile profile, boolean own) {}

  /**
   * Lists both.
   *
   * @throws MeterTrouble where a profile can't be read
   */
  public static Result run(Request request) throws MeterTrouble {
    Profiles profiles = profiles(request.data());
    List<Listed> listed = new ArrayList<>();
    for (String name : profiles.names()) {
      listed.add(new Listed(profiles.find(name), profiles.isOwn(name)));
    }
    try {
      return new Result(SerialPorts.all(), Optional.empty(), listed);
    } catch (MeterTrouble e) {
      return new Result(List.of(), Optional.of(e), listed);
    }
  }
}
