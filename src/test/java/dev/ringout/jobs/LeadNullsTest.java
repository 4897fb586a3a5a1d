package dev.ringout.jobs;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.meter.HowEntered;
import dev.ringout.meter.LeadNull;
import dev.ringout.meter.MeterIdentity;
import dev.ringout.meter.MeterReading;
import dev.ringout.meter.Profiles;
import dev.ringout.meter.ScpiAnswer;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The leads of a meter are measured at its first use, kept, and asked for again after hours. */
class LeadNullsTest {
  private static final Instant MORNING = Instant.parse("2026-11-30T07:00:00Z");
  private static final MeterIdentity METER =
      new MeterIdentity("TCPIP::192.0.2.7::5025::SOCKET", "Works,Meter,17,1.0", "scpi", false);

  @TempDir Path folder;

  private LeadNulls nulls() {
    return new LeadNulls(folder.resolve("data"), new Profiles(Optional.empty()));
  }

  private static LeadNull leads(String raw, Instant at, MeterIdentity meter) {
    return new LeadNull(
        new MeterReading(
            raw,
            ScpiAnswer.read(raw, 9.9e37, false).resistance().orElseThrow().measured(),
            OptionalDouble.empty(),
            at,
            meter,
            HowEntered.KEY));
  }

  private Optional<LeadNull> after(Duration since) throws IOException {
    return nulls().of(METER, MORNING.plus(since), LeadNulls.USUAL);
  }

  @Test
  void a_meter_of_which_nothing_is_kept_has_to_be_nulled() throws IOException {
    assertEquals(Optional.empty(), after(Duration.ZERO));
  }

  @Test
  void what_was_kept_is_the_jobs_lead_null_for_some_hours() throws IOException {
    nulls().keep(leads("0.09", MORNING.minusSeconds(60), METER));
    nulls().keep(leads("0.08", MORNING, METER));
    assertEquals("0.08 ohm", after(Duration.ofHours(3)).orElseThrow().text());
    assertEquals(Optional.empty(), after(Duration.ofHours(5)));
    assertEquals(Optional.empty(), after(Duration.ofHours(-1)));
  }

  @Test
  void a_damaged_file_loses_nothing_that_is_kept_afterwards() throws IOException {
    for (byte[] damage : new byte[][] {{(byte) 0xff, (byte) 0xfe, 0}, {'h', 'a', 'l', 'f'}}) {
      Files.createDirectories(folder.resolve("data"));
      Files.write(folder.resolve("data").resolve("lead-nulls.txt"), damage);
      assertEquals(Optional.empty(), after(Duration.ZERO));
      nulls().keep(leads("0.08", MORNING, METER));
      assertEquals("0.08 ohm", after(Duration.ZERO).orElseThrow().text());
    }
  }

  @Test
  void another_meter_has_other_leads() throws IOException {
    nulls().keep(leads("0.08", MORNING, METER));
    MeterIdentity other = new MeterIdentity(METER.address(), "Works,Meter,18,1.0", "scpi", false);
    assertEquals(Optional.empty(), nulls().of(other, MORNING, LeadNulls.USUAL));
  }

  @Test
  void probes_that_were_not_together_are_no_leads() {
    assertTrue(leads("0.08", MORNING, METER).isSound());
    assertFalse(leads("47", MORNING, METER).isSound());
    assertFalse(leads("9.9E37", MORNING, METER).isSound());
    assertFalse(leads("-0.4", MORNING, METER).isSound());
  }
}
