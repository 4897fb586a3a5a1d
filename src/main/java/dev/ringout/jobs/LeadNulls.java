package dev.ringout.jobs;

import dev.ringout.meter.LeadNull;
import dev.ringout.meter.MeterIdentity;
import dev.ringout.meter.MeterReading;
import dev.ringout.meter.MeterTrouble;
import dev.ringout.meter.Profiles;
import dev.ringout.meter.Shown;
import dev.ringout.readings.Measured;
import dev.ringout.store.Fields;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * What was read with the probes together, meter by meter, in a file beside the store: a line each,
 * which is only ever added. A meter of which nothing stands there has to be nulled first.
 */
public final class LeadNulls {
  /** Half of a day's work: leads and their contacts change (common practice, no source). */
  public static final Duration USUAL = Duration.ofHours(4);

  private final Path folder;
  private final Path file;
  private final Profiles profiles;

  /** Those of a folder. */
  public LeadNulls(Path folder, Profiles profiles) {
    this.folder = folder;
    this.file = folder.resolve("lead-nulls.txt");
    this.profiles = profiles;
  }

  /** Keeps one. */
  public void keep(LeadNull leads) throws IOException {
    Files.createDirectories(folder.toAbsolutePath());
    String line = Fields.line(leads.reading().fields().toArray(String[]::new)) + "\n";
    // Half of a line, from a machine that went off, is left alone.
    boolean isHalf = Files.exists(file) && !kept().isEmpty() && !kept().endsWith("\n");
    Files.writeString(
        file,
        isHalf ? "\n" + line : line,
        StandardCharsets.UTF_8,
        StandardOpenOption.CREATE,
        StandardOpenOption.APPEND,
        StandardOpenOption.SYNC);
  }

  /** The last of a meter; absent where its leads have to be measured. */
  public Optional<LeadNull> of(MeterIdentity meter, Instant now, Duration after)
      throws IOException {
    if (!Files.exists(file)) {
      return Optional.empty();
    }
    Optional<LeadNull> last = Optional.empty();
    for (List<String> fields : Fields.of(kept())) {
      Optional<LeadNull> one = MeterReading.of(fields, this::measured).map(LeadNull::new);
      if (one.isPresent() && one.get().isOf(meter)) {
        last = one;
      }
    }
    return last.filter(one -> !one.isDue(now, after));
  }

  /** What is damaged in it is no line of it. */
  private String kept() throws IOException {
    return new String(Files.readAllBytes(file), StandardCharsets.UTF_8);
  }

  private Optional<Measured> measured(String raw, String profile) {
    try {
      Shown shown = profiles.find(profile).language().read(raw);
      return shown.resistance().map(Shown.Resistance::measured);
    } catch (MeterTrouble e) {
      return Optional.empty();
    }
  }
}
